package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.measure.Spoken;
import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.Box;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.CrewQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnTask;
import cornerpost.scope.OwnTaskQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.Scope;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Holds the sheets against each other. Names are compared without regard to case and spaces; the
 * checked scope carries every reference as its target spells it, so that no one after has to care.
 */
final class ScopeChecks {
  private final Scope scope;
  private final boolean house;
  private final Facts facts;
  private final FaultLog faults;

  ScopeChecks(Scope scope, boolean house, Facts facts, FaultLog faults) {
    this.scope = scope;
    this.house = house;
    this.facts = facts;
    this.faults = faults;
  }

  /** Most often a slip in the year; what is paid by time then counts from that day. */
  private void statusDate() {
    var project = scope.project();
    var status = project.findDate(ProjectQuestions.STATUS);
    var start = project.findDate(ProjectQuestions.START);
    if (status.isEmpty() || start.isEmpty() || !status.get().isBefore(start.get())) return;
    faults.remarkAt(
        project.cell(ProjectQuestions.STATUS),
        "the status date, "
            + Spoken.day(status.get())
            + ", is before the start date, "
            + Spoken.day(start.get()),
        "what is paid by time counts from it; leave it empty to plan from the start date");
  }

  Scope checked() {
    ids();
    statusDate();
    if (house && scope.boxes().isEmpty()) none(OwnerSheet.CONTAINERS, "box");
    if (house && scope.rooms().isEmpty()) none(OwnerSheet.ROOMS, "room");
    if (!house && scope.ownTasks().isEmpty()) none(OwnerSheet.OWN_TASKS, "task");
    var calendars = withSupplied(scope.calendars());
    var calendarNames = calendars.stream().map(CalendarEntry::name).toList();
    var boxNames = names(scope.boxes().stream().map(Box::row).toList(), BoxQuestions.ID);
    var itemIds = scope.ownItems().stream().map(i -> i.id()).toList();
    var boxes =
        scope.boxes().stream()
            .map(b -> new Box(resolved(b.row(), BoxQuestions.JOINED_TO, boxNames)))
            .toList();
    var rooms =
        scope.rooms().stream()
            .map(r -> new Room(resolved(r.row(), RoomQuestions.BOX, boxNames)))
            .toList();
    var openings =
        scope.openings().stream()
            .map(o -> new Opening(resolved(o.row(), OpeningQuestions.BOX, boxNames)))
            .map(o -> new Opening(resolved(o.row(), OpeningQuestions.LANDING, itemIds)))
            .toList();
    var checked =
        new Scope(
            scope.units(),
            resolved(scope.project(), ProjectQuestions.CALENDAR, calendarNames),
            boxes,
            rooms,
            openings,
            scope.site(),
            resolved(scope.deckAndRoof(), DeckAndRoofQuestions.DECK_BOX, boxNames),
            scope.envelope(),
            scope.services(),
            scope.finishes(),
            scope.assignments(),
            scope.quotes(),
            scope.ownItems(),
            scope.ownTasks().stream().map(t -> resolved(t, calendarNames)).toList(),
            scope.ownLinks(),
            scope.crews().stream().map(c -> resolved(c, calendarNames)).toList(),
            calendars,
            scope.holidays(),
            scope.progress(),
            scope.delays(),
            scope.ledger(),
            scope.loan(),
            resolved(scope.options(), OptionsQuestions.OWNER_CALENDAR, calendarNames),
            scope.entered(),
            scope.baselines());
    if (house) {
      new BoxChecks(checked, facts, faults).run();
      new OpeningChecks(checked, facts, faults).run();
    }
    new OwnEntryChecks(checked, faults).run();
    return checked;
  }

  private void none(OwnerSheet sheet, String what) {
    if (faults.all().stream().anyMatch(p -> p.sheet().equals(sheet.title()))) return;
    if (faults.all().stream().anyMatch(p -> p.found().contains("'" + sheet.title() + "'"))) return;
    faults.fault(sheet.title(), "", "no " + what, "expected at least one row with a " + what);
  }

  // ---- ids ----------------------------------------------------------------------------------

  private void ids() {
    rows(scope.boxes(), Box::row, BoxQuestions.ID, "box");
    rows(scope.rooms(), Room::row, RoomQuestions.ID, "room");
    rows(scope.openings(), Opening::row, OpeningQuestions.ID, "opening");
    once(scope.ownItems(), i -> i.id(), i -> i.cell(), "item", true);
    scope.ownItems().forEach(i -> plainId(i.id(), i.cell()));
    once(scope.ownTasks(), t -> t.id(), t -> t.cell(), "task", false);
    once(scope.crews(), c -> c.name(), c -> c.cell(), "crew", true);
    once(scope.calendars(), c -> c.name(), c -> c.cell(), "calendar", true);
    once(scope.holidays(), h -> h.date().toString(), h -> h.cell(), "holiday", true);
    once(scope.progress(), p -> p.task(), p -> p.cell(), "row for task", false);
  }

  private <T> void rows(List<T> all, Function<T, Answers> row, Question id, String what) {
    var named = all.stream().map(row).filter(r -> r.has(id)).toList();
    once(named, r -> r.text(id), r -> r.cell(id), what, true);
    named.forEach(r -> plainId(r.text(id), r.cell(id)));
  }

  /** Ids of lines are made of these names with slashes and colons between. */
  private void plainId(String id, String cell) {
    if (id.contains("/") || id.contains(":")) {
      faults.faultAt(
          cell, "the name " + Plain.quoted(id), "expected a name without '/' and without ':'");
    }
  }

  private <T> void once(
      List<T> rows,
      Function<T, String> name,
      Function<T, String> cell,
      String what,
      boolean anyCase) {
    var first = new LinkedHashMap<String, String>();
    for (var row : rows) {
      var key = anyCase ? Plain.key(name.apply(row)) : name.apply(row);
      var before = first.putIfAbsent(key, cell.apply(row));
      if (before != null) {
        faults.faultAt(
            cell.apply(row),
            "a second " + what + " " + Plain.quoted(name.apply(row)),
            "expected each name once; the first is in " + CellPlace.split(before)[1]);
      }
    }
  }

  // ---- references ---------------------------------------------------------------------------

  private static List<String> names(List<Answers> rows, Question id) {
    return rows.stream().flatMap(r -> r.findText(id).stream()).toList();
  }

  /** The row with its reference as the target spells it; reports a name nobody has. */
  private Answers resolved(Answers row, Question question, List<String> known) {
    var answer = row.find(question);
    if (answer.isEmpty()) return row;
    var exact = resolved((String) answer.get().value(), answer.get().cell(), question, known);
    if (exact.isEmpty()) return row;
    Map<Question, Answer> all = new LinkedHashMap<>(row.all());
    all.put(question, new Answer(answer.get().cell(), exact.get(), answer.get().assumed()));
    return new Answers(row.place(), all);
  }

  private Optional<String> resolved(
      String name, String cell, Question question, List<String> known) {
    var exact = known.stream().filter(k -> Plain.same(k, name)).findFirst();
    if (exact.isEmpty()) {
      faults.faultAt(
          cell,
          "the name " + Plain.quoted(name) + " (" + question.label() + "), which is not there",
          Plain.oneOf(name, known));
    }
    return exact;
  }

  private OwnTask resolved(OwnTask task, List<String> calendars) {
    var calendar =
        task.calendar()
            .map(c -> resolved(c, task.cell(), OwnTaskQuestions.CALENDAR, calendars).orElse(c));
    return new OwnTask(
        task.id(),
        task.name(),
        task.duration(),
        task.unit(),
        task.optimistic(),
        task.pessimistic(),
        calendar,
        task.notBefore(),
        task.deadline(),
        task.demands(),
        task.cell());
  }

  private CrewEntry resolved(CrewEntry crew, List<String> calendars) {
    var calendar =
        crew.calendar()
            .map(c -> resolved(c, crew.cell(), CrewQuestions.CALENDAR, calendars).orElse(c));
    return new CrewEntry(crew.name(), crew.available(), calendar, crew.rate(), crew.cell());
  }

  /** The four working weeks that need no row; a row of the same name takes their place. */
  private static List<CalendarEntry> withSupplied(List<CalendarEntry> entered) {
    var all = new ArrayList<>(entered);
    for (var supplied : SuppliedCalendars.ALL) {
      if (entered.stream().noneMatch(c -> Plain.same(c.name(), supplied.name()))) all.add(supplied);
    }
    return all;
  }
}

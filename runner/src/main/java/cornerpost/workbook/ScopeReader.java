package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Answers;
import cornerpost.scope.Box;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.CalendarQuestions;
import cornerpost.scope.CrewQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DelayQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.GeneratedTasks;
import cornerpost.scope.HolidayQuestions;
import cornerpost.scope.LedgerQuestions;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnItemQuestions;
import cornerpost.scope.OwnLinkQuestions;
import cornerpost.scope.OwnTaskQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProgressQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.QuoteQuestions;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.WorkQuestions;
import cornerpost.workbook.TableReader.Table;
import cornerpost.workbook.parts.StoredBook;
import cornerpost.workbook.parts.StoredSheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads sheet after sheet of an opened workbook. */
final class ScopeReader {
  private final StoredBook workbook;
  private final String fileName;
  private final Facts facts;
  private final FaultLog faults;
  private final UnitSystem units;
  private final boolean house;
  private final EntryReader entries;
  private final FormReader forms;
  private final TableReader tables;

  ScopeReader(StoredBook workbook, String fileName, Facts facts, FaultLog faults) {
    this.workbook = workbook;
    this.fileName = fileName;
    this.facts = facts;
    this.faults = faults;
    this.house = generatesHouse();
    this.units = unitSystem();
    this.entries = new EntryReader(units, faults);
    this.forms = new FormReader(entries, faults);
    this.tables = new TableReader(entries, faults);
  }

  Scope read() {
    var project = form(OwnerSheet.PROJECT, ProjectQuestions.ALL);
    var boxes = rows(OwnerSheet.CONTAINERS, BoxQuestions.ALL).map(Box::new).toList();
    var rooms = rows(OwnerSheet.ROOMS, RoomQuestions.ALL).map(Room::new).toList();
    var openings = rows(OwnerSheet.OPENINGS, OpeningQuestions.ALL).map(Opening::new).toList();
    var site = form(OwnerSheet.SITE, SiteQuestions.ALL);
    var deck = form(OwnerSheet.DECK_AND_ROOF, DeckAndRoofQuestions.ALL);
    var envelope = form(OwnerSheet.ENVELOPE, EnvelopeQuestions.ALL);
    var services = form(OwnerSheet.SERVICES, ServicesQuestions.ALL);
    var finishes = form(OwnerSheet.FINISHES, FinishesQuestions.ALL);
    var own = new OwnRows(entries, faults);
    var assignments = own.assignments(rows(OwnerSheet.WHO_DOES_WHAT, WorkQuestions.ALL).toList());
    var quotes = own.quotes(rows(OwnerSheet.QUOTES, QuoteQuestions.ALL).toList());
    var items = own.items(rows(OwnerSheet.OWN_ITEMS, OwnItemQuestions.ALL).toList());
    var crews = own.crews(rows(OwnerSheet.CREWS, CrewQuestions.ALL).toList());
    var tasks =
        table(OwnerSheet.OWN_TASKS, OwnTaskQuestions.ALL)
            .map(t -> own.tasks(t, crews))
            .orElse(List.of());
    var links = own.links(rows(OwnerSheet.OWN_LINKS, OwnLinkQuestions.ALL).toList());
    var calendars = own.calendars(rows(OwnerSheet.CALENDARS, CalendarQuestions.ALL).toList());
    var holidays = own.holidays(rows(OwnerSheet.HOLIDAYS, HolidayQuestions.ALL).toList());
    var progress = own.progress(rows(OwnerSheet.PROGRESS, ProgressQuestions.ALL).toList());
    var delays = own.delays(rows(OwnerSheet.DELAYS, DelayQuestions.ALL).toList());
    var ledger = own.ledger(rows(OwnerSheet.COST_LEDGER, LedgerQuestions.ALL).toList());
    var loan = form(OwnerSheet.LOAN, LoanQuestions.ALL);
    var options = form(OwnerSheet.OPTIONS, OptionsQuestions.ALL);
    var scope =
        new Scope(
            units,
            project,
            boxes,
            rooms,
            openings,
            site,
            deck,
            envelope,
            services,
            finishes,
            assignments,
            quotes,
            items,
            tasks,
            links,
            crews,
            calendars,
            holidays,
            progress,
            delays,
            ledger,
            loan,
            options,
            entries.entered(),
            new BaselineRows(workbook, faults).read());
    return new ScopeChecks(scope, house, facts, faults).checked();
  }

  /** What was read, with what stands in for the rest, to look for more that is wrong. */
  Optional<Scope> sketch(Scope read) {
    return entries.standIns().fill(read, faults.all());
  }

  /** Read before all else, for what else must be there hangs on it. */
  private boolean generatesHouse() {
    return generatesHouse(workbook);
  }

  private static boolean generatesHouse(StoredBook workbook) {
    return peek(workbook, ProjectQuestions.GENERATED_TASKS)
        .filter(t -> Plain.same(t, GeneratedTasks.NONE.label()))
        .isEmpty();
  }

  static boolean asksForHouse(StoredBook workbook) {
    return sheet(workbook, OwnerSheet.PROJECT).isPresent() && generatesHouse(workbook);
  }

  /** Where a line of sheet Project is answered. */
  static Optional<String> cell(StoredBook workbook, Question question) {
    return sheet(workbook, OwnerSheet.PROJECT)
        .flatMap(s -> FormReader.placeOf(s, question))
        .map(CellPlace::label);
  }

  /** Read first, for every other number hangs on it. */
  private UnitSystem unitSystem() {
    var found = peek(ProjectQuestions.UNITS);
    var system = found.flatMap(UnitSystem::find);
    if (system.isPresent()) return system.get();
    var sheet = sheet(OwnerSheet.PROJECT);
    if (sheet.isEmpty()) return UnitSystem.METRIC; // its absence is reported with the sheets
    if (found.isEmpty() && !house) return UnitSystem.METRIC; // an own network measures nothing
    var at = FormReader.placeOf(sheet.get(), ProjectQuestions.UNITS);
    faults.faultAt(
        at.map(CellPlace::label).orElse(sheet.get().title()),
        found
            .map(t -> "text " + Plain.quoted(t) + " (Units)")
            .orElse(at.isPresent() ? "Units is empty" : "no line 'Units'"),
        "expected "
            + Plain.list(List.of(UnitSystem.METRIC.label(), UnitSystem.US.label()))
            + ", the units of every number in the workbook");
    return UnitSystem.METRIC;
  }

  private Optional<String> peek(Question question) {
    return peek(workbook, question);
  }

  /** What a line of sheet Project says, before anything is checked. */
  static Optional<String> peek(StoredBook workbook, Question question) {
    return sheet(workbook, OwnerSheet.PROJECT)
        .flatMap(s -> FormReader.find(s, question))
        .filter(h -> h.kind() == Held.Kind.TEXT)
        .map(EntryReader::text);
  }

  private Optional<StoredSheet> sheet(OwnerSheet wanted) {
    return sheet(workbook, wanted);
  }

  private static Optional<StoredSheet> sheet(StoredBook workbook, OwnerSheet wanted) {
    return workbook.sheets().stream()
        .filter(s -> s.title().equals(wanted.title()))
        .findFirst()
        .or(
            () ->
                workbook.sheets().stream()
                    .filter(s -> Plain.same(s.title(), wanted.title()))
                    .findFirst());
  }

  private boolean isNeeded(OwnerSheet sheet) {
    return switch (sheet.need()) {
      case ALWAYS -> true;
      case HOUSE -> house;
      case NEVER -> !house && sheet == OwnerSheet.OWN_TASKS;
    };
  }

  /** A sheet about a house takes no part where only own tasks are planned. */
  private boolean isIdle(OwnerSheet sheet) {
    return !house && sheet.need() == OwnerSheet.Need.HOUSE;
  }

  private Optional<StoredSheet> needed(OwnerSheet wanted) {
    if (isIdle(wanted)) return Optional.empty();
    var sheet = sheet(wanted);
    if (sheet.isEmpty() && isNeeded(wanted)) {
      faults.fault(
          fileName,
          "",
          "no sheet '" + wanted.title() + "'",
          "expected it; a new workbook has every sheet ready to fill in");
    }
    return sheet;
  }

  private Answers form(OwnerSheet wanted, List<Question> questions) {
    if (isIdle(wanted)) return Answers.none(wanted.title());
    return needed(wanted)
        .map(s -> forms.read(s, questions))
        .orElseGet(() -> forms.absent(wanted.title(), questions));
  }

  private Optional<Table> table(OwnerSheet wanted, List<Question> questions) {
    return needed(wanted).flatMap(s -> tables.read(s, questions, isNeeded(wanted)));
  }

  private Stream<Answers> rows(OwnerSheet wanted, List<Question> questions) {
    return table(wanted, questions).stream()
        .flatMap(t -> t.rows().stream())
        .map(TableReader.TableRow::answers);
  }
}

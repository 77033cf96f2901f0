package cornerpost.work;

import cornerpost.measure.Spelling;
import cornerpost.measure.Unit;
import cornerpost.price.PriceBook;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.SuppliedCalendars;
import cornerpost.scope.Trade;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Who works, how many of them, and when. A row of sheet Crews overrides the crew of its name. */
final class CrewBook {
  /** The crew of the owner and those who help without pay. */
  static final String OWNER = "Owner";

  private static final int PEOPLE_WITHOUT_A_BOOK = 2;

  private final Scope scope;
  private final Optional<PriceBook> book;
  private final Faults faults;
  private final List<CalendarEntry> calendars;
  private final String project;
  private final Map<String, WorkPlan.CrewLimit> limits = new LinkedHashMap<>();
  private final Set<String> open = new HashSet<>();

  CrewBook(Scope scope, Optional<PriceBook> book, Faults faults) {
    this.scope = scope;
    this.book = book;
    this.faults = faults;
    this.calendars = SuppliedCalendars.with(scope.calendars());
    for (var c : scope.calendars()) {
      if (c.hours().stream().allMatch(h -> h.signum() <= 0)) {
        faults.fault(c.cell(), "calendar '" + c.name() + "' never works", "a day with hours");
      }
    }
    var answers = scope.project();
    this.project =
        answers.has(ProjectQuestions.CALENDAR)
            ? calendar(
                answers.text(ProjectQuestions.CALENDAR), answers.cell(ProjectQuestions.CALENDAR))
            : SuppliedCalendars.WEEKDAYS;
    for (var c : scope.crews()) {
      var name = c.calendar().map(n -> calendar(n, c.cell())).orElseGet(() -> calendarOf(c));
      limits.put(c.name(), new WorkPlan.CrewLimit(c.name(), c.available(), name));
      if (c.calendar().isEmpty() && !c.name().equalsIgnoreCase(OWNER)) open.add(c.name());
    }
  }

  private String calendarOf(CrewEntry crew) {
    return crew.name().equalsIgnoreCase(OWNER) ? ownerCalendar() : project;
  }

  private String ownerCalendar() {
    var options = scope.options();
    return options.has(OptionsQuestions.OWNER_CALENDAR)
        ? calendar(
            options.text(OptionsQuestions.OWNER_CALENDAR),
            options.cell(OptionsQuestions.OWNER_CALENDAR))
        : SuppliedCalendars.WEEKENDS;
  }

  List<CalendarEntry> calendars() {
    return calendars;
  }

  /** The calendar of hired crews, in which the plan's duration is counted. */
  String project() {
    return project;
  }

  /**
   * The crews with their numbers. One entered without a calendar works whenever its tasks do; its
   * calendar is then empty. Where crews are not limited to one job at a time, there are as many of
   * those not entered on sheet Crews as all tasks together could ask for.
   */
  List<WorkPlan.CrewLimit> limits(List<WorkTask> tasks) {
    boolean limited =
        !scope.options().has(OptionsQuestions.LIMIT_CREWS)
            || scope.options().yes(OptionsQuestions.LIMIT_CREWS);
    return limits.values().stream()
        .map(
            l ->
                new WorkPlan.CrewLimit(
                    l.name(),
                    limited || isEntered(l.name()) ? l.available() : asked(l, tasks),
                    open.contains(l.name()) ? "" : l.calendar()))
        .toList();
  }

  /** A number that limits nobody: what stands on sheet Crews is meant for some task. */
  void sayUnused(List<WorkTask> tasks) {
    var used = new TreeSet<String>();
    for (var t : tasks) used.addAll(t.demands().keySet());
    for (var c : scope.crews()) {
      if (used.contains(c.name())) continue;
      faults.remark(
          c.cell(),
          "no task asks for crew '" + c.name() + "'",
          "it changes nothing"
              + Spelling.nearest(c.name(), used)
                  .map(n -> "; maybe '" + n + "', as the plan calls it")
                  .orElse("; the plan's own crews go by the names of packages on Who does what"));
    }
  }

  private boolean isEntered(String crew) {
    return scope.crews().stream().anyMatch(c -> c.name().equals(crew));
  }

  private static int asked(WorkPlan.CrewLimit limit, List<WorkTask> tasks) {
    int sum = tasks.stream().mapToInt(t -> t.demands().getOrDefault(limit.name(), 0)).sum();
    return Math.max(limit.available(), sum);
  }

  Optional<WorkPlan.CrewLimit> find(String name) {
    return Optional.ofNullable(limits.get(name))
        .or(
            () ->
                limits.values().stream().filter(l -> l.name().equalsIgnoreCase(name)).findFirst());
  }

  /** The name of a calendar as it is spelt where it is defined; a fault if there is none. */
  String calendar(String name, String cell) {
    var found = calendars.stream().filter(c -> c.name().equalsIgnoreCase(name.strip())).findFirst();
    if (found.isPresent()) return found.get().name();
    faults.fault(
        cell,
        "no calendar '" + name + "'",
        "one of " + String.join(", ", calendars.stream().map(CalendarEntry::name).toList()));
    return SuppliedCalendars.WEEKDAYS;
  }

  /** Minutes of one {@code d} of a calendar. */
  long dayMinutes(String calendar) {
    var entry = calendars.stream().filter(c -> c.name().equals(calendar)).findFirst().orElseThrow();
    return SuppliedCalendars.hoursOfADay(entry).multiply(BigDecimal.valueOf(60)).longValue();
  }

  /** The crew that does a trade's work for a party, and how many of it come. */
  Gang gang(Trade trade, Party party) {
    return party == Party.OWNER ? owner(trade) : hired(trade);
  }

  /**
   * @param people how many come to one task
   * @param calendar when they work
   */
  record Gang(String crew, int people, String calendar) {}

  private Optional<Figure> entered(Trade trade, Party party) {
    var who = scope.assignments().get(trade);
    if (who == null) return Optional.empty();
    // Where work is mixed, the number entered is that of the hired crew.
    boolean meant = who.party() == party || who.party() == Party.MIXED && party == Party.HIRED;
    return meant ? who.people() : Optional.empty();
  }

  private Gang owner(Trade trade) {
    var hands =
        scope.options().has(OptionsQuestions.OWNER_HANDS)
            ? scope.options().whole(OptionsQuestions.OWNER_HANDS)
            : 1;
    var limit =
        find(OWNER).orElseGet(() -> add(new WorkPlan.CrewLimit(OWNER, hands, ownerCalendar())));
    return gang(trade, Party.OWNER, limit, limit.available());
  }

  private Gang hired(Trade trade) {
    int usual =
        entered(trade, Party.HIRED)
            .map(f -> f.in(Unit.ONE).intValue())
            .orElseGet(
                () ->
                    book.flatMap(b -> b.findRate(trade))
                        .map(r -> r.usualCrew())
                        .orElse(PEOPLE_WITHOUT_A_BOOK));
    var limit =
        find(trade.label())
            .orElseGet(() -> add(new WorkPlan.CrewLimit(trade.label(), usual, project)));
    return gang(trade, Party.HIRED, limit, Math.min(usual, limit.available()));
  }

  private Gang gang(Trade trade, Party party, WorkPlan.CrewLimit limit, int usual) {
    int people = entered(trade, party).map(f -> f.in(Unit.ONE).intValue()).orElse(usual);
    if (limit.available() < 1) {
      faults.fault(
          cellOf(limit.name()),
          "nobody available of crew '" + limit.name() + "'",
          "1 or more: " + trade.label() + " is theirs");
    } else if (people > limit.available()) {
      faults.fault(
          scope.assignments().get(trade).cell(),
          people + " people for " + trade.label(),
          "at most " + limit.available() + ", the number available of crew '" + limit.name() + "'");
    }
    return new Gang(
        limit.name(), Math.max(1, Math.min(people, limit.available())), limit.calendar());
  }

  private WorkPlan.CrewLimit add(WorkPlan.CrewLimit limit) {
    limits.put(limit.name(), limit);
    return limit;
  }

  /** Where the number of a crew is entered, for messages. */
  String cellOf(String crew) {
    return scope.crews().stream()
        .filter(c -> c.name().equalsIgnoreCase(crew))
        .map(CrewEntry::cell)
        .findFirst()
        .orElse(OwnerSheet.CREWS.title());
  }
}

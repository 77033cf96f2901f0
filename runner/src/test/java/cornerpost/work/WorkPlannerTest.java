package cornerpost.work;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.Estimator;
import cornerpost.price.PriceBook;
import cornerpost.price.TestBook;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.GeneratedTasks;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OwnLink;
import cornerpost.scope.OwnTask;
import cornerpost.scope.PermitClass;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.ScopeEdit;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import cornerpost.takeoff.Houses;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Resource;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WorkPlannerTest {
  private static final Facts FACTS = Facts.supplied();
  private static final LocalDateTime START = LocalDateTime.of(2027, 3, 1, 8, 0);

  private static PriceBook book() {
    return new TestBook()
        .item("thing", "each", "1", "each", "no", "5,5,5")
        .item("window", "Windows and doors", "each", "1", "each", "no", "5,5,5", "no", "42")
        .item("door", "Windows and doors", "each", "1", "each", "no", "5,5,5", "no", "28")
        .item("latch", "Windows and doors", "each", "1", "each", "no", "5,5,5", "no", "3")
        .item("lintel", "Windows and doors", "each", "1", "each", "no", "9,9,9", "no", "21")
        .item("glass", "Windows and doors", "each", "1", "each", "no", "1,1,1", "no", "14")
        .item("box", "Containers and haulage", "each", "1", "each", "no", "5,5,5", "no", "21")
        .hours("doing", "each", "1,2,4")
        .book();
  }

  private static WorkPlanner.Result result(Scope scope, List<Line> lines) {
    var estimate = estimate(scope, lines);
    return WorkPlanner.plan(scope, estimate, Optional.of(book()), FACTS);
  }

  private static Estimate estimate(Scope scope, List<Line> lines) {
    var estimated = Estimator.estimate(scope, lines, Optional.of(book()), FACTS);
    return estimated.estimate().orElseThrow(() -> new AssertionError(estimated.problems()));
  }

  private static WorkPlan plan(Scope scope, List<Line> lines) {
    var result = result(scope, lines);
    return result.plan().orElseThrow(() -> new AssertionError(result.problems()));
  }

  private static Line line(String id, BuildTask task, String item, String activity) {
    return Line.of(
        id,
        task.stage(),
        id,
        Figure.constant("10", Unit.EACH),
        Unit.EACH,
        "ten",
        Resource.Buy.of(item, task),
        Resource.Labour.of(activity, task));
  }

  private static WorkTask task(WorkPlan plan, String id) {
    return plan.task(id).orElseThrow(() -> new AssertionError("no task " + id));
  }

  private static Set<String> before(WorkPlan plan, String id) {
    return plan.links().stream()
        .filter(l -> l.after().equals(id))
        .map(WorkLink::before)
        .collect(Collectors.toSet());
  }

  private static boolean leads(WorkPlan plan, String from, String to) {
    return Soundness.after(plan, from).contains(to);
  }

  static List<Scope> houses() {
    return List.of(
        Houses.oneBedroom(),
        Houses.hired(),
        Houses.twoBoxes(),
        Houses.oneBedroom(UnitSystem.US, Map.of(LoanQuestions.AMOUNT, "40000")),
        Houses.oneBedroom(
            UnitSystem.METRIC,
            Map.of(ProjectQuestions.PERMIT, PermitClass.NONE, ProjectQuestions.ENGINEER, "no")));
  }

  /** Every task of the build, or just a few of them: the rules must hold together either way. */
  static List<List<Line>> works() {
    var all = Houses.oneLineForEveryTask();
    return List.of(
        all,
        List.of(),
        all.stream().filter(l -> l.stage() != Stage.FOUNDATION).toList(),
        all.stream().filter(l -> l.stage() != Stage.SHELL && l.stage() != Stage.SERVICES).toList(),
        all.stream().filter(l -> l.id().hashCode() % 3 == 0).toList(),
        all.stream().filter(l -> l.id().hashCode() % 3 != 0).toList());
  }

  static Collection<Object[]> housesAndWorks() {
    return houses().stream().flatMap(h -> works().stream().map(w -> new Object[] {h, w})).toList();
  }

  @ParameterizedTest
  @MethodSource("housesAndWorks")
  void a_generated_network_is_sound(Scope scope, List<Line> lines) {
    Soundness.check(plan(scope, lines));
  }

  @ParameterizedTest
  @MethodSource("housesAndWorks")
  void every_cost_line_falls_due_with_one_task(Scope scope, List<Line> lines) {
    var tied = plan(scope, lines).tasks().stream().flatMap(t -> t.costLines().stream()).toList();
    assertThat(tied)
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(
            estimate(scope, lines).lines().stream().map(CostLine::id).toList());
  }

  // Order of inspections: International Residential Code R109.1.1 to R109.1.6, R110.1; the other
  // pairs are common practice, no source.
  @ParameterizedTest
  @CsvSource({
    "footing-inspection, pour",
    "pour, cure",
    "cure, delivery",
    "underground-inspection, close-trenches",
    "close-trenches, delivery",
    "permit-granted, clear",
    "delivery, set-boxes",
    "fix-down, cut-openings",
    "fit-frames, cut-openings",
    "weld-frames, watertight",
    "weld-frames, wall-insulation",
    "roof-frame, wall-insulation",
    "cut-openings, electrical-first-fix",
    "watertight, wall-studs",
    "rough-in-inspection, framing-inspection",
    "framing-inspection, insulation-inspection",
    "insulation-inspection, wall-board",
    "roof-sheets, framing-inspection",
    "steel-membrane, wall-studs",
    "wall-board, prime-walls",
    "waterproof-dry, wall-tiles",
    "final-inspection, certificate",
    "certificate, move-in",
    "bond-shell, connect-power",
    "yard-steelwork, delivery",
    "order/containers-and-haulage, delivery",
    "choose-boxes, order/containers-and-haulage",
    "deck-inspection, deck-concrete"
  })
  void what_must_come_first_comes_first(String first, String then) {
    var lines = new java.util.ArrayList<>(Houses.oneLineForEveryTask());
    lines.add(line("box", BuildTask.DELIVERY, "box", BuildTask.SET_BOXES));
    var plan = plan(Houses.twoBoxes(), lines);
    assertThat(leads(plan, first, then)).isTrue();
    assertThat(leads(plan, then, first)).isFalse();
  }

  private static Line line(String id, BuildTask task, String item, BuildTask labour) {
    return Line.of(
        id,
        task.stage(),
        id,
        Figure.constant("10", Unit.EACH),
        Unit.EACH,
        "ten",
        Resource.Buy.of(item, task),
        Resource.Labour.of("doing", labour));
  }

  @ParameterizedTest
  @CsvSource({"no, true", "yes, false"})
  void orders_wait_for_the_permit_unless_the_owner_orders_early(String early, boolean waits) {
    var plan =
        plan(
            Houses.oneBedroom(UnitSystem.METRIC, Map.of(ProjectQuestions.ORDER_EARLY, early)),
            List.of(line("box", BuildTask.DELIVERY, "box", BuildTask.SET_BOXES)));
    assertThat(leads(plan, "permit-granted", "order/containers-and-haulage")).isEqualTo(waits);
  }

  @Test
  void an_order_is_as_long_as_its_slowest_goods_and_stands_before_their_first_use() {
    var plan =
        plan(
            Houses.oneBedroom(),
            List.of(
                line("w", BuildTask.SET_WINDOWS, "window", "doing"),
                line("d", BuildTask.SET_DOORS, "door", "doing"),
                line("i", BuildTask.INNER_DOORS, "door", "doing")));
    var order = task(plan, "order/windows-and-doors");
    assertThat(order.elapsed()).isTrue();
    assertThat(order.minutes()).isEqualTo(42L * 24 * 60);
    assertThat(before(plan, "set-windows")).contains(order.id());
    assertThat(before(plan, "set-doors")).contains(order.id());
    assertThat(before(plan, "inner-doors")).doesNotContain(order.id());
  }

  // Fifty each for window and door, ninety for lintels, ten for glass: dearest first. A latch is in
  // stock, so with it the order is not for all that is bought of the group.
  @Test
  void an_order_is_named_by_its_goods_and_by_their_supplier_only_if_it_is_for_all_of_it() {
    var one = List.of(line("w", BuildTask.SET_WINDOWS, "window", "doing"));
    var latch = line("h", BuildTask.SET_DOORS, "latch", "doing");
    var all =
        List.of(
            line("w", BuildTask.SET_WINDOWS, "window", "doing"),
            line("d", BuildTask.SET_DOORS, "door", "doing"),
            line("l", BuildTask.SET_DOORS, "lintel", "doing"),
            line("g", BuildTask.SET_WINDOWS, "glass", "doing"));
    var apart = new java.util.ArrayList<>(all);
    apart.add(latch);
    var house = Houses.oneBedroom();
    var id = "order/windows-and-doors";
    assertThat(task(plan(house, one), id).name()).isEqualTo("Order: window");
    assertThat(task(plan(house, all), id).name()).isEqualTo("Order: windows and doors");
    assertThat(task(plan(house, apart), id).name())
        .isEqualTo("Order: lintel, door and 2 more of windows and doors");
    assertThat(plan(house, List.of(latch)).task(id)).isEmpty();
  }

  // The goods in its name change with the house; the kind of supplier does not.
  @Test
  void an_own_link_finds_an_order_by_its_kind_of_supplier() {
    var house =
        with(
            Houses.oneBedroom(),
            List.of(own("A", "1", Map.of())),
            List.of(link("Order: Windows and doors", "A", "0", DurationUnit.DAYS, 2)),
            List.of(),
            List.of(),
            List.of());
    var plan = plan(house, List.of(line("w", BuildTask.SET_WINDOWS, "window", "doing")));
    assertThat(before(plan, "A")).contains("order/windows-and-doors");
  }

  // 13.2 h, crew of 2, day of 8 h: 0.825 d, up to 1 d (by hand; rounded up to half days).
  @ParameterizedTest
  @CsvSource({"13.2, 2, 8, 8", "8, 2, 8, 4", "8.1, 2, 8, 8", "0.1, 1, 8, 4", "33, 2, 10, 20"})
  void work_takes_its_hours_over_the_people_up_to_half_days(
      String hours, int people, int day, int expectedHours) {
    var each = new BigDecimal(hours).divide(BigDecimal.valueOf(people));
    assertThat(BuildTasks.halfDays(each, day * 60L))
        .isEqualByComparingTo(BigDecimal.valueOf(expectedHours * 60L));
  }

  @Test
  void hired_crews_work_in_the_projects_calendar_and_the_owner_in_the_owners() {
    var plan = plan(Houses.oneBedroom(), Houses.oneLineForEveryTask());
    var hired = task(plan, "electrical-first-fix");
    assertThat(hired.calendar()).isEqualTo("Weekdays");
    assertThat(hired.demands()).isEqualTo(Map.of("Electrical", 2));
    assertThat(hired.hours()).isEqualTo(20);
    assertThat(hired.minutes()).isEqualTo(12 * 60); // 10 h each: 1.25 d, up to 1.5 d
    assertThat(hired.optimisticMinutes()).isEqualTo(8 * 60); // 5 h each
    assertThat(hired.pessimisticMinutes()).isEqualTo(20 * 60); // 20 h each: 2.5 d
    var own = task(plan, "wall-studs");
    assertThat(own.calendar()).isEqualTo("Weekends");
    assertThat(own.demands()).isEqualTo(Map.of("Owner", 2));
    assertThat(own.hours()).isEqualTo(30); // the owner takes half as long again
    assertThat(own.minutes()).isEqualTo(16 * 60); // 15 h each
    var cure = task(plan, "cure");
    assertThat(cure.elapsed()).isTrue();
    assertThat(cure.minutes()).isEqualTo(7L * 24 * 60);
    assertThat(cure.calendar()).isEqualTo("Round the clock");
  }

  @Test
  void mixed_work_is_two_tasks_with_the_same_links() {
    var plan = plan(Houses.oneBedroom(), Houses.oneLineForEveryTask());
    var hired = task(plan, "wall-tiles");
    var own = task(plan, "wall-tiles:own");
    assertThat(hired.hours()).isEqualTo(10);
    assertThat(own.hours()).isEqualTo(15);
    assertThat(own.calendar()).isEqualTo("Weekends");
    assertThat(before(plan, own.id())).isEqualTo(before(plan, hired.id()));
    assertThat(own.costLines()).containsExactly("all/wall-tiles:doing:own");
    assertThat(hired.costLines()).contains("all/wall-tiles:doing", "all/wall-tiles:thing");
  }

  @Test
  void without_a_permit_nobody_inspects_and_without_a_loan_none_is_closed() {
    var scope =
        Houses.oneBedroom(UnitSystem.METRIC, Map.of(ProjectQuestions.PERMIT, PermitClass.NONE));
    var plan = plan(scope, Houses.oneLineForEveryTask());
    assertThat(plan.tasks()).noneMatch(t -> t.kind() == WorkTask.Kind.INSPECTION);
    assertThat(plan.task("certificate")).isEmpty();
    assertThat(plan.task("loan-closing")).isEmpty();
    assertThat(task(plan(Houses.twoBoxes(), List.of()), "loan-closing").minutes())
        .isEqualTo(30L * 24 * 60);
  }

  // ---- own tasks, links, crews, calendars ---------------------------------------------------

  private static OwnTask own(String id, String days, Map<String, Integer> demands) {
    return new OwnTask(
        id,
        "Task " + id,
        new BigDecimal(days),
        DurationUnit.DAYS,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        demands,
        "Own tasks!A" + (id.charAt(0) - 'A' + 2));
  }

  private static OwnLink link(String before, String after, String lag, DurationUnit unit, int row) {
    return new OwnLink(
        before,
        after,
        LinkRelation.FINISH_TO_START,
        new BigDecimal(lag),
        unit,
        "Own links!A" + row,
        "Own links!B" + row);
  }

  private static Scope with(
      Scope s,
      List<OwnTask> tasks,
      List<OwnLink> links,
      List<CrewEntry> crews,
      List<CalendarEntry> calendars,
      List<HolidayEntry> holidays) {
    return ScopeEdit.of(s)
        .ownTasks(tasks)
        .ownLinks(links)
        .crews(crews)
        .calendars(calendars)
        .holidays(holidays)
        .scope();
  }

  private static Scope ownOnly(Map<Question, Object> more) {
    var choices = new HashMap<>(more);
    choices.put(ProjectQuestions.GENERATED_TASKS, GeneratedTasks.NONE);
    return Houses.oneBedroom(UnitSystem.METRIC, choices);
  }

  @Test
  void own_tasks_alone_are_planned_as_entered() {
    var ten = BigDecimal.TEN;
    var zero = BigDecimal.ZERO;
    var fourTens =
        new CalendarEntry(
            "Four tens", List.of(ten, ten, ten, ten, zero, zero, zero), true, "Calendars!A2");
    var crew = new CrewEntry("Gang", 2, Optional.of("four tens"), Optional.empty(), "Crews!A2");
    var late =
        new OwnTask(
            "C",
            "Last",
            new BigDecimal("3"),
            DurationUnit.ELAPSED_DAYS,
            Optional.of(new BigDecimal("2")),
            Optional.of(new BigDecimal("5")),
            Optional.of("Four tens"),
            Optional.of(LocalDate.of(2027, 4, 1)),
            Optional.of(LocalDate.of(2027, 5, 1)),
            Map.of(),
            "Own tasks!A4");
    var scope =
        with(
            ownOnly(Map.of()),
            List.of(own("A", "2", Map.of("Gang", 2)), own("B", "0", Map.of()), late),
            List.of(
                link("A", "task b", "-1.5", DurationUnit.DAYS, 2),
                link("B", "C", "1", DurationUnit.DAYS, 3)),
            List.of(crew),
            List.of(fourTens),
            List.of(new HolidayEntry(LocalDate.of(2027, 3, 8), "Ours", "Holidays!A2")));
    var empty = new Estimate(java.util.Currency.getInstance("USD"), List.of(), List.of());
    var result = WorkPlanner.plan(scope, empty, Optional.empty(), FACTS);
    var plan = result.plan().orElseThrow(() -> new AssertionError(result.problems()));
    assertThat(plan.tasks()).extracting(WorkTask::id).containsExactly("A", "B", "C");
    assertThat(task(plan, "A").minutes()).isEqualTo(2 * 8 * 60);
    assertThat(task(plan, "B").kind()).isEqualTo(WorkTask.Kind.MILESTONE);
    assertThat(task(plan, "C").minutes()).isEqualTo(3 * 24 * 60);
    assertThat(task(plan, "C").pessimisticMinutes()).isEqualTo(5 * 24 * 60);
    assertThat(task(plan, "C").notBefore()).contains(LocalDate.of(2027, 4, 1));
    assertThat(plan.links()).extracting(WorkLink::lagMinutes).containsExactly(-12L * 60, 10L * 60);
    assertThat(plan.crews()).containsExactly(new WorkPlan.CrewLimit("Gang", 2, "Four tens"));
    assertThat(plan.holidays()).hasSize(1);
    assertThat(plan.calendars()).extracting(CalendarEntry::name).contains("Weekdays", "Four tens");
  }

  @Test
  void faults_in_own_tasks_and_links_are_all_named_with_their_cells() {
    var crew = new CrewEntry("Gang", 2, Optional.of("Moonlight"), Optional.empty(), "Crews!A2");
    var never =
        new CalendarEntry(
            "Never", java.util.Collections.nCopies(7, BigDecimal.ZERO), true, "Calendars!A2");
    var scope =
        with(
            ownOnly(Map.of()),
            List.of(
                own("A", "2", Map.of("Gang", 3)),
                own("B", "1", Map.of("Nobody", 1)),
                own("A", "1", Map.of())),
            List.of(
                link("A", "Z", "0", DurationUnit.DAYS, 2),
                link("A", "A", "0", DurationUnit.DAYS, 3),
                link("wall-board", "A", "0", DurationUnit.DAYS, 4)),
            List.of(crew),
            List.of(never),
            List.of());
    var empty = new Estimate(java.util.Currency.getInstance("USD"), List.of(), List.of());
    var result = WorkPlanner.plan(scope, empty, Optional.empty(), FACTS);
    assertThat(result.plan()).isEmpty();
    assertThat(result.problems().stream().map(Problem::message))
        .anyMatch(m -> m.startsWith("Own tasks!A2: 3 of crew 'Gang'; at most 2"))
        .anyMatch(m -> m.startsWith("Own tasks!A3: 1 of crew 'Nobody'"))
        .anyMatch(m -> m.startsWith("Own tasks!A2: the id 'A' again"))
        .anyMatch(m -> m.startsWith("Own links!B2: no task 'Z'"))
        .anyMatch(m -> m.startsWith("Own links!A3: 'A' linked to itself"))
        .anyMatch(m -> m.startsWith("Own links!A4: no task 'wall-board'"))
        .anyMatch(m -> m.startsWith("Crews!A2: no calendar 'Moonlight'"))
        .anyMatch(m -> m.startsWith("Calendars!A2: calendar 'Never' never works"));
  }

  @Test
  void own_tasks_join_the_generated_ones_and_no_end_stays_open() {
    var scope =
        with(
            Houses.oneBedroom(),
            List.of(own("A", "2", Map.of()), own("B", "3", Map.of())),
            List.of(
                link("Shell watertight", "A", "0", DurationUnit.DAYS, 2),
                link("A", "wall-tiles", "2", DurationUnit.ELAPSED_DAYS, 3),
                link("blinds", "B", "0", DurationUnit.DAYS, 4)),
            List.of(),
            List.of(),
            List.of());
    var lines =
        Houses.oneLineForEveryTask().stream().filter(l -> !l.id().endsWith("/blinds")).toList();
    var result = result(scope, lines);
    var plan = result.plan().orElseThrow();
    assertThat(before(plan, "A")).containsExactly("watertight");
    assertThat(before(plan, "wall-tiles")).contains("A");
    assertThat(before(plan, "wall-tiles:own")).contains("A");
    assertThat(task(plan, "A").stage()).isEqualTo(Stage.SHELL);
    assertThat(before(plan, "B")).containsExactly("start");
    assertThat(leads(plan, "B", "move-in")).isTrue();
    assertThat(result.problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.severity()).isEqualTo(Problem.Severity.REMARK);
              assertThat(p.cell()).isEqualTo("A4");
            });
    Engine.dates(plan, START);
  }

  @Test
  void a_row_of_crews_sets_number_and_calendar_of_a_trade() {
    var crew =
        new CrewEntry("electrical", 1, Optional.of("Six days"), Optional.empty(), "Crews!A2");
    var scope =
        with(Houses.oneBedroom(), List.of(), List.of(), List.of(crew), List.of(), List.of());
    var plan = plan(scope, Houses.oneLineForEveryTask());
    var first = task(plan, "electrical-first-fix");
    assertThat(first.demands()).isEqualTo(Map.of("electrical", 1));
    assertThat(first.calendar()).isEqualTo("Six days");
    assertThat(first.minutes()).isEqualTo(20 * 60); // 20 h alone
  }

  @Test
  void crews_are_as_many_as_are_asked_for_where_they_are_not_limited() {
    var scope =
        Houses.oneBedroom(
            UnitSystem.METRIC, Map.of(cornerpost.scope.OptionsQuestions.LIMIT_CREWS, "no"));
    var plan = plan(scope, Houses.oneLineForEveryTask());
    var electricians =
        plan.crews().stream().filter(c -> c.name().equals("Electrical")).findFirst().orElseThrow();
    int asked =
        plan.tasks().stream().mapToInt(t -> t.demands().getOrDefault("Electrical", 0)).sum();
    assertThat(electricians.available()).isEqualTo(asked).isGreaterThan(2);
  }

  @Test
  void a_crew_of_nobody_that_is_needed_is_a_fault() {
    var crew = new CrewEntry("Tiling", 0, Optional.empty(), Optional.empty(), "Crews!A2");
    var scope =
        with(Houses.oneBedroom(), List.of(), List.of(), List.of(crew), List.of(), List.of());
    assertThat(result(scope, Houses.oneLineForEveryTask()).problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .startsWith("Crews!A2: nobody available of crew 'Tiling'");
  }
}

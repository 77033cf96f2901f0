package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The longest path between two events that are chosen. */
class EventPathTest {
  private static final LocalDate MONDAY = OwnScope.MONDAY;

  private static PlanResult result(OwnScope scope, RunOptions options) {
    return Planner.plan(scope.scope(), Facts.supplied(), Optional.empty(), options);
  }

  private static EventPath path(OwnScope scope, RunOptions options) {
    var result = result(scope, options);
    assertThat(result.faults()).isEmpty();
    return result.plan().orElseThrow().programme().path();
  }

  private static EventPath path(OwnScope scope, String from, String to) {
    return path(scope, RunOptions.NONE.path(from, to));
  }

  private static List<String> ids(EventPath path) {
    return path.steps().stream().map(EventPath.Step::id).toList();
  }

  // The plant of fourteen activities, its six ways from start to finish printed with their lengths
  // in weeks (F. S. Hillier, G. J. Lieberman, Introduction to Operations Research, ch. 10):
  // ABCDGHM 40, ABCEHM 31, ABCEFJKN 43, ABCEFJLN 44, ABCIJKN 41, ABCIJLN 42. Of two ways between
  // the same two activities the longer is expected, and of a part of a way its length less what
  // lies before and after: C to N 44 - 2 - 4, E to M 31 - 2 - 4 - 10, I to N 42 - 2 - 4 - 10.
  @ParameterizedTest(name = "{0} to {1}: {2}, {3} weeks")
  @CsvSource({
    "A, N, A B C E F J L N, 44",
    "C, N, C E F J L N, 38",
    "A, M, A B C D G H M, 40",
    "C, M, C D G H M, 34",
    "E, M, E H M, 15",
    "I, N, I J L N, 26",
    "C, J, C E F J, 27"
  })
  void the_longest_of_the_published_ways_is_shown(String from, String to, String ids, int weeks) {
    // A week of the plant is a day of a calendar that works every day.
    var path = path(PublishedNetworks.worked("fourteen-activity-plant"), from, to);
    assertThat(ids(path)).containsExactly(ids.split(" "));
    assertThat(path.aloneDays()).isEqualByComparingTo(BigDecimal.valueOf(weeks));
    assertThat(path.workingDays()).isEqualByComparingTo(path.aloneDays().add(path.slackDays()));
    // Shown from the first to the last day of work, so the day on which it begins is not counted.
    assertThat(path.elapsedDays()).isEqualTo(path.workingDays().intValueExact() - 1);
  }

  // By hand: E is done after 20 weeks, but D and G keep H waiting until 29, so that M ends after 40
  // and not after 31.
  @Test
  void what_holds_a_step_outside_the_path_is_said() {
    var path = path(PublishedNetworks.worked("fourteen-activity-plant"), "E", "M");
    assertThat(path.slackDays()).isEqualByComparingTo("9");
    assertThat(path.steps().get(1).driver()).startsWith("waits for ");
    assertThat(path.steps().get(1).heldBy()).startsWith("waits for ");
    assertThat(path.steps().get(1).heldBy()).isNotEqualTo(path.steps().get(1).driver());
    assertThat(path.steps().get(2).heldBy()).isEmpty();
    var end = path.steps().get(2).name();
    assertThat(path.words())
        .endsWith(
            "The path alone takes 15 days; something outside it makes " + end + " 9 days later.");
  }

  @Test
  void days_of_the_steps_add_up_to_those_of_the_path() {
    var scope =
        PublishedNetworks.worked("container-home").project(ProjectQuestions.CALENDAR, "Weekdays");
    var path = path(scope, "DEL", "MOVE");
    assertThat(ids(path))
        .containsExactly(
            "DEL MOD SET WLD FRM RPL REL INSP INS DRY PNT CAB FLR FIN MOVE".split(" "));
    var working =
        path.steps().stream()
            .map(EventPath.Step::workingDays)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(path.workingDays()).isEqualByComparingTo(working);
    assertThat(path.elapsedDays())
        .isEqualTo(path.steps().stream().mapToInt(EventPath.Step::elapsedDays).sum());
    assertThat(path.slackDays()).isEqualByComparingTo("0");
    assertThat(path.words())
        .contains("calendar Weekdays", "15 steps.", "Nothing outside the path makes");
  }

  // By hand, weekdays from Monday 2 November: A Mon to Wed, cure of 4 elapsed days from Wed 16:00
  // to
  // Sun 16:00, B Mon 9 to Tue 10, C starts 1 day after B starts: Tue 10 to Thu 12.
  @Test
  void each_step_says_its_driver_its_days_and_its_length() {
    var scope =
        new OwnScope()
            .project(ProjectQuestions.CALENDAR, "Weekdays")
            .task("A", 3)
            .task("W", "Cure", "4", DurationUnit.ELAPSED_DAYS)
            .task("B", 2)
            .task("C", 3)
            .link("A", "W")
            .link("W", "B")
            .link("B", "C", LinkRelation.START_TO_START, "1", DurationUnit.DAYS);
    var path = path(scope, "a", "TASK C");
    assertThat(path.steps())
        .extracting(
            EventPath.Step::id,
            EventPath.Step::driver,
            EventPath.Step::firstDay,
            EventPath.Step::lastDay,
            s -> s.lastsDays().intValueExact(),
            EventPath.Step::calendar,
            s -> s.workingDays().intValueExact(),
            EventPath.Step::elapsedDays)
        .containsExactly(
            row("A", "the path begins here", MONDAY, MONDAY.plusDays(2), 3, "Weekdays", 3, 2),
            row("W", "waits for task A", day(2), day(6), 4, "elapsed days", 2, 4),
            row("B", "waits for Cure", day(7), day(8), 2, "Weekdays", 2, 2),
            row(
                "C",
                "waits for the start of task B, and 1 d more",
                day(8),
                day(10),
                3,
                "Weekdays",
                2,
                2));
    assertThat(path.workingDays()).isEqualByComparingTo("9");
    assertThat(path.elapsedDays()).isEqualTo(10);
    assertThat(path.calendar()).isEqualTo("Weekdays");
    assertThat(path.words())
        .isEqualTo(
            "From task A, Mon 2 Nov 2026, to task C, Thu 12 Nov 2026: 10 elapsed days, 9 working"
                + " days of calendar Weekdays, 4 steps. Nothing outside the path makes task C"
                + " later.");
  }

  private static org.assertj.core.groups.Tuple row(Object... values) {
    return org.assertj.core.groups.Tuple.tuple(values);
  }

  private static LocalDate day(int after) {
    return MONDAY.plusDays(after);
  }

  @Test
  void a_crew_that_goes_from_task_to_task_is_a_step_of_the_path() {
    var scope =
        new OwnScope()
            .crew("Team", 1)
            .task("A", 3)
            .task("B", 2)
            .task("C", 1)
            .needs("A", "Team", 1)
            .needs("B", "Team", 1)
            .link("B", "C")
            .options(OptionsQuestions.PATH_FROM, "A")
            .options(OptionsQuestions.PATH_TO, "B");
    var from = path(scope, RunOptions.NONE);
    var back = path(scope, "B", "A");
    var there = from.steps().isEmpty() ? back : from;
    assertThat(there.steps()).hasSize(2);
    assertThat(there.steps().get(1).driver()).startsWith("waits for crew Team, busy with task ");
    var not = from.steps().isEmpty() ? from : back;
    assertThat(not.words())
        .contains("No path leads from task ", "One leads from task ")
        .contains("neither the links nor the order of the crews");
  }

  @Test
  void that_there_is_no_path_is_said() {
    var apart = path(new OwnScope().task("A", 3).task("B", 2), "A", "B");
    assertThat(apart.steps()).isEmpty();
    assertThat(apart.words())
        .isEqualTo(
            "No path leads from task A to task B: neither the links nor the order of the crews make"
                + " the second wait for the first.");
    assertThat(List.of(apart.from(), apart.to()))
        .containsExactly(Optional.of("A"), Optional.of("B"));
    var itself = path(new OwnScope().task("A", 3).task("B", 2), "B", "B");
    assertThat(ids(itself)).containsExactly("B");
  }

  @Test
  void an_own_network_without_delivery_shows_the_path_that_drives_it() {
    var scope =
        new OwnScope()
            .task("A", 3)
            .task("B", 2)
            .task("C", 4)
            .link("A", "B")
            .options(OptionsQuestions.PATH_FROM, "delivery")
            .options(OptionsQuestions.PATH_TO, "move-in");
    var result = result(scope, RunOptions.NONE);
    assertThat(result.problems()).isEmpty();
    assertThat(ids(result.plan().orElseThrow().programme().path())).containsExactly("A", "B");
    assertThat(ids(path(scope, "C", "C"))).containsExactly("C");
    assertThat(path(new OwnScope(), RunOptions.NONE).words()).isEmpty();
    var nameless =
        new OwnScope().task("1", "", "2", DurationUnit.DAYS).task("2", "", "3", DurationUnit.DAYS);
    assertThat(ids(path(nameless, RunOptions.NONE))).containsExactly("2");
  }

  @Test
  void the_command_line_overrules_the_sheet_one_end_at_a_time() {
    var scope =
        new OwnScope()
            .task("A", 3)
            .task("B", 2)
            .task("C", 4)
            .link("A", "B")
            .link("B", "C")
            .options(OptionsQuestions.PATH_FROM, "B")
            .options(OptionsQuestions.PATH_TO, "C");
    assertThat(ids(path(scope, RunOptions.NONE))).containsExactly("B", "C");
    assertThat(ids(path(scope, "A", "task b"))).containsExactly("A", "B");
  }

  @Test
  void a_name_that_no_task_has_is_a_fault_of_the_option_and_a_remark_on_the_sheet() {
    var scope = new OwnScope().task("roof-frame", 3).task("roof-cover", 2).task("paint", 1);
    var faults = result(scope, RunOptions.NONE.path("rooff-frame", "ceiling")).faults();
    assertThat(faults)
        .extracting(p -> p.message())
        .containsExactly(
            "--path-from rooff-frame: no task or milestone is called 'rooff-frame'; expected the id"
                + " or the name of a task of the plan; near to it: roof-frame",
            "--path-to ceiling: no task or milestone is called 'ceiling'; expected the id or the"
                + " name of a task of the plan, such as roof-frame");
    scope.options(OptionsQuestions.PATH_FROM, "roof").options(OptionsQuestions.PATH_TO, "paint");
    var kept = result(scope, RunOptions.NONE);
    assertThat(kept.faults()).isEmpty();
    assertThat(kept.problems())
        .singleElement()
        .satisfies(
            p ->
                assertThat(p.message())
                    .isEqualTo(
                        "Options!B1: no task or milestone is called 'roof' (Longest path from); the"
                            + " entry is kept, and no path is shown; expected the id or the name of"
                            + " a task of the plan; near to it: roof-frame, roof-cover"));
    var path = kept.plan().orElseThrow().programme().path();
    assertThat(path.steps()).isEmpty();
    assertThat(path.words())
        .isEqualTo(
            "No task or milestone is called 'roof': see Longest path from on sheet Options.");
  }

  @Test
  void a_name_of_several_tasks_is_a_fault_with_their_ids() {
    var scope =
        new OwnScope()
            .task("1", "Paint", "2", DurationUnit.DAYS)
            .task("2", "Paint", "2", DurationUnit.DAYS)
            .options(OptionsQuestions.PATH_TO, "paint");
    assertThat(result(scope, RunOptions.NONE).faults())
        .singleElement()
        .satisfies(
            p ->
                assertThat(p.message())
                    .isEqualTo(
                        "Options!B1: 2 tasks are called 'paint' (Longest path to); expected one of"
                            + " the ids 1, 2"));
  }

  // By hand: A and B are done, C began on Thursday, D waits for it.
  @Test
  void what_is_done_does_not_wait_any_more() {
    var scope =
        new OwnScope()
            .project(ProjectQuestions.STATUS, day(4))
            .task("A", 2)
            .task("B", 1)
            .task("C", 4)
            .task("D", 1)
            .link("A", "B")
            .link("B", "C")
            .link("C", "D")
            .done("A", MONDAY, day(1))
            .done("B", day(2), day(2))
            .started("C", day(3), "3");
    var path = path(scope, "A", "D");
    assertThat(path.steps())
        .extracting(EventPath.Step::driver)
        .containsExactly(
            "the path begins here", "done, after task A", "waits for task B", "waits for task C");
    assertThat(path.steps()).extracting(EventPath.Step::heldBy).containsOnly("");
    assertThat(path(scope, "A", "B").words()).endsWith("2 steps.");
  }
}

package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.ProjectQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Own tasks through the whole planner. Monday 2 November 2026 is the start unless said. */
class PlannerTest {
  private static final LocalDate MONDAY = OwnScope.MONDAY;

  private static Plan planned(OwnScope scope) {
    return PublishedNetworksTest.planned(scope, RunOptions.NONE);
  }

  private static PlanResult result(OwnScope scope) {
    return Planner.plan(scope.scope(), Facts.supplied(), Optional.empty(), RunOptions.NONE);
  }

  private static DatedTask task(Plan plan, String id) {
    return plan.programme().task(id).orElseThrow();
  }

  private static OwnScope weekdays() {
    return new OwnScope().project(ProjectQuestions.CALENDAR, "Weekdays");
  }

  // ---- faults -------------------------------------------------------------------------------

  @Test
  void a_loop_is_named_in_order_with_the_cells_of_its_links() {
    var scope =
        new OwnScope()
            .task("A", "Dig", "1", DurationUnit.DAYS)
            .task("B", "Form", "1", DurationUnit.DAYS)
            .task("C", "Pour", "1", DurationUnit.DAYS)
            .task("D", "Rest", "1", DurationUnit.DAYS)
            .link("A", "B")
            .link("A", "D")
            .link("B", "C", LinkRelation.START_TO_START, "1", DurationUnit.DAYS)
            .link("C", "A");
    var result = result(scope);
    assertThat(result.plan()).isEmpty();
    assertThat(result.faults()).hasSize(1);
    var fault = result.faults().get(0);
    assertThat(fault.found()).contains("'Dig' before 'Form' before 'Pour' before 'Dig'");
    assertThat(fault.message()).contains("Own links!A2", "Own links!A4", "Own links!A5");
    assertThat(fault.message()).doesNotContain("A3");
  }

  @Test
  void every_fault_of_the_work_is_told_at_once() {
    var scope =
        new OwnScope()
            .task("A", 1)
            .task("B", 2)
            .calendar("A", "Moonlight")
            .crew("Team", 1)
            .needs("B", "Team", 2)
            .link("A", "Z")
            .link("B", "B");
    var result = result(scope);
    assertThat(result.plan()).isEmpty();
    assertThat(result.faults())
        .extracting(p -> p.sheet() + "!" + p.cell())
        .containsExactlyInAnyOrder("Own tasks!A2", "Own tasks!A3", "Own links!B2", "Own links!A3");
  }

  @Test
  void calendars_without_a_common_hour_are_a_fault_of_the_task() {
    var scope =
        new OwnScope()
            .task("A", 1)
            .calendar("A", "Weekdays")
            .crew("Friends", 2, "Weekends", "")
            .needs("A", "Friends", 1);
    assertThat(result(scope).faults())
        .singleElement()
        .satisfies(p -> assertThat(p.sheet() + "!" + p.cell()).isEqualTo("Own tasks!A2"));
  }

  // By hand, status Monday 9 November, weekdays: A is taken as begun and finished on the 2nd; B has
  // not begun and takes the five days from the 9th; C began on the 9th with half its week to do; D
  // has not finished, so what is left of it goes on; E is done, its two days left are not believed.
  @Test
  void contradictions_in_progress_are_said_and_planned_round() {
    var scope =
        weekdays()
            .project(ProjectQuestions.STATUS, MONDAY.plusDays(7))
            .task("A", 5)
            .task("B", 5)
            .task("C", 5)
            .task("D", 8)
            .task("E", 5)
            .done("A", MONDAY.plusDays(3), MONDAY)
            .started("B", MONDAY.plusDays(8), "2")
            .progress(
                "C",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new BigDecimal("0.5")))
            .done("gone", MONDAY, MONDAY)
            .done("D", MONDAY, MONDAY.plusDays(20))
            .progress(
                "E",
                Optional.of(MONDAY),
                Optional.of(MONDAY.plusDays(2)),
                Optional.of(new BigDecimal("2")),
                Optional.empty());
    var result = result(scope);
    assertThat(result.faults()).isEmpty();
    assertThat(result.problems())
        .extracting(p -> p.sheet() + "!" + p.cell() + ": " + p.expected())
        .containsExactly(
            "Progress!A2: taken as begun on the day it was finished",
            "Progress!A3: planned as not begun",
            "Progress!A4: taken as begun on the status date",
            "Progress!A5: the entry is kept and changes nothing",
            "Progress!A6: planned as not finished",
            "Progress!A7: planned as finished");
    var programme = result.plan().orElseThrow().programme();
    assertThat(programme.task("A").orElseThrow().done()).isTrue();
    assertThat(programme.task("A").orElseThrow().firstDay()).isEqualTo(MONDAY);
    assertThat(programme.task("B").orElseThrow().started()).isFalse();
    assertThat(programme.task("B").orElseThrow().lastDay()).isEqualTo(MONDAY.plusDays(11));
    assertThat(programme.task("C").orElseThrow().firstDay()).isEqualTo(MONDAY.plusDays(7));
    assertThat(programme.task("C").orElseThrow().lastDay()).isEqualTo(MONDAY.plusDays(9));
    assertThat(programme.task("D").orElseThrow().lastDay()).isEqualTo(MONDAY.plusDays(9));
    assertThat(programme.task("E").orElseThrow().lastDay()).isEqualTo(MONDAY.plusDays(2));
  }

  // By hand: B began on Wednesday though A, before it, is to go on until Friday the 13th: the three
  // days left of B are planned behind A, to the 18th.
  @Test
  void work_begun_before_its_predecessor_was_done_is_said_and_its_rest_waits() {
    var scope =
        weekdays()
            .project(ProjectQuestions.STATUS, MONDAY.plusDays(7))
            .task("A", 10)
            .task("B", 5)
            .link("A", "B")
            .started("A", MONDAY, "5")
            .started("B", MONDAY.plusDays(2), "3");
    var result = result(scope);
    assertThat(result.problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.cell()).isEqualTo("A3");
              assertThat(p.found()).contains("'B' started before 'A', which is not finished");
            });
    var b = result.plan().orElseThrow().programme().task("B").orElseThrow();
    assertThat(b.firstDay()).isEqualTo(MONDAY.plusDays(2));
    assertThat(b.lastDay()).isEqualTo(MONDAY.plusDays(16));
  }

  @Test
  void a_second_row_for_a_task_is_a_fault() {
    var scope = weekdays().task("D", 5).done("D", MONDAY, MONDAY).done("D", MONDAY, MONDAY);
    assertThat(result(scope).faults())
        .singleElement()
        .satisfies(p -> assertThat(p.sheet() + "!" + p.cell()).isEqualTo("Progress!A3"));
  }

  // ---- dates ----------------------------------------------------------------------------------

  // By hand: 12 h on weekdays of 8 h: Monday and half of Tuesday; then 3 elapsed days to Friday
  // noon; a day after it is Friday afternoon and Monday morning.
  @Test
  void hours_days_and_elapsed_days_are_each_counted_their_own_way() {
    var plan =
        planned(
            weekdays()
                .task("A", "Pour", "12", DurationUnit.HOURS)
                .task("B", "Cure", "3", DurationUnit.ELAPSED_DAYS)
                .task("C", "Strip", "1", DurationUnit.DAYS)
                .link("A", "B")
                .link("B", "C"));
    assertThat(task(plan, "A").finish()).isEqualTo(LocalDateTime.of(2026, 11, 3, 12, 0));
    assertThat(task(plan, "B").finish()).isEqualTo(LocalDateTime.of(2026, 11, 6, 12, 0));
    assertThat(task(plan, "C").finish()).isEqualTo(LocalDateTime.of(2026, 11, 9, 12, 0));
    assertThat(task(plan, "C").lastDay()).isEqualTo(LocalDate.of(2026, 11, 9));
    assertThat(task(plan, "A").durationDays()).isEqualByComparingTo("1.5");
    assertThat(task(plan, "B").durationDays()).isEqualByComparingTo("3");
    assertThat(plan.programme().durationDays()).isEqualByComparingTo("5.5");
  }

  // By hand: lags of 2 working days, 2 elapsed days and 4 hours after Friday 16:00.
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "2, DAYS, 2026-11-11T08:00",
        "2, ELAPSED_DAYS, 2026-11-09T08:00",
        "3, ELAPSED_DAYS, 2026-11-09T16:00",
        "4, HOURS, 2026-11-09T12:00",
        "-1, DAYS, 2026-11-06T08:00"
      })
  void lags_are_of_working_days_hours_or_elapsed_days(String row) {
    var part = row.split(", ");
    var plan =
        planned(
            weekdays()
                .task("A", 5)
                .task("B", 1)
                .link(
                    "A",
                    "B",
                    LinkRelation.FINISH_TO_START,
                    part[0],
                    DurationUnit.valueOf(part[1])));
    var start = LocalDateTime.parse(part[2]);
    if (start.getHour() == 16) start = start.plusDays(1).withHour(8); // the day is over
    assertThat(task(plan, "B").start()).isEqualTo(start);
  }

  @Test
  void not_before_dates_and_deadlines_count_whole_days() {
    var plan =
        planned(
            weekdays()
                .task("A", 2)
                .task("B", 1)
                .link("A", "B")
                .notBefore("A", LocalDate.of(2026, 11, 4))
                .deadline("B", LocalDate.of(2026, 11, 5)));
    assertThat(task(plan, "A").firstDay()).isEqualTo(LocalDate.of(2026, 11, 4));
    assertThat(task(plan, "A").waitsFor()).isEqualTo("not before Wed 4 Nov 2026");
    assertThat(task(plan, "B").lastDay()).isEqualTo(LocalDate.of(2026, 11, 6));
    assertThat(task(plan, "B").totalFloatDays()).isEqualByComparingTo("-1");
    assertThat(task(plan, "A").waitsForIds()).isEmpty();
    assertThat(task(plan, "B").waitsForIds()).containsExactly("A");
    assertThat(task(plan, "B").waitsFor()).isEqualTo("waits for task A");
  }

  @Test
  void own_and_overridden_calendars_are_kept_with_their_holidays() {
    var plan =
        planned(
            new OwnScope()
                .week("Four tens", true, 10, 10, 10, 10, 0, 0, 0)
                .week("Weekdays", false, 8, 8, 8, 8, 8, 0, 0)
                .holiday(MONDAY)
                .task("A", 2)
                .calendar("A", "four tens")
                .task("B", 1)
                .calendar("B", "Weekdays"));
    // the holiday falls on the ten-hour week only: Tuesday and Wednesday
    assertThat(task(plan, "A").lastDay()).isEqualTo(MONDAY.plusDays(2));
    assertThat(task(plan, "A").task().minutes()).isEqualTo(1200);
    assertThat(task(plan, "B").lastDay()).isEqualTo(MONDAY);
  }

  // ---- progress -------------------------------------------------------------------------------

  @Test
  void real_dates_stay_and_what_remains_is_planned_from_the_status_date() {
    var status = LocalDate.of(2026, 11, 12); // a Thursday
    var plan =
        planned(
            weekdays()
                .project(ProjectQuestions.STATUS, status)
                .task("A", 5)
                .task("B", 5)
                .task("C", 2)
                .task("D", 1)
                .link("A", "B")
                .link("B", "C")
                .done("A", LocalDate.of(2026, 11, 3), LocalDate.of(2026, 11, 10))
                .started("B", LocalDate.of(2026, 11, 11), "3"));
    assertThat(task(plan, "A").firstDay()).isEqualTo(LocalDate.of(2026, 11, 3));
    assertThat(task(plan, "A").lastDay()).isEqualTo(LocalDate.of(2026, 11, 10));
    assertThat(task(plan, "A").done()).isTrue();
    assertThat(task(plan, "B").firstDay()).isEqualTo(LocalDate.of(2026, 11, 11));
    // Thursday, Friday, Monday
    assertThat(task(plan, "B").lastDay()).isEqualTo(LocalDate.of(2026, 11, 16));
    assertThat(task(plan, "C").lastDay()).isEqualTo(LocalDate.of(2026, 11, 18));
    assertThat(task(plan, "D").firstDay()).isEqualTo(status);
    assertThat(task(plan, "D").waitsFor()).isEqualTo("can go on from the status date");
    PlanChecker.check(plan);
  }

  @Test
  void what_is_done_on_the_status_date_lets_the_next_begin() {
    var plan =
        planned(
            weekdays()
                .project(ProjectQuestions.STATUS, MONDAY.plusDays(1))
                .task("A", 1)
                .task("B", 1)
                .link("A", "B")
                .done("A", MONDAY, MONDAY.plusDays(1)));
    assertThat(task(plan, "A").lastDay()).isEqualTo(MONDAY.plusDays(1));
    assertThat(task(plan, "B").firstDay()).isEqualTo(MONDAY.plusDays(1));
  }

  @Test
  void the_status_date_of_the_run_overrules_that_of_the_workbook() {
    var scope = weekdays().task("A", 1).project(ProjectQuestions.STATUS, MONDAY);
    var plan = PublishedNetworksTest.planned(scope, RunOptions.NONE.asOf(MONDAY.plusDays(2)));
    assertThat(plan.statusDate()).isEqualTo(MONDAY.plusDays(2));
    assertThat(task(plan, "A").firstDay()).isEqualTo(MONDAY.plusDays(2));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13})
  void planning_again_gives_the_same_plan(long seed) {
    var scope = RandomOwnScopes.of(seed, 20, 2);
    var once = planned(scope);
    var again = planned(scope);
    assertThat(again.programme()).isEqualTo(once.programme());
    assertThat(again.finance()).isEqualTo(once.finance());
    PlanChecker.check(once);
    var atStart = PublishedNetworksTest.planned(scope, RunOptions.NONE.asOf(MONDAY));
    assertThat(atStart.programme()).isEqualTo(once.programme());
  }

  // Everything as planned up to a day, and planned again from that day: nothing moves.
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"container-home", "nine-activity-site", "carriage-house"})
  void work_that_goes_as_planned_keeps_the_plan(String name) {
    var plan =
        planned(PublishedNetworks.worked(name).project(ProjectQuestions.CALENDAR, "Weekdays"));
    var status = plan.programme().start().plusDays(21); // a Monday
    var scope =
        PublishedNetworks.worked(name)
            .project(ProjectQuestions.CALENDAR, "Weekdays")
            .project(ProjectQuestions.STATUS, status);
    var calendar = WorkCalendar.weekdays(List.of());
    for (var t : plan.programme().tasks()) {
      if (t.lastDay().isBefore(status)) {
        scope.done(t.id(), t.firstDay(), t.lastDay());
      } else if (t.firstDay().isBefore(status)) {
        long left = calendar.between(status.atStartOfDay(), t.finish());
        scope.started(t.id(), t.firstDay(), Days.of(left, 480).toPlainString());
      }
    }
    var later = planned(scope);
    for (var t : plan.programme().tasks()) {
      var now = task(later, t.id());
      assertThat(now.firstDay()).as(t.id()).isEqualTo(t.firstDay());
      assertThat(now.lastDay()).as(t.id()).isEqualTo(t.lastDay());
    }
    assertThat(later.programme().durationDays())
        .isEqualByComparingTo(plan.programme().durationDays());
  }

  // ---- crews ----------------------------------------------------------------------------------

  @Test
  void a_task_that_waits_for_a_crew_says_which_and_why() {
    var plan =
        planned(
            weekdays()
                .crew("Owner", 1, "Weekdays", "")
                .task("A", "Framing", "3", DurationUnit.DAYS)
                .task("B", "Deck", "2", DurationUnit.DAYS)
                .task("C", "Paint", "1", DurationUnit.DAYS)
                .needs("A", "Owner", 1)
                .needs("B", "Owner", 1)
                .link("A", "C"));
    assertThat(plan.programme().crewLimited()).isTrue();
    assertThat(task(plan, "B").waitsFor()).isEqualTo("waits for crew Owner, busy with Framing");
    assertThat(task(plan, "B").waitsForIds()).containsExactly("A");
    assertThat(task(plan, "B").start()).isAfter(task(plan, "B").earlyStart());
    assertThat(plan.programme().drivingPath()).containsExactly("A", "B");
    assertThat(plan.programme().criticalPath()).containsExactly("A", "C");
    assertThat(plan.programme().durationDays()).isEqualByComparingTo("5");
    assertThat(plan.programme().lowerBoundDays().add(plan.programme().gapDays()))
        .isEqualByComparingTo("5");
    PlanChecker.check(plan);
  }

  // Both were begun by the one man; from the status date, a Monday, they go on one after the other.
  @Test
  void two_started_tasks_of_one_crew_go_on_in_turn() {
    var status = MONDAY.plusDays(7);
    var plan =
        planned(
            weekdays()
                .project(ProjectQuestions.STATUS, status)
                .crew("Owner", 1, "Weekdays", "")
                .task("A", 5)
                .task("B", 5)
                .task("C", 1)
                .needs("A", "Owner", 1)
                .needs("B", "Owner", 1)
                .needs("C", "Owner", 1)
                .started("A", MONDAY, "2")
                .started("B", MONDAY.plusDays(1), "2"));
    var last = List.of(task(plan, "A").lastDay(), task(plan, "B").lastDay());
    assertThat(plan.programme().durationDays()).isEqualByComparingTo("10");
    assertThat(last).doesNotHaveDuplicates();
    assertThat(task(plan, "A").firstDay()).isEqualTo(MONDAY);
    assertThat(task(plan, "A").waitsFor()).isEqualTo("under way");
    assertThat(plan.finance().months()).isNotEmpty();
  }

  // By hand: two weeks of weekdays; two of three people for six days from Monday.
  @Test
  void crew_load_is_counted_week_by_week() {
    var plan =
        planned(
            weekdays()
                .crew("Team", 3, "Weekdays", "")
                .holiday(MONDAY.plusDays(2))
                .task("A", 6)
                .needs("A", "Team", 2));
    assertThat(plan.programme().crewLoad())
        .containsExactly(
            new Programme.CrewDay("Team", MONDAY, BigDecimal.valueOf(8), BigDecimal.valueOf(12)),
            new Programme.CrewDay(
                "Team", MONDAY.plusDays(7), BigDecimal.valueOf(4), BigDecimal.valueOf(15)));
  }

  @Test
  void a_crew_without_a_calendar_works_when_its_tasks_do() {
    var plan =
        planned(
            weekdays()
                .crew("Friends", 2)
                .task("A", 2)
                .calendar("A", "Weekends")
                .needs("A", "Friends", 1));
    assertThat(task(plan, "A").firstDay()).isEqualTo(MONDAY.plusDays(5));
    assertThat(task(plan, "A").lastDay()).isEqualTo(MONDAY.plusDays(6));
    assertThat(plan.programme().crewLoad())
        .containsExactly(
            new Programme.CrewDay("Friends", MONDAY, BigDecimal.valueOf(2), BigDecimal.valueOf(4)));
  }

  // A link may run against the order in which a crew goes: B's finish holds A's, less ten days.
  @Test
  void an_overlap_that_runs_against_the_crew_is_no_loop() {
    var scope =
        weekdays()
            .crew("Team", 1)
            .task("A", 2)
            .task("B", 4)
            .task("S", 2)
            .task("C", 3)
            .task("D", 3)
            .needs("A", "Team", 1)
            .needs("B", "Team", 1)
            .needs("C", "Team", 1)
            .needs("D", "Team", 1)
            .link("B", "C")
            .link("B", "D")
            .link("S", "B")
            .link("B", "A", LinkRelation.FINISH_TO_FINISH, "-10", DurationUnit.DAYS);
    var plan = planned(scope);
    PlanChecker.check(plan);
    assertThat(plan.programme().crewLimited()).isTrue();
    assertThat(task(plan, "A").firstDay()).isBefore(task(plan, "B").firstDay());
    var late =
        PublishedNetworksTest.planned(
            scope, RunOptions.NONE.delaying(List.of(new RunOptions.DelayOption("A", 3))));
    PlanChecker.check(late);
  }

  @Test
  void no_tasks_at_all_are_a_plan_of_no_days() {
    var plan = planned(new OwnScope());
    assertThat(plan.programme().durationDays()).isEqualByComparingTo("0");
    assertThat(plan.programme().tasks()).isEmpty();
    assertThat(plan.programme().drivingPath()).isEmpty();
    assertThat(plan.programme().finish()).isEqualTo(MONDAY);
    assertThat(plan.finance().draws()).isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void no_link_date_or_crew_number_is_ever_broken(long seed) {
    var plan = planned(RandomOwnScopes.of(seed, 40, 3));
    PlanChecker.check(plan);
    for (var t : plan.programme().tasks()) {
      assertThat(t.start()).as(t.id()).isAfterOrEqualTo(t.earlyStart());
    }
  }
}

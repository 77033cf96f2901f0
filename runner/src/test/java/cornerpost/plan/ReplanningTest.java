package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.schedule.TradeOff;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReplanningTest {
  private static Plan planned(OwnScope scope, RunOptions options) {
    return PublishedNetworksTest.planned(scope, options);
  }

  private static RunOptions late(String event, int days) {
    return RunOptions.NONE.delaying(List.of(new RunOptions.DelayOption(event, days)));
  }

  // ---- the curve ----------------------------------------------------------------------------

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void slip_curve_is_what_full_runs_give_for_every_slip_from_0_to_60(long seed) {
    var scope = RandomOwnScopes.of(seed, 14, 2);
    var curve = planned(scope, late("T2", 9)).replanning().slip().orElseThrow();
    assertThat(curve.points()).hasSize(61);
    var plain = planned(scope, RunOptions.NONE);
    for (var p : curve.points()) {
      var run = planned(scope, p.days() == 0 ? RunOptions.NONE : late("T2", p.days()));
      assertThat(p.moveIn()).as("%s days", p.days()).isEqualTo(run.programme().moveIn());
      assertThat(p.moveInDays())
          .isEqualTo(
              (int)
                  java.time.temporal.ChronoUnit.DAYS.between(
                      plain.programme().moveIn(), run.programme().moveIn()));
    }
  }

  // The example of DelaysTest, worked there by hand: delivery on Monday 2 November has 14 days of
  // float, for the permit is granted on the 13th and the work begins on the 16th.
  @Test
  void slope_is_nothing_while_float_lasts_and_the_last_day_is_named() {
    var scope =
        new OwnScope()
            .project(ProjectQuestions.CALENDAR, "Weekdays")
            .project(ProjectQuestions.TIME_ALLOWED, new BigDecimal("10"))
            .options(OptionsQuestions.RENT, new BigDecimal("1000"))
            .task("delivery", 0)
            .task("permit", 10)
            .task("work", 5)
            .task("move-in", 0)
            .link("delivery", "work")
            .link("permit", "work")
            .link("work", "move-in");
    for (var t : List.of("delivery", "permit", "work", "move-in")) scope.calendar(t, "Weekdays");
    var curve = planned(scope, late("delivery", 20)).replanning().slip().orElseThrow();
    assertThat(curve.points().subList(0, 15)).allSatisfy(p -> assertThat(p.moveInDays()).isZero());
    assertThat(curve.points().get(15).moveInDays()).isPositive();
    assertThat(curve.lastDay()).contains(OwnScope.MONDAY.plusDays(14));
    assertThat(curve.kinks().get(0).days()).isEqualTo(15);
  }

  // ---- other orders -------------------------------------------------------------------------

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void other_orders_keep_links_and_crews_and_are_never_later(long seed) {
    var scope = RandomOwnScopes.of(seed, 14, 2);
    for (var event : List.of("T1", "T4")) {
      var plan = planned(scope, late(event, 11));
      var q = plan.replanning().resequencing().orElseThrow();
      for (var choice : List.of(q.soonest(), q.fewest())) {
        assertThat(choice.moveIn()).isBeforeOrEqualTo(q.present());
        assertThat(choice.changed()).isGreaterThanOrEqualTo(choice.atLeast());
        PlanChecker.check(with(plan, choice));
      }
      assertThat(q.fewest().changed()).isLessThanOrEqualTo(q.soonest().changed());
    }
  }

  /** The same plan with the days of that order. */
  static Plan with(Plan plan, Replanning.Choice choice) {
    var days = new HashMap<String, Replanning.TaskDays>();
    choice.days().forEach(d -> days.put(d.id(), d));
    var tasks = new ArrayList<DatedTask>();
    for (var t : plan.programme().tasks()) {
      var d = days.get(t.id());
      tasks.add(
          new DatedTask(
              t.task(),
              d.start(),
              d.finish(),
              t.firstDay(),
              t.lastDay(),
              t.durationDays(),
              t.earlyStart(),
              t.earlyFinish(),
              t.lateStart(),
              t.lateFinish(),
              t.earlyFirstDay(),
              t.earlyLastDay(),
              t.lateFirstDay(),
              t.lateLastDay(),
              t.totalFloatDays(),
              t.freeFloatDays(),
              t.drivesMoveIn(),
              t.critical(),
              t.done(),
              t.started(),
              t.waitsFor(),
              t.waitsForIds()));
    }
    var p = plan.programme();
    var programme =
        new Programme(
            tasks,
            p.start(),
            p.finish(),
            p.moveIn(),
            p.delivery(),
            p.durationDays(),
            p.crewLimited(),
            p.lowerBoundDays(),
            p.gapDays(),
            p.proved(),
            p.criticalPath(),
            p.drivingPath(),
            p.deliveryToMoveIn(),
            p.deliveryFloatDays(),
            p.crewLoad(),
            p.findings(),
            EventPath.NONE,
            Slippage.NONE);
    return new Plan(
        plan.scope(),
        plan.facts(),
        plan.book(),
        plan.lines(),
        plan.estimate(),
        plan.work(),
        programme,
        plan.orders(),
        plan.cutting(),
        plan.risk(),
        plan.finance(),
        plan.checks(),
        plan.problems(),
        plan.statusDate(),
        plan.fingerprint());
  }

  // By hand: one crew was to do A (2 days, waits for the late box) and then B (3 days, free). Ten
  // days of waiting hold both in the present order; B can be done first.
  @Test
  void what_does_not_wait_is_pulled_forward_and_the_idle_crew_is_named() {
    var scope =
        new OwnScope()
            .crew("Carpenters", 1)
            .task("box", 0)
            .task("A", 2)
            .task("B", 3)
            .task("C", 9)
            .link("box", "A")
            .link("A", "C")
            .needs("A", "Carpenters", 1)
            .needs("B", "Carpenters", 1);
    var q = planned(scope, late("box", 10)).replanning().resequencing().orElseThrow();
    assertThat(q.pull())
        .singleElement()
        .satisfies(
            m -> {
              assertThat(m.id()).isEqualTo("B");
              assertThat(m.to()).isEqualTo(OwnScope.MONDAY);
              assertThat(m.from()).isEqualTo(OwnScope.MONDAY.plusDays(12));
            });
    assertThat(q.idle().get(0).crew()).isEqualTo("Carpenters");
    assertThat(q.idle().get(0).workingDays()).isEqualTo(5);
    // only A must move: B keeps its day (from the 4th on) in the order with the fewest changes
    assertThat(q.fewest().changed()).isEqualTo(1);
    assertThat(q.fewest().atLeast()).isEqualTo(1);
  }

  @ParameterizedTest(name = "{0}, delivery {1} days later")
  @CsvSource({"mid-build-late-delivery, 0", "two-bedroom-two-boxes, 12", "studio-20hc-metric, 40"})
  void nothing_behind_a_hold_point_and_nothing_begun_or_booked_is_done_sooner(
      String example, int days) {
    var house = Houses.scope(example);
    var options = days == 0 ? RunOptions.NONE : late("delivery", days);
    var book = java.util.Optional.of(Houses.book(house));
    var plan =
        Planner.plan(house, cornerpost.fact.Facts.supplied(), book, options).plan().orElseThrow();
    var booked =
        house.progress().stream().filter(p -> p.booked().isPresent()).map(p -> p.task()).toList();
    var behind = new HashSet<String>();
    for (var t : plan.work().tasks()) {
      boolean open = !plan.programme().task(t.id()).orElseThrow().done();
      if (t.kind() == WorkTask.Kind.INSPECTION && open) behind.add(t.id());
    }
    for (boolean more = true; more; ) {
      more = false;
      for (var l : plan.work().links()) {
        if (behind.contains(l.before())) more |= behind.add(l.after());
      }
    }
    var q = plan.replanning().resequencing().orElseThrow();
    for (var moves : List.of(q.soonest().moves(), q.fewest().moves(), q.pull())) {
      for (var m : moves) {
        assertThat(plan.programme().task(m.id()).orElseThrow().started()).as(m.id()).isFalse();
        if (m.days() < 0) assertThat(behind).doesNotContain(m.id());
        assertThat(booked).doesNotContain(m.id());
      }
    }
    assertThat(q.soonest().moveIn()).isBeforeOrEqualTo(q.present());
    assertThat(q.fewest().moveIn()).isBeforeOrEqualTo(q.present());
    for (var choice : List.of(q.soonest(), q.fewest())) PlanChecker.check(with(plan, choice));
    assertThat(q.fewest().changed()).isLessThanOrEqualTo(q.soonest().changed());
    assertThat(q.fewest().changed()).isEqualTo(q.fewest().atLeast()); // shown to be the fewest
  }

  // The bearing plates are first needed for the task that fixes them: its crew must have them
  // there.
  @Test
  void the_look_ahead_says_what_must_be_on_site() {
    var house = Houses.scope("mid-build-late-delivery");
    var book = java.util.Optional.of(Houses.book(house));
    var plan =
        Planner.plan(house, cornerpost.fact.Facts.supplied(), book, RunOptions.NONE)
            .plan()
            .orElseThrow();
    var plates =
        plan.replanning().ahead().orElseThrow().crews().stream()
            .flatMap(c -> c.items().stream())
            .filter(i -> i.id().equals("bearing-plates"))
            .findFirst()
            .orElseThrow();
    assertThat(plates.ready())
        .anyMatch(r -> r.startsWith("on site: Bearing plate"))
        .anyMatch(r -> r.startsWith("on site: Anchor bolt"));
    for (var o : plan.orders()) {
      assertThat(plan.work().task(o.firstTask())).as(o.item()).isPresent();
    }
  }

  // ---- again --------------------------------------------------------------------------------

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void without_progress_and_delay_the_replan_is_the_plan_and_twice_is_once(long seed) {
    var scope = RandomOwnScopes.of(seed, 14, 2);
    var first = planned(scope, RunOptions.NONE);
    assertThat(planned(scope, late("T3", 0)).programme()).isEqualTo(first.programme());
    assertThat(first.replanning().slip()).isEmpty();
    assertThat(first.replanning().resequencing()).isEmpty();
    assertThat(first.replanning().recovery()).isEmpty();
    var once = planned(scope, late("T3", 8));
    var twice = planned(scope, late("T3", 8));
    assertThat(twice.programme()).isEqualTo(once.programme());
    assertThat(twice.replanning()).isEqualTo(once.replanning());
  }

  /** A of 8 days and B of 5 for the same crew, a week on. */
  private static OwnScope oneCrewForTwo() {
    return new OwnScope()
        .project(ProjectQuestions.STATUS, OwnScope.MONDAY.plusDays(7))
        .crew("Carpenters", 1)
        .task("A", 8)
        .task("B", 5)
        .needs("A", "Carpenters", 1)
        .needs("B", "Carpenters", 1);
  }

  // By hand: the one crew is three days from the end of A; B, 5 days, has 10 days of C behind it.
  // B first would end on the 15th day; but nobody is called off A: B starts on the fourth day.
  @Test
  void nobody_is_called_off_work_that_is_half_done() {
    var scope =
        oneCrewForTwo().task("C", 10).link("B", "C").started("A", OwnScope.MONDAY.plusDays(2), "3");
    var programme = planned(scope, RunOptions.NONE).programme();
    assertThat(programme.task("A").orElseThrow().lastDay()).isEqualTo(OwnScope.MONDAY.plusDays(9));
    assertThat(programme.task("B").orElseThrow().firstDay())
        .isEqualTo(OwnScope.MONDAY.plusDays(10));
    assertThat(programme.moveIn()).isEqualTo(OwnScope.MONDAY.plusDays(24));
  }

  // One crew cannot be at two tasks: it goes on with the one it began first, then with the other.
  @Test
  void of_two_tasks_under_way_with_one_crew_that_begun_first_goes_on() {
    var scope =
        oneCrewForTwo()
            .started("A", OwnScope.MONDAY.plusDays(4), "3")
            .started("B", OwnScope.MONDAY.plusDays(2), "2");
    var programme = planned(scope, RunOptions.NONE).programme();
    assertThat(programme.task("B").orElseThrow().lastDay()).isEqualTo(OwnScope.MONDAY.plusDays(8));
    assertThat(programme.task("A").orElseThrow().lastDay()).isEqualTo(OwnScope.MONDAY.plusDays(11));
  }

  @Test
  void a_firm_booking_is_not_pulled_forward() {
    var scope =
        new OwnScope()
            .task("A", 2)
            .task("B", 2)
            .link("A", "B")
            .booked("B", OwnScope.MONDAY.plusDays(9));
    assertThat(planned(scope, RunOptions.NONE).programme().task("B").orElseThrow().firstDay())
        .isEqualTo(OwnScope.MONDAY.plusDays(9));
  }

  // Three days from Monday on are over by the second Monday; nobody has said that A is done.
  @Test
  void work_under_way_whose_time_is_over_ends_on_the_status_date() {
    var status = OwnScope.MONDAY.plusDays(7);
    var scope =
        new OwnScope()
            .project(ProjectQuestions.STATUS, status)
            .task("A", 3)
            .task("B", 2)
            .link("A", "B")
            .progress(
                "A",
                java.util.Optional.of(OwnScope.MONDAY),
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                java.util.Optional.empty());
    var programme = planned(scope, RunOptions.NONE).programme();
    assertThat(programme.task("A").orElseThrow().lastDay()).isEqualTo(status);
    assertThat(programme.task("B").orElseThrow().lastDay()).isEqualTo(status.plusDays(1));
  }

  // A takes two days, so B cannot begin on the second; a booking for the third day holds.
  @Test
  void a_booking_that_cannot_be_kept_is_said() {
    var scope = new OwnScope().task("A", 2).task("B", 2).link("A", "B");
    var broken = planned(scope.booked("B", OwnScope.MONDAY.plusDays(1)), RunOptions.NONE);
    assertThat(broken.problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.found())
                  .isEqualTo("task 'B' is booked for 2026-11-03 but begins on 2026-11-04");
              assertThat(p.cell()).isEqualTo("A2");
            });
    var kept = new OwnScope().task("A", 2).task("B", 2).link("A", "B");
    assertThat(planned(kept.booked("B", OwnScope.MONDAY.plusDays(2)), RunOptions.NONE).problems())
        .isEmpty();
  }

  // ---- days won back ------------------------------------------------------------------------

  // By hand: A 10 days, then B 10 days; extra hands do 0.6 of a usual hand's work, so a crew of two
  // at 30 an hour costs 480 a day of A and gains half a day for 480 x 0.5 x 0.4 / 0.6 = 160; B at
  // 15 an hour and one hand: 120 a day, 40 for half a day. At most 2 x 10 x 0.6 / 1.6 = 7.5, so 7
  // half days. Overlap is switched off. Seven half days of B come first: three days cost 240, the
  // fourth takes the seventh half of B and one half of A, 40 + 160.
  @Test
  void the_cheapest_hands_win_the_first_days() {
    var scope =
        new OwnScope()
            .options(OptionsQuestions.EXTRA_HANDS, new BigDecimal("0.6"))
            .options(OptionsQuestions.OVERLAP, BigDecimal.ZERO)
            .options(OptionsQuestions.WANTED, OwnScope.MONDAY.plusDays(15))
            .crew("Masons", 2, "", "30")
            .crew("Painter", 1, "", "15")
            .task("A", 10)
            .task("B", 10)
            .link("A", "B")
            .needs("A", "Masons", 2)
            .needs("B", "Painter", 1);
    var r = planned(scope, RunOptions.NONE).replanning().recovery().orElseThrow();
    assertThat(r.from()).isEqualTo(OwnScope.MONDAY.plusDays(19));
    assertThat(r.reached()).isTrue();
    assertThat(r.steps()).extracting(s -> s.days()).containsExactly(1, 1, 1, 1);
    assertThat(r.steps())
        .extracting(s -> s.cost().stripTrailingZeros().toPlainString())
        .containsExactly("80", "80", "80", "200");
    assertThat(r.cost()).isEqualByComparingTo("440");
  }

  // In one calendar the price of every day won is that of the exact trade-off, in half days.
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void days_won_in_one_calendar_cost_what_the_exact_trade_off_says(long seed) {
    var random = new java.util.SplittableRandom(seed);
    var scope =
        new OwnScope()
            .options(OptionsQuestions.EXTRA_HANDS, new BigDecimal("0.5"))
            .options(OptionsQuestions.OVERLAP, BigDecimal.ZERO)
            .options(OptionsQuestions.WANTED, OwnScope.MONDAY);
    var jobs = new ArrayList<TradeOff.Job>();
    var ties = new ArrayList<TradeOff.Tie>();
    for (int i = 0; i < 6; i++) {
      int days = random.nextInt(3, 10);
      int rate = random.nextInt(1, 9) * 5;
      scope.crew("C" + i, 1, "", "" + rate).task("T" + i, days).needs("T" + i, "C" + i, 1);
      int most = (int) Math.floor(2 * days * 0.5 / 1.5 + 1e-9);
      jobs.add(new TradeOff.Job("T" + i, 2 * days, 2 * days - most, rate * 400L));
      for (int b = 0; b < i; b++) {
        if (random.nextInt(3) > 0) continue;
        scope.link("T" + b, "T" + i);
        ties.add(TradeOff.Tie.of("T" + b, "T" + i));
      }
    }
    var exact = TradeOff.of(jobs, ties);
    var r = planned(scope, RunOptions.NONE).replanning().recovery().orElseThrow();
    for (var s : r.steps()) {
      long halves =
          2 * (1 + java.time.temporal.ChronoUnit.DAYS.between(OwnScope.MONDAY, s.moveIn()));
      assertThat(s.total().movePointRight(2).longValueExact()).isEqualTo(exact.cost(halves));
    }
    LocalDate last = r.steps().isEmpty() ? r.from() : r.steps().get(r.steps().size() - 1).moveIn();
    assertThat(2 * (java.time.temporal.ChronoUnit.DAYS.between(OwnScope.MONDAY, last)))
        .isLessThan(exact.shortestEnd()); // a day less cannot be
  }
}

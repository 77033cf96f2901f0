package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DelaysTest {
  private static Plan planned(OwnScope scope, String event, int days) {
    return PublishedNetworksTest.planned(
        scope, RunOptions.NONE.delaying(List.of(new RunOptions.DelayOption(event, days))));
  }

  private static Plan planned(OwnScope scope) {
    return PublishedNetworksTest.planned(scope, RunOptions.NONE);
  }

  // Own example of 83 days; slips computed with it: delivery has no float, the foundation 5 days.
  @ParameterizedTest(name = "{0} {1} days late: {2}")
  @CsvSource({
    "DEL, 3, 86",
    "DEL, 5, 88",
    "DEL, 10, 93",
    "FND, 5, 83",
    "FND, 6, 84",
    "FND, 10, 88",
    "FND, 0, 83",
    "containers delivered (MILESTONE), 10, 93"
  })
  void a_slip_moves_move_in_as_computed(String event, int days, int duration) {
    var programme = planned(PublishedNetworks.worked("container-home"), event, days).programme();
    assertThat(programme.durationDays()).isEqualByComparingTo(BigDecimal.valueOf(duration));
  }

  // The same example: a slip of ten days gives ten days of float to what does not wait for it.
  @Test
  void float_of_the_others_grows_by_the_slip() {
    var programme = planned(PublishedNetworks.worked("container-home"), "DEL", 10).programme();
    assertThat(
            List.of("SITE", "FND", "SEP", "ROF", "WIN", "UTL").stream()
                .map(id -> programme.task(id).orElseThrow().totalFloatDays().intValueExact()))
        .containsExactly(15, 15, 57, 8, 9, 17);
  }

  // SCL Delay and Disruption Protocol, 2nd edition, 2017: concurrent delays of two parallel
  // critical paths count once.
  @Test
  void equal_delays_of_two_parallel_paths_count_once() {
    var scope =
        new OwnScope()
            .task("S", 0)
            .task("A", 20)
            .task("B", 20)
            .task("E", 0)
            .link("S", "A")
            .link("S", "B")
            .link("A", "E")
            .link("B", "E")
            .delay("A", 10, "rain")
            .delay("B", 10, "rain");
    var plan = planned(scope);
    assertThat(plan.programme().durationDays()).isEqualByComparingTo("30");
    // each alone adds nothing to the other, and both together add ten days, the network working
    // every day
    assertThat(plan.finance().delays()).extracting(d -> d.moveInDays()).containsExactly(0, 0, 10);
  }

  @Test
  void a_later_delay_counts_from_where_the_earlier_one_put_its_event() {
    var scope =
        new OwnScope().task("A", 5).task("B", 5).link("A", "B").delay("B", 3, "").delay("A", 2, "");
    assertThat(planned(scope).programme().durationDays()).isEqualByComparingTo("15");
  }

  // By hand: the permit takes Monday 2 to Friday 13 November, the work starts on Monday 16. Boxes
  // come on the 2nd at 08:00; fourteen days later is the 16th at 08:00, in time. 28 days late, on
  // the 30th, the work starts two weeks later: 14 days. Rent 1,000 a month for ten months is
  // 10,000 for 304.36875 days (months of 30.436875): 14 days cost 459.97.
  @Test
  void what_if_rows_and_float_of_delivery_agree_with_the_plan_of_that_delay() {
    var scope = house();
    var plan = planned(scope);
    assertThat(plan.programme().deliveryFloatDays()).contains(14);
    var rows = plan.finance().delays();
    assertThat(rows).extracting(d -> d.days()).containsExactly(7, 14, 28);
    assertThat(rows).extracting(d -> d.moveInDays()).containsExactly(0, 0, 14);
    for (var row : rows) {
      var late = planned(scope, "delivery", row.days());
      assertThat(late.programme().moveIn()).isEqualTo(row.moveIn());
      assertThat(ChronoUnit.DAYS.between(plan.programme().moveIn(), row.moveIn()))
          .isEqualTo(row.moveInDays());
    }
    assertThat(rows.get(0).words())
        .contains("stays on Fri 20 Nov 2026; absorbed: 7 days by the float of Boxes delivered");
    assertThat(rows.get(2).cost()).isEqualByComparingTo("459.97");
    assertThat(rows.get(2).words())
        .contains("Move-in comes 14 days later, on Fri 4 Dec 2026")
        .contains("absorbed: 14 days by the float of Boxes delivered")
        .contains("USD 459.97");
  }

  /** Delivery on Monday 2 November, and a wait until Friday 13 that the work needs, too. */
  private static OwnScope house() {
    return new OwnScope()
        .project(ProjectQuestions.CALENDAR, "Weekdays")
        .project(ProjectQuestions.TIME_ALLOWED, new BigDecimal("10"))
        .options(OptionsQuestions.RENT, new BigDecimal("1000"))
        .task("order", "Order", "0", DurationUnit.DAYS)
        .task("delivery", "Boxes delivered", "0", DurationUnit.DAYS)
        .task("permit", "Permit", "10", DurationUnit.DAYS)
        .task("work", "Work", "5", DurationUnit.DAYS)
        .task("move-in", "Move-in", "0", DurationUnit.DAYS)
        .link("order", "delivery")
        .link("order", "permit")
        .link("delivery", "work")
        .link("permit", "work")
        .link("work", "move-in");
  }

  @Test
  void an_event_that_is_not_there_is_a_fault_of_the_command_line() {
    var result =
        Planner.plan(
            house().scope(),
            Facts.supplied(),
            Optional.empty(),
            RunOptions.NONE.delaying(
                List.of(
                    new RunOptions.DelayOption("crane", 2),
                    new RunOptions.DelayOption("work", -1))));
    assertThat(result.plan()).isEmpty();
    assertThat(result.faults())
        .extracting(p -> p.sheet() + "!" + p.cell())
        .containsExactly("--delay crane=2!", "--delay work=-1!");
  }

  @Test
  void an_entry_whose_event_is_not_there_any_more_is_kept_and_says_so() {
    var plan = planned(house().delay("deliveri", 3, ""));
    assertThat(plan.programme()).isEqualTo(planned(house()).programme());
    assertThat(plan.finance().delays()).noneMatch(d -> d.eventName().equals("deliveri"));
    assertThat(plan.problems())
        .anySatisfy(
            p -> {
              assertThat(p.sheet() + "!" + p.cell()).isEqualTo("Delays!A2");
              assertThat(p.found()).contains("deliveri");
              assertThat(p.expected()).contains("kept");
            });
  }

  @Test
  void a_delay_of_what_has_begun_changes_nothing_and_says_so() {
    var scope =
        house()
            .project(ProjectQuestions.STATUS, LocalDate.of(2026, 11, 9))
            .started("work", LocalDate.of(2026, 11, 2), "3")
            .delay("work", 5, "");
    var plan = planned(scope);
    assertThat(plan.finance().delays().get(0).words()).contains("has begun already");
    assertThat(plan.problems())
        .anySatisfy(p -> assertThat(p.sheet() + "!" + p.cell()).isEqualTo("Delays!A2"));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void a_delay_never_makes_the_finish_earlier(long seed) {
    var scope = RandomOwnScopes.of(seed, 14, 2);
    var plain = planned(scope);
    for (int i : IntStream.of(2, 5, 9).toArray()) {
      for (int days : List.of(1, 4, 11)) {
        var late = planned(scope, "T" + i, days);
        assertThat(late.programme().finish()).isAfterOrEqualTo(plain.programme().finish());
        assertThat(late.programme().durationDays())
            .isGreaterThanOrEqualTo(plain.programme().durationDays());
        PlanChecker.check(late);
        var effect = late.finance().delays().get(0);
        assertThat(effect.moveInDays()).isNotNegative();
      }
    }
  }
}

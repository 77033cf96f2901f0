package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.finance.Finance.DelayEffect;
import cornerpost.price.PriceBook;
import cornerpost.scope.Scope;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each point of a house's curve of slip beside a run of the whole planner with that delay and no
 * other of the same event: measured, priced, planned and dated anew each time. The trials of risk
 * are one instead of two thousand, and the runs leave out what steers a late plan (their own
 * curves, other orders, days won back): no date and no amount of delay rests on either.
 */
class SlipCurveOfHousesTest {
  private static final String EVENT = "delivery";
  private static final Facts FACTS = Facts.supplied();

  private record Run(LocalDate moveIn, BigDecimal cost, LocalDate craneDay) {}

  private static RunOptions late(int days) {
    var delays =
        days == 0
            ? List.<RunOptions.DelayOption>of()
            : List.of(new RunOptions.DelayOption(EVENT, days));
    return new RunOptions(
        Optional.empty(), delays, OptionalLong.empty(), OptionalInt.of(1), "000000000000");
  }

  private static Run run(Scope scope, Optional<PriceBook> book, int days) {
    var plan = Planner.unsteered(scope, FACTS, book, late(days)).plan().orElseThrow();
    var entered = plan.finance().delays().stream().filter(d -> d.event().equals(EVENT)).toList();
    assertThat(entered).hasSize(days == 0 ? 0 : 1);
    return new Run(
        plan.programme().moveIn(),
        entered.stream().map(DelayEffect::cost).findFirst().orElse(BigDecimal.ZERO),
        plan.programme().task("set-boxes").orElseThrow().firstDay());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"mid-build-late-delivery", "one-bedroom-40hc"})
  void curve_is_what_separate_runs_give_for_every_slip_from_0_to_60(String example) {
    var scope = Houses.withoutDelays(Houses.scope(example));
    var book = Optional.of(Houses.book(scope));
    var runs = new ConcurrentHashMap<Integer, Run>();
    IntStream.rangeClosed(0, 60).parallel().forEach(k -> runs.put(k, run(scope, book, k)));

    var replanning = Planner.plan(scope, FACTS, book, late(12)).plan().orElseThrow().replanning();
    var curve = replanning.slip().orElseThrow();
    assertThat(curve.event()).isEqualTo(EVENT);
    assertThat(curve.points()).hasSize(61);
    var first = runs.get(0);
    var day = replanning.dayCost();
    int last = -1;
    for (var p : curve.points()) {
      var run = runs.get(p.days());
      assertThat(p.moveIn()).as("%s days late", p.days()).isEqualTo(run.moveIn);
      assertThat(p.cost()).as("%s days late", p.days()).isEqualByComparingTo(run.cost);
      int moved = (int) ChronoUnit.DAYS.between(first.moveIn, run.moveIn);
      assertThat(p.moveInDays()).isEqualTo(moved);
      // The cost once more, from what a day costs: each of the two rates is rounded to the cent.
      var crane = run.craneDay.equals(first.craneDay) ? BigDecimal.ZERO : day.crane();
      var days = day.aDay().multiply(BigDecimal.valueOf(moved)).add(crane);
      assertThat(p.cost().subtract(days).abs())
          .isLessThanOrEqualTo(new BigDecimal("0.01").multiply(BigDecimal.valueOf(moved + 1)));
      if (moved == 0 && last == p.days() - 1) last = p.days();
    }
    int end = last;
    // No slope while float lasts, and its last day is the one that is named.
    assertThat(curve.points().subList(0, last + 1)).allMatch(p -> p.moveInDays() == 0);
    if (last < 60) {
      assertThat(curve.lastDay()).contains(curve.planned().plusDays(last));
      assertThat(curve.points().get(last + 1).moveInDays()).isPositive();
      assertThat(curve.kinks())
          .extracting(k -> k.days() + " " + k.words())
          .anyMatch(w -> w.startsWith((end + 1) + " ") && w.contains("float"));
    }
    // Each day that moves move-in by more than itself is told.
    for (int k = 1; k <= 60; k++) {
      int step = curve.points().get(k).moveInDays() - curve.points().get(k - 1).moveInDays();
      int on = k;
      if (step > 1) {
        assertThat(curve.kinks())
            .as("%s days late", k)
            .anyMatch(x -> x.days() == on && x.words().contains("by " + step));
      }
    }
  }
}

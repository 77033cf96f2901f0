package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyFiguresTest {
  private static Plan plan(String example) {
    var scope = Houses.scope(example);
    return Planner.plan(scope, Facts.supplied(), Optional.of(Houses.book(scope)), RunOptions.NONE)
        .plan()
        .orElseThrow();
  }

  // Inside of ISO 1496-1 boxes, rounded, from memory: a 40 ft high cube 12.03 m x 2.35 m = 28.3 m2,
  // a
  // 20 ft one 5.9 m x 2.35 m = 13.9 m2, two 40 ft ones 56.5 m2.
  @ParameterizedTest(name = "{0}: {1} m2")
  @CsvSource({"one-bedroom-40hc, 28.3", "studio-20hc-metric, 13.9", "two-bedroom-two-boxes, 56.5"})
  void floor_cost_of_each_unit_and_shares_agree_with_the_total(String example, double floor) {
    var plan = plan(example);
    var figures = plan.keyFigures();
    assertThat(figures.floor().orElseThrow().in(Unit.M2).doubleValue())
        .isCloseTo(floor, within(0.25));
    var area = figures.floor().get().in(figures.areaUnit());
    assertThat(figures.costPerArea().orElseThrow().multiply(area).doubleValue())
        .isCloseTo(plan.estimate().total().doubleValue(), within(1e-6));
    var shares =
        plan.estimate().byStage().values().stream()
            .map(figures::share)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(shares.doubleValue()).isCloseTo(1, within(1e-12));
  }

  @Test
  void without_boxes_there_is_no_floor_and_shares_of_nothing_are_nothing() {
    var plan =
        Planner.plan(
                new OwnScope().task("A", "A", "3", cornerpost.scope.DurationUnit.DAYS).scope(),
                Facts.supplied(),
                Optional.empty(),
                RunOptions.NONE)
            .plan()
            .orElseThrow();
    assertThat(plan.keyFigures().floor()).isEmpty();
    assertThat(plan.keyFigures().costPerArea()).isEmpty();
    assertThat(plan.keyFigures().share(BigDecimal.ONE)).isZero();
  }
}

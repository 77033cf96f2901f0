package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.takeoff.Line;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of the cutting plans of the example houses. */
class CuttingPlansTest {
  private static final Map<String, Plan> PLANS = new ConcurrentHashMap<>();

  private static Plan plan(String example) {
    return PLANS.computeIfAbsent(
        example,
        e -> {
          var scope = Houses.scope(e);
          var few =
              new RunOptions(
                  Optional.empty(),
                  List.of(),
                  OptionalLong.of(1),
                  OptionalInt.of(50),
                  "0123456789ab");
          return Planner.plan(scope, Facts.supplied(), Optional.of(Houses.book(scope)), few)
              .plan()
              .orElseThrow();
        });
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"one-bedroom-40hc", "studio-20hc-metric", "two-bedroom-two-boxes"})
  void the_pieces_of_a_line_are_together_as_long_as_its_quantity(String example) {
    var cut = plan(example).lines().stream().filter(l -> !l.pieces().isEmpty()).toList();
    assertThat(cut).hasSizeGreaterThan(5);
    for (Line line : cut) {
      double together =
          line.pieces().stream()
              .mapToDouble(p -> p.length().asDouble(Unit.M) * p.count().asDouble(Unit.EACH))
              .sum();
      assertThat(together).as(line.id()).isCloseTo(line.quantity().asDouble(Unit.M), within(1e-9));
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"one-bedroom-40hc", "studio-20hc-metric", "two-bedroom-two-boxes"})
  void a_plan_cuts_every_piece_and_no_bar_is_overfull(String example) {
    var plans = plan(example).cutting();
    assertThat(plans).isNotEmpty();
    for (var p : plans) {
      assertThat(p.bars()).as(p.item()).isBetween(p.leastBars(), p.leastBars() + 1);
      var cut =
          p.patterns().stream()
              .flatMap(b -> b.parts().stream().map(q -> Map.entry(q.mark(), q.count() * b.bars())))
              .collect(
                  Collectors.groupingBy(
                      Map.Entry::getKey, Collectors.summingInt(Map.Entry::getValue)));
      var wanted =
          p.cuts().stream()
              .collect(Collectors.toMap(CuttingPlan.Cut::mark, CuttingPlan.Cut::count));
      assertThat(cut).as(p.item()).isEqualTo(wanted);
      for (var b : p.patterns()) {
        assertThat(b.left()).isNotNegative();
        assertThat(b.cutLength().add(b.sawn()).add(b.left())).isEqualByComparingTo(p.stock());
      }
      assertThat(p.cutLength().add(p.sawn()).add(p.left()))
          .isEqualByComparingTo(p.stock().multiply(BigDecimal.valueOf(p.bars())));
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"one-bedroom-40hc", "studio-20hc-metric", "two-bedroom-two-boxes"})
  void a_plan_is_as_long_as_the_lines_it_comes_from(String example) {
    var plan = plan(example);
    for (var p : plan.cutting()) {
      double lines =
          plan.lines().stream()
              .filter(l -> !l.pieces().isEmpty())
              .filter(l -> l.resources().toString().contains("item=" + p.item() + ","))
              .mapToDouble(l -> l.quantity().asDouble(Unit.M))
              .sum();
      int pieces = p.cuts().stream().mapToInt(CuttingPlan.Cut::count).sum();
      // pieces are rounded up to a tenth of a millimetre
      assertThat(p.cutLength().doubleValue())
          .as(p.item())
          .isBetween(lines - 1e-6, lines + pieces * 1e-4);
    }
  }
}

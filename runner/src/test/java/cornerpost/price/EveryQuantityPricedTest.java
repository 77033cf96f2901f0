package cornerpost.price;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.RandomHouses;
import cornerpost.takeoff.Takeoff;
import cornerpost.trace.Leaf;
import java.io.IOException;
import java.util.HashSet;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws between quantities and prices, on houses drawn by a seed and both supplied books. */
class EveryQuantityPricedTest {
  private static final Facts FACTS = Facts.supplied();

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 20);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_quantity_is_priced_or_listed_and_every_price_used_is_a_row(long seed)
      throws IOException {
    boolean us = seed % 2 == 0;
    var scope = RandomHouses.of(seed, us ? UnitSystem.US : UnitSystem.METRIC);
    var book = ShippedPriceBooksTest.shipped(us ? "quarrow-plains-2026" : "velmark-coast-2026");
    var lines = Takeoff.measure(scope, FACTS);
    var result = Estimator.estimate(scope, lines, Optional.of(book), FACTS);
    assertThat(result.problems()).isEmpty();
    var estimate = result.estimate().orElseThrow();

    var priced =
        estimate.lines().stream()
            .flatMap(l -> l.quantityId().stream())
            .collect(Collectors.toCollection(HashSet::new));
    assertThat(priced).doesNotContainAnyElementsOf(estimate.unpriced());
    priced.addAll(estimate.unpriced());
    assertThat(priced).isEqualTo(lines.stream().map(Line::id).collect(Collectors.toSet()));

    for (var line : estimate.lines()) {
      for (var leaf : line.amount().allLeaves()) {
        if (leaf.kind() != Leaf.Kind.PRICE) continue;
        var key = leaf.key();
        boolean known =
            book.items().containsKey(key)
                || key.equals("tax")
                || key.startsWith("labour/")
                || key.startsWith("hours/")
                    && book.hours().containsKey(key.substring("hours/".length()));
        assertThat(known).as(line.id() + " uses price row " + key).isTrue();
      }
    }
  }
}

package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharesTest {
  private static List<BigDecimal> of(String... numbers) {
    return List.of(numbers).stream().map(BigDecimal::new).toList();
  }

  // The largest-remainder method by hand: 33.333... three times, one cent left to the first; the
  // second case has fractions .82 twice and .63 twice above the whole cents, four cents left.
  @Test
  void parts_are_those_of_the_largest_remainder() {
    assertThat(Shares.split(new BigDecimal("100.00"), of("1", "1", "1"), 2))
        .isEqualTo(of("33.34", "33.33", "33.33"));
    assertThat(
            Shares.split(
                new BigDecimal("1000.01"), of("3", "8", "6", "0", "7", "6", "5", "7", "9"), 2))
        .isEqualTo(
            of(
                "58.82", "156.86", "117.65", "0.00", "137.26", "117.65", "98.04", "137.26",
                "176.47"));
  }

  @Test
  void an_amount_below_nothing_is_divided_like_its_opposite() {
    assertThat(Shares.split(new BigDecimal("-100.00"), of("1", "1", "1"), 2))
        .isEqualTo(of("-33.34", "-33.33", "-33.33"));
  }

  @Test
  void weights_of_nothing_mean_equal_parts_and_no_parts_hold_nothing() {
    assertThat(Shares.split(new BigDecimal("0.03"), of("0", "0"), 2)).isEqualTo(of("0.02", "0.01"));
    assertThat(Shares.split(new BigDecimal("0.00"), List.of(), 2)).isEmpty();
    assertThatThrownBy(() -> Shares.split(BigDecimal.ONE, List.of(), 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Shares.split(BigDecimal.ONE, of("1", "-1"), 2))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13})
  void no_cent_is_lost_and_no_part_is_a_cent_off(long seed) {
    var random = new SplittableRandom(seed);
    for (int round = 0; round < 50; round++) {
      int decimals = random.nextInt(0, 4);
      var total = BigDecimal.valueOf(random.nextLong(0, 100_000_000), decimals);
      var weights = new ArrayList<BigDecimal>();
      var sum = BigDecimal.ZERO;
      for (int i = random.nextInt(1, 12); i > 0; i--) {
        weights.add(BigDecimal.valueOf(random.nextLong(1, 1_000_000), random.nextInt(0, 5)));
        sum = sum.add(weights.get(weights.size() - 1));
      }
      var parts = Shares.split(total, weights, decimals);
      assertThat(parts.stream().reduce(BigDecimal.ZERO, BigDecimal::add)).isEqualTo(total);
      for (int i = 0; i < parts.size(); i++) {
        // |part x sum - total x weight| < one minor unit x sum
        var off = parts.get(i).multiply(sum).subtract(total.multiply(weights.get(i))).abs();
        assertThat(off).isLessThan(sum.movePointLeft(decimals));
      }
    }
  }
}

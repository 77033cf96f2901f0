package cornerpost.finance;

import cornerpost.measure.Ratio;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Divides an amount so that the parts add up to it to the cent. */
public final class Shares {
  private Shares() {}

  /**
   * The largest-remainder method: each part is rounded down to the minor unit, and the cents left
   * over go one each to the parts that lost most; ties go to the part that stands first. A negative
   * total is divided as its opposite is.
   *
   * @param total with no more decimals than {@code decimals}
   * @param weights none below nothing; if all are nothing, all parts are equal
   * @param decimals of the currency's minor unit
   * @return as many parts as weights; empty only for no weights
   * @throws IllegalArgumentException for a negative weight, or for an amount without parts
   */
  public static List<BigDecimal> split(BigDecimal total, List<BigDecimal> weights, int decimals) {
    if (weights.isEmpty()) {
      if (total.signum() != 0) throw new IllegalArgumentException(total + " without any part");
      return List.of();
    }
    if (weights.stream().anyMatch(w -> w.signum() < 0)) {
      throw new IllegalArgumentException("a weight below nothing in " + weights);
    }
    if (total.signum() < 0) {
      return split(total.negate(), weights, decimals).stream().map(BigDecimal::negate).toList();
    }
    var sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    if (sum.signum() == 0) {
      return split(total, weights.stream().map(w -> BigDecimal.ONE).toList(), decimals);
    }
    var cents = total.movePointRight(decimals).toBigIntegerExact();
    var whole = new ArrayList<BigInteger>();
    var lost = new ArrayList<BigDecimal>();
    var left = cents;
    for (var w : weights) {
      // exact: cents x weight / sum, kept as a remainder over the common divisor
      var over = new BigDecimal(cents).multiply(w).divideAndRemainder(sum);
      whole.add(over[0].setScale(0, RoundingMode.UNNECESSARY).toBigInteger());
      lost.add(over[1]);
      left = left.subtract(whole.get(whole.size() - 1));
    }
    var byLoss =
        IntStream.range(0, weights.size())
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> lost.get(i)).reversed())
            .toList();
    for (int k = 0; k < left.intValueExact(); k++) {
      whole.set(byLoss.get(k), whole.get(byLoss.get(k)).add(BigInteger.ONE));
    }
    return whole.stream().map(c -> new BigDecimal(c, decimals)).toList();
  }

  /** The one over the other; empty over nothing. */
  public static Optional<BigDecimal> over(BigDecimal a, BigDecimal b) {
    return b.signum() == 0 ? Optional.empty() : Optional.of(a.divide(b, Ratio.PRECISION));
  }
}

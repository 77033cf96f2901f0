package cornerpost.measure;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An exact positive ratio. Conversion factors such as 1 / 0.09290304 have no finite decimal, yet a
 * conversion there and back must leave a number as it was; so factors stay as ratios until the end.
 */
public record Ratio(BigDecimal numerator, BigDecimal denominator) {
  /** No change. */
  public static final Ratio ONE = new Ratio(BigDecimal.ONE, BigDecimal.ONE);

  /** 34 digits: far beyond the 15 of a spreadsheet, so its noise never reaches a cent of ours. */
  public static final MathContext PRECISION = MathContext.DECIMAL128;

  public Ratio {
    requireNonNull(numerator, "numerator");
    requireNonNull(denominator, "denominator");
    if (numerator.signum() <= 0 || denominator.signum() <= 0) {
      throw new IllegalArgumentException(
          "A ratio is positive, found " + numerator + " / " + denominator);
    }
    if (numerator.compareTo(denominator) == 0) {
      numerator = BigDecimal.ONE;
      denominator = BigDecimal.ONE;
    }
  }

  // Spelled out, as a run of a second or two pays for linking what a record is given.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Ratio r
            && numerator.equals(r.numerator)
            && denominator.equals(r.denominator);
  }

  @Override
  public int hashCode() {
    return numerator.hashCode() * 31 + denominator.hashCode();
  }

  public static Ratio of(BigDecimal factor) {
    return new Ratio(factor, BigDecimal.ONE);
  }

  public static Ratio of(String factor) {
    return of(new BigDecimal(factor));
  }

  public Ratio times(Ratio other) {
    return new Ratio(
        numerator.multiply(other.numerator).stripTrailingZeros(),
        denominator.multiply(other.denominator).stripTrailingZeros());
  }

  public Ratio inverse() {
    return new Ratio(denominator, numerator);
  }

  public Ratio over(Ratio other) {
    return times(other.inverse());
  }

  public boolean isOne() {
    return numerator.compareTo(denominator) == 0;
  }

  /** {@code amount} times this ratio, to {@link #PRECISION} where the division does not end. */
  public BigDecimal applyTo(BigDecimal amount) {
    var product = amount.multiply(numerator);
    return denominator.compareTo(BigDecimal.ONE) == 0
        ? product
        : product.divide(denominator, PRECISION);
  }
}

package cornerpost.measure;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/** An amount in whole minor units of a currency (ISO 4217). Rounded already: it only adds. */
public record Money(BigDecimal amount, Currency currency) {
  /**
   * Decimals to which an unrounded amount is first brought. A spreadsheet computes in binary with
   * some 15 digits, so half a cent reaches it as 0.00499999999...; brought to eight decimals first,
   * both it and we see the half, and round it up. An exact amount that lies within 0.000000005 of
   * half a cent is taken as that half.
   */
  public static final int GUARD_DECIMALS = 8;

  public Money {
    requireNonNull(amount, "amount");
    requireNonNull(currency, "currency");
    int digits = minorDigits(currency);
    if (amount.stripTrailingZeros().scale() > digits) {
      throw new IllegalArgumentException(
          amount + " is finer than " + digits + " decimals of " + currency);
    }
    amount = amount.setScale(digits);
  }

  /** Half up to the minor unit, once per printed line; totals add the printed lines. */
  public static Money rounded(BigDecimal exact, Currency currency) {
    return new Money(halfUp(exact, minorDigits(currency)), currency);
  }

  /** The rounding of {@link #rounded}, for any number of decimals: guard digits first. */
  public static BigDecimal halfUp(BigDecimal exact, int decimals) {
    return exact
        .setScale(GUARD_DECIMALS, RoundingMode.HALF_UP)
        .setScale(decimals, RoundingMode.HALF_UP);
  }

  public static int minorDigits(Currency currency) {
    return Math.max(0, currency.getDefaultFractionDigits());
  }

  public static Money zero(Currency currency) {
    return new Money(BigDecimal.ZERO, currency);
  }

  public Money plus(Money other) {
    requireSame(other);
    return new Money(amount.add(other.amount), currency);
  }

  public Money minus(Money other) {
    requireSame(other);
    return new Money(amount.subtract(other.amount), currency);
  }

  private void requireSame(Money other) {
    if (!currency.equals(other.currency)) {
      throw new IllegalArgumentException("Currencies differ: " + currency + "/" + other.currency);
    }
  }

  /** Code and amount: {@code USD 12.50}. */
  @Override
  public String toString() {
    return currency.getCurrencyCode() + " " + amount.toPlainString();
  }
}

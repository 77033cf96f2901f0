package cornerpost.trace;

import java.math.BigDecimal;
import java.math.MathContext;

/** How a calculated number is shown inside an explanation: enough digits to follow it by hand. */
final class Shown {
  private static final MathContext SEVEN = new MathContext(7);

  /** Published values have three or four digits; more would be the conversion's, not theirs. */
  private static final MathContext FIVE = new MathContext(5);

  private Shown() {}

  /** A published number in another unit than its own. */
  static String converted(BigDecimal exact) {
    return exact.round(FIVE).stripTrailingZeros().toPlainString();
  }

  static String number(BigDecimal exact) {
    return exact.round(SEVEN).stripTrailingZeros().toPlainString();
  }
}

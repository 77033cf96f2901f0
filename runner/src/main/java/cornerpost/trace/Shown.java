package cornerpost.trace;

import java.math.BigDecimal;
import java.math.MathContext;

/** How a calculated number is shown inside an explanation: enough digits to follow it by hand. */
final class Shown {
  private static final MathContext SEVEN = new MathContext(7);

  private Shown() {}

  static String number(BigDecimal exact) {
    return exact.round(SEVEN).stripTrailingZeros().toPlainString();
  }
}

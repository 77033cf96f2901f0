package cornerpost.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Minutes of work as days. */
final class Days {
  private static final int DECIMALS = 10;

  private Days() {}

  /** The quotient to ten decimals, without trailing zeros. */
  static BigDecimal of(long minutes, long dayMinutes) {
    return plain(
        BigDecimal.valueOf(minutes)
            .divide(BigDecimal.valueOf(dayMinutes), DECIMALS, RoundingMode.HALF_UP));
  }

  /** To one decimal, for sentences. */
  static String shown(long minutes, long dayMinutes) {
    return plain(of(minutes, dayMinutes).setScale(1, RoundingMode.HALF_UP)).toPlainString();
  }

  /** Without trailing zeros and never as 1E+2. */
  static BigDecimal plain(BigDecimal number) {
    var bare = number.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }
}

package cornerpost.finance;

import cornerpost.measure.Money;
import java.math.BigDecimal;

/**
 * What a lender holds back from the value in place until the house is complete.
 *
 * @param share held back, 0 to 1
 * @param halvedHalfWay whether half of what is held is paid out once half the contract is in place,
 *     and half the share held back from then on (as in Arizona Administrative Code R7-2-1104)
 */
public record Retainage(BigDecimal share, boolean halvedHalfWay) {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  public Retainage {
    if (share.signum() < 0 || share.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException("Retainage is a share from 0 to 1, found " + share);
    }
  }

  /**
   * Held in all, while work goes on.
   *
   * @param value in place, 0 or more
   * @param contract the value of the whole
   */
  public BigDecimal held(BigDecimal value, BigDecimal contract, int decimals) {
    var full = value.multiply(share);
    boolean half = halvedHalfWay && value.multiply(TWO).compareTo(contract) >= 0;
    return Money.halfUp(half ? full.divide(TWO) : full, decimals);
  }
}

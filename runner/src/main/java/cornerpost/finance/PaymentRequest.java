package cornerpost.finance;

import java.math.BigDecimal;

/**
 * A request for payment against a contract.
 *
 * <p>Source of the arithmetic: Form RD 1924-18 (rev. 6-97), Partial Payment Estimate: amount due is
 * work completed and materials stored, less retainage, less previous payments.
 *
 * @param contract the contract with its changes
 * @param inPlace work completed and materials stored, in all
 * @param retained held back, in all
 * @param previous paid before
 */
public record PaymentRequest(
    BigDecimal contract, BigDecimal inPlace, BigDecimal retained, BigDecimal previous) {

  /** What falls due now; below nothing if more was paid before. */
  public BigDecimal due() {
    return inPlace.subtract(retained).subtract(previous);
  }

  /** What remains to be paid after this request, retainage with it. */
  public BigDecimal toFinish() {
    return contract.subtract(inPlace.subtract(retained));
  }
}

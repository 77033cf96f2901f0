package cornerpost.finance;

import java.math.BigDecimal;
import java.util.Locale;

/** The answer of the lender's review in a sentence. */
public final class Verdict {
  public static final String OUT_OF_BALANCE = "Out of balance: the borrower must bring ";
  public static final String IN_BALANCE = "In balance: ";
  public static final String LEFT_OVER = " would be left over";

  private Verdict() {}

  /**
   * @param surplus money there less money needed
   * @param currency its code
   * @param decimals of its minor unit
   */
  static String of(BigDecimal surplus, String currency, int decimals) {
    var amount = currency + " " + String.format(Locale.ROOT, "%,." + decimals + "f", surplus.abs());
    return surplus.signum() < 0 ? OUT_OF_BALANCE + amount : IN_BALANCE + amount + LEFT_OVER;
  }
}

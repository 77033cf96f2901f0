package cornerpost.measure;

import java.math.BigDecimal;

/** The month by which a stretch of days is turned into months and back. */
public final class MeanMonth {
  /** 146,097 days of 400 years of the Gregorian calendar, over their 4,800 months. */
  public static final BigDecimal DAYS = new BigDecimal("30.436875");

  private MeanMonth() {}
}

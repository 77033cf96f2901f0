package cornerpost.finance;

import cornerpost.measure.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The interest in the budget, and how long what is left of it carries the interest to come.
 *
 * <p>The months are taken one after the other at their own interest, for the loan grows: a reserve
 * over the interest of today's month would promise too much. Behind completion it goes on at a
 * twelfth of the year's interest on all that is then owed.
 *
 * @param budget with approved changes
 * @param charged by the lender so far
 * @param left nothing once more was charged than budgeted
 * @param toCome interest from the status date to completion
 * @param beyond what of that the reserve does not carry
 * @param parts length of each month to come in months: the first and the last may be shorter than
 *     one
 * @param carried of each of them, in months
 * @param months carried in all; empty where no interest is to come at all
 */
public record InterestReserve(
    BigDecimal budget,
    BigDecimal charged,
    BigDecimal left,
    BigDecimal toCome,
    BigDecimal beyond,
    List<BigDecimal> parts,
    List<BigDecimal> carried,
    Optional<BigDecimal> months) {
  /** Of a part of a month that stands on a sheet as a number. */
  private static final int PART_DECIMALS = 10;

  private static final BigDecimal MONTHS_A_YEAR = BigDecimal.valueOf(12);

  public InterestReserve {
    parts = List.copyOf(parts);
    carried = List.copyOf(carried);
  }

  /**
   * From the months.
   *
   * @param interest of each month to come, {@code parts} their lengths in months
   * @param afterwards interest of a whole month after completion
   */
  public static InterestReserve of(
      BigDecimal budget,
      BigDecimal charged,
      List<BigDecimal> interest,
      List<BigDecimal> parts,
      BigDecimal afterwards,
      int decimals) {
    var left = budget.subtract(charged).max(BigDecimal.ZERO);
    var carried = new ArrayList<BigDecimal>();
    var before = BigDecimal.ZERO;
    for (int i = 0; i < interest.size(); i++) {
      carried.add(
          carried(left.subtract(before).max(BigDecimal.ZERO), interest.get(i), parts.get(i)));
      before = before.add(interest.get(i));
    }
    var months = carried.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    if (afterwards.signum() > 0) {
      var over = left.subtract(before).max(BigDecimal.ZERO);
      months = months.add(over.divide(afterwards, Ratio.PRECISION));
    }
    boolean none = before.signum() == 0 && afterwards.signum() == 0;
    return new InterestReserve(
        budget.setScale(decimals),
        charged.setScale(decimals),
        left.setScale(decimals),
        before.setScale(decimals),
        before.subtract(left).max(BigDecimal.ZERO).setScale(decimals),
        parts,
        carried,
        none ? Optional.empty() : Optional.of(months));
  }

  private static BigDecimal carried(BigDecimal there, BigDecimal interest, BigDecimal part) {
    if (there.compareTo(interest) >= 0) return part;
    return part.multiply(there).divide(interest, Ratio.PRECISION);
  }

  /** From the row of the interest and the months to come. */
  static InterestReserve of(LoanTerms terms, CostReport.Row row, Outlook outlook, int decimals) {
    var months = outlook.months();
    var count = new Interest(terms.rate(), terms.dayCount(), decimals);
    var parts = new ArrayList<BigDecimal>();
    for (var m : months) {
      var first = m.span().month().atDay(1);
      long whole = count.days(first, first.plusMonths(1));
      parts.add(
          BigDecimal.valueOf(m.span().days())
              .divide(BigDecimal.valueOf(whole), PART_DECIMALS, RoundingMode.HALF_UP)
              .stripTrailingZeros());
    }
    var owed = months.isEmpty() ? BigDecimal.ZERO : months.get(months.size() - 1).owed();
    return of(
        row.revised(),
        row.toDate(),
        months.stream().map(Outlook.Month::interest).toList(),
        parts,
        owed.multiply(terms.rate()).divide(MONTHS_A_YEAR, Ratio.PRECISION),
        decimals);
  }
}

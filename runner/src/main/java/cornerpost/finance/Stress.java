package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.measure.Money;
import java.math.BigDecimal;
import java.util.List;

/**
 * What a setback would leave.
 *
 * @param hire of the days of a delay, rent and insurance with it
 * @param interest of those days
 * @param prices what dearer prices cost
 * @param surplus left over then
 */
public record Stress(
    String name, BigDecimal hire, BigDecimal interest, BigDecimal prices, BigDecimal surplus) {

  /** What the delay costs. */
  public BigDecimal delay() {
    return hire.add(interest);
  }

  /**
   * As it stands, later, dearer, and both.
   *
   * @param hireADay what is paid by the month, for a day
   * @param owed at completion: it bears interest for the days of the delay
   * @param open cost to complete at prices that nobody is held to
   */
  public static List<Stress> all(
      LoanTerms terms,
      BigDecimal surplus,
      BigDecimal hireADay,
      BigDecimal owed,
      BigDecimal open,
      int decimals) {
    long days = 7L * terms.stressWeeks();
    var hire = Money.halfUp(hireADay.multiply(BigDecimal.valueOf(days)), decimals);
    var interest = new Interest(terms.rate(), terms.dayCount(), decimals).of(owed, days);
    var delay = hire.add(interest);
    var prices = Money.halfUp(open.multiply(terms.stressPrices()), decimals);
    var none = BigDecimal.ZERO.setScale(decimals);
    return List.of(
        new Stress("As it stands", none, none, none, surplus),
        new Stress("Later", hire, interest, none, surplus.subtract(delay)),
        new Stress("Dearer", none, none, prices, surplus.subtract(prices)),
        new Stress(
            "Later and dearer", hire, interest, prices, surplus.subtract(delay).subtract(prices)));
  }

  /** From the rows of the cost report; orders and contracts hold the price of their lines. */
  static List<Stress> all(
      LoanTerms terms,
      List<Row> rows,
      Outlook outlook,
      Holding holding,
      LoanStatus.Facts facts,
      int decimals) {
    var months = outlook.months();
    var byMonth =
        CostReport.sum(rows, r -> r.line().treatment() == Treatment.TIME, r -> r.line().amount());
    return all(
        terms,
        holding.surplus(),
        byMonth.multiply(facts.hireFactor()),
        months.isEmpty() ? holding.drawn() : months.get(months.size() - 1).owed(),
        open(rows),
        decimals);
  }

  /** The delay looked at, in words. */
  public static String later(LoanTerms terms) {
    return terms.stressWeeks() + " weeks later";
  }

  /** The dearer prices looked at, in words. */
  public static String dearer(LoanTerms terms) {
    var percent = terms.stressPrices().movePointRight(2).stripTrailingZeros().toPlainString();
    return "prices up " + percent + " % on what is not under contract";
  }

  /** Cost to complete of what no order or contract holds the price of. */
  public static BigDecimal open(List<Row> rows) {
    return CostReport.sum(rows, Stress::open, Row::toComplete);
  }

  private static boolean open(Row r) {
    return (r.line().treatment() == Treatment.WORK || r.line().treatment() == Treatment.ON_TOP)
        && r.entered().committed().signum() == 0;
  }
}

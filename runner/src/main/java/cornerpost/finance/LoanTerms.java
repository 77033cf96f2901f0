package cornerpost.finance;

import cornerpost.measure.Money;
import cornerpost.measure.Unit;
import cornerpost.scope.Answers;
import cornerpost.scope.ContingencyRule;
import cornerpost.scope.DayCount;
import cornerpost.scope.DrawBasis;
import cornerpost.scope.InterestPayment;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.Question;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What the borrower has and what the lender lends.
 *
 * @param loan the most that can be drawn; nothing without a loan
 * @param cash the borrower's own, spent first
 * @param rate of interest for a year, as a share
 * @param value of the finished house
 * @param maturity the day the loan must be repaid or turned into another
 * @param interestIs what becomes of a month's interest
 * @param deposit share of a material's price paid with the order
 * @param invoiceDays from delivery or the end of the work to the day it is paid
 * @param contingency how much of it must be left
 * @param stressWeeks of delay to look at, {@code stressPrices} by which prices may rise
 * @param largeLine share of the total from which a line wants a quote or a contract
 */
public record LoanTerms(
    BigDecimal loan,
    BigDecimal cash,
    BigDecimal rate,
    DayCount dayCount,
    DrawBasis draws,
    Retainage retainage,
    Optional<BigDecimal> value,
    Optional<LocalDate> maturity,
    InterestPayment interestIs,
    BigDecimal deposit,
    int invoiceDays,
    ContingencyRule contingency,
    int stressWeeks,
    BigDecimal stressPrices,
    BigDecimal largeLine) {

  /** Interest paid each month, no deposits, invoices paid at once. */
  public LoanTerms(
      BigDecimal loan,
      BigDecimal cash,
      BigDecimal rate,
      DayCount dayCount,
      DrawBasis draws,
      Retainage retainage,
      Optional<BigDecimal> value,
      Optional<LocalDate> maturity) {
    this(
        loan,
        cash,
        rate,
        dayCount,
        draws,
        retainage,
        value,
        maturity,
        InterestPayment.PAID,
        BigDecimal.ZERO,
        0,
        ContingencyRule.IN_STEP,
        0,
        BigDecimal.ZERO,
        BigDecimal.ZERO);
  }

  /**
   * The answers of sheet Loan; what was not asked there counts as nothing.
   *
   * @param decimals of the currency, to which entered amounts are rounded
   */
  public static LoanTerms of(Answers loan, int decimals) {
    return new LoanTerms(
        Money.halfUp(amount(loan, LoanQuestions.AMOUNT), decimals),
        Money.halfUp(amount(loan, LoanQuestions.CASH), decimals),
        amount(loan, LoanQuestions.RATE),
        loan.has(LoanQuestions.DAY_COUNT)
            ? loan.option(LoanQuestions.DAY_COUNT, DayCount.class)
            : DayCount.ACTUAL_365,
        loan.has(LoanQuestions.DRAWS)
            ? loan.option(LoanQuestions.DRAWS, DrawBasis.class)
            : DrawBasis.STAGE,
        new Retainage(
            amount(loan, LoanQuestions.RETAINAGE),
            loan.has(LoanQuestions.RETAINAGE_HALVED) && loan.yes(LoanQuestions.RETAINAGE_HALVED)),
        loan.findFigure(LoanQuestions.VALUE).map(LoanTerms::plain),
        loan.findDate(LoanQuestions.MATURITY),
        loan.has(LoanQuestions.INTEREST_IS)
            ? loan.option(LoanQuestions.INTEREST_IS, InterestPayment.class)
            : InterestPayment.PAID,
        amount(loan, LoanQuestions.DEPOSIT),
        amount(loan, LoanQuestions.INVOICE_DAYS).intValueExact(),
        loan.has(LoanQuestions.CONTINGENCY_RULE)
            ? loan.option(LoanQuestions.CONTINGENCY_RULE, ContingencyRule.class)
            : ContingencyRule.IN_STEP,
        amount(loan, LoanQuestions.STRESS_WEEKS).intValueExact(),
        amount(loan, LoanQuestions.STRESS_PRICES),
        amount(loan, LoanQuestions.LARGE_LINE));
  }

  private static BigDecimal amount(Answers loan, Question question) {
    return loan.findFigure(question).map(LoanTerms::plain).orElse(BigDecimal.ZERO);
  }

  /** Amounts and shares are held in their base unit: one of the currency, one. */
  private static BigDecimal plain(Figure figure) {
    return figure.in(Unit.base(figure.dimension()));
  }
}

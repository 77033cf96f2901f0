package cornerpost.finance;

import cornerpost.measure.Money;
import cornerpost.measure.Unit;
import cornerpost.scope.Answers;
import cornerpost.scope.DayCount;
import cornerpost.scope.DrawBasis;
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
 */
public record LoanTerms(
    BigDecimal loan,
    BigDecimal cash,
    BigDecimal rate,
    DayCount dayCount,
    DrawBasis draws,
    Retainage retainage,
    Optional<BigDecimal> value,
    Optional<LocalDate> maturity) {

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
        loan.findDate(LoanQuestions.MATURITY));
  }

  private static BigDecimal amount(Answers loan, Question question) {
    return loan.findFigure(question).map(LoanTerms::plain).orElse(BigDecimal.ZERO);
  }

  /** Amounts and shares are held in their base unit: one of the currency, one. */
  private static BigDecimal plain(Figure figure) {
    return figure.in(Unit.base(figure.dimension()));
  }
}

package cornerpost.finance;

import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * Money against time. All amounts in the plan's currency, rounded to its minor unit.
 *
 * @param months from the first payment to the last
 * @param stages what each stage costs, has cost and still costs; interest is not among it
 * @param draws of the loan, those to come; none without a loan
 * @param status where there is a loan, or the cost ledger holds an entry: where the money stands
 * @param delays first those entered, then what a late delivery of the boxes would do
 */
public record Finance(
    List<CashMonth> months,
    List<Draw> draws,
    List<StageMoney> stages,
    Balance balance,
    List<DelayEffect> delays,
    InterestSum interest,
    Optional<LoanStatus> status) {

  /**
   * One month of cash.
   *
   * @param out what is paid out for the house, interest within its allowance with it; what is left
   *     of the allowance stands in the last month, so that the months add up to the total
   * @param drawn what the lender pays in
   * @param interest charged on what is drawn
   * @param cash the borrower's cash at the end of the month; below nothing is said, not hidden
   * @param borrowed what is owed at the end of the month
   */
  public record CashMonth(
      YearMonth month,
      BigDecimal out,
      BigDecimal cumulativeOut,
      BigDecimal drawn,
      BigDecimal interest,
      BigDecimal cash,
      BigDecimal borrowed) {}

  /**
   * One draw.
   *
   * @param earned value in place that it is for
   * @param retained held back from it
   * @param paid what the lender pays: earned less retained
   * @param inspections that it waits for
   * @param papers that go with the request
   */
  public record Draw(
      String id,
      LocalDate date,
      String event,
      Optional<Made> made,
      BigDecimal earned,
      BigDecimal retained,
      BigDecimal paid,
      BigDecimal cumulativePaid,
      List<String> inspections,
      List<String> papers) {
    public Draw {
      inspections = List.copyOf(inspections);
      papers = List.copyOf(papers);
    }
  }

  /**
   * What a draw is made of: all that has come in place since the one before, whatever the event it
   * is named after. Work, months and interest, less what is not lent, are what it earns.
   *
   * @param work in place, of every stage; with the last draw also what was not in the schedule of
   *     values
   * @param byTheMonth rent, hire and insurance of the months that have passed
   * @param interest charged
   * @param notLent what the borrower's own cash pays first, what is above the loan, and what was
   *     drawn ahead of the work before
   */
  public record Made(
      BigDecimal work, BigDecimal byTheMonth, BigDecimal interest, BigDecimal notLent) {}

  /**
   * A stage's money.
   *
   * @param done share of the work in place, 0 to 1
   */
  public record StageMoney(
      Stage stage, BigDecimal budget, BigDecimal done, BigDecimal inPlace, BigDecimal toComplete) {}

  /**
   * Whether the money finishes the house.
   *
   * @param undrawn loan not yet drawn
   * @param interestToCome interest from the status date to move-in
   * @param surplus money there less money needed; below nothing is what the borrower must bring
   */
  public record Balance(
      BigDecimal loan,
      BigDecimal undrawn,
      BigDecimal cash,
      BigDecimal costToComplete,
      BigDecimal interestToCome,
      BigDecimal surplus,
      Optional<BigDecimal> loanToCost,
      Optional<BigDecimal> loanToValue) {}

  /**
   * Interest on the loan, from the first draw to completion.
   *
   * @param allowance in the budget
   * @param charged by the draws as planned, paid month by month
   * @param beyond charged less allowance; below nothing is left over
   * @param ifAdded what it comes to if each month's is added to the loan instead of paid
   */
  public record InterestSum(
      BigDecimal allowance, BigDecimal charged, BigDecimal beyond, BigDecimal ifAdded) {}

  /** Why a delay is looked at. */
  public enum Asked {
    ENTERED("entered"),
    /** All that are entered, where there are several: each by itself is what it adds. */
    TOGETHER("together"),
    /** Nobody entered it. */
    WHAT_IF("what if");

    private final String label;

    Asked(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }

  /**
   * What a delay does.
   *
   * @param event id of its task; empty for all that are entered, together
   * @param days by which the event comes later
   * @param moveInDays by which move-in comes later, calendar days
   * @param cost what that costs: hire, interest, rent
   * @param words what moves, what absorbed it, by whose float
   */
  public record DelayEffect(
      Asked asked,
      String event,
      String eventName,
      int days,
      String cause,
      String borneBy,
      int moveInDays,
      LocalDate moveIn,
      BigDecimal cost,
      String words) {}

  /** The first line of the lender's review; empty where there is no loan. */
  public Optional<String> verdict(String currency) {
    return status.map(s -> s.verdict(currency));
  }

  /** Without a loan, before money has moved. */
  public Finance(
      List<CashMonth> months,
      List<Draw> draws,
      List<StageMoney> stages,
      Balance balance,
      List<DelayEffect> delays,
      InterestSum interest) {
    this(months, draws, stages, balance, delays, interest, Optional.empty());
  }

  /** Without interest. */
  public Finance(
      List<CashMonth> months,
      List<Draw> draws,
      List<StageMoney> stages,
      Balance balance,
      List<DelayEffect> delays) {
    this(
        months,
        draws,
        stages,
        balance,
        delays,
        new InterestSum(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO));
  }

  public Finance {
    months = List.copyOf(months);
    draws = List.copyOf(draws);
    stages = List.copyOf(stages);
    delays = List.copyOf(delays);
  }
}

package cornerpost.finance;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The lender's review before any money has moved: what the loan and the cash must pay for, and what
 * an examiner can tell from the plan alone. Once the cost ledger holds an entry, {@link LoanStatus}
 * takes its place.
 *
 * @param contingency in the cost to complete; {@code work} what the rest of it is for, interest
 *     left out
 * @param contingencyShare the one over the other
 * @param largestUnquoted the largest line that wants a quote
 */
public record FirstReview(
    LoanTerms terms,
    Finance.Balance balance,
    BigDecimal contingency,
    BigDecimal work,
    Optional<BigDecimal> contingencyShare,
    List<Stress> stresses,
    List<Flag> flags,
    Optional<String> largestUnquoted,
    LocalDate status,
    LocalDate finish,
    int decimals) {

  /**
   * What it is made from.
   *
   * @param contingency in the cost to complete
   * @param leastCash the borrower's at the end of the worst month
   * @param hireADay what is paid by the month, for a day
   * @param owed of the loan at completion
   * @param open cost to complete of work, price rise and tax: no order holds its price yet
   * @param noFirmPrice amounts of large lines without a quote
   * @param largestUnquoted the largest of those lines
   * @param quotesEnded quotes that ended before the status date, work not finished
   * @param licensed checks on licensed trades that the owner does himself
   */
  public record Input(
      LoanTerms terms,
      Finance.Balance balance,
      BigDecimal contingency,
      BigDecimal leastCash,
      BigDecimal hireADay,
      BigDecimal owed,
      BigDecimal open,
      BigDecimal noFirmPrice,
      Optional<String> largestUnquoted,
      long quotesEnded,
      int licensed,
      LocalDate status,
      LocalDate finish) {}

  public FirstReview {
    stresses = List.copyOf(stresses);
    flags = List.copyOf(flags);
  }

  public static FirstReview of(Input in, int decimals) {
    var work = in.balance().costToComplete().subtract(in.contingency());
    return new FirstReview(
        in.terms(),
        in.balance(),
        in.contingency().setScale(decimals),
        work.setScale(decimals),
        Shares.over(in.contingency(), work),
        Stress.all(
            in.terms(), in.balance().surplus(), in.hireADay(), in.owed(), in.open(), decimals),
        Flags.before(in),
        in.largestUnquoted(),
        in.status(),
        in.finish(),
        decimals);
  }

  /** The answer in a sentence, with the currency's code. */
  public String verdict(String currency) {
    return Verdict.of(balance.surplus(), currency, decimals);
  }
}

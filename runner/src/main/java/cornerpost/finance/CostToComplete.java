package cornerpost.finance;

import cornerpost.finance.Finance.Balance;
import cornerpost.finance.Finance.StageMoney;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What it still costs to finish, and whether the money left covers it.
 *
 * <p>Cost to complete is what remains to be done at the price of today, never the budget less what
 * was paid: a line that was too cheap stays too dear to the end.
 */
public final class CostToComplete {
  private CostToComplete() {}

  /**
   * Where a cost line stands.
   *
   * @param line its id
   * @param inPlace for what is done; {@code toComplete} for what remains
   */
  public record LineState(
      String line, Stage stage, BigDecimal budget, BigDecimal inPlace, BigDecimal toComplete) {}

  /** By stage; stages without money are left out. */
  public static List<StageMoney> stages(List<LineState> lines, int decimals) {
    var stages = new ArrayList<StageMoney>();
    for (var stage : Stage.values()) {
      var of = lines.stream().filter(l -> l.stage() == stage).toList();
      if (!of.isEmpty()) {
        var inPlace = sum(of.stream().map(LineState::inPlace).toList());
        var toComplete = sum(of.stream().map(LineState::toComplete).toList());
        var whole = inPlace.add(toComplete);
        stages.add(
            new StageMoney(
                stage,
                sum(of.stream().map(LineState::budget).toList()).setScale(decimals),
                whole.signum() == 0
                    ? BigDecimal.ZERO
                    : inPlace.divide(whole, Ratio.PRECISION).stripTrailingZeros(),
                inPlace.setScale(decimals),
                toComplete.setScale(decimals)));
      }
    }
    return stages;
  }

  /**
   * Whether the loan not yet drawn and the cash left pay for the rest.
   *
   * @param drawn of the loan so far
   * @param interestPaid so far
   * @param interestToCome from now to completion
   * @param total of the cost plan, for loan to cost
   */
  public static Balance balance(
      LoanTerms terms,
      BigDecimal drawn,
      BigDecimal interestPaid,
      BigDecimal interestToCome,
      List<StageMoney> stages,
      BigDecimal total,
      int decimals) {
    var inPlace = sum(stages.stream().map(StageMoney::inPlace).toList());
    var toComplete = sum(stages.stream().map(StageMoney::toComplete).toList());
    var undrawn = terms.loan().subtract(drawn);
    var cash = terms.cash().add(drawn).subtract(inPlace).subtract(interestPaid);
    var surplus = undrawn.add(cash).subtract(toComplete).subtract(interestToCome);
    return new Balance(
        Money.halfUp(terms.loan(), decimals),
        Money.halfUp(undrawn, decimals),
        Money.halfUp(cash, decimals),
        Money.halfUp(toComplete, decimals),
        Money.halfUp(interestToCome, decimals),
        Money.halfUp(surplus, decimals),
        share(terms, total),
        terms.value().flatMap(v -> share(terms, v)));
  }

  /** The loan over something; empty without a loan. */
  public static Optional<BigDecimal> share(LoanTerms terms, BigDecimal of) {
    return terms.loan().signum() == 0 || of.signum() == 0
        ? Optional.empty()
        : Optional.of(terms.loan().divide(of, Ratio.PRECISION).stripTrailingZeros());
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

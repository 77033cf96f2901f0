package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The reserve.
 *
 * @param left of the original, after approved changes took from it
 * @param required for the work left, at the share of the original budget
 * @param used share of the original; {@code progress} share of the work; {@code pace} the one over
 *     the other: above one it burns faster than the work goes
 * @param kept counted in the cost to complete, by the rule chosen
 * @param release what of that is above what is required: the lender may let it go
 * @param toBring what the borrower must bring even then; nothing in balance
 */
public record Contingency(
    BigDecimal original,
    BigDecimal left,
    BigDecimal workLeft,
    BigDecimal required,
    Optional<BigDecimal> used,
    Optional<BigDecimal> progress,
    Optional<BigDecimal> pace,
    BigDecimal kept,
    BigDecimal release,
    BigDecimal toBring) {

  /**
   * @param work original budget of the work, {@code workLeft} what it takes to finish it
   * @param kept of the contingency in the cost to complete
   * @param progress share of the work in place
   * @param surplus money there less money needed
   */
  static Contingency of(
      BigDecimal original,
      BigDecimal left,
      BigDecimal work,
      BigDecimal workLeft,
      BigDecimal kept,
      Optional<BigDecimal> progress,
      BigDecimal surplus,
      int decimals) {
    var required =
        work.signum() == 0
            ? BigDecimal.ZERO
            : Money.halfUp(original.multiply(workLeft).divide(work, Ratio.PRECISION), decimals);
    var used = Shares.over(original.subtract(left), original);
    var release = kept.subtract(required).max(BigDecimal.ZERO);
    return new Contingency(
        original.setScale(decimals),
        left.setScale(decimals),
        workLeft.setScale(decimals),
        required.setScale(decimals),
        used,
        progress,
        used.flatMap(u -> progress.flatMap(p -> Shares.over(u, p))),
        kept.setScale(decimals),
        release.setScale(decimals),
        surplus.add(release).negate().max(BigDecimal.ZERO).setScale(decimals));
  }

  /** From the rows of the cost report. */
  static Contingency of(
      List<Row> rows, Optional<BigDecimal> progress, BigDecimal surplus, int decimals) {
    Predicate<Row> reserve = r -> r.line().treatment() == Treatment.CONTINGENCY;
    Predicate<Row> work = r -> r.line().treatment().earns();
    return of(
        CostReport.sum(rows, reserve, Row::original),
        CostReport.sum(rows, reserve, Row::revised),
        CostReport.sum(rows, work, Row::original),
        CostReport.sum(rows, work, Row::toComplete),
        CostReport.sum(rows, reserve, Row::toComplete),
        progress,
        surplus,
        decimals);
  }

  /** What is missing of what is required. */
  BigDecimal lacking() {
    return required.subtract(left).max(BigDecimal.ZERO);
  }
}

package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What money is there and what it is needed for, today.
 *
 * @param notInvoiced work in place that nobody has sent an invoice for
 * @param surplus below nothing is what the borrower must bring
 */
public record Holding(
    BigDecimal loan,
    BigDecimal drawn,
    BigDecimal undrawn,
    BigDecimal ownCash,
    BigDecimal paid,
    BigDecimal cash,
    BigDecimal toComplete,
    BigDecimal retained,
    BigDecimal payable,
    BigDecimal notInvoiced,
    BigDecimal interestToCome,
    BigDecimal needed,
    BigDecimal surplus) {
  /** From the ledger; {@code work} are its rows without the interest. */
  static Holding of(LoanTerms terms, List<Row> work, Row interest, int decimals) {
    var rows = new ArrayList<>(work);
    rows.add(interest);
    var drawn = Outlook.sum(rows, r -> r.entered().drawn());
    var paid = Outlook.sum(rows, r -> r.entered().paid());
    var undrawn = terms.loan().subtract(drawn);
    var cash = terms.cash().add(drawn).subtract(paid);
    var toComplete = Outlook.sum(work, Row::toComplete);
    var retained = Outlook.sum(rows, r -> r.entered().retained());
    var payable = Outlook.sum(rows, Row::payable);
    var notInvoiced = Outlook.sum(rows, Row::notInvoiced);
    var needed = toComplete.add(retained).add(payable).add(notInvoiced).add(interest.toComplete());
    return new Holding(
        terms.loan().setScale(decimals),
        drawn.setScale(decimals),
        undrawn.setScale(decimals),
        terms.cash().setScale(decimals),
        paid.setScale(decimals),
        cash.setScale(decimals),
        toComplete.setScale(decimals),
        retained.setScale(decimals),
        payable.setScale(decimals),
        notInvoiced.setScale(decimals),
        interest.toComplete(),
        needed.setScale(decimals),
        undrawn.add(cash).subtract(needed).setScale(decimals));
  }
}

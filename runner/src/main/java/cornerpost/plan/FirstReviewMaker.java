package cornerpost.plan;

import cornerpost.finance.CashFlow;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.finance.CostToComplete.LineState;
import cornerpost.finance.Finance;
import cornerpost.finance.FirstReview;
import cornerpost.finance.LoanTerms;
import cornerpost.measure.Money;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/** What the lender can be told of the plan before any money has moved. */
final class FirstReviewMaker {
  private final Estimate estimate;
  private final LoanTerms terms;
  private final LocalDate status;
  private BigDecimal contingency = BigDecimal.ZERO;
  private BigDecimal open = BigDecimal.ZERO;
  private BigDecimal noFirmPrice = BigDecimal.ZERO;
  private CostLine largest; // of those without a firm price; null where there is none
  private long ended;

  FirstReviewMaker(Estimate estimate, LoanTerms terms, LocalDate status) {
    this.estimate = estimate;
    this.terms = terms;
    this.status = status;
  }

  /**
   * The review.
   *
   * @param states of the cost lines
   * @param hireADay what is paid by the month, for a day
   * @param licensed checks on licensed trades that the owner does himself
   */
  FirstReview make(
      List<LineState> states,
      Finance.Balance balance,
      CashFlow cash,
      LocalDate finish,
      BigDecimal hireADay,
      int licensed) {
    var lines = new HashMap<String, CostLine>();
    for (var l : estimate.lines()) lines.put(l.id(), l);
    for (var s : states) line(lines.get(s.line()), s.toComplete());
    return FirstReview.of(
        new FirstReview.Input(
            terms,
            balance,
            contingency,
            cash.leastCash(),
            hireADay,
            cash.owedAtEnd(),
            open,
            noFirmPrice,
            Optional.ofNullable(largest).map(CostLine::id),
            ended,
            licensed,
            status,
            finish),
        Money.minorDigits(estimate.currency()));
  }

  private void line(CostLine l, BigDecimal toComplete) {
    var treatment = StatusMaker.treatment(l.kind());
    if (treatment == Treatment.CONTINGENCY) contingency = contingency.add(toComplete);
    boolean work = treatment == Treatment.WORK;
    if (work || treatment == Treatment.ON_TOP) open = open.add(toComplete);
    if (!work || toComplete.signum() <= 0) return;
    boolean quoted = l.basis() == CostLine.Basis.QUOTE;
    boolean large =
        terms.largeLine().signum() > 0
            && l.money().compareTo(estimate.total().multiply(terms.largeLine())) >= 0;
    if (large && !quoted) {
      noFirmPrice = noFirmPrice.add(l.money());
      if (largest == null || l.money().compareTo(largest.money()) > 0) largest = l;
    }
    if (l.quote().flatMap(q -> q.validUntil()).filter(v -> v.isBefore(status)).isPresent()) {
      ended++;
    }
  }
}

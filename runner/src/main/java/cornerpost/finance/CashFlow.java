package cornerpost.finance;

import cornerpost.finance.Finance.CashMonth;
import cornerpost.finance.Finance.Draw;
import cornerpost.finance.Finance.InterestSum;
import cornerpost.scope.InterestPayment;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Money month by month: what is paid, what the lender pays in, what interest is charged.
 *
 * <ul>
 *   <li>The borrower's cash comes first: the lender pays for the value in place above it, up to the
 *       loan, less what is held back, less what was paid before.
 *   <li>Work is paid when it falls due, whether or not the lender has paid yet. Cash then goes
 *       below nothing, and that is shown: it is what must be bridged.
 *   <li>Where interest is added to the loan, each month's is drawn at its end as far as the loan
 *       has room, and bears interest from then on.
 *   <li>Interest is charged on what is drawn, at the end of each month, and paid out of the
 *       budget's allowance for interest while that lasts, beyond it out of cash. What is left of
 *       the allowance at the end stands in the last month, so that the months add up to the total
 *       of the cost plan.
 * </ul>
 */
public final class CashFlow {
  private final LoanTerms terms;
  private final List<Payment> payments;
  private final BigDecimal allowance;
  private final List<DrawEvent> events;
  private final LocalDate end;
  private final int decimals;
  private final Interest interest;

  private final List<CashMonth> months = new ArrayList<>();
  private final List<Draw> draws = new ArrayList<>();
  private final List<Interest.Drawn> drawn = new ArrayList<>();
  private final List<String> passed = new ArrayList<>(); // inspections since the last draw
  private BigDecimal earned = BigDecimal.ZERO; // the loan's part of the value in place
  private BigDecimal held = BigDecimal.ZERO;
  private BigDecimal paidIn = BigDecimal.ZERO;
  private BigDecimal charged = BigDecimal.ZERO;

  private CashFlow(
      LoanTerms terms,
      List<Payment> payments,
      BigDecimal allowance,
      List<DrawEvent> events,
      LocalDate end,
      int decimals) {
    this.terms = terms;
    this.payments = payments;
    this.allowance = allowance;
    this.events = events.stream().sorted(Comparator.comparing(DrawEvent::date)).toList(); // stable
    this.end = end;
    this.decimals = decimals;
    interest = new Interest(terms.rate(), terms.dayCount(), decimals);
  }

  /**
   * Lets the money flow.
   *
   * @param payments every cost line but the interest
   * @param allowance the budget's interest
   * @param events looked at in order of date; none is needed without a loan
   * @param completion when the loan ends, or the last payment if that is later
   * @param decimals of the currency's minor unit
   */
  public static CashFlow of(
      LoanTerms terms,
      List<Payment> payments,
      BigDecimal allowance,
      List<DrawEvent> events,
      LocalDate completion,
      int decimals) {
    var last = payments.stream().map(Payment::due).max(LocalDate::compareTo).orElse(completion);
    var end = last.isAfter(completion) ? last : completion;
    var flow = new CashFlow(terms, payments, allowance, events, end, decimals);
    flow.run();
    return flow;
  }

  public List<CashMonth> months() {
    return List.copyOf(months);
  }

  public List<Draw> draws() {
    return List.copyOf(draws);
  }

  public InterestSum interest() {
    var added =
        interest.months(drawn, end, Interest.Treatment.ADDED).stream()
            .map(Interest.Month::charged)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return new InterestSum(
        scaled(allowance), scaled(charged), scaled(charged.subtract(allowance)), scaled(added));
  }

  /** What was charged for the days before one. */
  public BigDecimal interestUpTo(LocalDate day) {
    var until = day.isBefore(end) ? day : end;
    return scaled(
        interest
            .months(
                drawn.stream().filter(d -> d.date().isBefore(until)).toList(),
                until,
                Interest.Treatment.PAID)
            .stream()
            .map(Interest.Month::charged)
            .reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  /** What was drawn before a day. */
  public BigDecimal drawnBefore(LocalDate day) {
    return scaled(
        drawn.stream()
            .filter(d -> d.date().isBefore(day))
            .map(Interest.Drawn::amount)
            .reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  /** Interest for one day on all that is drawn at the end. */
  public BigDecimal interestADay() {
    return interest.of(paidIn, end, end.plusDays(1));
  }

  private BigDecimal scaled(BigDecimal amount) {
    return amount.setScale(decimals);
  }

  private void run() {
    var first = payments.stream().map(Payment::due).min(LocalDate::compareTo).orElse(end);
    var last = YearMonth.from(end);
    var cash = terms.cash();
    var allOut = BigDecimal.ZERO;
    for (var m = YearMonth.from(first); !m.isAfter(last); m = m.plusMonths(1)) {
      var month = m;
      var before = paidIn;
      for (var e : events) {
        if (YearMonth.from(e.date()).equals(month)) draw(e);
      }
      var drawnNow = paidIn.subtract(before);
      var interestNow = interest.in(month, drawn, end);
      var covered = interestNow.min(allowance.subtract(charged).max(BigDecimal.ZERO));
      charged = charged.add(interestNow);
      var out =
          payments.stream()
              .filter(p -> YearMonth.from(p.due()).equals(month))
              .map(Payment::amount)
              .reduce(covered, BigDecimal::add);
      if (month.equals(last)) {
        out = out.add(allowance.subtract(charged).max(BigDecimal.ZERO));
      }
      allOut = allOut.add(out);
      var added = added(interestNow);
      if (added.signum() > 0) {
        paidIn = paidIn.add(added);
        drawn.add(new Interest.Drawn(month.plusMonths(1).atDay(1), added));
        drawnNow = drawnNow.add(added);
      }
      cash = cash.add(drawnNow).subtract(out).subtract(interestNow.subtract(covered));
      months.add(
          new CashMonth(
              month,
              scaled(out),
              scaled(allOut),
              scaled(drawnNow),
              scaled(interestNow),
              scaled(cash),
              scaled(paidIn)));
    }
  }

  /** What of a month's interest the loan still has room for, where it is added to it. */
  private BigDecimal added(BigDecimal interestNow) {
    return terms.interestIs() == InterestPayment.ADDED
        ? interestNow.min(terms.loan().subtract(paidIn))
        : BigDecimal.ZERO;
  }

  /** The least of the borrower's cash at the end of a month. */
  public BigDecimal leastCash() {
    return months.stream()
        .map(CashMonth::cash)
        .min(BigDecimal::compareTo)
        .orElse(scaled(terms.cash()));
  }

  /** What is owed at the end. */
  public BigDecimal owedAtEnd() {
    return scaled(paidIn);
  }

  private void draw(DrawEvent e) {
    if (terms.loan().signum() == 0) return;
    passed.addAll(e.inspections()); // those of an event without a draw go with the next one
    var inPlace =
        e.completion()
            ? payments.stream().map(Payment::amount).reduce(allowance, BigDecimal::add)
            : payments.stream()
                .filter(p -> !p.inPlace().isAfter(e.date()))
                .map(Payment::amount)
                .reduce(charged.min(allowance), BigDecimal::add);
    var loanPart =
        inPlace.subtract(terms.cash()).max(BigDecimal.ZERO).min(terms.loan()).max(earned);
    var nowHeld =
        e.completion() ? BigDecimal.ZERO : terms.retainage().held(loanPart, terms.loan(), decimals);
    var request = new PaymentRequest(terms.loan(), loanPart, nowHeld, paidIn);
    var due =
        terms.interestIs() == InterestPayment.ADDED
            ? request.due().max(BigDecimal.ZERO) // interest may have been drawn ahead of it
            : request.due();
    if (due.signum() <= 0 && !e.completion()) return;
    draws.add(
        new Draw(
            "draw/" + (draws.size() + 1),
            e.date(),
            e.name(),
            Optional.empty(),
            scaled(loanPart.subtract(earned)),
            scaled(nowHeld.subtract(held)),
            scaled(due),
            scaled(paidIn.add(due)),
            DrawPapers.inspections(passed),
            DrawPapers.of(draws.isEmpty(), e.completion(), !passed.isEmpty())));
    passed.clear();
    earned = loanPart;
    held = nowHeld;
    paidIn = paidIn.add(due);
    drawn.add(new Interest.Drawn(e.date(), due));
  }
}

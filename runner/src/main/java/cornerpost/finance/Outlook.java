package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.measure.Money;
import cornerpost.scope.InterestPayment;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The months from the status date to completion: what falls due, what the lender pays, what is left
 * of loan and cash, and whether it covers what is then still to come.
 *
 * <p>Within a month interest is charged on what was owed at its start, and the draw is paid at its
 * end. The dates say in which month a part of a stage falls due or is in place; the amounts come
 * from the cost report.
 *
 * @param stages those with money to come, in the order of the build
 * @param toCome cost to complete by stage
 * @param toEarn revised budget not yet in place: of the work by stage, contingency and interest
 *     left out, and last of what is paid by the month
 * @param inPlace on the status date, by the schedule of values
 */
public record Outlook(
    List<Stage> stages,
    List<BigDecimal> toCome,
    List<BigDecimal> toEarn,
    BigDecimal inPlace,
    List<Month> months) {

  /**
   * What the dates say of a month.
   *
   * @param days of interest, by the day count
   * @param from the first of them, {@code to} the day after the last
   * @param draw what the lender pays a draw for at its end; empty where none is asked for in it
   * @param due by stage: the part of what is to come that has fallen due by its end, 0 to 1
   * @param place the part of the work that is in place by its end, by stage, and last of what is
   *     paid by the month
   */
  public record Span(
      YearMonth month,
      LocalDate from,
      LocalDate to,
      long days,
      Optional<DrawEvent> draw,
      List<BigDecimal> due,
      List<BigDecimal> place) {
    public Span {
      due = List.copyOf(due);
      place = List.copyOf(place);
    }
  }

  /**
   * A month of money.
   *
   * @param due falls due in it, interest left out
   * @param inPlace value in place at its end, by the schedule of values
   * @param byTheMonth what has come in place since the status date of what is paid by the month
   * @param earned the loan's part of that
   * @param held back of it
   * @param draw paid by the lender
   * @param interest of the month
   * @param cash the borrower's at its end; below nothing is what must be bridged
   * @param owed at its end
   * @param undrawn of the loan at its end
   * @param toPay after it, interest left out
   * @param interestToCome after it
   * @param surplus money there less money needed, at its end
   */
  public record Month(
      Span span,
      BigDecimal due,
      BigDecimal inPlace,
      BigDecimal byTheMonth,
      BigDecimal earned,
      BigDecimal held,
      BigDecimal draw,
      BigDecimal interest,
      BigDecimal cash,
      BigDecimal owed,
      BigDecimal undrawn,
      BigDecimal toPay,
      BigDecimal interestToCome,
      BigDecimal surplus) {

    /** Whether the lender pays in it. */
    public boolean isDrawn() {
      return span.draw().isPresent() && draw.signum() != 0;
    }
  }

  public Outlook {
    stages = List.copyOf(stages);
    toCome = List.copyOf(toCome);
    toEarn = List.copyOf(toEarn);
    months = List.copyOf(months);
  }

  /** Interest from the status date to completion. */
  public BigDecimal interest() {
    return months.stream().map(Month::interest).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * The draws that are paid.
   *
   * @param drawn whether anything was drawn before the status date
   * @param held what is held back of the value in place on the status date
   */
  List<Finance.Draw> draws(boolean drawn, BigDecimal held) {
    var draws = new ArrayList<Finance.Draw>();
    var heldBefore = held;
    var there = inPlace;
    var byTheMonth = BigDecimal.ZERO;
    var charged = BigDecimal.ZERO;
    var passed = new ArrayList<String>();
    for (var m : months) {
      charged = charged.add(m.interest());
      m.span().draw().ifPresent(e -> passed.addAll(e.inspections()));
      if (!m.isDrawn()) continue;
      var event = m.span().draw().get();
      var retained = m.held().subtract(heldBefore);
      heldBefore = m.held();
      var earned = m.draw().add(retained);
      var since = m.inPlace().subtract(there);
      var monthly = m.byTheMonth().subtract(byTheMonth);
      var made =
          new Finance.Made(
              since.subtract(monthly).subtract(charged), monthly, charged, since.subtract(earned));
      there = m.inPlace();
      byTheMonth = m.byTheMonth();
      charged = BigDecimal.ZERO;
      draws.add(
          new Finance.Draw(
              "draw/" + (draws.size() + 1),
              event.date(),
              event.name(),
              Optional.of(made),
              earned,
              retained,
              m.draw(),
              m.owed(),
              DrawPapers.inspections(passed),
              DrawPapers.of(!drawn && draws.isEmpty(), event.completion(), !passed.isEmpty())));
      passed.clear();
    }
    return draws;
  }

  /** Money of the ledger that the months start from. */
  record Opening(
      BigDecimal owed,
      BigDecimal cash,
      BigDecimal inPlace,
      BigDecimal dueNow,
      BigDecimal retained,
      BigDecimal cost) {

    /**
     * @param interest the row of the interest, for what was charged so far
     */
    static Opening of(LoanTerms terms, List<Row> rows, Optional<Row> interest) {
      var all = new ArrayList<>(rows);
      interest.ifPresent(all::add);
      var drawn = sum(all, r -> r.entered().drawn());
      var paid = sum(all, r -> r.entered().paid());
      var retained = sum(all, r -> r.entered().retained());
      return new Opening(
          drawn,
          terms.cash().add(drawn).subtract(paid),
          sum(all, r -> r.earned().add(r.entered().stored())),
          sum(all, Row::toDate).subtract(paid).subtract(retained),
          retained,
          sum(rows, Row::atCompletion).add(interest.map(Row::toDate).orElse(BigDecimal.ZERO)));
    }
  }

  static BigDecimal sum(List<Row> rows, java.util.function.Function<Row, BigDecimal> part) {
    return rows.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * Lets the money flow.
   *
   * @param spans from the month of the status date to that of completion; at least one
   * @param rows of the cost report, the interest left out
   * @param charged the row of the interest so far; what is to come of it is not looked at
   */
  public static Outlook of(
      LoanTerms terms,
      List<Stage> stages,
      List<Span> spans,
      List<Row> rows,
      Optional<Row> charged,
      int decimals) {
    var toCome = stages.stream().map(s -> sum(of(rows, s), Row::toComplete)).toList();
    var monthly = rows.stream().filter(r -> r.line().treatment() == Treatment.TIME).toList();
    var toEarn =
        Stream.concat(
                stages.stream()
                    .map(
                        s ->
                            of(rows, s).stream()
                                .filter(r -> r.line().treatment() != Treatment.CONTINGENCY)
                                .filter(r -> r.line().treatment() != Treatment.TIME)
                                .toList()),
                Stream.of(monthly))
            .map(of -> sum(of, r -> r.revised().subtract(there(r))).max(BigDecimal.ZERO))
            .toList();
    var monthlyToCome = sum(monthly, r -> r.atCompletion().subtract(there(r)));
    var opening = Opening.of(terms, rows, charged);
    var interest = new Interest(terms.rate(), terms.dayCount(), decimals);
    var flow = new ArrayList<Month>();
    var owed = opening.owed();
    var cash = opening.cash();
    var dueSoFar = BigDecimal.ZERO;
    var charges = BigDecimal.ZERO;
    for (int i = 0; i < spans.size(); i++) {
      var span = spans.get(i);
      boolean last = i == spans.size() - 1;
      var fallen = parts(toCome, span.due(), decimals);
      var due = fallen.subtract(dueSoFar);
      dueSoFar = fallen;
      if (i == 0) due = due.add(opening.dueNow());
      if (last) due = due.add(opening.retained());
      var charge = interest.of(owed, span.days());
      charges = charges.add(charge);
      var added =
          terms.interestIs() == InterestPayment.ADDED
              ? charge.min(terms.loan().subtract(owed)).max(BigDecimal.ZERO)
              : BigDecimal.ZERO;
      owed = owed.add(added);
      int lastPart = stages.size();
      var byTheMonth =
          last
              ? monthlyToCome
              : Money.halfUp(toEarn.get(lastPart).multiply(span.place().get(lastPart)), decimals);
      var inPlace =
          last
              ? opening.cost().add(charges)
              : opening.inPlace().add(parts(toEarn, span.place(), decimals)).add(charges);
      var earned = inPlace.subtract(terms.cash()).max(BigDecimal.ZERO).min(terms.loan());
      var held = last ? BigDecimal.ZERO : terms.retainage().held(earned, terms.loan(), decimals);
      var draw =
          span.draw().isPresent()
              ? earned.subtract(held).subtract(owed).max(BigDecimal.ZERO)
              : BigDecimal.ZERO;
      owed = owed.add(draw);
      cash = cash.add(draw).subtract(due).subtract(charge.subtract(added));
      flow.add(
          new Month(
              span,
              due,
              inPlace,
              byTheMonth,
              earned,
              held,
              draw,
              charge,
              cash,
              owed,
              null,
              null,
              null,
              null));
    }
    return new Outlook(stages, toCome, toEarn, opening.inPlace(), backwards(terms, flow, decimals));
  }

  /** In place on the status date, with what is stored. */
  private static BigDecimal there(Row r) {
    return r.earned().add(r.entered().stored());
  }

  /** What is still to come after each month, and whether the money there covers it. */
  private static List<Month> backwards(LoanTerms terms, List<Month> flow, int decimals) {
    var months = new ArrayList<Month>();
    var toPay = BigDecimal.ZERO;
    var interest = BigDecimal.ZERO;
    for (int i = flow.size() - 1; i >= 0; i--) {
      var m = flow.get(i);
      var undrawn = terms.loan().subtract(m.owed());
      months.add(
          0,
          new Month(
              m.span(),
              m.due().setScale(decimals),
              m.inPlace().setScale(decimals),
              m.byTheMonth().setScale(decimals),
              m.earned().setScale(decimals),
              m.held().setScale(decimals),
              m.draw().setScale(decimals),
              m.interest().setScale(decimals),
              m.cash().setScale(decimals),
              m.owed().setScale(decimals),
              undrawn.setScale(decimals),
              toPay.setScale(decimals),
              interest.setScale(decimals),
              undrawn.add(m.cash()).subtract(toPay).subtract(interest).setScale(decimals)));
      toPay = toPay.add(m.due());
      interest = interest.add(m.interest());
    }
    return months;
  }

  private static List<Row> of(List<Row> rows, Stage stage) {
    return rows.stream().filter(r -> r.line().stage().equals(Optional.of(stage))).toList();
  }

  /** Each stage's part rounded by itself; whole amounts at a part of one. */
  private static BigDecimal parts(List<BigDecimal> amounts, List<BigDecimal> parts, int decimals) {
    var sum = BigDecimal.ZERO;
    for (int s = 0; s < amounts.size(); s++) {
      sum = sum.add(Money.halfUp(amounts.get(s).multiply(parts.get(s)), decimals));
    }
    return sum;
  }
}

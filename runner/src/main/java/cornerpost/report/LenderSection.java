package cornerpost.report;

import cornerpost.finance.CostReport;
import cornerpost.finance.Flag;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Sign;
import cornerpost.plan.Plan;
import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lender's review: the answer first, reasons under it, then lines, stages and months. */
final class LenderSection {
  private static final int MOST_LINES = 12;

  /** A figure with a link to where it comes from. */
  public record Figure(String name, String amount, String link) {}

  /** A sign that an examiner looks for. */
  public record SignRow(String words, String figure, boolean raised, String advice) {}

  /** A line of the cost report. */
  public record LineRow(
      String link,
      String description,
      String revised,
      String committed,
      String invoiced,
      String paid,
      String share,
      String toComplete,
      String atCompletion,
      String over) {}

  /** A stage of the schedule of values. */
  public record ValueRow(
      String stage,
      String revised,
      String earned,
      String stored,
      String drawn,
      String ahead,
      String toFinish) {}

  /** A month to come. */
  public record ToComeRow(
      String month,
      String due,
      String draw,
      String interest,
      String cash,
      String owed,
      String surplus) {}

  private final Plan plan;
  private final Optional<LoanStatus> status;

  LenderSection(Plan plan) {
    this.plan = plan;
    status = plan.finance().status();
  }

  void into(Map<String, Object> model) {
    model.put("reviewed", status.isPresent());
    status.ifPresent(s -> into(model, s));
  }

  private void into(Map<String, Object> model, LoanStatus s) {
    model.put("verdict", s.verdict(plan.estimate().currency().getCurrencyCode()));
    model.put("short", s.holding().surplus().signum() < 0);
    model.put("reasons", reasons(s));
    model.put("left", cents(s.holding().surplus()));
    model.put(
        "whatIf",
        s.stresses().stream()
            .skip(1)
            .map(x -> new Figure(stress(x.name(), s), cents(x.surplus()), ""))
            .toList());
    model.put("keyFigures", keyFigures(s));
    model.put("signs", s.flags().stream().map(this::sign).toList());
    model.put("moneyLines", lines(s));
    model.put(
        "values",
        s.stages().stream()
            .map(
                v ->
                    new ValueRow(
                        v.stage().label(),
                        cents(v.revised()),
                        cents(v.earned()),
                        cents(v.stored()),
                        cents(v.drawn()),
                        cents(v.ahead()),
                        cents(v.toFinish())))
            .toList());
    model.put(
        "toCome",
        s.outlook().months().stream()
            .map(
                m ->
                    new ToComeRow(
                        Words.month(m.span().month()),
                        cents(m.due()),
                        cents(m.draw()),
                        cents(m.interest()),
                        cents(m.cash()),
                        cents(m.owed()),
                        cents(m.surplus())))
            .toList());
  }

  private String cents(BigDecimal amount) {
    return Words.number(amount, Math.max(0, plan.estimate().currency().getDefaultFractionDigits()));
  }

  private List<Figure> reasons(LoanStatus s) {
    var h = s.holding();
    return List.of(
        new Figure("Loan not drawn", cents(h.undrawn()), "#lender-stages"),
        new Figure("Borrower's own cash", cents(h.cash()), "#lender-months"),
        new Figure("Cost to complete", cents(h.toComplete().negate()), "#lender-lines"),
        new Figure("Held back from invoices", cents(h.retained().negate()), "#lender-lines"),
        new Figure("Invoices to pay", cents(h.payable().negate()), "#lender-lines"),
        new Figure("In place without an invoice", cents(h.notInvoiced().negate()), "#lender-lines"),
        new Figure("Interest to completion", cents(h.interestToCome().negate()), "#lender-months"));
  }

  private static String stress(String name, LoanStatus s) {
    var weeks = s.terms().stressWeeks() + " weeks later";
    var prices =
        "prices up "
            + Words.percent(s.terms().stressPrices().doubleValue())
            + " on what is not under contract";
    return switch (name) {
      case "Later" -> "Left over, " + weeks;
      case "Dearer" -> "Left over, " + prices;
      default -> "Left over, " + weeks + " and " + prices;
    };
  }

  private List<Figure> keyFigures(LoanStatus s) {
    var rows = new java.util.ArrayList<Figure>();
    rows.add(new Figure("Can be drawn now", cents(s.request().due()), "#lender-stages"));
    rows.add(
        new Figure(
            "Estimate at completion",
            cents(sum(s, CostReport.Row::atCompletion)),
            "#lender-lines"));
    rows.add(
        new Figure(
            "More than the original budget",
            cents(sum(s, CostReport.Row::variance)),
            "#lender-lines"));
    rows.add(new Figure("by price", cents(sum(s, CostReport.Row::byPrice)), ""));
    rows.add(new Figure("by quantity", cents(sum(s, CostReport.Row::byQuantity)), ""));
    rows.add(new Figure("by scope", cents(sum(s, CostReport.Row::byScope)), ""));
    rows.add(new Figure("by time", cents(sum(s, CostReport.Row::byTime)), ""));
    rows.add(new Figure("Contingency left", cents(s.contingency().left()), ""));
    rows.add(new Figure("Contingency for the work left", cents(s.contingency().required()), ""));
    rows.add(
        new Figure(
            "Work in place (earned value over budget)",
            s.value().complete().map(c -> Words.percent(c.doubleValue())).orElse("n/a"),
            ""));
    rows.add(new Figure("Cost index", index(s.value().costIndex()), ""));
    rows.add(new Figure("Time index (earned schedule)", index(s.value().timeIndex()), ""));
    var b = plan.finance().balance();
    b.loanToCost()
        .ifPresent(
            r -> rows.add(new Figure("Loan to cost", Words.percent(r.doubleValue()), "#money")));
    b.loanToValue()
        .ifPresent(r -> rows.add(new Figure("Loan to value", Words.percent(r.doubleValue()), "")));
    rows.add(new Figure("Finish", Words.day(s.facts().finish()), "#way"));
    s.terms()
        .maturity()
        .ifPresent(
            m ->
                rows.add(
                    new Figure(
                        "Loan matures, with float",
                        Words.day(m)
                            + ", "
                            + ChronoUnit.DAYS.between(s.facts().finish(), m)
                            + " days",
                        "")));
    return rows;
  }

  private static String index(Optional<BigDecimal> index) {
    return index.map(i -> Words.number(i, 3)).orElse("n/a");
  }

  private static BigDecimal sum(
      LoanStatus s, java.util.function.Function<CostReport.Row, BigDecimal> part) {
    return s.rows().stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private SignRow sign(Flag f) {
    var figure =
        f.money()
            ? cents(f.figure())
            : f.sign() == Sign.FRONT
                ? Words.number(f.figure().movePointRight(2), 1) + "\u00a0%"
                : Words.number(f.figure(), 0);
    return new SignRow(f.sign().label(), figure, f.raised(), f.sign().advice());
  }

  /** The lines with most still to pay or most above their budget; all stand in the workbook. */
  private List<LineRow> lines(LoanStatus s) {
    return s.rows().stream()
        .sorted(
            Comparator.comparing((CostReport.Row r) -> r.over().max(r.toPay()))
                .reversed()
                .thenComparing(r -> r.line().id()))
        .limit(MOST_LINES)
        .map(
            r ->
                new LineRow(
                    r.line().treatment() == CostReport.Treatment.GONE
                        ? ""
                        : "#" + Anchors.line(r.line().id()),
                    r.line().stage().isPresent()
                        ? r.line().description()
                        : r.line().id() + " (no longer in the plan)",
                    cents(r.revised()),
                    cents(r.entered().committed()),
                    cents(r.entered().invoiced()),
                    cents(r.entered().paid()),
                    Words.percent(r.share().doubleValue()),
                    cents(r.toComplete()),
                    cents(r.atCompletion()),
                    cents(r.over())))
        .toList();
  }
}

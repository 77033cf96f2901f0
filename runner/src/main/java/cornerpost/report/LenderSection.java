package cornerpost.report;

import cornerpost.finance.CostReport;
import cornerpost.finance.Flag;
import cornerpost.finance.Flags;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.LoanTerms;
import cornerpost.finance.Sign;
import cornerpost.finance.StageValue;
import cornerpost.finance.Stress;
import cornerpost.plan.Plan;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The lender's review: the answer first, reasons under it, then lines, stages and months. */
final class LenderSection {
  private static final int MOST_LINES = 12;
  private static final String ALL_LINES = "#lender-lines-total";

  /** A figure with a link to where it comes from. */
  public record Figure(String name, String amount, String link) {}

  /** A sign that an examiner looks for, with a link to what raises it most. */
  public record SignRow(
      String words, String figure, String link, boolean raised, String advice, String otherwise) {}

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
      String id,
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
    model.put("moneyMoved", status.filter(LoanStatus::moneyMoved).isPresent());
    status.ifPresent(s -> into(model, s));
  }

  private void review(
      Map<String, Object> model, BigDecimal surplus, List<Stress> stresses, LoanTerms terms) {
    model.put("short", surplus.signum() < 0);
    model.put("left", cents(surplus));
    model.put(
        "whatIf",
        stresses.stream()
            .skip(1)
            .map(x -> new Figure(stress(x.name(), terms), cents(x.surplus()), ""))
            .toList());
  }

  private void into(Map<String, Object> model, LoanStatus s) {
    model.put("verdict", s.verdict(currency()));
    review(model, s.holding().surplus(), s.stresses(), s.terms());
    model.put("reasons", reasons(s));
    model.put("keyFigures", keyFigures(s));
    model.put("bringBy", s.bringBy().map(Words::day).orElse(""));
    model.put("signs", s.flags().stream().map(x -> sign(x, link(x.sign(), s))).toList());
    model.put("moneyLines", lines(s));
    model.put("allLines", all(s));
    model.put("allValues", allValues(s));
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
                        "month-" + m.span().month(),
                        Words.month(m.span().month()),
                        cents(m.due()),
                        cents(m.draw()),
                        cents(m.interest()),
                        cents(m.cash()),
                        cents(m.owed()),
                        cents(m.surplus())))
            .toList());
  }

  private String currency() {
    return plan.estimate().currency().getCurrencyCode();
  }

  private static String percent(Optional<BigDecimal> share) {
    return share.map(x -> Words.percent(x.doubleValue())).orElse("n/a");
  }

  private String cents(BigDecimal amount) {
    return Words.number(amount, Math.max(0, plan.estimate().currency().getDefaultFractionDigits()));
  }

  private List<Figure> reasons(LoanStatus s) {
    var h = s.holding();
    return List.of(
        new Figure("Loan not drawn", cents(h.undrawn()), "#lender-stages-total"),
        new Figure("Borrower's own cash", cents(h.cash()), firstMonth(s)),
        new Figure(
            "Cost to complete, interest not in it", cents(h.toComplete().negate()), ALL_LINES),
        new Figure(
            "Held back by the borrower from invoices", cents(h.retained().negate()), ALL_LINES),
        new Figure("Invoices to pay", cents(h.payable().negate()), ALL_LINES),
        new Figure("In place without an invoice", cents(h.notInvoiced().negate()), ALL_LINES),
        new Figure("Interest to completion", cents(h.interestToCome().negate()), firstMonth(s)));
  }

  private static String firstMonth(LoanStatus s) {
    return "#month-" + s.outlook().months().get(0).span().month();
  }

  private static String stress(String name, LoanTerms terms) {
    var weeks = Stress.later(terms);
    var prices = Stress.dearer(terms);
    return switch (name) {
      case "Later" -> "Left over, " + weeks;
      case "Dearer" -> "Left over, " + prices;
      default -> "Left over, " + weeks + " and " + prices;
    };
  }

  private List<Figure> keyFigures(LoanStatus s) {
    var rows = new ArrayList<Figure>();
    rows.add(new Figure("Can be drawn now", cents(s.request().due()), "#lender-stages-total"));
    rows.add(new Figure(Sign.TOO_MUCH.label(), cents(s.request().above()), "#lender-stages-total"));
    total(rows, "Estimate at completion", s, CostReport.Row::atCompletion);
    total(rows, "More than the original budget", s, CostReport.Row::variance);
    total(rows, "by price", s, CostReport.Row::byPrice);
    total(rows, "by quantity", s, CostReport.Row::byQuantity);
    total(rows, "by scope", s, CostReport.Row::byScope);
    total(rows, "by time", s, CostReport.Row::byTime);
    var c = s.contingency();
    rows.add(new Figure("Contingency left", cents(c.left()), ALL_LINES));
    rows.add(new Figure("Contingency in the cost to complete", cents(c.kept()), ALL_LINES));
    rows.add(new Figure("Contingency for the work left", cents(c.required()), ALL_LINES));
    rows.add(new Figure("Contingency the lender may release", cents(c.release()), ALL_LINES));
    rows.add(new Figure("To be brought if it is released", cents(c.toBring()), ALL_LINES));
    rows.add(new Figure("Pace at which it burns", index(c.pace()), ALL_LINES));
    var reserve = s.reserve();
    rows.add(new Figure("Interest reserve left", cents(reserve.left()), firstMonth(s)));
    rows.add(
        new Figure(
            "Months the interest reserve still carries",
            reserve.months().map(m -> Words.number(m, 1)).orElse("n/a"),
            firstMonth(s)));
    rows.add(
        new Figure(
            "Work in place (earned value over budget)",
            percent(s.value().complete()),
            "#lender-stages-total"));
    rows.add(new Figure("Cost index", index(s.value().costIndex()), ALL_LINES));
    rows.add(new Figure("Time index (earned schedule)", index(s.value().timeIndex()), ALL_LINES));
    ratiosAndTime(rows, s.facts().finish(), s.terms());
    return rows;
  }

  private void total(
      List<Figure> rows, String name, LoanStatus s, Function<CostReport.Row, BigDecimal> part) {
    rows.add(new Figure(name, cents(sum(s, part)), ALL_LINES));
  }

  private void ratiosAndTime(List<Figure> rows, LocalDate finish, LoanTerms terms) {
    var b = plan.finance().balance();
    b.loanToCost()
        .ifPresent(
            r -> rows.add(new Figure("Loan to cost", Words.percent(r.doubleValue()), "#money")));
    b.loanToValue()
        .ifPresent(
            r -> rows.add(new Figure("Loan to value", Words.percent(r.doubleValue()), "#money")));
    rows.add(new Figure("Finish", Words.day(finish), "#way"));
    rows.add(
        new Figure(
            "Loan matures, with float",
            terms
                .maturity()
                .map(m -> Words.day(m) + ", " + ChronoUnit.DAYS.between(finish, m) + " days")
                .orElse("not given"),
            "#way"));
  }

  /** What raises a sign most. */
  private String link(Sign sign, LoanStatus s) {
    return switch (sign) {
      case SHORT, CASH -> leastCash(s);
      case ABOVE_LOAN, TOO_MUCH, AHEAD, FRONT -> "#lender-stages-total";
      case OVER -> worst(s, CostReport.Row::over);
      case EARLY -> worst(s, r -> r.payable().negate());
      case NO_QUOTE ->
          worst(
              s,
              r ->
                  Flags.noFirmPrice(r, s.facts().total(), s.terms())
                      ? r.line().amount()
                      : BigDecimal.ZERO);
      case ENDED -> worst(s, r -> r.line().quoteEnded() ? BigDecimal.ONE : BigDecimal.ZERO);
      case CONTINGENCY -> ALL_LINES;
      default -> always(sign);
    };
  }

  private static String always(Sign sign) {
    return switch (sign) {
      case LICENSED -> "#checks";
      case MATURITY -> "#way";
      default -> "#money";
    };
  }

  private static String leastCash(LoanStatus s) {
    return s.outlook().months().stream()
        .min(Comparator.comparing(m -> m.cash()))
        .map(m -> "#month-" + m.span().month())
        .orElse("#lender-months");
  }

  /** The line that has most of something, if it stands on the page. */
  private static String worst(LoanStatus s, Function<CostReport.Row, BigDecimal> figure) {
    return s.rows().stream()
        .filter(r -> figure.apply(r).signum() > 0)
        .filter(r -> r.line().treatment() != CostReport.Treatment.GONE)
        .max(Comparator.comparing(figure))
        .map(r -> "#" + Anchors.line(r.line().id()))
        .orElse(ALL_LINES);
  }

  private static String index(Optional<BigDecimal> index) {
    return index.map(i -> Words.number(i, 3)).orElse("n/a");
  }

  private static BigDecimal sum(LoanStatus s, Function<CostReport.Row, BigDecimal> part) {
    return s.rows().stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private SignRow sign(Flag f, String link) {
    var figure =
        f.money()
            ? cents(f.figure())
            : f.sign() == Sign.FRONT
                ? Words.number(f.figure().movePointRight(2), 1) + "\u00a0%"
                : Words.number(f.figure(), 0);
    return new SignRow(
        f.sign().label(),
        f.untold().orElse(figure),
        link,
        f.raised(),
        f.sign().advice(),
        f.untold().map(u -> u + ": " + f.sign().needs()).orElse("no"));
  }

  private LineRow all(LoanStatus s) {
    return new LineRow(
        "",
        "All lines",
        cents(sum(s, CostReport.Row::revised)),
        cents(sum(s, r -> r.entered().committed())),
        cents(sum(s, r -> r.entered().invoiced())),
        cents(sum(s, r -> r.entered().paid())),
        percent(s.value().complete()),
        cents(sum(s, CostReport.Row::toComplete)),
        cents(sum(s, CostReport.Row::atCompletion)),
        cents(sum(s, CostReport.Row::over)));
  }

  private ValueRow allValues(LoanStatus s) {
    return new ValueRow(
        "All stages",
        cents(StageValue.sum(s.stages(), StageValue::revised)),
        cents(StageValue.sum(s.stages(), StageValue::earned)),
        cents(StageValue.sum(s.stages(), StageValue::stored)),
        cents(StageValue.sum(s.stages(), StageValue::drawn)),
        cents(StageValue.sum(s.stages(), StageValue::ahead)),
        cents(StageValue.sum(s.stages(), StageValue::toFinish)));
  }

  /** The lines with most still to pay or most above their budget; all stand in the workbook. */
  private List<LineRow> lines(LoanStatus s) {
    return s.rows().stream()
        .map(r -> Map.entry(r.over().max(r.toPay()), r)) // once a line, not once a comparison
        .sorted(
            Map.Entry.<BigDecimal, CostReport.Row>comparingByKey()
                .reversed()
                .thenComparing(e -> e.getValue().line().id()))
        .limit(MOST_LINES)
        .map(Map.Entry::getValue)
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

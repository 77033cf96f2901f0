package cornerpost.report;

import cornerpost.finance.Finance;
import cornerpost.finance.Finance.Draw;
import cornerpost.finance.Finance.Made;
import cornerpost.finance.Finance.StageMoney;
import cornerpost.finance.Shares;
import cornerpost.plan.KeyFigures;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Cost by stage, by kind and by party; the lines that matter; money against time; the spread. */
final class MoneySection {
  private static final int MOST_LINES = 10;

  /** A part of the total: {@code bar} is its length in hundredths of the longest. */
  public record Share(String name, String amount, String share, String bar) {}

  /** A line of the bill. */
  public record Row(
      String link,
      String description,
      String stage,
      String quantity,
      String rate,
      String amount,
      String share,
      String basis,
      String party) {}

  /** A month of money. */
  public record MonthRow(
      String month,
      String out,
      String all,
      String drawn,
      String interest,
      String cash,
      String owed) {}

  /** A draw. */
  public record DrawRow(
      String date,
      String event,
      String work,
      String byTheMonth,
      String interest,
      String notLent,
      String earned,
      String retained,
      String paid,
      List<String> inspections,
      List<String> papers) {}

  /** A stage's money. */
  public record StageRow(
      String stage, String budget, String done, String inPlace, String toComplete) {}

  /** A delay and what it does. */
  public record DelayRow(
      String event, String days, String moves, String cost, String words, String why) {}

  /** Something that moves the outcome. */
  public record DriverRow(String name, String carried, String correlation) {}

  private final Plan plan;
  private final KeyFigures figures;
  private final BigDecimal total;

  MoneySection(Plan plan) {
    this.plan = plan;
    figures = plan.keyFigures();
    this.total = figures.total();
  }

  void into(Map<String, Object> model) {
    var e = plan.estimate();
    model.put(
        "totals",
        shares(
            List.of(
                Map.entry("In the house: materials, plant, labour", e.direct()),
                Map.entry("Design, permits, hire by the month, interest, rent", e.indirect()),
                Map.entry("Tax", e.tax()),
                Map.entry("Contingency", e.contingency()))));
    model.put("total", Words.number(total, 0));
    var byStage = new ArrayList<Map.Entry<String, BigDecimal>>();
    e.byStage().forEach((s, a) -> byStage.add(Map.entry(s.label(), a)));
    model.put("byStage", shares(byStage));
    var byWork = new ArrayList<Map.Entry<String, BigDecimal>>();
    e.byWork().forEach((w, a) -> byWork.add(Map.entry(Words.sentence(w.label()), a)));
    model.put("byWork", shares(byWork));
    var byKind = new ArrayList<Map.Entry<String, BigDecimal>>();
    e.byKind().forEach((k, a) -> byKind.add(Map.entry(Words.sentence(PlanJson.kind(k)), a)));
    model.put("byKind", shares(byKind));
    model.put(
        "topLines",
        e.lines().stream()
            .sorted(Comparator.comparing(CostLine::money).reversed().thenComparing(CostLine::id))
            .limit(MOST_LINES)
            .map(this::row)
            .toList());
    time(model);
    lender(model);
    risk(model);
  }

  private static String part(Draw d, Function<Made, BigDecimal> part) {
    return d.made().map(m -> Words.number(part.apply(m), 2)).orElse("");
  }

  private List<Share> shares(List<Map.Entry<String, BigDecimal>> parts) {
    var most = parts.stream().map(Map.Entry::getValue).max(Comparator.naturalOrder()).orElse(total);
    return parts.stream()
        .filter(p -> p.getValue().signum() != 0)
        .map(
            p ->
                new Share(
                    p.getKey(),
                    Words.number(p.getValue(), 0),
                    share(p.getValue()),
                    hundredths(p.getValue(), most)))
        .toList();
  }

  private String share(BigDecimal part) {
    if (total.signum() == 0) return "";
    return Words.number(figures.share(part).movePointRight(2), 1) + "\u00a0%";
  }

  private static String hundredths(BigDecimal part, BigDecimal most) {
    if (most.signum() <= 0 || part.signum() <= 0) return "0";
    return Svg.number(part.doubleValue() / most.doubleValue() * 100);
  }

  private Row row(CostLine l) {
    return new Row(
        "#" + Anchors.line(l.id()),
        l.description(),
        l.stage().label(),
        quantity(l),
        rate(l),
        Words.number(l.money(), 2),
        share(l.money()),
        l.basis().label(),
        l.partyWord());
  }

  static String quantity(CostLine l) {
    return Words.measured(l.quantity().in(l.unit()), l.unit());
  }

  static String rate(CostLine l) {
    var dimension = l.rate().dimension();
    if (dimension.equals(cornerpost.measure.Dimension.NONE)) {
      return Words.number(l.rate().value().multiply(BigDecimal.valueOf(100))) + "\u00a0%";
    }
    var money = cornerpost.measure.Unit.money("");
    var each = money.per(l.unit());
    return dimension.equals(each.dimension())
        ? Words.number(l.rate().in(each), 2)
        : Words.number(l.rate().value(), 2);
  }

  private void time(Map<String, Object> model) {
    var cash = new MoneyCharts(plan).cash();
    model.put("cash", cash.isEmpty() ? "" : PageModel.markup(cash));
    model.put(
        "months",
        plan.finance().months().stream()
            .map(
                m ->
                    new MonthRow(
                        Words.month(m.month()),
                        Words.number(m.out(), 0),
                        Words.number(m.cumulativeOut(), 0),
                        Words.number(m.drawn(), 0),
                        Words.number(m.interest(), 0),
                        Words.number(m.cash(), 0),
                        Words.number(m.borrowed(), 0)))
            .toList());
  }

  private void lender(Map<String, Object> model) {
    var f = plan.finance();
    var b = f.balance();
    boolean has = b.loan().signum() > 0 || b.cash().signum() > 0;
    model.put("hasLender", has);
    var currency = plan.estimate().currency();
    model.put(
        "balance",
        List.of(
            Map.entry("Cost to complete", Words.money(b.costToComplete(), currency)),
            Map.entry("Interest still to come", Words.money(b.interestToCome(), currency)),
            Map.entry("Loan not yet drawn", Words.money(b.undrawn(), currency)),
            Map.entry("Borrower's cash", Words.money(b.cash(), currency)),
            Map.entry(
                b.surplus().signum() < 0 ? "Short by" : "Left over",
                Words.money(b.surplus().abs(), currency))));
    var i = f.interest();
    model.put(
        "interestSum",
        i.charged().signum() == 0
            ? ""
            : "Interest as the draws are planned: "
                + Words.money(i.charged(), currency)
                + " against "
                + Words.money(i.allowance(), currency)
                + " in the budget; "
                + Words.money(i.ifAdded(), currency)
                + " if it were added to the loan.");
    model.put(
        "ratios",
        java.util.stream.Stream.of(
                b.loanToCost().map(r -> "Loan to cost " + Words.percent(r.doubleValue())),
                b.loanToValue().map(r -> "loan to value " + Words.percent(r.doubleValue())))
            .flatMap(java.util.Optional::stream)
            .collect(java.util.stream.Collectors.joining(", ")));
    model.put(
        "draws",
        f.draws().stream()
            .map(
                d ->
                    new DrawRow(
                        Words.day(d.date()),
                        d.event(),
                        part(d, Made::work),
                        part(d, Made::byTheMonth),
                        part(d, Made::interest),
                        part(d, Made::notLent),
                        Words.number(d.earned(), 2),
                        Words.number(d.retained(), 2),
                        Words.number(d.paid(), 2),
                        d.inspections(),
                        d.papers()))
            .toList());
    model.put(
        "stageMoney",
        f.stages().stream()
            .map(
                m -> stageRow(m.stage().label(), m.budget(), m.done(), m.inPlace(), m.toComplete()))
            .toList());
    var inPlace = sum(f.stages(), StageMoney::inPlace);
    var toComplete = sum(f.stages(), StageMoney::toComplete);
    model.put(
        "allStages",
        stageRow(
            "All stages",
            sum(f.stages(), StageMoney::budget),
            Shares.over(inPlace, inPlace.add(toComplete)).orElse(BigDecimal.ZERO),
            inPlace,
            toComplete));
    model.put(
        "delays",
        f.delays().stream()
            .map(
                d ->
                    new DelayRow(
                        d.eventName(),
                        Integer.toString(d.days()),
                        d.moveInDays() == 0
                            ? "no move"
                            : d.moveInDays() + " days, to " + Words.day(d.moveIn()),
                        Words.number(d.cost(), 0),
                        d.words(),
                        why(d)))
            .toList());
  }

  /** Its cause, and who bears it. */
  static String why(Finance.DelayEffect d) {
    return switch (d.asked()) {
      case TOGETHER -> "";
      case WHAT_IF -> d.cause();
      case ENTERED ->
          Words.sentence(d.cause().isBlank() ? "no cause given" : d.cause())
              + "; "
              + (d.borneBy().isBlank() ? "nobody named to bear it" : "borne by " + d.borneBy());
    };
  }

  private static BigDecimal sum(List<StageMoney> stages, Function<StageMoney, BigDecimal> part) {
    return stages.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static StageRow stageRow(
      String name, BigDecimal budget, BigDecimal done, BigDecimal inPlace, BigDecimal toComplete) {
    return new StageRow(
        name,
        Words.number(budget, 0),
        Words.percent(done.doubleValue()),
        Words.number(inPlace, 0),
        Words.number(toComplete, 0));
  }

  private void risk(Map<String, Object> model) {
    var r = plan.risk();
    var charts = new MoneyCharts(plan);
    model.put("trials", Words.number(BigDecimal.valueOf(r.trials()), 0));
    model.put("seed", Long.toString(r.seed()));
    model.put("distribution", r.distribution());
    model.put("finishSpread", PageModel.markup(charts.finishSpread()));
    model.put("costSpread", PageModel.markup(charts.costSpread()));
    model.put("finishHolds", Words.percent(RiskWords.finishWithinPlan(plan)));
    model.put("costHolds", Words.percent(r.cost().shareWithin(total.doubleValue())));
    model.put("bothHold", Words.percent(r.bothWithinPlan()));
    model.put("costDrivers", drivers(r.costDrivers(), 0));
    model.put("timeDrivers", drivers(r.timeDrivers(), 1));
  }

  private static List<DriverRow> drivers(
      List<cornerpost.risk.RiskResult.Driver> all, int decimals) {
    return all.stream()
        .limit(MOST_LINES)
        .map(
            d ->
                new DriverRow(
                    d.name(),
                    Words.number(BigDecimal.valueOf(d.carried()), decimals),
                    Words.number(BigDecimal.valueOf(d.correlation()), 2)))
        .toList();
  }
}

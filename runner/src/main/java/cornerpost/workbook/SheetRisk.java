package cornerpost.workbook;

import cornerpost.risk.RiskResult;
import cornerpost.risk.Spread;
import cornerpost.scope.OptionsQuestions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sheet Risk: how likely cost and finish are kept, and what moves them. */
final class SheetRisk {
  private static final int BINS = 20;
  private static final int COST = 4;
  private static final int FINISH = 7;
  private static final int DRIVERS = 10;
  private static final int CHART_ROW = 26;

  private final ResultRun run;
  private final SheetPage page;

  private SheetRisk(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.RISK);
  }

  static void write(ResultRun run) {
    new SheetRisk(run).write();
  }

  private void write() {
    var r = run.plan.risk();
    page.header(
        Addresses.HEADER_ROW,
        "Share of trials within",
        "Cost before contingency, " + run.currency(),
        "Finish",
        "",
        "Cost up to, " + run.currency(),
        "Trials",
        "",
        "Finish by",
        "Trials",
        "",
        "What moves it most",
        "Moves",
        "Part of its spread, " + run.currency() + " or days",
        "Correlation");
    page.headRight(Addresses.HEADER_ROW, 0, 1, 2, 4, 5, 7, 8, 12, 13);
    page.widths(14, 18, 16, 3, 16, 8, 3, 16, 8, 3, 56, 9, 18, 12);
    var together =
        run.plan
            .scope()
            .options()
            .findFigure(OptionsQuestions.CORRELATION)
            .map(
                f ->
                    ", prices moving together by "
                        + Math.round(f.value().doubleValue() * 100)
                        + " %")
            .orElse("");
    page.text(
        2,
        0,
        r.trials()
            + " trials, seed "
            + r.seed()
            + ", "
            + r.distribution()
            + together
            + ". "
            + Math.round(r.bothWithinPlan() * 100)
            + " % of them keep both the planned total and the planned finish.",
        page.plain().strong());
    shares(r);
    var costs = counts(r.cost());
    var finishes = counts(r.finish());
    bins(r.cost(), costs, COST, true);
    bins(r.finish(), finishes, FINISH, false);
    drivers(r);
    page.frame().freeze(0, Addresses.HEADER_ROW);
  }

  private void shares(RiskResult r) {
    int row = Addresses.FIRST_ROW;
    for (int p = 5; p <= 95; p += 5) {
      boolean told = p == 50 || p == 80;
      var share = page.number("0%");
      var money = page.number("#,##0");
      var date = page.dateLook();
      page.number(row, 0, p / 100.0, told ? share.strong() : share);
      page.number(row, 1, r.cost().quantile(p / 100.0), told ? money.strong() : money);
      var day = Days.ofFinish(r.finish().quantile(p / 100.0));
      page.date(row, 2, day, told ? date.strong() : date);
      row++;
    }
  }

  /** Trials in each of equal steps from the least outcome to the most. */
  private static List<Integer> counts(Spread s) {
    var counts = new ArrayList<Integer>();
    double before = 0;
    for (int i = 1; i <= BINS; i++) {
      double within = i == BINS ? 1 : s.shareWithin(edge(s, i));
      counts.add((int) Math.round((within - before) * s.size()));
      before = within;
    }
    return counts;
  }

  private static double edge(Spread s, int i) {
    return s.least() + (s.most() - s.least()) * i / BINS;
  }

  private void bins(Spread s, List<Integer> counts, int column, boolean money) {
    var labels = new ArrayList<String>();
    for (int i = 0; i < BINS; i++) {
      int row = Addresses.FIRST_ROW + i;
      double edge = edge(s, i + 1);
      if (money) {
        page.number(row, column, edge, page.number("#,##0"));
        labels.add(String.format(Locale.ENGLISH, "%,d", Math.round(edge)));
      } else {
        page.date(row, column, Days.ofFinish(edge), page.dateLook());
        labels.add(Days.shown(Days.ofFinish(edge)));
      }
      page.number(row, column + 1, counts.get(i), page.number("0"));
    }
    var chart =
        new ChartXml(money ? "Spread of cost" : "Spread of the finish", "trials", "0")
            .bar(
                new ChartXml.Series(
                    "Trials",
                    reference(column),
                    labels,
                    reference(column + 1),
                    counts.stream().map(Integer::doubleValue).toList(),
                    ChartXml.Paint.solid(money ? SheetStyle.OUT : SheetStyle.QUIET)));
    SheetCharts.put(
        run,
        ResultSheet.RISK,
        money ? "Spread of cost" : "Spread of the finish",
        money
            ? new SheetCharts.Place(0, CHART_ROW, 6, CHART_ROW + 22)
            : new SheetCharts.Place(7, CHART_ROW, 11, CHART_ROW + 22),
        chart);
  }

  private static String reference(int column) {
    var letter = SheetPage.letter(column);
    int last = Addresses.FIRST_ROW + BINS - 1;
    return "Risk!$" + letter + "$" + Addresses.FIRST_ROW + ":$" + letter + "$" + last;
  }

  private void drivers(RiskResult r) {
    int row = Addresses.FIRST_ROW;
    for (var d : r.costDrivers()) driver(row++, d, "cost", run.addresses.costRow(d.id()).orElse(0));
    for (var d : r.timeDrivers()) {
      driver(row++, d, "finish", run.addresses.taskRow(d.id()).orElse(0));
    }
  }

  private void driver(int row, RiskResult.Driver d, String what, int target) {
    page.text(row, DRIVERS, d.name(), page.wrapped());
    if (target > 0) {
      page.link(
          row, DRIVERS, what.equals("cost") ? ResultSheet.COST_PLAN : ResultSheet.SCHEDULE, target);
    }
    page.text(row, DRIVERS + 1, what);
    page.number(row, DRIVERS + 2, d.carried(), page.number(what.equals("cost") ? "#,##0" : "0.0"));
    page.number(row, DRIVERS + 3, d.correlation(), page.number("0.00"));
  }
}

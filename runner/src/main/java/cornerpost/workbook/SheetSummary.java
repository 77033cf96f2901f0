package cornerpost.workbook;

import cornerpost.check.Check;
import cornerpost.measure.Unit;
import cornerpost.plan.AtAGlance;
import cornerpost.plan.AtAGlance.About;
import cornerpost.plan.LeftOut;
import cornerpost.price.Region;
import cornerpost.scope.Box;
import cornerpost.scope.Room;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/** Sheet Summary: the plan at a glance, for owner, lender and contractor. */
final class SheetSummary {
  private static final int LAST_COLUMN = 3;
  private static final int MOST_WRONG = 12;

  private final ResultRun run;
  private final SheetPage page;
  private int row;

  private SheetSummary(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.SUMMARY);
  }

  static void write(ResultRun run) {
    new SheetSummary(run).write();
  }

  private void write() {
    page.widths(40, 24, 10, 78);
    page.frame().hideGridlines();
    heading();
    money();
    time();
    surety();
    stages();
    next();
    wrong();
    leftOut();
    contents();
    page.frame().freeze(0, 1);
  }

  // ---- parts --------------------------------------------------------------------------------

  private void heading() {
    row = 3;
    page.text(row, 0, SheetPrint.name(run), page.plain().strong().withSize(18));
    page.height(row, 26);
    row++;
    page.text(row, 0, "What is built", label());
    page.text(row, 1, whatIsBuilt(), page.plain().wrapping());
    page.merge(row, 1, LAST_COLUMN);
    row++;
    run.plan.book().ifPresent(b -> prices(b.region()));
    var mark =
        page.plain()
            .strong()
            .withSize(11)
            .filled(SheetStyle.ENTRY)
            .level(VerticalAlignment.CENTER)
            .ruledBottom(BorderStyle.MEDIUM, SheetStyle.INK);
    page.text(row, 0, "Does this run match the choices", mark);
    var changed = SheetFactsUsed.CHANGED + "+" + SheetPricesUsed.CHANGED;
    page.formula(
        row,
        1,
        "IF("
            + changed
            + "=0,\"Choices match this run\","
            + changed
            + "&IF("
            + changed
            + "=1,\" entry\",\" entries\")&\" changed since this run: run again for layout, dates"
            + " and cutting lists\")",
        "Choices match this run",
        mark);
    page.cell(row, 2, mark);
    page.cell(row, 3, mark);
    page.merge(row, 1, LAST_COLUMN);
    page.height(row, 24);
    row += 2;
  }

  /** Whose prices they are, of which day, and what the price book says to every reader. */
  private void prices(Region region) {
    page.text(row, 0, "Prices", label());
    page.text(
        row,
        1,
        region.name() + ", prices of " + Days.shown(region.priceDate()) + ". " + region.notice(),
        page.plain().wrapping());
    page.link(row, 1, ResultSheet.PRICES_USED, 1);
    page.merge(row, 1, LAST_COLUMN);
    row++;
  }

  private void money() {
    section("Money");
    var estimate = run.plan.estimate();
    page.text(row, 0, "Total cost", label());
    page.formula(
        row,
        1,
        "SUM(" + run.addresses.costColumn(CostPlanColumn.AMOUNT) + ")",
        estimate.total(),
        page.number(run.moneySummaryFormat()).strong().withSize(12));
    remark(
        "Everything up to the keys, tax and contingency included; what is left out stands below.");
    int total = row++;
    floor(total);
    part("Direct cost", "direct", estimate.direct(), "Materials, plant, services and hired work.");
    part(
        "Indirect cost",
        "indirect",
        estimate.indirect(),
        "Design, permits, hire by the month, interest, rent, price rise.");
    part("Contingency", "contingency", estimate.contingency(), "");
    var taxName = run.plan.book().map(b -> b.region().taxName()).orElse("");
    part("Tax", "tax", estimate.tax(), taxName);
    ownHours();
    balance();
    row++;
  }

  /** The first line of the lender's review, as it stands there. */
  private void balance() {
    var verdict = run.plan.finance().verdict(run.currency());
    if (verdict.isEmpty()) return;
    page.text(row, 0, "The loan", label());
    var cell = Addresses.at(ResultSheet.LENDER_REVIEW, "A", 3);
    page.formula(row, 1, cell, verdict.get(), page.plain().strong());
    page.link(row++, 1, ResultSheet.LENDER_REVIEW, 3);
  }

  private void floor(int totalRow) {
    var figures = run.plan.keyFigures();
    if (figures.floor().isEmpty()) return;
    var unit = figures.areaUnit();
    var area = figures.floor().get();
    page.text(row, 0, "Floor inside the steel", label());
    page.formula(
        row,
        1,
        area.formula(run.addresses, unit),
        area.in(unit),
        page.number("#,##0.0 \"" + unit.symbol() + "\""));
    row++;
    page.text(row, 0, "Cost of each " + unit.symbol() + " of it", label());
    page.formula(
        row,
        1,
        "$B$" + totalRow + "/$B$" + (row - 1),
        figures.costPerArea().orElseThrow(),
        page.number(run.moneySummaryFormat()));
    row++;
  }

  private void part(String name, String key, BigDecimal value, String note) {
    page.text(row, 0, name, label());
    page.formula(
        row,
        1,
        "SUMIFS("
            + run.addresses.costColumn(CostPlanColumn.AMOUNT)
            + ","
            + run.addresses.costColumn(CostPlanColumn.PART)
            + ",\""
            + key
            + "\")",
        value,
        page.number(run.moneySummaryFormat()));
    remark(note);
    row++;
  }

  private void ownHours() {
    double hours = 0;
    for (var l : run.addresses.costLines()) {
      if (l.id().endsWith(":own")) hours += l.quantity().asDouble(Unit.HOUR);
    }
    if (hours == 0) return;
    page.text(row, 0, "The owner's own hours", label());
    page.formula(
        row,
        1,
        "SUMIFS("
            + run.addresses.costColumn(CostPlanColumn.QUANTITY)
            + ","
            + run.addresses.costColumn(CostPlanColumn.ID)
            + ",\"*:own\")",
        hours,
        page.number("#,##0 \"h\""));
    remark("At no money; what the same hours would cost hired is not in the total.");
    row++;
  }

  private void time() {
    section("Time");
    var p = run.plan.programme();
    day("Move-in", p.moveIn(), "The last driving task: see sheet Bar chart.", true);
    day("Start", p.start(), "", false);
    if (p.delivery().isPresent()) {
      day("Delivery of the containers", p.delivery().get(), "", false);
    }
    if (p.deliveryFloatDays().isPresent()) {
      page.text(row, 0, "Delivery may slip by", label());
      page.number(row, 1, p.deliveryFloatDays().get(), page.number("0 \"days\""));
      remark(
          "Calendar days before move-in moves, the crews in this order; another may take more. What a delay"
              + " costs: sheet Delay effects.");
      row++;
    }
    page.text(row, 0, "Start to finish", label());
    page.number(row, 1, p.durationDays(), page.number("#,##0.# \"working days\""));
    remark(
        p.crewLimited()
            ? "Limited by crews; no sequence can be shorter than "
                + p.lowerBoundDays().stripTrailingZeros().toPlainString()
                + " days."
            : "");
    row += 2;
  }

  private void day(String name, LocalDate day, String note, boolean strong) {
    var look = page.dateLook();
    page.text(row, 0, name, label());
    page.date(row, 1, day, strong ? look.strong().withSize(12) : look);
    remark(note);
    row++;
  }

  private void surety() {
    section("How sure");
    var r = run.plan.risk();
    var money = page.number(run.moneySummaryFormat());
    surely("Half of the trials cost no more than", r.cost().quantile(0.5), money);
    remark("Contingency left out: it is there for what these trials show.", row - 1);
    surely("Four in five cost no more than", r.cost().quantile(0.8), money);
    day("Half of the trials finish by", Days.ofFinish(r.finish().quantile(0.5)), "", false);
    day("Four in five finish by", Days.ofFinish(r.finish().quantile(0.8)), "", false);
    surely("Trials that keep both total and date", r.bothWithinPlan(), page.number("0%"));
    remark(
        r.trials() + " trials, seed " + r.seed() + "; dates and shares need a new run.", row - 1);
    row++;
  }

  private void surely(String name, double value, SheetStyle look) {
    page.text(row, 0, name, label());
    page.number(row, 1, value, look);
    row++;
  }

  private void stages() {
    section("Cost by stage");
    head("Stage", "Cost", "Share");
    int first = row;
    var byStage = run.plan.estimate().byStage();
    var figures = run.plan.keyFigures();
    int last = first + Stage.values().length - 1;
    var labels = new ArrayList<String>();
    var costs = new ArrayList<Double>();
    for (var s : Stage.values()) {
      page.text(row, 0, s.label(), page.plain());
      page.formula(
          row,
          1,
          "SUMIFS("
              + run.addresses.costColumn(CostPlanColumn.AMOUNT)
              + ","
              + run.addresses.costColumn(CostPlanColumn.STAGE)
              + ",$A"
              + row
              + ")",
          byStage.get(s),
          page.number("#,##0"));
      share(first, last, figures.share(byStage.get(s)));
      labels.add(s.label());
      costs.add(byStage.get(s).doubleValue());
      row++;
    }
    var sum = page.plain().strong().ruledTop(BorderStyle.THIN, SheetStyle.INK);
    page.text(row, 0, "All stages", sum);
    page.formula(
        row,
        1,
        "SUM($B$" + first + ":$B$" + last + ")",
        figures.total(),
        sum.formatted("#,##0").aligned(HorizontalAlignment.RIGHT));
    page.cell(row, 2, sum);
    var chart =
        new ChartXml("Cost by stage", run.currency(), "#,##0")
            .sideways()
            .bar(
                new ChartXml.Series(
                    "Cost",
                    "Summary!$A$" + first + ":$A$" + last,
                    labels,
                    "Summary!$B$" + first + ":$B$" + last,
                    costs,
                    ChartXml.Paint.solid(SheetStyle.OUT)))
            .labelled();
    SheetCharts.put(
        run,
        ResultSheet.SUMMARY,
        "Cost by stage",
        new SheetCharts.Place(3, first - 3, 4, row + 6),
        chart);
    row += 7;
  }

  private void share(int first, int last, BigDecimal share) {
    var sum = "SUM($B$" + first + ":$B$" + last + ")";
    page.formula(row, 2, "IF(" + sum + "=0,0,$B" + row + "/" + sum + ")", share, page.number("0%"));
  }

  // ---- what to do ---------------------------------------------------------------------------

  private void next() {
    section("Next three things to do");
    var next = AtAGlance.next(run.plan);
    if (next.isEmpty()) {
      page.text(row++, 0, "Nothing is left to do.");
    } else {
      head("For", "By", "", "What");
      for (var p : next) point(p);
    }
    row++;
  }

  private void wrong() {
    section("What is wrong");
    // The money's verdict is a live line above; a sentence would not follow it.
    var wrong = AtAGlance.wrong(run.plan).stream().filter(p -> p.about() != About.MONEY).toList();
    if (wrong.isEmpty()) {
      page.text(row++, 0, "Nothing that this plan can see, on the day it was made.");
    } else {
      head("About", "", "", "What was found");
      for (var p : wrong.stream().limit(MOST_WRONG).toList()) point(p);
      if (wrong.size() > MOST_WRONG) {
        page.text(row, 0, "and " + (wrong.size() - MOST_WRONG) + " more on sheet Checks");
        page.link(row++, 0, ResultSheet.CHECKS, Addresses.HEADER_ROW);
      }
    }
    row++;
  }

  private void point(AtAGlance.Point p) {
    boolean stop = p.sign().equals(Check.Severity.STOP.label());
    page.text(row, 0, p.sign(), stop ? SheetChecks.stop(page) : page.plain().strong());
    int at = row;
    switch (p.about()) {
      case ORDERS -> page.link(row, 0, ResultSheet.BUYING_LIST, Addresses.FIRST_ROW);
      case TASK ->
          run.addresses.taskRow(p.id()).ifPresent(r -> page.link(at, 0, ResultSheet.SCHEDULE, r));
      case CHECK -> page.link(row, 0, ResultSheet.CHECKS, checkRow(p.id()));
      case MONTHS -> page.link(row, 0, ResultSheet.CASH_FLOW, Addresses.FIRST_ROW);
      case MONTHS_TO_COME -> page.link(row, 0, ResultSheet.MONEY_TO_COME, Addresses.HEADER_ROW);
      case NETWORK -> page.link(row, 0, ResultSheet.SCHEDULE, Addresses.HEADER_ROW);
      case MONEY, INPUT -> {}
    }
    p.by().ifPresent(day -> page.date(at, 1, day, page.dateLook()));
    page.text(row, 3, p.text(), page.wrapped());
    row++;
  }

  private int checkRow(String id) {
    var ids = SheetChecks.sorted(run.plan).stream().map(Check::id).toList();
    return Addresses.FIRST_ROW + ids.indexOf(id);
  }

  private void leftOut() {
    section("What is left out");
    for (var text : LeftOut.of(run.plan)) {
      page.text(row, 0, text, page.plain());
      row++;
    }
    row++;
  }

  private void contents() {
    SheetPrint.printed(page, LAST_COLUMN, row - 1); // the way to the sheets is for the screen
    section("Where to look");
    for (var s : ResultSheet.values()) {
      if (s == ResultSheet.SUMMARY || !run.pages.containsKey(s)) continue;
      page.text(row, 0, s.title());
      page.link(row, 0, s, 1);
      page.text(row, 1, s.purpose(), page.plain());
      row++;
    }
  }

  // ---- words --------------------------------------------------------------------------------

  private String whatIsBuilt() {
    var scope = run.plan.scope();
    if (scope.boxes().isEmpty()) return "The owner's own tasks and items.";
    var sizes = new LinkedHashMap<String, Integer>();
    for (Box b : scope.boxes()) sizes.merge(b.size().label(), 1, Integer::sum);
    var text = new ArrayList<String>();
    sizes.forEach((size, n) -> text.add(n + " x " + size));
    var parts = new ArrayList<String>();
    parts.add(String.join(", ", text));
    if (!scope.rooms().isEmpty()) {
      parts.add("with " + String.join(", ", scope.rooms().stream().map(Room::id).toList()));
    }
    scope
        .site()
        .find(SiteQuestions.FOUNDATION)
        .ifPresent(a -> parts.add("on " + ((cornerpost.scope.Labelled) a.value()).label()));
    int openings = scope.openings().size();
    if (openings > 0) parts.add(openings + (openings == 1 ? " opening" : " openings") + " cut");
    return String.join("; ", parts) + ".";
  }

  // ---- looks --------------------------------------------------------------------------------

  private void section(String name) {
    var look = page.plain().strong().withSize(12).ruledBottom(BorderStyle.MEDIUM, SheetStyle.INK);
    page.text(row, 0, name, look);
    for (int c = 1; c <= LAST_COLUMN; c++) page.cell(row, c, look);
    row++;
  }

  private void head(String... names) {
    var look = page.plain().strong().inInk(SheetStyle.QUIET);
    for (int i = 0; i < names.length; i++) {
      boolean number = i == 1 && !names[1].equals("About") || i == 2;
      page.text(row, i, names[i], number ? look.aligned(HorizontalAlignment.RIGHT) : look);
    }
    row++;
  }

  private SheetStyle label() {
    return page.plain().strong();
  }

  private void remark(String text) {
    remark(text, row);
  }

  private void remark(String text, int at) {
    if (!text.isEmpty()) page.text(at, 3, text, page.wrapped().inInk(SheetStyle.QUIET));
  }
}

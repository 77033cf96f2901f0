package cornerpost.workbook;

import cornerpost.measure.Ratio;
import cornerpost.measure.Unit;
import cornerpost.plan.CuttingPlan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Sheet Cutting plans: a row for each item, below it a row for bars cut alike, then a row for each
 * length wanted.
 */
final class SheetCuttingPlans {
  private static final String LENGTH = "#,##0.000";

  private final ResultRun run;
  private final SheetPage page;
  private final Unit unit;

  private SheetCuttingPlans(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.CUTTING_PLANS);
    this.unit = run.plan.scope().units().choose(Unit.M, Unit.FT);
  }

  static void write(ResultRun run) {
    new SheetCuttingPlans(run).write();
  }

  private void write() {
    var u = ", " + unit;
    page.header(
        Addresses.HEADER_ROW,
        "Item",
        "Row",
        "What",
        "Bars or pieces",
        "Least possible",
        "The bill buys",
        "Length of one" + u,
        "Pieces" + u,
        "Saw cuts" + u,
        "Left over" + u,
        "Loss");
    page.headRight(Addresses.HEADER_ROW, 3, 4, 5, 6, 7, 8, 9, 10);
    page.widths(26, 9, 70, 10, 10, 10, 11, 11, 11, 11, 9);
    int row = Addresses.FIRST_ROW;
    for (var plan : run.plan.cutting()) row = item(plan, row);
    if (row == Addresses.FIRST_ROW) page.text(2, 2, "Nothing is cut from bars.");
    SheetTables.finish(page, row - 1, 11, 3);
  }

  private int item(CuttingPlan plan, int row) {
    int first = row + 1;
    int last = row + plan.patterns().size();
    head(plan, row, first, last);
    int at = first;
    for (var p : plan.patterns()) pattern(plan, p, at++);
    for (var c : plan.cuts()) cut(plan, c, at++);
    return at;
  }

  private void head(CuttingPlan plan, int row, int first, int last) {
    var strong = SheetQuantities.ruled(page.plain()).strong();
    var right = strong.aligned(SheetQuantities.RIGHT);
    var length = right.formatted(LENGTH);
    page.text(row, 0, plan.item(), strong);
    run.addresses
        .priceRow(plan.item())
        .ifPresent(r -> page.link(row, 0, ResultSheet.PRICES_USED, r));
    page.text(row, 1, "item", strong);
    page.text(row, 2, what(plan), strong.wrapping());
    page.formula(row, 3, "SUM(D" + first + ":D" + last + ")", plan.bars(), right.formatted("0"));
    page.number(row, 4, plan.leastBars(), right.formatted("0"));
    bought(plan, row, right);
    page.number(row, 6, in(plan.stock()), length);
    sums(row, first, last, plan, length);
    page.formula(
        row,
        10,
        "IF(D" + row + "=0,0,(I" + row + "+J" + row + ")/(D" + row + "*G" + row + "))",
        plan.loss(),
        right.formatted("0.0%"));
  }

  private void sums(int row, int first, int last, CuttingPlan plan, SheetStyle look) {
    Map<String, BigDecimal> columns = new LinkedHashMap<>();
    columns.put("H", plan.cutLength());
    columns.put("I", plan.sawn());
    columns.put("J", plan.left());
    columns.forEach(
        (c, value) ->
            page.formula(
                row,
                c.charAt(0) - 'A',
                "SUMPRODUCT($D" + first + ":$D" + last + "," + c + first + ":" + c + last + ")",
                in(value),
                look));
  }

  /** Whole bars where those are sold; else what is bought by length, in such bars. */
  private void bought(CuttingPlan plan, int row, SheetStyle right) {
    var item = run.plan.book().flatMap(b -> b.findItem(plan.item())).orElseThrow();
    var perUnit = item.contentUnit().toBase().applyTo(item.content());
    var bars = perUnit.divide(plan.stock(), Ratio.PRECISION).stripTrailingZeros();
    boolean one = bars.subtract(BigDecimal.ONE).abs().doubleValue() < 1e-3;
    var sum =
        "SUMIFS("
            + run.addresses.costColumn(CostPlanColumn.QUANTITY)
            + ","
            + run.addresses.costColumn(CostPlanColumn.ITEM)
            + ",$A"
            + row
            + ")";
    var formula = one ? sum : sum + "*" + bars.setScale(15, RoundingMode.HALF_UP).toPlainString();
    var look = right.formatted(one ? "#,##0" : "#,##0.0");
    page.formula(
        row, 5, formula, plan.bought(), plan.billIsShort() ? look.inInk(SheetStyle.STOP) : look);
  }

  private String what(CuttingPlan plan) {
    var text = new StringBuilder(plan.description());
    text.append("; saw cut ")
        .append(plan.kerf().movePointRight(3).stripTrailingZeros().toPlainString());
    text.append(" mm");
    if (plan.unplanned().signum() > 0) {
      text.append("; a further ")
          .append(in(plan.unplanned()).setScale(2, RoundingMode.HALF_UP).toPlainString())
          .append(" ")
          .append(unit)
          .append(" is bought by length, without a plan");
    }
    if (plan.billIsShort()) text.append("; the bill buys less than this plan takes");
    return text.toString();
  }

  private void pattern(CuttingPlan plan, CuttingPlan.Pattern p, int row) {
    var right = page.plain().aligned(SheetQuantities.RIGHT);
    var length = right.formatted(LENGTH);
    page.text(row, 0, plan.item(), page.plain().inInk(SheetStyle.QUIET));
    page.text(row, 1, "bars", page.plain());
    var parts =
        p.parts().stream()
            .map(part -> part.count() + " x " + part.mark() + " " + shown(part.length()))
            .collect(Collectors.joining(" + "));
    page.text(row, 2, parts, page.plain().wrapping());
    page.number(row, 3, p.bars(), right.formatted("0"));
    page.number(row, 6, in(plan.stock()), length.inInk(SheetStyle.QUIET));
    page.number(row, 7, in(p.cutLength()), length);
    page.number(row, 8, in(p.sawn()), length);
    var left = in(p.left()).setScale(12, RoundingMode.HALF_UP);
    page.formula(row, 9, "ROUND(G" + row + "-H" + row + "-I" + row + ",12)", left, length);
    page.fold(row);
  }

  private void cut(CuttingPlan plan, CuttingPlan.Cut c, int row) {
    var quiet = page.plain().inInk(SheetStyle.QUIET);
    page.text(row, 0, plan.item(), quiet);
    page.text(row, 1, "piece " + c.mark(), quiet);
    page.text(row, 2, c.what(), quiet.wrapping());
    page.number(row, 3, c.count(), quiet.aligned(SheetQuantities.RIGHT).formatted("0"));
    page.number(row, 6, in(c.length()), quiet.aligned(SheetQuantities.RIGHT).formatted(LENGTH));
    page.fold(row);
  }

  private BigDecimal in(BigDecimal metres) {
    return unit.toBase().inverse().applyTo(metres);
  }

  private String shown(BigDecimal metres) {
    return in(metres).setScale(3, RoundingMode.HALF_UP).toPlainString();
  }
}

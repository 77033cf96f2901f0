package cornerpost.workbook;

import cornerpost.plan.OrderRow;
import cornerpost.plan.OrderTotals;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/** Sheet Buying list: every item once, for all the lines that use it. */
final class SheetBuyingList {
  private SheetBuyingList() {}

  static List<OrderRow> sorted(Plan plan) {
    return plan.orders().stream()
        .sorted(
            Comparator.comparing(OrderRow::group)
                .thenComparing(OrderRow::orderBy)
                .thenComparing(OrderRow::item))
        .toList();
  }

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.BUYING_LIST);
    page.header(
        Addresses.HEADER_ROW,
        "Supplier group",
        "Item",
        "Description",
        "Net need",
        "Buy",
        "Unit",
        "Amount",
        "Whole ones cost more by",
        "Order by",
        "Late",
        "Needed on",
        "Lead days",
        "First task",
        "Group comes to");
    page.headIndented(Addresses.HEADER_ROW, 5, 9, 12);
    page.headRight(Addresses.HEADER_ROW, 3, 4, 6, 7, 8, 10, 11, 13);
    page.widths(26, 30, 52, 11, 11, 9, 13, 13, 16, 7, 16, 7, 40, 13);
    int row = Addresses.FIRST_ROW;
    OrderRow before = null;
    for (var o : sorted(run.plan)) {
      boolean first = before == null || before.group() != o.group();
      write(run, page, row, o, first);
      if (!first) page.fold(row);
      before = o;
      row++;
    }
    int last = Math.max(Addresses.FIRST_ROW, row - 1);
    groups(run, page, last);
    var bold = page.number(run.moneyFormat()).strong();
    var sum =
        run.plan.orders().stream().map(OrderRow::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    page.text(2, 2, "Total, before tax, in " + run.currency(), page.plain().strong());
    page.formula(2, 6, "SUM($G$" + Addresses.FIRST_ROW + ":$G$" + last + ")", sum, bold);
    var more =
        run.plan.orders().stream()
            .map(OrderRow::roundingCost)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    page.formula(2, 7, "SUM($H$" + Addresses.FIRST_ROW + ":$H$" + last + ")", more, bold);
    SheetTables.finish(page, row - 1, 14, 2);
  }

  /** What each kind of supplier comes to, live, in the first row of the group. */
  private static void groups(ResultRun run, SheetPage page, int last) {
    var totals = OrderTotals.byGroup(run.plan.orders());
    var look =
        SheetQuantities.ruled(page.plain())
            .aligned(SheetQuantities.RIGHT)
            .formatted(run.moneyFormat())
            .strong();
    int row = Addresses.FIRST_ROW;
    OrderRow before = null;
    for (var o : sorted(run.plan)) {
      if (before == null || before.group() != o.group()) {
        var formula =
            "SUMIFS($G$%1$d:$G$%2$d,$A$%1$d:$A$%2$d,$A%3$d)"
                .formatted(Addresses.FIRST_ROW, last, row);
        page.formula(row, 13, formula, totals.get(o.group()), look);
      }
      before = o;
      row++;
    }
  }

  private static void write(ResultRun run, SheetPage page, int row, OrderRow o, boolean first) {
    var plain = first ? SheetQuantities.ruled(page.plain()) : page.plain();
    var right = plain.aligned(SheetQuantities.RIGHT);
    var money = right.formatted(run.moneyFormat());
    var date = right.formatted("ddd d mmm yyyy");
    page.text(row, 0, o.group().label(), first ? plain.strong().wrapping() : plain.wrapping());
    page.text(row, 1, o.item(), plain);
    run.addresses.priceRow(o.item()).ifPresent(r -> page.link(row, 1, ResultSheet.PRICES_USED, r));
    page.text(row, 2, o.description(), plain.wrapping());
    page.number(row, 3, o.net(), right.formatted("#,##0.00").inInk(SheetStyle.QUIET));
    bought(run, page, row, o, right.formatted("#,##0.##").strong());
    page.text(row, 5, o.unit().symbol(), plain.indented());
    amount(run, page, row, o, money);
    page.number(row, 7, o.roundingCost(), money.inInk(SheetStyle.QUIET));
    page.date(row, 8, o.orderBy(), o.late() ? date.strong().inInk(SheetStyle.STOP) : date);
    page.text(row, 9, o.late() ? "late" : "", plain.strong().inInk(SheetStyle.STOP).indented());
    page.date(row, 10, o.neededOn(), date);
    page.number(row, 11, o.leadDays(), right.formatted("0"));
    var task = run.addresses.taskRow(o.firstTask());
    page.text(
        row,
        12,
        run.plan.programme().task(o.firstTask()).map(t -> t.task().name()).orElse(o.firstTask()),
        plain.wrapping().indented());
    task.ifPresent(r -> page.link(row, 12, ResultSheet.SCHEDULE, r));
  }

  /** Live where the Cost plan's lines of the item add up to it. */
  private static void bought(ResultRun run, SheetPage page, int row, OrderRow o, SheetStyle look) {
    var sum = BigDecimal.ZERO;
    for (var l : of(run, o)) sum = sum.add(l.quantity().in(l.unit()));
    boolean whole = o.buy().stripTrailingZeros().scale() <= 0;
    var shown = look.formatted(whole ? "#,##0" : "#,##0.00");
    if (close(sum, o.buy())) {
      page.formula(row, 4, sumOf(run, CostPlanColumn.QUANTITY, row), o.buy(), shown);
    } else {
      page.number(row, 4, o.buy(), shown);
    }
  }

  private static void amount(ResultRun run, SheetPage page, int row, OrderRow o, SheetStyle look) {
    var sum = of(run, o).stream().map(CostLine::money).reduce(BigDecimal.ZERO, BigDecimal::add);
    if (sum.compareTo(o.amount()) == 0) {
      page.formula(row, 6, sumOf(run, CostPlanColumn.AMOUNT, row), o.amount(), look);
    } else {
      page.number(row, 6, o.amount(), look);
    }
  }

  private static List<CostLine> of(ResultRun run, OrderRow o) {
    return run.addresses.linesOfItem(o.item());
  }

  private static String sumOf(ResultRun run, CostPlanColumn column, int row) {
    return "SUMIFS("
        + run.addresses.costColumn(column)
        + ","
        + run.addresses.costColumn(CostPlanColumn.ITEM)
        + ",$B"
        + row
        + ")";
  }

  private static boolean close(BigDecimal a, BigDecimal b) {
    return a.subtract(b).abs().doubleValue() <= 1e-9 * Math.max(1, b.abs().doubleValue());
  }
}

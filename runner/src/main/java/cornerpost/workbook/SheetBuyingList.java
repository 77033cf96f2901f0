package cornerpost.workbook;

import cornerpost.plan.OrderRow;
import cornerpost.plan.OrderTotals;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import cornerpost.price.Item;
import cornerpost.takeoff.Line;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        "Standing",
        "Needed on",
        "Lead days",
        "First task",
        "Group comes to");
    page.headIndented(Addresses.HEADER_ROW, 5, 9, 12);
    page.headRight(Addresses.HEADER_ROW, 3, 4, 6, 7, 8, 10, 11, 13);
    page.widths(18, 26, 38, 9, 8, 9, 11, 11, 15, 14, 15, 6, 28, 11);
    var lines = new HashMap<String, Line>();
    for (var l : run.plan.lines()) lines.put(l.id(), l);
    int row = Addresses.FIRST_ROW;
    OrderRow before = null;
    for (var o : sorted(run.plan)) {
      boolean first = before == null || before.group() != o.group();
      write(run, page, lines, row, o, first);
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

  private static void write(
      ResultRun run, SheetPage page, Map<String, Line> lines, int row, OrderRow o, boolean first) {
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
    var more = money.inInk(SheetStyle.QUIET);
    rounding(run, lines, o, row)
        .ifPresentOrElse(
            f -> page.formula(row, 7, f, o.roundingCost(), more),
            () -> page.number(row, 7, o.roundingCost(), more));
    page.date(row, 8, o.orderBy(), o.late() ? date.strong().inInk(SheetStyle.STOP) : date);
    var standing = plain.wrapping().indented();
    page.text(
        row,
        9,
        o.said(run.plan.statusDate()),
        o.late() ? standing.strong().inInk(SheetStyle.STOP) : standing);
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

  /**
   * What whole ones cost over the bare need, live: the line of packs where lines share them, else
   * what is bought less what its one line asks for. Where a quote stands, the number of the run.
   */
  private static Optional<String> rounding(
      ResultRun run, Map<String, Line> lines, OrderRow o, int row) {
    var item = run.plan.book().flatMap(b -> b.findItem(o.item())).filter(Item::wholeOnly);
    var bought = of(run, o);
    if (item.isEmpty() || bought.stream().anyMatch(l -> l.quote().isPresent())) {
      return Optional.empty();
    }
    var packs = bought.stream().filter(l -> l.quantityId().isEmpty()).findFirst();
    if (packs.isPresent()) {
      var quantity = cost(run, CostPlanColumn.QUANTITY, packs.get());
      return Optional.of(
          run.rounded("MAX(0," + quantity + ")*" + cost(run, CostPlanColumn.RATE, packs.get())));
    }
    if (bought.size() != 1) return Optional.empty();
    var only = bought.get(0);
    var line = only.quantityId().map(lines::get);
    return line.map(
        l -> {
          var need = item.get().needed(l.named(), l.waste(o.item()));
          return run.rounded(
              "MAX(0,$E"
                  + row
                  + "-("
                  + need.formula(run.addresses, o.unit())
                  + "))*"
                  + cost(run, CostPlanColumn.RATE, only));
        });
  }

  private static String cost(ResultRun run, CostPlanColumn column, CostLine line) {
    int row = run.addresses.costRow(line.id()).orElseThrow();
    return Addresses.at(ResultSheet.COST_PLAN, column.letter(), row);
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

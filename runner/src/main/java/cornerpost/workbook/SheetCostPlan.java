package cornerpost.workbook;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.HorizontalAlignment;

/** Sheet Cost plan: the bill, its rates and amounts live, quotes looked up by the line's id. */
final class SheetCostPlan {
  /** The cell of the total, from any sheet. */
  static final String TOTAL =
      "'Cost plan'!$" + CostPlanColumn.AMOUNT.letter() + "$" + (Addresses.HEADER_ROW - 1);

  private static final int FIRST = Addresses.FIRST_ROW;
  private static final String PACKS = "packs:";

  private final ResultRun run;
  private final SheetPage page;

  private SheetCostPlan(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.COST_PLAN);
  }

  static void write(ResultRun run) {
    new SheetCostPlan(run).write();
  }

  private void write() {
    TableColumn.write(page, CostPlanColumn.values());
    page.headIndented(Addresses.HEADER_ROW, 4, 7, 12);
    page.headRight(Addresses.HEADER_ROW, 3, 5, 6, 9, 10, 11, 17, 18, 19, 20);
    total();
    CostLine before = null;
    int row = FIRST;
    for (var line : run.addresses.costLines()) {
      boolean first = before == null || before.stage() != line.stage();
      line(row, line, first);
      if (!first) page.fold(row);
      before = line;
      row++;
    }
    SheetTables.finish(page, row - 1, CostPlanColumn.values().length, 1);
  }

  /** The total stands above the table, so that the table holds lines and nothing else. */
  private void total() {
    int row = Addresses.HEADER_ROW - 1;
    var bold = page.plain().strong();
    page.text(row, at(CostPlanColumn.DESCRIPTION), "Total, all lines", bold);
    page.text(
        row, at(CostPlanColumn.RATE), run.currency(), bold.aligned(HorizontalAlignment.RIGHT));
    page.formula(
        row,
        at(CostPlanColumn.AMOUNT),
        "SUM(" + own(CostPlanColumn.AMOUNT, FIRST, run.addresses.lastCostRow()) + ")",
        run.plan.estimate().total(),
        page.number(run.moneyFormat()).strong());
    page.formula(
        row,
        at(CostPlanColumn.AT_RUN),
        "SUM(" + own(CostPlanColumn.AT_RUN, FIRST, run.addresses.lastCostRow()) + ")",
        run.plan.estimate().total(),
        page.number(run.moneyFormat()).strong().inInk(SheetStyle.QUIET));
  }

  private void line(int row, CostLine line, boolean first) {
    var plain = first ? SheetQuantities.ruled(page.plain()) : page.plain();
    var wrap = plain.wrapping();
    var right = plain.aligned(HorizontalAlignment.RIGHT);
    var money = right.formatted(run.moneyFormat());
    page.text(row, 0, line.id(), plain);
    page.text(row, at(CostPlanColumn.STAGE), line.stage().label(), first ? wrap.strong() : wrap);
    page.text(row, at(CostPlanColumn.DESCRIPTION), line.description(), wrap);
    var quantity = line.quantity().in(line.unit());
    page.formula(
        row,
        at(CostPlanColumn.QUANTITY),
        line.id().startsWith(PACKS) ? packs(row, line) : formula(line.quantity(), line.unit()),
        quantity,
        right.formatted(
            line.quantity().dimension().equals(Dimension.MONEY)
                ? run.moneyFormat()
                : SheetQuantities.format(line.quantity(), quantity)));
    page.text(row, at(CostPlanColumn.UNIT), line.unit().symbol(), plain.indented());
    quotes(row, line, money);
    rates(row, line, right);
    page.text(row, at(CostPlanColumn.PARTY), line.partyWord(), plain);
    page.text(
        row, at(CostPlanColumn.COUNTS), Addresses.CountsAs.of(line).label(), plain.indented());
    page.text(row, at(CostPlanColumn.TAXED), line.taxed() ? "yes" : "no", plain);
    page.text(row, at(CostPlanColumn.PART), part(line), plain);
    page.text(row, at(CostPlanColumn.TASK), line.task().orElse(""), wrap);
    page.text(row, at(CostPlanColumn.ITEM), line.item().orElse(""), wrap);
    var quiet = money.inInk(SheetStyle.QUIET);
    page.number(row, at(CostPlanColumn.LOW), line.low(), quiet);
    page.number(row, at(CostPlanColumn.HIGH), line.high(), quiet);
    if (first) stageTotal(row, line, money.strong());
    else page.cell(row, at(CostPlanColumn.STAGE_TOTAL), money);
    page.number(row, at(CostPlanColumn.AT_RUN), line.money(), quiet);
    page.text(row, at(CostPlanColumn.FOLLOWS), SheetQuantities.followsChoices(figures(line)), wrap);
    links(row, line);
  }

  private static List<Figure> figures(CostLine line) {
    var figures = new ArrayList<>(List.of(line.quantity(), line.bookRate(), line.rate()));
    // A sum over the bill is as live as the bill's own lines, which say so themselves.
    if (!line.kind().base()) figures.remove(0);
    return figures;
  }

  private void links(int row, CostLine line) {
    line.quantityId()
        .flatMap(run.addresses::quantityRow)
        .ifPresent(r -> page.link(row, 0, ResultSheet.QUANTITIES, r));
    line.item()
        .flatMap(run.addresses::priceRow)
        .ifPresent(r -> page.link(row, at(CostPlanColumn.ITEM), ResultSheet.PRICES_USED, r));
  }

  private void quotes(int row, CostLine line, SheetStyle money) {
    int each = at(CostPlanColumn.QUOTE_EACH);
    int whole = at(CostPlanColumn.QUOTE_WHOLE);
    if (!quotable(line) || run.quotes.isEmpty()) {
      page.cell(row, each, money);
      page.cell(row, whole, money);
      return;
    }
    var q = run.quotes.get();
    var used = line.quote();
    var id = "$A" + row;
    boolean isWhole = used.isPresent() && used.get().quoteFor() == cornerpost.scope.QuoteFor.WHOLE;
    quote(row, each, q.each(id, line.id()), used.filter(u -> !isWhole).map(u -> u.amount()), money);
    quote(
        row, whole, q.whole(id, line.id()), used.filter(u -> isWhole).map(u -> u.amount()), money);
  }

  private void quote(
      int row, int column, String formula, java.util.Optional<BigDecimal> value, SheetStyle money) {
    if (value.isPresent()) page.formula(row, column, formula, value.get(), money);
    else page.formula(row, column, formula, "", money);
  }

  /** Price rise, tax and contingency are reckoned on the bill; nobody quotes for them. */
  static boolean quotable(CostLine line) {
    return Addresses.CountsAs.of(line) == Addresses.CountsAs.BASE;
  }

  private void rates(int row, CostLine line, SheetStyle right) {
    var money = right.formatted(run.moneyFormat());
    var unit = rateUnit(line);
    boolean share = unit.dimension().equals(Dimension.NONE);
    var look = right.formatted(share ? "0.000%" : rateFormat(line));
    var book = line.bookRate();
    page.formula(row, at(CostPlanColumn.BOOK_PRICE), formula(book, unit), book.in(unit), look);
    // Without a quote the rate is the book's, or the owner's own for a crew or an item.
    boolean own = line.quote().isEmpty() && line.rate() != book;
    var unquoted = own ? formula(line.rate(), unit) : ref(CostPlanColumn.BOOK_PRICE, row);
    var basis = line.quote().isPresent() ? unquotedBasis(line) : line.basis().label();
    var quantity = ref(CostPlanColumn.QUANTITY, row);
    var rate = ref(CostPlanColumn.RATE, row);
    var product = run.rounded(quantity + "*" + rate);
    if (!quotable(line) || run.quotes.isEmpty()) {
      page.formula(row, at(CostPlanColumn.RATE), unquoted, line.rate().in(unit), look);
      page.formula(row, at(CostPlanColumn.AMOUNT), product, line.money(), money);
      page.text(
          row,
          at(CostPlanColumn.BASIS),
          basis,
          right.aligned(HorizontalAlignment.GENERAL).indented());
      return;
    }
    var each = ref(CostPlanColumn.QUOTE_EACH, row);
    var whole = ref(CostPlanColumn.QUOTE_WHOLE, row);
    page.formula(
        row,
        at(CostPlanColumn.RATE),
        "IF(ISNUMBER("
            + whole
            + "),"
            + whole
            + "/MAX("
            + quantity
            + ",0.000001),IF(ISNUMBER("
            + each
            + "),"
            + each
            + ","
            + unquoted
            + "))",
        line.rate().in(unit),
        look);
    page.formula(
        row,
        at(CostPlanColumn.AMOUNT),
        "IF(ISNUMBER(" + whole + ")," + run.rounded(whole) + "," + product + ")",
        line.money(),
        money);
    page.formula(
        row,
        at(CostPlanColumn.BASIS),
        "IF(OR(ISNUMBER("
            + whole
            + "),ISNUMBER("
            + each
            + ")),\"quote\","
            + Addresses.quoted(basis)
            + ")",
        line.basis().label(),
        right.aligned(HorizontalAlignment.GENERAL).indented());
  }

  private static String unquotedBasis(CostLine line) {
    boolean own =
        switch (line.kind()) {
          case OWN_ITEM, OWN_LABOUR, INTEREST -> true;
          default -> line.id().startsWith("own-task/") || line.id().equals("rent");
        };
    return (own ? CostLine.Basis.OWN : CostLine.Basis.PRICE_BOOK).label();
  }

  private String rateFormat(CostLine line) {
    boolean fine =
        line.rate().value().signum() != 0
            && line.rate().in(rateUnit(line)).abs().compareTo(BigDecimal.ONE) < 0;
    return fine ? "#,##0.0000" : run.moneyFormat();
  }

  /** Money for each unit of the quantity; a share where the quantity is money itself. */
  private Unit rateUnit(CostLine line) {
    return rateUnit(run.plan, line);
  }

  static Unit rateUnit(Plan plan, CostLine line) {
    var money = Unit.money(plan.estimate().currency().getCurrencyCode());
    return money.per(line.unit()).dimension().equals(line.bookRate().dimension())
        ? money.per(line.unit())
        : Unit.base(line.bookRate().dimension());
  }

  /**
   * The rest up to whole packs, over every line that uses the item. A line with a quote for the
   * whole of it brings its own packs, also if that quote is typed later.
   */
  private String packs(int row, CostLine line) {
    var item = Addresses.quoted(line.item().orElseThrow());
    var parts = new ArrayList<String>();
    if (row > FIRST) parts.add(open(FIRST, row - 1, item));
    if (row < run.addresses.lastCostRow()) {
      parts.add(open(row + 1, run.addresses.lastCostRow(), item));
    }
    var sum = String.join("+", parts);
    return "ROUNDUP(ROUND(" + sum + ",9),0)-(" + sum + ")";
  }

  private String open(int first, int last, String item) {
    var all =
        own(CostPlanColumn.QUANTITY, first, last)
            + ","
            + own(CostPlanColumn.ITEM, first, last)
            + ","
            + item;
    if (run.quotes.isEmpty()) return "SUMIFS(" + all + ")";
    var quoted = own(CostPlanColumn.QUOTE_WHOLE, first, last);
    return "SUMIFS(" + all + ")-SUMIFS(" + all + "," + quoted + ",\">=0\")";
  }

  private void stageTotal(int row, CostLine line, SheetStyle look) {
    int last = row;
    for (var l : run.addresses.costLines()) {
      if (l.stage() == line.stage()) {
        last = Math.max(last, run.addresses.costRow(l.id()).orElseThrow());
      }
    }
    page.formula(
        row,
        at(CostPlanColumn.STAGE_TOTAL),
        "SUM(" + own(CostPlanColumn.AMOUNT, row, last) + ")",
        run.plan.estimate().byStage().get(line.stage()),
        look);
  }

  static String part(CostLine line) {
    if (line.kind() == CostLine.Kind.TAX) return "tax";
    if (line.kind() == CostLine.Kind.CONTINGENCY) return "contingency";
    return line.kind().direct() ? "direct" : "indirect";
  }

  private String formula(Figure figure, Unit unit) {
    return figure.formula(run.addresses, unit);
  }

  private static int at(CostPlanColumn column) {
    return column.ordinal();
  }

  private static String ref(CostPlanColumn column, int row) {
    return column.at(row);
  }

  private static String own(CostPlanColumn column, int first, int last) {
    return column.range(first, last);
  }
}

package cornerpost.workbook;

import cornerpost.finance.Finance.CashMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Sheet Cash flow: month by month, with cumulative cost as a native chart. */
final class SheetCashFlow {
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);

  private SheetCashFlow() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.CASH_FLOW);
    page.header(
        Addresses.HEADER_ROW,
        "Month",
        "Paid out",
        "Paid out so far",
        "Drawn from the loan",
        "Interest of the month",
        "Own cash left",
        "Owed");
    page.headRight(Addresses.HEADER_ROW, 0, 1, 2, 3, 4, 5, 6);
    page.widths(14, 15, 15, 15, 15, 15, 15);
    var since =
        run.plan.finance().status().isPresent()
            ? ", as planned from the start, each draw on its day; the months to come as the lender's review takes them stand on sheet "
                + ResultSheet.MONEY_TO_COME.title()
            : "";
    page.text(2, 0, "All in " + run.currency() + since, page.plain().inInk(SheetStyle.QUIET));
    var months = run.plan.finance().months();
    int row = Addresses.FIRST_ROW;
    for (var m : months) write(run, page, row++, m);
    SheetTables.finish(page, row - 1, 7, 1);
    if (!months.isEmpty()) chart(run, months, row - 1);
  }

  private static void write(ResultRun run, SheetPage page, int row, CashMonth m) {
    var money = page.number(run.moneyFormat());
    page.date(row, 0, m.month().atDay(1), page.number("mmm yyyy"));
    page.number(row, 1, m.out(), money);
    page.formula(
        row, 2, "SUM($B$" + Addresses.FIRST_ROW + ":$B" + row + ")", m.cumulativeOut(), money);
    page.number(row, 3, m.drawn(), money);
    page.number(row, 4, m.interest(), money);
    boolean short_ = m.cash().signum() < 0;
    page.number(row, 5, m.cash(), short_ ? money.strong().inInk(SheetStyle.STOP) : money);
    page.number(row, 6, m.borrowed(), money);
  }

  private static void chart(ResultRun run, List<CashMonth> months, int last) {
    var chart =
        new ChartXml("Cumulative cost", run.currency(), "#,##0")
            .bar(
                series(
                    "Paid out in the month",
                    "B",
                    months,
                    last,
                    CashMonth::out,
                    ChartXml.Paint.solid(SheetStyle.OUT)))
            .bar(
                series(
                    "Drawn from the loan",
                    "D",
                    months,
                    last,
                    CashMonth::drawn,
                    ChartXml.Paint.hatched("009E73")))
            .line(
                series(
                    "Paid out so far",
                    "C",
                    months,
                    last,
                    CashMonth::cumulativeOut,
                    ChartXml.Paint.line(SheetStyle.INK, "")))
            .line(
                series(
                    "Owed",
                    "G",
                    months,
                    last,
                    CashMonth::borrowed,
                    ChartXml.Paint.line("CC79A7", "sysDot")));
    SheetCharts.put(
        run, ResultSheet.CASH_FLOW, "Cumulative cost", new SheetCharts.Place(8, 2, 18, 26), chart);
  }

  private static ChartXml.Series series(
      String name,
      String letter,
      List<CashMonth> months,
      int last,
      Function<CashMonth, java.math.BigDecimal> amount,
      ChartXml.Paint paint) {
    return new ChartXml.Series(
        name,
        reference("A", last),
        months.stream().map(m -> m.month().format(MONTH)).toList(),
        reference(letter, last),
        months.stream().map(m -> amount.apply(m).doubleValue()).toList(),
        paint);
  }

  private static String reference(String letter, int last) {
    return "'Cash flow'!$" + letter + "$" + Addresses.FIRST_ROW + ":$" + letter + "$" + last;
  }
}

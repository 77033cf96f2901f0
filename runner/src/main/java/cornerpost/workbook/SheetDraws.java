package cornerpost.workbook;

import java.math.BigDecimal;

/** Sheet Draws: what the lender pays in, and what for. */
final class SheetDraws {
  private SheetDraws() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.DRAWS);
    page.header(
        Addresses.HEADER_ROW,
        "Id",
        "Date",
        "Event",
        "Earned",
        "Retained",
        "Paid",
        "Paid so far",
        "Waits for");
    page.headRight(Addresses.HEADER_ROW, 1, 3, 4, 5, 6);
    page.widths(18, 16, 44, 15, 15, 15, 15, 60);
    var draws = run.plan.finance().draws();
    page.text(
        2,
        0,
        draws.isEmpty() ? "There is no loan." : "All in " + run.currency(),
        page.plain().inInk(SheetStyle.QUIET));
    int row = Addresses.FIRST_ROW;
    var money = page.number(run.moneyFormat());
    var sum = BigDecimal.ZERO;
    for (var d : draws) {
      page.text(row, 0, d.id(), page.wrapped());
      page.date(row, 1, d.date(), page.dateLook());
      page.text(row, 2, d.event(), page.wrapped().indented());
      page.number(row, 3, d.earned(), money);
      page.number(row, 4, d.retained(), money);
      if (d.earned().subtract(d.retained()).compareTo(d.paid()) == 0) {
        page.formula(row, 5, "$D" + row + "-$E" + row, d.paid(), money.strong());
      } else {
        page.number(row, 5, d.paid(), money.strong());
      }
      sum = sum.add(d.paid());
      if (sum.compareTo(d.cumulativePaid()) == 0) {
        page.formula(row, 6, "SUM($F$" + Addresses.FIRST_ROW + ":$F" + row + ")", sum, money);
      } else {
        page.number(row, 6, d.cumulativePaid(), money);
      }
      page.text(row, 7, d.needs(), page.wrapped().indented());
      row++;
    }
    SheetTables.finish(page, row - 1, 8, 1);
  }
}

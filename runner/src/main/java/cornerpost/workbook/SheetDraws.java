package cornerpost.workbook;

import cornerpost.finance.Finance.Draw;
import cornerpost.finance.LoanStatus;
import java.math.BigDecimal;
import java.util.stream.IntStream;

/** Sheet Draws: what the lender pays in, what for, and what each payment waits for. */
final class SheetDraws {
  private static final int EARNED = 3;
  private static final int RETAINED = 4;
  private static final int PAID = 5;
  private static final int SO_FAR = 6;
  private static final int INSPECTIONS = 7;
  private static final int PAPERS = 8;

  private final ResultRun run;
  private final SheetPage page;
  private final SheetStyle money;

  private SheetDraws(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.DRAWS);
    money = page.number(run.moneyFormat());
  }

  static void write(ResultRun run) {
    new SheetDraws(run).write();
  }

  private void write() {
    page.header(
        Addresses.HEADER_ROW,
        "Id",
        "Date",
        "Event",
        "Earned",
        "Retained",
        "Paid",
        "Paid so far",
        "Inspections",
        "Papers");
    page.headRight(Addresses.HEADER_ROW, 1, EARNED, RETAINED, PAID, SO_FAR);
    page.headIndented(Addresses.HEADER_ROW, 2, INSPECTIONS, PAPERS);
    page.widths(9, 16, 28, 12, 12, 12, 13, 30, 66);
    var draws = run.plan.finance().draws();
    var status = run.plan.finance().status();
    page.text(
        2,
        0,
        draws.isEmpty() && run.plan.finance().balance().loan().signum() == 0
            ? "There is no loan."
            : "All in "
                + run.currency()
                + (status.isPresent() ? "; those to come, after what was drawn already" : ""),
        page.plain().inInk(SheetStyle.QUIET));
    for (int i = 0; i < draws.size(); i++) words(Addresses.FIRST_ROW + i, draws.get(i));
    if (status.isPresent()) toCome(status.get());
    else planned();
    SheetTables.finish(page, Addresses.HEADER_ROW + draws.size(), PAPERS + 1, 1);
  }

  private void words(int row, Draw d) {
    page.text(row, 0, d.id(), page.wrapped());
    page.date(row, 1, d.date(), page.dateLook());
    page.text(row, 2, d.event(), page.wrapped().indented());
    page.text(row, INSPECTIONS, String.join("; ", d.inspections()), page.wrapped().indented());
    page.text(row, PAPERS, String.join("; ", d.papers()), page.wrapped().indented());
  }

  private void planned() {
    int row = Addresses.FIRST_ROW;
    var sum = BigDecimal.ZERO;
    for (var d : run.plan.finance().draws()) {
      page.number(row, EARNED, d.earned(), money);
      page.number(row, RETAINED, d.retained(), money);
      if (d.earned().subtract(d.retained()).compareTo(d.paid()) == 0) {
        page.formula(row, PAID, "$D" + row + "-$E" + row, d.paid(), money.strong());
      } else {
        page.number(row, PAID, d.paid(), money.strong());
      }
      sum = sum.add(d.paid());
      if (sum.compareTo(d.cumulativePaid()) == 0) {
        page.formula(row, SO_FAR, "SUM($F$" + Addresses.FIRST_ROW + ":$F" + row + ")", sum, money);
      } else {
        page.number(row, SO_FAR, d.cumulativePaid(), money);
      }
      row++;
    }
  }

  /** Live over Money to come. */
  private void toCome(LoanStatus status) {
    var months = status.outlook().months();
    var drawn = IntStream.range(0, months.size()).filter(i -> months.get(i).isDrawn()).toArray();
    var before = SheetScheduleOfValues.held();
    int row = Addresses.FIRST_ROW;
    for (var d : run.plan.finance().draws()) {
      int month = drawn[row - Addresses.FIRST_ROW];
      var held = SheetMoneyToCome.heldCell(month);
      page.formula(row, EARNED, cents("$F" + row + "+$E" + row), d.earned(), money);
      page.formula(row, RETAINED, cents(held + "-" + before), d.retained(), money);
      page.formula(row, PAID, SheetMoneyToCome.drawCell(month), d.paid(), money.strong());
      page.formula(row, SO_FAR, SheetMoneyToCome.owedCell(month), d.cumulativePaid(), money);
      before = held;
      row++;
    }
  }

  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }
}

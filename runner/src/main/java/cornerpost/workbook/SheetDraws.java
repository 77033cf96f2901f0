package cornerpost.workbook;

import cornerpost.finance.Finance.Draw;
import cornerpost.finance.LoanStatus;
import java.math.BigDecimal;
import java.util.stream.IntStream;

/** Sheet Draws: what the lender pays in, what for, and what each payment waits for. */
final class SheetDraws {
  private static final int WORK = 3;
  private static final int BY_THE_MONTH = 4;
  private static final int INTEREST = 5;
  private static final int NOT_LENT = 6;
  private static final int EARNED = 7;
  private static final int RETAINED = 8;
  private static final int PAID = 9;
  private static final int SO_FAR = 10;
  private static final int INSPECTIONS = 11;
  private static final int PAPERS = 12;

  private static final String MADE =
      " A draw takes in all that came in place since the one before, whatever event it is named"
          + " after: work of every stage, rent and hire of the months that have passed, interest."
          + " Not lent is what own cash pays first, what is above the loan, what was drawn ahead.";

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
        "Work since the draw before",
        "Rent, hire by the month",
        "Interest",
        "Less not lent",
        "Earned",
        "Retained",
        "Paid",
        "Paid so far",
        "Inspections",
        "Papers");
    page.headRight(
        Addresses.HEADER_ROW,
        1,
        WORK,
        BY_THE_MONTH,
        INTEREST,
        NOT_LENT,
        EARNED,
        RETAINED,
        PAID,
        SO_FAR);
    page.headIndented(Addresses.HEADER_ROW, 2, INSPECTIONS, PAPERS);
    page.widths(8, 16, 22, 12, 11, 9, 12, 12, 11, 12, 12, 24, 44);
    var draws = run.plan.finance().draws();
    var status = run.plan.finance().status();
    page.text(
        2,
        0,
        draws.isEmpty() && run.plan.finance().balance().loan().signum() == 0
            ? "There is no loan."
            : "All in "
                + run.currency()
                + (status.isPresent()
                    ? "; those to come, after what was drawn already." + MADE
                    : "."),
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
      made(row, d);
      page.number(row, EARNED, d.earned(), money);
      page.number(row, RETAINED, d.retained(), money);
      if (d.earned().subtract(d.retained()).compareTo(d.paid()) == 0) {
        page.formula(
            row, PAID, at(EARNED, row) + "-" + at(RETAINED, row), d.paid(), money.strong());
      } else {
        page.number(row, PAID, d.paid(), money.strong());
      }
      sum = sum.add(d.paid());
      if (sum.compareTo(d.cumulativePaid()) == 0) {
        var paid = SheetPage.letter(PAID);
        page.formula(
            row,
            SO_FAR,
            "SUM($" + paid + "$" + Addresses.FIRST_ROW + ":" + at(PAID, row) + ")",
            sum,
            money);
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
      page.formula(row, EARNED, cents(at(PAID, row) + "+" + at(RETAINED, row)), d.earned(), money);
      made(
          row,
          d,
          status,
          row == Addresses.FIRST_ROW ? -1 : drawn[row - Addresses.FIRST_ROW - 1],
          month);
      page.formula(row, RETAINED, cents(held + "-" + before), d.retained(), money);
      page.formula(row, PAID, SheetMoneyToCome.drawCell(month), d.paid(), money.strong());
      page.formula(row, SO_FAR, SheetMoneyToCome.owedCell(month), d.cumulativePaid(), money);
      before = held;
      row++;
    }
  }

  /** Without a ledger the parts are not told apart. */
  private void made(int row, Draw d) {
    if (d.made().isEmpty()) return;
    var made = d.made().get();
    page.number(row, WORK, made.work(), money);
    page.number(row, BY_THE_MONTH, made.byTheMonth(), money);
    page.number(row, INTEREST, made.interest(), money);
    page.number(row, NOT_LENT, made.notLent(), money);
  }

  /** Between the month of the draw before and its own. */
  private void made(int row, Draw d, LoanStatus status, int before, int month) {
    var made = d.made().orElseThrow();
    page.formula(
        row,
        BY_THE_MONTH,
        cents(
            SheetMoneyToCome.byTheMonth(run, status, month)
                + "-"
                + SheetMoneyToCome.byTheMonth(run, status, before)),
        made.byTheMonth(),
        money);
    page.formula(
        row, INTEREST, cents(SheetMoneyToCome.interest(before, month)), made.interest(), money);
    var since = SheetMoneyToCome.inPlaceCell(month) + "-" + SheetMoneyToCome.inPlaceCell(before);
    page.formula(
        row,
        WORK,
        cents(since + "-" + at(BY_THE_MONTH, row) + "-" + at(INTEREST, row)),
        made.work(),
        money);
    page.formula(
        row,
        NOT_LENT,
        cents(
            at(WORK, row)
                + "+"
                + at(BY_THE_MONTH, row)
                + "+"
                + at(INTEREST, row)
                + "-"
                + at(EARNED, row)),
        made.notLent(),
        money);
  }

  private static String at(int column, int row) {
    return "$" + SheetPage.letter(column) + row;
  }

  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }
}

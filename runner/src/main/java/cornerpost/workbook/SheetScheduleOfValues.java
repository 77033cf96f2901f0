package cornerpost.workbook;

import cornerpost.finance.LoanStatus;
import cornerpost.finance.StageValue;
import cornerpost.scope.LoanQuestions;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/** Sheet Schedule of values: by stage, and the request for payment that follows from it. */
final class SheetScheduleOfValues {
  private static final int LABEL = 12;
  private static final int VALUE = 13;

  private final ResultRun run;
  private final SheetPage page;
  private final LoanStatus status;

  private SheetScheduleOfValues(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = run.page(ResultSheet.SCHEDULE_OF_VALUES);
    this.status = status;
  }

  static void write(ResultRun run) {
    run.status(ResultSheet.SCHEDULE_OF_VALUES)
        .ifPresent(s -> new SheetScheduleOfValues(run, s).write());
  }

  /** The cell of what is drawn ahead of work, all stages. */
  static String ahead() {
    return "'Schedule of values'!$J$" + (Addresses.HEADER_ROW - 1);
  }

  /** The cell of the total in place and stored. */
  static String there() {
    return "'Schedule of values'!$G$" + (Addresses.HEADER_ROW - 1);
  }

  /** The cell of what is held back of the value in place. */
  static String held() {
    return "'Schedule of values'!$N$" + (Addresses.FIRST_ROW + 3);
  }

  /** The cell of the amount due now. */
  static String due() {
    return "'Schedule of values'!$N$" + (Addresses.FIRST_ROW + 5);
  }

  /** The cell of what was drawn above what could be. */
  static String above() {
    return "'Schedule of values'!$N$" + (Addresses.FIRST_ROW + 6);
  }

  private void write() {
    page.header(
        Addresses.HEADER_ROW,
        "Stage",
        "Scheduled value",
        "Approved changes",
        "Revised value",
        "Work in place",
        "Stored materials",
        "In place and stored",
        "Share",
        "Drawn",
        "Drawn ahead of work",
        "To finish");
    page.headRight(Addresses.HEADER_ROW, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    page.widths(28, 14, 12, 14, 14, 12, 14, 8, 14, 12, 14, 3, 44, 15);
    int row = Addresses.FIRST_ROW;
    for (var s : status.stages()) stage(row++, s);
    int last = row - 1;
    page.text(
        Addresses.HEADER_ROW - 1, 0, "All stages, in " + run.currency(), page.plain().strong());
    for (int c : List.of(1, 2, 3, 4, 5, 6, 8, 9, 10)) total(c, last);
    page.formula(
        Addresses.HEADER_ROW - 1,
        7,
        "IF($D$2=0,0,$G$2/$D$2)",
        StageValue.share(status.stages()),
        page.number("0.0%").strong());
    SheetTables.finish(page, last, 11, 1);
    request();
  }

  private BigDecimal sum(Function<StageValue, BigDecimal> part) {
    return StageValue.sum(status.stages(), part);
  }

  private Function<StageValue, BigDecimal> part(int column) {
    return s ->
        switch (column) {
          case 1 -> s.original();
          case 2 -> s.changes();
          case 3 -> s.revised();
          case 4 -> s.earned();
          case 5 -> s.stored();
          case 6 -> s.there();
          case 8 -> s.drawn();
          case 9 -> s.ahead();
          default -> s.toFinish();
        };
  }

  private void total(int column, int last) {
    var letter = SheetPage.letter(column);
    page.formula(
        Addresses.HEADER_ROW - 1,
        column,
        cents("SUM($" + letter + "$" + Addresses.FIRST_ROW + ":$" + letter + "$" + last + ")"),
        sum(part(column)),
        page.number(run.moneyFormat()).strong());
  }

  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }

  private void stage(int row, StageValue s) {
    var money = page.number(run.moneyFormat());
    page.text(row, 0, s.stage().label());
    page.formula(row, 1, report(CostReportColumn.ORIGINAL, row), s.original(), money);
    page.formula(row, 2, report(CostReportColumn.CHANGES, row), s.changes(), money);
    page.formula(row, 3, report(CostReportColumn.REVISED, row), s.revised(), money);
    page.formula(row, 4, report(CostReportColumn.EARNED, row), s.earned(), money);
    page.formula(row, 5, report(CostReportColumn.STORED, row), s.stored(), money);
    page.formula(row, 6, cents("$E" + row + "+$F" + row), s.there(), money);
    page.formula(
        row,
        7,
        "IF($D" + row + "=0,0,$G" + row + "/$D" + row + ")",
        s.share(),
        page.number("0.0%"));
    page.formula(row, 8, report(CostReportColumn.DRAWN, row), s.drawn(), money);
    page.formula(
        row,
        9,
        cents("MAX(0,$I" + row + "-$G" + row + ")"),
        s.ahead(),
        s.ahead().signum() > 0 ? money.strong().inInk(SheetStyle.STOP) : money);
    page.formula(row, 10, cents("$D" + row + "-$G" + row), s.toFinish(), money);
  }

  private String report(CostReportColumn column, int row) {
    int end = SheetCostReport.lastRow(status);
    return cents(
        "SUMIFS("
            + column.rows(Addresses.FIRST_ROW, end)
            + ","
            + CostReportColumn.STAGE.rows(Addresses.FIRST_ROW, end)
            + ",$A"
            + row
            + ")");
  }

  private void request() {
    var r = status.request();
    var loan = run.loan(LoanQuestions.AMOUNT);
    page.text(Addresses.HEADER_ROW, LABEL, "What can be drawn now", page.heading());
    page.text(
        Addresses.HEADER_ROW, VALUE, run.currency(), page.heading().aligned(SheetQuantities.RIGHT));
    int row = Addresses.FIRST_ROW;
    value(row, "In place and stored", "$G$2", r.inPlace());
    value(row + 1, "Borrower's cash, spent first", run.loan(LoanQuestions.CASH), r.own());
    value(
        row + 2,
        "The loan's part",
        "MIN(" + loan + ",MAX(0,$N$" + row + "-$N$" + (row + 1) + "))",
        r.part());
    value(
        row + 3,
        "Held back by the lender",
        SheetMoneyToCome.held(run, "$N$" + (row + 2)),
        r.held());
    value(row + 4, "Drawn before", CostReportColumn.DRAWN.total(), r.before());
    page.text(row + 5, LABEL, "Amount due now", page.plain().strong());
    page.formula(
        row + 5,
        VALUE,
        cents("MAX(0,$N$" + (row + 2) + "-$N$" + (row + 3) + "-$N$" + (row + 4) + ")"),
        r.due(),
        page.number(run.moneyFormat()).strong());
    value(
        row + 6,
        "Drawn above what is in place for the loan",
        cents("MAX(0,$N$" + (row + 4) + "-($N$" + (row + 2) + "-$N$" + (row + 3) + "))"),
        r.above());
    value(
        row + 7,
        "Loan to pay after that, what is held back with it",
        cents(loan + "-($N$" + (row + 2) + "-$N$" + (row + 3) + ")"),
        r.toFinish());
    page.text(
        row + 9,
        LABEL,
        "Sheet Draws says what each draw waits for: inspections and papers. Stored materials count"
            + " only where the loan agreement says so.",
        page.wrapped().inInk(SheetStyle.QUIET));
    page.merge(row + 9, LABEL, VALUE);
    page.height(row + 9, 44);
  }

  private void value(int row, String name, String formula, BigDecimal value) {
    page.text(row, LABEL, name, page.wrapped());
    page.formula(row, VALUE, formula, value, page.number(run.moneyFormat()));
  }
}

package cornerpost.workbook;

import cornerpost.finance.CostReport.Treatment;
import cornerpost.finance.DrawEvent;
import cornerpost.finance.Interest;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Outlook.Month;
import cornerpost.scope.InterestPayment;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Sheet Money to come: month by month to completion, and whether the loan stays in balance. */
final class SheetMoneyToCome {
  private static final int MONTH = 0;
  private static final int DAYS = 1;
  private static final int ASKED = 2;
  private static final int DUE = 3;
  private static final int IN_PLACE = 4;
  private static final int PART = 5;
  private static final int HELD = 6;
  private static final int DRAW = 7;
  private static final int INTEREST = 8;
  private static final int CASH = 9;
  private static final int OWED = 10;
  private static final int UNDRAWN = 11;
  private static final int TO_PAY = 12;
  private static final int INTEREST_AFTER = 13;
  private static final int SURPLUS = 14;
  private static final int LENGTH = 15;
  private static final int CARRIED = 16;

  /** The stages' shares stand to the right, for the amounts that are worked out from them. */
  private static final int STAGES = 18;

  private static final int OPENING = Addresses.FIRST_ROW;
  private static final int FIRST = OPENING + 1;

  private final ResultRun run;
  private final SheetPage page;
  private final LoanStatus status;
  private final int last;
  private final int stages;
  private final String loan;
  private final String cash;
  private final StageParts due;
  private final StageParts place;

  private SheetMoneyToCome(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = run.page(ResultSheet.MONEY_TO_COME);
    this.status = status;
    last = lastRow(status);
    stages = status.outlook().stages().size();
    due = new StageParts(run, page, STAGES, stages);
    place = new StageParts(run, page, placeColumn(), stages + 1);
    loan = run.loan(LoanQuestions.AMOUNT);
    cash = run.loan(LoanQuestions.CASH);
  }

  static void write(ResultRun run) {
    run.status(ResultSheet.MONEY_TO_COME).ifPresent(s -> new SheetMoneyToCome(run, s).write());
  }

  private static int lastRow(LoanStatus status) {
    return OPENING + status.outlook().months().size();
  }

  /** Interest to completion, from any sheet. */
  static String interest(LoanStatus status) {
    return "ROUND(SUM(" + column(INTEREST, FIRST, lastRow(status)) + ")," + status.decimals() + ")";
  }

  /** The months that the reserve carries, with those after completion. */
  static String monthsCarried(ResultRun run, LoanStatus status) {
    int end = lastRow(status);
    var month = owedAtEnd(status) + "*" + run.loan(LoanQuestions.RATE) + "/12";
    var interest = LoanItem.INTEREST.here();
    return "IF("
        + month
        + ">0,SUM("
        + column(CARRIED, FIRST, end)
        + ")+MAX(0,"
        + LoanItem.RESERVE_LEFT.here()
        + "-"
        + interest
        + ")/MAX("
        + month
        + ",0.000001),IF("
        + interest
        + ">0,SUM("
        + column(CARRIED, FIRST, end)
        + "),\"n/a\"))";
  }

  /** The least cash at the end of a month. */
  static String leastCash(LoanStatus status) {
    return "MIN(" + column(CASH, FIRST, lastRow(status)) + ")";
  }

  /** The cell of the borrower's cash in the month in which it is least. */
  static String leastCashCell(LoanStatus status) {
    var months = status.outlook().months();
    int least = 0;
    for (int i = 1; i < months.size(); i++) {
      if (months.get(i).cash().compareTo(months.get(least).cash()) < 0) least = i;
    }
    return cell(CASH, FIRST + least);
  }

  /** The cell of what is drawn at the end of a month. */
  static String drawCell(int month) {
    return cell(DRAW, FIRST + month);
  }

  /** The cell of what is held back at the end of a month. */
  static String heldCell(int month) {
    return cell(HELD, FIRST + month);
  }

  /** The cell of what is owed at the end of a month. */
  static String owedCell(int month) {
    return cell(OWED, FIRST + month);
  }

  private static String cell(int column, int row) {
    return "'Money to come'!$" + SheetPage.letter(column) + "$" + row;
  }

  /** The cell of the value in place at the end of a month; that of the status date before them. */
  static String inPlaceCell(int month) {
    return month < 0 ? inPlaceNow() : cell(IN_PLACE, FIRST + month);
  }

  private static String inPlaceNow() {
    return "(" + CostReportColumn.EARNED.total() + "+" + CostReportColumn.STORED.total() + ")";
  }

  /** Interest of the months behind one, up to another. */
  static String interest(int after, int upTo) {
    return "SUM(" + column(INTEREST, FIRST + after + 1, FIRST + upTo) + ")";
  }

  /** What of what is paid by the month has come in place from the status date to a month's end. */
  static String byTheMonth(ResultRun run, LoanStatus status, int month) {
    if (month < 0) return "0";
    int stages = status.outlook().stages().size();
    if (FIRST + month == lastRow(status)) {
      return "("
          + byTheMonth(CostReportColumn.AT_COMPLETION, status)
          + "-"
          + byTheMonth(CostReportColumn.EARNED, status)
          + "-"
          + byTheMonth(CostReportColumn.STORED, status)
          + ")";
    }
    int column = STAGES + stages + 1 + stages;
    return run.rounded(cell(column, Addresses.HEADER_ROW - 1) + "*" + cell(column, FIRST + month));
  }

  private static String byTheMonth(CostReportColumn column, LoanStatus status) {
    int end = SheetCostReport.lastRow(status);
    return "SUMIFS("
        + column.rows(Addresses.FIRST_ROW, end)
        + ","
        + CostReportColumn.KIND.rows(Addresses.FIRST_ROW, end)
        + ","
        + Addresses.quoted(Treatment.TIME.label())
        + ")";
  }

  private int placeColumn() {
    return STAGES + stages + 1;
  }

  /** What is owed at completion. */
  static String owedAtEnd(LoanStatus status) {
    return cell(OWED, lastRow(status));
  }

  private static String column(int column, int first, int last) {
    var letter = SheetPage.letter(column);
    return "'Money to come'!$" + letter + "$" + first + ":$" + letter + "$" + last;
  }

  private void write() {
    page.header(
        Addresses.HEADER_ROW,
        "Month",
        "Days of interest",
        "Draw asked for",
        "Falls due",
        "Value in place",
        "Loan's part",
        "Held back by the lender",
        "Draw",
        "Interest",
        "Own cash",
        "Owed",
        "Not drawn",
        "To pay after",
        "Interest after",
        "Left over",
        "Length, months",
        "Carried by the reserve, months");
    page.headRight(Addresses.HEADER_ROW, 0, 1, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16);
    page.headIndented(Addresses.HEADER_ROW, ASKED);
    page.widths(12, 9, 30, 13, 13, 13, 12, 12, 11, 13, 13, 13, 13, 11, 13, 9, 12, 3);
    stageHeads();
    opening();
    for (int i = 0; i < status.outlook().months().size(); i++) {
      month(i, FIRST + i, status.outlook().months().get(i));
    }
    page.text(
        last + 2,
        0,
        "Left over: not drawn and own cash, less what is to pay and the interest after the month."
            + " Below nothing is what the borrower must bring; it is the same in every month as long"
            + " as nothing changes. Own cash below nothing is what must be bridged, for the lender"
            + " pays at the end of a month.",
        page.wrapped().inInk(SheetStyle.QUIET));
    page.merge(last + 2, 0, CARRIED);
    page.height(last + 2, 30);
    SheetTables.finish(page, last, CARRIED + 1, 1);
    SheetPrint.printed(page, CARRIED, last + 2);
  }

  // ---- the stages' amounts and shares -------------------------------------------------------

  private void stageHeads() {
    page.text(
        Addresses.HEADER_ROW - 1,
        0,
        "All in " + run.currency(),
        page.plain().inInk(SheetStyle.QUIET));
    for (int s = 0; s < stages; s++) {
      var stage = status.outlook().stages().get(s);
      due.stage(
          s,
          "Due by then: " + stage.label(),
          16,
          report(CostReportColumn.TO_COMPLETE, stage) + "-" + interestOf(stage),
          status.outlook().toCome().get(s));
      place.stage(
          s,
          "In place by then: " + stage.label(),
          16,
          "MAX(0,ROUND("
              + working(CostReportColumn.REVISED, stage)
              + "-"
              + working(CostReportColumn.EARNED, stage)
              + "-"
              + working(CostReportColumn.STORED, stage)
              + ","
              + run.minorDigits()
              + "))",
          status.outlook().toEarn().get(s));
    }
    place.stage(
        stages,
        "In place by then: paid by the month",
        16,
        "MAX(0,"
            + cents(
                byTheMonth(CostReportColumn.REVISED, status)
                    + "-"
                    + byTheMonth(CostReportColumn.EARNED, status)
                    + "-"
                    + byTheMonth(CostReportColumn.STORED, status))
            + ")",
        status.outlook().toEarn().get(stages));
  }

  private String report(CostReportColumn column, Stage stage) {
    int end = SheetCostReport.lastRow(status);
    return "SUMIFS("
        + column.rows(Addresses.FIRST_ROW, end)
        + ","
        + CostReportColumn.STAGE.rows(Addresses.FIRST_ROW, end)
        + ","
        + Addresses.quoted(stage.label())
        + ")";
  }

  /** Without contingency and interest, and without what is paid by the month. */
  private String working(CostReportColumn column, Stage stage) {
    var all = report(column, stage);
    var kinds = CostReportColumn.KIND.rows(Addresses.FIRST_ROW, SheetCostReport.lastRow(status));
    return all.substring(0, all.length() - 1)
        + ","
        + kinds
        + ",\"<>contingency\","
        + kinds
        + ",\"<>interest\","
        + kinds
        + ",\"<>time\")";
  }

  /** The interest stands in a stage too; it is reckoned here, not fallen due by shares. */
  private String interestOf(Stage stage) {
    int end = SheetCostReport.lastRow(status);
    var interest = status.rows().get(status.rows().size() - 1);
    return interest.line().stage().filter(stage::equals).isPresent()
        ? CostReportColumn.TO_COMPLETE.rows(end, end).split(":")[0]
        : "0";
  }

  // ---- months -------------------------------------------------------------------------------

  private void opening() {
    var money = page.number(run.moneyFormat()).strong();
    var h = status.holding();
    page.date(OPENING, MONTH, status.facts().status(), page.number("d mmm yyyy").strong());
    page.text(OPENING, ASKED, "On the status date", page.plain().strong().indented());
    page.formula(
        OPENING,
        CASH,
        cash + "+" + CostReportColumn.DRAWN.total() + "-" + CostReportColumn.PAID.total(),
        h.cash(),
        money);
    page.formula(OPENING, OWED, CostReportColumn.DRAWN.total(), h.drawn(), money);
    after(
        OPENING,
        h.undrawn(),
        h.needed().subtract(h.interestToCome()),
        h.interestToCome(),
        h.surplus());
  }

  private void after(
      int row, BigDecimal undrawn, BigDecimal toPay, BigDecimal interest, BigDecimal surplus) {
    var money = page.number(run.moneyFormat());
    page.formula(row, UNDRAWN, loan + "-" + at(OWED, row), undrawn, money);
    page.formula(row, TO_PAY, rest(DUE, row), toPay, money);
    page.formula(row, INTEREST_AFTER, rest(INTEREST, row), interest, money);
    page.formula(
        row,
        SURPLUS,
        cents(
            at(UNDRAWN, row)
                + "+"
                + at(CASH, row)
                + "-"
                + at(TO_PAY, row)
                + "-"
                + at(INTEREST_AFTER, row)),
        surplus,
        surplus.signum() < 0 ? money.strong().inInk(SheetStyle.STOP) : money.strong());
  }

  private String rest(int column, int row) {
    if (row == last) return "0";
    var letter = SheetPage.letter(column);
    return cents("SUM($" + letter + (row + 1) + ":$" + letter + "$" + last + ")");
  }

  private static String at(int column, int row) {
    return "$" + SheetPage.letter(column) + row;
  }

  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }

  private void month(int i, int row, Month m) {
    var money = page.number(run.moneyFormat());
    boolean first = i == 0;
    boolean ending = row == last;
    page.date(row, MONTH, m.span().month().atDay(1), page.number("mmm yyyy"));
    page.number(row, DAYS, m.span().days(), page.number("0"));
    page.text(
        row, ASKED, m.span().draw().map(DrawEvent::name).orElse(""), page.wrapped().indented());
    due.parts(row, m.span().due());
    place.parts(row, m.span().place());
    page.formula(row, DUE, due(row, first, ending), m.due(), money);
    interest(row, m);
    var charges = "SUM($I$" + FIRST + ":$I" + row + ")";
    page.formula(
        row,
        IN_PLACE,
        cents(
            ending
                ? costAtEnd() + "+" + charges
                : CostReportColumn.EARNED.total()
                    + "+"
                    + CostReportColumn.STORED.total()
                    + "+"
                    + place.sum(row)
                    + "+"
                    + charges),
        m.inPlace(),
        money);
    page.formula(
        row,
        PART,
        "MIN(" + loan + ",MAX(0," + at(IN_PLACE, row) + "-" + cash + "))",
        m.earned(),
        money);
    page.formula(row, HELD, ending ? "0" : held(run, at(PART, row)), m.held(), money);
    var before = at(OWED, row - 1) + (added(row).isEmpty() ? "" : "+" + added(row));
    page.formula(
        row,
        DRAW,
        m.span().draw().isEmpty()
            ? "0"
            : cents("MAX(0," + at(PART, row) + "-" + at(HELD, row) + "-(" + before + "))"),
        m.draw(),
        money.strong());
    page.formula(row, OWED, cents(before + "+" + at(DRAW, row)), m.owed(), money);
    var fromCash = at(INTEREST, row) + (added(row).isEmpty() ? "" : "-" + added(row));
    page.formula(
        row,
        CASH,
        cents(at(CASH, row - 1) + "+" + at(DRAW, row) + "-" + at(DUE, row) + "-(" + fromCash + ")"),
        m.cash(),
        m.cash().signum() < 0 ? money.strong().inInk(SheetStyle.STOP) : money);
    after(row, m.undrawn(), m.toPay(), m.interestToCome(), m.surplus());
    carried(i, row);
  }

  /** How much of the month the reserve carries, after those before it. */
  private void carried(int i, int row) {
    var look = page.number("0.00");
    page.number(row, LENGTH, status.reserve().parts().get(i), look);
    var used = i == 0 ? "" : "-SUM($I$" + FIRST + ":$I" + (row - 1) + ")";
    var left = cents("MAX(0," + LoanItem.RESERVE_LEFT.cell() + used + ")");
    var interest = at(INTEREST, row);
    page.formula(
        row,
        CARRIED,
        "IF("
            + left
            + ">="
            + interest
            + ","
            + at(LENGTH, row)
            + ","
            + at(LENGTH, row)
            + "*"
            + left
            + "/"
            + interest
            + ")",
        status.reserve().carried().get(i),
        look);
  }

  private String due(int row, boolean first, boolean ending) {
    var terms = new ArrayList<String>(List.of(due.sum(row)));
    if (!first) terms.add("-" + due.sum(row - 1));
    if (first) {
      terms.add(
          "+"
              + CostReportColumn.TO_DATE.total()
              + "-"
              + CostReportColumn.PAID.total()
              + "-"
              + CostReportColumn.RETAINED.total());
    }
    if (ending) terms.add("+" + CostReportColumn.RETAINED.total());
    return cents(String.join("", terms));
  }

  private void interest(int row, Month m) {
    page.formula(
        row,
        INTEREST,
        run.rounded(
            at(OWED, row - 1)
                + "*"
                + run.loan(LoanQuestions.RATE)
                + "*"
                + at(DAYS, row)
                + "/"
                + Interest.yearDays(status.terms().dayCount())),
        m.interest(),
        page.number(run.moneyFormat()));
  }

  /** The interest of the month that is added to the loan; nothing where it is paid. */
  private String added(int row) {
    return status.terms().interestIs() == InterestPayment.ADDED
        ? "MAX(0,MIN(" + at(INTEREST, row) + "," + loan + "-" + at(OWED, row - 1) + "))"
        : "";
  }

  /** What every line costs at completion; of the interest only what was charged. */
  private String costAtEnd() {
    int end = SheetCostReport.lastRow(status);
    var interest = CostReportColumn.TO_DATE.rows(end, end).split(":")[0];
    return end == Addresses.FIRST_ROW
        ? interest
        : "SUM("
            + CostReportColumn.AT_COMPLETION.rows(Addresses.FIRST_ROW, end - 1)
            + ")+"
            + interest;
  }

  /** What the lender holds back from the loan's part of what is in place. */
  static String held(ResultRun run, String part) {
    var full = part + "*" + run.loan(LoanQuestions.RETAINAGE);
    boolean halved =
        run.plan.scope().loan().has(LoanQuestions.RETAINAGE_HALVED)
            && run.plan.scope().loan().yes(LoanQuestions.RETAINAGE_HALVED);
    return run.rounded(
        halved ? full + "*IF(2*" + part + ">=" + run.loan(LoanQuestions.AMOUNT) + ",0.5,1)" : full);
  }
}

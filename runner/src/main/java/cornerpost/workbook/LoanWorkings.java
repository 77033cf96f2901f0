package cornerpost.workbook;

import static cornerpost.workbook.CostReportColumn.AMOUNT;
import static cornerpost.workbook.CostReportColumn.AT_COMPLETION;
import static cornerpost.workbook.CostReportColumn.COMMITTED;
import static cornerpost.workbook.CostReportColumn.EARNED;
import static cornerpost.workbook.CostReportColumn.IN_PLACE;
import static cornerpost.workbook.CostReportColumn.KIND;
import static cornerpost.workbook.CostReportColumn.ORIGINAL;
import static cornerpost.workbook.CostReportColumn.QUOTE_ENDED;
import static cornerpost.workbook.CostReportColumn.REVISED;
import static cornerpost.workbook.LoanItem.*;

import cornerpost.finance.CostReport;
import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.finance.Flags;
import cornerpost.finance.Interest;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Sign;
import cornerpost.finance.Stress;
import cornerpost.scope.LoanQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Beside the stages on sheet Cost to complete: every figure of the lender's review, one a row, with
 * what it is made from above it. The review shows these and links to them.
 */
final class LoanWorkings {
  static final String LETTER = "H";

  private static final int LABEL = 6;
  private static final int FIGURE = 7;
  private static final int HOW = 8;

  private final ResultRun run;
  private final SheetPage page;
  private final LoanStatus status;
  private final int end;

  private LoanWorkings(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = run.page(ResultSheet.COST_TO_COMPLETE);
    this.status = status;
    end = SheetCostReport.lastRow(status);
  }

  static void write(ResultRun run, LoanStatus status) {
    new LoanWorkings(run, status).write();
  }

  private void write() {
    page.width(LABEL, 52);
    page.width(HOW, 66);
    balance();
    stress();
    contingency();
    reserve();
    ratios();
    signs();
  }

  private String serial(LocalDate day) {
    return String.valueOf((long) page.serial(day));
  }

  // ---- sections -----------------------------------------------------------------------------

  private void balance() {
    head(BALANCE);
    var h = status.holding();
    money(LOAN, run.loan(LoanQuestions.AMOUNT), h.loan(), "Sheet Loan");
    money(DRAWN, CostReportColumn.DRAWN.total(), h.drawn(), "Cost report, Drawn");
    money(UNDRAWN, LOAN.here() + "-" + DRAWN.here(), h.undrawn(), "Loan less drawn");
    money(OWN, run.loan(LoanQuestions.CASH), h.ownCash(), "Sheet Loan");
    money(PAID, CostReportColumn.PAID.total(), h.paid(), "Cost report, Paid");
    money(
        CASH,
        OWN.here() + "+" + DRAWN.here() + "-" + PAID.here(),
        h.cash(),
        "Own cash and what was drawn, less what was paid");
    money(
        ALL_TO_COMPLETE,
        CostReportColumn.TO_COMPLETE.total(),
        h.toComplete().add(h.interestToCome()),
        "Cost report, Cost to complete");
    money(
        INTEREST,
        interestRow(CostReportColumn.TO_COMPLETE),
        h.interestToCome(),
        "Money to come, Interest, all months");
    money(
        TO_COMPLETE,
        ALL_TO_COMPLETE.here() + "-" + INTEREST.here(),
        h.toComplete(),
        "Without the interest");
    money(
        RETAINED,
        CostReportColumn.RETAINED.total(),
        h.retained(),
        "Cost report, Retained: the borrower's, from those who work and supply");
    money(PAYABLE, CostReportColumn.PAYABLE.total(), h.payable(), "Cost report, Payable");
    money(
        TO_DATE,
        CostReportColumn.TO_DATE.total(),
        sum(r -> true, Row::toDate),
        "Cost report, Cost to date");
    money(
        INVOICED,
        CostReportColumn.INVOICED.total(),
        sum(r -> true, r -> r.entered().invoiced()),
        "Cost report, Invoiced");
    money(
        NOT_INVOICED,
        TO_DATE.here() + "-" + INVOICED.here(),
        h.notInvoiced(),
        "Cost to date less invoiced");
    strong(
        SURPLUS,
        UNDRAWN.here()
            + "+"
            + CASH.here()
            + "-"
            + TO_COMPLETE.here()
            + "-"
            + RETAINED.here()
            + "-"
            + PAYABLE.here()
            + "-"
            + NOT_INVOICED.here()
            + "-"
            + INTEREST.here(),
        h.surplus(),
        "Not drawn and cash, less all that is still to pay");
    money(
        SHORT, "MAX(0,-" + SURPLUS.here() + ")", flag(Sign.SHORT), "What the borrower must bring");
    name(BRING_BY, "The next draw: a loan out of balance is not drawn on. Days need a new run");
    var date = page.dateLook();
    var next = status.nextDraw();
    var formula = "IF(" + SHORT.here() + ">0," + serial(next) + ",\"nothing to bring\")";
    if (status.bringBy().isPresent()) {
      page.formula(BRING_BY.row(), FIGURE, formula, page.serial(next), date);
    } else {
      page.formula(BRING_BY.row(), FIGURE, formula, "nothing to bring", date);
    }
    money(
        ABOVE_LOAN, "MAX(0,-" + UNDRAWN.here() + ")", flag(Sign.ABOVE_LOAN), "Drawn less the loan");
  }

  private void stress() {
    head(STRESS);
    var terms = status.terms();
    var all = status.stresses();
    var days = run.loan(LoanQuestions.STRESS_WEEKS);
    money(
        HIRE_LATER,
        run.rounded(
            of(AMOUNT, "time") + "*" + status.facts().hireFactor().toPlainString() + "*7*" + days),
        all.get(1).hire(),
        "What is paid by the month, for "
            + terms.stressWeeks()
            + " weeks at the run; the weeks stand on Loan");
    money(
        INTEREST_LATER,
        run.rounded(
            SheetMoneyToCome.owedAtEnd(status)
                + "*"
                + run.loan(LoanQuestions.RATE)
                + "*7*"
                + days
                + "/"
                + Interest.yearDays(terms.dayCount())),
        all.get(1).interest(),
        "Money to come, Owed at the end, " + terms.dayCount().label());
    money(
        LATER,
        SURPLUS.here() + "-" + HIRE_LATER.here() + "-" + INTEREST_LATER.here(),
        all.get(1).surplus(),
        "Left over less these two");
    var open =
        "SUMIFS(" + rows(CostReportColumn.TO_COMPLETE) + "," + rows(COMMITTED) + ",0," + rows(KIND);
    money(
        OPEN,
        open + ",\"work\")+" + open + ",\"on top\")",
        Stress.open(status.rows()),
        "Cost report, Cost to complete where Committed is nothing: work and what is on top of it");
    money(
        PRICES_UP,
        run.rounded(run.loan(LoanQuestions.STRESS_PRICES) + "*" + OPEN.here()),
        all.get(2).prices(),
        "By the share on Loan, " + ReviewPage.percent(terms.stressPrices()) + " at the run");
    money(
        DEARER,
        SURPLUS.here() + "-" + PRICES_UP.here(),
        all.get(2).surplus(),
        "Left over less that");
    money(
        LATER_AND_DEARER,
        LATER.here() + "-" + PRICES_UP.here(),
        all.get(3).surplus(),
        "Left over less all three");
  }

  private void contingency() {
    head(CONTINGENCY);
    var c = status.contingency();
    Predicate<Row> work = r -> r.line().treatment().earns();
    money(
        CONTINGENCY_ORIGINAL,
        of(ORIGINAL, "contingency"),
        c.original(),
        "Cost report, Original budget of the contingency lines");
    money(
        CONTINGENCY_LEFT,
        of(REVISED, "contingency"),
        c.left(),
        "Cost report, Revised budget of the same: approved changes take from it; what finished"
            + " stages did not need is still in it");
    money(
        WORK_ORIGINAL,
        working(ORIGINAL),
        sum(work, Row::original),
        "Cost report, Original budget without contingency and interest");
    money(
        WORK_LEFT,
        working(CostReportColumn.TO_COMPLETE),
        c.workLeft(),
        "Cost report, Cost to complete without contingency and interest");
    money(
        CONTINGENCY_REQUIRED,
        "IF("
            + WORK_ORIGINAL.here()
            + "=0,0,"
            + run.rounded(
                CONTINGENCY_ORIGINAL.here() + "*" + WORK_LEFT.here() + "/" + WORK_ORIGINAL.here())
            + ")",
        c.required(),
        "At its share of the original budget of the work");
    money(
        CONTINGENCY_LACKING,
        "MAX(0," + CONTINGENCY_REQUIRED.here() + "-" + CONTINGENCY_LEFT.here() + ")",
        flag(Sign.CONTINGENCY),
        "That less what is left");
    money(
        CONTINGENCY_KEPT,
        of(CostReportColumn.TO_COMPLETE, "contingency"),
        c.kept(),
        "Cost report, Cost to complete of the contingency lines, as Contingency to keep on Loan says");
    money(
        CONTINGENCY_RELEASE,
        "MAX(0," + CONTINGENCY_KEPT.here() + "-" + CONTINGENCY_REQUIRED.here() + ")",
        c.release(),
        "What the cost to complete keeps above that for the work left");
    money(
        TO_BRING,
        "MAX(0,-(" + SURPLUS.here() + "+" + CONTINGENCY_RELEASE.here() + "))",
        c.toBring(),
        "Nothing where the loan is in balance then");
    number(
        CONTINGENCY_USED,
        "IF("
            + CONTINGENCY_ORIGINAL.here()
            + "=0,\"n/a\",("
            + CONTINGENCY_ORIGINAL.here()
            + "-"
            + CONTINGENCY_LEFT.here()
            + ")/"
            + CONTINGENCY_ORIGINAL.here()
            + ")",
        c.used(),
        "0.0%",
        "Of the original budget's");
    number(COMPLETE, SheetEarnedValue.complete(), c.progress(), "0.0%", "Earned value, Complete");
    var used = CONTINGENCY_USED.here();
    var complete = COMPLETE.here();
    number(
        PACE,
        "IF(ISNUMBER("
            + used
            + "),IF(ISNUMBER("
            + complete
            + "),IF("
            + complete
            + "=0,\"n/a\","
            + used
            + "/"
            + complete
            + "),\"n/a\"),\"n/a\")",
        c.pace(),
        "0.00",
        "The one over the other; above 1 it burns faster than the work goes");
  }

  private void reserve() {
    head(RESERVE);
    var r = status.reserve();
    money(
        RESERVE_BUDGET,
        interestRow(REVISED),
        r.budget(),
        "Cost report, Revised budget of the interest");
    money(
        RESERVE_CHARGED,
        interestRow(CostReportColumn.TO_DATE),
        r.charged(),
        "Cost report, Cost to date of the interest");
    money(
        RESERVE_LEFT,
        "MAX(0," + RESERVE_BUDGET.here() + "-" + RESERVE_CHARGED.here() + ")",
        r.left(),
        "The one less the other");
    money(
        RESERVE_BEYOND,
        "MAX(0," + INTEREST.here() + "-" + RESERVE_LEFT.here() + ")",
        r.beyond(),
        "Interest to completion less what is left of the reserve");
    number(
        RESERVE_MONTHS,
        SheetMoneyToCome.monthsCarried(run, status),
        r.months(),
        "0.0",
        "Money to come, Carried by the reserve; behind completion at the interest on all then owed");
  }

  private void ratios() {
    head(RATIOS);
    var b = run.plan.finance().balance();
    money(
        TOTAL,
        "SUM(" + run.addresses.costColumn(CostPlanColumn.AMOUNT) + ")",
        status.facts().total(),
        "Cost plan; land is not in it");
    number(TO_COST, over(TOTAL), b.loanToCost(), "0.0%", "Loan over that");
    var value = status.terms().value();
    if (value.isPresent()) {
      money(
          VALUE,
          run.loan(LoanQuestions.VALUE),
          value.get().setScale(status.decimals()),
          "Sheet Loan");
    } else {
      words(VALUE, "not given", "Enter it on Loan");
    }
    number(TO_VALUE, over(VALUE), b.loanToValue(), "0.0%", "Loan over that");
    if (value.isPresent()) {
      money(
          ABOVE_VALUE,
          "MAX(0,"
              + LOAN.here()
              + "-"
              + Flags.MOST_LOAN_TO_VALUE.toPlainString()
              + "*"
              + VALUE.here()
              + ")",
          flag(Sign.VALUE),
          "Supervisory limit of one- to four-family construction: 12 CFR 34 subpart D");
    } else {
      words(ABOVE_VALUE, "not given", "There is no value to compare the loan with");
    }
  }

  private String over(LoanItem of) {
    return "IF(ISNUMBER("
        + of.here()
        + "),IF("
        + of.here()
        + "=0,\"n/a\","
        + LOAN.here()
        + "/"
        + of.here()
        + "),\"n/a\")";
  }

  private void signs() {
    head(SIGNS);
    share(CLAIMED, EARNED, REVISED, Flags.claimed(status.rows()));
    share(SPENT, IN_PLACE, AT_COMPLETION, Flags.spent(status.rows()));
    number(
        FRONT,
        CLAIMED.here() + "-" + SPENT.here(),
        Optional.of(flag(Sign.FRONT)),
        "0.0%",
        "The one less the other; raised above "
            + ReviewPage.percent(Flags.FRONT_LOAD)
            + " (common practice)");
    var payable = rows(CostReportColumn.PAYABLE);
    money(
        EARLY,
        "-SUMIFS(" + payable + "," + payable + ",\"<0\")",
        flag(Sign.EARLY),
        "Cost report, Payable below nothing");
    number(
        ENDED,
        "COUNTIFS(" + rows(QUOTE_ENDED) + ",\"yes\"," + rows(COMMITTED) + ",0)",
        Optional.of(flag(Sign.ENDED)),
        "0",
        "Cost report, Quote ended, without order or contract");
    var finish = status.facts().finish();
    name(FINISH, "Schedule; dates need a new run");
    page.date(FINISH.row(), FIGURE, finish, page.dateLook());
    var maturity = status.terms().maturity();
    if (maturity.isEmpty()) {
      words(MATURITY, "not given", "Enter it on Loan");
      words(LATE, "not given", "There is no maturity to compare the finish with");
      return;
    }
    name(MATURITY, "Sheet Loan");
    page.date(MATURITY.row(), FIGURE, maturity.get(), page.dateLook());
    long days = ChronoUnit.DAYS.between(finish, maturity.get());
    number(
        LATE,
        "MAX(0," + FINISH.here() + "-" + MATURITY.here() + ")",
        Optional.of(flag(Sign.MATURITY)),
        "0",
        days >= 0 ? days + " days of float" : -days + " days too early");
  }

  private void share(
      LoanItem item, CostReportColumn part, CostReportColumn whole, BigDecimal value) {
    var all = "(" + working(whole) + ")";
    number(
        item,
        "IF(" + all + "=0,0,(" + working(part) + ")/" + all + ")",
        Optional.of(value),
        "0.0%",
        "Cost report, "
            + part.header()
            + " over "
            + whole.header()
            + ", contingency and interest left out");
  }

  // ---- of the cost report -------------------------------------------------------------------

  private BigDecimal flag(Sign sign) {
    return status.flags().stream().filter(f -> f.sign() == sign).findFirst().orElseThrow().figure();
  }

  private BigDecimal sum(Predicate<Row> which, Function<Row, BigDecimal> part) {
    return CostReport.sum(status.rows(), which, part);
  }

  private String interestRow(CostReportColumn column) {
    return column.rows(end, end).split(":")[0];
  }

  private String rows(CostReportColumn column) {
    return column.rows(Addresses.FIRST_ROW, end);
  }

  private String of(CostReportColumn column, String kind) {
    return "SUMIFS(" + rows(column) + "," + rows(KIND) + "," + Addresses.quoted(kind) + ")";
  }

  /** Of the work: contingency and interest left out. */
  private String working(CostReportColumn column) {
    var parts = new ArrayList<String>();
    for (var t : Treatment.values()) if (t.earns()) parts.add(of(column, t.label()));
    return String.join("+", parts);
  }

  // ---- rows ---------------------------------------------------------------------------------

  private void head(LoanItem item) {
    page.text(item.row(), LABEL, item.label(), page.heading());
    page.text(
        item.row(),
        FIGURE,
        item == BALANCE ? run.currency() : "",
        page.heading().aligned(SheetQuantities.RIGHT));
    page.text(item.row(), HOW, item == BALANCE ? "From where" : "", page.heading().indented());
  }

  private void name(LoanItem item, String how) {
    page.text(item.row(), LABEL, item.label(), page.wrapped());
    page.text(item.row(), HOW, how, page.wrapped().indented().inInk(SheetStyle.QUIET));
  }

  private void money(LoanItem item, String formula, BigDecimal value, String how) {
    name(item, how);
    page.formula(item.row(), FIGURE, cents(formula), value, page.number(run.moneyFormat()));
  }

  private void strong(LoanItem item, String formula, BigDecimal value, String how) {
    page.text(item.row(), LABEL, item.label(), page.plain().strong());
    page.text(item.row(), HOW, how, page.wrapped().indented().inInk(SheetStyle.QUIET));
    page.formula(
        item.row(), FIGURE, cents(formula), value, page.number(run.moneyFormat()).strong());
  }

  private void number(
      LoanItem item, String formula, Optional<BigDecimal> value, String format, String how) {
    name(item, how);
    var look = page.number(format);
    if (value.isPresent()) page.formula(item.row(), FIGURE, formula, value.get(), look);
    else page.formula(item.row(), FIGURE, formula, "n/a", look);
  }

  private void words(LoanItem item, String words, String how) {
    name(item, how);
    page.text(item.row(), FIGURE, words, page.plain().aligned(SheetQuantities.RIGHT));
  }

  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }
}

package cornerpost.workbook;

import static cornerpost.workbook.CostReportColumn.*;

import cornerpost.finance.Flag;
import cornerpost.finance.Flags;
import cornerpost.finance.Interest;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Sign;
import cornerpost.finance.Stress;
import cornerpost.finance.Verdict;
import cornerpost.scope.LoanQuestions;
import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * Sheet Lender review: one page, the answer first, each figure with a link to where it stands. What
 * is live has no colour of its own: a colour would stay when the answer changes.
 */
final class SheetLenderReview {
  private static final int LAST_COLUMN = 2;

  private final ResultRun run;
  private final SheetPage page;
  private final LoanStatus status;
  private final int reportEnd;
  private final Map<Sign, String> figures = new EnumMap<>(Sign.class);
  private int row = 5;

  private SheetLenderReview(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = run.page(ResultSheet.LENDER_REVIEW);
    this.status = status;
    reportEnd = SheetCostReport.lastRow(status);
  }

  static void write(ResultRun run) {
    run.status(ResultSheet.LENDER_REVIEW).ifPresent(s -> new SheetLenderReview(run, s).write());
  }

  private void write() {
    page.widths(56, 20, 84);
    page.frame().hideGridlines();
    int surplus = balance();
    verdict(surplus);
    stress(surplus);
    draws();
    cost();
    time();
    signs(surplus);
    page.frame().freeze(0, 3);
  }

  // ---- the answer ---------------------------------------------------------------------------

  private void verdict(int surplus) {
    var look =
        page.plain()
            .strong()
            .withSize(15)
            .wrapping()
            .level(VerticalAlignment.CENTER)
            .ruledBottom(BorderStyle.MEDIUM, SheetStyle.INK);
    var cell = "$B$" + surplus;
    var format = "#,##0" + (run.minorDigits() == 0 ? "" : "." + "0".repeat(run.minorDigits()));
    var shown = "TEXT(ABS(" + cell + ")," + Addresses.quoted(format) + ")";
    page.formula(
        3,
        0,
        "IF("
            + cell
            + "<0,"
            + Addresses.quoted(Verdict.OUT_OF_BALANCE + run.currency() + " ")
            + "&"
            + shown
            + ","
            + Addresses.quoted(Verdict.IN_BALANCE + run.currency() + " ")
            + "&"
            + shown
            + "&"
            + Addresses.quoted(Verdict.LEFT_OVER)
            + ")",
        status.verdict(run.currency()),
        look);
    for (int c = 1; c <= LAST_COLUMN; c++) page.cell(3, c, look);
    page.merge(3, 0, LAST_COLUMN);
    page.height(3, 30);
    page.text(
        4,
        0,
        SheetPrint.name(run)
            + ", on "
            + Days.shown(status.facts().status())
            + ", all in "
            + run.currency(),
        page.plain().inInk(SheetStyle.QUIET));
  }

  /** The row of what is left over. */
  private int balance() {
    section("Why");
    var h = status.holding();
    int first = row;
    money(
        "Loan not drawn",
        run.loan(LoanQuestions.AMOUNT) + "-" + DRAWN.total(),
        h.undrawn(),
        ResultSheet.SCHEDULE_OF_VALUES,
        "Loan less what was drawn");
    money(
        "Borrower's own cash",
        run.loan(LoanQuestions.CASH) + "+" + DRAWN.total() + "-" + PAID.total(),
        h.cash(),
        ResultSheet.MONEY_TO_COME,
        "Own cash and what was drawn, less what was paid");
    money(
        "Cost to complete",
        TO_COMPLETE.total() + "-" + interestToCome(),
        h.toComplete(),
        ResultSheet.COST_REPORT,
        "What remains, at today's prices, quotes and contracts; contingency to keep with it");
    money(
        "Held back from invoices",
        RETAINED.total(),
        h.retained(),
        ResultSheet.COST_REPORT,
        "To be paid when the work is complete");
    money(
        "Invoices to pay",
        PAYABLE.total(),
        h.payable(),
        ResultSheet.COST_REPORT,
        "Invoiced, neither paid nor held back");
    money(
        "In place without an invoice",
        TO_DATE.total() + "-" + INVOICED.total(),
        h.notInvoiced(),
        ResultSheet.COST_REPORT,
        "Work and stored materials that will still be invoiced");
    money(
        "Interest to completion",
        interestToCome(),
        h.interestToCome(),
        ResultSheet.MONEY_TO_COME,
        "On what is owed month by month, "
            + status.terms().dayCount().label()
            + ", "
            + status.terms().interestIs().label());
    int last = row - 1;
    var look = page.number(run.moneyFormat()).strong().ruledTop(BorderStyle.THIN, SheetStyle.INK);
    page.text(
        row,
        0,
        "Left over (below nothing: the borrower must bring it)",
        page.plain().strong().ruledTop(BorderStyle.THIN, SheetStyle.INK));
    page.formula(
        row,
        1,
        cents(
            "$B$" + first + "+$B$" + (first + 1) + "-SUM($B$" + (first + 2) + ":$B$" + last + ")"),
        h.surplus(),
        look);
    page.text(row, 2, "The first two less the rest", note());
    return row++;
  }

  private String interestToCome() {
    return TO_COMPLETE.rows(reportEnd, reportEnd).split(":")[0];
  }

  private void stress(int surplus) {
    section("What if");
    var terms = status.terms();
    var days = run.loan(LoanQuestions.STRESS_WEEKS);
    var kinds = KIND.rows(Addresses.FIRST_ROW, reportEnd);
    var hire =
        run.rounded(
            "SUMIFS("
                + AMOUNT.rows(Addresses.FIRST_ROW, reportEnd)
                + ","
                + kinds
                + ",\"time\")*"
                + status.facts().hireFactor().toPlainString()
                + "*7*"
                + days);
    var interest =
        run.rounded(
            SheetMoneyToCome.owedAtEnd(status)
                + "*"
                + run.loan(LoanQuestions.RATE)
                + "*7*"
                + days
                + "/"
                + Interest.yearDays(terms.dayCount()));
    var open =
        "SUMIFS("
            + TO_COMPLETE.rows(Addresses.FIRST_ROW, reportEnd)
            + ","
            + COMMITTED.rows(Addresses.FIRST_ROW, reportEnd)
            + ",0,"
            + kinds;
    var prices =
        run.rounded(
            run.loan(LoanQuestions.STRESS_PRICES)
                + "*("
                + open
                + ",\"work\")+"
                + open
                + ",\"on top\"))");
    var delay = hire + "-" + interest;
    var base = "$B$" + surplus;
    var later = terms.stressWeeks() + " weeks later";
    var dearer = "prices up " + percent(terms.stressPrices()) + " on what is not under contract";
    whatIf(
        status.stresses().get(1),
        later,
        base + "-" + delay,
        "Hire, rent and insurance by the day, and interest on all that is then owed");
    whatIf(
        status.stresses().get(2),
        dearer,
        base + "-" + prices,
        "On the cost to complete of lines without order or contract");
    whatIf(
        status.stresses().get(3),
        later + " and " + dearer,
        base + "-" + delay + "-" + prices,
        "Both");
  }

  private static String percent(BigDecimal share) {
    return share.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
  }

  private void whatIf(Stress s, String name, String formula, String how) {
    var look = page.number(run.moneyFormat());
    page.text(row, 0, "Left over, " + name, page.wrapped());
    page.formula(row, 1, cents(formula), s.surplus(), look);
    page.text(row, 2, how, note());
    row++;
  }

  // ---- draws, cost, time --------------------------------------------------------------------

  private void draws() {
    section("Draws");
    var r = status.request();
    money("Drawn so far", DRAWN.total(), r.before(), ResultSheet.SCHEDULE_OF_VALUES, "");
    money(
        "In place and stored",
        "'Schedule of values'!$G$2",
        r.inPlace(),
        ResultSheet.SCHEDULE_OF_VALUES,
        "At scheduled value, changes with it");
    money(
        "Can be drawn now",
        SheetScheduleOfValues.due(),
        r.due(),
        ResultSheet.SCHEDULE_OF_VALUES,
        "The loan's part of what is in place, less what is held back and what was drawn");
  }

  private void cost() {
    section("Cost");
    var rows = status.rows();
    money(
        "Original budget",
        ORIGINAL.total(),
        sum(rows, r -> r.original()),
        ResultSheet.COST_REPORT,
        "");
    money(
        "Revised budget",
        REVISED.total(),
        sum(rows, r -> r.revised()),
        ResultSheet.COST_REPORT,
        "With approved changes");
    money(
        "Estimate at completion",
        AT_COMPLETION.total(),
        sum(rows, r -> r.atCompletion()),
        ResultSheet.COST_REPORT,
        "");
    money(
        "More than the original budget",
        VARIANCE.total(),
        sum(rows, r -> r.variance()),
        ResultSheet.COST_REPORT,
        "Below nothing: less");
    money(
        "  of it by price",
        BY_PRICE.total(),
        sum(rows, r -> r.byPrice()),
        ResultSheet.COST_REPORT,
        "Contingency no longer to be kept stands here too");
    money(
        "  by quantity",
        BY_QUANTITY.total(),
        sum(rows, r -> r.byQuantity()),
        ResultSheet.COST_REPORT,
        "");
    money(
        "  by scope",
        BY_SCOPE.total(),
        sum(rows, r -> r.byScope()),
        ResultSheet.COST_REPORT,
        "Approved changes");
    money(
        "  by time",
        BY_TIME.total(),
        sum(rows, r -> r.byTime()),
        ResultSheet.COST_REPORT,
        "Hire, rent, interest");
    contingency();
    ratio(
        "Loan to cost",
        "SUM(" + run.addresses.costColumn(CostPlanColumn.AMOUNT) + ")",
        run.plan.finance().balance().loanToCost(),
        "Over the total of the cost plan; land is not in it");
    if (run.plan.finance().balance().loanToValue().isPresent()) {
      ratio(
          "Loan to value",
          run.loan(LoanQuestions.VALUE),
          run.plan.finance().balance().loanToValue(),
          "Over the value on completion");
    }
  }

  private static BigDecimal sum(
      java.util.List<cornerpost.finance.CostReport.Row> rows,
      java.util.function.Function<cornerpost.finance.CostReport.Row, BigDecimal> part) {
    return rows.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private void ratio(String name, String of, Optional<BigDecimal> ratio, String how) {
    page.text(row, 0, name);
    var formula = "IF(" + of + "=0,\"n/a\"," + run.loan(LoanQuestions.AMOUNT) + "/" + of + ")";
    if (ratio.isPresent()) page.formula(row, 1, formula, ratio.get(), page.number("0.0%"));
    else page.text(row, 1, "n/a", page.number("0.0%"));
    page.text(row, 2, how, note());
    row++;
  }

  private void contingency() {
    var c = status.contingency();
    int left = row;
    money(
        "Contingency left",
        of(REVISED, "contingency"),
        c.left(),
        ResultSheet.COST_REPORT,
        "Of " + "the original; approved changes take from it");
    var workLeft =
        cents(
            of(TO_COMPLETE, "work")
                + "+"
                + of(TO_COMPLETE, "time")
                + "+"
                + of(TO_COMPLETE, "on top"));
    var work =
        "("
            + of(ORIGINAL, "work")
            + "+"
            + of(ORIGINAL, "time")
            + "+"
            + of(ORIGINAL, "on top")
            + ")";
    int required = row;
    money(
        "Contingency for the work left",
        "IF("
            + work
            + "=0,0,"
            + run.rounded(of(ORIGINAL, "contingency") + "*" + workLeft + "/" + work)
            + ")",
        c.required(),
        ResultSheet.COST_REPORT,
        "At its share of the original budget");
    figures.put(Sign.CONTINGENCY, cents("MAX(0,$B$" + required + "-$B$" + left + ")"));
    var original = of(ORIGINAL, "contingency");
    page.text(row, 0, "Pace at which contingency burns");
    var used = "(" + original + "-$B$" + left + ")/" + original;
    var formula =
        "IF("
            + original
            + "=0,\"n/a\",IF(ISNUMBER("
            + SheetEarnedValue.complete()
            + "),IF("
            + SheetEarnedValue.complete()
            + "=0,\"n/a\","
            + used
            + "/"
            + SheetEarnedValue.complete()
            + "),\"n/a\"))";
    var look = page.number("0.00");
    if (c.pace().isPresent()) page.formula(row, 1, formula, c.pace().get(), look);
    else page.formula(row, 1, formula, "n/a", look);
    page.text(
        row, 2, "Share used over share of the work in place; above 1 it burns faster", note());
    row++;
  }

  private String of(CostReportColumn column, String kind) {
    return "SUMIFS("
        + column.rows(Addresses.FIRST_ROW, reportEnd)
        + ","
        + KIND.rows(Addresses.FIRST_ROW, reportEnd)
        + ","
        + Addresses.quoted(kind)
        + ")";
  }

  private void time() {
    section("Progress and time");
    linked(
        "Work in place",
        SheetEarnedValue.complete(),
        status.value().complete(),
        "0.0%",
        "Earned value over the budget of all work");
    linked(
        "Cost index (earned over actual)",
        SheetEarnedValue.costIndex(),
        status.value().costIndex(),
        "0.000",
        "Below 1: dearer than budgeted");
    linked(
        "Time index (earned schedule over time gone)",
        SheetEarnedValue.timeIndex(),
        status.value().timeIndex(),
        "0.000",
        "Below 1: behind the plan before any progress");
    page.text(row, 0, "Finish, as planned now");
    page.link(row, 0, ResultSheet.SCHEDULE, 1);
    page.date(row, 1, status.facts().finish(), page.dateLook());
    page.text(row++, 2, "Dates need a new run", note());
    if (status.terms().maturity().isPresent()) {
      var maturity = status.terms().maturity().get();
      page.text(row, 0, "Loan matures");
      page.date(row, 1, maturity, page.dateLook());
      long days = ChronoUnit.DAYS.between(status.facts().finish(), maturity);
      page.text(
          row++,
          2,
          days >= 0 ? days + " days of float after the finish" : -days + " days too early",
          note());
    }
  }

  private void linked(
      String name, String formula, Optional<BigDecimal> value, String format, String how) {
    page.text(row, 0, name);
    page.link(row, 0, ResultSheet.EARNED_VALUE, 1);
    var look = page.number(format);
    if (value.isPresent()) page.formula(row, 1, formula, value.get(), look);
    else page.formula(row, 1, formula, "n/a", look);
    page.text(row++, 2, how, note());
  }

  // ---- signs --------------------------------------------------------------------------------

  private void signs(int surplus) {
    figures.put(Sign.SHORT, "MAX(0,-$B$" + surplus + ")");
    figures.put(Sign.CASH, "MAX(0,-" + SheetMoneyToCome.leastCash(status) + ")");
    figures.put(Sign.AHEAD, SheetScheduleOfValues.ahead());
    figures.put(Sign.OVER, OVER.total());
    figures.put(Sign.NO_QUOTE, NO_FIRM_PRICE.total());
    figures.put(
        Sign.ENDED,
        "COUNTIFS("
            + QUOTE_ENDED.rows(Addresses.FIRST_ROW, reportEnd)
            + ",\"yes\","
            + COMMITTED.rows(Addresses.FIRST_ROW, reportEnd)
            + ",0)");
    figures.put(
        Sign.EARLY,
        cents(
            "-SUMIFS("
                + PAYABLE.rows(Addresses.FIRST_ROW, reportEnd)
                + ","
                + PAYABLE.rows(Addresses.FIRST_ROW, reportEnd)
                + ",\"<0\")"));
    figures.put(Sign.FRONT, share(EARNED, REVISED) + "-" + share(IN_PLACE, AT_COMPLETION));
    if (status.terms().value().isPresent()) {
      figures.put(
          Sign.VALUE,
          "MAX(0,"
              + run.loan(LoanQuestions.AMOUNT)
              + "-"
              + Flags.MOST_LOAN_TO_VALUE.toPlainString()
              + "*"
              + run.loan(LoanQuestions.VALUE)
              + ")");
    }
    section("What an examiner looks for");
    for (var f : status.flags()) sign(f);
  }

  private String share(CostReportColumn part, CostReportColumn whole) {
    var a = "(" + of(part, "work") + "+" + of(part, "time") + "+" + of(part, "on top") + ")";
    var b = "(" + of(whole, "work") + "+" + of(whole, "time") + "+" + of(whole, "on top") + ")";
    return "IF(" + b + "=0,0," + a + "/" + b + ")";
  }

  private void sign(Flag f) {
    page.text(row, 0, f.sign().label(), page.wrapped());
    page.link(row, 0, sheet(f.sign()), 1);
    var format = f.money() ? run.moneyFormat() : f.sign() == Sign.FRONT ? "0.0%" : "0";
    var look = page.number(format);
    var formula = Optional.ofNullable(figures.get(f.sign()));
    if (formula.isPresent()) page.formula(row, 1, formula.get(), f.figure(), look);
    else page.number(row, 1, f.figure(), look);
    var limit = f.sign() == Sign.FRONT ? Flags.FRONT_LOAD.toPlainString() : "0";
    var raised = page.plain().strong().indented();
    page.formula(
        row,
        2,
        "IF($B$" + row + ">" + limit + "," + Addresses.quoted(yes(f.sign())) + ",\"no\")",
        f.raised() ? yes(f.sign()) : "no",
        raised);
    row++;
  }

  private static String yes(Sign sign) {
    return "yes: " + sign.advice();
  }

  private static ResultSheet sheet(Sign sign) {
    return switch (sign) {
      case SHORT, CASH -> ResultSheet.MONEY_TO_COME;
      case AHEAD, FRONT, VALUE -> ResultSheet.SCHEDULE_OF_VALUES;
      case OVER, CONTINGENCY, NO_QUOTE, ENDED, EARLY -> ResultSheet.COST_REPORT;
      case LICENSED -> ResultSheet.CHECKS;
      case MATURITY -> ResultSheet.SCHEDULE;
    };
  }

  // ---- looks --------------------------------------------------------------------------------

  private void money(String name, String formula, BigDecimal value, ResultSheet sheet, String how) {
    page.text(row, 0, name);
    page.link(row, 0, sheet, 1);
    page.formula(row, 1, cents(formula), value, page.number(run.moneyFormat()));
    page.text(row, 2, how, note());
    row++;
  }

  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }

  private SheetStyle note() {
    return page.wrapped().indented().inInk(SheetStyle.QUIET);
  }

  private void section(String name) {
    var look = page.plain().strong().withSize(11).ruledBottom(BorderStyle.THIN, SheetStyle.INK);
    page.text(row, 0, name, look);
    page.text(row, 1, "", look.aligned(HorizontalAlignment.RIGHT));
    page.cell(row, 2, look);
    page.height(row, 20);
    row++;
  }
}

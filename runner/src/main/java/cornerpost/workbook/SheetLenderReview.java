package cornerpost.workbook;

import static cornerpost.workbook.CostReportColumn.*;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.Interest;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Sign;
import cornerpost.scope.LoanQuestions;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

/**
 * Sheet Lender review once money has moved: one page, the answer first, each figure with a link to
 * the line it comes from.
 */
final class SheetLenderReview {
  private final ResultRun run;
  private final ReviewPage page;
  private final ReviewLinks links;
  private final LoanStatus status;
  private final int reportEnd;

  private SheetLenderReview(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = new ReviewPage(run);
    this.links = new ReviewLinks(run);
    this.status = status;
    reportEnd = SheetCostReport.lastRow(status);
  }

  static void write(ResultRun run) {
    var first = run.plan.finance().firstReview();
    if (first.isPresent()) new SheetFirstReview(run, first.get()).write();
    else
      run.status(ResultSheet.LENDER_REVIEW).ifPresent(s -> new SheetLenderReview(run, s).write());
  }

  private void write() {
    int surplus = balance();
    page.verdict(surplus, status.verdict(run.currency()), status.facts().status());
    stress("$B$" + surplus);
    draws();
    cost();
    var contingency = contingency("$B$" + surplus);
    page.ratios(links);
    time();
    signs("$B$" + surplus, contingency);
  }

  /** The row of what is left over. */
  private int balance() {
    page.section("Why");
    var h = status.holding();
    int first = page.row();
    page.money(
        "Loan not drawn",
        run.loan(LoanQuestions.AMOUNT) + "-" + DRAWN.total(),
        h.undrawn(),
        DRAWN.total(),
        "Loan less what was drawn");
    page.money(
        "Borrower's own cash",
        run.loan(LoanQuestions.CASH) + "+" + DRAWN.total() + "-" + PAID.total(),
        h.cash(),
        SheetMoneyToCome.cashNow(),
        "Own cash and what was drawn, less what was paid");
    page.money(
        "Cost to complete",
        TO_COMPLETE.total() + "-" + interestToCome(),
        h.toComplete(),
        TO_COMPLETE.total(),
        "What remains, at today's prices, quotes and contracts; contingency to keep with it");
    page.money(
        "Held back from invoices",
        RETAINED.total(),
        h.retained(),
        RETAINED.total(),
        "To be paid when the work is complete");
    page.money(
        "Invoices to pay",
        PAYABLE.total(),
        h.payable(),
        PAYABLE.total(),
        "Invoiced, neither paid nor held back");
    page.money(
        "In place without an invoice",
        TO_DATE.total() + "-" + INVOICED.total(),
        h.notInvoiced(),
        TO_DATE.total(),
        "Work and stored materials that will still be invoiced");
    page.money(
        "Interest to completion",
        interestToCome(),
        h.interestToCome(),
        SheetMoneyToCome.interestCell(),
        "On what is owed month by month, "
            + status.terms().dayCount().label()
            + ", "
            + status.terms().interestIs().label());
    int last = page.row() - 1;
    page.total(
        ReviewPage.LEFT_OVER,
        "$B$" + first + "+$B$" + (first + 1) + "-SUM($B$" + (first + 2) + ":$B$" + last + ")",
        h.surplus(),
        "The first two less the rest");
    return last + 1;
  }

  private String interestToCome() {
    return TO_COMPLETE.rows(reportEnd, reportEnd).split(":")[0];
  }

  private void stress(String surplus) {
    page.section("What if");
    var terms = status.terms();
    var days = run.loan(LoanQuestions.STRESS_WEEKS);
    var hire =
        run.rounded(
            of(AMOUNT, "time") + "*" + status.facts().hireFactor().toPlainString() + "*7*" + days);
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
            + KIND.rows(Addresses.FIRST_ROW, reportEnd);
    var prices =
        run.rounded(
            run.loan(LoanQuestions.STRESS_PRICES)
                + "*("
                + open
                + ",\"work\")+"
                + open
                + ",\"on top\"))");
    var later = terms.stressWeeks() + " weeks later";
    var dearer =
        "prices up " + ReviewPage.percent(terms.stressPrices()) + " on what is not under contract";
    var what = status.stresses();
    page.money(
        "Left over, " + later,
        surplus + "-" + hire + "-" + interest,
        what.get(1).surplus(),
        SheetMoneyToCome.owedAtEnd(status),
        "Hire, rent and insurance by the day, and interest on all that is then owed");
    page.money(
        "Left over, " + dearer,
        surplus + "-" + prices,
        what.get(2).surplus(),
        TO_COMPLETE.total(),
        "On the cost to complete of lines without order or contract");
    page.money(
        "Left over, " + later + " and " + dearer,
        surplus + "-" + hire + "-" + interest + "-" + prices,
        what.get(3).surplus(),
        "Both");
  }

  // ---- draws, cost, time --------------------------------------------------------------------

  private void draws() {
    page.section("Draws");
    var r = status.request();
    page.money(
        "Drawn so far",
        DRAWN.total(),
        r.before(),
        DRAWN.total(),
        "By the Cost ledger; sheet Draws has those to come, with what each waits for");
    page.money(
        "In place and stored",
        SheetScheduleOfValues.there(),
        r.inPlace(),
        SheetScheduleOfValues.there(),
        "At scheduled value, changes with it");
    page.money(
        "Can be drawn now",
        SheetScheduleOfValues.due(),
        r.due(),
        SheetScheduleOfValues.due(),
        "The loan's part of what is in place, less what is held back and what was drawn");
  }

  private void cost() {
    page.section("Cost");
    cost("Original budget", ORIGINAL, Row::original, "");
    cost("Revised budget", REVISED, Row::revised, "With approved changes");
    cost("Estimate at completion", AT_COMPLETION, Row::atCompletion, "");
    cost("More than the original budget", VARIANCE, Row::variance, "Below nothing: less");
    cost(
        "  of it by price",
        BY_PRICE,
        Row::byPrice,
        "Contingency no longer to be kept stands here too");
    cost("  by quantity", BY_QUANTITY, Row::byQuantity, "");
    cost("  by scope", BY_SCOPE, Row::byScope, "Approved changes");
    cost("  by time", BY_TIME, Row::byTime, "Hire, rent, interest");
  }

  private void cost(
      String name, CostReportColumn column, Function<Row, BigDecimal> part, String how) {
    var sum = status.rows().stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
    page.money(name, column.total(), sum, column.total(), how);
  }

  /** The formula of what is missing of the contingency that is required. */
  private String contingency(String surplus) {
    var c = status.contingency();
    var left = "$B$" + page.row();
    page.money(
        "Contingency left",
        of(REVISED, "contingency"),
        c.left(),
        REVISED.total(),
        "Of the original; approved changes take from it");
    var required = "$B$" + page.row();
    var work = "(" + working(ORIGINAL) + ")";
    page.money(
        "Contingency for the work left",
        "IF("
            + work
            + "=0,0,"
            + run.rounded(
                of(ORIGINAL, "contingency") + "*" + page.cents(working(TO_COMPLETE)) + "/" + work)
            + ")",
        c.required(),
        ORIGINAL.total(),
        "At its share of the original budget");
    var release = "$B$" + page.row();
    page.money(
        "Contingency the lender may release",
        "MAX(0," + of(TO_COMPLETE, "contingency") + "-" + required + ")",
        c.release(),
        TO_COMPLETE.total(),
        "What the cost to complete keeps above that");
    page.money(
        "To be brought if it is released",
        "MAX(0,-(" + surplus + "+" + release + "))",
        c.toBring(),
        "Nothing where the loan is in balance then");
    var original = of(ORIGINAL, "contingency");
    var complete = SheetEarnedValue.complete();
    page.number(
        "Pace at which contingency burns",
        "IF("
            + original
            + "=0,\"n/a\",IF(ISNUMBER("
            + complete
            + "),IF("
            + complete
            + "=0,\"n/a\",("
            + original
            + "-"
            + left
            + ")/"
            + original
            + "/"
            + complete
            + "),\"n/a\"))",
        c.pace(),
        "0.00",
        complete,
        "Share used over share of the work in place; above 1 it burns faster");
    return page.cents("MAX(0," + required + "-" + left + ")");
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

  /** Of the work: contingency and interest left out. */
  private String working(CostReportColumn column) {
    return of(column, "work") + "+" + of(column, "time") + "+" + of(column, "on top");
  }

  private void time() {
    page.section("Progress and time");
    var value = status.value();
    page.number(
        "Work in place",
        SheetEarnedValue.complete(),
        value.complete(),
        "0.0%",
        SheetEarnedValue.complete(),
        "Earned value over the budget of all work");
    page.number(
        "Cost index (earned over actual)",
        SheetEarnedValue.costIndex(),
        value.costIndex(),
        "0.000",
        SheetEarnedValue.costIndex(),
        "Below 1: dearer than budgeted");
    page.number(
        "Time index (earned schedule over time gone)",
        SheetEarnedValue.timeIndex(),
        value.timeIndex(),
        "0.000",
        SheetEarnedValue.timeIndex(),
        "Below 1: behind "
            + status
                .plannedPeriods()
                .baseline()
                .map(b -> "the plan kept as '" + b + "'")
                .orElse("the plan before any progress"));
    page.finish(status.facts().finish(), status.terms().maturity(), links);
  }

  // ---- signs --------------------------------------------------------------------------------

  private void signs(String surplus, String contingency) {
    page.section("What an examiner looks for");
    for (var f : status.flags()) {
      page.sign(f, figure(f.sign(), surplus, contingency), links.of(f, status));
    }
  }

  /** Its formula; empty where it needs a new run. */
  private Optional<String> figure(Sign sign, String surplus, String contingency) {
    return switch (sign) {
      case SHORT -> Optional.of("MAX(0,-" + surplus + ")");
      case CASH -> Optional.of("MAX(0,-" + SheetMoneyToCome.leastCash(status) + ")");
      case AHEAD -> Optional.of(SheetScheduleOfValues.ahead());
      case FRONT -> Optional.of(share(EARNED, REVISED) + "-" + share(IN_PLACE, AT_COMPLETION));
      case OVER -> Optional.of(OVER.total());
      case CONTINGENCY -> Optional.of(contingency);
      case NO_QUOTE -> Optional.of(NO_FIRM_PRICE.total());
      case ENDED ->
          Optional.of(
              "COUNTIFS("
                  + QUOTE_ENDED.rows(Addresses.FIRST_ROW, reportEnd)
                  + ",\"yes\","
                  + COMMITTED.rows(Addresses.FIRST_ROW, reportEnd)
                  + ",0)");
      case EARLY -> {
        var payable = PAYABLE.rows(Addresses.FIRST_ROW, reportEnd);
        yield Optional.of(page.cents("-SUMIFS(" + payable + "," + payable + ",\"<0\")"));
      }
      case VALUE -> page.overValue(status.terms());
      case LICENSED, MATURITY -> Optional.empty();
    };
  }

  private String share(CostReportColumn part, CostReportColumn whole) {
    var all = "(" + working(whole) + ")";
    return "IF(" + all + "=0,0,(" + working(part) + ")/" + all + ")";
  }
}

package cornerpost.workbook;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.Flag;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Stress;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

/**
 * Sheet Lender review: one page, the answer first, each figure with a link to the row that shows
 * how it comes about.
 */
final class SheetLenderReview {
  private final ResultRun run;
  private final ReviewPage page;
  private final ReviewLinks links;
  private final LoanStatus status;

  private SheetLenderReview(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = new ReviewPage(run);
    this.links = new ReviewLinks(run);
    this.status = status;
  }

  static void write(ResultRun run) {
    run.status(ResultSheet.LENDER_REVIEW).ifPresent(s -> new SheetLenderReview(run, s).write());
  }

  private void write() {
    int surplus = balance();
    page.verdict(surplus, status);
    stress();
    draws();
    cost();
    contingency();
    reserve();
    page.ratios();
    time();
    signs();
    page.prices();
  }

  private void money(String name, LoanItem item, BigDecimal value, String how) {
    page.money(name, item.cell(), value, item.cell(), how);
  }

  private void money(LoanItem item, BigDecimal value, String how) {
    money(item.label(), item, value, how);
  }

  private void number(LoanItem item, Optional<BigDecimal> value, String format, String how) {
    page.number(item.label(), item.cell(), value, format, item.cell(), how);
  }

  /** The row of what is left over. */
  private int balance() {
    page.section("Why");
    var h = status.holding();
    int first = page.row();
    money(LoanItem.UNDRAWN, h.undrawn(), "Loan less what was drawn");
    money(LoanItem.CASH, h.cash(), "Own cash and what was drawn, less what was paid");
    money(
        LoanItem.TO_COMPLETE,
        h.toComplete(),
        "What remains, at today's prices, quotes and contracts; contingency to keep with it,"
            + " interest not");
    money(
        LoanItem.RETAINED,
        h.retained(),
        "From those who work and supply; to be paid when the work is complete");
    money(LoanItem.PAYABLE, h.payable(), "Invoiced, neither paid nor held back");
    money(
        LoanItem.NOT_INVOICED,
        h.notInvoiced(),
        "Work and stored materials that will still be invoiced");
    money(
        LoanItem.INTEREST,
        h.interestToCome(),
        "On what is owed month by month, "
            + status.terms().dayCount().label()
            + ", "
            + status.terms().interestIs().label());
    int last = page.row() - 1;
    page.total(
        ReviewPage.LEFT_OVER,
        "$B$" + first + "+$B$" + (first + 1) + "-SUM($B$" + (first + 2) + ":$B$" + last + ")",
        h.surplus(),
        LoanItem.SURPLUS.cell(),
        "The first two less the rest");
    page.dateOrWords(
        LoanItem.BRING_BY.label(),
        LoanItem.BRING_BY.cell(),
        status.bringBy(),
        "nothing to bring",
        "The next draw: a loan out of balance is not drawn on. Days need a new run");
    return last + 1;
  }

  private void stress() {
    page.section("What if");
    var what = status.stresses();
    var later = Stress.later(status.terms());
    var dearer = Stress.dearer(status.terms());
    money(
        "Left over, " + later,
        LoanItem.LATER,
        what.get(1).surplus(),
        "Hire, rent and insurance by the day, and interest on all that is then owed");
    money(
        "Left over, " + dearer,
        LoanItem.DEARER,
        what.get(2).surplus(),
        "On the cost to complete of lines without order or contract");
    money(
        "Left over, " + later + " and " + dearer,
        LoanItem.LATER_AND_DEARER,
        what.get(3).surplus(),
        "Both");
  }

  // ---- draws, cost, time --------------------------------------------------------------------

  private void draws() {
    page.section("Draws");
    var r = status.request();
    money(
        LoanItem.DRAWN,
        r.before(),
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
        "The loan's part of what is in place, less what is held back and what was drawn; where"
            + " more was drawn than that, the excess stands among the signs");
  }

  private void cost() {
    page.section("Cost");
    cost("Original budget", CostReportColumn.ORIGINAL, Row::original, "");
    cost("Revised budget", CostReportColumn.REVISED, Row::revised, "With approved changes");
    cost("Estimate at completion", CostReportColumn.AT_COMPLETION, Row::atCompletion, "");
    cost(
        "More than the original budget",
        CostReportColumn.VARIANCE,
        Row::variance,
        "Below nothing: less");
    cost(
        "of it by price",
        CostReportColumn.BY_PRICE,
        Row::byPrice,
        "Contingency no longer to be kept stands here too");
    cost("by quantity", CostReportColumn.BY_QUANTITY, Row::byQuantity, "");
    cost("by scope", CostReportColumn.BY_SCOPE, Row::byScope, "Approved changes");
    cost("by time", CostReportColumn.BY_TIME, Row::byTime, "Hire, rent, interest");
  }

  private void cost(
      String name, CostReportColumn column, Function<Row, BigDecimal> part, String how) {
    var sum = status.rows().stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
    page.money(name, column.total(), sum, column.total(), how);
  }

  private void contingency() {
    var c = status.contingency();
    money(
        LoanItem.CONTINGENCY_LEFT,
        c.left(),
        "Approved changes take from it; what finished stages did not need is still in it");
    money(
        LoanItem.CONTINGENCY_KEPT,
        c.kept(),
        "What of that the money must still cover, as Contingency to keep on Loan says");
    money(LoanItem.CONTINGENCY_REQUIRED, c.required(), "At its share of the original budget");
    money(LoanItem.CONTINGENCY_RELEASE, c.release(), "What the cost to complete keeps above that");
    money(LoanItem.TO_BRING, c.toBring(), "Nothing where the loan is in balance then");
    number(
        LoanItem.PACE,
        c.pace(),
        "0.00",
        "Share used over share of the work in place; above 1 it burns faster");
  }

  private void reserve() {
    var r = status.reserve();
    money(LoanItem.RESERVE_LEFT, r.left(), "Interest in the budget less what was charged");
    number(
        LoanItem.RESERVE_MONTHS,
        r.months(),
        "0.0",
        "At the interest of each month to come; behind completion at that on all then owed");
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

  private void signs() {
    page.section("What an examiner looks for");
    for (var f : status.flags()) page.sign(f, figure(f), links.of(f, status));
  }

  /** Its formula, for most the cell that makes it; empty where it needs a new run. */
  private Optional<String> figure(Flag flag) {
    return switch (flag.sign()) {
      case CASH -> Optional.of("MAX(0,-" + SheetMoneyToCome.leastCash(status) + ")");
      case VALUE -> status.terms().value().isPresent() ? links.of(flag, status) : Optional.empty();
      case LICENSED, MATURITY -> Optional.empty();
      default -> links.of(flag, status);
    };
  }
}

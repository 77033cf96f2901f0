package cornerpost.workbook;

import cornerpost.finance.FirstReview;
import cornerpost.finance.Sign;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Sheet Lender review before any money has moved: the same page on the plan alone. Its figures
 * stand on Cost to complete, Cash flow, Draws and Cost plan.
 */
final class SheetFirstReview {
  private final ResultRun run;
  private final ReviewPage page;
  private final ReviewLinks links;
  private final FirstReview review;

  SheetFirstReview(ResultRun run, FirstReview review) {
    this.run = run;
    this.page = new ReviewPage(run);
    this.links = new ReviewLinks(run);
    this.review = review;
  }

  void write() {
    int surplus = balance();
    page.verdict(surplus, review.verdict(run.currency()), review.status());
    stress("$B$" + surplus);
    draws();
    cost();
    page.section("Time");
    page.finish(review.finish(), review.terms().maturity(), links);
    page.section("What an examiner looks for");
    for (var f : review.flags()) {
      page.sign(f, figure(f.sign(), "$B$" + surplus), links.before(f, review));
    }
  }

  private int balance() {
    page.section("Why, before any money has moved");
    var b = review.balance();
    int first = page.row();
    figure("Loan not drawn", SheetCostToComplete.UNDRAWN, b.undrawn(), "By the draws as planned");
    figure(
        "Borrower's own cash",
        SheetCostToComplete.CASH,
        b.cash(),
        "With what is drawn, less what is in place and the interest so far");
    figure(
        "Cost to complete",
        SheetCostToComplete.TO_COMPLETE,
        b.costToComplete(),
        "What remains, at today's prices and quotes, contingency with it");
    figure(
        "Interest to completion",
        SheetCostToComplete.INTEREST,
        b.interestToCome(),
        "By the draws as planned, " + review.terms().dayCount().label());
    page.total(
        ReviewPage.LEFT_OVER,
        "$B$" + first + "+$B$" + (first + 1) + "-$B$" + (first + 2) + "-$B$" + (first + 3),
        b.surplus(),
        SheetCostToComplete.SURPLUS,
        "The first two less the rest");
    return first + 4;
  }

  private void figure(String name, String cell, BigDecimal value, String how) {
    page.money(name, cell, value, cell, how);
  }

  private void stress(String surplus) {
    page.section("What if");
    var terms = review.terms();
    var later = terms.stressWeeks() + " weeks later";
    var dearer = "prices up " + ReviewPage.percent(terms.stressPrices());
    whatIf(1, later, surplus, "Hire, rent and insurance by the day, and interest on the loan");
    whatIf(
        2, dearer, surplus, "On all that remains, contingency and what is paid by time left out");
    whatIf(3, later + " and " + dearer, surplus, "Both");
  }

  /** What it costs needs a new run. */
  private void whatIf(int which, String name, String surplus, String how) {
    var s = review.stresses().get(which);
    page.money(
        "Left over, " + name,
        surplus + "-" + s.delay().toPlainString() + "-" + s.prices().toPlainString(),
        s.surplus(),
        how);
  }

  private void draws() {
    page.section("Draws");
    var draws = run.plan.finance().draws();
    var count = BigDecimal.valueOf(draws.size());
    int first = Addresses.FIRST_ROW;
    int last = Math.max(first, Addresses.HEADER_ROW + draws.size());
    page.number(
        "Draws as planned",
        "COUNT('Draws'!$B$" + first + ":$B$" + last + ")",
        Optional.of(count),
        "0",
        "Draws!A" + Addresses.HEADER_ROW,
        "Each with its day, its inspections and its papers");
    var paid = draws.stream().map(d -> d.paid()).reduce(BigDecimal.ZERO, BigDecimal::add);
    page.money(
        "Paid by the lender in all",
        "SUM('Draws'!$F$" + first + ":$F$" + last + ")",
        paid,
        "Draws!F" + last,
        "Below the loan where the borrower's cash carries more of it");
  }

  private void cost() {
    page.section("Cost");
    page.money(
        "Total cost",
        "SUM(" + run.addresses.costColumn(CostPlanColumn.AMOUNT) + ")",
        run.plan.estimate().total(),
        SheetCostPlan.TOTAL,
        "Of the cost plan; land is not in it");
    page.number(
        "Contingency over the rest to complete",
        review.contingencyShare().map(BigDecimal::toPlainString).orElse("\"n/a\""),
        review.contingencyShare(),
        "0.0%",
        SheetCostToComplete.TO_COMPLETE,
        "Interest left out");
    page.ratios(links);
  }

  private Optional<String> figure(Sign sign, String surplus) {
    return switch (sign) {
      case SHORT -> Optional.of("MAX(0,-" + surplus + ")");
      case CASH ->
          Optional.of("MAX(0,-" + SheetCashFlow.leastCash(run.plan.finance().months()) + ")");
      case VALUE -> page.overValue(review.terms());
      default -> Optional.empty();
    };
  }
}

package cornerpost.workbook;

import cornerpost.finance.LoanStatus;
import cornerpost.measure.Money;
import cornerpost.measure.Unit;
import cornerpost.plan.Plan;
import cornerpost.scope.Question;
import cornerpost.trace.Figure;
import cornerpost.workbook.parts.BookEdit;
import cornerpost.workbook.parts.StoredBook;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What the sheets of one result workbook share while they are written. */
final class ResultRun {
  final Plan plan;

  /** The owner's workbook as it was read. */
  final StoredBook workbook;

  final SheetStyles styles;
  final Addresses addresses;
  final Optional<QuoteColumns> quotes;
  final Map<ResultSheet, SheetPage> pages = new EnumMap<>(ResultSheet.class);

  ResultRun(Plan plan, BookEdit edit) {
    this.plan = plan;
    this.workbook = edit.book();
    this.styles = new SheetStyles(edit.styles());
    this.addresses = new Addresses(plan);
    this.quotes = QuoteColumns.find(workbook);
  }

  /**
   * The lender's figures, and a place to write them; empty without a loan before money has moved.
   */
  Optional<LoanStatus> status(ResultSheet sheet) {
    var status = plan.finance().status();
    if (status.isEmpty() && pages.containsKey(sheet)) {
      page(sheet).text(3, 0, "There is no loan, and nothing is entered on sheet Cost ledger.");
    }
    return status;
  }

  /** What sheet Loan says, as a formula: its cell, or the usual value where it has none. */
  String loan(Question question) {
    var answer = plan.scope().loan().find(question);
    if (answer.isEmpty()) return "0";
    var figure = (Figure) answer.get().value();
    var unit = Unit.base(figure.dimension());
    return answer.get().cell().contains("!")
        ? figure.formula(addresses, unit)
        : figure.in(unit).toPlainString();
  }

  SheetPage page(ResultSheet sheet) {
    return pages.get(sheet);
  }

  String currency() {
    return plan.estimate().currency().getCurrencyCode();
  }

  int minorDigits() {
    return Money.minorDigits(plan.estimate().currency());
  }

  /** Money on a line. */
  String moneyFormat() {
    return minorDigits() == 0 ? "#,##0" : "#,##0." + "0".repeat(minorDigits());
  }

  /** Money on a summary, with the currency beside it. */
  String moneySummaryFormat() {
    return "\"" + currency() + "\" #,##0";
  }

  /** The formula of an amount brought to the minor unit, guard digits first. */
  String rounded(String formula) {
    return "ROUND(ROUND(" + formula + "," + Money.GUARD_DECIMALS + ")," + minorDigits() + ")";
  }
}

package cornerpost.workbook;

import cornerpost.finance.CostReport;
import cornerpost.finance.Flag;
import cornerpost.finance.Flags;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Sign;
import cornerpost.finance.Verdict;
import cornerpost.scope.LoanQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * The rows of the lender's review: a name, a figure that links to the line it comes from, and a
 * remark. What is live has no colour of its own: a colour would stay when the answer changes.
 */
final class ReviewPage {
  static final String LEFT_OVER = "Left over (below nothing: the borrower must bring it)";
  private static final int LAST_COLUMN = 2;

  private final ResultRun run;
  private final SheetPage page;
  private int row = 5;

  ReviewPage(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.LENDER_REVIEW);
    page.widths(44, 18, 58);
    page.frame().hideGridlines();
    page.frame().freeze(0, 3);
  }

  /** The row that is written next. */
  int row() {
    return row;
  }

  /** The answer in the first line. */
  void verdict(int surplusRow, LoanStatus status) {
    var look =
        page.plain()
            .strong()
            .withSize(15)
            .wrapping()
            .level(VerticalAlignment.CENTER)
            .ruledBottom(BorderStyle.MEDIUM, SheetStyle.INK);
    var cell = "$B$" + surplusRow;
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
    var where =
        SheetPrint.name(run)
            + ", on "
            + Days.shown(status.facts().status())
            + ", all in "
            + run.currency();
    var nothing = "; nothing is entered on Cost ledger yet";
    page.formula(
        4,
        0,
        Addresses.quoted(where)
            + "&IF(AND("
            + LoanItem.DRAWN.cell()
            + "=0,"
            + LoanItem.PAID.cell()
            + "=0,"
            + LoanItem.INVOICED.cell()
            + "=0),"
            + Addresses.quoted(nothing)
            + ",\"\")",
        nothingMoved(status) ? where + nothing : where,
        page.plain().inInk(SheetStyle.QUIET));
  }

  private static boolean nothingMoved(LoanStatus s) {
    return s.holding().drawn().signum() == 0
        && s.holding().paid().signum() == 0
        && CostReport.sum(s.rows(), r -> true, r -> r.entered().invoiced()).signum() == 0;
  }

  void section(String name) {
    var look = page.plain().strong().withSize(11).ruledBottom(BorderStyle.THIN, SheetStyle.INK);
    page.text(row, 0, name, look);
    page.text(row, 1, "", look.aligned(HorizontalAlignment.RIGHT));
    page.cell(row, 2, look);
    page.height(row, 20);
    row++;
  }

  /**
   * An amount.
   *
   * @param target the cell it comes from, such as {@code 'Cost report'!$Q$2}
   */
  void money(String name, String formula, BigDecimal value, String target, String how) {
    page.formula(row, 1, cents(formula), value, page.number(run.moneyFormat()));
    named(name, Optional.of(target), how);
  }

  /** What is left over: the sum of the section. */
  void total(String name, String formula, BigDecimal value, String target, String how) {
    var line = page.plain().strong().ruledTop(BorderStyle.THIN, SheetStyle.INK);
    page.text(row, 0, name, line);
    page.formula(
        row,
        1,
        cents(formula),
        value,
        page.number(run.moneyFormat()).strong().ruledTop(BorderStyle.THIN, SheetStyle.INK));
    link(target);
    page.text(row++, 2, how, note());
  }

  /** A share or an index, where there is one. */
  void number(
      String name,
      String formula,
      Optional<BigDecimal> value,
      String format,
      String target,
      String how) {
    var look = page.number(format);
    if (value.isPresent()) page.formula(row, 1, formula, value.get(), look);
    else page.formula(row, 1, formula, "n/a", look);
    named(name, Optional.of(target), how);
  }

  /** The loan over what it is for, from the workings. */
  void ratios() {
    var b = run.plan.finance().balance();
    number(
        LoanItem.TO_COST.label(),
        LoanItem.TO_COST.cell(),
        b.loanToCost(),
        "0.0%",
        LoanItem.TO_COST.cell(),
        "Over the total of the cost plan; land is not in it");
    number(
        LoanItem.TO_VALUE.label(),
        LoanItem.TO_VALUE.cell(),
        b.loanToValue(),
        "0.0%",
        LoanItem.TO_VALUE.cell(),
        "Over the value on completion");
  }

  /** A date that is there only in one case. */
  void dateOrWords(String name, String cell, Optional<LocalDate> date, String words, String how) {
    if (date.isPresent()) {
      page.formula(row, 1, cell, page.serial(date.get()), page.dateLook());
    } else {
      page.formula(row, 1, cell, words, page.dateLook());
    }
    named(name, Optional.of(cell), how);
  }

  private void date(String name, LocalDate date, Optional<String> target, String how) {
    page.date(row, 1, date, page.dateLook());
    named(name, target, how);
  }

  /** The finish against the maturity of the loan. */
  void finish(LocalDate finish, Optional<LocalDate> maturity, ReviewLinks links) {
    date("Finish, as planned now", finish, links.finish(), "Dates need a new run");
    if (maturity.isEmpty()) {
      page.text(row, 1, "not given", page.dateLook());
      named("Loan matures", Optional.of(LoanItem.MATURITY.cell()), "Enter Maturity on sheet Loan");
      return;
    }
    long days = ChronoUnit.DAYS.between(finish, maturity.get());
    date(
        "Loan matures",
        maturity.get(),
        links.loan(LoanQuestions.MATURITY),
        days >= 0 ? days + " days of float after the finish" : -days + " days too early");
  }

  private void named(String name, Optional<String> target, String how) {
    page.text(row, 0, name, page.wrapped());
    target.ifPresent(this::link);
    page.text(row++, 2, how, note());
  }

  private void link(String target) {
    page.link(row, 1, target.replace("$", ""));
  }

  /** Whose prices the plan rests on, and what the price book says to every reader. */
  void prices() {
    run.plan
        .book()
        .map(b -> b.region())
        .ifPresent(
            r -> {
              row++;
              page.text(row, 0, "Prices", page.plain().strong());
              page.link(row, 0, ResultSheet.PRICES_USED, 1);
              page.text(
                  row,
                  1,
                  r.name() + ", prices of " + Days.shown(r.priceDate()) + ". " + r.notice(),
                  page.wrapped());
              page.merge(row, 1, 2);
              page.height(row, 28);
              row++;
            });
  }

  /** A sign that an examiner looks for. */
  void sign(Flag f, Optional<String> formula, Optional<String> target) {
    page.text(row, 0, f.sign().label(), page.wrapped());
    var format = f.money() ? run.moneyFormat() : f.sign() == Sign.FRONT ? "0.0%" : "0";
    var look = page.number(format);
    if (f.untold().isPresent()) {
      page.text(row, 1, f.untold().get(), look);
      target.ifPresent(this::link);
      page.text(row++, 2, f.untold().get() + ": " + f.sign().needs(), page.wrapped().indented());
      return;
    }
    if (formula.isPresent()) page.formula(row, 1, formula.get(), f.figure(), look);
    else page.number(row, 1, f.figure(), look);
    target.ifPresent(this::link);
    var limit = f.sign() == Sign.FRONT ? Flags.FRONT_LOAD.toPlainString() : "0";
    var yes = "yes: " + f.sign().advice();
    page.formula(
        row,
        2,
        "IF($B$" + row + ">" + limit + "," + Addresses.quoted(yes) + ",\"no\")",
        f.raised() ? yes : "no",
        page.wrapped().strong().indented());
    row++;
  }

  String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }

  private SheetStyle note() {
    return page.wrapped().indented().inInk(SheetStyle.QUIET);
  }

  static String percent(BigDecimal share) {
    return share.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
  }
}

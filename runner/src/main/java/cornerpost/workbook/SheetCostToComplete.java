package cornerpost.workbook;

import cornerpost.finance.Finance;
import cornerpost.finance.Finance.StageMoney;
import cornerpost.finance.LoanTerms;
import cornerpost.measure.Money;
import cornerpost.scope.LoanQuestions;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/** Sheet Cost to complete: what is still to pay, and whether the money left covers it. */
final class SheetCostToComplete {
  private static final int LABEL = 6;
  private static final int VALUE = 7;

  private final ResultRun run;
  private final SheetPage page;

  private SheetCostToComplete(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.COST_TO_COMPLETE);
  }

  static void write(ResultRun run) {
    new SheetCostToComplete(run).write();
  }

  private void write() {
    page.header(
        Addresses.HEADER_ROW, "Stage", "Budget", "Done", "Value in place", "Cost to complete");
    page.headRight(Addresses.HEADER_ROW, 1, 2, 3, 4);
    page.widths(28, 16, 9, 16, 16, 4, 38, 18, 60);
    var stages = run.plan.finance().stages();
    int row = Addresses.FIRST_ROW;
    for (var s : stages) stage(row++, s);
    int last = Math.max(Addresses.FIRST_ROW, row - 1);
    page.text(2, 0, "All stages, in " + run.currency(), page.plain().strong());
    sum(1, "B", last, stages, StageMoney::budget);
    sum(3, "D", last, stages, StageMoney::inPlace);
    sum(4, "E", last, stages, StageMoney::toComplete);
    SheetTables.finish(page, row - 1, 5, 1);
    run.plan.finance().status().ifPresentOrElse(x -> LoanWorkings.write(run, x), this::balance);
  }

  private void sum(
      int column,
      String letter,
      int last,
      List<StageMoney> stages,
      Function<StageMoney, BigDecimal> part) {
    page.formula(
        2,
        column,
        "SUM($" + letter + "$" + Addresses.FIRST_ROW + ":$" + letter + "$" + last + ")",
        stages.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add),
        page.number(run.moneyFormat()).strong());
  }

  private void stage(int row, StageMoney s) {
    var money = page.number(run.moneyFormat());
    page.text(row, 0, s.stage().label());
    if (run.plan.finance().status().isPresent()) {
      fromReport(row, s, money);
      return;
    }
    budget(row, s, money);
    page.number(row, 2, s.done(), page.number("0%"));
    var inPlace = Money.halfUp(s.budget().multiply(s.done()), run.minorDigits());
    if (inPlace.compareTo(s.inPlace()) == 0) {
      page.formula(row, 3, run.rounded("$B" + row + "*$C" + row), s.inPlace(), money);
    } else {
      page.number(row, 3, s.inPlace(), money);
    }
    if (s.budget().subtract(s.inPlace()).compareTo(s.toComplete()) == 0) {
      page.formula(row, 4, "$B" + row + "-$D" + row, s.toComplete(), money);
    } else {
      page.number(row, 4, s.toComplete(), money);
    }
  }

  /** With a loan the stages are the sums of the Cost report; interest has its own place. */
  private void fromReport(int row, StageMoney s, SheetStyle money) {
    page.formula(row, 1, report(CostReportColumn.REVISED, row), s.budget(), money);
    page.formula(
        row,
        2,
        "IF($D" + row + "+$E" + row + "=0,0,$D" + row + "/($D" + row + "+$E" + row + "))",
        s.done(),
        page.number("0%"));
    page.formula(row, 3, report(CostReportColumn.IN_PLACE, row), s.inPlace(), money);
    page.formula(row, 4, report(CostReportColumn.TO_COMPLETE, row), s.toComplete(), money);
  }

  private String report(CostReportColumn column, int row) {
    int end = SheetCostReport.lastRow(run.plan.finance().status().orElseThrow());
    return "ROUND(SUMIFS("
        + column.rows(Addresses.FIRST_ROW, end)
        + ","
        + CostReportColumn.STAGE.rows(Addresses.FIRST_ROW, end)
        + ",$A"
        + row
        + ","
        + CostReportColumn.KIND.rows(Addresses.FIRST_ROW, end)
        + ",\"<>interest\"),"
        + run.minorDigits()
        + ")";
  }

  /** Live over the Cost plan; interest has its own place in the balance where it is left out. */
  private void budget(int row, StageMoney s, SheetStyle money) {
    var amounts = run.addresses.costColumn(CostPlanColumn.AMOUNT);
    var all =
        "SUMIFS(" + amounts + "," + run.addresses.costColumn(CostPlanColumn.STAGE) + ",$A" + row;
    var total = run.plan.estimate().byStage().get(s.stage());
    var interest =
        run.plan.estimate().lines().stream()
            .filter(l -> l.id().equals("interest") && l.stage() == s.stage())
            .map(l -> l.money())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    if (total.compareTo(s.budget()) == 0) {
      page.formula(row, 1, all + ")", s.budget(), money);
    } else if (total.subtract(interest).compareTo(s.budget()) == 0) {
      var without = "," + run.addresses.costColumn(CostPlanColumn.ID) + ",\"<>interest\")";
      page.formula(row, 1, all + without, s.budget(), money);
    } else {
      page.number(row, 1, s.budget(), money);
    }
  }

  private void balance() {
    var b = run.plan.finance().balance();
    var money = page.number(run.moneyFormat());
    page.text(Addresses.HEADER_ROW, LABEL, "Does the money finish the house", page.heading());
    page.text(
        Addresses.HEADER_ROW, VALUE, run.currency(), page.heading().aligned(SheetQuantities.RIGHT));
    int row = Addresses.FIRST_ROW;
    int undrawn = row + 1;
    planned(row, b, money);
    surplus(row + 5, undrawn, money);
    var interest = run.plan.finance().interest();
    value(row + 6, "Interest in the budget", interest.allowance(), money);
    value(row + 7, "Interest as the draws are planned", interest.charged(), money);
    value(row + 8, "Beyond the budget (below nothing: left of it)", interest.beyond(), money);
    value(row + 9, "Interest if it were added to the loan", interest.ifAdded(), money);
    var share = page.number("0.0%");
    int at = row + 10;
    if (b.loanToCost().isPresent()) value(at++, "Loan to cost", b.loanToCost().get(), share);
    if (b.loanToValue().isPresent()) value(at, "Loan to value", b.loanToValue().get(), share);
  }

  /** By the draws as planned: what is drawn by now and the interest need a new run. */
  private void planned(int row, Finance.Balance b, SheetStyle money) {
    var loan = run.loan(LoanQuestions.AMOUNT);
    var own = LoanTerms.of(run.plan.scope().loan(), run.minorDigits()).cash();
    live(row, "Loan", loan, b.loan(), money);
    live(
        row + 1,
        "Loan not yet drawn",
        loan + "-" + b.loan().subtract(b.undrawn()).toPlainString(),
        b.undrawn(),
        money);
    var spent = own.subtract(b.cash());
    live(
        row + 2,
        "Borrower's own cash",
        run.loan(LoanQuestions.CASH)
            + (spent.signum() < 0 ? "+" : "-")
            + spent.abs().toPlainString(),
        b.cash(),
        money);
    var stages =
        run.plan.finance().stages().stream()
            .map(StageMoney::toComplete)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    if (stages.compareTo(b.costToComplete()) == 0) {
      live(row + 3, "Cost to complete", "$E$2", b.costToComplete(), money);
    } else {
      value(row + 3, "Cost to complete", b.costToComplete(), money);
    }
    value(row + 4, "Interest to come", b.interestToCome(), money);
  }

  private void live(int row, String name, String formula, BigDecimal value, SheetStyle look) {
    page.text(row, LABEL, name, page.wrapped());
    page.formula(row, VALUE, "ROUND(" + formula + "," + run.minorDigits() + ")", value, look);
  }

  private void value(int row, String name, BigDecimal value, SheetStyle look) {
    page.text(row, LABEL, name);
    page.number(row, VALUE, value, look);
  }

  private void surplus(int row, int undrawnRow, SheetStyle money) {
    var b = run.plan.finance().balance();
    boolean lacking = b.surplus().signum() < 0;
    page.text(row, LABEL, "Money left over (below nothing: lacking)", page.plain().strong());
    var look = lacking ? money.strong().inInk(SheetStyle.STOP) : money.strong();
    var reckoned =
        b.undrawn().add(b.cash()).subtract(b.costToComplete()).subtract(b.interestToCome());
    if (reckoned.compareTo(b.surplus()) == 0) {
      int r = undrawnRow;
      page.formula(
          row,
          VALUE,
          "$H" + r + "+$H" + (r + 1) + "-$H" + (r + 2) + "-$H" + (r + 3),
          b.surplus(),
          look);
    } else {
      page.number(row, VALUE, b.surplus(), look);
    }
    page.text(
        row,
        VALUE + 1,
        lacking
            ? "The borrower must bring this much more."
            : "The money left covers what is to pay.",
        page.plain().strong().indented());
  }
}

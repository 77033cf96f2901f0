package cornerpost.workbook;

import cornerpost.finance.EarnedValue;
import cornerpost.finance.LoanStatus;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sheet Earned value: indices and estimates at completion, and the plan they rest on. */
final class SheetEarnedValue {
  private static final int PERIOD = 4;
  private static final int END = 5;
  private static final int PLANNED = 6;
  private static final int STAGES = 8;
  private static final int FIRST = Addresses.FIRST_ROW;

  private final ResultRun run;
  private final SheetPage page;
  private final LoanStatus status;
  private final EarnedValue value;
  private final int periods;
  private int row = FIRST;

  private SheetEarnedValue(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = run.page(ResultSheet.EARNED_VALUE);
    this.status = status;
    value = status.value();
    periods = status.plannedPeriods().ends().size();
  }

  static void write(ResultRun run) {
    run.status(ResultSheet.EARNED_VALUE).ifPresent(s -> new SheetEarnedValue(run, s).write());
  }

  /** The share of the work in place, from any sheet. */
  static String complete() {
    return "'Earned value'!$B$" + (FIRST + 4);
  }

  /** The cost index, from any sheet. */
  static String costIndex() {
    return "'Earned value'!$B$" + (FIRST + 7);
  }

  static String timeIndex() {
    return "'Earned value'!$B$" + (FIRST + 20);
  }

  private void write() {
    page.header(Addresses.HEADER_ROW, "Term", run.currency(), "How it comes about");
    page.headRight(Addresses.HEADER_ROW, 1);
    page.headIndented(Addresses.HEADER_ROW, 2);
    page.widths(40, 16, 58, 3, 8, 16, 16, 3);
    plan();
    figures();
    page.frame().freeze(1, Addresses.HEADER_ROW);
    SheetPrint.printed(page, PLANNED, Math.max(row - 1, FIRST + periods + 1));
  }

  // ---- the plan -----------------------------------------------------------------------------

  private void plan() {
    var p = status.plannedPeriods();
    page.text(Addresses.HEADER_ROW, PERIOD, "Period", page.heading());
    page.text(Addresses.HEADER_ROW, END, "Ends", page.heading());
    page.text(Addresses.HEADER_ROW, PLANNED, "Planned value", page.heading());
    page.headRight(Addresses.HEADER_ROW, PERIOD, END, PLANNED);
    int end = SheetCostReport.lastRow(status);
    var kinds = CostReportColumn.KIND.rows(FIRST, end);
    var block = new StageParts(run, page, STAGES, p.stages().size());
    for (int s = 0; s < p.stages().size(); s++) {
      var stage = p.stages().get(s);
      block.stage(
          s,
          "Planned by then: " + stage.label(),
          14,
          "ROUND(SUMIFS("
              + CostReportColumn.REVISED.rows(FIRST, end)
              + ","
              + CostReportColumn.STAGE.rows(FIRST, end)
              + ","
              + Addresses.quoted(stage.label())
              + ","
              + kinds
              + ",\"<>contingency\","
              + kinds
              + ",\"<>interest\"),"
              + run.minorDigits()
              + ")",
          p.budgets().get(s));
    }
    for (int k = 0; k < periods; k++) {
      int at = FIRST + k;
      page.number(at, PERIOD, k + 1, page.number("0"));
      page.date(at, END, p.ends().get(k), page.number("d mmm yyyy"));
      planned(block, at, p.values().get(k), p.parts().get(k));
    }
    int now = FIRST + periods + 1;
    page.text(now, PERIOD, "Now", page.plain().strong());
    page.date(now, END, status.facts().status(), page.number("d mmm yyyy"));
    planned(block, now, p.valueNow(), p.now());
  }

  private void planned(StageParts block, int at, BigDecimal value, List<BigDecimal> parts) {
    block.parts(at, parts);
    page.formula(at, PLANNED, block.sum(at), value, page.number(run.moneyFormat()));
  }

  // ---- the terms ----------------------------------------------------------------------------

  private void figures() {
    int last = FIRST + periods - 1;
    int end = SheetCostReport.lastRow(status);
    var pv = "$G$" + FIRST + ":$G$" + last;
    int budget =
        money(
            "Budget at completion (BAC)",
            "$G$" + last,
            value.budget(),
            "revised budget of all work; contingency and interest left out");
    int planned =
        money(
            "Planned value (PV)",
            "$G$" + (last + 2),
            value.planned(),
            "of the work that should be in place now, by "
                + status
                    .plannedPeriods()
                    .baseline()
                    .map(b -> "the plan kept as '" + b + "'")
                    .orElse("the plan before any progress"));
    int earned =
        money(
            "Earned value (EV)",
            working(CostReportColumn.EARNED, end),
            value.earned(),
            "share of the work in place x revised budget, line by line");
    int actual =
        money(
            "Actual cost (AC)",
            "ROUND("
                + working(CostReportColumn.TO_DATE, end)
                + "-"
                + working(CostReportColumn.STORED, end)
                + ","
                + run.minorDigits()
                + ")",
            value.actual(),
            "cost to date less materials not built in yet");
    share("Complete", over(earned, budget), value.complete(), "EV / BAC");
    money(
        "Cost variance (CV)",
        cents(b(earned) + "-" + b(actual)),
        value.costVariance(),
        "EV - AC; below nothing: dearer than budgeted");
    money(
        "Schedule variance (SV)",
        cents(b(earned) + "-" + b(planned)),
        value.scheduleVariance(),
        "EV - PV; below nothing: behind. It goes to nothing at the end of a late job too");
    int cpi =
        index("Cost performance index (CPI)", over(earned, actual), value.costIndex(), "EV / AC");
    int spi =
        index(
            "Schedule performance index (SPI)",
            over(earned, planned),
            value.scheduleIndex(),
            "EV / PV");
    int asSoFar =
        optional(
            "Estimate at completion, as so far",
            "IF(ISNUMBER("
                + b(cpi)
                + "),IF("
                + b(cpi)
                + "=0,\"n/a\","
                + b(budget)
                + "/"
                + b(cpi)
                + "),\"n/a\")",
            value.atCompletionAsSoFar(),
            "BAC / CPI");
    money(
        "Estimate at completion, as budgeted",
        cents(b(actual) + "+" + b(budget) + "-" + b(earned)),
        value.atCompletionAsBudgeted(),
        "AC + BAC - EV");
    optional(
        "Estimate at completion, cost and time as so far",
        "IF(AND(ISNUMBER("
            + b(cpi)
            + "),ISNUMBER("
            + b(spi)
            + ")),IF("
            + b(cpi)
            + "*"
            + b(spi)
            + "=0,\"n/a\","
            + b(actual)
            + "+("
            + b(budget)
            + "-"
            + b(earned)
            + ")/("
            + b(cpi)
            + "*"
            + b(spi)
            + ")),\"n/a\")",
        value.atCompletionByBoth(),
        "AC + (BAC - EV) / (CPI x SPI)");
    int report =
        money(
            "Estimate at completion, cost report",
            working(CostReportColumn.AT_COMPLETION, end),
            status.workAtCompletion(),
            "cost to date and what remains at today's prices, line by line");
    optional(
        "Estimate to complete, as so far",
        "IF(ISNUMBER(" + b(asSoFar) + ")," + b(asSoFar) + "-" + b(actual) + ",\"n/a\")",
        value.toGoAsSoFar(),
        "estimate at completion - AC");
    optional(
        "Variance at completion, as so far",
        "IF(ISNUMBER(" + b(asSoFar) + ")," + b(budget) + "-" + b(asSoFar) + ",\"n/a\")",
        value.varianceAsSoFar(),
        "BAC - estimate at completion");
    index(
        "To-complete index for the budget",
        "IF(ABS("
            + b(budget)
            + "-"
            + b(actual)
            + ")<0.005,\"n/a\",("
            + b(budget)
            + "-"
            + b(earned)
            + ")/("
            + b(budget)
            + "-"
            + b(actual)
            + "))",
        value.toCompleteIndex(),
        "(BAC - EV) / (BAC - AC); below nothing: cannot be met");
    index(
        "To-complete index for the cost report",
        "IF(ABS("
            + b(report)
            + "-"
            + b(actual)
            + ")<0.005,\"n/a\",("
            + b(budget)
            + "-"
            + b(earned)
            + ")/("
            + b(report)
            + "-"
            + b(actual)
            + "))",
        value.toCompleteIndex(status.workAtCompletion()),
        "(BAC - EV) / (estimate - AC)");
    int time =
        plain(
            "Time gone (AT), periods",
            value.time().toPlainString(),
            value.time(),
            "months from the planned start");
    var c = "COUNTIF(" + pv + ",\"<=\"&" + b(earned) + ")";
    var before = "IF(" + c + "=0,0,INDEX(" + pv + "," + c + "))";
    // MIN keeps the index within the list where all of it is earned.
    var next = "INDEX(" + pv + ",MIN(" + periods + "," + c + "+1))";
    int es =
        plain(
            "Earned schedule (ES), periods",
            "IF(" + c + ">=" + periods + "," + periods + "," + c + "+MAX(0," + b(earned) + "-"
                + before + ")/(" + next + "-" + before + "))",
            value.schedule(),
            "whole periods whose plan is earned, and the part of the next one");
    plain("ES - AT, periods", b(es) + "-" + b(time), value.timeVariance(), "below nothing: behind");
    int spit =
        index("ES / AT", over(es, time), value.timeIndex(), "unlike SPI it stays true to the end");
    plainOptional(
        "Duration at that pace, periods",
        "IF(ISNUMBER("
            + b(spit)
            + "),IF("
            + b(spit)
            + "=0,\"n/a\","
            + periods
            + "/"
            + b(spit)
            + "),\"n/a\")",
        value.durationAtCompletion(),
        "planned " + periods + " / (ES / AT)");
    index(
        "Pace to end as planned",
        "IF(ABS("
            + periods
            + "-"
            + b(time)
            + ")<0.0000001,\"n/a\",("
            + periods
            + "-"
            + b(es)
            + ")/("
            + periods
            + "-"
            + b(time)
            + "))",
        value.toCompleteTimeIndex(),
        "(planned - ES) / (planned - AT)");
  }

  private String working(CostReportColumn column, int end) {
    var kinds = CostReportColumn.KIND.rows(FIRST, end);
    var sums = new ArrayList<String>();
    for (var kind : List.of("work", "time", "on top")) {
      sums.add("SUMIFS(" + column.rows(FIRST, end) + "," + kinds + ",\"" + kind + "\")");
    }
    return cents(String.join("+", sums));
  }

  private static String b(int at) {
    return "$B$" + at;
  }

  private static String over(int a, int b) {
    return "IF(" + b(b) + "=0,\"n/a\"," + b(a) + "/" + b(b) + ")";
  }

  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }

  private int money(String name, String formula, BigDecimal amount, String how) {
    return put(name, formula, Optional.of(amount), run.moneyFormat(), how);
  }

  private int optional(String name, String formula, Optional<BigDecimal> amount, String how) {
    return put(name, formula, amount, run.moneyFormat(), how);
  }

  private int share(String name, String formula, Optional<BigDecimal> share, String how) {
    return put(name, formula, share, "0.0%", how);
  }

  private int index(String name, String formula, Optional<BigDecimal> index, String how) {
    return put(name, formula, index, "0.000", how);
  }

  private int plain(String name, String formula, BigDecimal number, String how) {
    return put(name, formula, Optional.of(number), "0.00", how);
  }

  private int plainOptional(String name, String formula, Optional<BigDecimal> number, String how) {
    return put(name, formula, number, "0.00", how);
  }

  private int put(
      String name, String formula, Optional<BigDecimal> number, String format, String how) {
    page.text(row, 0, name, page.plain().strong());
    var look = page.number(format);
    if (number.isPresent()) page.formula(row, 1, formula, number.get(), look);
    else page.formula(row, 1, formula, "n/a", look);
    page.text(row, 2, how, page.wrapped().indented().inInk(SheetStyle.QUIET));
    return row++;
  }
}

package cornerpost.workbook;

import cornerpost.measure.Unit;
import cornerpost.plan.DatedTask;
import cornerpost.price.CostLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Map;
import java.util.TreeMap;

/** Sheet Schedule: every task with its dates, floats and what it waits for. */
final class SheetSchedule {
  private static final String[] COLUMNS = {
    "Id",
    "Stage",
    "Task",
    "Start",
    "Finish",
    "Duration",
    "Total float",
    "Free float",
    "Drives move-in",
    "State",
    "Waits for",
    "Who",
    "Crews",
    "Calendar",
    "Hours",
    "Cost before price rise, tax and contingency",
    "Early start",
    "Early finish",
    "Late start",
    "Late finish",
    "On the network's longest path",
    "Share of trials it drives",
    "Why this long",
    "Float in the planned order",
    "Days move-in moves if 1 day late",
    "If 5 days late",
    "If 10 days late"
  };

  private SheetSchedule() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.SCHEDULE);
    page.header(Addresses.HEADER_ROW, COLUMNS);
    page.headIndented(Addresses.HEADER_ROW, 8);
    page.headRight(Addresses.HEADER_ROW, 3, 4, 5, 6, 7, 14, 15, 16, 17, 18, 19, 21, 23, 24, 25, 26);
    page.widths(
        30, 18, 38, 15, 15, 9, 8, 8, 9, 10, 40, 9, 20, 14, 9, 13, 16, 16, 16, 16, 10, 9, 40, 10, 10,
        9, 9);
    int row = Addresses.FIRST_ROW;
    for (var t : run.plan.programme().tasks()) write(run, page, row++, t);
    SheetTables.finish(page, row - 1, COLUMNS.length, 3);
  }

  private static void write(ResultRun run, SheetPage page, int row, DatedTask t) {
    var strong = t.drivesMoveIn() ? page.plain().strong() : page.plain();
    var date = page.dateLook();
    var days = page.number("#,##0.##").formatted("0.0");
    page.text(row, 0, t.id(), strong);
    page.text(row, 1, t.task().stage().label(), page.wrapped());
    page.text(row, 2, t.task().name(), strong.wrapping());
    page.date(row, 3, t.firstDay(), date);
    page.date(row, 4, t.lastDay(), date);
    page.number(row, 5, t.durationDays(), days);
    page.number(row, 6, t.totalFloatDays(), days);
    page.number(row, 7, t.freeFloatDays(), days);
    page.text(row, 8, t.drivesMoveIn() ? "yes" : "no", strong.indented());
    page.text(row, 9, t.done() ? "done" : t.started() ? "under way" : "to do");
    page.text(row, 10, t.waitsFor(), page.wrapped());
    t.waitsForIds().stream()
        .findFirst()
        .flatMap(run.addresses::taskRow)
        .ifPresent(r -> page.link(row, 10, ResultSheet.SCHEDULE, r));
    page.text(row, 11, t.task().party().map(p -> p.label()).orElse(""));
    page.text(row, 12, crews(t.task().demands()), page.wrapped());
    page.text(row, 13, t.task().elapsed() ? "elapsed days" : t.task().calendar(), page.wrapped());
    hours(run, page, row, t);
    cost(run, page, row, t);
    page.date(row, 16, t.earlyFirstDay(), date);
    page.date(row, 17, t.earlyLastDay(), date);
    page.date(row, 18, t.lateFirstDay(), date);
    page.date(row, 19, t.lateLastDay(), date);
    page.text(row, 20, t.critical() ? "yes" : "no");
    var share = run.plan.risk().drivesShare().get(t.id());
    if (share != null) page.number(row, 21, share, page.number("0%"));
    page.text(row, 22, t.task().why());
    var slip = run.plan.programme().slippage().tasks().get(t.id());
    if (slip == null) return;
    page.number(row, 23, slip.floatDays(), days);
    for (int k = 0; k < slip.finishMoves().size(); k++) {
      page.number(row, 24 + k, slip.finishMoves().get(k), page.number("0"));
    }
  }

  private static String crews(Map<String, Integer> demands) {
    var parts = new ArrayList<String>();
    new TreeMap<>(demands).forEach((name, n) -> parts.add(n == 1 ? name : n + " x " + name));
    return String.join(", ", parts);
  }

  private static void hours(ResultRun run, SheetPage page, int row, DatedTask t) {
    double sum = 0;
    for (var l : run.addresses.linesOfTask(t.id())) {
      if (l.unit().equals(Unit.HOUR)) sum += l.quantity().asDouble(Unit.HOUR);
    }
    var look = page.number("#,##0.0");
    if (Math.abs(sum - t.task().hours()) <= 1e-6 * Math.max(1, sum)) {
      page.formula(
          row,
          14,
          "SUMIFS("
              + run.addresses.costColumn(CostPlanColumn.QUANTITY)
              + ","
              + run.addresses.costColumn(CostPlanColumn.TASK)
              + ",$A"
              + row
              + ","
              + run.addresses.costColumn(CostPlanColumn.UNIT)
              + ",\"h\")",
          sum,
          look);
    } else {
      page.number(row, 14, t.task().hours(), look);
    }
  }

  private static void cost(ResultRun run, SheetPage page, int row, DatedTask t) {
    var sum =
        run.addresses.linesOfTask(t.id()).stream()
            .map(CostLine::money)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    page.formula(
        row,
        15,
        "SUMIFS("
            + run.addresses.costColumn(CostPlanColumn.AMOUNT)
            + ","
            + run.addresses.costColumn(CostPlanColumn.TASK)
            + ",$A"
            + row
            + ")",
        sum,
        page.number("#,##0"));
  }
}

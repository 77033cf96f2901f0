package cornerpost.workbook;

import cornerpost.plan.DatedTask;
import cornerpost.work.WorkLink;
import cornerpost.work.WorkTask;
import java.util.stream.Collectors;

/** Sheet Inspections: the hold points, what they wait for and what waits for them. */
final class SheetInspections {
  private SheetInspections() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.INSPECTIONS);
    page.header(
        Addresses.HEADER_ROW,
        "Id",
        "Stage",
        "Inspection",
        "Ask for it on",
        "Visit",
        "Float in the planned order, days",
        "Total float by the links alone, days",
        "State",
        "Waits for",
        "Work that waits for it",
        "What it is");
    page.headRight(Addresses.HEADER_ROW, 3, 4, 5, 6);
    page.headIndented(Addresses.HEADER_ROW, 7);
    page.height(Addresses.HEADER_ROW, 44); // three lines
    page.widths(24, 18, 32, 15, 15, 13, 13, 9, 32, 40, 32);
    int row = Addresses.FIRST_ROW;
    for (var t : run.plan.programme().tasks()) {
      if (t.task().kind() == WorkTask.Kind.INSPECTION) write(run, page, row++, t);
    }
    if (row == Addresses.FIRST_ROW) page.text(2, 2, "No inspection is planned.");
    SheetTables.finish(page, row - 1, 11, 1);
  }

  private static void write(ResultRun run, SheetPage page, int row, DatedTask t) {
    page.text(row, 0, t.id(), page.wrapped());
    run.addresses.taskRow(t.id()).ifPresent(r -> page.link(row, 0, ResultSheet.SCHEDULE, r));
    page.text(row, 1, t.task().stage().label(), page.wrapped());
    page.text(row, 2, t.task().name(), t.drivesMoveIn() ? page.wrapped().strong() : page.wrapped());
    page.date(row, 3, t.firstDay(), page.dateLook());
    page.date(row, 4, t.lastDay(), page.dateLook());
    var slip = run.plan.programme().slippage().tasks().get(t.id());
    if (slip != null) page.number(row, 5, slip.floatDays(), page.number("0.0"));
    page.number(row, 6, t.totalFloatDays(), page.number("0.0"));
    page.text(row, 7, t.done() ? "done" : "to do", page.plain().indented());
    page.text(row, 8, t.waitsFor(), page.wrapped());
    var after =
        run.plan.work().links().stream()
            .filter(l -> l.before().equals(t.id()))
            .map(WorkLink::after)
            .distinct()
            .map(id -> run.plan.work().task(id).map(WorkTask::name).orElse(id))
            .collect(Collectors.joining(", "));
    page.text(row, 9, after, page.wrapped());
    page.text(row, 10, t.task().why(), page.wrapped());
  }
}

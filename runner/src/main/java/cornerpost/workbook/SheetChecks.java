package cornerpost.workbook;

import cornerpost.check.Check;
import cornerpost.plan.Plan;
import java.util.Comparator;
import java.util.List;

/** Sheet Checks: advice by severity, each with its source and the cells it is about. */
final class SheetChecks {
  private SheetChecks() {}

  /** The gravest first, then by topic, else in the order they were made. */
  static List<Check> sorted(Plan plan) {
    return plan.checks().stream()
        .sorted(Comparator.comparing(Check::severity).reversed().thenComparing(Check::topic))
        .toList();
  }

  static SheetStyle stop(SheetPage page) {
    return page.plain().strong().inInk(SheetStyle.STOP);
  }

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.CHECKS);
    page.header(
        Addresses.HEADER_ROW,
        "Id",
        "Severity",
        "About",
        "What was found",
        "Source",
        "Cells",
        "Tasks");
    page.widths(26, 17, 16, 80, 40, 24, 24);
    int row = Addresses.FIRST_ROW;
    for (var c : sorted(run.plan)) {
      boolean stop = c.severity() == Check.Severity.STOP;
      boolean note = c.severity() == Check.Severity.NOTE;
      page.text(row, 0, c.id(), page.wrapped());
      page.text(
          row,
          1,
          c.severity().label(),
          stop ? stop(page) : note ? page.plain() : page.plain().strong());
      page.text(row, 2, c.topic().label(), page.wrapped());
      page.text(row, 3, c.message(), page.wrapped());
      page.text(row, 4, c.source(), page.wrapped());
      page.text(row, 5, String.join(", ", c.cells()), page.wrapped());
      linkCell(run, page, row, c);
      page.text(row, 6, String.join(", ", c.tasks()), page.wrapped());
      int at = row;
      c.tasks().stream()
          .findFirst()
          .flatMap(run.addresses::taskRow)
          .ifPresent(r -> page.link(at, 6, ResultSheet.SCHEDULE, r));
      row++;
    }
    for (var f : run.plan.programme().findings()) {
      page.text(row, 0, "network/" + f.check(), page.wrapped());
      page.text(row, 1, "note");
      page.text(row, 2, Check.Topic.TIME.label(), page.wrapped());
      page.text(row, 3, f.message(), page.wrapped());
      page.text(row, 6, String.join(", ", f.ids()), page.wrapped());
      row++;
    }
    for (var p : run.plan.problems()) {
      page.text(row, 0, "remark", page.wrapped());
      page.text(row, 1, "note");
      page.text(row, 2, "The input", page.wrapped());
      page.text(row, 3, p.found() + "; " + p.expected(), page.wrapped());
      page.text(row, 5, p.sheet() + (p.cell().isEmpty() ? "" : "!" + p.cell()), page.wrapped());
      row++;
    }
    SheetTables.finish(page, row - 1, 7, 1);
  }

  private static void linkCell(ResultRun run, SheetPage page, int row, Check c) {
    if (c.cells().isEmpty()) return;
    var cell = c.cells().get(0);
    int mark = cell.lastIndexOf('!');
    boolean there = mark > 0 && run.workbook.sheet(cell.substring(0, mark)).isPresent();
    if (there && cell.substring(mark + 1).matches("[A-Z]{1,3}[0-9]{1,7}")) {
      page.link(row, 5, Addresses.choice(cell).replace("$", ""));
    }
  }
}

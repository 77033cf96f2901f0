package cornerpost.workbook;

import cornerpost.plan.EventPath;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;

/** Sheet Longest path: the steps from one event to another, with what drives each. */
final class SheetLongestPath {
  private static final int TASK = 2;
  private static final int FINISH = 5;
  private static final int WORKING = 8;
  private static final int ELAPSED = 9;
  private static final int COLUMNS = 11;

  private final ResultRun run;
  private final SheetPage page;
  private int row = Addresses.FIRST_ROW;

  private SheetLongestPath(ResultRun run) {
    this.run = run;
    page = run.page(ResultSheet.LONGEST_PATH);
  }

  static void write(ResultRun run) {
    new SheetLongestPath(run).write();
  }

  private void write() {
    page.header(
        Addresses.HEADER_ROW,
        "Step",
        "Id",
        "Task",
        "What drives it",
        "Start",
        "Finish",
        "Duration",
        "Counted in",
        "Working days",
        "Elapsed days",
        "Held longer by");
    page.headRight(Addresses.HEADER_ROW, 0, 4, FINISH, 6, WORKING, ELAPSED);
    page.headIndented(Addresses.HEADER_ROW, 1, 7, 10);
    page.widths(6, 24, 36, 44, 16, 16, 9, 23, 9, 9, 38);
    var path = run.plan.programme().path();
    if (path.steps().isEmpty()) {
      page.text(
          row,
          TASK,
          path.words().isEmpty() ? "No tasks are planned." : path.words(),
          page.plain().strong());
    } else {
      page.text(2, 0, path.words(), page.plain().strong());
      for (var s : path.steps()) write(s);
    }
    SheetTables.finish(page, row - 1, COLUMNS, TASK + 1);
    if (!path.steps().isEmpty()) total(path);
  }

  private void write(EventPath.Step s) {
    boolean first = row == Addresses.FIRST_ROW;
    var date = page.dateLook();
    var days = page.number("0.0");
    page.number(row, 0, row - Addresses.HEADER_ROW, page.number("0"));
    page.text(row, 1, s.id(), page.wrapped().indented());
    run.addresses.taskRow(s.id()).ifPresent(r -> page.link(row, 1, ResultSheet.SCHEDULE, r));
    page.text(row, TASK, s.name(), page.wrapped().strong());
    page.text(row, 3, s.driver(), page.wrapped());
    page.date(row, 4, s.firstDay(), date);
    page.date(row, FINISH, s.lastDay(), date);
    page.number(row, 6, s.lastsDays(), days);
    page.text(row, 7, s.calendar(), page.wrapped().indented());
    page.number(row, WORKING, s.workingDays(), days);
    var since = first ? "E" + row : "F" + (row - 1);
    page.formula(row, ELAPSED, "F" + row + "-" + since, s.elapsedDays(), page.number("0"));
    page.text(row, 10, s.heldBy(), page.wrapped().indented());
    row++;
  }

  private void total(EventPath path) {
    var look = page.plain().strong().ruledTop(BorderStyle.THIN, SheetStyle.INK);
    for (int c = 0; c < COLUMNS; c++) page.cell(row, c, look);
    page.text(row, TASK, "From the first to the last", look);
    sum(WORKING, path.workingDays().doubleValue(), look, "0.0");
    sum(ELAPSED, path.elapsedDays(), look, "0");
  }

  private void sum(int column, double value, SheetStyle look, String format) {
    var letter = SheetPage.letter(column);
    page.formula(
        row,
        column,
        "SUM(" + letter + Addresses.FIRST_ROW + ":" + letter + (row - 1) + ")",
        value,
        look.formatted(format).aligned(HorizontalAlignment.RIGHT));
  }
}

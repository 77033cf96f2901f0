package cornerpost.workbook;

import cornerpost.plan.Replanning.CrewAhead;
import cornerpost.plan.Replanning.Item;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Sheet Look-ahead: three weeks by crew, on one page. */
final class SheetLookAhead {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

  private SheetLookAhead() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.LOOK_AHEAD);
    page.header(
        Addresses.HEADER_ROW,
        "Crew",
        "Id",
        "Task",
        "First day",
        "Last day",
        "Booked for",
        "State",
        "What must be ready");
    page.headRight(Addresses.HEADER_ROW, 3, 4, 5);
    page.headIndented(Addresses.HEADER_ROW, 6, 7);
    page.widths(32, 28, 40, 16, 16, 16, 26, 70);
    int row = Addresses.FIRST_ROW;
    var ahead = run.plan.replanning().ahead();
    if (ahead.isPresent()) {
      page.text(
          2,
          0,
          ahead.get().from().format(DAY) + " to " + ahead.get().to().format(DAY),
          page.plain().strong());
      for (var c : ahead.get().crews()) {
        for (var i : c.items()) write(run, page, row++, c, i);
      }
    }
    if (row == Addresses.FIRST_ROW) page.text(row, 2, "Nothing is planned in these weeks.");
    SheetTables.finish(page, row - 1, 8, 1);
  }

  private static void write(ResultRun run, SheetPage page, int row, CrewAhead c, Item i) {
    page.text(row, 0, c.crew(), page.wrapped());
    page.text(row, 1, i.id(), page.wrapped());
    run.addresses.taskRow(i.id()).ifPresent(r -> page.link(row, 1, ResultSheet.SCHEDULE, r));
    page.text(row, 2, i.name(), i.drives() ? page.wrapped().strong() : page.wrapped());
    page.date(row, 3, i.start(), page.dateLook());
    page.date(row, 4, i.finish(), page.dateLook());
    i.booked().ifPresent(d -> page.date(row, 5, d, page.dateLook()));
    page.text(
        row, 6, i.state() + (i.drives() ? ", drives move-in" : ""), page.wrapped().indented());
    page.text(row, 7, String.join("; ", i.ready()), page.wrapped().indented());
  }
}

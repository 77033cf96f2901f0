package cornerpost.workbook;

import cornerpost.plan.Replanning.Choice;
import cornerpost.plan.Replanning.Move;
import cornerpost.plan.Replanning.Resequencing;
import java.time.LocalDate;

/** Sheet Resequencing: what to pull forward, who stands idle, and two orders of the work. */
final class SheetResequencing {
  private final ResultRun run;
  private final SheetPage page;
  private int row = Addresses.FIRST_ROW;

  private SheetResequencing(ResultRun run) {
    this.run = run;
    page = run.page(ResultSheet.RESEQUENCING);
  }

  static void write(ResultRun run) {
    new SheetResequencing(run).write();
  }

  private void write() {
    page.header(
        Addresses.HEADER_ROW,
        "What for",
        "Id",
        "Task or crew",
        "Crew",
        "From",
        "To",
        "Days later",
        "In words");
    page.headRight(Addresses.HEADER_ROW, 4, 5, 6);
    page.headIndented(Addresses.HEADER_ROW, 7);
    page.widths(26, 26, 36, 22, 16, 16, 10, 76);
    var found = run.plan.replanning().resequencing();
    if (found.isEmpty()) page.text(row, 2, "Nothing is late: the plan is the order to work in.");
    else write(found.get());
    SheetTables.finish(page, row - 1, 8, 1);
  }

  private void write(Resequencing r) {
    line("Present order", "Move-in", "Every crew keeps its order: " + Days.shown(r.present()));
    choice("Earliest move-in", r.soonest());
    choice("Fewest bookings changed", r.fewest());
    if (r.pull().isEmpty()) line("Pull forward", "nothing", "No crew can begin anything sooner.");
    for (var m : r.pull()) {
      move("Pull forward", m, "could begin sooner, by itself, while waiting");
    }
    for (var i : r.idle()) {
      page.text(row, 0, "Idle crew", page.wrapped());
      page.text(row, 2, i.crew(), page.wrapped());
      page.text(row, 3, i.crew(), page.wrapped());
      page.date(row, 4, i.from(), page.dateLook());
      page.date(row, 5, i.to(), page.dateLook());
      page.text(
          row++,
          7,
          i.workingDays()
              + (i.workingDays() == 1 ? " day" : " days")
              + " without work; was: "
              + i.was(),
          page.wrapped().indented());
    }
  }

  private void choice(String what, Choice c) {
    line(what, "Move-in", Days.shown(c.moveIn()) + "; " + c.changes() + "; " + c.proof());
    for (var m : c.moves()) move(what, m, m.crews().isEmpty() ? "" : "same crew");
  }

  private void line(String what, String subject, String words) {
    page.text(row, 0, what, page.wrapped().strong());
    page.text(row, 2, subject, page.wrapped().strong());
    page.text(row++, 7, words, page.wrapped().strong().indented());
  }

  private void move(String what, Move m, String how) {
    int at = row;
    page.text(row, 0, what, page.wrapped());
    page.text(row, 1, m.id(), page.wrapped());
    run.addresses.taskRow(m.id()).ifPresent(r -> page.link(at, 1, ResultSheet.SCHEDULE, r));
    page.text(row, 2, m.name(), page.wrapped());
    page.text(row, 3, m.crews(), page.wrapped());
    page.date(row, 4, m.from(), page.dateLook());
    page.date(row, 5, m.to(), page.dateLook());
    page.formula(row, 6, "F" + row + "-E" + row, m.days(), page.number("0"));
    page.text(row++, 7, words(m, how), page.wrapped().indented());
  }

  private static String words(Move m, String how) {
    return m.name()
        + ": from "
        + day(m.from())
        + " to "
        + day(m.to())
        + (how.isEmpty() ? "" : ", " + how);
  }

  private static String day(LocalDate d) {
    return Days.shown(d);
  }
}

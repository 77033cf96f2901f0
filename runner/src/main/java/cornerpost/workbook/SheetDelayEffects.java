package cornerpost.workbook;

/** Sheet Delay effects: what each delay moves, and what it costs. */
final class SheetDelayEffects {
  private SheetDelayEffects() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.DELAY_EFFECTS);
    page.header(
        Addresses.HEADER_ROW,
        "Event",
        "Name",
        "Later by, days",
        "Cause",
        "Borne by",
        "Move-in later by, days",
        "Move-in then",
        "Costs, " + run.currency(),
        "What happens");
    page.headRight(Addresses.HEADER_ROW, 2, 5, 6, 7);
    page.widths(22, 36, 10, 24, 18, 12, 16, 14, 80);
    int row = Addresses.FIRST_ROW;
    for (var d : run.plan.finance().delays()) {
      int at = row;
      page.text(row, 0, d.event(), page.wrapped());
      run.addresses.taskRow(d.event()).ifPresent(r -> page.link(at, 0, ResultSheet.SCHEDULE, r));
      page.text(row, 1, d.eventName(), page.wrapped());
      page.number(row, 2, d.days(), page.number("0"));
      page.text(row, 3, d.cause(), page.wrapped().indented());
      page.text(row, 4, d.borneBy(), page.wrapped());
      page.number(row, 5, d.moveInDays(), page.number("0").strong());
      page.date(row, 6, d.moveIn(), page.dateLook());
      page.number(row, 7, d.cost(), page.number(run.moneyFormat()));
      page.text(row, 8, d.words(), page.wrapped().indented());
      row++;
    }
    if (row == Addresses.FIRST_ROW) page.text(2, 1, "No delay is entered.");
    SheetTables.finish(page, row - 1, 9, 1);
  }
}

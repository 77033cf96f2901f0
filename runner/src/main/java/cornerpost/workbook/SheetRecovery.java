package cornerpost.workbook;

import cornerpost.plan.Replanning.Recovery;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Sheet Recovery: what each day won back costs. */
final class SheetRecovery {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

  private SheetRecovery() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.RECOVERY);
    page.header(
        Addresses.HEADER_ROW,
        "Move-in then",
        "Days won",
        "Costs, " + run.currency(),
        "Costs so far",
        "Delay saved, " + run.currency(),
        "What is done for it");
    page.headRight(Addresses.HEADER_ROW, 0, 1, 2, 3, 4);
    page.headIndented(Addresses.HEADER_ROW, 5);
    page.widths(18, 12, 16, 18, 20, 100);
    int row = Addresses.FIRST_ROW;
    var found = run.plan.replanning().recovery();
    if (found.isEmpty()) {
      page.text(row, 5, "No day is to be won back.");
      SheetTables.finish(page, row - 1, 6, 1);
      return;
    }
    var r = found.get();
    page.text(2, 0, sentence(r), page.plain().strong());
    var money = page.number(run.moneyFormat());
    var day = run.plan.replanning().dayCost().aDay();
    for (var s : r.steps()) {
      page.date(row, 0, s.moveIn(), page.dateLook());
      page.number(row, 1, s.days(), page.number("0"));
      page.number(row, 2, s.cost(), money);
      page.formula(row, 3, "SUM($C$" + Addresses.FIRST_ROW + ":$C" + row + ")", s.total(), money);
      page.number(row, 4, day.multiply(java.math.BigDecimal.valueOf(s.days())), money);
      page.text(row, 5, String.join("; ", s.measures()), page.wrapped().indented());
      row++;
    }
    SheetTables.finish(page, row - 1, 6, 1);
    row++;
    if (!r.measures().isEmpty()) {
      page.text(row++, 5, "All of it, task by task", page.plain().strong().indented());
    }
    for (var m : r.measures()) {
      page.number(row, 2, m.cost(), money);
      page.text(
          row++,
          5,
          m.name()
              + ": "
              + m.what()
              + (m.days().signum() > 0 ? ", " + m.days().toPlainString() + " working days" : ""),
          page.wrapped().indented());
    }
  }

  private static String sentence(Recovery r) {
    var from =
        "Move-in planned on " + r.from().format(DAY) + ", wanted on " + r.wanted().format(DAY);
    return from
        + (r.reached() ? ": can be won back." : ": cannot all be won back by these measures.");
  }
}

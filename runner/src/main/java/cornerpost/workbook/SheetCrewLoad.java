package cornerpost.workbook;

import cornerpost.plan.Programme.CrewDay;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Sheet Crew load: days of work of each crew by weeks, the busiest crew first. */
final class SheetCrewLoad {
  private static final int MOST_IN_CHART = 6;
  private static final int CHART_COLUMNS = 12;
  private static final int CHART_ROWS = 24;
  // Greys and patterns: the colours mean money, float and hold points in other charts.
  private static final List<ChartXml.Paint> PAINTS =
      List.of(
          ChartXml.Paint.solid(SheetStyle.QUIET),
          ChartXml.Paint.hatched(SheetStyle.INK),
          ChartXml.Paint.solid(SheetStyle.RULE),
          ChartXml.Paint.dotted(SheetStyle.INK),
          ChartXml.Paint.solid(SheetStyle.INK),
          ChartXml.Paint.crossed(SheetStyle.QUIET));

  private final ResultRun run;
  private final SheetPage page;
  private final Map<LocalDate, Map<String, CrewDay>> byWeek = new TreeMap<>();
  private final List<String> crews = new ArrayList<>();

  private SheetCrewLoad(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.CREW_LOAD);
    var total = new HashMap<String, BigDecimal>();
    for (var d : run.plan.programme().crewLoad()) {
      byWeek.computeIfAbsent(d.week(), w -> new HashMap<>()).put(d.crew(), d);
      total.merge(d.crew(), d.personDays(), BigDecimal::add);
    }
    new TreeSet<>(total.keySet()).forEach(crews::add);
    crews.removeIf(c -> total.get(c).signum() == 0);
    crews.sort((a, b) -> total.get(b).compareTo(total.get(a))); // stable: names break ties
  }

  static void write(ResultRun run) {
    new SheetCrewLoad(run).write();
  }

  private void write() {
    var names = new ArrayList<String>();
    names.add("Week of");
    names.add("All crews");
    names.addAll(crews);
    for (var c : crews) names.add(c + ", available");
    page.header(Addresses.HEADER_ROW, names.toArray(String[]::new));
    page.width(0, 17);
    for (int c = 1; c < names.size(); c++) page.width(c, 11);
    for (int c = 0; c < names.size(); c++) page.headRight(Addresses.HEADER_ROW, c);
    page.height(Addresses.HEADER_ROW, 44);
    page.text(
        2,
        1,
        "Days of work of one person. Bold: more than the crew has.",
        page.plain().inInk(SheetStyle.QUIET));
    int row = Addresses.FIRST_ROW;
    for (var e : byWeek.entrySet()) week(row++, e.getKey(), e.getValue());
    SheetTables.finish(page, row - 1, names.size(), 1);
    // What is available is for the screen; the chart stands under the table and prints with it.
    SheetPrint.printed(page, Math.max(CHART_COLUMNS - 1, 1 + crews.size()), row + CHART_ROWS + 1);
    chart(row - 1);
  }

  private void week(int row, LocalDate week, Map<String, CrewDay> days) {
    page.date(row, 0, week, page.dateLook());
    var sum = BigDecimal.ZERO;
    for (int i = 0; i < crews.size(); i++) {
      var day = days.get(crews.get(i));
      if (day == null) continue;
      boolean over = day.personDays().compareTo(day.available()) > 0;
      var look = page.number("#,##0.0");
      if (day.personDays().signum() > 0) {
        var strong = look.strong().inInk(SheetStyle.STOP);
        page.number(row, 2 + i, day.personDays(), over ? strong : look);
      }
      page.number(row, 2 + crews.size() + i, day.available(), look.inInk(SheetStyle.QUIET));
      sum = sum.add(day.personDays());
    }
    if (crews.isEmpty()) return;
    page.formula(
        row,
        1,
        "SUM($C" + row + ":$" + SheetPage.letter(1 + crews.size()) + row + ")",
        sum,
        page.number("#,##0.0"));
  }

  private void chart(int last) {
    if (crews.isEmpty()) return;
    var chart =
        new ChartXml("Crew load, the busiest crews", "days of work a week", "#,##0").stacked();
    var weeks = byWeek.keySet().stream().map(Days::shown).toList();
    for (int i = 0; i < Math.min(MOST_IN_CHART, crews.size()); i++) {
      int at = i;
      var numbers =
          byWeek.values().stream()
              .map(w -> w.get(crews.get(at)))
              .map(d -> d == null ? 0.0 : d.personDays().doubleValue())
              .toList();
      chart.bar(
          new ChartXml.Series(
              crews.get(i),
              reference("A", last),
              weeks,
              reference(SheetPage.letter(2 + i), last),
              numbers,
              PAINTS.get(i)));
    }
    SheetCharts.put(
        run,
        ResultSheet.CREW_LOAD,
        "Crew load",
        new SheetCharts.Place(0, last + 1, CHART_COLUMNS, last + 1 + CHART_ROWS),
        chart);
  }

  private static String reference(String letter, int last) {
    return "'Crew load'!$" + letter + "$" + Addresses.FIRST_ROW + ":$" + letter + "$" + last;
  }
}

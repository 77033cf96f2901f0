package cornerpost.workbook;

import cornerpost.measure.Spoken;
import cornerpost.plan.Replanning.SlipCurve;
import cornerpost.plan.Replanning.SlipPoint;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.HorizontalAlignment;

/** Sheet Delay effects: what each delay moves, and what it costs. */
final class SheetDelayEffects {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

  private static final int TASKS_OF_A_ROW = 4;

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
    page.headIndented(Addresses.HEADER_ROW, 3, 8);
    page.widths(25, 40, 10, 24, 24, 12, 16, 14, 80);
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
    var replanning = run.plan.replanning();
    if (replanning.slip().isEmpty()) return;
    row = day(run, page, row + 1);
    row = moved(run, page, row + 1);
    row = ways(run, page, row + 1);
    slip(run, page, row + 1, replanning.slip().get());
  }

  private static int head(SheetPage page, int row, String text) {
    page.text(row, 1, text, page.plain().strong());
    return row + 1;
  }

  private static int day(ResultRun run, SheetPage page, int from) {
    var d = run.plan.replanning().dayCost();
    var money = page.number(run.moneyFormat());
    int row = head(page, from, "What a day of delay costs");
    page.text(row, 1, "Hire, insurance and rent", page.wrapped());
    page.number(row++, 7, d.hire(), money);
    page.text(row, 1, "Interest on what is drawn", page.wrapped());
    page.number(row++, 7, d.interest(), money);
    page.text(row, 1, "Each day", page.wrapped().strong());
    page.formula(row, 7, "H" + (row - 2) + "+H" + (row - 1), d.aDay(), money.strong());
    row++;
    page.text(row, 1, "Booking the crane again, once", page.wrapped());
    page.number(row++, 7, d.crane(), money);
    return row;
  }

  private static int moved(ResultRun run, SheetPage page, int from) {
    int row = head(page, from, "What moves, against the plan without delays");
    page.text(from, 2, "Days", page.plain().strong().aligned(HorizontalAlignment.RIGHT));
    page.text(from, 4, "Crew", page.plain().strong());
    page.text(from, 6, "Begins on", page.plain().strong().aligned(HorizontalAlignment.RIGHT));
    page.text(from, 8, "Before", page.plain().strong().indented());
    for (var m : run.plan.replanning().moved()) {
      int at = row;
      page.text(row, 0, m.id(), page.wrapped());
      run.addresses.taskRow(m.id()).ifPresent(r -> page.link(at, 0, ResultSheet.SCHEDULE, r));
      page.text(row, 1, m.name(), page.wrapped());
      page.number(row, 2, m.days(), page.number("0"));
      page.text(row, 4, m.crews(), page.wrapped());
      page.date(row, 6, m.to(), page.dateLook());
      page.text(
          row,
          8,
          "was to begin on "
              + m.from().format(DAY)
              + (m.floatUsed().signum() > 0
                  ? "; uses up " + Spoken.days(m.floatUsed()) + " of its float"
                  : ""),
          page.wrapped().indented());
      row++;
    }
    return row;
  }

  private static int ways(ResultRun run, SheetPage page, int from) {
    var before = run.plan.replanning().wayBefore();
    var after = run.plan.programme().deliveryToMoveIn();
    if (before.isEmpty()) return from;
    int row = head(page, from, "The longest way from delivery to move-in");
    row = way(run, page, row, before.equals(after) ? "Before and now" : "Now", after);
    return before.equals(after) ? row : way(run, page, row, "Before", before);
  }

  /** A row for every few tasks: a long text in one cell would be cut off on paper. */
  private static int way(ResultRun run, SheetPage page, int from, String what, List<String> ids) {
    int row = from;
    page.text(row, 1, what, page.wrapped());
    for (int k = 0; k < ids.size(); k += TASKS_OF_A_ROW) {
      var part = ids.subList(k, Math.min(ids.size(), k + TASKS_OF_A_ROW));
      var names =
          part.stream()
              .map(id -> run.plan.work().task(id).map(t -> t.name()).orElse(id))
              .collect(Collectors.joining(", then "));
      page.text(row++, 8, (k == 0 ? "" : "then ") + names, page.wrapped().indented());
    }
    return row;
  }

  private static void slip(ResultRun run, SheetPage page, int from, SlipCurve s) {
    int row =
        head(
            page,
            from,
            s.lastDay()
                .map(
                    d ->
                        s.eventName()
                            + " may come up to "
                            + d.format(DAY)
                            + " without moving move-in")
                .orElse(s.eventName() + ": no slip up to the end of this table moves move-in"));
    page.text(from, 8, "Why the curve bends", page.plain().strong().indented());
    int first = row;
    for (var p : s.points()) {
      page.text(row, 0, s.event(), page.wrapped());
      page.text(row, 1, p.days() == 0 ? s.eventName() + " as planned" : s.eventName());
      page.number(row, 2, p.days(), page.number("0"));
      page.number(row, 5, p.moveInDays(), page.number("0").strong());
      page.date(row, 6, p.moveIn(), page.dateLook());
      page.number(row, 7, p.cost(), page.number(run.moneyFormat()));
      var why =
          s.kinks().stream()
              .filter(k -> k.days() == p.days())
              .map(k -> k.words())
              .collect(Collectors.joining("; "));
      page.text(row, 8, why, page.wrapped().indented());
      row++;
    }
    var days = new Curve("Slip", "Move-in later by, days", "F", SlipPoint::moveInDays);
    var costs =
        new Curve("Slip cost", "Costs, " + run.currency(), "H", p -> p.cost().doubleValue());
    chart(run, s, first, days, first - 1);
    chart(run, s, first, costs, first + 20);
  }

  /** A column of the table of slips, as a chart. */
  private record Curve(
      String name, String what, String column, ToDoubleFunction<SlipPoint> number) {}

  private static void chart(ResultRun run, SlipCurve s, int first, Curve curve, int at) {
    int last = first + s.points().size() - 1;
    var chart =
        new ChartXml(curve.what + ", against days of slip", "days", "0")
            .line(
                new ChartXml.Series(
                    curve.what,
                    reference("C", first, last),
                    s.points().stream().map(p -> Integer.toString(p.days())).toList(),
                    reference(curve.column, first, last),
                    s.points().stream().mapToDouble(curve.number).boxed().toList(),
                    ChartXml.Paint.line(SheetStyle.INK, "")));
    SheetCharts.put(
        run,
        ResultSheet.DELAY_EFFECTS,
        curve.name,
        new SheetCharts.Place(9, at, 17, at + 20),
        chart);
  }

  private static String reference(String letter, int first, int last) {
    return "'Delay effects'!$" + letter + "$" + first + ":$" + letter + "$" + last;
  }
}

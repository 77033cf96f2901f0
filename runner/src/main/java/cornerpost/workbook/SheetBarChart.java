package cornerpost.workbook;

import cornerpost.measure.Unit;
import cornerpost.plan.DatedTask;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Stage;
import cornerpost.work.WorkTask;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/** Sheet Bar chart: a column for each week, a row for each task; every colour has a second sign. */
final class SheetBarChart {
  private static final int FIRST_WEEK = 5;
  private static final int WEEK_WIDTH = 3; // characters
  private static final int MOST_COLUMNS = 104;
  private static final int LEAST_CHART = 20; // columns of weeks
  private static final int MOST_CHART = 36;
  private static final int USUAL_NEAR_DAYS = 5;
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter WEEK =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final String GATE_MARK = "|";
  private static final String NEAR_MARK = "/";
  private static final String DONE_MARK = ":";
  private static final String MILESTONE_MARK = "\u25C6";

  /** How a bar looks; the words are those of the key. */
  private enum Bar {
    DRIVES("drives the move-in date (name in bold, heavy outline)"),
    NEAR("close to it: little float (hatched)"),
    FLOATS("has float (plain)"),
    DONE("done (dotted)"),
    WAIT("waiting: order, permit, curing, drying (dashed outline)"),
    GATE("inspection, hold point (gate mark)"),
    MILESTONE("milestone"),
    TAIL("float: how far it may slip before move-in moves (thin line)");

    private final String words;

    Bar(String words) {
      this.words = words;
    }
  }

  private final ResultRun run;
  private final SheetPage page;
  private final LocalDate firstWeek;
  private final int columns;
  private final int step;
  private final double near;

  private SheetBarChart(ResultRun run) {
    this.run = run;
    this.page = run.page(ResultSheet.BAR_CHART);
    var tasks = run.plan.programme().tasks();
    var first =
        tasks.stream()
            .map(DatedTask::firstDay)
            .min(LocalDate::compareTo)
            .orElse(run.plan.statusDate());
    var last = tasks.stream().map(DatedTask::lastDay).max(LocalDate::compareTo).orElse(first);
    firstWeek = first.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    long weeks = (last.toEpochDay() - firstWeek.toEpochDay()) / 7 + 1;
    step = (int) ((weeks + MOST_COLUMNS - 1) / MOST_COLUMNS);
    columns = (int) ((weeks + step - 1) / step);
    near =
        run.plan
            .scope()
            .options()
            .findFigure(OptionsQuestions.NEAR_CRITICAL)
            .map(f -> f.asDouble(Unit.ONE))
            .orElse((double) USUAL_NEAR_DAYS);
  }

  static void write(ResultRun run) {
    new SheetBarChart(run).write();
  }

  private void write() {
    page.header(Addresses.HEADER_ROW, "Id", "Task", "Start", "Finish", "Total float, days");
    page.headRight(Addresses.HEADER_ROW, 2, 3, 4);
    page.widths(32, 46, 16, 16, 9);
    weeks();
    int row = Addresses.FIRST_ROW;
    for (var t : run.plan.programme().tasks()) task(row++, t);
    int key = row + 1;
    stages(key, key(key) + 1);
    SheetPrint.printed(page, lastPrinted(), page.lastRow());
    // the key, the table of stages and their chart stand on one sheet of paper
    page.frame().newPageAfter(row);
    page.frame().freeze(2, Addresses.HEADER_ROW);
  }

  private int chartColumns() {
    return Math.max(LEAST_CHART, Math.min(columns, MOST_CHART));
  }

  /** The weeks, and the chart where there are few of them. */
  private int lastPrinted() {
    return FIRST_WEEK + Math.max(columns, chartColumns()) - 1;
  }

  private LocalDate begin(int column) {
    return firstWeek.plusDays(7L * step * column);
  }

  private boolean holds(int column, LocalDate from, LocalDate to) {
    return !to.isBefore(begin(column)) && from.isBefore(begin(column + 1));
  }

  private void weeks() {
    String month = "";
    for (int w = 0; w < columns; w++) {
      int c = FIRST_WEEK + w;
      page.frame().width(c, WEEK_WIDTH);
      boolean now = holds(w, run.plan.statusDate(), run.plan.statusDate());
      var look = page.heading().withSize(8).turned(90).aligned(HorizontalAlignment.CENTER);
      page.text(
          Addresses.HEADER_ROW,
          c,
          begin(w).format(WEEK),
          now ? look.filled(SheetStyle.FLOAT) : look);
      var named = begin(w).format(MONTH);
      if (!named.equals(month)) {
        page.text(Addresses.HEADER_ROW - 1, c, named, page.plain().strong().withSize(8));
        month = named;
      }
    }
    page.height(Addresses.HEADER_ROW, 36);
    page.text(
        Addresses.HEADER_ROW - 1,
        1,
        "Status date " + Days.shown(run.plan.statusDate()) + ": its week is shaded on top",
        page.plain().inInk(SheetStyle.QUIET));
  }

  private void task(int row, DatedTask t) {
    var text = t.drivesMoveIn() ? page.plain().strong() : page.plain();
    page.text(row, 0, t.id(), page.plain().inInk(SheetStyle.QUIET));
    run.addresses.taskRow(t.id()).ifPresent(r -> page.link(row, 0, ResultSheet.SCHEDULE, r));
    page.text(row, 1, t.task().name(), text);
    page.date(row, 2, t.firstDay(), page.dateLook());
    page.date(row, 3, t.lastDay(), page.dateLook());
    page.number(row, 4, t.totalFloatDays(), page.number("0.0"));
    var bar = bar(t);
    for (int w = 0; w < columns; w++) {
      if (holds(w, t.firstDay(), t.lastDay())) {
        boolean first = !begin(w).isAfter(t.firstDay());
        boolean last = w + 1 >= columns || !holds(w + 1, t.firstDay(), t.lastDay());
        draw(row, FIRST_WEEK + w, bar, t.drivesMoveIn(), first || w == 0, last);
      } else if (!t.done() && holds(w, t.lastDay(), t.lateLastDay())) {
        draw(row, FIRST_WEEK + w, Bar.TAIL, false, false, false);
      }
    }
  }

  private Bar bar(DatedTask t) {
    if (t.done()) return Bar.DONE;
    if (t.task().kind() == WorkTask.Kind.MILESTONE) return Bar.MILESTONE;
    if (t.task().kind() == WorkTask.Kind.INSPECTION) return Bar.GATE;
    if (t.task().kind() == WorkTask.Kind.WAIT || t.task().kind() == WorkTask.Kind.ORDER) {
      return Bar.WAIT;
    }
    if (t.drivesMoveIn()) return Bar.DRIVES;
    return t.totalFloatDays().doubleValue() <= near ? Bar.NEAR : Bar.FLOATS;
  }

  private void draw(int row, int column, Bar bar, boolean drives, boolean first, boolean last) {
    var plain =
        page.plain()
            .strong()
            .withSize(8)
            .aligned(HorizontalAlignment.CENTER)
            .level(VerticalAlignment.CENTER);
    var heavy = new SheetStyle.Edge(BorderStyle.MEDIUM, SheetStyle.INK);
    var none = SheetStyle.Edge.NONE;
    switch (bar) {
      case DRIVES ->
          page.cell(
              row,
              column,
              plain
                  .filled(SheetStyle.INK)
                  .edged(heavy, heavy, first ? heavy : none, last ? heavy : none));
      case NEAR -> // the mark stands in for the hatch where a program does not draw patterns
          page.text(
              row,
              column,
              NEAR_MARK,
              plain.patterned(FillPatternType.THIN_FORWARD_DIAG, SheetStyle.INK, SheetStyle.NEAR));
      case FLOATS -> page.cell(row, column, plain.filled(SheetStyle.FLOAT));
      case DONE ->
          page.text(
              row,
              column,
              DONE_MARK,
              plain.patterned(FillPatternType.LESS_DOTS, "FFFFFF", SheetStyle.DONE));
      case WAIT -> {
        var dash =
            new SheetStyle.Edge(
                drives ? BorderStyle.MEDIUM_DASHED : BorderStyle.DASHED, SheetStyle.INK);
        page.cell(row, column, plain.edged(dash, dash, first ? dash : none, last ? dash : none));
      }
      case GATE -> {
        var look = plain.filled(SheetStyle.GATE);
        page.text(
            row,
            column,
            GATE_MARK,
            drives ? look.edged(heavy, heavy, first ? heavy : none, last ? heavy : none) : look);
      }
      case MILESTONE -> page.text(row, column, MILESTONE_MARK, plain);
      case TAIL -> page.cell(row, column, plain.ruledBottom(BorderStyle.THIN, SheetStyle.DONE));
    }
  }

  /** Each stage from its first day to its last, and how far all of it may slip. */
  private void stages(int keyRow, int from) {
    int row = from;
    page.text(row, 1, "Stages in time", page.heading());
    page.text(row, 2, "First day", page.heading());
    page.text(row, 3, "Last day", page.heading());
    page.text(row, 4, "Float, days", page.heading());
    page.headRight(row, 2, 3, 4);
    int helper = lastPrinted() + 2; // for the screen: what the chart is drawn from
    page.text(row, helper, "Days, driving", page.heading());
    page.text(row, helper + 1, "Days, with float", page.heading());
    var names = new ArrayList<String>();
    var starts = new ArrayList<Double>();
    var driving = new ArrayList<Double>();
    var floating = new ArrayList<Double>();
    var tails = new ArrayList<Double>();
    int first = row + 1;
    for (var stage : Stage.values()) {
      var tasks = run.plan.programme().of(stage);
      if (tasks.isEmpty()) continue;
      row++;
      var begin = tasks.stream().map(DatedTask::firstDay).min(LocalDate::compareTo).orElseThrow();
      var end = tasks.stream().map(DatedTask::lastDay).max(LocalDate::compareTo).orElseThrow();
      var late = tasks.stream().map(DatedTask::lateLastDay).max(LocalDate::compareTo).orElseThrow();
      boolean drives = tasks.stream().anyMatch(DatedTask::drivesMoveIn);
      double days = end.toEpochDay() - begin.toEpochDay() + 1.0;
      double slack = Math.max(0, late.toEpochDay() - end.toEpochDay());
      page.text(row, 1, stage.label(), drives ? page.plain().strong() : page.plain());
      page.date(row, 2, begin, page.dateLook());
      page.date(row, 3, end, page.dateLook());
      page.number(row, 4, slack, page.number("0"));
      var quiet = page.number("0").inInk(SheetStyle.QUIET).withSize(8);
      page.number(row, helper, drives ? days : 0, quiet);
      page.number(row, helper + 1, drives ? 0 : days, quiet);
      names.add(stage.label());
      starts.add(page.serial(begin));
      driving.add(drives ? days : 0);
      floating.add(drives ? 0 : days);
      tails.add(slack);
    }
    if (names.isEmpty()) return;
    var chart =
        new ChartXml("Stages in time", "", "mmm yyyy")
            .sideways()
            .stacked()
            .from(page.serial(firstWeek))
            .bar(series(" ", names, "C", starts, first, row, ChartXml.Paint.none()))
            .bar(
                series(
                    "a task of it drives move-in",
                    names,
                    SheetPage.letter(helper),
                    driving,
                    first,
                    row,
                    ChartXml.Paint.solid(SheetStyle.INK)))
            .bar(
                series(
                    "all of it has float",
                    names,
                    SheetPage.letter(helper + 1),
                    floating,
                    first,
                    row,
                    ChartXml.Paint.solid(SheetStyle.FLOAT)))
            .bar(
                series(
                    "float of its last task",
                    names,
                    "E",
                    tails,
                    first,
                    row,
                    ChartXml.Paint.hatched(SheetStyle.DONE)));
    SheetCharts.put(
        run,
        ResultSheet.BAR_CHART,
        "Stages in time",
        new SheetCharts.Place(FIRST_WEEK + 3, keyRow - 1, FIRST_WEEK + chartColumns(), row),
        chart);
  }

  private static ChartXml.Series series(
      String name,
      List<String> labels,
      String column,
      List<Double> numbers,
      int first,
      int last,
      ChartXml.Paint paint) {
    return new ChartXml.Series(
        name, range("B", first, last), labels, range(column, first, last), numbers, paint);
  }

  private static String range(String column, int first, int last) {
    return "'Bar chart'!$" + column + "$" + first + ":$" + column + "$" + last;
  }

  /** The next free row. */
  private int key(int from) {
    int row = from;
    page.text(
        row,
        1,
        "Key" + (step > 1 ? "; a column is " + step + " weeks" : ""),
        page.plain().strong());
    row++;
    for (var bar : Bar.values()) {
      page.text(row, 1, bar.words, page.plain());
      draw(row, 2, bar, bar == Bar.DRIVES, true, true);
      row++;
    }
    return row;
  }
}

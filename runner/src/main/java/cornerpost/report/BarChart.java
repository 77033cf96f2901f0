package cornerpost.report;

import cornerpost.plan.DatedTask;
import cornerpost.plan.Plan;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Stage;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The tasks of a stage as bars over time, in bands low enough to print whole. What drives the date
 * of move-in is solid with its name in bold; float is a thin tail.
 */
final class BarChart {
  /** More rows than this do not go on one page with a heading. */
  private static final int BAND = 36;

  private static final double ROW = 19;
  private static final double NAMES = 310;
  private static final double WIDTH = 980;
  private static final double TOP = 22;

  private final Plan plan;
  private final TimeAxis axis;
  private final BigDecimal nearDays;

  /** A band: a heading and the picture. */
  public record Band(String title, String svg) {}

  BarChart(Plan plan) {
    this.plan = plan;
    var p = plan.programme();
    var last =
        p.tasks().stream()
            .map(DatedTask::lateLastDay)
            .max(LocalDate::compareTo)
            .filter(d -> d.isAfter(p.finish()))
            .filter(d -> d.isBefore(p.finish().plusDays(60)))
            .orElse(p.finish());
    var first =
        p.tasks().stream().map(DatedTask::firstDay).min(LocalDate::compareTo).orElse(p.start());
    axis = TimeAxis.of(first, last, NAMES, WIDTH - NAMES - 6);
    nearDays =
        plan.scope()
            .options()
            .findFigure(OptionsQuestions.NEAR_CRITICAL)
            .map(f -> f.value())
            .orElse(new BigDecimal("5"));
  }

  List<Band> bands() {
    var bands = new ArrayList<Band>();
    for (var stage : Stage.values()) {
      var rows = plan.programme().tasks().stream().filter(t -> t.task().stage() == stage).toList();
      for (int at = 0; at < rows.size(); at += BAND) {
        var part = rows.subList(at, Math.min(rows.size(), at + BAND));
        var title = stage.label() + (at == 0 ? "" : ", continued");
        bands.add(new Band(title, band(title, part, bands.size())));
      }
    }
    return bands;
  }

  private String band(String title, List<DatedTask> rows, int number) {
    double height = TOP + rows.size() * ROW + 4;
    var svg =
        Svg.picture(
            "bars-" + number,
            "0 0 " + Svg.number(WIDTH) + " " + Svg.number(height),
            "chart",
            "--chart-width:" + Svg.number(WIDTH) + "px",
            "Bars of stage " + title,
            "The same dates and floats stand in the table of all tasks.");
    axis.draw(svg, 0, height);
    double y = TOP;
    for (var t : rows) {
      row(svg, t, y);
      y += ROW;
    }
    axis.status(svg, plan.statusDate(), 0, height);
    return svg.done();
  }

  private void row(Svg svg, DatedTask t, double y) {
    svg.open("g", "data-task", t.id());
    svg.label(t.drivesMoveIn() ? "task drives" : "task", 0, y + 13, "start", shortened(t));
    double x = axis.x(t.start());
    double end = axis.x(t.finish());
    if (t.task().kind() == WorkTask.Kind.MILESTONE) {
      double d = 6.5;
      double m = y + ROW / 2 - 1;
      svg.add(
          "path",
          "class",
          "milestone" + (t.drivesMoveIn() ? " drives" : ""),
          "d",
          "M"
              + Svg.number(x - d)
              + " "
              + Svg.number(m)
              + " l"
              + d
              + " -"
              + d
              + " l"
              + d
              + " "
              + d
              + " l-"
              + d
              + " "
              + d
              + " z");
    } else {
      double w = Math.max(2.5, end - x);
      double late = axis.x(t.lateFinish());
      if (!t.done() && late > end + 1) {
        svg.line("tail", x + w, y + ROW / 2 - 1, late, y + ROW / 2 - 1);
        svg.line("tail", late, y + 5, late, y + ROW - 7);
      }
      svg.rect("bar " + style(t), x, y + 3, w, ROW - 8, "rx", "1");
      if (t.task().kind() == WorkTask.Kind.INSPECTION) {
        double g = x + w / 2;
        svg.line("gate", g, y + 0.5, g, y + ROW - 2.5);
        svg.line("gate", g - 3, y + 0.5, g + 3, y + 0.5);
        svg.line("gate", g - 3, y + ROW - 2.5, g + 3, y + ROW - 2.5);
      }
    }
    svg.close("g");
  }

  String style(DatedTask t) {
    if (t.done()) return "done";
    if (t.task().kind() == WorkTask.Kind.INSPECTION) {
      return t.drivesMoveIn() ? "inspection drives" : "inspection";
    }
    boolean wait = t.task().kind() == WorkTask.Kind.WAIT || t.task().kind() == WorkTask.Kind.ORDER;
    if (wait) return t.drivesMoveIn() ? "wait drives" : "wait";
    if (t.drivesMoveIn()) return "drives";
    return t.totalFloatDays().compareTo(nearDays) <= 0 ? "near" : "free";
  }

  /** Names are cut where the bars begin; the table has them whole. */
  private static String shortened(DatedTask t) {
    var name = t.task().name();
    int most = t.drivesMoveIn() ? 43 : 48;
    return name.codePointCount(0, name.length()) <= most
        ? name
        : name.substring(0, name.offsetByCodePoints(0, most - 1)).strip() + "…";
  }
}

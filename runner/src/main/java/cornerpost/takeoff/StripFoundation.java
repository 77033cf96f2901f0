package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * A strip footing under each long side, cast against the ground, with a formed wall on it up to the
 * underside of the box; boxes side by side share one. Width = load of a metre / bearing, not below
 * the code's least (IRC table R403.1(1)).
 */
final class StripFoundation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (!FoundationShape.is(job, Foundation.STRIPS)) return List.of();
    var base = new FoundationShape(job);
    var thickness = job.scope().site().figure(SiteQuestions.PAD_DEPTH);
    var bedDepth = job.fact("footing.bed");
    var aboveFooting = base.depth().minus(thickness).atLeastZero();
    var lines = new ArrayList<Line>();
    var length =
        Line.of(
            "footing/strips/length",
            Stage.FOUNDATION,
            "Strip footings",
            base.rows(),
            job.length(),
            "both long sides of each box, a shared side once");
    var widths = new ArrayList<Line>();
    var areas = new ArrayList<Figure>();
    for (var row : base.loadedRows()) {
      var width =
          Line.of(
              width(row),
              Stage.FOUNDATION,
              "Width of strips: " + row.name(),
              row.load().over(base.bearing()).max(job.fact("footing.least-strip")),
              job.shortLength(),
              "load of a metre / bearing of the soil class, not below the least width");
      widths.add(width);
      areas.add(row.length().times(width.named()));
    }
    var area =
        Line.of(
            "footing/strips/area",
            Stage.FOUNDATION,
            "Strip footings, area on the ground",
            Figure.sum(Dimension.AREA, areas),
            job.area(),
            "length x width of each row");
    lines.add(length);
    lines.addAll(widths);
    lines.add(area);
    var concrete =
        Concrete.line(
            job,
            "footing/strips/concrete",
            "Concrete in strip footings",
            area.named().times(thickness),
            "area x thickness",
            "strips",
            "waste.concrete");
    lines.add(concrete);
    var tall = aboveFooting.plus(base.underBoxes());
    var wall =
        Line.of(
            "footing/stems/area",
            Stage.FOUNDATION,
            "Walls on the strip footings, one face",
            length.named().times(tall),
            job.area(),
            "length x height from the footing to the underside of the boxes");
    lines.add(wall);
    lines.add(
        Concrete.line(
            job,
            "footing/stems/concrete",
            "Concrete in walls on the strip footings",
            wall.named().times(job.fact("stem.thickness")),
            "area x thickness",
            "strips",
            "waste.formed-concrete"));
    lines.add(
        base.formwork(
            "footing/stems/formwork",
            "Formwork of walls on the strip footings",
            wall.named().times(2),
            "both faces",
            "make-wall-formwork"));
    lines.add(
        base.reinforcement(
            "footing/strips/reinforcement",
            "12 mm bars in strips and walls",
            bars(job, length.named(), tall),
            "long bars with laps, upright bars at their spacing, x mass of a metre"));
    var bed = base.bed(area.named().times(bedDepth), "area of the strips x depth of the bed");
    lines.add(bed);
    var room = length.named().times(job.fact("earth.side-room")).times(2);
    var dug =
        base.excavation(
            area.named().times(base.depth().plus(bedDepth)).plus(room.times(aboveFooting)),
            "strips down to frost depth and the bed below, with room on both sides for forms");
    lines.add(dug);
    var buried = length.named().times(job.fact("stem.thickness")).times(aboveFooting);
    lines.addAll(base.backfill(dug.named(), concrete.named().plus(bed.named()).plus(buried)));
    return lines;
  }

  /** The id of the line that holds the width of a row. */
  static String width(FoundationShape.Row row) {
    return "footing/strips/" + row.id() + "/width";
  }

  private static Figure bars(Job job, Figure length, Figure tall) {
    var longBars =
        length
            .times(job.fact("strip.bars").plus(job.fact("stem.long-bars")))
            .times(Figure.count(1).plus(job.fact("strip.lap")));
    var upright =
        length
            .over(job.fact("stem.bar-spacing"))
            .roundedUp()
            .times(tall.plus(job.fact("pier.bar-foot")));
    return longBars.plus(upright).times(job.fact("rebar.12.mass"));
  }
}

package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * What each kind of support puts on the ground: load over the area that it stands on, or what one
 * pile carries. To hold against the bearing that the code presumes for the soil class (IRC table
 * R401.4.1), or the working load of a pile. The footing's own mass is left out, as what it
 * displaces rested there before. Nothing where a group has no support.
 */
final class GroundPressures implements TakeoffRule {
  private static final Unit NO_PRESSURE = Unit.base(Dimension.MASS.per(Dimension.AREA));

  @Override
  public List<Line> measure(Job job) {
    if (job.scope().boxes().isEmpty()) return List.of();
    return switch (job.scope().site().option(SiteQuestions.FOUNDATION, Foundation.class)) {
      case PIERS ->
          atSupports(job, "pads", g -> PadSizes.side(job, g).times(PadSizes.side(job, g)), "pads");
      case PRECAST_PADS -> {
        var side = job.fact("precast.side");
        yield atSupports(
            job,
            "precast",
            g ->
                job.measured(PrecastPadFoundation.each(g))
                    .max(Figure.count(1))
                    .times(side)
                    .times(side),
            "precast pads");
      }
      case SCREW_PILES, DRIVEN_PILES -> onPiles(job);
      case STRIPS ->
          alongRows(job, "strips", "strips", r -> job.measured(StripFoundation.width(r)));
      case SKIDS ->
          alongRows(job, "skids", "the stone bed of skids", r -> job.fact("skid.bed-width"));
      case SLAB, RAFT -> underSlab(job);
    };
  }

  private interface Size<T> {
    Figure of(T support);
  }

  private static List<Line> atSupports(
      Job job, String kind, Size<Supports.Group> area, String what) {
    var lines = new ArrayList<Line>();
    for (var g : Supports.groups(job)) {
      lines.add(
          pressure(
              job,
              "footing/" + kind + "/" + g.id() + "/pressure",
              "Pressure under " + what + ": " + g.name(),
              g.count()
                  .ifAtLeast(
                      Figure.count(1),
                      g.load().over(area.of(g)),
                      Figure.constant("0", NO_PRESSURE)),
              "load on each / area on the ground"));
    }
    return lines;
  }

  private static List<Line> alongRows(
      Job job, String kind, String what, Size<FoundationShape.Row> width) {
    var lines = new ArrayList<Line>();
    for (var row : new FoundationShape(job).loadedRows()) {
      lines.add(
          pressure(
              job,
              "footing/" + kind + "/" + row.id() + "/pressure",
              "Pressure under " + what + ": " + row.name(),
              row.load().over(width.of(row)),
              "load of a metre / width"));
    }
    return lines;
  }

  private static List<Line> underSlab(Job job) {
    var loads = job.scope().boxes().stream().map(b -> job.measured("load/" + b.id())).toList();
    return List.of(
        pressure(
            job,
            "footing/slab/pressure",
            "Pressure under the plate of concrete",
            Figure.sum(Dimension.MASS, loads).over(job.measured("footing/slab/area")),
            "load of all boxes / area; more under the rows of supports"));
  }

  private static List<Line> onPiles(Job job) {
    var lines = new ArrayList<Line>();
    for (var g : Supports.groups(job)) {
      var each = job.measured(PileFoundation.each(g)).max(Figure.count(1));
      lines.add(
          Line.of(
              "footing/piles/" + g.id() + "/load",
              Stage.FOUNDATION,
              "Load of a pile: " + g.name(),
              g.count()
                  .ifAtLeast(Figure.count(1), g.load().over(each), Figure.zero(Dimension.MASS)),
              job.mass(),
              "load on each support / piles at it"));
    }
    return lines;
  }

  private static Line pressure(Job job, String id, String what, Figure value, String because) {
    return Line.of(id, Stage.FOUNDATION, what, value, job.pressure(), because);
  }
}

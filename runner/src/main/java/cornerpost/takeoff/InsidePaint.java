package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.PAINT_WALLS;
import static cornerpost.takeoff.BuildTask.PRIME_WALLS;
import static cornerpost.takeoff.BuildTask.TOUCH_UP;

import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.VapourControl;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Paint inside by coverage and coats: the first coat is primer, or retarder paint where that is the
 * vapour control. Coverage on new work 350 sq ft a gallon (8.6 m2/l): I. S. Griffith, Carpentry,
 * 1916. What tiles and splashback cover is taken off.
 */
final class InsidePaint implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FINISHES);
    var envelope = job.scope().envelope();
    var coats = envelope.figure(EnvelopeQuestions.PAINT_COATS);
    var one = Figure.count(1);
    var area =
        out.add(
            "paint/inside/area",
            "Walls and ceilings to paint",
            job.measured("lining/house/wall-faces")
                .plus(job.measured("inside/ceiling-area"))
                .minus(WetRooms.wallTileArea(job, in))
                .minus(Kitchen.splashbackArea(job, in))
                .atLeastZero(),
            job.area(),
            "boarded faces and ceilings less tiles and splashback");
    var primed =
        out.add(
            "paint/inside/first-coat-area",
            "First coat, area",
            area.times(coats.min(one)),
            job.area(),
            "once, if there are any coats",
            Labour.of("paint-first-coat", PRIME_WALLS));
    var next =
        out.add(
            "paint/inside/next-coats-area",
            "Further coats, area",
            area.times(coats.minus(one).atLeastZero()),
            job.area(),
            "area x (coats - 1)",
            Labour.of("paint-next-coat", PAINT_WALLS));
    boolean retarder =
        envelope.option(EnvelopeQuestions.VAPOUR, VapourControl.class) == VapourControl.PAINT;
    out.add(
        "paint/inside/primer",
        retarder ? "Vapour-retarder primer" : "Primer",
        primed.over(job.fact("paint.coverage")),
        job.liquid(),
        "area / coverage",
        Buy.of(retarder ? "paint-retarder" : "paint-primer", job.fact("waste.paint"), PRIME_WALLS));
    out.add(
        "paint/inside/wall-paint",
        "Wall and ceiling paint",
        next.over(job.fact("paint.coverage")),
        job.liquid(),
        "area of all further coats / coverage",
        Buy.of("paint-wall", job.fact("waste.paint"), PAINT_WALLS));
    out.add(
        "paint/inside/filler",
        "Decorator's sealant and filler along edges",
        area.times(job.fact("paint.filler-per-area")),
        job.liquid(),
        "area x filler for each area",
        Buy.of("decorators-filler", job.fact("waste.paint"), PRIME_WALLS));
    out.add(
        "paint/inside/touch-up",
        "Touch up paint before the end",
        area,
        job.area(),
        "painted area",
        Labour.of("touch-up", TOUCH_UP));
    trim(job, in, out);
    return out.lines();
  }

  /** Skirting, doors and their frames, two coats. */
  private static void trim(Job job, Inside in, Tally out) {
    var terms = new ArrayList<Figure>();
    if (job.scope().finishes().yes(FinishesQuestions.SKIRTING)) {
      terms.add(job.measured("trim/house/skirting").times(job.fact("skirting.height")));
    }
    long doors = in.partitions().stream().filter(Inside.Partition::hasDoor).count();
    if (doors > 0) {
      var leaf = job.fact("inner-door.opening-width").times(job.fact("inner-door.opening-height"));
      terms.add(leaf.times(2 * doors));
    }
    if (terms.isEmpty()) return;
    var area =
        out.add(
            "paint/trim/area",
            "Skirting and doors to paint",
            Inside.areas(terms),
            job.area(),
            "skirting x height, both faces of doors",
            Labour.of("brush-trim", PAINT_WALLS));
    out.add(
        "paint/trim/paint",
        "Trim paint",
        area.times(2).over(job.fact("paint.coverage")),
        job.liquid(),
        "area x 2 coats / coverage",
        Buy.of("paint-trim", job.fact("waste.paint"), PAINT_WALLS));
  }
}

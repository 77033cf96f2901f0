package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Foundation;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Precast pads on a stone bed: at each support as many as its load asks for, with blocks on them up
 * to the underside of the box. They stand above the frost line; whether the soil allows that is the
 * engineer's to say.
 */
final class PrecastPadFoundation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (!FoundationShape.is(job, Foundation.PRECAST_PADS)) return List.of();
    var base = new FoundationShape(job);
    var side = job.fact("precast.side");
    var padArea = side.times(side);
    var lines = new ArrayList<Line>();
    var counts = new ArrayList<Figure>();
    for (var group : Supports.groups(job)) {
      var each =
          Line.of(
              each(group),
              Stage.FOUNDATION,
              "Precast pads at each: " + group.name(),
              group.load().over(base.bearing()).over(padArea).roundedUp(),
              Unit.EACH,
              "load on each / bearing / area of a pad, rounded up");
      lines.add(each);
      counts.add(group.count().times(each.named()));
    }
    var pads =
        Line.of(
            "footing/precast/pads",
            Stage.FOUNDATION,
            "Precast pads",
            Figure.sum(Dimension.NONE, counts),
            Unit.EACH,
            "supports x pads at each",
            Buy.of("precast-pad", BuildTask.PILES),
            Labour.of("lay-precast-pad", BuildTask.PILES));
    lines.add(pads);
    var layers = base.underBoxes().over(job.fact("precast.block")).roundedUp();
    lines.add(
        Line.of(
            "footing/precast/blocks",
            Stage.FOUNDATION,
            "Blocks on the pads",
            job.measured("supports/count").times(layers).times(2),
            Unit.EACH,
            "two to a layer, layers up to the underside of the boxes",
            Buy.of("precast-block", job.fact("waste.fixings"), BuildTask.PILES),
            Labour.of("lay-block", BuildTask.PILES)));
    var bed =
        base.bed(
            pads.named().times(padArea).times(job.fact("footing.bed")).times(2),
            "area of the pads x twice the depth of the bed: pads are laid shallow");
    lines.add(bed);
    var dug = base.excavation(bed.named(), "the stone bed's own volume");
    lines.add(dug);
    lines.addAll(base.backfill(dug.named(), dug.named()));
    return lines;
  }

  /** The id of the line that says how many pads lie at each support of a group. */
  static String each(Supports.Group group) {
    return "footing/precast/" + group.id() + "/each";
  }
}

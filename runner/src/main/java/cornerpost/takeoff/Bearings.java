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
 * A steel plate at each support, levelled in grout; a packer on those between corners, since the
 * corner castings stand about 12 mm below the rails; anchor bolts where the plate sits on concrete.
 */
final class Bearings implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (FoundationShape.is(job, Foundation.SKIDS)) return List.of();
    var count = job.measured("supports/count");
    var lines = new ArrayList<Line>();
    lines.add(
        Line.of(
            "supports/plates",
            Stage.FOUNDATION,
            "Bearing plates, levelled in grout",
            count,
            Unit.EACH,
            "one a support",
            Buy.of("bearing-plate", BuildTask.BEARING_PLATES),
            Labour.of("fix-bearing-plate", BuildTask.BEARING_PLATES)));
    lines.add(
        Line.of(
            "supports/packers",
            Stage.FOUNDATION,
            "Packing plates between corners",
            Figure.sum(
                Dimension.NONE,
                Supports.groups(job).stream()
                    .filter(g -> g.id().endsWith("between") || g.id().endsWith("shared-end"))
                    .map(Supports.Group::count)
                    .toList()),
            Unit.EACH,
            "one at each support between corners",
            Buy.of("packing-plate", BuildTask.BEARING_PLATES)));
    var onPiles =
        FoundationShape.is(job, Foundation.SCREW_PILES)
            || FoundationShape.is(job, Foundation.DRIVEN_PILES);
    if (onPiles) return lines;
    lines.add(
        Line.of(
            "supports/anchor-bolts",
            Stage.FOUNDATION,
            "Anchor bolts",
            count.times(job.fact("anchor.bolts")),
            Unit.EACH,
            "so many a support",
            Buy.of("anchor-bolt", BuildTask.BEARING_PLATES),
            Labour.of("set-anchor-bolt", BuildTask.BEARING_PLATES)));
    return lines;
  }
}

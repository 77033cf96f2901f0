package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Foundation;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Treated timber skids along the long sides on a stone bed, in layers up to the underside of the
 * box, with ground anchors at the corners. For light and movable houses.
 */
final class SkidFoundation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (!FoundationShape.is(job, Foundation.SKIDS)) return List.of();
    var base = new FoundationShape(job);
    var rows = base.rows();
    var lines = new ArrayList<Line>();
    lines.add(
        Line.of(
            "footing/skids/length",
            Stage.FOUNDATION,
            "Treated timber skids",
            rows.times(base.underBoxes().over(job.fact("skid.depth")).roundedUp()),
            job.length(),
            "both long sides x layers up to the underside of the boxes",
            Buy.of("skid-timber", job.fact("waste.timber"), BuildTask.PILES),
            Labour.of("lay-skid", BuildTask.PILES)));
    var bed =
        base.bed(
            rows.times(job.fact("skid.bed-width")).times(job.fact("skid.bed")),
            "length x width x depth of the bed under the skids");
    lines.add(bed);
    var dug = base.excavation(bed.named(), "the stone bed's own volume");
    lines.add(dug);
    lines.addAll(base.backfill(dug.named(), dug.named()));
    lines.add(
        Line.of(
            "footing/skids/anchors",
            Stage.FOUNDATION,
            "Ground anchors with straps",
            Figure.count(4L * new Shape(job).onGround().size()),
            Unit.EACH,
            "four a box",
            Buy.of("ground-anchor", BuildTask.PILES),
            Labour.of("set-ground-anchor", BuildTask.PILES)));
    return lines;
  }
}

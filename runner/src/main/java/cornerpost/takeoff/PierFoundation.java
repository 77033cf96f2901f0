package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Square pad footings cast against the ground, with a formed pier on each up to the corner
 * castings; {@link PadSizes} says how large. Two-way bars in the pad, four upright bars and links
 * in the pier.
 */
final class PierFoundation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (!FoundationShape.is(job, Foundation.PIERS)) return List.of();
    var base = new FoundationShape(job);
    var thickness = job.scope().site().figure(SiteQuestions.PAD_DEPTH);
    var bedDepth = job.fact("footing.bed");
    var aboveFooting = base.depth().minus(thickness).atLeastZero();
    var lines = new ArrayList<Line>();
    var concrete =
        Concrete.line(
            job,
            "footing/pads/concrete",
            "Concrete in pad footings",
            base.overSupports(Dimension.VOLUME, g -> area(job, g).times(thickness)),
            "number x side x side x thickness of each group of supports",
            "pads",
            "waste.concrete");
    lines.add(concrete);
    lines.add(
        base.reinforcement(
            "footing/pads/reinforcement",
            "12 mm bars in pad footings, both ways",
            base.overSupports(Dimension.MASS, g -> bars(job, g)),
            "bars both ways at their spacing, side less cover, x mass of a metre"));
    var piers = new Piers(job, aboveFooting.plus(base.underBoxes()));
    lines.addAll(piers.lines());
    var bed =
        base.bed(
            base.overSupports(Dimension.VOLUME, g -> area(job, g).times(bedDepth)),
            "area of the pads x depth of the bed");
    lines.add(bed);
    var dug =
        base.excavation(
            base.overSupports(
                Dimension.VOLUME, g -> area(job, g).times(base.depth().plus(bedDepth))),
            "pits the size of the pads, down to frost depth and the stone bed below");
    lines.add(dug);
    var buried = piers.crossSection().times(aboveFooting).times(job.measured("supports/count"));
    lines.addAll(base.backfill(dug.named(), concrete.named().plus(bed.named()).plus(buried)));
    return lines;
  }

  private static Figure area(Job job, Supports.Group group) {
    return PadSizes.side(job, group).times(PadSizes.side(job, group));
  }

  private static Figure bars(Job job, Supports.Group group) {
    var bar = PadSizes.side(job, group).minus(job.fact("footing.cover").times(2));
    var number = bar.over(job.fact("footing.bar-spacing")).roundedUp().plus(Figure.count(1));
    return number.times(2).times(bar).times(job.fact("rebar.12.mass"));
  }
}

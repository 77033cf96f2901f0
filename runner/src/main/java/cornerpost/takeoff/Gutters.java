package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Joint;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** A gutter along the low eaves of each roof, with downpipes to the ground. */
final class Gutters implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (!job.scope().deckAndRoof().yes(DeckAndRoofQuestions.GUTTERS)) return List.of();
    var shape = new Shape(job);
    var eaves = new ArrayList<Figure>();
    Figure tallest = null;
    for (var box : job.scope().boxes()) {
      if (!shape.above(box).isEmpty()) continue;
      eaves.add(shape.length(box));
      var drop = shape.height(box);
      if (shape.stacked(box)) drop = drop.times(2);
      tallest = tallest == null ? drop : tallest.max(drop);
    }
    for (var pair : shape.pairs()) {
      if (pair.joint() == Joint.SIDE_BY_SIDE) eaves.add(shape.touching(pair).times(-1));
    }
    if (tallest == null) return List.of();
    var gutter =
        Line.of(
            "roof/gutter",
            Stage.OUTSIDE,
            "Gutters with brackets",
            Figure.sum(Dimension.LENGTH, eaves),
            job.length(),
            "one long side of each roof; one for two that fall the same way",
            Buy.of("gutter", job.fact("waste.steel-sheet"), BuildTask.GUTTERS),
            Labour.of("fix-gutter", BuildTask.GUTTERS));
    var pipes =
        Line.of(
            "roof/downpipes",
            Stage.OUTSIDE,
            "Outlets and shoes of downpipes",
            gutter.named().over(job.fact("gutter.outlet-spacing")).roundedUp(),
            Unit.EACH,
            "gutter / longest run to one downpipe, rounded up",
            Buy.of("downpipe-fittings", BuildTask.GUTTERS));
    var height = tallest.plus(job.scope().site().figure(SiteQuestions.FLOOR_HEIGHT));
    return List.of(
        gutter,
        pipes,
        Line.of(
            "roof/downpipe",
            Stage.OUTSIDE,
            "Downpipes",
            pipes.named().times(height),
            job.length(),
            "number x height to the eaves",
            Buy.of("downpipe", job.fact("waste.pipe"), BuildTask.GUTTERS),
            Labour.of("fix-downpipe", BuildTask.GUTTERS)));
  }
}

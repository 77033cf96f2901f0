package cornerpost.takeoff;

import cornerpost.scope.Box;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.List;

/**
 * What a furnished box puts on its supports, as a mass under standard gravity: what the box weighs
 * by {@link OwnMass}, floor load on the inside floor (IRC table R301.5) and snow on the roof
 * (ground snow x the flat-roof share). A box under another carries no snow of its own.
 */
final class BoxLoads implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    return job.scope().boxes().stream()
        .map(
            box ->
                Line.of(
                    "load/" + box.id(),
                    Stage.FOUNDATION,
                    "Load of box " + box.id(),
                    load(job, new Shape(job), box),
                    job.mass(),
                    "what the box weighs + floor load x inside floor + snow x plan area"))
        .toList();
  }

  private static Figure load(Job job, Shape shape, Box box) {
    var sum =
        job.measured("mass/box/" + box.id() + "/total")
            .plus(job.fact("load.floor").times(shape.floorArea(box)));
    if (!shape.above(box).isEmpty()) return sum;
    var snow = job.scope().site().figure(SiteQuestions.SNOW).times(job.fact("snow.roof-factor"));
    return sum.plus(snow.times(shape.planArea(box)));
  }
}

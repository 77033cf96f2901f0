package cornerpost.takeoff;

import cornerpost.scope.Box;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.List;
import java.util.Locale;

/**
 * What a furnished box puts on its supports, as a mass under standard gravity: tare, fit-out on the
 * plan area, floor load on the inside floor (IRC table R301.5), snow on the roof (ground snow x the
 * flat-roof share) and what the roof build weighs. A box under another carries no snow of its own.
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
                    "tare + fit-out x plan area + floor load x inside floor + roof and snow"))
        .toList();
  }

  private static Figure load(Job job, Shape shape, Box box) {
    var sum =
        box.fact(job.facts(), "tare")
            .plus(job.fact("mass.fit-out").times(shape.planArea(box)))
            .plus(job.fact("load.floor").times(shape.floorArea(box)));
    if (!shape.above(box).isEmpty()) return sum;
    var roof = job.scope().deckAndRoof().option(DeckAndRoofQuestions.ROOF, RoofBuild.class);
    var build = roof.name().toLowerCase(Locale.ROOT).replace('_', '-');
    var snow = job.scope().site().figure(SiteQuestions.SNOW).times(job.fact("snow.roof-factor"));
    return sum.plus(snow.plus(job.fact("mass.roof." + build)).times(shape.planArea(box)));
  }
}

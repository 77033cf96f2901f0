package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Cladding;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import java.util.List;

/**
 * What people stand on to work on roof and walls: a scaffold round stacked boxes, towers on wheels
 * for boxes on the ground that get a roof or cladding. Falls from a box are from 2.6 m and more.
 */
final class Scaffold implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var deck = job.scope().deckAndRoof();
    var roofed = deck.option(DeckAndRoofQuestions.ROOF, RoofBuild.class) != RoofBuild.BARE;
    var task = roofed ? BuildTask.ROOF_PREPARE : BuildTask.WALL_PREPARE;
    var shape = new Shape(job);
    if (job.scope().boxes().stream().anyMatch(shape::stacked)) {
      return List.of(
          Line.of(
              "scaffold/area",
              Stage.OUTSIDE,
              "Scaffold round the boxes",
              job.measured("shell/outside-wall-gross"),
              job.area(),
              "outside walls of all boxes where boxes are stacked",
              Buy.of("scaffold", task)));
    }
    var clad =
        deck.option(DeckAndRoofQuestions.CLADDING, Cladding.class) != Cladding.PAINT || roofed;
    if (!clad) return List.of();
    return List.of(
        Line.of(
            "scaffold/tower",
            Stage.OUTSIDE,
            "Tower on wheels with edge guard, weeks of hire",
            job.fact("scaffold.tower-weeks").times(job.scope().boxes().size()),
            Unit.count("week"),
            "weeks for each box that gets a roof or cladding",
            Buy.of("tower-week", task)));
  }
}

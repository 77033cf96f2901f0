package cornerpost.takeoff;

import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.List;

/**
 * The side of each pad footing: the square root of its load over the bearing that the code presumes
 * for the soil class (IRC table R401.4.1), not below the least pad nor the width of the pier.
 */
final class PadSizes implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (!FoundationShape.is(job, Foundation.PIERS)) return List.of();
    var bearing = new FoundationShape(job).bearing();
    return Supports.groups(job).stream()
        .map(
            group ->
                Line.of(
                    id(group),
                    Stage.FOUNDATION,
                    "Side of pads: " + group.name(),
                    group
                        .load()
                        .over(bearing)
                        .squareRoot()
                        .max(job.fact("footing.least-pad"))
                        .max(job.scope().site().figure(SiteQuestions.PIER_WIDTH)),
                    job.shortLength(),
                    "square root of (load / bearing of the soil class), not below the least pad"))
        .toList();
  }

  static Figure side(Job job, Supports.Group group) {
    return job.measured(id(group));
  }

  private static String id(Supports.Group group) {
    return "footing/pads/" + group.id() + "/side";
  }
}

package cornerpost.takeoff;

import cornerpost.scope.Stage;
import java.util.List;

/** The hole of each opening, a row that areas of walls and prices of units point at. */
final class OpeningAreas implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    return job.scope().openings().stream()
        .map(
            o ->
                Line.of(
                    "opening/" + o.id() + "/area",
                    Stage.SHELL,
                    "Opening " + o.id() + ": area of the hole",
                    Shape.area(o),
                    job.area(),
                    "width x height"))
        .toList();
  }
}

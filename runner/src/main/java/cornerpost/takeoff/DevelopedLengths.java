package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Stage;
import java.util.List;

/**
 * How much longer a corrugated wall is along its sheet than straight across: two faces and two
 * slopes of a trapezium over its pitch. Dimensions from manufacturers' specifications.
 */
final class DevelopedLengths implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    return List.of(line(job, "side", "side walls"), line(job, "blind-end", "blind end"));
  }

  private static Line line(Job job, String part, String name) {
    var stem = "shell." + part + ".";
    var slope = job.fact(stem + "slope");
    var depth = job.fact(stem + "depth");
    var along = slope.times(slope).plus(depth.times(depth)).squareRoot();
    return Line.of(
        "shell/developed/" + part,
        Stage.SHELL,
        "Length along the corrugation over straight length, " + name,
        job.fact(stem + "outer")
            .plus(job.fact(stem + "inner"))
            .plus(along.times(2))
            .over(job.fact(stem + "pitch")),
        Unit.ONE,
        "faces and slopes of one corrugation over its pitch");
  }
}

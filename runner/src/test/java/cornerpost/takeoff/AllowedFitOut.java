package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * In place of {@link OwnMass} where the ground is tried without the inside: the fit-out weighs 0.75
 * kPa on the plan of each box (common practice, no source), as in the examples worked by hand.
 */
final class AllowedFitOut implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var box : job.scope().boxes()) {
      var tare = box.fact(job.facts(), "tare");
      var fitOut = Figure.constant("0.75", Unit.KPA).times(new Shape(job).planArea(box));
      lines.add(line(job, box.id() + "/total", tare.plus(fitOut)));
      var rigging = job.fact("limit.rigging");
      var margin = Figure.count(1).plus(job.fact("limit.lift-margin"));
      lines.add(line(job, box.id() + "/hook-load", tare.plus(rigging).times(margin)));
    }
    return lines;
  }

  private static Line line(Job job, String id, Figure mass) {
    return Line.of("mass/box/" + id, Stage.FINISHES, "Mass", mass, job.mass(), "by hand");
  }
}

package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Screw piles or driven piles at each support: as many as its load asks for, each long enough to
 * stand below the frost line. The working load is a planning value; the installer's torque or
 * driving record decides.
 */
final class PileFoundation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (FoundationShape.is(job, Foundation.SCREW_PILES)) return lines(job, "screw");
    if (FoundationShape.is(job, Foundation.DRIVEN_PILES)) return lines(job, "driven");
    return List.of();
  }

  private static List<Line> lines(Job job, String kind) {
    var base = new FoundationShape(job);
    var capacity = job.fact("pile." + kind + ".capacity");
    var name = kind.equals("screw") ? "Screw piles" : "Driven piles";
    var lines = new ArrayList<Line>();
    var counts = new ArrayList<Figure>();
    for (var group : Supports.groups(job)) {
      var each =
          Line.of(
              each(group),
              Stage.FOUNDATION,
              name + " at each: " + group.name(),
              group.load().over(capacity).roundedUp(),
              Unit.EACH,
              "load on each / working load of a pile, rounded up");
      lines.add(each);
      counts.add(group.count().times(each.named()));
    }
    var count =
        Line.of(
            "footing/piles/count",
            Stage.FOUNDATION,
            name,
            Figure.sum(Dimension.NONE, counts),
            Unit.EACH,
            "supports x piles at each",
            Buy.of(kind + "-pile-head", BuildTask.PILES),
            Labour.of("install-" + kind + "-pile", BuildTask.PILES));
    var inGround =
        job.scope()
            .site()
            .figure(SiteQuestions.FROST_DEPTH)
            .plus(job.fact("pile.below-frost"))
            .max(job.fact("pile." + kind + ".least-length"));
    lines.add(count);
    lines.add(
        Line.of(
            "footing/piles/length",
            Stage.FOUNDATION,
            name + ", length of the shafts",
            count.named().times(inGround.plus(base.underBoxes())),
            job.length(),
            "below frost, not less than the least length, and up to the underside of the boxes",
            Buy.of(kind + "-pile-shaft", BuildTask.PILES)));
    lines.add(
        Line.of(
            "footing/piles/rig",
            Stage.FOUNDATION,
            "Piling rig brought and fetched",
            Figure.count(1),
            Unit.EACH,
            "once",
            Buy.of(kind + "-pile-rig", BuildTask.PILES)));
    return lines;
  }

  /** The id of the line that says how many piles stand at each support of a group. */
  static String each(Supports.Group group) {
    return "footing/piles/" + group.id() + "/each";
  }
}

package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.Joint;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Boxes set on their supports, by crane or off a tilt-bed truck, levelled and fixed down.
 *
 * <p>On the hook hangs the heaviest box as it is delivered ({@link OwnMass}: tare, or with the
 * yard's steelwork) with slings, shackles and spreader, and a margin. Fit-out done on site is not
 * in it: a box that is moved later weighs more.
 *
 * <p>Crane time = rigging and a time for each pick, not below the least hire. Which of two hire
 * cranes it takes follows from lifted mass x reach against what the smaller one lifts at its radius
 * (common practice; the crane firm's chart decides). A tilt-bed truck cannot stack boxes: those are
 * lifted by crane all the same.
 */
final class BoxSetting implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    var crane = new ArrayList<Box>();
    for (var box : job.scope().boxes()) {
      var lifted = byCrane(job) || box.joint() == Joint.STACKED;
      if (lifted) crane.add(box);
      lines.add(
          one(
              "box/" + box.id() + "/set",
              "Box " + box.id() + ": set on its supports",
              "one for each box",
              Labour.of(lifted ? "set-box-by-crane" : "set-box-off-truck", BuildTask.SET_BOXES)));
      lines.add(
          one(
              "box/" + box.id() + "/level",
              "Box " + box.id() + ": levelled and shimmed",
              "until doors run free and diagonals agree",
              Buy.of("shim-set", BuildTask.LEVEL_BOXES),
              Labour.of("level-box", BuildTask.LEVEL_BOXES)));
      lines.add(
          Line.of(
              "box/" + box.id() + "/fix-down",
              Stage.CONTAINERS,
              "Box " + box.id() + ": corners welded or bolted down",
              Figure.count(4),
              Unit.EACH,
              "four corner castings",
              Buy.of(
                  box.joint() == Joint.STACKED ? "stacking-lock" : "tie-down", BuildTask.FIX_DOWN),
              Labour.of("fix-corner", BuildTask.FIX_DOWN)));
    }
    if (!crane.isEmpty()) lines.addAll(craneHire(job, crane));
    return lines;
  }

  private static boolean byCrane(Job job) {
    return job.scope().site().option(SiteQuestions.ACCESS, SiteAccess.class) == SiteAccess.CRANE;
  }

  private static List<Line> craneHire(Job job, List<Box> boxes) {
    var hook =
        Line.of(
            "crane/hook-load",
            Stage.CONTAINERS,
            "Load on the crane's hook",
            boxes.stream()
                .map(b -> job.measured("mass/box/" + b.id() + "/hook-load"))
                .reduce(Figure::max)
                .orElseThrow(),
            job.mass(),
            "heaviest box as it is delivered + slings, shackles and spreader, and a margin");
    var hours =
        Line.of(
            "crane/time",
            Stage.CONTAINERS,
            "Crane on site",
            job.fact("crane.set-up")
                .plus(job.fact("crane.pick").times(boxes.size()))
                .max(job.fact("crane.minimum")),
            Unit.HOUR,
            "rigging + time of each pick, not below the least hire");
    var needed = hook.named().times(job.scope().site().figure(SiteQuestions.CRANE_REACH));
    var small = job.fact("crane.small-load").times(job.fact("crane.small-reach"));
    var none = Figure.zero(Dimension.TIME);
    return List.of(
        hook,
        hours,
        Line.of(
            "crane/small",
            Stage.CONTAINERS,
            "Smaller crane, hours of hire",
            needed.ifAtLeast(small, none, hours.named()),
            Unit.HOUR,
            "where load x reach is within what it lifts at its radius",
            Buy.of("crane-hour-small", BuildTask.SET_BOXES)),
        Line.of(
            "crane/large",
            Stage.CONTAINERS,
            "Larger crane, hours of hire",
            needed.ifAtLeast(small, hours.named(), none),
            Unit.HOUR,
            "where load x reach is beyond the smaller crane",
            Buy.of("crane-hour-large", BuildTask.SET_BOXES)),
        one(
            "crane/brought",
            "Crane brought, lift plan, mats and spreader",
            "once",
            Buy.of("crane-call-out", BuildTask.SET_BOXES)));
  }

  private static Line one(String id, String what, String because, Resource... resources) {
    return Line.of(id, Stage.CONTAINERS, what, Figure.count(1), Unit.EACH, because, resources);
  }
}

package cornerpost.takeoff;

import cornerpost.scope.Drainage;
import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** The ground below raised boxes covered against damp and weeds, and water led away. */
final class GroundUnderBoxes implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    var onSlab =
        FoundationShape.is(job, Foundation.SLAB) || FoundationShape.is(job, Foundation.RAFT);
    if (!onSlab) {
      var cover =
          Line.of(
              "ground-cover/membrane",
              Stage.FOUNDATION,
              "Membrane on the ground below the boxes",
              new FoundationShape(job).plan(),
              job.area(),
              "plan of the boxes",
              Buy.of("ground-membrane", job.fact("waste.membrane"), BuildTask.BACKFILL),
              Labour.of("lay-membrane", BuildTask.BACKFILL));
      lines.add(cover);
      lines.add(
          Line.of(
              "ground-cover/gravel",
              Stage.FOUNDATION,
              "Gravel on the membrane",
              cover.named().times(job.fact("cover.gravel")),
              job.volume(),
              "area x thickness",
              Buy.of("gravel", job.fact("waste.stone"), BuildTask.BACKFILL),
              Labour.of("spread-gravel", BuildTask.BACKFILL)));
    }
    lines.addAll(
        switch (job.scope().site().option(SiteQuestions.DRAINAGE, Drainage.class)) {
          case NONE -> List.of();
          case SWALE -> swale(job);
          case FRENCH_DRAIN -> frenchDrain(job);
        });
    return lines;
  }

  /** Round the house at a distance from its walls, and on to the outlet. */
  private static Figure drainLength(Job job) {
    return job.measured("shell/outline")
        .plus(job.fact("drain.offset").times(8))
        .plus(job.fact("drain.outlet"));
  }

  private static List<Line> swale(Job job) {
    return List.of(
        Line.of(
            "drainage/excavation",
            Stage.FOUNDATION,
            "Swale cut and shaped",
            drainLength(job).times(job.fact("swale.section")),
            job.volume(),
            "round the house and to the outlet x cross-section; falls 6 in in 10 ft, IRC R401.3",
            Earthworks.digging(job, BuildTask.DRAINAGE)));
  }

  private static List<Line> frenchDrain(Job job) {
    var width = job.fact("drain.width");
    var depth = job.fact("drain.depth");
    var pipe =
        Line.of(
            "drainage/pipe",
            Stage.FOUNDATION,
            "Perforated drain pipe",
            drainLength(job),
            job.length(),
            "round the house and to the outlet",
            Buy.of("drain-pipe", job.fact("waste.pipe"), BuildTask.DRAINAGE),
            Labour.of("lay-drain-pipe", BuildTask.DRAINAGE));
    var trench = pipe.named().times(width).times(depth);
    return List.of(
        pipe,
        Line.of(
            "drainage/excavation",
            Stage.FOUNDATION,
            "Drain trench dug",
            trench,
            job.volume(),
            "length x width x depth",
            Earthworks.digging(job, BuildTask.DRAINAGE)),
        Line.of(
            "drainage/gravel",
            Stage.FOUNDATION,
            "Gravel in the drain trench",
            trench,
            job.volume(),
            "the trench filled",
            Buy.of("gravel", job.fact("waste.stone"), BuildTask.DRAINAGE),
            Labour.of("spread-gravel", BuildTask.DRAINAGE)),
        Line.of(
            "drainage/fabric",
            Stage.FOUNDATION,
            "Filter fabric round the gravel",
            pipe.named().times(width.plus(depth).times(2)),
            job.area(),
            "length x girth of the trench",
            Buy.of("geotextile", job.fact("waste.membrane"), BuildTask.DRAINAGE)));
  }
}

package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.PARTITIONS;

import cornerpost.measure.Unit;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Partitions between rooms: studs, plates, noggings, door heads. A pocket door takes a kit twice as
 * wide as the door, whose split studs come with it.
 */
final class Partitions implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var out = new Tally(Stage.FRAMING);
    var in = new Inside(job);
    for (var p : in.partitions()) partition(job, in, p, out);
    return out.lines();
  }

  private static void partition(Job job, Inside in, Inside.Partition p, Tally out) {
    var envelope = job.scope().envelope();
    var section = in.partitionStud();
    boolean treated = envelope.yes(EnvelopeQuestions.TREATED);
    var stud = Materials.stud(section, treated);
    var face = in.of(section, "face");
    var spacing = envelope.figure(EnvelopeQuestions.STUD_SPACING);
    var id = "partition/" + p.after().id();
    var name = "Partition " + p.after().id() + " to " + p.before().id();
    var run = new Shape(job).insideWidth(p.box()).minus(in.frameDepth().times(2));
    var height =
        new Shape(job)
            .insideHeight(p.box())
            .minus(in.of(section, "plate").times(job.fact("framing.plates")));
    var studs = StudLayout.studs(run, spacing);
    var bays = StudLayout.bays(run, spacing);
    var cripples = Figure.zero(run.dimension());
    var cut = new ArrayList<Piece>();
    if (p.hasDoor()) {
      var hole = hole(job, p.door());
      var displaced = StudLayout.displaced(job.fact("inner-door.offset"), hole, spacing);
      studs = studs.plus(job.fact("framing.jamb-studs").times(2)).minus(displaced);
      bays = bays.minus(displaced);
      var above = height.minus(job.fact("inner-door.opening-height")).atLeastZero();
      cripples = displaced.times(above);
      cut.add(new Piece(above, displaced, name + ", cripples"));
    }
    var count =
        out.add(
            id + "/stud-count",
            name + ", studs",
            studs.atLeastZero(),
            Unit.EACH,
            "run / spacing rounded up + 1, two at each jamb, less those displaced by the door");
    cut.add(new Piece(height, count, name + ", studs"));
    out.addCut(
        id + "/studs",
        name + ", stud lengths",
        count.times(height).plus(cripples),
        job.length(),
        "studs x height between plates, and cripples over the door",
        cut,
        Buy.of(stud, job.fact("waste.studs"), PARTITIONS));
    out.addCut(
        id + "/plates",
        name + ", plates",
        run.times(job.fact("framing.plates")),
        job.length(),
        "run x plates at floor and ceiling",
        List.of(new Piece(run, job.fact("framing.plates"), name + ", plates")),
        Buy.of(Materials.plate(section, treated), job.fact("waste.studs"), PARTITIONS));
    var noggings =
        out.add(
            id + "/nogging-count",
            name + ", noggings",
            bays.atLeastZero().times(envelope.figure(EnvelopeQuestions.NOGGING_ROWS)),
            Unit.EACH,
            "one a bay and row, none across the door");
    out.addCut(
        id + "/noggings",
        name + ", nogging lengths",
        noggings.times(spacing.minus(face)),
        job.length(),
        "pieces x (spacing - stud face)",
        List.of(new Piece(spacing.minus(face), noggings, name + ", noggings")),
        Buy.of(stud, job.fact("waste.studs"), PARTITIONS));
    if (p.hasDoor()) {
      var head = hole(job, p.door()).plus(face.times(2));
      out.addCut(
          id + "/head",
          name + ", head over the door",
          head.times(job.fact("framing.header-members")),
          job.length(),
          "head members x (opening width + 2 stud faces)",
          List.of(new Piece(head, job.fact("framing.header-members"), name + ", door head")),
          Buy.of(stud, job.fact("waste.studs"), PARTITIONS));
      out.add(
          id + "/opening",
          name + ", door opening framed",
          Figure.count(1),
          Unit.EACH,
          "one door",
          Labour.of("frame-lining-opening", PARTITIONS));
    }
    out.add(
        id + "/screws",
        name + ", framing screws",
        count
            .times(job.fact("framing.screws-a-stud"))
            .plus(noggings.times(job.fact("framing.screws-a-nogging"))),
        Unit.EACH,
        "for each stud and nogging",
        Buy.of("screw-framing", job.fact("waste.fixings"), PARTITIONS));
    out.add(
        id + "/frame-area",
        name + ", frame",
        run.times(new Shape(job).insideHeight(p.box())),
        job.area(),
        "run x inside height",
        Labour.of(
            Inside.isTimber(section) ? "frame-partition-timber" : "frame-partition-steel",
            PARTITIONS));
  }

  /** Width of the hole in the frame. */
  private static Figure hole(Job job, DoorToNext door) {
    var width = job.fact("inner-door.opening-width");
    return door == DoorToNext.POCKET ? width.times(2) : width;
  }
}

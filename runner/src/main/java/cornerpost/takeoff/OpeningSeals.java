package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * What keeps the water out: a drip bar above each window and outside door, longer than the opening;
 * strips that close the troughs of the corrugation at head and sill; a bead of sealant outside and
 * one inside with backing; the hose test. A pass-through is inside and gets none of it.
 *
 * <p>Sealant = perimeter x width x depth of the bead, twice.
 */
final class OpeningSeals implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var opening : job.scope().openings()) {
      if (opening.kind() == OpeningKind.PASS_THROUGH) continue;
      lines.addAll(beads(job, opening));
      if (Shape.takesUnit(opening)) lines.addAll(bars(job, opening));
    }
    return lines;
  }

  private static List<Line> beads(Job job, Opening opening) {
    var id = "opening/" + opening.id();
    var name = "Opening " + opening.id() + ": ";
    var bead =
        Line.of(
            id + "/bead",
            Stage.SHELL,
            name + "beads outside and inside, with backing",
            Shape.perimeter(opening).times(2),
            job.length(),
            "perimeter, twice",
            Buy.of("backer-rod", job.fact("waste.sealant"), BuildTask.SEAL_OPENINGS),
            Labour.of("seal-opening", BuildTask.SEAL_OPENINGS));
    return List.of(
        bead,
        Line.of(
            id + "/sealant",
            Stage.SHELL,
            name + "sealant",
            bead.named().times(job.fact("sealant.width")).times(job.fact("sealant.depth")),
            Unit.ML,
            "length x width x depth of the bead",
            Buy.of("sealant", job.fact("waste.sealant"), BuildTask.SEAL_OPENINGS)),
        Line.of(
            id + "/hose-test",
            Stage.SHELL,
            name + "hose test",
            Figure.count(1),
            Unit.EACH,
            "each opening to the open air",
            Labour.of("hose-test", BuildTask.HOSE_TEST)));
  }

  private static List<Line> bars(Job job, Opening opening) {
    var id = "opening/" + opening.id();
    var name = "Opening " + opening.id() + ": ";
    var work = new Steelwork(new Shape(job).boxOf(opening));
    var lines = new ArrayList<Line>();
    if (opening.wall() != Wall.ROOF) {
      lines.add(
          Line.of(
                  id + "/drip-bar",
                  Stage.SHELL,
                  name + "drip bar",
                  opening.width().plus(job.fact("drip.overrun").times(2)),
                  job.length(),
                  "width, and beyond the opening on each side",
                  Buy.of(
                      "drip-angle",
                      job.fact("waste.steel-section"),
                      work.at(BuildTask.WELD_FRAMES)),
                  work.hours("weld-drip-bar", BuildTask.WELD_FRAMES))
              .cutAs(
                  List.of(
                      Piece.of(
                          opening.width().plus(job.fact("drip.overrun").times(2)),
                          1,
                          "opening " + opening.id() + ", drip bar"))));
    }
    if (corrugated(opening.wall()) && !DoorEndWall.takes(job, opening)) {
      lines.add(
          Line.of(
              id + "/closure-strip",
              Stage.SHELL,
              name + "strips that close the troughs",
              opening.width().times(Shape.toTheFloor(opening) ? 1 : 2),
              job.length(),
              Shape.toTheFloor(opening) ? "head" : "head and sill",
              Buy.of(
                  "closure-strip", job.fact("waste.steel-section"), work.at(BuildTask.WELD_FRAMES)),
              work.hours("weld-closure-strip", BuildTask.WELD_FRAMES)));
    }
    return lines;
  }

  private static boolean corrugated(Wall wall) {
    return switch (wall) {
      case LEFT, RIGHT, BLIND_END -> true;
      case DOOR_END, ROOF -> false;
    };
  }
}

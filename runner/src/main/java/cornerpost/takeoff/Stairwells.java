package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * The stairwell to a box that stands on another: the roof below and the floor above are cut over
 * the flight's whole going, and trimmers run round both holes, since the cross members that are cut
 * carry the floor. Stairs by IRC R311.7.5; sections are the engineer's.
 */
final class Stairwells implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var shape = new Shape(job);
    var lines = new ArrayList<Line>();
    for (var box : job.scope().boxes()) {
      if (shape.stacked(box)) lines.addAll(lines(job, shape, box));
    }
    return lines;
  }

  private static List<Line> lines(Job job, Shape shape, Box box) {
    var below = shape.joinedTo(box).orElseThrow();
    var work = new Steelwork(below);
    var id = "stairwell/" + box.id();
    var name = "Stairwell to box " + box.id() + ": ";
    var risers =
        Line.of(
            id + "/risers",
            Stage.SHELL,
            name + "risers",
            shape.height(below).over(job.fact("stair.riser")).roundedUp(),
            Unit.EACH,
            "height of the box below / largest riser, rounded up");
    var going = risers.named().minus(Figure.count(1)).times(job.fact("stair.tread"));
    var round =
        Line.of(
            id + "/cut",
            Stage.SHELL,
            name + "roof below and floor above cut through",
            going.plus(job.fact("stairwell.width")).times(2).times(2),
            job.length(),
            "round the flight's going and width, twice",
            work.hours("cut-sheet", BuildTask.CUT_OPENINGS));
    var trimmers =
        Line.of(
                id + "/trimmers",
                Stage.SHELL,
                name + "trimmers round both holes",
                round.named(),
                job.length(),
                "along the cuts",
                Buy.of(
                    "strengthening-tube",
                    job.fact("waste.steel-section"),
                    work.at(BuildTask.MAKE_FRAMES)),
                work.hours("make-frame", BuildTask.MAKE_FRAMES),
                work.hours("fit-frame", BuildTask.FIT_FRAMES))
            .cutAs(
                List.of(
                    Piece.of(going, 4, name + "trimmers along the flight"),
                    Piece.of(job.fact("stairwell.width"), 4, name + "trimmers across the flight")));
    var wire =
        Line.of(
            id + "/welding-wire",
            Stage.SHELL,
            name + "welding wire",
            Welds.wire(job, trimmers.named()),
            job.mass(),
            "fillet section x density x length, convexity added, over the share deposited",
            Buy.of("welding-wire", job.fact("waste.weld-wire"), work.at(BuildTask.WELD_FRAMES)));
    var area =
        Line.of(
            id + "/hole",
            Stage.SHELL,
            name + "hole in the floor",
            going.times(job.fact("stairwell.width")),
            job.area(),
            "going x width of the flight");
    return List.of(risers, area, round, trimmers, wire);
  }
}

package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.Joint;
import cornerpost.scope.Opening;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Battens behind the cladding, as they are set out: uprights as high as the box at their spacing
 * along its outside walls, short ones above and below each window and door in their place, four
 * round each of these, and one along the foot. The share clad is taken of the runs, and of the
 * openings alike, since which walls are clad is not entered.
 */
final class CladdingBattens {
  private final Job job;
  private final Shape shape;
  private final Figure share;
  private final Figure spacing;

  CladdingBattens(Job job, Figure share) {
    this.job = job;
    this.shape = new Shape(job);
    this.share = share;
    this.spacing = job.fact("cladding.batten-spacing");
  }

  List<Line> lines() {
    var lines = new ArrayList<Line>();
    var pieces = new ArrayList<Piece>();
    for (var box : job.scope().boxes()) box(box, lines, pieces);
    var lengths = pieces.stream().map(p -> p.length().times(p.count())).toList();
    lines.add(
        Line.of(
                "walls/battens",
                Stage.OUTSIDE,
                "Battens behind the cladding",
                Inside.lengths(lengths),
                job.length(),
                "uprights at their spacing, short ones at openings, round these and along the foot",
                Buy.of("cladding-batten", job.fact("waste.timber"), BuildTask.CLADDING_BATTENS),
                Labour.of("fix-batten", BuildTask.CLADDING_BATTENS))
            .cutAs(pieces));
    return lines;
  }

  private void box(Box box, List<Line> lines, List<Piece> pieces) {
    var id = "walls/" + box.id();
    var name = "Box " + box.id() + ", ";
    var run =
        count(
            lines,
            id + "/batten-run",
            name + "outside walls clad, along the foot",
            run(box).times(share),
            job.length(),
            "perimeter less where boxes touch, x share clad");
    var uprights =
        count(
            lines,
            id + "/batten-uprights",
            name + "battens upright, openings not taken off",
            run.over(spacing).roundedUp(),
            Unit.EACH,
            "run clad / spacing, rounded up");
    var openings = Shape.WALLS.stream().flatMap(w -> shape.unitsIn(box, w).stream()).toList();
    var height = shape.height(box);
    var whole = uprights;
    for (var o : openings) {
      var displaced = displaced(o);
      whole = whole.minus(displaced);
      var rest = height.minus(o.height()).atLeastZero();
      var below = o.sill().min(rest);
      var of = name + "opening " + o.id() + ", battens ";
      var sides = share.times(2).roundedUp();
      pieces.add(new Piece(below, displaced, of + "below"));
      pieces.add(new Piece(rest.minus(below), displaced, of + "above"));
      pieces.add(new Piece(o.height(), sides, of + "beside"));
      pieces.add(new Piece(o.width(), sides, of + "along head and sill"));
    }
    pieces.add(new Piece(height, whole.atLeastZero(), name + "battens upright"));
    pieces.add(Piece.of(run, 1, name + "batten along the foot"));
  }

  /** Uprights that stand in the way of an opening, for the share clad. */
  private Figure displaced(Opening opening) {
    return opening.width().times(share).over(spacing).roundedDown();
  }

  /** Round the box, less its sides or ends where another box stands. */
  private Figure run(Box box) {
    var run = shape.length(box).plus(shape.width(box)).times(2);
    for (var pair : shape.pairs()) {
      if (!pair.box().equals(box) && !pair.other().equals(box)) continue;
      if (pair.joint() == Joint.SIDE_BY_SIDE) run = run.minus(shape.touching(pair));
      if (pair.joint() == Joint.END_TO_END) {
        run = run.minus(shape.width(pair.box()).min(shape.width(pair.other())));
      }
    }
    return run.atLeastZero();
  }

  private static Figure count(
      List<Line> lines, String id, String name, Figure quantity, Unit unit, String because) {
    var line = Line.of(id, Stage.OUTSIDE, name, quantity, unit, because);
    lines.add(line);
    return line.named();
  }
}

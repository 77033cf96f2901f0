package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Joint;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Purlins of an over-roof: rows along each box that is open to the sky, at their spacing up the
 * slope and one more at the far eaves, from overhang to overhang. Where boxes touch there is no
 * overhang between them, and the row at the joint is counted once.
 */
final class RoofFrame {
  private final Job job;
  private final Shape shape;

  RoofFrame(Job job) {
    this.job = job;
    this.shape = new Shape(job);
  }

  List<Line> lines() {
    var lines = new ArrayList<Line>();
    var lengths = new ArrayList<Figure>();
    var brackets = new ArrayList<Figure>();
    var pieces = new ArrayList<Piece>();
    var overhang = job.scope().deckAndRoof().figure(DeckAndRoofQuestions.OVERHANG);
    for (var box : job.scope().boxes()) {
      if (!open(box)) continue;
      var along = shape.length(box).plus(overhang.times(2 - joined(box, Joint.END_TO_END)));
      var across = shape.width(box).plus(overhang.times(2 - joined(box, Joint.SIDE_BY_SIDE)));
      var rows =
          Line.of(
              "roof/" + box.id() + "/purlin-rows",
              Stage.OUTSIDE,
              "Box " + box.id() + ", rows of purlins",
              across
                  .times(job.fact("roof.pitch-factor"))
                  .over(job.fact("roof.purlin-spacing"))
                  .roundedUp()
                  .plus(Figure.count(sharesRow(box) ? 0 : 1)),
              Unit.EACH,
              "width with its overhang, up the slope / spacing, rounded up, and one; the row at a"
                  + " joint once");
      lines.add(rows);
      lengths.add(rows.named().times(along));
      pieces.add(new Piece(along, rows.named(), "box " + box.id() + ", purlins"));
      var inRow = along.over(job.fact("roof.bracket-spacing")).roundedUp().plus(Figure.count(1));
      brackets.add(rows.named().times(inRow));
    }
    lines.add(
        Line.of(
                "roof/purlins",
                Stage.OUTSIDE,
                "Purlins",
                Inside.lengths(lengths),
                job.length(),
                "rows x length of the box with its overhang",
                Buy.of("purlin", job.fact("waste.steel-section"), BuildTask.ROOF_FRAME),
                Labour.of("fix-purlin", BuildTask.ROOF_FRAME))
            .cutAs(pieces));
    lines.add(
        Line.of(
            "roof/brackets",
            Stage.OUTSIDE,
            "Brackets and stub posts of the purlins",
            Inside.counts(brackets),
            Unit.EACH,
            "rows x (length / spacing, rounded up, and one); on the top rails, never on the sheet"
                + " alone",
            Buy.of("roof-bracket", BuildTask.ROOF_FRAME),
            Labour.of("weld-roof-bracket", BuildTask.ROOF_FRAME)));
    return lines;
  }

  private boolean open(Box box) {
    return shape.above(box).isEmpty();
  }

  /** Whether its first row is the last of the box it stands beside. */
  private boolean sharesRow(Box box) {
    return box.joint() == Joint.SIDE_BY_SIDE && shape.joinedTo(box).filter(this::open).isPresent();
  }

  /** At how many of its sides or ends another roof goes on, 0 to 2. */
  private long joined(Box box, Joint joint) {
    long pairs =
        shape.pairs().stream()
            .filter(p -> p.joint() == joint && open(p.box()) && open(p.other()))
            .filter(p -> p.box().equals(box) || p.other().equals(box))
            .count();
    return Math.min(2, pairs);
  }
}

package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.FrameSection;
import cornerpost.scope.Opening;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;

/**
 * The steel frame of each opening, and the bars it is cut from. Four mitred members round a window;
 * head and two posts where the hole goes down to the floor. A pass-through gets a frame in both
 * sheets.
 *
 * <p>Length to cut is measured at the outer edge of the mitres; the mass goes by the centre line.
 * Bars: all frames of one section over a bar's length, waste added, whole bars.
 */
final class OpeningFrames implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    var bySection = new EnumMap<FrameSection, List<Figure>>(FrameSection.class);
    var pieces = new EnumMap<FrameSection, List<Piece>>(FrameSection.class);
    for (var opening : job.scope().openings()) {
      if (opening.frame() == FrameSection.NO_FRAME) continue;
      var length = length(job, opening);
      lines.add(length);
      lines.add(mass(job, opening));
      lines.add(joints(job, opening));
      bySection.computeIfAbsent(opening.frame(), s -> new ArrayList<>()).add(length.named());
      pieces.computeIfAbsent(opening.frame(), s -> new ArrayList<>()).addAll(pieces(job, opening));
    }
    bySection.forEach(
        (section, lengths) -> lines.add(bars(job, section, lengths).cutAs(pieces.get(section))));
    return lines;
  }

  private static Line length(Job job, Opening opening) {
    var work = new Steelwork(new Shape(job).boxOf(opening));
    return Line.of(
        "opening/" + opening.id() + "/frame-length",
        Stage.SHELL,
        "Opening " + opening.id() + ": frame members, cut length",
        members(job, opening, 2).times(Shape.sheets(opening)),
        job.length(),
        "members measured at the outer edge of their mitres",
        work.hours("make-frame", BuildTask.MAKE_FRAMES),
        work.hours("fit-frame", BuildTask.FIT_FRAMES));
  }

  private static Line mass(Job job, Opening opening) {
    return Line.of(
        "opening/" + opening.id() + "/frame-steel",
        Stage.SHELL,
        "Opening " + opening.id() + ": mass of the frame",
        members(job, opening, 1)
            .times(Shape.sheets(opening))
            .times(job.fact(opening.frame().factId() + ".mass")),
        job.mass(),
        "centre line x mass of a metre");
  }

  /** Corners of the frame, each sawn and welded. */
  private static Line joints(Job job, Opening opening) {
    var corners = (Shape.toTheFloor(opening) ? 2L : 4L) * Shape.sheets(opening);
    var work = new Steelwork(new Shape(job).boxOf(opening));
    return Line.of(
        "opening/" + opening.id() + "/frame-corners",
        Stage.SHELL,
        "Opening " + opening.id() + ": corners of the frame",
        Figure.count(corners),
        Unit.EACH,
        "two or four corners",
        work.hours("weld-frame-corner", BuildTask.MAKE_FRAMES));
  }

  /**
   * Members of one frame. {@code edge} is 2 for the outer edge and 1 for the centre line: the frame
   * stands outside the clear opening by its width seen on the wall.
   */
  private static Figure members(Job job, Opening opening, int edge) {
    var face = job.fact(opening.frame().factId() + ".face");
    var across = opening.width().plus(face.times(edge));
    var up = opening.height().plus(face.times(edge));
    if (!Shape.toTheFloor(opening)) return across.plus(up).times(2);
    // three sides: the head runs over both posts, the posts end under its outer or centre line
    var head = opening.width().plus(face.times(2));
    return head.plus(opening.height().plus(face).times(2));
  }

  /** What {@link #members} adds up at the outer edge. */
  private static List<Piece> pieces(Job job, Opening opening) {
    var face = job.fact(opening.frame().factId() + ".face");
    var name = "opening " + opening.id() + ", ";
    long sheets = Shape.sheets(opening);
    var head = opening.width().plus(face.times(2));
    if (Shape.toTheFloor(opening)) {
      return List.of(
          Piece.of(head, sheets, name + "head"),
          Piece.of(opening.height().plus(face), 2 * sheets, name + "posts, mitred at the head"));
    }
    return List.of(
        Piece.of(head, 2 * sheets, name + "head and sill, mitred at both ends"),
        Piece.of(
            opening.height().plus(face.times(2)), 2 * sheets, name + "posts, mitred at both ends"));
  }

  private static Line bars(Job job, FrameSection section, Collection<Figure> lengths) {
    return Line.of(
        "frame/" + section.factId().substring("steel.".length()) + "/bars",
        Stage.SHELL,
        "Bars of " + section.label() + " for the opening frames",
        Figure.sum(Dimension.LENGTH, List.copyOf(lengths)),
        job.length(),
        "all frames of this section; waste for cutting, then whole bars",
        Buy.of(
            section.factId().replace("steel.", "bar-"),
            job.fact("waste.steel-section"),
            BuildTask.MAKE_FRAMES));
  }
}

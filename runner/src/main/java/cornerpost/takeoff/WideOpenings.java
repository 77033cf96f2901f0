package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * A beam over each wide opening, and a post at both its ends: a long side works as a deep beam, and
 * what is cut out of it must be carried round. Section and connections are the engineer's; the
 * lengths here are for the budget. Openings in the door end stand in a wall of their own.
 */
final class WideOpenings implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var box : job.scope().boxes()) {
      var cut = job.scope().openingsOf(box).stream().filter(o -> weakens(job, o)).toList();
      if (!cut.isEmpty()) lines.addAll(lines(job, box, cut));
    }
    return lines;
  }

  private static boolean weakens(Job job, Opening opening) {
    return (Shape.takesUnit(opening) || opening.kind() == OpeningKind.PASS_THROUGH)
        && opening.wall() != Wall.ROOF
        && !DoorEndWall.takes(job, opening);
  }

  private static List<Line> lines(Job job, Box box, List<Opening> openings) {
    var beams = new ArrayList<Figure>();
    var posts = new ArrayList<Figure>();
    var beamPieces = new ArrayList<Piece>();
    var postPieces = new ArrayList<Piece>();
    var height = new Shape(job).insideHeight(box);
    for (var o : openings) {
      var beam = o.width().plus(job.fact("strengthening.bearing").times(2));
      beams.add(whereWide(job, o, beam).times(Shape.sheets(o)));
      posts.add(whereWide(job, o, height.times(2)).times(Shape.sheets(o)));
      var of = "opening " + o.id() + ", ";
      beamPieces.add(Piece.of(whereWide(job, o, beam), Shape.sheets(o), of + "beam over it"));
      postPieces.add(
          Piece.of(whereWide(job, o, height), 2L * Shape.sheets(o), of + "posts beside it"));
    }
    var name = "Box " + box.id() + ": ";
    return List.of(
        line(
            job,
            box,
            "strengthening-beams",
            name + "beams over wide openings",
            beams,
            beamPieces,
            "width and bearings, where wider than a single opening should be"),
        line(
            job,
            box,
            "strengthening-posts",
            name + "posts beside wide openings",
            posts,
            postPieces,
            "two of the inside height at each, in both boxes of a passage"));
  }

  private static Line line(
      Job job,
      Box box,
      String what,
      String name,
      List<Figure> lengths,
      List<Piece> pieces,
      String because) {
    var work = new Steelwork(box);
    return Line.of(
            "box/" + box.id() + "/" + what,
            Stage.SHELL,
            name,
            Figure.sum(Dimension.LENGTH, lengths),
            job.length(),
            because,
            Buy.of(
                "strengthening-tube",
                job.fact("waste.steel-section"),
                work.at(BuildTask.MAKE_FRAMES)),
            work.hours("make-frame", BuildTask.MAKE_FRAMES),
            work.hours("fit-frame", BuildTask.FIT_FRAMES))
        .cutAs(pieces);
  }

  private static Figure whereWide(Job job, Opening opening, Figure length) {
    return opening
        .width()
        .ifAtLeast(job.fact("limit.opening-width"), length, Figure.zero(Dimension.LENGTH));
  }
}

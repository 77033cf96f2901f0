package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.CEILING_BOARD;
import static cornerpost.takeoff.BuildTask.JOINTS;
import static cornerpost.takeoff.BuildTask.WALL_BOARD;

import cornerpost.measure.Unit;
import cornerpost.scope.BoardFinish;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.LiningBoard;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Board on walls, partitions, reveals and ceilings, bought in whole sheets; screws, and for gypsum
 * boards tape, compound or skim, and beads. Tape 380 ft, compound 5 gal and screws 1000 for each
 * 1000 sq ft: F. R. Dagostino and S. J. Peterson, Estimating in Building Construction, example
 * 16-3. Bathrooms get moisture-resistant board where the walls are plasterboard.
 */
final class Lining implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.INSULATION);
    var wallBoard = in.wallBoard();
    var ceilingBoard = in.ceilingBoard();
    var sheets = job.fact("waste.sheet");
    var reveals = reveals(job, in, out);
    var faces =
        out.add(
            "lining/house/wall-faces",
            "Faces of walls, partitions and reveals",
            job.measured("inside/wall-area")
                .plus(job.measured("inside/partition-area").times(2))
                .plus(reveals),
            job.area(),
            "outside walls + both faces of partitions + reveals");
    var walls = faces;
    if (wallBoard == LiningBoard.PLASTERBOARD && !in.bathrooms().isEmpty()) {
      var terms = new ArrayList<Figure>();
      for (var r : in.bathrooms()) {
        terms.add(in.wallLine(r).times(in.clearHeight(in.boxOf(r))));
      }
      var wet =
          out.add(
              "lining/wet-rooms/boards",
              "Moisture-resistant board in bathrooms",
              Inside.areas(terms).min(faces),
              job.area(),
              "wall line x height of each bathroom, openings not taken off",
              Buy.of("board-moisture-resistant", sheets, WALL_BOARD),
              Labour.of("board-walls", WALL_BOARD));
      walls = faces.minus(wet);
    }
    out.add(
        "lining/walls/boards",
        "Wall board, " + wallBoard.label(),
        walls,
        job.area(),
        "faces less those boarded otherwise",
        Buy.of(Materials.board(wallBoard), sheets, WALL_BOARD),
        Labour.of("board-walls", WALL_BOARD));
    var ceilings = job.measured("inside/ceiling-area");
    out.add(
        "lining/ceilings/boards",
        "Ceiling board, " + ceilingBoard.label(),
        ceilings,
        job.area(),
        "ceilings",
        Buy.of(Materials.board(ceilingBoard), sheets, CEILING_BOARD),
        Labour.of("board-ceilings", CEILING_BOARD));
    out.add(
        "lining/house/screws",
        "Board screws",
        faces.plus(ceilings).times(job.fact("board.screws-per-area")),
        Unit.EACH,
        "boarded area x screws for each area",
        Buy.of("screw-board", job.fact("waste.fixings"), WALL_BOARD));
    joints(job, in, out, faces, ceilings);
    return out.lines();
  }

  /** The sides, head and sill of openings, as deep as the lining. */
  private static Figure reveals(Job job, Inside in, Tally out) {
    var rounds = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      for (var o : in.openings(box)) if (Inside.isFramed(o)) rounds.add(Shape.perimeter(o));
    }
    return out.add(
        "lining/openings/reveals",
        "Reveals of openings",
        Inside.lengths(rounds).times(in.wallBuildUp()),
        job.area(),
        "round of each opening x build-up of the wall");
  }

  private static boolean isGypsum(LiningBoard board) {
    return board == LiningBoard.PLASTERBOARD || board == LiningBoard.FIBRE_BOARD;
  }

  private static void joints(Job job, Inside in, Tally out, Figure faces, Figure ceilings) {
    var finish = job.scope().envelope().option(EnvelopeQuestions.BOARD_FINISH, BoardFinish.class);
    var gypsum = new ArrayList<Figure>();
    if (isGypsum(in.wallBoard())) gypsum.add(faces);
    if (isGypsum(in.ceilingBoard())) gypsum.add(ceilings);
    if (finish == BoardFinish.NONE || gypsum.isEmpty()) return;
    var area =
        out.add(
            "lining/joints/area",
            "Gypsum board to be jointed",
            Inside.areas(gypsum),
            job.area(),
            "faces and ceilings of gypsum board",
            Labour.of(finish == BoardFinish.SKIM ? "skim-coat" : "tape-and-fill", JOINTS));
    out.add(
        "lining/joints/tape",
        "Joint tape",
        area.times(job.fact("board.tape-per-area")),
        job.length(),
        "area x tape for each area",
        Buy.of("joint-tape", job.fact("board.tape-waste"), JOINTS));
    if (finish == BoardFinish.SKIM) {
      out.add(
          "lining/joints/skim",
          "Skim plaster",
          area.times(job.fact("board.skim-per-area")),
          job.mass(),
          "area x plaster for each area",
          Buy.of("skim-plaster", job.fact("waste.paint"), JOINTS));
    } else {
      out.add(
          "lining/joints/compound",
          "Joint compound",
          area.times(job.fact("board.compound-per-area")),
          job.liquid(),
          "area x compound for each area",
          Buy.of("joint-compound", job.fact("waste.paint"), JOINTS));
    }
    var edges = new ArrayList<Figure>();
    var cut = new ArrayList<Piece>();
    for (var box : job.scope().boxes()) {
      for (var o : in.openings(box)) {
        if (!Inside.isFramed(o)) continue;
        edges.add(o.width().plus(o.height().times(2)));
        cut.add(Piece.of(o.height(), 2, "opening " + o.id() + ", beads of the sides"));
        cut.add(Piece.of(o.width(), 1, "opening " + o.id() + ", bead of the head"));
      }
    }
    if (!edges.isEmpty() && isGypsum(in.wallBoard())) {
      out.addCut(
          "lining/joints/beads",
          "Corner beads",
          Inside.lengths(edges),
          job.length(),
          "both sides and head of each opening",
          cut,
          Buy.of("corner-bead", job.fact("waste.fixings"), JOINTS));
    }
  }
}

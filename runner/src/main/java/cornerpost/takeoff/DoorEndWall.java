package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.CargoDoors;
import cornerpost.scope.Opening;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * The cargo-door end. Doors kept are eased and get new gaskets where the box is used; doors welded
 * shut are sealed and lose their bars; doors removed leave with their gear. Where they are removed,
 * or kept with a window or door set behind them, a wall of steel posts and sheet closes the door
 * opening round those units; nothing is cut there.
 */
final class DoorEndWall implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var box : job.scope().boxes()) {
      lines.addAll(
          switch (box.cargoDoors()) {
            case KEEP -> kept(job, box);
            case WELD_SHUT -> weldedShut(job, box);
            case REMOVE -> removed(box);
          });
      if (closed(job, box)) lines.addAll(wall(job, box));
    }
    return lines;
  }

  /** Whether an opening stands in that wall of posts and sheet, so that no sheet is cut for it. */
  static boolean takes(Job job, Opening opening) {
    return opening.wall() == Wall.DOOR_END
        && new Shape(job).boxOf(opening).cargoDoors() != CargoDoors.WELD_SHUT;
  }

  private static boolean closed(Job job, Box box) {
    return switch (box.cargoDoors()) {
      case REMOVE -> true;
      case KEEP -> !job.scope().openingsIn(box, Wall.DOOR_END).isEmpty();
      case WELD_SHUT -> false;
    };
  }

  private static List<Line> kept(Job job, Box box) {
    var ease =
        one(
            box,
            "doors",
            "cargo doors eased and greased",
            new Steelwork(box).hours("ease-doors", BuildTask.CARGO_DOORS));
    return switch (box.condition()) {
      case FACTORY_NEW, ONE_TRIP -> List.of(ease);
      case CARGO_WORTHY, WIND_TIGHT, AS_IS ->
          List.of(
              ease,
              Line.of(
                  "box/" + box.id() + "/door-gasket",
                  Stage.SHELL,
                  "Box " + box.id() + ": new gaskets of the cargo doors",
                  leaves(job, box),
                  job.length(),
                  "round both leaves",
                  Buy.of("door-gasket", job.fact("waste.sealant"), BuildTask.CARGO_DOORS),
                  new Steelwork(box).hours("fit-gasket", BuildTask.CARGO_DOORS)));
    };
  }

  private static List<Line> weldedShut(Job job, Box box) {
    var work = new Steelwork(box);
    var id = "box/" + box.id();
    var seam =
        Line.of(
            id + "/doors-welded",
            Stage.SHELL,
            "Box " + box.id() + ": cargo doors welded shut",
            round(job, box).plus(box.fact(job.facts(), "door-height")),
            job.length(),
            "round the door opening and down the middle",
            work.hours("weld-doors", BuildTask.CARGO_DOORS));
    var wire =
        Line.of(
            id + "/doors-wire",
            Stage.SHELL,
            "Box " + box.id() + ": welding wire of the cargo doors",
            Welds.wire(job, seam.named()),
            job.mass(),
            "fillet section x density x length, convexity added, over the share deposited",
            Buy.of("welding-wire", job.fact("waste.weld-wire"), work.at(BuildTask.CARGO_DOORS)));
    return List.of(
        seam,
        wire,
        one(
            box,
            "door-bars",
            "lock bars and handles taken off, holes plugged",
            work.hours("strip-door-gear", BuildTask.CARGO_DOORS)));
  }

  private static List<Line> removed(Box box) {
    return List.of(
        one(
            box,
            "doors-off",
            "cargo doors cut off their hinges and taken away",
            new Steelwork(box).hours("remove-doors", BuildTask.CARGO_DOORS)));
  }

  private static List<Line> wall(Job job, Box box) {
    var shape = new Shape(job);
    var work = new Steelwork(box);
    var width = box.fact(job.facts(), "door-width");
    var height = box.fact(job.facts(), "door-height");
    var id = "box/" + box.id();
    var name = "Box " + box.id() + ": ";
    var holes =
        shape.measuredArea(
            job.scope().openingsIn(box, Wall.DOOR_END).stream().filter(Shape::takesUnit).toList());
    var sheet =
        Line.of(
            id + "/end-wall",
            Stage.SHELL,
            name + "wall in the door opening, sheet net of units",
            width.times(height).minus(holes).atLeastZero(),
            job.area(),
            "door opening less windows and doors in it",
            Buy.of("end-wall-sheet", job.fact("waste.steel-sheet"), work.at(BuildTask.CARGO_DOORS)),
            work.hours("sheet-end-wall", BuildTask.CARGO_DOORS));
    var posts = width.over(job.fact("doors.stud-spacing")).roundedUp().plus(Figure.count(1));
    var frame =
        Line.of(
                id + "/end-wall-posts",
                Stage.SHELL,
                name + "posts and rails of the wall in the door opening",
                posts.times(height).plus(width.times(2)),
                job.length(),
                "posts at their spacing, head and foot",
                Buy.of(
                    "end-wall-post",
                    job.fact("waste.steel-section"),
                    work.at(BuildTask.CARGO_DOORS)),
                work.hours("frame-end-wall", BuildTask.CARGO_DOORS))
            .cutAs(
                List.of(
                    new Piece(height, posts, name + "posts of the wall in the door opening"),
                    Piece.of(width, 2, name + "its head and foot")));
    return List.of(
        sheet,
        frame,
        Line.of(
            id + "/end-wall-wire",
            Stage.SHELL,
            name + "welding wire of the wall in the door opening",
            Welds.wire(
                job, round(job, box).plus(frame.named().times(job.fact("weld.inside-share")))),
            job.mass(),
            "round the door opening, stitches along posts and rails",
            Buy.of("welding-wire", job.fact("waste.weld-wire"), work.at(BuildTask.CARGO_DOORS))),
        Line.of(
            id + "/end-wall-primer",
            Stage.SHELL,
            name + "primer on the wall in the door opening",
            sheet
                .named()
                .times(2)
                .times(job.fact("edge.primer-coats"))
                .times(shape.developed(Wall.LEFT))
                .over(job.fact("paint.steel-primer.coverage")),
            job.liquid(),
            "both faces along the corrugation x coats / coverage",
            Buy.of("steel-primer", job.fact("waste.paint"), work.at(BuildTask.CARGO_DOORS))));
  }

  private static Figure round(Job job, Box box) {
    return box.fact(job.facts(), "door-width").plus(box.fact(job.facts(), "door-height")).times(2);
  }

  /** Round both leaves: the middle twice. */
  private static Figure leaves(Job job, Box box) {
    return round(job, box).plus(box.fact(job.facts(), "door-height").times(2));
  }

  private static Line one(Box box, String id, String what, Resource... resources) {
    return Line.of(
        "box/" + box.id() + "/" + id,
        Stage.SHELL,
        "Box " + box.id() + ": " + what,
        Figure.count(1),
        Unit.EACH,
        "one pair of doors",
        resources);
  }
}

package cornerpost.takeoff;

import static cornerpost.takeoff.Inside.areas;

import cornerpost.scope.Box;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * The clear dimensions inside and the areas that lining, paint and floors are measured by. Nothing
 * is bought here. Wall boards run past the ends of partitions; a partition takes its own thickness
 * off ceiling and floor.
 */
final class InsideMeasures {
  private InsideMeasures() {}

  /** What the linings take. */
  static List<Line> buildUps(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FRAMING);
    out.add(
        "inside/wall-build-up",
        "Build-up of a wall lining, steel to board face",
        in.wallBuildUp(),
        job.shortLength(),
        "gap behind the studs + stud depth + board");
    out.add(
        "inside/ceiling-build-up",
        "Build-up of the ceiling, steel to board face",
        in.ceilingBuildUp(),
        job.shortLength(),
        "the deeper of insulation and battens + board");
    out.add(
        "inside/partition-thickness",
        "Thickness of a partition",
        in.partitionThickness(),
        job.shortLength(),
        "stud depth + a board on each face");
    return out.lines();
  }

  /** The clear dimensions of each box; after the build-ups, which they point at. */
  static List<Line> boxes(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FRAMING);
    for (var box : job.scope().boxes()) {
      var id = "inside/" + box.id() + "/";
      out.add(
          id + "length",
          "Box " + box.id() + ", clear length",
          in.clearLength(box),
          job.length(),
          "inside length of the box less the linings at both ends");
      out.add(
          id + "width",
          "Box " + box.id() + ", clear width",
          in.clearWidth(box),
          job.length(),
          "inside width of the box less the linings of both sides");
      out.add(
          id + "height",
          "Box " + box.id() + ", floor to ceiling before floor covering",
          in.clearHeight(box),
          job.length(),
          "inside height of the box less the ceiling");
    }
    return out.lines();
  }

  /** The rows of each room; after the rows of the boxes, which they point at. */
  static List<Line> rooms(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FRAMING);
    for (var room : job.scope().rooms()) {
      var id = "room/" + room.id() + "/";
      out.add(
          id + "length",
          room.id() + ", clear length",
          in.length(room),
          job.length(),
          "length entered less end lining and half of each partition");
      out.add(
          id + "width",
          room.id() + ", clear width",
          in.width(room),
          job.length(),
          "clear width of its box");
      out.add(
          id + "height",
          room.id() + ", clear height",
          in.height(room),
          job.length(),
          "floor to ceiling less the floor covering");
    }
    return out.lines();
  }

  /** The areas of rooms and house; after the dimensions, which they point at. */
  static List<Line> houseAreas(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FRAMING);
    var gross = new ArrayList<Figure>();
    var openings = new ArrayList<Figure>();
    var ceilings = new ArrayList<Figure>();
    var floors = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      gross.add(in.clearLength(box).plus(in.clearWidth(box)).times(2).times(in.clearHeight(box)));
      for (var o : in.openings(box)) openings.add(Shape.area(o));
      ceilings.add(ceiling(job, in, box));
      var rooms = job.scope().roomsOf(box);
      if (rooms.isEmpty()) floors.add(in.clearLength(box).times(in.clearWidth(box)));
      for (var room : rooms) {
        floors.add(
            out.add(
                "room/" + room.id() + "/area",
                room.id() + ", clear floor area",
                in.area(room),
                job.area(),
                "clear length x clear width"));
      }
    }
    var grossWall =
        out.add(
            "inside/wall-gross",
            "Inside face of the outside walls, openings not taken off",
            areas(gross),
            job.area(),
            "twice clear length and width x clear height, box by box");
    var holes =
        out.add(
            "inside/wall-openings",
            "Openings in the outside walls",
            areas(openings),
            job.area(),
            "width x height; a pass-through goes through the linings of both boxes");
    out.add(
        "inside/wall-area",
        "Inside face of the outside walls, net of openings",
        grossWall.minus(holes).atLeastZero(),
        job.area(),
        "gross less openings");
    out.add(
        "inside/ceiling-area",
        "Ceilings",
        areas(ceilings),
        job.area(),
        "clear length x clear width less partitions and roof openings");
    out.add(
        "inside/floor-area",
        "Clear floor area, all rooms",
        areas(floors),
        job.area(),
        "rooms together; a box without rooms counts whole");
    var partitions = new ArrayList<Figure>();
    for (var p : in.partitions()) partitions.add(net(job, in, p));
    out.add(
        "inside/partition-area",
        "Partitions, one face, net of doors",
        areas(partitions),
        job.area(),
        "clear width x clear height less door openings");
    return out.lines();
  }

  private static Figure ceiling(Job job, Inside in, Box box) {
    var length = in.clearLength(box);
    int walls = in.partitions(box).size();
    if (walls > 0) length = length.minus(in.partitionThickness().times(walls));
    var area = length.times(in.clearWidth(box));
    var roof = job.scope().openingsIn(box, Wall.ROOF);
    return roof.isEmpty() ? area : area.minus(Shape.area(roof)).atLeastZero();
  }

  static Figure net(Job job, Inside in, Inside.Partition p) {
    var face = in.clearWidth(p.box()).times(in.clearHeight(p.box()));
    if (!p.hasDoor()) return face;
    var door = job.fact("inner-door.opening-width").times(job.fact("inner-door.opening-height"));
    return face.minus(door).atLeastZero();
  }
}

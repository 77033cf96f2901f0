package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Joint;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.util.List;
import java.util.Optional;

/**
 * The geometry that many rules share. Outside faces unless it says inside.
 *
 * <p>A pass-through is entered once, in either of the two boxes it joins: both sheets are cut. All
 * other openings are taken to lie in outside walls or in the roof.
 */
final class Shape {
  static final List<Wall> WALLS = List.of(Wall.LEFT, Wall.RIGHT, Wall.DOOR_END, Wall.BLIND_END);

  private final Job job;

  /** A box and the one it is joined to. */
  record Pair(Box box, Box other) {
    Joint joint() {
      return box.joint();
    }
  }

  Shape(Job job) {
    this.job = job;
  }

  Figure length(Box box) {
    return box.fact(job.facts(), "length");
  }

  Figure width(Box box) {
    return box.fact(job.facts(), "width");
  }

  Figure height(Box box) {
    return box.fact(job.facts(), "height");
  }

  Figure insideLength(Box box) {
    return box.fact(job.facts(), "inside-length");
  }

  Figure insideWidth(Box box) {
    return box.fact(job.facts(), "inside-width");
  }

  Figure insideHeight(Box box) {
    return box.fact(job.facts(), "inside-height");
  }

  /** The length of a wall, or of the roof. */
  Figure run(Box box, Wall wall) {
    return switch (wall) {
      case LEFT, RIGHT, ROOF -> length(box);
      case DOOR_END, BLIND_END -> width(box);
    };
  }

  /** Outside plan area. */
  Figure planArea(Box box) {
    return length(box).times(width(box));
  }

  /** Inside floor area. */
  Figure floorArea(Box box) {
    return insideLength(box).times(insideWidth(box));
  }

  /** A whole wall, openings not taken off; as projected, not along the corrugation. */
  Figure wallArea(Box box, Wall wall) {
    return run(box, wall).times(wall == Wall.ROOF ? width(box) : height(box));
  }

  /** Length along the corrugation over straight length, across the folds of that wall. */
  Figure developed(Wall wall) {
    return switch (wall) {
      case LEFT, RIGHT -> job.measured("shell/developed/side");
      case BLIND_END -> job.measured("shell/developed/blind-end");
      case DOOR_END -> job.fact("shell.door-end.developed");
      case ROOF -> job.fact("shell.roof.developed");
    };
  }

  /** Thickness of the sheet of that wall. */
  Figure sheet(Wall wall) {
    return switch (wall) {
      case LEFT, RIGHT -> job.fact("shell.side.sheet");
      case BLIND_END -> job.fact("shell.blind-end.sheet");
      case DOOR_END -> job.fact("shell.door-end.sheet");
      case ROOF -> job.fact("shell.roof.sheet");
    };
  }

  /** From the underside of the corner castings to the top of the container floor. */
  Figure floorDepth() {
    return job.fact("shell.casting-projection")
        .plus(job.fact("shell.cross-member"))
        .plus(job.fact("shell.plywood"));
  }

  /** Boxes with the one they are joined to; a name that is no box's is the reader's to report. */
  List<Pair> pairs() {
    return job.scope().boxes().stream()
        .filter(b -> b.joint() != Joint.NONE)
        .flatMap(b -> joinedTo(b).map(o -> new Pair(b, o)).stream())
        .toList();
  }

  /** The box that this one is joined to; empty where it names none or itself. */
  Optional<Box> joinedTo(Box box) {
    return box.joinedTo().filter(id -> !id.equals(box.id())).flatMap(job.scope()::box);
  }

  /** Over which length the two touch: as entered, not beyond the shorter box. */
  Figure touching(Pair pair) {
    return pair.box().jointLength().min(length(pair.box())).min(length(pair.other()));
  }

  /** Boxes that stand on the ground: all but those stacked on another. */
  List<Box> onGround() {
    return job.scope().boxes().stream().filter(b -> !stacked(b)).toList();
  }

  /** The boxes stacked on this one. */
  List<Box> above(Box box) {
    return pairs().stream()
        .filter(p -> p.joint() == Joint.STACKED && p.other().equals(box))
        .map(Pair::box)
        .toList();
  }

  boolean stacked(Box box) {
    return box.joint() == Joint.STACKED && joinedTo(box).isPresent();
  }

  Box boxOf(Opening opening) {
    return job.scope()
        .box(opening.box())
        .orElseThrow(
            () -> new IllegalStateException("Opening '" + opening.id() + "' is in no box"));
  }

  /** Width times height of the hole itself. */
  static Figure area(Opening opening) {
    return opening.width().times(opening.height());
  }

  static Figure perimeter(Opening opening) {
    return opening.width().plus(opening.height()).times(2);
  }

  static Figure area(List<Opening> openings) {
    return Figure.sum(Dimension.AREA, openings.stream().map(Shape::area).toList());
  }

  /** The rows of their areas added up, once {@link OpeningAreas} has written them. */
  Figure measuredArea(List<Opening> openings) {
    return Figure.sum(
        Dimension.AREA,
        openings.stream().map(o -> job.measured("opening/" + o.id() + "/area")).toList());
  }

  /** Whether a window or an outside door goes into it. */
  static boolean takesUnit(Opening opening) {
    return switch (opening.kind()) {
      case WINDOW, DOOR, GLAZED_DOOR, SLIDING_DOOR -> true;
      case PASS_THROUGH, VENT, SLEEVE -> false;
    };
  }

  /** Whether the hole goes down to the floor, so that its frame has no bottom member. */
  static boolean toTheFloor(Opening opening) {
    return switch (opening.kind()) {
      case DOOR, GLAZED_DOOR, SLIDING_DOOR, PASS_THROUGH -> opening.wall() != Wall.ROOF;
      case WINDOW, VENT, SLEEVE -> false;
    };
  }

  /** Sheets that are cut for it: both boxes' for a pass-through, else one. */
  static int sheets(Opening opening) {
    return opening.kind() == OpeningKind.PASS_THROUGH ? 2 : 1;
  }

  /** Windows and doors in the four walls; vents and sleeves are too small to take off. */
  List<Opening> unitsIn(Box box, Wall wall) {
    return job.scope().openingsIn(box, wall).stream().filter(Shape::takesUnit).toList();
  }
}

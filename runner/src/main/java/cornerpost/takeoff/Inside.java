package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Answers;
import cornerpost.scope.Box;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.Joint;
import cornerpost.scope.LiningBoard;
import cornerpost.scope.Neighbours;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Room;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServiceEnd;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.StudSection;
import cornerpost.scope.Wall;
import cornerpost.scope.WallCuts;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The geometry inside the linings: build-ups, clear dimensions, partitions, and the openings as the
 * inside sees them. All four walls of a box are lined, at the cargo-door end too.
 *
 * <p>Where {@link InsideMeasures} has written a dimension as a row, the row is returned, so that
 * formulas stay short.
 */
final class Inside {
  /** The walls of a box that are lined, in the order of {@link Wall}. */
  static final List<Wall> WALLS = List.of(Wall.LEFT, Wall.RIGHT, Wall.DOOR_END, Wall.BLIND_END);

  private static final Set<OpeningKind> FRAMED =
      EnumSet.of(
          OpeningKind.WINDOW,
          OpeningKind.DOOR,
          OpeningKind.GLAZED_DOOR,
          OpeningKind.SLIDING_DOOR,
          OpeningKind.PASS_THROUGH);

  private static final Set<RoomUse> KITCHENS =
      EnumSet.of(RoomUse.KITCHEN, RoomUse.LIVING_KITCHEN, RoomUse.LIVING_SLEEPING);

  private static final Set<RoomUse> SLEEPING = EnumSet.of(RoomUse.BEDROOM, RoomUse.LIVING_SLEEPING);

  private final Job job;
  private final Shape shape;
  private final Neighbours neighbours;
  private final WallCuts cuts;
  private final Answers envelope;

  Inside(Job job) {
    this.job = job;
    this.shape = new Shape(job);
    this.neighbours = new Neighbours(job.scope().boxes());
    this.cuts = new WallCuts(job.scope(), job.facts());
    this.envelope = job.scope().envelope();
  }

  /**
   * A partition across a box.
   *
   * @param after the room nearer the cargo-door end; {@code before} the one beyond
   */
  record Partition(Box box, Room after, Room before, DoorToNext door) {
    boolean hasDoor() {
      return door != DoorToNext.WALL;
    }
  }

  // ---- what the linings take ----------------------------------------------------------------

  StudSection stud() {
    return envelope.option(EnvelopeQuestions.STUD, StudSection.class);
  }

  StudSection partitionStud() {
    return envelope.option(EnvelopeQuestions.PARTITION_STUD, StudSection.class);
  }

  Figure of(StudSection section, String dimension) {
    return job.fact(section.factId() + "." + dimension);
  }

  static boolean isTimber(StudSection section) {
    return switch (section) {
      case TIMBER_38_38, TIMBER_38_64, TIMBER_38_89, TIMBER_38_140 -> true;
      case STEEL_64, STEEL_92 -> false;
    };
  }

  LiningBoard wallBoard() {
    return envelope.option(EnvelopeQuestions.WALL_BOARD, LiningBoard.class);
  }

  LiningBoard ceilingBoard() {
    return envelope.option(EnvelopeQuestions.CEILING_BOARD, LiningBoard.class);
  }

  InsulationMaterial ceilingInsulation() {
    return envelope.option(EnvelopeQuestions.CEILING, InsulationMaterial.class);
  }

  /** Whether the walls are insulated inside. */
  boolean insulatedInside() {
    return envelope.option(EnvelopeQuestions.SIDE, InsulationSide.class) != InsulationSide.OUTSIDE
        && envelope.option(EnvelopeQuestions.INSIDE, InsulationMaterial.class)
            != InsulationMaterial.NONE;
  }

  /** From the inner crests of the steel to the face of the studs. */
  Figure frameDepth() {
    return envelope.figure(EnvelopeQuestions.STAND_OFF).plus(of(stud(), "depth"));
  }

  /** From the inner crests of the steel to the face of the board. */
  Figure wallBuildUp() {
    return row(
        "inside/wall-build-up",
        () -> frameDepth().plus(job.fact(wallBoard().factId() + ".thickness")));
  }

  /** From the roof steel to the face of the ceiling board. */
  Figure ceilingBuildUp() {
    return row(
        "inside/ceiling-build-up",
        () -> {
          var battens = job.fact("framing.batten-depth");
          var depth =
              ceilingInsulation() == InsulationMaterial.NONE
                  ? battens
                  : envelope.figure(EnvelopeQuestions.CEILING_THICKNESS).max(battens);
          return depth.plus(job.fact(ceilingBoard().factId() + ".thickness"));
        });
  }

  Figure partitionThickness() {
    return row(
        "inside/partition-thickness",
        () ->
            of(partitionStud(), "depth")
                .plus(job.fact(wallBoard().factId() + ".thickness").times(2)));
  }

  // ---- boxes --------------------------------------------------------------------------------

  /** Between the boards of the two end walls. */
  Figure clearLength(Box box) {
    return row(
        "inside/" + box.id() + "/length",
        () -> shape.insideLength(box).minus(wallBuildUp().times(2)));
  }

  /** Between the boards of the two long walls. */
  Figure clearWidth(Box box) {
    return row(
        "inside/" + box.id() + "/width",
        () -> shape.insideWidth(box).minus(wallBuildUp().times(2)));
  }

  /** From the container floor, before any covering, to the ceiling board. */
  Figure clearHeight(Box box) {
    return row(
        "inside/" + box.id() + "/height", () -> shape.insideHeight(box).minus(ceilingBuildUp()));
  }

  /** The length of the stud frame on a wall; end frames stand between the long ones. */
  Figure frameRun(Box box, Wall wall) {
    return switch (wall) {
      case LEFT, RIGHT -> shape.insideLength(box);
      case DOOR_END, BLIND_END -> shape.insideWidth(box).minus(frameDepth().times(2));
      case ROOF -> throw new IllegalArgumentException("No studs on the roof");
    };
  }

  /** From the start of the stud frame to the near edge of an opening; not below nothing. */
  Figure along(Box box, Opening opening, Wall wall) {
    var shell =
        switch (wall) {
          case LEFT, RIGHT, ROOF -> shape.length(box).minus(shape.insideLength(box)).over(2);
          case DOOR_END, BLIND_END ->
              shape.width(box).minus(shape.insideWidth(box)).over(2).plus(frameDepth());
        };
    return cuts.offsetIn(opening, box).minus(shell).atLeastZero();
  }

  // ---- openings -----------------------------------------------------------------------------

  /** Whether an opening is big enough for studs at its jambs: not a vent or a sleeve. */
  static boolean isFramed(Opening opening) {
    return FRAMED.contains(opening.kind());
  }

  /** Whether an opening goes down to the floor by its kind: a door, or a way to the next box. */
  static boolean isWalkedThrough(Opening opening) {
    return isFramed(opening) && opening.kind() != OpeningKind.WINDOW;
  }

  /**
   * The openings in a wall. A pass-through is entered once, in either of the two boxes it joins,
   * and goes through the linings of both.
   */
  List<Opening> openings(Box box, Wall wall) {
    return cuts.in(box, wall).stream().map(WallCuts.Cut::opening).toList();
  }

  /** The openings in the four walls. */
  List<Opening> openings(Box box) {
    return WALLS.stream().flatMap(w -> openings(box, w).stream()).toList();
  }

  /**
   * The inside face of the steel that is cold on its other side, projected, net of openings. Where
   * two boxes touch there is a warm room behind the steel: that part is left out whole, the
   * pass-throughs in it too.
   */
  Figure coldSteelFace() {
    var faces = new ArrayList<Figure>();
    var holes = new ArrayList<Figure>();
    var passages = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      var round = shape.insideLength(box).plus(shape.insideWidth(box)).times(2);
      faces.add(round.times(shape.insideHeight(box)));
      boolean joined = !neighbours.of(box).isEmpty();
      for (var o : openings(box)) {
        (joined && o.kind() == OpeningKind.PASS_THROUGH ? passages : holes).add(Shape.area(o));
      }
    }
    var touching = new ArrayList<Figure>();
    for (var pair : shape.pairs()) {
      var height = shape.insideHeight(pair.box()).min(shape.insideHeight(pair.other()));
      switch (pair.joint()) {
        case SIDE_BY_SIDE -> {
          var inside = shape.insideLength(pair.box()).min(shape.insideLength(pair.other()));
          touching.add(shape.touching(pair).min(inside).times(height).times(2));
        }
        case END_TO_END -> {
          var width = shape.insideWidth(pair.box()).min(shape.insideWidth(pair.other()));
          touching.add(width.times(height).times(2));
        }
        case STACKED, NONE -> {}
      }
    }
    var cold = areas(faces);
    if (!holes.isEmpty()) cold = cold.minus(areas(holes));
    if (!touching.isEmpty() || !passages.isEmpty()) {
      cold = cold.minus(areas(touching).max(areas(passages)));
    }
    return cold.atLeastZero();
  }

  // ---- rooms --------------------------------------------------------------------------------

  List<Partition> partitions(Box box) {
    var rooms = job.scope().roomsOf(box);
    var found = new ArrayList<Partition>();
    for (int i = 0; i + 1 < rooms.size(); i++) {
      var door = rooms.get(i).towardsNext();
      if (door != DoorToNext.OPEN) {
        found.add(new Partition(box, rooms.get(i), rooms.get(i + 1), door));
      }
    }
    return List.copyOf(found);
  }

  List<Partition> partitions() {
    return job.scope().boxes().stream().flatMap(b -> partitions(b).stream()).toList();
  }

  /** The partitions that bound a room. */
  List<Partition> partitions(Room room) {
    return partitions(boxOf(room)).stream()
        .filter(p -> p.after().id().equals(room.id()) || p.before().id().equals(room.id()))
        .toList();
  }

  Box boxOf(Room room) {
    return job.scope()
        .box(room.box())
        .orElseThrow(() -> new IllegalStateException("No box '" + room.box() + "'"));
  }

  private List<Room> line(Room room) {
    return job.scope().roomsOf(boxOf(room));
  }

  private int place(Room room) {
    return line(room).stream().map(Room::id).toList().indexOf(room.id());
  }

  /** Sides that are open to the room before or after. */
  int openSides(Room room) {
    int neighbours = (place(room) > 0 ? 1 : 0) + (place(room) + 1 < line(room).size() ? 1 : 0);
    return neighbours - partitions(room).size();
  }

  /** Between the boards at its two ends; up to the line where it is open to its neighbour. */
  Figure length(Room room) {
    return row(
        "room/" + room.id() + "/length",
        () -> {
          var rooms = line(room);
          int i = place(room);
          var length = room.length();
          if (i == 0) length = length.minus(wallBuildUp());
          if (i == rooms.size() - 1) length = length.minus(wallBuildUp());
          int walls = partitions(room).size();
          if (walls > 0) length = length.minus(partitionThickness().over(2).times(walls));
          return length.atLeastZero();
        });
  }

  Figure width(Room room) {
    return row("room/" + room.id() + "/width", () -> clearWidth(boxOf(room)));
  }

  /** From the floor covering to the ceiling board. */
  Figure height(Room room) {
    return row(
        "room/" + room.id() + "/height",
        () -> clearHeight(boxOf(room)).minus(new FloorBuildUp(job).of(room)));
  }

  Figure area(Room room) {
    return row("room/" + room.id() + "/area", () -> length(room).times(width(room)));
  }

  /** From the start of the long walls' frame to the room: its first board, or its open side. */
  private Figure start(Room room) {
    var before = line(room).subList(0, place(room)).stream().map(Room::length).toList();
    var start = Figure.sum(Dimension.LENGTH, before);
    if (before.isEmpty()) return wallBuildUp();
    boolean wall = partitions(room).stream().anyMatch(p -> p.before().id().equals(room.id()));
    return wall ? start.plus(partitionThickness().over(2)) : start;
  }

  /** The walls of its box that a room has: the long ones, and the end walls of the end rooms. */
  List<Wall> walls(Room room) {
    var walls = new ArrayList<>(List.of(Wall.LEFT, Wall.RIGHT));
    if (place(room) == 0) walls.add(Wall.DOOR_END);
    if (place(room) == line(room).size() - 1) walls.add(Wall.BLIND_END);
    return List.copyOf(walls);
  }

  /** A stretch of a wall, from where its room begins. */
  record Stretch(Figure from, Figure to) {
    Figure length() {
      return to.minus(from);
    }
  }

  /** What an opening takes of a room's wall; nothing where it lies in that of another room. */
  Stretch taken(Room room, Opening opening, Wall wall) {
    var run = isAcross(wall) ? width(room) : length(room);
    return taken(boxOf(room), opening, wall, start(room), run);
  }

  /** The same in a box that is one room. */
  Stretch taken(Box box, Opening opening, Wall wall) {
    var run = isAcross(wall) ? clearWidth(box) : clearLength(box);
    return taken(box, opening, wall, wallBuildUp(), run);
  }

  private Stretch taken(Box box, Opening opening, Wall wall, Figure start, Figure run) {
    var corner = isAcross(wall) ? wallBuildUp().minus(frameDepth()) : start;
    var from = along(box, opening, wall).minus(corner);
    return new Stretch(
        from.atLeastZero().min(run), from.plus(opening.width()).atLeastZero().min(run));
  }

  static boolean isAcross(Wall wall) {
    return wall == Wall.DOOR_END || wall == Wall.BLIND_END;
  }

  /** The line of its walls, open sides left out, door openings not taken off. */
  Figure wallLine(Room room) {
    var round = length(room).plus(width(room)).times(2);
    int open = openSides(room);
    return open == 0 ? round : round.minus(width(room).times(open));
  }

  /** From the cargo-door end to the middle of the room. */
  Figure position(Room room) {
    var before = line(room).subList(0, place(room)).stream().map(Room::length).toList();
    return Figure.sum(Dimension.LENGTH, before).plus(room.length().over(2));
  }

  /** From the service end of its box to the middle of a room. */
  Figure fromServices(Room room) {
    var end = job.scope().services().option(ServicesQuestions.SERVICE_END, ServiceEnd.class);
    return switch (end) {
      case DOOR_END -> position(room);
      case BLIND_END -> shape.insideLength(boxOf(room)).minus(position(room)).atLeastZero();
    };
  }

  /**
   * From the first box, where the services enter, to this one: across each box it is joined
   * through, along it where boxes stand end to end, up it where they are stacked.
   */
  Figure fromFirstBox(Box box) {
    return fromFirstBox(box, job.scope().boxes().size());
  }

  private Figure fromFirstBox(Box box, int left) {
    var first = job.scope().boxes().get(0);
    if (box.id().equals(first.id()) || left == 0) return Figure.zero(Dimension.LENGTH);
    var to = box.joint() == Joint.NONE ? first : shape.joinedTo(box).orElse(first);
    var step =
        switch (box.joint()) {
          case SIDE_BY_SIDE, NONE -> shape.width(to);
          case END_TO_END -> shape.length(to);
          case STACKED -> shape.height(to);
        };
    return fromFirstBox(to, left - 1).plus(step);
  }

  List<Room> rooms(RoomUse use) {
    return job.scope().rooms().stream().filter(r -> r.use() == use).toList();
  }

  /** Rooms with a kitchen in them. */
  List<Room> kitchens() {
    return job.scope().rooms().stream().filter(r -> KITCHENS.contains(r.use())).toList();
  }

  List<Room> bathrooms() {
    return rooms(RoomUse.BATHROOM);
  }

  /** Rooms that people sleep in. */
  List<Room> sleeping() {
    return job.scope().rooms().stream().filter(r -> SLEEPING.contains(r.use())).toList();
  }

  private Figure row(String id, Supplier<Figure> measured) {
    return job.find(id).orElseGet(measured);
  }

  /** How far two places along a line are apart. */
  static Figure apart(Figure a, Figure b) {
    return a.minus(b).max(b.minus(a));
  }

  static Figure lengths(List<Figure> terms) {
    return Figure.sum(Dimension.LENGTH, terms);
  }

  static Figure areas(List<Figure> terms) {
    return Figure.sum(Dimension.AREA, terms);
  }

  static Figure counts(List<Figure> terms) {
    return Figure.sum(Unit.ONE.dimension(), terms);
  }
}

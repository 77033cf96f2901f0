package cornerpost.takeoff;

import cornerpost.scope.Box;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Room;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Ducts square to the walls: from an extract fan in the middle of its ceiling, or from the top of a
 * cooker hood that hangs below its vent, to the middle of the vent with the shortest way among
 * those entered in the box, and through the lining. Where a box has none, a fan blows straight out
 * through a long wall and a hood just below the ceiling.
 */
final class FanDucts {
  private final Job job;
  private final Inside in;
  private final Shape shape;

  FanDucts(Job job, Inside in) {
    this.job = job;
    this.in = in;
    this.shape = new Shape(job);
  }

  List<Figure> ofFansAndHoods(Tally out) {
    var ducts = new ArrayList<Figure>();
    for (var room : Ventilation.fanned(in)) {
      ducts.add(
          out.add(
              "room-fan/" + room.id() + "/duct",
              room.id() + ", duct from the fan to the vent",
              ofFan(room),
              job.length(),
              "from the middle of the ceiling along and across to the vent, down to its middle and"
                  + " through the lining"));
    }
    ducts.addAll(ofHoods(out));
    return ducts;
  }

  List<Figure> ofHoods(Tally out) {
    var ducts = new ArrayList<Figure>();
    for (var room : in.kitchens()) {
      ducts.add(
          out.add(
              "room-hood/" + room.id() + "/duct",
              room.id() + ", duct from the cooker hood to the vent",
              ofHood(room),
              job.length(),
              "from the top of the hood up to the middle of the vent and through the lining"));
    }
    return ducts;
  }

  private Figure ofFan(Room room) {
    var box = in.boxOf(room);
    var straight = in.width(room).over(2).plus(in.wallBuildUp());
    return shortest(box, vent -> fromCeiling(room, box, vent), straight);
  }

  private Figure fromCeiling(Room room, Box box, Opening vent) {
    var middle = vent.offset().plus(vent.width().over(2));
    var shell = shape.length(box).minus(shape.insideLength(box)).over(2);
    var along = Inside.apart(in.position(room).plus(shell), middle);
    var down = Inside.apart(in.clearHeight(box), centre(vent));
    var fromAxis = Inside.apart(middle, shape.width(box).over(2));
    return switch (vent.wall()) {
      case LEFT, RIGHT -> along.plus(in.width(room).over(2)).plus(down).plus(in.wallBuildUp());
      case DOOR_END -> in.position(room).plus(fromAxis).plus(down);
      case BLIND_END ->
          shape.insideLength(box).minus(in.position(room)).atLeastZero().plus(fromAxis).plus(down);
      case ROOF -> // its sill and height are measured across the roof from the left
          along
              .plus(Inside.apart(centre(vent), shape.width(box).over(2)))
              .plus(in.ceilingBuildUp());
    };
  }

  private Figure ofHood(Room room) {
    var box = in.boxOf(room);
    var top = job.fact("hood.top").plus(new FloorBuildUp(job).of(room));
    var rise = in.clearHeight(box).minus(top).atLeastZero();
    return shortest(
        box,
        vent ->
            switch (vent.wall()) {
              case LEFT, RIGHT, DOOR_END, BLIND_END ->
                  Inside.apart(centre(vent), top).plus(in.wallBuildUp());
              case ROOF -> rise.plus(in.ceilingBuildUp());
            },
        rise.plus(in.wallBuildUp()));
  }

  private Figure shortest(Box box, Function<Opening, Figure> way, Figure without) {
    return job.scope().openingsOf(box).stream()
        .filter(o -> o.kind() == OpeningKind.VENT)
        .map(way)
        .reduce(Figure::min)
        .orElse(without);
  }

  /** Of a vent: above the container floor, in a roof from its left. */
  private static Figure centre(Opening vent) {
    return vent.sill().plus(vent.height().over(2));
  }
}

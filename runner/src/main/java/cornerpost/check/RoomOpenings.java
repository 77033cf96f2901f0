package cornerpost.check;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Room;
import cornerpost.scope.Scope;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.util.List;

/** Which openings belong to which room, by where their middle lies along the box. */
final class RoomOpenings {
  private RoomOpenings() {}

  static List<Opening> of(CheckInput in, Room room) {
    Scope scope = in.scope();
    var box = scope.box(room.box()).orElseThrow();
    var rooms = scope.roomsOf(box);
    var from = Figure.zero(Dimension.LENGTH);
    for (var r : rooms) {
      if (r.id().equals(room.id())) break;
      from = from.plus(r.length());
    }
    var begin = from;
    var end = from.plus(room.length());
    boolean first = rooms.get(0).id().equals(room.id());
    boolean last = rooms.get(rooms.size() - 1).id().equals(room.id());
    return scope.openingsOf(box).stream()
        .filter(o -> lies(o, box, in, begin, end, first, last))
        .toList();
  }

  private static boolean lies(
      Opening o, Box box, CheckInput in, Figure begin, Figure end, boolean first, boolean last) {
    if (o.wall() == Wall.DOOR_END) return first;
    if (o.wall() == Wall.BLIND_END) return last;
    // offsets are from the outside corner; rooms are measured from the inside of the end wall
    var endWall =
        box.fact(in.facts(), "length").minus(box.fact(in.facts(), "inside-length")).over(2);
    var middle = o.offset().plus(o.width().over(2)).minus(endWall);
    return !Say.less(middle, begin) && Say.less(middle, end);
  }

  static boolean glazed(Opening o) {
    return o.kind() == OpeningKind.WINDOW
        || o.kind() == OpeningKind.GLAZED_DOOR
        || o.kind() == OpeningKind.SLIDING_DOOR;
  }

  static boolean door(Opening o) {
    return o.kind() == OpeningKind.DOOR
        || o.kind() == OpeningKind.GLAZED_DOOR
        || o.kind() == OpeningKind.SLIDING_DOOR;
  }
}

package cornerpost.check;

import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Room;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.util.List;
import java.util.Optional;

/** Which openings belong to which room, by where their middle lies along the box. */
final class RoomOpenings {
  private RoomOpenings() {}

  static List<Opening> of(CheckInput in, Room room) {
    var box = in.scope().box(room.box()).orElseThrow();
    return in.scope().openingsOf(box).stream().filter(o -> lies(o, in, room)).toList();
  }

  /** The room that an opening belongs to; none where it lies beyond the last one. */
  static Optional<Room> roomOf(CheckInput in, Opening o) {
    var box = in.scope().box(o.box()).orElseThrow();
    return in.scope().roomsOf(box).stream().filter(r -> lies(o, in, r)).findFirst();
  }

  private static boolean lies(Opening o, CheckInput in, Room room) {
    var rooms = in.scope().roomsOf(in.scope().box(room.box()).orElseThrow());
    if (o.wall() == Wall.DOOR_END) return rooms.get(0).id().equals(room.id());
    if (o.wall() == Wall.BLIND_END) return rooms.get(rooms.size() - 1).id().equals(room.id());
    return lies(in, room, o.offset().plus(o.width().over(2)));
  }

  /** Whether a point along the box, measured from its outside corner, lies in the room. */
  static boolean lies(CheckInput in, Room room, Figure along) {
    var box = in.scope().box(room.box()).orElseThrow();
    // rooms are measured from the inside of the end wall
    var begin = box.fact(in.facts(), "length").minus(box.fact(in.facts(), "inside-length")).over(2);
    for (var r : in.scope().roomsOf(box)) {
      if (r.id().equals(room.id())) break;
      begin = begin.plus(r.length());
    }
    return !Say.less(along, begin) && Say.less(along, begin.plus(room.length()));
  }

  static boolean glazed(Opening o) {
    return o.kind() == OpeningKind.WINDOW
        || o.kind() == OpeningKind.GLAZED_DOOR
        || o.kind() == OpeningKind.SLIDING_DOOR;
  }

  static boolean door(Opening o) {
    return o.kind().isDoor();
  }
}

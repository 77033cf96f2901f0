package cornerpost.check;

import cornerpost.scope.DoorToNext;
import cornerpost.scope.Joint;
import cornerpost.scope.Neighbours;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Room;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Wall;
import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Which rooms of a house lead into which: rooms of a box in line through the doors between them,
 * and boxes through what is cut between them, a stair to a stacked one. Where a passage ends in the
 * other box is known for boxes that stand parallel; else, as with a stair, it counts as leading to
 * every room there, so that no way is denied which there may be.
 */
final class InsideWays {
  private final CheckInput in;

  InsideWays(CheckInput in) {
    this.in = in;
  }

  static boolean sleeping(Room room) {
    return room.use() == RoomUse.BEDROOM || room.use() == RoomUse.LIVING_SLEEPING;
  }

  /** The rooms to which there is a way from this one through none but rooms of that kind. */
  Set<Room> reached(Room from, Predicate<Room> through) {
    var seen = new HashSet<Room>(Set.of(from));
    var open = new ArrayDeque<Room>(List.of(from));
    while (!open.isEmpty()) {
      for (var next : beside(open.remove())) {
        if (seen.add(next) && through.test(next)) open.add(next);
      }
    }
    return seen;
  }

  /** The rooms that a door or an open side leads to. */
  List<Room> beside(Room room) {
    return in.scope().rooms().stream().filter(r -> r != room && joined(room, r)).toList();
  }

  private boolean joined(Room a, Room b) {
    if (!a.box().equals(b.box())) {
      return stair(a, b) || stair(b, a) || passage(a, b) || passage(b, a);
    }
    var line = in.scope().roomsOf(in.scope().box(a.box()).orElseThrow());
    int i = line.indexOf(a);
    int j = line.indexOf(b);
    return Math.abs(i - j) == 1 && line.get(Math.min(i, j)).towardsNext() != DoorToNext.WALL;
  }

  /** A box on top of another has a stair from it, which the takeoff measures. */
  private boolean stair(Room above, Room below) {
    var box = in.scope().box(above.box()).orElseThrow();
    return box.joint() == Joint.STACKED && box.joinedTo().filter(below.box()::equals).isPresent();
  }

  private boolean passage(Room from, Room to) {
    return RoomOpenings.of(in, from).stream()
        .anyMatch(o -> o.kind() == OpeningKind.PASS_THROUGH && mayLeadTo(o, to));
  }

  private boolean mayLeadTo(Opening o, Room to) {
    var box = in.scope().box(o.box()).orElseThrow();
    var other = in.scope().box(to.box()).orElseThrow();
    if (!new Neighbours(in.scope().boxes()).behind(box, o.wall()).contains(other)) return false;
    boolean side = o.wall() == Wall.LEFT || o.wall() == Wall.RIGHT;
    if (!side || box.rotation().value().compareTo(other.rotation().value()) != 0) return true;
    if (box.rotation().value().signum() != 0) return true;
    var middle = o.offset().plus(o.width().over(2)).plus(box.along()).minus(other.along());
    return RoomOpenings.lies(in, to, middle);
  }
}

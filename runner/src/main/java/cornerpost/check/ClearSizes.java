package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import java.util.ArrayList;
import java.util.List;

/** Clear width, height and area left in each room, against the published minima. */
final class ClearSizes implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    for (var room : in.scope().rooms()) {
      area(in, room, found);
      width(in, room, found);
      height(in, room, found);
    }
    return found;
  }

  static boolean habitable(RoomUse use) {
    return switch (use) {
      case LIVING, LIVING_KITCHEN, BEDROOM, LIVING_SLEEPING -> true;
      case KITCHEN, BATHROOM, HALL, UTILITY, STORE -> false;
    };
  }

  private static void area(CheckInput in, Room room, List<Check> found) {
    var measured = in.measured("room/" + room.id() + "/area");
    if (measured.isEmpty() || !habitable(room.use())) return;
    var least = in.limit("room-area");
    var say = new Say(in);
    boolean small = Say.less(measured.get(), least);
    found.add(
        new Check(
            "room-area/" + room.id(),
            Topic.ROOMS,
            small ? PROFESSIONAL : NOTE,
            room.id()
                + " has "
                + say.area(measured.get())
                + " of clear floor; a habitable room needs "
                + say.area(least)
                + (small ? ": too small, lengthen it or ask the building department" : ""),
            in.source("room-area"),
            List.of(room.row().cell(RoomQuestions.LENGTH)),
            List.of()));
  }

  private static void width(CheckInput in, Room room, List<Check> found) {
    var measured = in.measured("room/" + room.id() + "/width");
    boolean hall = room.use() == RoomUse.HALL;
    if (measured.isEmpty() || !(habitable(room.use()) || hall)) return;
    var id = hall ? "hall-width" : "room-width";
    var least = in.limit(id);
    var say = new Say(in);
    boolean narrow = Say.less(measured.get(), least);
    found.add(
        new Check(
            "room-width/" + room.id(),
            Topic.FIT,
            narrow ? PROFESSIONAL : NOTE,
            room.id()
                + " is "
                + say.small(measured.get())
                + " wide between the linings; at least "
                + say.small(least)
                + " is asked for"
                + (narrow
                    ? ": thinner studs or insulation outside would widen it, or ask the building department"
                    : ""),
            in.source(id),
            List.of(room.row().cell(RoomQuestions.USE)),
            in.tasks("wall-studs")));
  }

  private static void height(CheckInput in, Room room, List<Check> found) {
    var measured = in.measured("room/" + room.id() + "/height");
    if (measured.isEmpty() || room.use() == RoomUse.STORE) return;
    boolean wet = room.use() == RoomUse.BATHROOM || room.use() == RoomUse.UTILITY;
    var id = wet ? "ceiling-wet" : "ceiling";
    var least = in.limit(id);
    var say = new Say(in);
    boolean low = Say.less(measured.get(), least);
    found.add(
        new Check(
            "room-height/" + room.id(),
            Topic.FIT,
            low ? PROFESSIONAL : NOTE,
            room.id()
                + " is "
                + say.small(measured.get())
                + " high from floor to ceiling; at least "
                + say.small(least)
                + " is asked for"
                + (low ? ": a high cube, or insulation above the roof, would raise it" : ""),
            in.source(id),
            List.of(room.row().cell(RoomQuestions.USE)),
            in.tasks("ceiling-battens")));
  }
}

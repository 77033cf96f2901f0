package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;
import static cornerpost.check.Check.Severity.STOP;

import cornerpost.check.Check.Topic;
import cornerpost.measure.Spoken;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Wall;
import java.util.ArrayList;
import java.util.List;

/** A way out of every sleeping room, and one door that counts as the way out of the house. */
final class WayOut implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    if (in.scope().rooms().isEmpty()) return found;
    for (var room : in.scope().rooms()) {
      if (room.use() == RoomUse.BEDROOM || room.use() == RoomUse.LIVING_SLEEPING) {
        found.add(escape(in, room));
      }
    }
    found.add(door(in));
    return found;
  }

  private static Check escape(CheckInput in, Room room) {
    var way = RoomOpenings.of(in, room).stream().filter(o -> isEscape(in, o)).findFirst();
    var say = new Say(in);
    var asked =
        say.area(in.limit("escape-area"))
            + " clear, "
            + say.small(in.limit("escape-width"))
            + " wide, "
            + say.small(in.limit("escape-height"))
            + " high, sill at most "
            + say.small(in.limit("escape-sill"));
    return new Check(
        "escape/" + room.id(),
        Topic.ROOMS,
        way.isPresent() ? NOTE : STOP,
        way.map(o -> room.id() + " has a way out through " + o.id() + " (asked for: " + asked + ")")
            .orElse(
                room.id() + " has no opening large enough to escape through; asked for: " + asked),
        in.source("escape-area"),
        way.map(o -> List.of(o.row().cell(OpeningQuestions.WIDTH)))
            .orElse(List.of(room.row().cell(RoomQuestions.USE))),
        in.tasks("mark-openings"));
  }

  /** The hole itself is taken as clear; a frame makes it smaller, so a near miss needs a look. */
  private static boolean isEscape(CheckInput in, Opening o) {
    if (RoomOpenings.door(o)) return true;
    return o.kind() == OpeningKind.WINDOW
        && o.opens()
        && !Say.less(o.width().times(o.height()), in.limit("escape-area"))
        && !Say.less(o.width(), in.limit("escape-width"))
        && !Say.less(o.height(), in.limit("escape-height"))
        && !Say.less(in.limit("escape-sill"), o.sill());
  }

  private static Check door(CheckInput in) {
    var say = new Say(in);
    var wide = in.limit("door-clear-width");
    var high = in.limit("door-clear-height");
    var large =
        in.scope().openings().stream()
            .filter(o -> o.kind() == OpeningKind.DOOR || o.kind() == OpeningKind.GLAZED_DOOR)
            .filter(o -> o.wall() != Wall.ROOF)
            .filter(o -> !Say.less(o.width(), wide) && !Say.less(o.height(), high))
            .toList();
    var way = large.stream().filter(o -> !privateRoom(in, o)).findFirst();
    var asked =
        "one side-hinged door, clear "
            + say.small(wide)
            + " by "
            + say.small(high)
            + "; cargo doors do not count unless re-hung";
    if (way.isEmpty() && !large.isEmpty()) return throughPrivateRooms(in, large, asked);
    return new Check(
        "way-out",
        Topic.ROOMS,
        way.isPresent() ? NOTE : PROFESSIONAL,
        way.map(o -> "Door " + o.id() + " can be the way out of the house: " + asked)
            .orElse("No door is large enough to be the way out of the house; asked for: " + asked),
        in.source("door-clear-width"),
        way.map(o -> List.of(o.row().cell(OpeningQuestions.WIDTH))).orElse(List.of()),
        in.tasks("set-doors"));
  }

  /** Out of a bathroom, or out of a bedroom that is not all the house beside its bathrooms. */
  private static boolean privateRoom(CheckInput in, Opening o) {
    return RoomOpenings.roomOf(in, o).filter(r -> privateRoom(in, r)).isPresent();
  }

  private static boolean privateRoom(CheckInput in, Room room) {
    if (room.use() == RoomUse.BATHROOM) return true;
    return room.use() == RoomUse.BEDROOM
        && in.scope().rooms().stream()
            .anyMatch(r -> r != room && r.use() != RoomUse.BATHROOM && r.use() != RoomUse.STORE);
  }

  private static Check throughPrivateRooms(CheckInput in, List<Opening> large, String asked) {
    var doors = new ArrayList<String>();
    for (var o : large) {
      var room = RoomOpenings.roomOf(in, o).orElseThrow();
      doors.add(o.id() + " out of " + room.id() + " (" + room.use().label() + ")");
    }
    return new Check(
        "way-out",
        Topic.ROOMS,
        PROFESSIONAL,
        "The only doors large enough to be the way out of the house lead through a bathroom or a"
            + " bedroom: "
            + Spoken.list(doors)
            + ". The way out should lead from a living room, kitchen or hall; asked for: "
            + asked
            + "; local codes decide",
        "IRC 2021 R311.1 and R311.2 (from memory); common practice",
        large.stream().map(o -> o.row().cell(OpeningQuestions.OFFSET)).toList(),
        in.tasks("set-doors"));
  }
}

package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.measure.Spoken;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import java.util.ArrayList;
import java.util.List;

/**
 * Bedrooms that have no way to the rest of the house but through a bathroom or another bedroom, or
 * none at all: what comes of rooms in line without a hall.
 */
final class BedroomsInLine implements CheckRule {
  // International Property Maintenance Code, from memory: dwellings of fewer than two bedrooms are
  // excepted.
  private static final String BEDROOMS = "IPMC 2021 404.4.2 and 404.4.3 (from memory)";
  private static final String BATHS = "common practice, no source";

  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    var ways = new InsideWays(in);
    var bedrooms = in.scope().rooms().stream().filter(r -> r.use() == RoomUse.BEDROOM).toList();
    var rest = in.scope().rooms().stream().filter(BedroomsInLine::common).toList();
    if (rest.isEmpty()) return found;
    for (var room : bedrooms) {
      if (meets(ways, room, rest, List.of(RoomUse.BATHROOM, RoomUse.BEDROOM))) continue;
      found.add(one(in, ways, room, rest, bedrooms.size()));
    }
    return found;
  }

  private static boolean common(Room room) {
    return switch (room.use()) {
      case LIVING, LIVING_KITCHEN, LIVING_SLEEPING, KITCHEN, HALL -> true;
      case BEDROOM, BATHROOM, UTILITY, STORE -> false;
    };
  }

  /** Whether there is a way to one of the rest through no room of these uses. */
  private static boolean meets(InsideWays ways, Room room, List<Room> rest, List<RoomUse> avoided) {
    var reached = ways.reached(room, r -> !avoided.contains(r.use()));
    return rest.stream().anyMatch(reached::contains);
  }

  private static Check one(
      CheckInput in, InsideWays ways, Room room, List<Room> rest, int bedrooms) {
    boolean atAll = meets(ways, room, rest, List.of());
    boolean pastBaths = meets(ways, room, rest, List.of(RoomUse.BEDROOM));
    boolean pastBedrooms = meets(ways, room, rest, List.of(RoomUse.BATHROOM));
    String text;
    if (!atAll) {
      text = room.id() + " has no door towards the other rooms of the house";
    } else {
      var kind =
          pastBaths
              ? List.of("a bathroom")
              : pastBedrooms ? List.of("another bedroom") : List.of("a bathroom", "a bedroom");
      var doors = ways.beside(room).stream().map(Room::id).toList();
      text =
          "Inside the house "
              + room.id()
              + " is reached only through "
              + Spoken.list(kind)
              + " (its door leads to "
              + Spoken.list(doors)
              + "): whoever is there shuts it off";
    }
    return new Check(
        "rooms-in-line/" + room.id(),
        Topic.ROOMS,
        bedrooms > 1 || !atAll ? PROFESSIONAL : NOTE,
        text + ". A hall, another order of the rooms or a door of its own; local codes decide",
        atAll && pastBaths ? BATHS : BEDROOMS,
        List.of(room.row().cell(RoomQuestions.USE)),
        in.tasks("partitions"));
  }
}

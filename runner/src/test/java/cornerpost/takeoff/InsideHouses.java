package cornerpost.takeoff;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Wall;
import java.util.List;
import java.util.stream.Stream;

/** Houses on which the rules of the inside are tried. */
final class InsideHouses {
  /** The rules of framing, services, insulation and finishes alone. */
  static final List<TakeoffRule> RULES =
      Stream.of(FramingRules.ALL, ServicesRules.ALL, InsulationRules.ALL, FinishesRules.ALL)
          .flatMap(List::stream)
          .toList();

  private InsideHouses() {}

  /**
   * A 40 ft high cube of living and kitchen, bathroom and bedroom: 6.2 + 2.4 + 3.432 = 12.032 m.
   */
  static TestScopes oneBedroom(UnitSystem units) {
    return rooms(TestScopes.in(units), "A", "")
        .opening(
            "W1",
            "A",
            Wall.RIGHT,
            OpeningKind.WINDOW,
            TestScopes.si("1200"),
            TestScopes.si("1200"),
            OpeningQuestions.SILL,
            TestScopes.si("900"),
            OpeningQuestions.OFFSET,
            TestScopes.si("9.5"))
        .opening(
            "D1",
            "A",
            Wall.RIGHT,
            OpeningKind.SLIDING_DOOR,
            TestScopes.si("2400"),
            TestScopes.si("2100"),
            OpeningQuestions.OFFSET,
            TestScopes.si("2"));
  }

  /** The rooms of one box; {@code mark} sets their names apart from those of other boxes. */
  static TestScopes rooms(TestScopes scope, String box, String mark) {
    return scope
        .room(
            "Living" + mark,
            box,
            RoomUse.LIVING_KITCHEN,
            TestScopes.si("6.2"),
            RoomQuestions.DOOR,
            DoorToNext.HINGED)
        .room(
            "Bath" + mark,
            box,
            RoomUse.BATHROOM,
            TestScopes.si("2.4"),
            RoomQuestions.DOOR,
            DoorToNext.SLIDING)
        .room("Bed" + mark, box, RoomUse.BEDROOM, TestScopes.si("3.432"));
  }

  /** Two boxes with a room of every use and a partition of every kind. */
  static TestScopes everyRoom(UnitSystem units) {
    var scope = oneBedroom(units).box("A").box("B");
    scope
        .room(
            "Kitchen",
            "B",
            RoomUse.KITCHEN,
            TestScopes.si("2.6"),
            RoomQuestions.DOOR,
            DoorToNext.POCKET)
        .room(
            "Lounge", "B", RoomUse.LIVING, TestScopes.si("3"), RoomQuestions.DOOR, DoorToNext.OPEN)
        .room("Hall", "B", RoomUse.HALL, TestScopes.si("1.4"), RoomQuestions.DOOR, DoorToNext.WALL)
        .room(
            "Utility",
            "B",
            RoomUse.UTILITY,
            TestScopes.si("1.6"),
            RoomQuestions.DOOR,
            DoorToNext.HINGED)
        .room(
            "Store", "B", RoomUse.STORE, TestScopes.si("1"), RoomQuestions.DOOR, DoorToNext.HINGED)
        .room("Studio", "B", RoomUse.LIVING_SLEEPING, TestScopes.si("2.432"));
    return scope;
  }
}

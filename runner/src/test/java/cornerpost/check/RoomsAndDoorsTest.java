package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;
import static cornerpost.scope.DoorToNext.HINGED;
import static cornerpost.scope.DoorToNext.OPEN;
import static cornerpost.scope.DoorToNext.SLIDING;
import static cornerpost.scope.OpeningKind.DOOR;
import static cornerpost.scope.OpeningKind.PASS_THROUGH;
import static cornerpost.scope.OpeningKind.SLIDING_DOOR;
import static cornerpost.scope.OpeningKind.VENT;
import static cornerpost.scope.OpeningKind.WINDOW;
import static cornerpost.scope.RoomUse.BATHROOM;
import static cornerpost.scope.RoomUse.BEDROOM;
import static cornerpost.scope.RoomUse.LIVING_KITCHEN;
import static cornerpost.scope.Wall.LEFT;
import static cornerpost.scope.Wall.RIGHT;
import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.price.Estimator;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.Joint;
import cornerpost.scope.Party;
import cornerpost.scope.Question;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Scope;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Houses;
import cornerpost.takeoff.Takeoff;
import cornerpost.work.WorkPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Advice on rooms in line, the way out, landings, and the sheet left between two openings. */
class RoomsAndDoorsTest {
  private static final Facts FACTS = Facts.supplied();
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  // In a box of 45 ft each room takes a quarter: the doors' offsets of 3, 14, 25 and 37 ft lie in
  // the first to the fourth.
  private static final List<List<Object>> IN_LINE =
      List.of(
          List.of("Bedroom 1", BEDROOM, HINGED),
          List.of("Living", LIVING_KITCHEN, SLIDING),
          List.of("Bath", BATHROOM, SLIDING),
          List.of("Bedroom 2", BEDROOM, OPEN));

  private static final List<Object> SLIDER =
      List.of("D1", RIGHT, SLIDING_DOOR, "96", "80", "0", "14");

  private static List<Check> look(
      CheckRule rule,
      Map<Question, Object> more,
      List<List<Object>> rooms,
      List<List<Object>> openings) {
    return look(rule, Houses.ofRooms(more, rooms, openings));
  }

  private static List<Check> look(CheckRule rule, Scope scope) {
    var estimate = Estimator.estimate(scope, List.of(), Optional.empty(), FACTS);
    return rule.look(
        new CheckInput(
            scope,
            FACTS,
            Takeoff.measure(scope, FACTS),
            estimate.estimate().orElseThrow(),
            Optional.empty(),
            new WorkPlan(List.of(), List.of(), List.of(), List.of(), List.of(), "Weekdays"),
            DAY,
            DAY,
            DAY,
            Map.of(),
            Map.of(),
            List.of(),
            List.of()));
  }

  private static Optional<Check> find(List<Check> found, String id) {
    return found.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  // IPMC 404.4.2 and 404.4.3 for bedrooms behind bedrooms (from memory); bathrooms: common
  // practice.
  @Test
  void a_bedroom_behind_the_bathroom_is_said_and_one_beside_the_living_room_is_not() {
    var found = look(new BedroomsInLine(), Map.of(), IN_LINE, List.of(SLIDER));
    assertThat(found).extracting(Check::id).containsExactly("rooms-in-line/Bedroom 2");
    assertThat(found.get(0).severity()).isEqualTo(PROFESSIONAL);
    assertThat(found.get(0).message())
        .contains("Bedroom 2 is reached only through a bathroom (its door leads to Bath)");
  }

  @ParameterizedTest(name = "{0} then {1} with {2}: {3}")
  @CsvSource({
    "BATHROOM, BEDROOM, HINGED, reached only through a bathroom",
    "BEDROOM, BEDROOM, HINGED, reached only through another bedroom",
    "HALL, BEDROOM, HINGED, ''",
    "HALL, BEDROOM, WALL, has no door towards the other rooms",
    "UTILITY, BEDROOM, HINGED, ''",
  })
  void what_lies_between_a_bedroom_and_the_living_room_decides(
      RoomUse between, RoomUse last, DoorToNext door, String said) {
    var found =
        look(
            new BedroomsInLine(),
            Map.of(),
            List.of(
                List.of("Living", LIVING_KITCHEN, HINGED),
                List.of("Between", between, door),
                List.of("Last", last, OPEN)),
            List.of());
    var about = find(found, "rooms-in-line/Last");
    if (said.isEmpty()) {
      assertThat(about).isEmpty();
    } else {
      assertThat(about.orElseThrow().message()).contains(said);
    }
  }

  @Test
  void the_only_bedroom_behind_the_bathroom_is_a_note() {
    var found = look(new BedroomsInLine(), Map.of(), IN_LINE.subList(1, 4), List.of(SLIDER));
    assertThat(found).extracting(Check::severity).containsExactly(NOTE);
  }

  // IRC R311.1: a continuous and unobstructed path from all portions of the dwelling (from memory).
  @ParameterizedTest(name = "a door {0} ft along: {1}")
  @CsvSource({"3, PROFESSIONAL", "14, NOTE", "25, PROFESSIONAL", "37, PROFESSIONAL"})
  void the_way_out_does_not_lead_through_a_bathroom_or_bedroom_only(
      String offset, Check.Severity severity) {
    List<Object> door = List.of("D2", LEFT, DOOR, "36", "80", "0", offset);
    var found = look(new WayOut(), Map.of(), IN_LINE, List.of(SLIDER, door));
    assertThat(find(found, "way-out").orElseThrow().severity()).isEqualTo(severity);
  }

  @Test
  void a_door_out_of_the_living_room_is_preferred_to_one_out_of_the_bathroom() {
    var found =
        look(
            new WayOut(),
            Map.of(),
            IN_LINE,
            List.of(
                List.of("D2", RIGHT, DOOR, "36", "80", "0", "25"),
                List.of("D3", LEFT, DOOR, "36", "80", "0", "14")));
    assertThat(find(found, "way-out").orElseThrow().message())
        .startsWith("Door D3 can be the way out");
  }

  // IRC R311.3: a landing or floor on each side of each exterior door, as wide as the door and
  // 36 in deep, at most 7 3/4 in below (from memory).
  @ParameterizedTest(name = "deck {0}, {1} ft deep, floor {2} in up, door {3} ft along: {4}")
  @CsvSource({
    "yes, 8, 24, 14, ''",
    "yes, 8, 24, 16, ''",
    "yes, 8, 24, 16.5, 'lies 0′ 6″ beyond the end of the deck'",
    "yes, 8, 24, 29, 'beyond the end of the deck'",
    "yes, 2.5, 24, 14, 'the deck before it is only 2′ 6″ deep'",
    "yes, 3, 24, 14, ''",
    "no, 8, 24, 14, 'opens 2′ 0″ above the ground, and the plan has no deck or landing before it'",
    "no, 8, 7.5, 14, ''",
    "no, 8, 8, 14, 'opens 0′ 8″ above the ground'",
  })
  void a_door_above_the_ground_asks_for_a_landing(
      String deck, String depth, String floor, String offset, String said) {
    var found =
        look(
            new DoorLandings(),
            Map.of(
                DeckAndRoofQuestions.DECK, deck,
                DeckAndRoofQuestions.DECK_DEPTH, depth,
                SiteQuestions.FLOOR_HEIGHT, floor),
            IN_LINE,
            List.of(List.of("D1", RIGHT, SLIDING_DOOR, "96", "80", "0", offset)));
    if (said.isEmpty()) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).extracting(Check::id).containsExactly("landing/D1");
      assertThat(found.get(0).message().replace('\u00a0', ' ')).contains(said);
    }
  }

  // A landing of the owner's own is money without sizes: what it must be is said, and no more.
  @ParameterizedTest
  @CsvSource({"no, 24, NOTE", "no, 7.5, ''", "yes, 24, ''"})
  void a_door_with_a_landing_of_its_own_asks_for_no_other(String deck, String floor, String said) {
    var found =
        look(
            new DoorLandings(),
            Map.of(DeckAndRoofQuestions.DECK, deck, SiteQuestions.FLOOR_HEIGHT, floor),
            IN_LINE,
            List.of(List.of("D1", RIGHT, SLIDING_DOOR, "96", "80", "0", "14", "steps")));
    if (said.isEmpty()) {
      assertThat(found).isEmpty();
      return;
    }
    assertThat(found).extracting(Check::severity).containsExactly(NOTE);
    assertThat(found.get(0).message().replace('\u00a0', ' '))
        .contains("steps of sheet Own items")
        .contains("at least 3\u2032 0\u2033 deep and as wide as the door");
  }

  // By hand: the head of the window is 54 + 24 = 78 in up, the vent begins at 80: 2 in between.
  @Test
  void a_vent_above_a_window_is_measured_up_the_wall() {
    var found =
        look(
            new SteelCutAway(),
            Map.of(),
            IN_LINE,
            List.of(
                List.of("W3", LEFT, WINDOW, "24", "24", "54", "28.5"),
                List.of("V1", LEFT, VENT, "6", "6", "80", "29")));
    assertThat(
            find(found, "steel-left/W3/between/V1").orElseThrow().message().replace('\u00a0', ' '))
        .startsWith(
            "Opening V1 above opening W3 leaves 0′ 2″ of sheet between them, measured up the wall;"
                + " at least 1′ 11 5/8″ is usual");
  }

  // By hand: 4 ft 0 in + 36 in = 7 ft 0 in; the next begins at 8 ft: 1 ft between.
  @Test
  void openings_side_by_side_are_measured_along_the_wall() {
    var found =
        look(
            new SteelCutAway(),
            Map.of(),
            IN_LINE,
            List.of(
                List.of("W1", LEFT, WINDOW, "36", "48", "24", "4"),
                List.of("W2", LEFT, WINDOW, "36", "48", "24", "8")));
    assertThat(
            find(found, "steel-left/W1/between/W2").orElseThrow().message().replace('\u00a0', ' '))
        .startsWith(
            "Openings W1 and W2 leave 1′ 0″ of sheet between them, measured along the wall");
  }

  // A passage goes through the steel of both boxes: 2,400 of 6,058 mm is 40 %, 2,400 of 12,192 is
  // 20 %. It begins 2 m along both walls, 1 m beyond the end of a window of 1 m in the shorter box
  // that begins at 0.4 m: 2.0 - 1.4 = 0.6; one that begins at 0.5 leaves half a metre.
  @ParameterizedTest(name = "passage entered in box {0}")
  @CsvSource({"A, RIGHT", "B, LEFT"})
  void a_passage_is_cut_out_of_both_boxes(String box, Wall wall) {
    var found =
        look(
            new SteelCutAway(),
            Houses.shorterBoxJoined(
                Joint.SIDE_BY_SIDE,
                List.of(List.of("P1", box, wall, PASS_THROUGH, "2400", "2100", "0", "2"))));
    var shorter = find(found, "cut-share/B/left side").orElseThrow();
    assertThat(shorter.severity()).isEqualTo(PROFESSIONAL);
    assertThat(shorter.message()).contains("40 % of its 6.06 m is cut away (1 opening)");
    var longer = find(found, "cut-share/A/right side").orElseThrow();
    assertThat(longer.severity()).isEqualTo(NOTE);
    assertThat(longer.message()).contains("20 % of its 12.19 m is cut away (1 opening)");
  }

  @Test
  void sheet_beside_a_passage_is_said_of_the_box_in_which_it_is_too_narrow() {
    var found =
        look(
            new SteelCutAway(),
            Houses.shorterBoxJoined(
                Joint.SIDE_BY_SIDE,
                List.of(List.of("P1", "A", RIGHT, PASS_THROUGH, "2400", "2100", "0", "3.5"))));
    // 6.058 - 3.5 - 2.4 = 0.158 m to the corner post of the shorter box
    var near = found.stream().filter(c -> c.id().startsWith("steel-left/P1")).toList();
    assertThat(near).extracting(Check::id).containsExactly("steel-left/P1/corner/B");
    assertThat(near.get(0).message())
        .startsWith("Opening P1 in box B leaves 0.16 m of sheet beside a corner post");
  }

  // The shorter box ends 6.058 m along: a door at 5 m opens into it, one at 7 m into the air.
  @ParameterizedTest(name = "a door {0} m along")
  @CsvSource({"5, false", "7, true"})
  void a_door_beyond_the_end_of_the_next_box_asks_for_a_landing(String offset, boolean said) {
    var found =
        look(
            new DoorLandings(),
            Houses.shorterBoxJoined(
                Joint.SIDE_BY_SIDE,
                List.of(List.of("D2", "A", RIGHT, DOOR, "900", "2100", "0", offset))));
    assertThat(found.stream().map(Check::id).toList())
        .isEqualTo(said ? List.of("landing/D2") : List.of());
  }

  // The takeoff has a stair to every box on another (docs/rules-inside.md), so its rooms are
  // reached; two corners of a 20 ft box on a 40 ft one stand over no corner post (ISO 668 lengths).
  @Test
  void a_box_on_top_is_reached_by_its_stair_and_asks_for_posts_where_it_is_shorter() {
    var scope = Houses.shorterBoxJoined(Joint.STACKED, List.of());
    assertThat(look(new BedroomsInLine(), scope)).isEmpty();
    var stacked = find(look(new JoinedBoxes(), scope), "stacked/B").orElseThrow();
    assertThat(stacked.message())
        .contains("It is not as long as box A", "The bill holds one stair inside");
  }

  // By hand: the living room ends 80 mm of end wall + 6 m = 6.08 m along. A door from 5.5 to 6.4 m
  // lies across its partition; one from 6.1 or to 6.0 m does not. A passage entered in the hall of
  // the longer box is across nothing in the shorter, whose one room has no partition.
  @ParameterizedTest(name = "{0} m along, {1} mm wide: {2}")
  @CsvSource({"5.5, 900, true", "6.1, 900, false", "5.1, 900, false", "5.9, 200, true"})
  void an_opening_across_a_partition_is_said(String offset, String width, boolean said) {
    var found =
        look(
            new OpeningsAcross(),
            Houses.shorterBoxJoined(
                Joint.SIDE_BY_SIDE,
                List.of(List.of("W2", "A", LEFT, WINDOW, width, "1000", "900", offset))));
    assertThat(found.stream().map(Check::id).toList())
        .isEqualTo(said ? List.of("across/W2/Living") : List.of());
    for (var c : found) {
      assertThat(c.message()).contains("between Living and Hall at 6.08 m");
    }
  }

  // The standard choice is closed-cell spray foam (docs/workbook.md); EPA: for trained sprayers.
  @ParameterizedTest(name = "insulation by {0}: {1}")
  @CsvSource({"OWNER, true", "MIXED, false", "HIRED, false"})
  void foam_sprayed_by_the_owner_alone_is_said(Party party, boolean said) {
    var found =
        look(
            new LicensedWork(),
            Houses.shorterBoxJoined(
                Joint.SIDE_BY_SIDE, List.of(), Map.of(Trade.INSULATION, party)));
    assertThat(find(found, "foam-by-owner").isPresent()).isEqualTo(said);
  }
}

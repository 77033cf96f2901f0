package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.BoxSize;
import cornerpost.scope.ContainerFloor;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.FloorFinish;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.Joint;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.StudSection;
import cornerpost.scope.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InsideTest {
  private static List<Line> measured(TestScopes scope) {
    return scope.measured(InsideHouses.RULES);
  }

  // By hand: 2352 - 2 x (89 + 12.5) = 2149 mm, which passes the 2134 mm (7 ft) of IRC R304.2 by
  // 15 mm; with 25 mm behind the studs on both sides 2099 mm, which fails it.
  @ParameterizedTest(name = "{0} mm behind the studs: {1} mm clear")
  @CsvSource({"0, 2149", "25, 2099"})
  void clear_width_between_studs_of_89_mm(String gap, double expected) {
    var lines =
        measured(
            TestScopes.metric()
                .with(EnvelopeQuestions.STUD, StudSection.TIMBER_38_89)
                .with(EnvelopeQuestions.STAND_OFF, gap)
                .room("Bed", "A", RoomUse.BEDROOM, "3.2"));
    assertThat(amount(lines, "room/Bed/width", Unit.MM)).isCloseTo(expected, within(1e-9));
  }

  // By hand: floor finish 12, ceiling 75 + 12.5. High cube 2698 - 99.5 = 2598.5 (quoted as 2598);
  // standard box 2392 - 99.5 = 2292.5; both pass the 2134 mm of IRC R305.1.
  @ParameterizedTest(name = "{0}: {1} mm")
  @CsvSource({"FORTY_HIGH, 2598.5", "FORTY, 2292.5"})
  void height_under_a_ceiling_of_75_and_board(BoxSize size, double expected) {
    var lines =
        measured(
            TestScopes.metric()
                .box("A", BoxQuestions.SIZE, size, BoxQuestions.FLOOR, ContainerFloor.SEAL)
                .with(FinishesQuestions.FLOOR, FloorFinish.LAMINATE)
                .with(EnvelopeQuestions.CEILING_THICKNESS, "75")
                .room("Bed", "A", RoomUse.BEDROOM, "3.2"));
    assertThat(amount(lines, "room/Bed/height", Unit.MM)).isCloseTo(expected, within(1e-9));
  }

  @Test
  void a_ceiling_without_insulation_is_as_deep_as_its_battens() {
    var lines =
        measured(TestScopes.metric().with(EnvelopeQuestions.CEILING, InsulationMaterial.NONE));
    assertThat(amount(lines, "inside/ceiling-build-up", Unit.MM)).isEqualTo(38 + 12.5);
  }

  // IRC R304.1: 6.5 m2; 6.5 / 2.149 = 3.025 m clear length. Entered are both end linings more.
  @Test
  void least_bedroom_between_studs_of_89_mm_is_3025_mm_long() {
    var lines =
        measured(
            TestScopes.metric()
                .with(EnvelopeQuestions.STUD, StudSection.TIMBER_38_89)
                .room("Bed", "A", RoomUse.BEDROOM, "3.228")); // 3.025 + 2 x 0.1015
    assertThat(amount(lines, "room/Bed/length", Unit.MM)).isCloseTo(3025, within(1e-9));
    assertThat(amount(lines, "room/Bed/area", Unit.M2)).isCloseTo(6.5, within(0.001));
  }

  // By hand, three rooms in 12.032 m, walls 38 + 12.5 = 50.5, partitions 64 + 2 x 12.5 = 89:
  // clear length 12.032 - 2 x 0.0505 - 2 x 0.089 = 11.753; width 2.352 - 0.101 = 2.251.
  @Test
  void rooms_and_partitions_fill_the_box() {
    var lines = measured(InsideHouses.oneBedroom(UnitSystem.METRIC));
    assertThat(amount(lines, "inside/partition-thickness", Unit.MM)).isEqualTo(89);
    assertThat(amount(lines, "room/Living/length", Unit.MM)).isCloseTo(6105, within(1e-9));
    assertThat(amount(lines, "room/Bath/length", Unit.MM)).isCloseTo(2311, within(1e-9));
    assertThat(amount(lines, "room/Bed/length", Unit.MM)).isCloseTo(3337, within(1e-9));
    assertThat(amount(lines, "inside/floor-area", Unit.M2)).isCloseTo(26.456, within(0.001));
    assertThat(amount(lines, "inside/ceiling-area", Unit.M2))
        .isCloseTo(amount(lines, "inside/floor-area", Unit.M2), within(1e-9));
  }

  // 12.032 x 2.352 = 28.30 m2 = 304.6 sq ft: the floor before linings, typical maker's inside
  // sizes.
  @Test
  void floor_before_linings_is_28_30_square_metres() {
    var lines = measured(TestScopes.metric());
    assertThat(amount(lines, "insulation/underfloor/area", Unit.M2))
        .isCloseTo(28.30, within(0.005));
    assertThat(amount(lines, "insulation/underfloor/area", Unit.SQ_FT))
        .isCloseTo(304.6, within(0.05));
  }

  // By hand: gross 2 x (11.931 + 2.251) x 2.6105 = 74.04; openings 1.44 + 5.04 = 6.48.
  @Test
  void walls_are_net_of_openings() {
    var lines = measured(InsideHouses.oneBedroom(UnitSystem.METRIC));
    assertThat(amount(lines, "inside/wall-gross", Unit.M2)).isCloseTo(74.044, within(0.001));
    assertThat(amount(lines, "inside/wall-openings", Unit.M2)).isCloseTo(6.48, within(1e-9));
    assertThat(amount(lines, "inside/wall-area", Unit.M2)).isCloseTo(67.564, within(0.001));
  }

  @Test
  void a_room_open_to_the_next_has_no_wall_there() {
    var scope =
        TestScopes.metric()
            .room("Living", "A", RoomUse.LIVING, "6")
            .room("Bed", "A", RoomUse.BEDROOM, "6.032");
    var lines = measured(scope);
    // 6 - 0.0505 at the end wall only; wall line 2 x 5.9495 + 2.251, half the width being open
    assertThat(amount(lines, "room/Living/length", Unit.MM)).isCloseTo(5949.5, within(1e-9));
    assertThat(amount(lines, "inside/partition-area", Unit.M2)).isZero();
    var in = new Inside(new Job(scope.scope(), cornerpost.fact.Facts.supplied()));
    var living = scope.scope().rooms().get(0);
    assertThat(in.wallLine(living).asDouble(Unit.M)).isCloseTo(14.15, within(1e-9));
  }

  @Test
  void a_pass_through_goes_through_the_linings_of_both_boxes() {
    var scope =
        TestScopes.metric()
            .box("A")
            .box("B", BoxQuestions.JOINED_TO, "A", BoxQuestions.JOINT, Joint.SIDE_BY_SIDE)
            .opening("P1", "A", Wall.LEFT, OpeningKind.PASS_THROUGH, "1500", "2100");
    var lines = measured(scope);
    assertThat(amount(lines, "inside/wall-openings", Unit.M2)).isCloseTo(6.3, within(1e-9));
    assertThat(amount(lines, "framing/A/openings", Unit.ONE)).isEqualTo(1);
    assertThat(amount(lines, "framing/B/openings", Unit.ONE)).isEqualTo(1);
    assertThat(amount(lines, "framing/B-right/studs", Unit.ONE))
        .isEqualTo(amount(lines, "framing/A-left/studs", Unit.ONE));
  }

  // By hand: 7 m along A, whose right neighbour of 20 ft begins 6 m along: 1 m along that, less an
  // end
  // of (6.058 - 5.898) / 2 = 0.08 m. In its own box 7 - 0.08 m. At ends that meet, 0.3 m from the
  // left
  // corner of the one and 0.9 m wide is 2.438 - 0.3 - 0.9 = 1.238 m from that of the other; the
  // walls
  // there are (2.438 - 2.352) / 2 = 0.043 m thick, and the frame before them 38 mm deep.
  @Test
  void a_passage_lies_in_the_next_box_where_that_stands() {
    var scope =
        TestScopes.metric()
            .box("A", BoxQuestions.SIZE, BoxSize.FORTY_HIGH)
            .box(
                "B",
                BoxQuestions.SIZE,
                BoxSize.TWENTY_HIGH,
                BoxQuestions.JOINED_TO,
                "A",
                BoxQuestions.JOINT,
                Joint.SIDE_BY_SIDE,
                BoxQuestions.ALONG,
                "6",
                BoxQuestions.ACROSS,
                "2.438")
            .box(
                "C",
                BoxQuestions.JOINED_TO,
                "A",
                BoxQuestions.JOINT,
                Joint.END_TO_END,
                BoxQuestions.ALONG,
                "12.192")
            .opening(
                "P1",
                "A",
                Wall.RIGHT,
                OpeningKind.PASS_THROUGH,
                "2400",
                "2100",
                OpeningQuestions.OFFSET,
                "7")
            .opening(
                "P2",
                "A",
                Wall.BLIND_END,
                OpeningKind.PASS_THROUGH,
                "900",
                "2100",
                OpeningQuestions.OFFSET,
                "0.3")
            .scope();
    var in = new Inside(new Job(scope, cornerpost.fact.Facts.supplied()));
    var boxes = scope.boxes();
    var p1 = in.openings(boxes.get(1), Wall.LEFT).get(0);
    assertThat(in.along(boxes.get(1), p1, Wall.LEFT).asDouble(Unit.M))
        .isCloseTo(0.92, within(1e-9));
    assertThat(in.along(boxes.get(0), p1, Wall.RIGHT).asDouble(Unit.M))
        .isCloseTo(6.92, within(1e-9));
    var p2 = in.openings(boxes.get(2), Wall.DOOR_END).get(0);
    assertThat(in.along(boxes.get(2), p2, Wall.DOOR_END).asDouble(Unit.M))
        .isCloseTo(1.238 - 0.043 - 0.038, within(1e-9));
  }

  // Three in a row, B in the middle: its passage of 1.5 x 2.1 m to the right goes through two
  // linings, its own and that of C: 2 x 3.15 = 6.3 m2. A, to its left, keeps its wall whole.
  @Test
  void a_middle_box_s_passage_opens_the_lining_on_its_side_only() {
    var lines =
        measured(
            TestScopes.metric()
                .box("A")
                .box(
                    "B",
                    BoxQuestions.JOINED_TO,
                    "A",
                    BoxQuestions.JOINT,
                    Joint.SIDE_BY_SIDE,
                    BoxQuestions.ACROSS,
                    "2.438")
                .box(
                    "C",
                    BoxQuestions.JOINED_TO,
                    "B",
                    BoxQuestions.JOINT,
                    Joint.SIDE_BY_SIDE,
                    BoxQuestions.ACROSS,
                    "4.876")
                .opening("P1", "B", Wall.RIGHT, OpeningKind.PASS_THROUGH, "1500", "2100"));
    assertThat(amount(lines, "inside/wall-openings", Unit.M2)).isCloseTo(6.3, within(1e-9));
    assertThat(TestScopes.has(lines, "framing/A/openings")).isFalse();
    assertThat(amount(lines, "framing/B/openings", Unit.ONE)).isEqualTo(1);
    assertThat(amount(lines, "framing/C/openings", Unit.ONE)).isEqualTo(1);
  }

  // A stacked box has no wall against the one below: a way through a side leads nowhere there.
  @Test
  void a_passage_in_a_wall_opens_no_lining_of_a_box_stacked_on_it() {
    var lines =
        measured(
            TestScopes.metric()
                .box("A")
                .box("B", BoxQuestions.JOINED_TO, "A", BoxQuestions.JOINT, Joint.STACKED)
                .opening("P1", "A", Wall.LEFT, OpeningKind.PASS_THROUGH, "1500", "2100"));
    assertThat(amount(lines, "inside/wall-openings", Unit.M2)).isCloseTo(3.15, within(1e-9));
  }

  @Test
  void a_box_that_stands_alone_has_only_its_own_pass_throughs() {
    var lines =
        measured(
            TestScopes.metric()
                .box("A")
                .box("B")
                .opening("P1", "A", Wall.LEFT, OpeningKind.PASS_THROUGH, "1500", "2100"));
    assertThat(amount(lines, "inside/wall-openings", Unit.M2)).isCloseTo(3.15, within(1e-9));
  }

  // By hand, frame of 12.032 m at 600 mm: ceil(20.05) + 1 = 22. A window of 1200 from 1.98 m of the
  // outside corner begins 1.90 m along the frame (80 mm of shell) and covers the studs at 2.4 and
  // 3.0: 22 + 4 - 2 = 24. Height of a stud 2698 - 76 = 2622; cripples 2 x (2622 - 1200) = 2.844 m.
  @Test
  void studs_round_a_window_are_counted_from_where_it_stands() {
    var lines =
        measured(
            TestScopes.metric()
                .opening(
                    "W1",
                    "A",
                    Wall.RIGHT,
                    OpeningKind.WINDOW,
                    "1200",
                    "1200",
                    OpeningQuestions.SILL,
                    "900",
                    OpeningQuestions.OFFSET,
                    "1.98"));
    assertThat(amount(lines, "framing/A-left/studs", Unit.ONE)).isEqualTo(22);
    assertThat(amount(lines, "framing/A-right/studs", Unit.ONE)).isEqualTo(24);
    assertThat(amount(lines, "framing/A-door-end/studs", Unit.ONE)).isEqualTo(5);
    assertThat(amount(lines, "framing/A-right/noggings", Unit.ONE)).isEqualTo(21 - 2);
    // 22 + 24 + 5 + 5 + 8 at corners = 64 x 2.622 + 2.844
    assertThat(amount(lines, "framing/A/studs", Unit.M)).isCloseTo(170.652, within(1e-6));
    // head of two members and one sill, 1200 + 2 x 38
    assertThat(amount(lines, "framing/A/heads", Unit.M)).isCloseTo(3.828, within(1e-9));
    // frames 2 x 12.032 + 2 x (2.352 - 0.076) = 28.616; two plates
    assertThat(amount(lines, "framing/A/plates", Unit.M)).isCloseTo(57.232, within(1e-9));
  }

  @Test
  void a_door_has_no_sill_member() {
    var lines =
        measured(
            TestScopes.metric().opening("D1", "A", Wall.RIGHT, OpeningKind.DOOR, "900", "2100"));
    assertThat(amount(lines, "framing/A/heads", Unit.M)).isCloseTo(2 * 0.976, within(1e-9));
  }

  @Test
  void a_sleeve_takes_no_studs_away() {
    var with =
        measured(
            TestScopes.metric().opening("S1", "A", Wall.RIGHT, OpeningKind.SLEEVE, "110", "110"));
    assertThat(amount(with, "framing/A-right/studs", Unit.ONE)).isEqualTo(22);
    assertThat(TestScopes.has(with, "framing/A/openings")).isFalse();
  }

  @Test
  void light_steel_takes_track_and_no_plastic_strip() {
    var timber = measured(TestScopes.metric());
    var steel = measured(TestScopes.metric().with(EnvelopeQuestions.STUD, StudSection.STEEL_64));
    assertThat(TestScopes.has(timber, "framing/A/plate-strip")).isTrue();
    assertThat(TestScopes.has(steel, "framing/A/plate-strip")).isFalse();
    assertThat(bought(steel, "framing/A/plates")).containsExactly("track-steel-64");
    assertThat(bought(timber, "framing/A/plates")).containsExactly("stud-timber-38x38-treated");
    assertThat(bought(steel, "ceiling-battens/house/length")).containsExactly("ceiling-channel");
  }

  // By hand: battens ceil(12.032 / 0.4) + 1 = 32, each 2.352 m.
  @Test
  void ceiling_battens_lie_across_the_box() {
    var lines = measured(TestScopes.metric());
    assertThat(amount(lines, "ceiling-battens/A/count", Unit.ONE)).isEqualTo(32);
    assertThat(amount(lines, "ceiling-battens/house/length", Unit.M))
        .isCloseTo(75.264, within(1e-9));
  }

  // By hand: frame of 2.276 m at 600: 5 studs; the door, 150 to 1010 mm, covers the one at 600:
  // 5 + 4 - 1 = 8. A pocket door, 150 to 1870, covers three: 5 + 4 - 3 = 6.
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"WALL, 5", "HINGED, 8", "SLIDING, 8", "POCKET, 6"})
  void partition_studs_make_way_for_the_door(cornerpost.scope.DoorToNext door, double expected) {
    var lines =
        measured(
            TestScopes.metric()
                .room("Living", "A", RoomUse.LIVING, "6", cornerpost.scope.RoomQuestions.DOOR, door)
                .room("Bed", "A", RoomUse.BEDROOM, "6.032"));
    assertThat(amount(lines, "partition/Living/stud-count", Unit.ONE)).isEqualTo(expected);
  }

  @Test
  void backing_is_for_what_hangs_on_the_walls() {
    var none =
        measured(
            TestScopes.metric()
                .with(
                    cornerpost.scope.ServicesQuestions.HEATING,
                    cornerpost.scope.HeatingCooling.STOVE));
    assertThat(TestScopes.has(none, "framing/house/backing")).isFalse();
    var lines = measured(InsideHouses.oneBedroom(UnitSystem.METRIC));
    // kitchen 3 x 1.5, bathroom 2.4, wardrobe 1.8, one indoor unit 0.9
    assertThat(amount(lines, "framing/house/backing", Unit.M)).isCloseTo(9.6, within(1e-9));
  }

  @Test
  void a_roof_opening_is_taken_off_the_ceiling() {
    var plain = measured(TestScopes.metric());
    var lit =
        measured(
            TestScopes.metric()
                .opening("R1", "A", Wall.ROOF, OpeningKind.WINDOW, si("500"), si("800")));
    assertThat(
            amount(plain, "inside/ceiling-area", Unit.M2)
                - amount(lit, "inside/ceiling-area", Unit.M2))
        .isCloseTo(0.4, within(1e-9));
    assertThat(amount(lit, "inside/wall-openings", Unit.M2)).isZero();
  }

  static List<String> bought(List<Line> lines, String id) {
    return TestScopes.line(lines, id).resources().stream()
        .filter(r -> r instanceof Resource.Buy)
        .map(r -> ((Resource.Buy) r).item())
        .toList();
  }
}

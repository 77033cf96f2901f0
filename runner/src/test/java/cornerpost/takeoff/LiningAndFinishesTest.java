package cornerpost.takeoff;

import static cornerpost.takeoff.InsideTest.bought;
import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.has;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoardFinish;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.ContainerFloor;
import cornerpost.scope.Cooking;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.FloorFinish;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.Joint;
import cornerpost.scope.LiningBoard;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Standard;
import cornerpost.scope.VapourControl;
import cornerpost.scope.Wall;
import cornerpost.scope.WetFloor;
import cornerpost.trace.Figure;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LiningAndFinishesTest {
  private static final Job JOB = new Job(TestScopes.metric().scope(), Facts.supplied());

  private static TestScopes house() {
    return InsideHouses.oneBedroom(UnitSystem.METRIC);
  }

  private static List<Line> measured(TestScopes scope) {
    return scope.measured(InsideHouses.RULES);
  }

  private static Figure squareFeet(String amount) {
    return Figure.constant(amount, Unit.SQ_FT);
  }

  // ---- insulation -------------------------------------------------------------------------

  // A board foot is 1 sq ft x 1 in = 0.00236 m3 (definition).
  @Test
  void a_board_foot_is_a_square_foot_an_inch_thick() {
    var volume = squareFeet("1").times(Figure.constant("1", Unit.IN));
    assertThat(volume.asDouble(Unit.BOARD_FOOT)).isCloseTo(1, within(1e-12));
    assertThat(volume.asDouble(Unit.M3)).isCloseTo(0.00236, within(0.000005));
  }

  // By hand: 75 m2 x 50 mm = 3.75 m3 = 1589 board ft; at 80 % of 600 board ft a kit 3.31 kits, so
  // 4.
  @Test
  void foam_for_75_square_metres_takes_four_kits() throws IOException {
    var volume = Figure.constant("75", Unit.M2).times(Figure.constant("50", Unit.MM));
    assertThat(volume.asDouble(Unit.M3)).isCloseTo(3.75, within(1e-12));
    assertThat(volume.asDouble(Unit.BOARD_FOOT)).isCloseTo(1589, within(0.5));
    var foam = TestScopes.line(measured(house()), "insulation/walls/volume").resources();
    var waste = ((Resource.Buy) foam.get(0)).waste().orElseThrow();
    var kit =
        InsidePricesTest.book("quarrow-plains-2026")
            .findItem("insulation-closed-cell")
            .orElseThrow();
    var kits =
        volume
            .times(Figure.count(1).plus(waste))
            .over(Figure.constant(kit.content().toPlainString(), kit.contentUnit()));
    assertThat(kits.asDouble(Unit.ONE)).isCloseTo(3.31, within(0.005));
    assertThat(kits.roundedUp().asDouble(Unit.ONE)).isEqualTo(4);
  }

  // By hand: 2 x (12.032 + 2.352) x 2.698 = 77.616 m2 less 6.48 of openings = 71.136, x 50 mm.
  @Test
  void wall_foam_is_net_area_times_thickness() {
    var lines = measured(house());
    assertThat(amount(lines, "insulation/walls/area", Unit.M2)).isCloseTo(71.136, within(0.001));
    assertThat(amount(lines, "insulation/walls/volume", Unit.M3)).isCloseTo(3.5568, within(0.0001));
    assertThat(amount(lines, "insulation/ceiling/volume", Unit.M3)).isCloseTo(2.1224, within(1e-4));
  }

  // F. R. Dagostino and S. J. Peterson, ch. 14: at 16 in spacing one ft of 15 in batt covers
  // 1.33 sq ft, so 300 sq ft of wall take 225.6 ft: the batt covers the stud too.
  @Test
  void batts_cover_the_whole_bay() {
    var bay = Figure.constant("16", Unit.IN);
    assertThat(bay.times(Figure.constant("1", Unit.FT)).asDouble(Unit.SQ_FT))
        .isCloseTo(1.33, within(0.005));
    assertThat(squareFeet("300").over(bay).asDouble(Unit.FT)).isCloseTo(225.6, within(0.7));
    var batts = measured(house().with(EnvelopeQuestions.INSIDE, InsulationMaterial.MINERAL_WOOL));
    var foam = measured(house());
    assertThat(amount(batts, "insulation/walls/area", Unit.M2))
        .isEqualTo(amount(foam, "insulation/walls/area", Unit.M2));
    assertThat(bought(batts, "insulation/walls/volume")).containsExactly("insulation-mineral-wool");
  }

  // By hand: two boxes 2 x 77.616 = 155.232 m2; they touch over 12 m of 2.698 m on both sides,
  // 64.752, in which the pass-through lies: 90.480. Standing apart, only the hole in A comes off.
  @Test
  void steel_between_two_warm_boxes_is_not_insulated() {
    var joined =
        measured(
            pair(
                BoxQuestions.JOINED_TO,
                "A",
                BoxQuestions.JOINT,
                Joint.SIDE_BY_SIDE,
                BoxQuestions.JOINT_LENGTH,
                "12"));
    assertThat(amount(joined, "insulation/walls/area", Unit.M2)).isCloseTo(90.480, within(0.001));
    var apart = measured(pair());
    assertThat(amount(apart, "insulation/walls/area", Unit.M2)).isCloseTo(152.082, within(0.001));
  }

  private static TestScopes pair(Object... joint) {
    return TestScopes.metric()
        .box("A")
        .box("B", joint)
        .opening("P1", "A", Wall.LEFT, OpeningKind.PASS_THROUGH, "1500", "2100");
  }

  @Test
  void walls_insulated_outside_only_have_none_inside() {
    var lines = measured(house().with(EnvelopeQuestions.SIDE, InsulationSide.OUTSIDE));
    assertThat(has(lines, "insulation/walls")).isFalse();
    assertThat(has(lines, "insulation/ceiling")).isTrue();
    var both = measured(house().with(EnvelopeQuestions.SIDE, InsulationSide.BOTH));
    assertThat(has(both, "insulation/walls")).isTrue();
  }

  @Test
  void netting_holds_what_does_not_stick() {
    assertThat(has(measured(house()), "insulation/underfloor/netting")).isFalse();
    var board = measured(house().with(EnvelopeQuestions.UNDERFLOOR, InsulationMaterial.XPS));
    assertThat(has(board, "insulation/underfloor/netting")).isTrue();
    var none = measured(house().with(EnvelopeQuestions.UNDERFLOOR, InsulationMaterial.NONE));
    assertThat(has(none, "insulation/underfloor")).isFalse();
  }

  @Test
  void foam_asks_for_protection_and_batts_do_not() {
    assertThat(has(measured(house()), "insulation/house/foam-protection")).isTrue();
    var batts =
        measured(
            house()
                .with(EnvelopeQuestions.INSIDE, InsulationMaterial.SHEEP_WOOL)
                .with(EnvelopeQuestions.CEILING, InsulationMaterial.WOOD_FIBRE)
                .with(EnvelopeQuestions.UNDERFLOOR, InsulationMaterial.EPS));
    assertThat(has(batts, "insulation/house/foam-protection")).isFalse();
  }

  @ParameterizedTest
  @EnumSource(VapourControl.class)
  void vapour_control_follows_the_choice(VapourControl control) {
    var lines = measured(house().with(EnvelopeQuestions.VAPOUR, control));
    assertThat(has(lines, "membrane/vapour/area")).isEqualTo(control == VapourControl.MEMBRANE);
    assertThat(has(lines, "membrane/vapour/kraft")).isEqualTo(control == VapourControl.KRAFT);
    assertThat(bought(lines, "paint/inside/primer"))
        .containsExactly(control == VapourControl.PAINT ? "paint-retarder" : "paint-primer");
  }

  @Test
  void membrane_on_the_steel_only_where_it_is_asked_for() {
    assertThat(has(measured(house()), "membrane/steel")).isFalse();
    var lines = measured(house().with(EnvelopeQuestions.MEMBRANE_ON_STEEL, true));
    assertThat(amount(lines, "membrane/steel/area", Unit.M2)).isCloseTo(71.136, within(0.001));
  }

  // ---- board ------------------------------------------------------------------------------

  // By hand: a wall 12.0 x 2.4 m is 10 sheets of 1.2 x 2.4 m net and 11 with 10 % waste.
  @Test
  void a_wall_of_28_8_square_metres_takes_eleven_sheets() throws IOException {
    var sheet =
        InsidePricesTest.book("velmark-coast-2026").findItem("board-plasterboard").orElseThrow();
    var content = Figure.constant(sheet.content().toPlainString(), sheet.contentUnit());
    var net = Figure.constant("28.8", Unit.M2);
    assertThat(net.over(content).asDouble(Unit.ONE)).isEqualTo(10);
    var sheets = net.times(Figure.count(1).plus(JOB.fact("waste.sheet"))).over(content);
    assertThat(sheets.roundedUp().asDouble(Unit.ONE)).isEqualTo(11);
  }

  // F. R. Dagostino and S. J. Peterson, Estimating in Building Construction, example 16-3.
  @ParameterizedTest(name = "{0} sq ft: {1} sheets of 4 x 8 ft")
  @CsvSource({"1184, 37", "2384, 75", "1200, 38"})
  void sheets_of_the_published_example(String area, double expected) throws IOException {
    var sheet =
        InsidePricesTest.book("quarrow-plains-2026").findItem("board-plasterboard").orElseThrow();
    var content = Figure.constant(sheet.content().toPlainString(), sheet.contentUnit());
    assertThat(squareFeet(area).over(content).roundedUp().asDouble(Unit.ONE)).isEqualTo(expected);
  }

  // The same example: 7000 sq ft take 7000 screws, 2660 ft of tape (with 10 % and rolls of 50 ft:
  // 59
  // rolls) and 35 gal of compound.
  @Test
  void screws_tape_and_compound_of_the_published_example() {
    var area = squareFeet("7000");
    var screws = area.times(JOB.fact("board.screws-per-area"));
    assertThat(screws.asDouble(Unit.ONE)).isCloseTo(7000, within(1e-6));
    var tape = area.times(JOB.fact("board.tape-per-area"));
    assertThat(tape.asDouble(Unit.FT)).isCloseTo(2660, within(1e-6));
    assertThat(
            tape.times(Figure.count(1).plus(JOB.fact("board.tape-waste")))
                .over(Figure.constant("50", Unit.FT))
                .roundedUp()
                .asDouble(Unit.ONE))
        .isEqualTo(59);
    assertThat(area.times(JOB.fact("board.compound-per-area")).asDouble(Unit.GALLON))
        .isCloseTo(35, within(1e-9));
  }

  // By hand: 67.564 of walls + 2 x 8.105 of partitions + reveals. A partition is 2.251 x 2.6105 =
  // 5.876 less a door of 0.86 x 2.06 = 1.772, so 4.105; two of them, both faces: 16.418. Reveals
  // (4.8 + 9.0) m x 50.5 mm = 0.697.
  @Test
  void boarded_faces_are_walls_partitions_and_reveals() {
    var lines = measured(house());
    assertThat(amount(lines, "inside/partition-area", Unit.M2)).isCloseTo(8.209, within(0.001));
    assertThat(amount(lines, "lining/openings/reveals", Unit.M2)).isCloseTo(0.697, within(0.001));
    assertThat(amount(lines, "lining/house/wall-faces", Unit.M2)).isCloseTo(84.679, within(0.002));
    // bathroom: 2 x (2.311 + 2.251) x 2.6105 = 23.818 of moisture-resistant board
    assertThat(amount(lines, "lining/wet-rooms/boards", Unit.M2)).isCloseTo(23.818, within(0.001));
    assertThat(amount(lines, "lining/walls/boards", Unit.M2)).isCloseTo(60.861, within(0.002));
  }

  @ParameterizedTest
  @EnumSource(LiningBoard.class)
  void only_gypsum_is_jointed_and_only_plasterboard_minds_water(LiningBoard board) {
    var lines =
        measured(
            house()
                .with(EnvelopeQuestions.WALL_BOARD, board)
                .with(EnvelopeQuestions.CEILING_BOARD, board));
    boolean gypsum = board == LiningBoard.PLASTERBOARD || board == LiningBoard.FIBRE_BOARD;
    assertThat(has(lines, "lining/joints")).isEqualTo(gypsum);
    assertThat(has(lines, "lining/wet-rooms")).isEqualTo(board == LiningBoard.PLASTERBOARD);
  }

  @ParameterizedTest
  @EnumSource(BoardFinish.class)
  void board_finish_follows_the_choice(BoardFinish finish) {
    var lines = measured(house().with(EnvelopeQuestions.BOARD_FINISH, finish));
    assertThat(has(lines, "lining/joints/tape")).isEqualTo(finish != BoardFinish.NONE);
    assertThat(has(lines, "lining/joints/skim")).isEqualTo(finish == BoardFinish.SKIM);
    assertThat(has(lines, "lining/joints/compound")).isEqualTo(finish == BoardFinish.TAPE);
  }

  // ---- paint ------------------------------------------------------------------------------

  // I. S. Griffith, Carpentry, 1916: new work 350 sq ft a gallon, which is 8.6 m2 a litre; the
  // outside of a 40 ft high cube, 91.0 m2 in two coats, then takes 21.2 l.
  @Test
  void paint_covers_350_square_feet_a_gallon() {
    var coverage = JOB.fact("paint.coverage");
    assertThat(coverage.asDouble(Unit.get("m2/l"))).isCloseTo(8.6, within(0.02));
    var litres = Figure.constant("91.0", Unit.M2).times(2).over(coverage);
    assertThat(litres.asDouble(Unit.LITRE)).isCloseTo(21.2, within(0.05));
  }

  @ParameterizedTest(name = "{0} coats: {1} first, {2} further")
  @CsvSource({"0, 0, 0", "1, 1, 0", "3, 1, 2"})
  void the_first_coat_is_primer(String coats, double first, double further) {
    var lines = measured(house().with(EnvelopeQuestions.PAINT_COATS, coats));
    double area = amount(lines, "paint/inside/area", Unit.M2);
    assertThat(area).isPositive();
    assertThat(amount(lines, "paint/inside/first-coat-area", Unit.M2))
        .isCloseTo(first * area, within(1e-9));
    assertThat(amount(lines, "paint/inside/next-coats-area", Unit.M2))
        .isCloseTo(further * area, within(1e-9));
  }

  // ---- wet rooms, floors, kitchen ---------------------------------------------------------

  // Tile makers' formula for 300 x 300 x 8 mm with 3 mm joints: 600 / 90 000 x 8 x 3 x 1.6 = 0.256.
  @Test
  void grout_of_a_300_mm_tile_is_256_grams_a_square_metre() {
    assertThat(WetRooms.groutPerArea(JOB).asDouble(Unit.get("kg/m2")))
        .isCloseTo(0.256, within(1e-9));
  }

  // By hand: bathroom 2.311 x 2.251, wall line 9.124, less two doors of 0.86 = 7.404, x 1.2 m.
  @Test
  void wall_tiles_stop_at_doors() {
    var lines = measured(house());
    assertThat(amount(lines, "wet-rooms/all/floor-area", Unit.M2)).isCloseTo(5.202, within(0.001));
    assertThat(amount(lines, "wet-rooms/all/wall-tiles", Unit.M2)).isCloseTo(8.885, within(0.001));
    assertThat(amount(lines, "wet-rooms/all/waterproof-area", Unit.M2))
        .isCloseTo(14.087, within(0.001));
    // tiles and floor at 4 kg/m2
    assertThat(amount(lines, "wet-rooms/all/adhesive", Unit.KG)).isCloseTo(56.348, within(0.01));
  }

  @Test
  void without_wall_tiles_the_upstand_is_sealed() {
    var lines = measured(house().with(FinishesQuestions.WALL_TILE_HEIGHT, "0"));
    assertThat(amount(lines, "wet-rooms/all/wall-tiles", Unit.M2)).isZero();
    // 5.202 + 9.124 x 0.15
    assertThat(amount(lines, "wet-rooms/all/waterproof-area", Unit.M2))
        .isCloseTo(6.571, within(0.001));
  }

  @Test
  void sheet_vinyl_takes_the_place_of_floor_tiles() {
    var vinyl = measured(house().with(FinishesQuestions.WET_FLOOR, WetFloor.VINYL));
    assertThat(has(vinyl, "wet-rooms/all/floor-tiles")).isFalse();
    assertThat(has(vinyl, "wet-rooms/all/sheet-vinyl")).isTrue();
    assertThat(has(measured(house()), "wet-rooms/all/sheet-vinyl")).isFalse();
  }

  @ParameterizedTest
  @EnumSource(FloorFinish.class)
  void dry_floors_follow_the_choice(FloorFinish finish) {
    var lines = measured(house().with(FinishesQuestions.FLOOR, finish));
    assertThat(has(lines, "floor/dry-rooms/lacquer")).isEqualTo(finish == FloorFinish.SEALED);
    assertThat(has(lines, "floor/dry-rooms/adhesive")).isEqualTo(finish == FloorFinish.TILE);
    assertThat(has(lines, "floor/dry-rooms/underlay"))
        .isEqualTo(finish != FloorFinish.SEALED && finish != FloorFinish.TILE);
    // every room but the bathroom: (6.105 + 3.337) x 2.251
    assertThat(amount(lines, "floor/dry-rooms/area", Unit.M2)).isCloseTo(21.254, within(0.001));
  }

  @Test
  void overlay_board_lies_in_boxes_whose_floor_is_overlaid() {
    var lines = measured(house());
    assertThat(amount(lines, "floor/house/overlay", Unit.M2)).isCloseTo(26.456, within(0.001));
    var sealed = measured(TestScopes.metric().box("A", BoxQuestions.FLOOR, ContainerFloor.SEAL));
    assertThat(has(sealed, "floor/house/overlay")).isFalse();
  }

  // By hand: 3 m of base units, half of it with wall units, splashback 3 x 0.6.
  @Test
  void kitchen_by_its_run() {
    var lines = measured(house());
    assertThat(amount(lines, "kitchen/all/base-units", Unit.M)).isEqualTo(3);
    assertThat(amount(lines, "kitchen/all/wall-units", Unit.M)).isEqualTo(1.5);
    assertThat(amount(lines, "kitchen/all/splashback", Unit.M2)).isCloseTo(1.8, within(1e-9));
    assertThat(bought(lines, "kitchen/appliances/cooker")).containsExactly("cooker-middle");
    assertThat(has(lines, "kitchen/appliances/dishwasher")).isFalse();
  }

  @Test
  void appliances_and_fittings_come_at_their_level() {
    var lines =
        measured(
            house()
                .with(FinishesQuestions.APPLIANCES, Standard.HIGH)
                .with(FinishesQuestions.BATHROOM_LEVEL, Standard.BASIC)
                .with(ServicesQuestions.COOKING, Cooking.GAS)
                .with(ServicesQuestions.DISHWASHER, true));
    assertThat(bought(lines, "kitchen/appliances/cooker")).containsExactly("cooker-gas-high");
    assertThat(bought(lines, "kitchen/appliances/dishwasher")).containsExactly("dishwasher-high");
    assertThat(bought(lines, "wet-rooms/fittings/wc")).containsExactly("wc-basic");
  }

  @Test
  void two_bathrooms_have_two_of_everything() {
    var lines =
        measured(
            house()
                .box("A")
                .box("B")
                .room("Bath 2", "B", RoomUse.BATHROOM, "2.4")
                .room("Bed 2", "B", RoomUse.BEDROOM, "9.632"));
    assertThat(amount(lines, "wet-rooms/fittings/wc", Unit.ONE)).isEqualTo(2);
    assertThat(amount(lines, "climate/ventilation/fans", Unit.ONE)).isEqualTo(2);
    assertThat(amount(lines, "electrical/house/smoke-alarms", Unit.ONE)).isEqualTo(3);
    assertThat(amount(lines, "plumbing/house/fixtures", Unit.ONE)).isEqualTo(8);
  }

  // ---- doors and trim ---------------------------------------------------------------------

  @Test
  void inner_doors_come_from_the_list_of_rooms() {
    var lines = measured(house());
    assertThat(amount(lines, "inner-doors/hinged/leaves", Unit.ONE)).isEqualTo(1);
    assertThat(amount(lines, "inner-doors/sliding/leaves", Unit.ONE)).isEqualTo(1);
    assertThat(has(lines, "inner-doors/pocket")).isFalse();
    // two doors, two faces, 0.86 + 2 x 2.06
    assertThat(amount(lines, "inner-doors/all/architrave", Unit.M)).isCloseTo(19.92, within(1e-9));
  }

  // By hand: boards begin 80 mm behind the corner. The living room ends 6.2 - 0.0445 = 6.1555 from
  // there, so of a door 1 m wide from 5.9 - 0.08 = 5.82 on 0.3355 is in it; the bath has the rest
  // and no skirting. A window 1.2 wide with its sill at 60 mm takes 1.2, one at 100 mm nothing.
  @Test
  void an_opening_takes_what_it_has_of_the_walls_of_dry_rooms_down_to_the_skirting() {
    var between = measured(opening(OpeningKind.DOOR, "1000", "5.9", "0"));
    assertThat(amount(between, "opening/X1/skirting", Unit.M)).isCloseTo(0.3355, within(1e-9));
    var low = measured(opening(OpeningKind.WINDOW, "1200", "9.5", "60"));
    assertThat(amount(low, "opening/X1/skirting", Unit.M)).isCloseTo(1.2, within(1e-9));
    var above = measured(opening(OpeningKind.WINDOW, "1200", "9.5", "100"));
    assertThat(amount(above, "opening/X1/skirting", Unit.M)).isZero();
  }

  private static TestScopes opening(OpeningKind kind, String width, String offset, String sill) {
    return house()
        .opening(
            "X1",
            "A",
            Wall.LEFT,
            kind,
            TestScopes.si(width),
            TestScopes.si("2000"),
            OpeningQuestions.SILL,
            TestScopes.si(sill),
            OpeningQuestions.OFFSET,
            TestScopes.si(offset));
  }

  // By hand: living 2 x (6.105 + 2.251) - 0.86 and bedroom 2 x (3.337 + 2.251) - 0.86, less the
  // sliding door of 2.4 and kitchen units of 3.0 in the living room: 26.168 - 2.4 - 3 = 20.768.
  @Test
  void skirting_runs_round_dry_rooms_and_stops_at_kitchen_units() {
    var lines = measured(house());
    assertThat(amount(lines, "room-kitchen/Living/skirting", Unit.M)).isEqualTo(3);
    assertThat(amount(lines, "trim/house/skirting", Unit.M)).isCloseTo(20.768, within(1e-6));
    var none = measured(house().with(FinishesQuestions.SKIRTING, false));
    assertThat(has(none, "trim/house/skirting")).isFalse();
  }

  // By hand: the longest board, the wall without the sliding door, is 6.105: a run of 3 leaves
  // 3.105.
  // The walls of the living room are 2 x (6.105 + 2.251) - 0.86 = 15.852: units of 20 m take no
  // more.
  @Test
  void kitchen_units_stand_before_the_longest_boards_as_far_as_there_are_any() {
    var pieces = TestScopes.line(measured(house()), "trim/house/skirting").pieces();
    assertThat(pieces)
        .filteredOn(p -> p.what().endsWith("beside kitchen units"))
        .singleElement()
        .satisfies(p -> assertThat(p.length().asDouble(Unit.M)).isCloseTo(3.105, within(1e-9)));
    var lines = measured(house().with(FinishesQuestions.KITCHEN_RUN, "20"));
    assertThat(amount(lines, "room-kitchen/Living/skirting", Unit.M))
        .isCloseTo(15.852, within(1e-9));
    assertThat(TestScopes.line(lines, "trim/house/skirting").pieces())
        .noneMatch(p -> p.what().startsWith("Living"));
  }

  @Test
  void blinds_hang_before_glass_only() {
    var lines = measured(house().opening("D2", "A", Wall.LEFT, OpeningKind.DOOR, "900", "2100"));
    assertThat(amount(lines, "trim/windows/blinds", Unit.M2)).isCloseTo(6.48, within(1e-9));
    assertThat(amount(lines, "trim/windows/blinds-hung", Unit.ONE)).isEqualTo(2);
    var none = measured(house().with(FinishesQuestions.BLINDS, false));
    assertThat(has(none, "trim/windows/blinds")).isFalse();
  }

  @Test
  void a_box_on_top_of_another_has_a_stair_to_it() {
    assertThat(has(measured(house()), "trim/house/stairs")).isFalse();
    var lines =
        measured(
            TestScopes.metric()
                .box("A")
                .box("B", BoxQuestions.JOINED_TO, "A", BoxQuestions.JOINT, Joint.STACKED));
    assertThat(amount(lines, "trim/house/stairs", Unit.ONE)).isEqualTo(1);
    // one for the house and one for the upper storey: IRC R314 asks for each storey
    assertThat(amount(lines, "electrical/house/smoke-alarms", Unit.ONE)).isEqualTo(2);
  }
}

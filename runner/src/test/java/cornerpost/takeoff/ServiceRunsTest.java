package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.has;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.Cooking;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Joint;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.VentilationKind;
import cornerpost.scope.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conductors, cable and ducts by hand, in a 40 ft high cube: 12.192 x 2.438 m outside, 12.032 m
 * inside, lining 0.0505 m; clear rooms 6.105, 2.311 and 3.337 m long and 2.251 m wide, their
 * middles 3.1, 7.4 and 10.316 m from the service end; 2.6105 m from the container floor to the
 * ceiling.
 */
class ServiceRunsTest {
  private static TestScopes house() {
    return InsideHouses.oneBedroom(UnitSystem.METRIC);
  }

  private static List<Line> measured(TestScopes scope) {
    return scope.measured(InsideHouses.RULES);
  }

  private static void holds(List<Line> lines, String id, double metres) {
    assertThat(amount(lines, id, Unit.M)).as(id).isCloseTo(metres, within(1e-9));
  }

  // ---- bonding: NEC 250.53(A)(3): rods 6 ft (1.8288 m) apart at least -------------------------

  // By hand: panel 1.2 m above the floor, floor 0.75 m above the ground, through the lining 0.0505,
  // 0.6 off the wall, one way of 1.8288 between two rods, ends of 0.3 at the panel and two rods:
  // 1.2 + 0.75 + 0.0505 + 0.6 + 1.8288 + 0.9 = 5.3293. To the shell 1.2 + 2.438 + 3 x 0.3 = 4.538.
  @Test
  void bonding_runs_from_the_panel_to_the_rods_and_across_the_box() {
    var lines = measured(house().with(SiteQuestions.FLOOR_HEIGHT, "750"));
    holds(lines, "electrical/bonding/to-rods", 5.3293);
    holds(lines, "bonding/A/conductor", 4.538);
    holds(lines, "electrical/bonding/conductor", 5.3293 + 4.538);
    assertThat(has(lines, "electrical/bonding/to-gas")).isFalse();
  }

  // By hand: 4.538 m as in the first box and on the way to it 2.438 m across the box beside it,
  // 12.192 m along the box before it, 2.896 m up the box below it.
  @ParameterizedTest
  @CsvSource({"SIDE_BY_SIDE, 6.976", "END_TO_END, 16.73", "STACKED, 7.434"})
  void the_shell_of_each_further_box_has_a_conductor_of_its_own(Joint joint, double expected) {
    var two =
        TestScopes.metric()
            .box("A")
            .box("B", BoxQuestions.JOINT, joint, BoxQuestions.JOINED_TO, "A");
    var lines = measured(two);
    holds(lines, "bonding/A/conductor", 4.538);
    holds(lines, "bonding/B/conductor", expected);
  }

  // NEC 250.104(B). By hand: 1.2 down, 2.438 across, two ends of 0.3.
  @Test
  void the_gas_pipe_is_bonded_where_there_is_one() {
    var lines = measured(house().with(ServicesQuestions.COOKING, Cooking.GAS));
    holds(lines, "electrical/bonding/to-gas", 1.2 + 2.438 + 2 * 0.3);
    assertThat(amount(lines, "electrical/bonding/gas-bond", Unit.ONE)).isEqualTo(1);
    assertThat(InsideTest.bought(lines, "electrical/bonding/gas-bond"))
        .containsExactly("bond-clamp");
  }

  // ---- cable for sockets ------------------------------------------------------------------

  // By hand, cable to the middle of the rooms 7.1, 11.4 and 14.316. A single socket: half the width
  // 1.1255, a quarter of the length, an end of 0.3.
  private static final double AT_THE_BASIN = 11.4 + 1.1255 + 2.311 / 4 + 0.3;

  // By hand: half the box 6.096, 4 up and down, 2.438 across, half of a deck 6 m long, through the
  // lining and an end at three: 6.096 + 4 + 2.438 + 3 + 3 x (0.0505 + 0.3) = 16.5855.
  private static final double OUTSIDE = 16.5855;

  // Living 16.712 round it, five sockets; bedroom 11.176 round it, three; two extra ones on these;
  // kitchen twice 7.1 and 3 along the counter, ends at three sockets over it (3.0 / 1.2192 = 2.46)
  // and three for appliances; the washer's socket.
  @Test
  void cable_for_sockets_runs_round_the_rooms_and_to_each_single_socket() {
    var lines =
        measured(
            house()
                .with(ServicesQuestions.EXTRA_SOCKETS, "2")
                .with(DeckAndRoofQuestions.DECK_LENGTH, "6"));
    double byHand =
        (7.1 + 16.712 + 5 * 0.3)
            + AT_THE_BASIN
            + (14.316 + 11.176 + 3 * 0.3)
            + 2 * 0.3
            + OUTSIDE
            + (2 * (7.1 + 3) + (3 + 3) * 0.3)
            + AT_THE_BASIN;
    holds(lines, "wiring/outside/sockets", OUTSIDE);
    holds(lines, "wiring/house/power", byHand);
  }

  // By hand: without a deck 6.096 + 4 + 2.438 + 2 x 0.3505; a box beside it 2.438 more to cross.
  @Test
  void cable_outside_crosses_the_house_to_its_far_side() {
    var one = TestScopes.metric().with(DeckAndRoofQuestions.DECK, false);
    holds(measured(one), "wiring/outside/sockets", 13.235);
    var two =
        TestScopes.metric()
            .with(DeckAndRoofQuestions.DECK, false)
            .box("A")
            .box("B", BoxQuestions.JOINT, Joint.SIDE_BY_SIDE, BoxQuestions.JOINED_TO, "A");
    holds(measured(two), "wiring/outside/sockets", 15.673);
    var stacked =
        TestScopes.metric()
            .with(DeckAndRoofQuestions.DECK, false)
            .box("A")
            .box("B", BoxQuestions.JOINT, Joint.STACKED, BoxQuestions.JOINED_TO, "A");
    holds(measured(stacked), "wiring/outside/sockets", 13.235);
  }

  // By hand, one bathroom of 3 m and two extra sockets, no room lived in: the extra ones each
  // 6.096 + 4 + 0.3 from the panel.
  @Test
  void extra_sockets_have_cable_of_their_own_where_no_room_is_lived_in() {
    var wet =
        TestScopes.metric()
            .room("Wash", "A", RoomUse.BATHROOM, "3")
            .with(ServicesQuestions.LAUNDRY, false);
    double without =
        amount(
            measured(wet.with(ServicesQuestions.EXTRA_SOCKETS, "0")), "wiring/house/power", Unit.M);
    double with =
        amount(
            measured(wet.with(ServicesQuestions.EXTRA_SOCKETS, "2")), "wiring/house/power", Unit.M);
    assertThat(with - without).isCloseTo(2 * 10.396, within(1e-9));
  }

  // ---- ducts of fans and hoods --------------------------------------------------------------

  // By hand: a fan straight out 2.251 / 2 + 0.0505 = 1.176. A hood 1.85 m above the floor covering,
  // 0.007 + 0.012 on the container floor, so 1.869: 2.6105 - 1.869 up and 0.0505 through = 0.792.
  @Test
  void without_a_vent_a_fan_blows_straight_out_and_a_hood_below_the_ceiling() {
    var lines = measured(house());
    holds(lines, "room-fan/Bath/duct", 1.176);
    holds(lines, "room-hood/Living/duct", 0.792);
    holds(lines, "climate/ventilation/ducts", 1.968);
  }

  // By hand: the bathroom's middle is 7.4 + 0.08 = 7.48 m from the corner. Vent 0.16 wide at 8.0,
  // its
  // middle 8.08: 0.6 along, 1.1255 across, 2.6105 - (2.2 + 0.08) = 0.3305 down, 0.0505 through:
  // 2.1065. In the blind end 12.032 - 7.4 = 4.632 along, 0.3305 down, and 1.219 - (0.9 + 0.08)
  // = 0.239 off the middle: 5.2015; in the door end 7.4 along. In the roof 0.6 along, 2.28 - 1.219
  // across and 0.0875 through the ceiling: 1.7485.
  @ParameterizedTest
  @CsvSource({
    "LEFT, 8, 2.1065",
    "RIGHT, 8, 2.1065",
    "RIGHT, 6.8, 2.1065",
    "BLIND_END, 0.9, 5.2015",
    "DOOR_END, 0.9, 7.9695",
    "ROOF, 8, 1.7485"
  })
  void a_fan_blows_to_the_vent(Wall wall, String offset, double expected) {
    holds(measured(vent(house(), "V1", wall, offset, "2200")), "room-fan/Bath/duct", expected);
  }

  // By hand: from the top of the hood at 1.869 up to the middle of the vent 2.28: 0.411 + 0.0505;
  // through the roof 2.6105 - 1.869 + 0.0875.
  @Test
  void a_hood_hangs_below_its_vent() {
    holds(measured(vent(house(), "V1", Wall.LEFT, "2", "2200")), "room-hood/Living/duct", 0.4615);
    holds(measured(vent(house(), "V1", Wall.ROOF, "2", "0")), "room-hood/Living/duct", 0.829);
  }

  /** The one far away, though entered first, is not taken; nor one in another box. */
  @Test
  void of_several_vents_the_shortest_way_counts() {
    var far = vent(house().box("A").box("B"), "V1", Wall.LEFT, "2", "2200");
    var near = vent(far, "V2", Wall.LEFT, "8", "2200");
    holds(measured(near), "room-fan/Bath/duct", 2.1065);
    var elsewhere =
        house()
            .box("A")
            .box("B")
            .opening(
                "V1", "B", Wall.LEFT, OpeningKind.VENT, "160", "160", OpeningQuestions.OFFSET, "8");
    holds(measured(elsewhere), "room-fan/Bath/duct", 1.176);
  }

  /** A unit with heat recovery does not take the air of the hood: that keeps its duct. */
  @Test
  void a_hood_has_its_duct_beside_a_unit_with_heat_recovery() {
    var lines = measured(house().with(ServicesQuestions.VENTILATION, VentilationKind.RECOVERY));
    holds(lines, "climate/ventilation/hood-ducts", 0.792);
    assertThat(has(lines, "room-fan/")).isFalse();
    assertThat(InsideTest.bought(lines, "climate/ventilation/hood-ducts"))
        .containsExactly("duct-rigid");
  }

  private static TestScopes vent(
      TestScopes house, String id, Wall wall, String offset, String sill) {
    return house.opening(
        id,
        "A",
        wall,
        OpeningKind.VENT,
        "160",
        "160",
        OpeningQuestions.OFFSET,
        offset,
        OpeningQuestions.SILL,
        sill);
  }
}

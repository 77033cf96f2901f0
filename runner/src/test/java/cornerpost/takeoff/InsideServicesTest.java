package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.has;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.Cooking;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Digging;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.HeatingCooling;
import cornerpost.scope.HotWater;
import cornerpost.scope.Joint;
import cornerpost.scope.PowerSupply;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServiceEnd;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.VentilationKind;
import cornerpost.scope.Washing;
import cornerpost.scope.WasteWater;
import cornerpost.scope.WaterSupply;
import cornerpost.trace.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InsideServicesTest {
  private static final Job JOB = new Job(TestScopes.metric().scope(), Facts.supplied());
  private static final ServiceLoad LOAD = new ServiceLoad(JOB);

  private static TestScopes house() {
    return InsideHouses.oneBedroom(UnitSystem.METRIC);
  }

  private static List<Line> measured(TestScopes scope) {
    return scope.measured(InsideHouses.RULES);
  }

  private static Figure va(int amount) {
    return Figure.count(amount);
  }

  // ---- electricity: NFPA 70 (NEC), Informative Annex D ------------------------------------

  // Example D1(a): 1500 sq ft at 3 VA = 4500; two small-appliance circuits 3000, laundry 1500.
  @Test
  void general_lighting_load_of_example_d1a() {
    var area = Figure.constant("1500", Unit.SQ_FT);
    assertThat(area.times(JOB.fact("load.lighting-per-area")).in(Unit.ONE).doubleValue())
        .isCloseTo(4500, within(1e-6));
    var small = JOB.fact("load.small-circuit").times(JOB.fact("circuit.small-appliance"));
    assertThat(small.asDouble(Unit.ONE)).isEqualTo(3000);
  }

  // Example D1(a): 9000 VA: 3000 whole + 35 % of 6000 = 5100; + range 8000 + dryer 5500 = 18 600
  // VA;
  // 18 600 / 240 = 78 A.
  @Test
  void standard_method_gives_example_d1a() {
    var total = LOAD.standard(va(9000), JOB.fact("load.range-demand").plus(va(5500)));
    assertThat(total.asDouble(Unit.ONE)).isEqualTo(18_600);
    assertThat(total.over(JOB.fact("load.service-volts")).asDouble(Unit.ONE))
        .isCloseTo(77.5, within(0.001));
    assertThat(LOAD.standard(va(9000), va(0)).asDouble(Unit.ONE)).isEqualTo(5100);
  }

  // Example D1(a): 4500 / 120 = 37.5 A, so three 15 A circuits.
  @ParameterizedTest(name = "{0} VA: {1} circuits")
  @CsvSource({"4500, 3", "1800, 1", "1801, 2", "3600, 2"})
  void lighting_circuits_of_15_amperes(int load, double circuits) {
    assertThat(LOAD.lightingCircuits(va(load)).asDouble(Unit.ONE)).isEqualTo(circuits);
  }

  // Example D2(a): 4500 + 3000 + 1500 + 12 000 + 2500 + 1200 + 5000 = 29 700; 10 000 + 40 % of
  // 19 700 = 17 880; 9 kW of heat in five units at 40 % = 3600; total 21 480 VA, 89.5 A.
  @Test
  void optional_method_gives_example_d2a() {
    var heat = LOAD.heaters(va(5), va(1800));
    assertThat(heat.asDouble(Unit.ONE)).isEqualTo(3600);
    assertThat(LOAD.optional(va(29_700), va(0)).asDouble(Unit.ONE)).isEqualTo(17_880);
    var total = LOAD.optional(va(29_700), heat);
    assertThat(total.asDouble(Unit.ONE)).isEqualTo(21_480);
    assertThat(total.over(JOB.fact("load.service-volts")).asDouble(Unit.ONE)).isEqualTo(89.5);
  }

  // NEC 220.82(C): fewer than four separately controlled units 65 %, four or more 40 %.
  @ParameterizedTest(name = "{0} heaters of 1000 VA: {1}")
  @CsvSource({"1, 650", "3, 1950", "4, 1600", "5, 2000"})
  void heaters_count_less_from_four_on(int units, double expected) {
    assertThat(LOAD.heaters(va(units), va(1000)).asDouble(Unit.ONE)).isEqualTo(expected);
  }

  @Test
  void the_panel_is_100_amperes_until_more_is_asked_for() {
    var small = measured(house());
    assertThat(amount(small, "electrical/panel/small", Unit.ONE)).isEqualTo(1);
    assertThat(amount(small, "electrical/panel/large", Unit.ONE)).isZero();
    var large =
        measured(
            house()
                .with(ServicesQuestions.HOT_WATER, HotWater.ELECTRIC_INSTANT)
                .with(ServicesQuestions.HEATING, HeatingCooling.PANEL)
                .with(ServicesQuestions.HEADS, "3"));
    assertThat(amount(large, "electrical/load/amperes", Unit.ONE)).isGreaterThan(100);
    assertThat(amount(large, "electrical/panel/small", Unit.ONE)).isZero();
    assertThat(amount(large, "electrical/panel/large", Unit.ONE)).isEqualTo(1);
  }

  // By hand: 12.192 x 2.438 = 29.72 m2 = 320.0 sq ft x 3 VA = 960 VA; with 4500 of small circuits
  // 5460: 3000 + 35 % of 2460 = 3861; range 8000, tank 4500, split 1500: 17 861 VA, 74.4 A.
  @Test
  void service_load_of_one_box_by_hand() {
    var lines = measured(house());
    assertThat(amount(lines, "electrical/load/lighting", Unit.ONE)).isCloseTo(960, within(0.5));
    assertThat(amount(lines, "electrical/load/standard", Unit.ONE)).isCloseTo(17_861, within(0.5));
    // 5460 + 4500 + 12 000 = 21 960: 10 000 + 40 % of 11 960 + 1500 = 16 284
    assertThat(amount(lines, "electrical/load/optional", Unit.ONE)).isCloseTo(16_284, within(0.5));
    assertThat(amount(lines, "electrical/load/amperes", Unit.ONE)).isCloseTo(74.42, within(0.01));
  }

  // NEC 210.52(A): no point farther than 6 ft along the wall, so 12 ft to an outlet.
  @ParameterizedTest(name = "{0} ft of wall: {1} outlets")
  @CsvSource({"2, 1", "12, 1", "12.1, 2", "24, 2", "48, 4", "50, 5"})
  void outlets_along_walls(String feet, double expected) {
    var outlets =
        ElectricalPoints.alongWalls(
            Figure.constant(feet, Unit.FT), JOB.fact("socket.wall-spacing"));
    assertThat(outlets.asDouble(Unit.ONE)).isEqualTo(expected);
  }

  // NEC 210.52(C)(1): no point of a counter farther than 24 in; 3.0 m / 1.2192 m = 2.46, so 3.
  // NEC 210.52(H): a hall of 10 ft (3.048 m) or more.
  @Test
  void counter_hall_bath_and_outside_have_their_own_rules() {
    var lines = measured(house().with(FinishesQuestions.KITCHEN_RUN, "3"));
    assertThat(amount(lines, "electrical/kitchen/counter-sockets", Unit.ONE)).isEqualTo(3);
    assertThat(amount(lines, "room-sockets/Bath/count", Unit.ONE)).isEqualTo(1);
    assertThat(amount(lines, "electrical/outside/sockets", Unit.ONE)).isEqualTo(3);
    var noDeck = measured(house().with(DeckAndRoofQuestions.DECK, false));
    assertThat(amount(noDeck, "electrical/outside/sockets", Unit.ONE)).isEqualTo(2);
    var hall = TestScopes.metric().room("Hall", "A", RoomUse.HALL, "3.149"); // clear 3.048
    assertThat(amount(measured(hall), "room-sockets/Hall/count", Unit.ONE)).isEqualTo(1);
    var shorter = TestScopes.metric().room("Hall", "A", RoomUse.HALL, "3.148");
    assertThat(amount(measured(shorter), "room-sockets/Hall/count", Unit.ONE)).isZero();
  }

  // IRC R314: each sleeping room, outside them, each storey; R315 only where fuel is burned.
  @Test
  void alarms_follow_sleeping_rooms_and_fuel() {
    var lines = measured(house());
    assertThat(amount(lines, "electrical/house/smoke-alarms", Unit.ONE)).isEqualTo(2);
    assertThat(has(lines, "electrical/house/monoxide-alarms")).isFalse();
    var gas = measured(house().with(ServicesQuestions.COOKING, Cooking.GAS));
    assertThat(amount(gas, "electrical/house/monoxide-alarms", Unit.ONE)).isEqualTo(1);
  }

  // By hand: to the middle of the bedroom 6.2 + 2.4 + 3.432 / 2 = 10.316 m, and 4 m up and down.
  @Test
  void cable_runs_from_the_door_end_to_the_middle_of_the_room() {
    var lines = measured(house());
    assertThat(amount(lines, "room-cable/Bed/home-run", Unit.M)).isCloseTo(14.316, within(1e-9));
    assertThat(amount(lines, "room-cable/Living/home-run", Unit.M)).isCloseTo(7.1, within(1e-9));
  }

  // By hand, from the other end of 12.032 m: to the bedroom 1.716, to the bathroom 4.632.
  @Test
  void runs_start_at_the_end_that_is_chosen() {
    var lines = measured(house().with(ServicesQuestions.SERVICE_END, ServiceEnd.BLIND_END));
    assertThat(amount(lines, "room-cable/Bed/home-run", Unit.M)).isCloseTo(5.716, within(1e-9));
    // the farthest wet room is now the kitchen: 12.032 - 3.1
    assertThat(amount(lines, "plumbing/house/reach", Unit.M)).isCloseTo(8.932, within(1e-9));
  }

  // By hand: 1 m to the middle of the room and 4 m up and down, and on the way 2.438 m across the
  // box beside it, 12.192 m along the box before it, 2.896 m up the box below it.
  @ParameterizedTest
  @CsvSource({"SIDE_BY_SIDE, 7.438", "END_TO_END, 17.192", "STACKED, 7.896"})
  void runs_to_a_further_box_go_through_the_one_it_is_joined_to(Joint joint, double expected) {
    var two =
        TestScopes.metric()
            .box("A")
            .box("B", BoxQuestions.JOINT, joint, BoxQuestions.JOINED_TO, "A")
            .room("Den", "B", RoomUse.LIVING, "2");
    assertThat(amount(measured(two), "room-cable/Den/home-run", Unit.M))
        .isCloseTo(expected, within(1e-9));
  }

  // By hand: hot to basin, shower and sink, cold to these and to closet and washer: in the bathroom
  // 2 + 3 + 1 ways of 2.311 / 4 + 1 m, in the kitchen 1 + 1 ways of 6.105 / 4 + 1 m.
  @Test
  void supply_branches_go_to_the_fixtures_of_each_room() {
    assertThat(amount(measured(house()), "plumbing/supply/branches", Unit.M))
        .isCloseTo(6 * (2.311 / 4 + 1) + 2 * (6.105 / 4 + 1), within(1e-9));
  }

  @Test
  void solar_comes_with_solar_only_and_cable_with_the_grid_only() {
    var grid = measured(house());
    assertThat(has(grid, "electrical/solar")).isFalse();
    assertThat(has(grid, "trench/power")).isTrue();
    var sun = measured(house().with(ServicesQuestions.POWER, PowerSupply.SOLAR));
    assertThat(has(sun, "trench/power")).isFalse();
    assertThat(has(sun, "connection/house/power")).isFalse();
    // by hand: base 3 + one sleeping room 1 + cooking 1.5 + hot water 5 + split 3 = 13.5 kWh a day
    assertThat(amount(sun, "electrical/solar/daily-use", Unit.ONE)).isEqualTo(13.5);
    assertThat(amount(sun, "electrical/solar/panels", Unit.ONE)).isEqualTo(12); // 13.5 / 1.2
    assertThat(amount(sun, "electrical/solar/battery", Unit.ONE)).isEqualTo(5); // 20.25 / 5
    var both = measured(house().with(ServicesQuestions.POWER, PowerSupply.BOTH));
    assertThat(amount(both, "electrical/solar/battery", Unit.ONE)).isEqualTo(2); // 6.75 / 5
    assertThat(has(both, "trench/power")).isTrue();
  }

  @Test
  void every_box_is_bonded() {
    assertThat(amount(measured(house()), "electrical/bonding/bonds", Unit.ONE)).isEqualTo(2);
    var two = measured(TestScopes.metric().box("A").box("B"));
    assertThat(amount(two, "electrical/bonding/bonds", Unit.ONE)).isEqualTo(4);
  }

  // ---- plumbing ---------------------------------------------------------------------------

  // UPC table 702.1, private use: each fixture alone.
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"closet, 3", "basin, 1", "shower, 2", "bath, 2", "sink, 2", "washer, 3"})
  void fixture_units_are_those_of_the_table(String fixture, double units) {
    assertThat(JOB.fact("fixture-units." + fixture).asDouble(Unit.ONE)).isEqualTo(units);
  }

  // UPC table 702.1: shower 2 + basin 1 + closet 3 + sink 2 + washer 3 = 11; 3 in carries 35 level
  // (table 703.2).
  @Test
  void one_bathroom_and_kitchen_make_eleven_units_on_three_inches() {
    var lines = measured(house());
    assertThat(amount(lines, "plumbing/house/fixture-units", Unit.ONE)).isEqualTo(11);
    assertThat(amount(lines, "plumbing/house/fixtures", Unit.ONE)).isEqualTo(5);
    // by hand: to the middle of the bathroom 6.2 + 1.2 = 7.4; to the closet a quarter of the clear
    // length 2.4 - 2 x 0.0445 = 2.311, 0.578, and 0.6 down: 8.578
    assertThat(amount(lines, "plumbing/waste/drain-80", Unit.M)).isCloseTo(8.57775, within(1e-9));
    assertThat(amount(lines, "plumbing/waste/drain-100", Unit.M)).isZero();
  }

  // Six bathrooms: 6 x (3 + 1 + 2) = 36 units, one more than 3 in carries. Five make 30.
  @Test
  void more_than_35_units_take_four_inches() {
    assertThat(amount(bathrooms(6), "plumbing/house/fixture-units", Unit.ONE)).isEqualTo(36);
    assertThat(amount(bathrooms(6), "plumbing/waste/drain-80", Unit.M)).isZero();
    assertThat(amount(bathrooms(6), "plumbing/waste/drain-100", Unit.M)).isPositive();
    assertThat(amount(bathrooms(5), "plumbing/waste/drain-100", Unit.M)).isZero();
  }

  private static List<Line> bathrooms(int count) {
    var scope = TestScopes.metric().with(ServicesQuestions.LAUNDRY, false);
    for (int i = 1; i <= count; i++) scope.room("Bath " + i, "A", RoomUse.BATHROOM, "2");
    return measured(scope);
  }

  @Test
  void a_bath_stands_in_for_the_shower() {
    var lines = measured(house().with(FinishesQuestions.WASHING, Washing.BATH));
    assertThat(amount(lines, "plumbing/house/fixture-units", Unit.ONE)).isEqualTo(11);
    assertThat(has(lines, "wet-rooms/fittings/shower")).isFalse();
    assertThat(amount(lines, "wet-rooms/fittings/bath", Unit.ONE)).isEqualTo(1);
  }

  @Test
  void a_box_without_wet_rooms_has_no_plumbing() {
    var lines = measured(TestScopes.metric().room("Den", "A", RoomUse.LIVING, "12.032"));
    assertThat(has(lines, "plumbing/")).isFalse();
    assertThat(has(lines, "wet-rooms/")).isFalse();
    assertThat(has(lines, "kitchen/")).isFalse();
  }

  @Test
  void gas_comes_with_what_burns_it() {
    assertThat(has(measured(house()), "plumbing/gas")).isFalse();
    var gas = measured(house().with(ServicesQuestions.HOT_WATER, HotWater.GAS_INSTANT));
    assertThat(has(gas, "plumbing/gas")).isTrue();
  }

  // By hand: the box's rooms are 6.2, 2.4 and 3.432 m long from the door end. The kitchen is in the
  // living room: 3.1 m to its middle, 6.105 / 4 along it and 1 up. The heater hangs in the bath:
  // 6.2 + 1.2 = 7.4 m, 2.311 / 4 and 1.
  @Test
  void gas_pipe_runs_to_the_farthest_appliance_and_up_to_each() {
    var cooker = measured(house().with(ServicesQuestions.COOKING, Cooking.GAS));
    assertThat(amount(cooker, "plumbing/gas/pipe", Unit.M))
        .isCloseTo(3.1 + 6.105 / 4 + 1, within(0.001));
    var both =
        measured(
            house()
                .with(ServicesQuestions.COOKING, Cooking.GAS)
                .with(ServicesQuestions.HOT_WATER, HotWater.GAS_INSTANT));
    assertThat(amount(both, "plumbing/gas/pipe", Unit.M))
        .isCloseTo(7.4 + 6.105 / 4 + 1 + 2.311 / 4 + 1, within(0.001));
  }

  // By hand: the outdoor unit at the living room, 3 m; the bedroom's middle is 10.316 - 3.1 m on.
  // Further units than rooms go the mean way.
  @Test
  void refrigerant_lines_go_to_the_living_room_first() {
    double living = 3;
    double bed = 10.316 - 3.1 + 3;
    double[] lengths = {living, living + bed, living + bed + (living + bed) / 2};
    for (int heads = 1; heads <= 3; heads++) {
      var lines = measured(house().with(ServicesQuestions.HEADS, "" + heads));
      assertThat(amount(lines, "climate/split/lines", Unit.M))
          .as(heads + " indoor units")
          .isCloseTo(lengths[heads - 1], within(1e-9));
    }
  }

  // IRC M1505.4.3, equation 15-1: 0.01 x 320 + 7.5 x (1 + 1) = 18.2 cfm for 320 sq ft and one
  // bedroom, so that the least of table M1505.4.3(1), 30 cfm, holds. Four bedrooms in one box:
  // 37.5 cfm and the floor.
  @Test
  void outdoor_air_by_floor_and_bedrooms() {
    assertThat(amount(measured(house()), "climate/ventilation/rate", Unit.ONE)).isEqualTo(30);
    var many = TestScopes.metric();
    for (int i = 1; i <= 4; i++) many.room("Bed " + i, "A", RoomUse.BEDROOM, "3.008");
    var lines = measured(many);
    double floor = amount(lines, "inside/floor-area", Unit.SQ_FT);
    assertThat(amount(lines, "climate/ventilation/rate", Unit.ONE))
        .isCloseTo(0.01 * floor + 37.5, within(1e-9));
    assertThat(amount(lines, "climate/ventilation/capacity", Unit.ONE)).isZero();
  }

  // ---- trenches ---------------------------------------------------------------------------

  // By hand: water 25 m, 0.4 wide, frost 600 + 152.4 = 0.7524 m deep (more than 0.75): 7.524 m3.
  // Power 24 in: 25 x 0.4 x 0.6096 = 6.096. Waste 25 m at 1/8 in a ft: 0.75 + 25 x 0.010417 / 2.
  @Test
  void trenches_by_distance_depth_and_width() {
    var lines = measured(house());
    assertThat(amount(lines, "trench/water/dig", Unit.M3)).isCloseTo(7.524, within(1e-9));
    assertThat(amount(lines, "trench/power/dig", Unit.M3)).isCloseTo(6.096, within(1e-9));
    assertThat(amount(lines, "trench/waste/dig", Unit.M3)).isCloseTo(8.802, within(0.001));
    assertThat(amount(lines, "trench/all/bedding", Unit.M3)).isCloseTo(4.5, within(1e-9));
  }

  @Test
  void water_pipe_follows_the_frost_down() {
    var deep = measured(house().with(SiteQuestions.FROST_DEPTH, "1500"));
    assertThat(amount(deep, "trench/water/dig", Unit.M3)).isCloseTo(16.524, within(1e-9));
    var mild = measured(house().with(SiteQuestions.FROST_DEPTH, "0"));
    assertThat(amount(mild, "trench/water/dig", Unit.M3)).isCloseTo(7.5, within(1e-9));
  }

  @Test
  void digging_by_hand_hires_no_machine() {
    var hand = measured(house().with(SiteQuestions.DIGGING, Digging.HAND));
    assertThat(InsideTest.bought(hand, "trench/water/dig")).isEmpty();
    assertThat(InsideTest.bought(measured(house()), "trench/water/dig"))
        .containsExactly("trench-digger");
  }

  @Test
  void tanks_wells_and_fees_follow_the_choices() {
    var mains = measured(house());
    assertThat(has(mains, "waste-water/")).isFalse();
    assertThat(has(mains, "water-supply/")).isFalse();
    assertThat(InsideTest.bought(mains, "connection/house/waste")).containsExactly("fee-sewer");
    var own =
        measured(
            house()
                .with(ServicesQuestions.WASTE, WasteWater.SEPTIC)
                .with(ServicesQuestions.WATER, WaterSupply.WELL));
    assertThat(amount(own, "waste-water/house/field", Unit.M2)).isEqualTo(30);
    assertThat(amount(own, "water-supply/house/well", Unit.M)).isEqualTo(45);
    assertThat(InsideTest.bought(own, "connection/house/waste")).isEmpty();
    assertThat(InsideTest.bought(own, "connection/house/water")).isEmpty();
  }

  // ---- heating and ventilation --------------------------------------------------------------

  @Test
  void heating_follows_the_choice() {
    var split = measured(house().with(ServicesQuestions.HEADS, "4"));
    assertThat(amount(split, "climate/split/indoor-units", Unit.ONE)).isEqualTo(4);
    assertThat(amount(split, "climate/split/outdoor-units", Unit.ONE)).isEqualTo(2);
    assertThat(has(split, "climate/panel")).isFalse();
    var mixed = measured(house().with(ServicesQuestions.HEATING, HeatingCooling.SPLIT_AND_PANEL));
    assertThat(amount(mixed, "climate/panel/heaters", Unit.ONE)).isEqualTo(2); // bedroom, bathroom
    var stove = measured(house().with(ServicesQuestions.HEATING, HeatingCooling.STOVE));
    assertThat(has(stove, "climate/split")).isFalse();
    // height of the box 2.896 m + 3 ft above the roof (NFPA 211)
    assertThat(amount(stove, "climate/stove/flue", Unit.M)).isCloseTo(3.8104, within(1e-9));
  }

  @Test
  void ventilation_follows_the_choice() {
    var fans = measured(house());
    assertThat(amount(fans, "climate/ventilation/fans", Unit.ONE)).isEqualTo(1);
    assertThat(has(fans, "climate/ventilation/recovery-unit")).isFalse();
    var unit = measured(house().with(ServicesQuestions.VENTILATION, VentilationKind.RECOVERY));
    assertThat(has(unit, "climate/ventilation/fans")).isFalse();
    // by hand: (3.1 + 2) + (7.4 + 2) + (10.316 + 2)
    assertThat(amount(unit, "climate/ventilation/ducts", Unit.M)).isCloseTo(26.816, within(1e-9));
  }
}

package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.has;
import static cornerpost.takeoff.TestScopes.si;
import static cornerpost.takeoff.Variants.form;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxCondition;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.BoxSize;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Foundation;
import cornerpost.scope.Joint;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.SoilClass;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GroundMeasuresTest {
  private static final List<TakeoffRule> RULES = GroundAndShellRules.ALL;

  // IRC table R401.4.1, psf and the kPa printed beside it.
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "BEDROCK, 12000, 575",
    "ROCK, 4000, 192",
    "GRAVEL, 3000, 144",
    "SAND, 2000, 96",
    "CLAY, 1500, 72",
  })
  void presumed_bearing_is_that_of_the_code(SoilClass soil, double psf, double kPa) {
    var bearing = TestScopes.FACTS.figure(soil.factId() + ".bearing");
    assertThat(bearing.asDouble(Unit.PSF)).isCloseTo(psf, within(1e-9));
    assertThat(bearing.asDouble(Unit.KPA)).isCloseTo(kPa, within(0.7));
  }

  // By hand, one 40 ft high cube: box 3 940 kg = 38.7 kN; fit-out 0.75 kPa x 29.7 m2 = 22.3 kN;
  // floor load 1.92 kPa (IRC table R301.5) x 28.3 m2 = 54.3 kN; in all 115.3 kN, 28.8 kN at each of
  // four corners; on 1 500 psf each pad needs 0.401 m2. The code's 1.92 kPa is 40 psf rounded, and
  // g
  // is 9.80665 here: 0.15 % less.
  @Test
  void four_corner_pads_carry_a_furnished_box() {
    var lines = bare().with(SiteQuestions.SUPPORTS_A_SIDE, "2").measured(RULES);
    assertThat(kN(lines, "load/A")).isCloseTo(115.3, within(0.2));
    assertThat(kN(lines, "supports/A/corner/load")).isCloseTo(28.8, within(0.05));
    double side = amount(lines, "footing/pads/A/corner/side", Unit.M);
    assertThat(side * side).isCloseTo(0.401, within(0.001));
    assertThat(amount(lines, "supports/count", Unit.ONE)).isEqualTo(4);
  }

  /** An end support carries half a bay: statics, by hand with n supports a side. */
  @ParameterizedTest(name = "{0} supports a side")
  @CsvSource({"2, 4", "3, 6", "5, 10"})
  void the_supports_carry_the_whole_box(int aSide, double count) {
    var lines = bare().with(SiteQuestions.SUPPORTS_A_SIDE, "" + aSide).measured(RULES);
    assertThat(amount(lines, "supports/count", Unit.ONE)).isEqualTo(count);
    double carried = 0;
    for (var g : List.of("corner", "between")) {
      carried +=
          amount(lines, "supports/A/" + g + "/count", Unit.ONE)
              * amount(lines, "supports/A/" + g + "/load", Unit.KG);
    }
    assertThat(carried).isCloseTo(amount(lines, "load/A", Unit.KG), within(1e-6));
  }

  @ParameterizedTest
  @EnumSource(Joint.class)
  void joined_boxes_share_supports_and_these_carry_both(Joint joint) {
    var lines = Variants.joined(UnitSystem.METRIC, joint).measured(RULES);
    // three a side: alone 12; side by side one row shared 9; in line two corners shared 10; stacked
    // 6
    var expected =
        switch (joint) {
          case NONE -> 12;
          case SIDE_BY_SIDE -> 9;
          case END_TO_END -> 10;
          case STACKED -> 6;
        };
    assertThat(amount(lines, "supports/count", Unit.ONE)).isEqualTo(expected);
    assertThat(carried(lines))
        .isCloseTo(
            amount(lines, "load/A", Unit.KG) + amount(lines, "load/B", Unit.KG), within(1e-6));
  }

  // By hand, a 20 ft box (6,058 mm) beside a 40 ft one (12,192 mm), both rows from the same end.
  // Three a side: 0, 6,096, 12,192 and 0, 3,029, 6,058: two places the same (38 mm apart), so
  // 6 + 6 - 2. Two a side: only the first, 4 + 4 - 1. Four a side: 0, 4,064, 8,128, 12,192 and 0,
  // 2,019, 4,039, 6,058: 0 and 4,064, so 8 + 8 - 2. Five: 0, 3,048, 6,096 of 0, 1,515, 3,029,
  // 4,544,
  // 6,058, so 10 + 10 - 3. A 40 ft beside a 45 ft one meets it at the first only.
  @ParameterizedTest(name = "{0} beside {1}, {2} a side: {3}")
  @CsvSource({
    "TWENTY_HIGH, FORTY_HIGH, 3, 10",
    "FORTY_HIGH, TWENTY_HIGH, 3, 10",
    "TWENTY_HIGH, FORTY_HIGH, 2, 7",
    "TWENTY_HIGH, FORTY_HIGH, 4, 14",
    "TWENTY_HIGH, FORTY_HIGH, 5, 17",
    "FORTY_HIGH, FORTY_FIVE_HIGH, 3, 11",
    "FORTY_HIGH, FORTY_HIGH, 3, 9",
  })
  void boxes_of_different_length_share_the_supports_that_meet(
      BoxSize one, BoxSize other, String aSide, double count) {
    var lines =
        Variants.sideBySide(UnitSystem.METRIC, one, other)
            .with(SiteQuestions.SUPPORTS_A_SIDE, aSide)
            .measured(RULES);
    assertThat(amount(lines, "supports/count", Unit.ONE)).isEqualTo(count);
    assertThat(carried(lines))
        .isCloseTo(
            amount(lines, "load/A", Unit.KG) + amount(lines, "load/B", Unit.KG), within(1e-6));
  }

  // Statics: a 20 ft box on a 40 ft one stands with two corners over the middle of it, where there
  // is no corner post; a quarter of it comes down there beside the half of the lower box's side.
  @Test
  void a_shorter_box_on_top_comes_down_between_the_corners_too() {
    var lines =
        form(UnitSystem.METRIC)
            .box("A", BoxQuestions.SIZE, BoxSize.FORTY_HIGH)
            .box(
                "B",
                BoxQuestions.SIZE,
                BoxSize.TWENTY_HIGH,
                BoxQuestions.JOINED_TO,
                "A",
                BoxQuestions.JOINT,
                Joint.STACKED,
                BoxQuestions.JOINT_LENGTH,
                si("6.058"))
            .with(SiteQuestions.SUPPORTS_A_SIDE, "3")
            .measured(RULES);
    assertThat(amount(lines, "supports/A/between/load", Unit.KG))
        .isCloseTo(
            amount(lines, "load/A", Unit.KG) / 4 + amount(lines, "load/B", Unit.KG) / 4,
            within(1e-6));
  }

  private static double carried(List<Line> lines) {
    return lines.stream()
        .filter(l -> l.id().startsWith("supports/") && l.id().endsWith("/load"))
        .mapToDouble(
            l ->
                l.quantity().asDouble(Unit.KG)
                    * amount(lines, l.id().replace("/load", "/count"), Unit.ONE))
        .sum();
  }

  // By hand: 6 pads of 450 x 450 x 600 mm = 0.729 m3 = 0.953 cu yd = 25.7 cu ft; with 10 % waste
  // 0.80 m3; in 80 lb bags of 0.60 cu ft, 43 bags (bag yields from memory).
  @Test
  void least_pads_on_rock() {
    var lines = onRock().with(SiteQuestions.PAD_DEPTH, "600").measured(RULES);
    double m3 = amount(lines, "footing/pads/concrete", Unit.M3);
    assertThat(m3).isCloseTo(0.729, within(1e-9));
    assertThat(amount(lines, "footing/pads/concrete", Unit.CU_YD)).isCloseTo(0.953, within(0.001));
    double waste = TestScopes.FACTS.figure("waste.concrete").asDouble(Unit.ONE);
    assertThat(m3 * (1 + waste)).isCloseTo(0.80, within(0.005));
    assertThat(Math.ceil(amount(lines, "footing/pads/concrete", Unit.CU_FT) / 0.60)).isEqualTo(43);
  }

  // Footings 305 mm below ground and below frost: IRC R403.1.4.
  @ParameterizedTest(name = "frost {0} mm: pit {1} mm deep")
  @CsvSource({"0, 305", "305, 305", "306, 306", "1200, 1200"})
  void pits_go_below_frost(String frost, double depth) {
    var lines = onRock().with(SiteQuestions.FROST_DEPTH, frost).measured(RULES);
    double bed = 100; // stone below the pads
    assertThat(amount(lines, "foundation/excavation", Unit.M3))
        .isCloseTo(6 * 0.45 * 0.45 * (depth + bed) / 1000, within(1e-9));
  }

  // EN 10080: 12 mm bar 0.888 kg/m, 8 mm 0.395 kg/m; d^2/162. By hand, pad of 450 mm with 75 mm
  // cover: bars of 300 mm, 3 each way, 6 x 0.3 x 0.888 = 1.598 kg; six pads 9.59 kg.
  @Test
  void bars_in_pads_and_piers() {
    for (var d : List.of(8, 12)) {
      assertThat(TestScopes.FACTS.figure("rebar." + d + ".mass").asDouble(Unit.get("kg/m")))
          .isCloseTo(d * d / 162.0, within(0.002));
    }
    var lines = onRock().measured(RULES);
    assertThat(amount(lines, "footing/pads/reinforcement", Unit.KG)).isCloseTo(9.59, within(0.005));
    // piers of 400 mm, by hand: 4 x (h + 0.4) x 0.888 + (ceil(h / 0.2) + 1) x 4 x 0.32 x 0.395
    double h = amount(lines, "footing/piers/height", Unit.M);
    double each = 4 * (h + 0.4) * 0.888 + (Math.ceil(h / 0.2) + 1) * 4 * 0.32 * 0.395;
    assertThat(amount(lines, "footing/piers/reinforcement", Unit.KG))
        .isCloseTo(6 * each, within(0.001));
    assertThat(amount(lines, "footing/piers/formwork", Unit.M2))
        .isCloseTo(6 * 4 * 0.4 * h, within(1e-9));
  }

  // By hand: floor 600 above ground, less 12.5 castings, 122 cross members, 28 plywood = 437.5; the
  // ground falls 3 % of 12.192 m, half of it 182.9; pad top at 600 - 250 = 350 below: 970.4 mm.
  @Test
  void piers_reach_from_the_pad_to_the_castings() {
    assertThat(amount(onRock().measured(RULES), "footing/piers/height", Unit.MM))
        .isCloseTo(970.38, within(0.01));
  }

  // By hand: load / (2 x 12.192 m) / bearing, on clay; 115.3 kN / 24.384 / 71.82 = 66 mm, so the
  // least width of IRC table R403.1(1) holds: 24.384 x 0.305 x 0.25 = 1.859 m3.
  @Test
  void strips_under_both_long_sides() {
    var lines = bare().with(SiteQuestions.FOUNDATION, Foundation.STRIPS).measured(RULES);
    assertThat(amount(lines, "footing/strips/length", Unit.M)).isCloseTo(24.384, within(1e-9));
    assertThat(amount(lines, "footing/strips/concrete", Unit.M3)).isCloseTo(1.859, within(0.001));
    assertThat(has(lines, "footing/pads/")).isFalse();
    var wide =
        bare()
            .with(SiteQuestions.FOUNDATION, Foundation.STRIPS)
            .with(SiteQuestions.SNOW, "15")
            .measured(RULES);
    // snow 15 x 0.7 x 29.72 m2 = 312.1 kN more: 427.4 / 24.384 / 71.82 = 244 mm: still the least
    assertThat(amount(wide, "footing/strips/area", Unit.M2))
        .isCloseTo(24.384 * 0.305, within(1e-9));
  }

  @Test
  void boxes_side_by_side_share_one_strip() {
    var lines =
        Variants.joined(UnitSystem.METRIC, Joint.SIDE_BY_SIDE)
            .with(SiteQuestions.FOUNDATION, Foundation.STRIPS)
            .measured(RULES);
    assertThat(amount(lines, "footing/strips/length", Unit.M)).isCloseTo(3 * 12.192, within(1e-9));
  }

  // By hand: (12.192 + 0.2) x (2.438 + 0.2) = 32.69 m2 x 0.1 m, and an edge of 29.26 m x 0.3 x
  // (0.6 + 0.15 - 0.1) m.
  @Test
  void a_slab_has_a_thickened_edge() {
    var lines = bare().with(SiteQuestions.FOUNDATION, Foundation.SLAB).measured(RULES);
    assertThat(amount(lines, "footing/slab/area", Unit.M2)).isCloseTo(32.690, within(0.001));
    assertThat(amount(lines, "footing/slab/concrete", Unit.M3))
        .isCloseTo(3.269 + 29.26 * 0.3 * 0.65, within(0.001));
    // 2 ft of edge insulation: IECC/IRC table N1102.1.3
    assertThat(amount(lines, "footing/slab/edge-insulation", Unit.SQ_FT))
        .isCloseTo(29.26 / 0.3048 * 2, within(0.2));
    assertThat(amount(lines, "footing/mesh", Unit.M2)).isCloseTo(32.690, within(0.001));
  }

  @Test
  void a_raft_has_two_layers_of_mesh_and_no_edge() {
    var lines = bare().with(SiteQuestions.FOUNDATION, Foundation.RAFT).measured(RULES);
    assertThat(amount(lines, "footing/slab/concrete", Unit.M3))
        .isCloseTo(32.690 * 0.25, within(0.001));
    assertThat(amount(lines, "footing/mesh", Unit.M2)).isCloseTo(2 * 32.690, within(0.002));
    assertThat(has(lines, "footing/slab/reinforcement")).isFalse();
  }

  // By hand, 3 supports a side, 115.3 kN = 11.76 t: 1.47 t at corners, 2.94 t between: one pile
  // each where a screw pile carries 5 t (common practice). 0.6 + 1.0 m below frost is less than the
  // least 1.8 m.
  @Test
  void piles_by_load_and_frost() {
    var lines = bare().with(SiteQuestions.FOUNDATION, Foundation.SCREW_PILES).measured(RULES);
    assertThat(amount(lines, "footing/piles/count", Unit.ONE)).isEqualTo(6);
    assertThat(amount(lines, "footing/piles/length", Unit.M))
        .isCloseTo(6 * (1.8 + 0.4375 + 0.03 * 12.192 / 2), within(1e-9));
    var deep =
        bare()
            .with(SiteQuestions.FOUNDATION, Foundation.DRIVEN_PILES)
            .with(SiteQuestions.FROST_DEPTH, "2000")
            .with(SiteQuestions.SNOW, "15")
            .measured(RULES);
    // 427.4 kN = 43.6 t: 5.45 t at corners, 10.9 t between on 8 t: one and two
    assertThat(amount(deep, "footing/piles/count", Unit.ONE)).isEqualTo(4 + 2 * 2);
    assertThat(amount(deep, "footing/piles/length", Unit.M))
        .isCloseTo(8 * (3.0 + 0.4375 + 0.03 * 12.192 / 2), within(1e-9));
  }

  // By hand: 28.8 kN between supports... / 71.82 kPa / 0.36 m2: corners 14.4 kN 0.56 -> 1, between
  // 28.8 kN 1.11 -> 2 pads.
  @Test
  void precast_pads_by_load() {
    var lines = bare().with(SiteQuestions.FOUNDATION, Foundation.PRECAST_PADS).measured(RULES);
    assertThat(amount(lines, "footing/precast/pads", Unit.ONE)).isEqualTo(4 * 1 + 2 * 2);
  }

  // By hand: 437.5 + 182.9 = 620.4 mm in layers of 200 mm: four; 2 x 12.192 m each.
  @Test
  void skids_in_layers() {
    var lines = bare().with(SiteQuestions.FOUNDATION, Foundation.SKIDS).measured(RULES);
    assertThat(amount(lines, "footing/skids/length", Unit.M)).isCloseTo(4 * 24.384, within(1e-9));
    assertThat(has(lines, "supports/plates")).isFalse();
  }

  @ParameterizedTest
  @EnumSource(Foundation.class)
  void what_is_dug_is_filled_back_or_carried_away(Foundation kind) {
    var lines =
        Variants.house(UnitSystem.METRIC).with(SiteQuestions.FOUNDATION, kind).measured(RULES);
    if (!has(lines, "foundation/excavation")) {
      assertThat(kind).isIn(Foundation.SCREW_PILES, Foundation.DRIVEN_PILES);
      return;
    }
    double loosened = 1.25; // bulking of a quarter: common practice, no source
    assertThat(
            amount(lines, "foundation/backfill", Unit.M3)
                + amount(lines, "foundation/spoil", Unit.M3) / loosened)
        .isCloseTo(amount(lines, "foundation/excavation", Unit.M3), within(1e-9));
  }

  // Piles are turned or driven in; what a digger is hired for there is the swale or the topsoil:
  // common practice, no source.
  @ParameterizedTest
  @EnumSource(Foundation.class)
  void nobody_digs_footings_for_a_house_on_piles(Foundation kind) {
    var lines =
        Variants.house(UnitSystem.METRIC).with(SiteQuestions.FOUNDATION, kind).measured(RULES);
    boolean dug = has(lines, "foundation/excavation");
    assertThat(
            lines.stream()
                .flatMap(l -> l.resources().stream())
                .anyMatch(r -> r.task() == BuildTask.EXCAVATE))
        .isEqualTo(dug);
  }

  // Track 10 to 14 ft wide, 12 ft (3.7 m) typical: delivery firms' guidelines.
  @Test
  void a_track_is_as_wide_as_trucks_need() {
    var lines = bare().with(SiteQuestions.ACCESS, SiteAccess.TILT_BED).measured(RULES);
    double width = amount(lines, "site/track", Unit.FT.times(Unit.FT)) / (15 / 0.3048);
    assertThat(width).isBetween(10.0, 14.0);
  }

  // Hook load 4.0 t + 0.4 t rigging, + 10 % = 4.84 t by hand; the box here weighs 3.94 t: 4.774 t.
  @Test
  void crane_by_load_and_reach() {
    var near = bare().with(SiteQuestions.CRANE_REACH, "7.2").measured(RULES);
    assertThat(amount(near, "crane/hook-load", Unit.KG)).isCloseTo(4774, within(1e-6));
    // one box: rigging 1 h + 1.25 h is less than the least hire of 4 h (common practice)
    assertThat(amount(near, "crane/small", Unit.HOUR)).isEqualTo(4);
    assertThat(amount(near, "crane/large", Unit.HOUR)).isZero();
    var far = bare().with(SiteQuestions.CRANE_REACH, "12").measured(RULES);
    assertThat(amount(far, "crane/small", Unit.HOUR)).isZero();
    assertThat(amount(far, "crane/large", Unit.HOUR)).isEqualTo(4);
  }

  @Test
  void a_tilt_bed_needs_no_crane_unless_boxes_are_stacked() {
    var flat = bare().with(SiteQuestions.ACCESS, SiteAccess.TILT_BED).measured(RULES);
    assertThat(has(flat, "crane/")).isFalse();
    var stacked =
        Variants.joined(UnitSystem.METRIC, Joint.STACKED)
            .with(SiteQuestions.ACCESS, SiteAccess.TILT_BED)
            .measured(RULES);
    assertThat(has(stacked, "crane/")).isTrue();
  }

  @Test
  void a_factory_new_box_needs_no_rust_repair_and_a_worn_one_is_blasted() {
    var fresh = condition(BoxCondition.FACTORY_NEW);
    for (var part : List.of("rust", "blasting", "rust-primer", "underseal")) {
      assertThat(amount(fresh, "box/A/" + part, fresh(part))).as(part).isZero();
    }
    var worn = condition(BoxCondition.AS_IS);
    // walls 91.0 m2 along the corrugation and roof 29.7 m2, by hand
    assertThat(amount(worn, "box/A/blasting", Unit.M2)).isCloseTo(91.0 + 29.7, within(0.1));
  }

  // By hand, 40 ft high cubes side by side: over the roof 12.192, down both ends 2 x 2.896, under
  // the floor 12.192: 30.18 m.
  @Test
  void a_seam_runs_round_a_joint() {
    var lines = Variants.joined(UnitSystem.METRIC, Joint.SIDE_BY_SIDE).measured(RULES);
    assertThat(amount(lines, "joint/B-A/seam", Unit.M)).isCloseTo(30.176, within(1e-6));
    assertThat(has(bare().measured(RULES), "joint/")).isFalse();
  }

  @Test
  void touching_length_is_not_beyond_the_shorter_box() {
    var lines =
        TestScopes.metric()
            .box("A")
            .box(
                "B",
                BoxQuestions.SIZE,
                BoxSize.TWENTY_HIGH,
                BoxQuestions.JOINED_TO,
                "A",
                BoxQuestions.JOINT,
                Joint.SIDE_BY_SIDE,
                BoxQuestions.JOINT_LENGTH,
                si("12.192"))
            .measured(RULES);
    assertThat(amount(lines, "joint/B-A/seam", Unit.M))
        .isCloseTo(2 * 6.058 + 2 * 2.896, within(1e-6));
  }

  private static Unit fresh(String part) {
    return part.equals("rust") || part.equals("blasting") ? Unit.M2 : Unit.LITRE;
  }

  private static List<Line> condition(BoxCondition condition) {
    return TestScopes.metric().box("A", BoxQuestions.CONDITION, condition).measured(RULES);
  }

  private static double kN(List<Line> lines, String id) {
    return amount(lines, id, Unit.KG) * 9.80665 / 1000;
  }

  /** No snow and nothing built on the roof. */
  private static TestScopes bare() {
    return TestScopes.metric()
        .with(SiteQuestions.SNOW, "0")
        .with(DeckAndRoofQuestions.ROOF, RoofBuild.BARE);
  }

  private static TestScopes onRock() {
    return bare().with(SiteQuestions.SOIL, SoilClass.BEDROCK);
  }
}

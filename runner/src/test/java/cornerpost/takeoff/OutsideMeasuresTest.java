package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.has;
import static cornerpost.takeoff.TestScopes.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Cladding;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.Joint;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.SiteQuestions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutsideMeasuresTest {
  private static final List<TakeoffRule> RULES = GroundAndShellRules.ALL;

  // By hand: 3.0 m / (145 + 5 mm) = 20 boards x 4.0 m = 80 m, +10 % = 88 m; joists ceil(4.0 / 0.4)
  // + 1 = 11; screws 20 x 11 x 2 = 440.
  @Test
  void boards_joists_and_screws_of_a_deck() {
    var lines = deck("4.0", "3.0").measured(RULES);
    assertThat(amount(lines, "deck/board-rows", Unit.ONE)).isEqualTo(20);
    assertThat(amount(lines, "deck/boards", Unit.M)).isCloseTo(80, within(1e-9));
    double waste = TestScopes.FACTS.figure("waste.deck-board").asDouble(Unit.ONE);
    assertThat(amount(lines, "deck/boards", Unit.M) * (1 + waste)).isCloseTo(88, within(1e-9));
    assertThat(amount(lines, "deck/joist-count", Unit.ONE)).isEqualTo(11);
    assertThat(amount(lines, "deck/screws", Unit.ONE)).isEqualTo(440);
  }

  // 5/4x6 boards: 12 / 5.625 = 2.133 ft a square foot; 130 sq ft take 277 ft, +10 % 305 ft, by
  // hand;
  // whole rows across the depth of 13 ft make it 28 rows x 10 ft = 280 ft.
  @Test
  void american_boards_by_the_square_foot() {
    var lines =
        TestScopes.us()
            .with(DeckAndRoofQuestions.DECK_LENGTH, "10")
            .with(DeckAndRoofQuestions.DECK_DEPTH, "13")
            .measured(RULES);
    assertThat(amount(lines, "deck/boards", Unit.FT)).isBetween(277.0, 277.0 + 10);
    assertThat(amount(lines, "deck/boards", Unit.FT)).isCloseTo(280, within(1e-9));
  }

  // Round footing of 300 mm, 900 deep: 0.0636 m3; six of them 0.382 m3. By hand.
  @Test
  void round_footings_of_a_deck() {
    var lines = deck("3.6", "2.0").with(SiteQuestions.FROST_DEPTH, "900").measured(RULES);
    assertThat(amount(lines, "deck/posts", Unit.ONE)).isEqualTo(6); // 3.6 / 1.8 + 1, two beams
    assertThat(amount(lines, "deck/concrete", Unit.M3)).isCloseTo(0.382, within(0.0005));
    assertThat(amount(lines, "deck/concrete", Unit.M3) / 6).isCloseTo(0.0636, within(0.0001));
  }

  // A guard where the drop is more than 762 mm (30 in): IRC R312.1. Open sides 4 + 2 x 3 m less one
  // flight of 1 m, by hand.
  @ParameterizedTest(name = "floor {0} mm above ground: guard {1} m")
  @CsvSource({"600, 0", "761, 0", "762, 9", "1200, 9"})
  void a_guard_where_the_drop_asks_for_it(String floor, double length) {
    var lines = deck("4.0", "3.0").with(SiteQuestions.FLOOR_HEIGHT, floor).measured(RULES);
    assertThat(amount(lines, "deck/guard", Unit.M)).isCloseTo(length, within(1e-9));
  }

  // Risers not above 196 mm (7 3/4 in), IRC R311.7.5.1; handrail from four risers on, R311.7.8.
  @ParameterizedTest(name = "{0} mm: {1} risers, handrail {2}")
  @CsvSource({"196, 1, false", "197, 2, false", "588, 3, false", "600, 4, true", "980, 5, true"})
  void steps_by_height(String floor, double risers, boolean handrail) {
    var lines = TestScopes.metric().with(SiteQuestions.FLOOR_HEIGHT, floor).measured(RULES);
    assertThat(amount(lines, "steps/risers", Unit.ONE)).isEqualTo(risers);
    assertThat(amount(lines, "steps/handrail", Unit.M) > 0).isEqualTo(handrail);
  }

  // By hand: (12.192 + 0.6) x (2.438 + 0.6) / cos 5 degrees = 39.01 m2.
  @Test
  void an_over_roof_with_its_overhang() {
    var lines = TestScopes.metric().measured(RULES);
    assertThat(amount(lines, "roof/sheets", Unit.M2))
        .isCloseTo(12.792 * 3.038 / Math.cos(Math.toRadians(5)), within(0.002));
    // screws 6 to 8 a square metre: common practice, no source
    assertThat(amount(lines, "roof/screws", Unit.ONE) / 39.01).isBetween(6.0, 8.0);
    assertThat(amount(lines, "roof/flashing", Unit.M))
        .isCloseTo(2 * (12.792 + 3.038), within(1e-9));
  }

  @Test
  void insulation_above_the_roof_follows_its_thickness() {
    var none = TestScopes.metric().with(DeckAndRoofQuestions.ROOF, RoofBuild.MEMBRANE);
    assertThat(amount(none.measured(RULES), "roof/insulation", Unit.M3)).isZero();
    assertThat(amount(none.measured(RULES), "roof/insulated", Unit.M2)).isZero();
    var thick = none.with(DeckAndRoofQuestions.ROOF_INSULATION, "100").measured(RULES);
    // 29.72 m2 x 0.1 m, by hand
    assertThat(amount(thick, "roof/insulation", Unit.M3)).isCloseTo(2.972, within(0.001));
    var bare = TestScopes.metric().with(DeckAndRoofQuestions.ROOF, RoofBuild.BARE).measured(RULES);
    assertThat(has(bare, "roof/prepared")).isFalse();
  }

  // By hand: one gutter of 12.192 m, two downpipes (12 m to one), 2.896 + 0.6 m each.
  @Test
  void gutters_and_downpipes() {
    var lines = TestScopes.metric().measured(RULES);
    assertThat(amount(lines, "roof/gutter", Unit.M)).isCloseTo(12.192, within(1e-9));
    assertThat(amount(lines, "roof/downpipes", Unit.ONE)).isEqualTo(2);
    assertThat(amount(lines, "roof/downpipe", Unit.M)).isCloseTo(2 * 3.496, within(1e-9));
    var none = TestScopes.metric().with(DeckAndRoofQuestions.GUTTERS, false).measured(RULES);
    assertThat(has(none, "roof/gutter")).isFalse();
    var two = Variants.joined(UnitSystem.METRIC, Joint.SIDE_BY_SIDE).measured(RULES);
    assertThat(amount(two, "roof/gutter", Unit.M)).isCloseTo(12.192, within(1e-9));
  }

  @Test
  void what_is_clad_is_not_painted() {
    var lines =
        Variants.house(UnitSystem.METRIC)
            .with(DeckAndRoofQuestions.CLADDING, Cladding.TIMBER)
            .with(DeckAndRoofQuestions.CLAD_SHARE, "0.75")
            .measured(RULES);
    double flat = amount(lines, "shell/outside-wall-area", Unit.M2);
    double along = amount(lines, "shell/outside-wall-developed", Unit.M2);
    assertThat(amount(lines, "walls/cladding", Unit.M2)).isCloseTo(0.75 * flat, within(1e-9));
    assertThat(amount(lines, "walls/painted", Unit.M2)).isCloseTo(0.25 * along, within(1e-9));
    assertThat(has(Variants.house(UnitSystem.METRIC).measured(RULES), "walls/cladding")).isFalse();
  }

  @Test
  void boards_outside_go_by_their_thickness() {
    var scopes =
        Variants.house(UnitSystem.METRIC)
            .with(EnvelopeQuestions.SIDE, InsulationSide.BOTH)
            .with(EnvelopeQuestions.OUTSIDE, InsulationMaterial.PIR)
            .with(EnvelopeQuestions.OUTSIDE_THICKNESS, si("60"));
    var lines = scopes.measured(RULES);
    assertThat(amount(lines, "walls/outside-insulation", Unit.M3))
        .isCloseTo(amount(lines, "shell/outside-wall-area", Unit.M2) * 0.06, within(1e-9));
    var inside = scopes.with(EnvelopeQuestions.SIDE, InsulationSide.INSIDE).measured(RULES);
    assertThat(has(inside, "walls/outside-insulation")).isFalse();
  }

  @Test
  void hire_goes_by_the_time_allowed() {
    var lines =
        TestScopes.metric()
            .with(ProjectQuestions.TIME_ALLOWED, "10")
            .with(SiteQuestions.FENCE, "50")
            .measured(RULES);
    // half of it on site (common practice, no source): 5 months, 250 m for a month
    assertThat(amount(lines, "time/toilet", Unit.ONE)).isEqualTo(5);
    assertThat(amount(lines, "time/fence", Unit.M)).isEqualTo(250);
  }

  private static TestScopes deck(String length, String depth) {
    return TestScopes.metric()
        .with(DeckAndRoofQuestions.DECK_LENGTH, length)
        .with(DeckAndRoofQuestions.DECK_DEPTH, depth);
  }
}

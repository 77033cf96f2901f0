package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.has;
import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.CargoDoors;
import cornerpost.scope.Cladding;
import cornerpost.scope.ConcreteSupply;
import cornerpost.scope.ContainerFloor;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Digging;
import cornerpost.scope.Drainage;
import cornerpost.scope.Foundation;
import cornerpost.scope.Joint;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.Party;
import cornerpost.scope.PermitClass;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule in a house it applies to and in one it does not. */
class WhenRulesApplyTest {

  static Stream<Arguments> cases() {
    return Stream.of(
        with("footing/pads/", SiteQuestions.FOUNDATION, Foundation.PIERS, Foundation.SLAB),
        with("footing/piles/", SiteQuestions.FOUNDATION, Foundation.DRIVEN_PILES, Foundation.PIERS),
        with("footing/strips/", SiteQuestions.FOUNDATION, Foundation.STRIPS, Foundation.PIERS),
        with("footing/slab/", SiteQuestions.FOUNDATION, Foundation.RAFT, Foundation.STRIPS),
        with(
            "footing/precast/",
            SiteQuestions.FOUNDATION,
            Foundation.PRECAST_PADS,
            Foundation.SKIDS),
        with("footing/skids/", SiteQuestions.FOUNDATION, Foundation.SKIDS, Foundation.PRECAST_PADS),
        with("footing/trucks", SiteQuestions.FOUNDATION, Foundation.PIERS, Foundation.SCREW_PILES),
        with(
            "footing/mixer",
            SiteQuestions.CONCRETE,
            ConcreteSupply.BAGGED,
            ConcreteSupply.READY_MIX),
        with("supports/plates", SiteQuestions.FOUNDATION, Foundation.PIERS, Foundation.SKIDS),
        with(
            "supports/anchor-bolts",
            SiteQuestions.FOUNDATION,
            Foundation.PIERS,
            Foundation.SCREW_PILES),
        with("ground-cover/", SiteQuestions.FOUNDATION, Foundation.PIERS, Foundation.SLAB),
        with("drainage/pipe", SiteQuestions.DRAINAGE, Drainage.FRENCH_DRAIN, Drainage.SWALE),
        with("drainage/", SiteQuestions.DRAINAGE, Drainage.SWALE, Drainage.NONE),
        with("site/excavator", SiteQuestions.DIGGING, Digging.MACHINE, Digging.HAND),
        with("crane/", SiteQuestions.ACCESS, SiteAccess.CRANE, SiteAccess.TILT_BED),
        with("preparation/engineer", ProjectQuestions.ENGINEER, true, false),
        with(
            "preparation/permit-area",
            ProjectQuestions.PERMIT,
            PermitClass.FULL,
            PermitClass.MINOR),
        with("close-out/certificate", ProjectQuestions.PERMIT, PermitClass.MINOR, PermitClass.NONE),
        with("roof/coating", DeckAndRoofQuestions.ROOF, RoofBuild.COATING, RoofBuild.OVER_ROOF),
        with("roof/sheets", DeckAndRoofQuestions.ROOF, RoofBuild.OVER_ROOF, RoofBuild.MEMBRANE),
        with("roof/membrane", DeckAndRoofQuestions.ROOF, RoofBuild.MEMBRANE, RoofBuild.BARE),
        with("roof/substrate", DeckAndRoofQuestions.ROOF, RoofBuild.GREEN, RoofBuild.MEMBRANE),
        with("roof/insulated", DeckAndRoofQuestions.ROOF, RoofBuild.OVER_ROOF, RoofBuild.COATING),
        with("roof/gutter", DeckAndRoofQuestions.GUTTERS, true, false),
        with("scaffold/tower", DeckAndRoofQuestions.ROOF, RoofBuild.COATING, RoofBuild.BARE),
        with("walls/cladding", DeckAndRoofQuestions.CLADDING, Cladding.METAL, Cladding.PAINT),
        with("deck/", DeckAndRoofQuestions.DECK, true, false),
        box("box/A/yard", BoxQuestions.MODIFIED, ModifiedWhere.IN_YARD, ModifiedWhere.ON_SITE),
        box("box/A/floor-new", BoxQuestions.FLOOR, ContainerFloor.REPLACE, ContainerFloor.SEAL),
        box("box/A/floor-washed", BoxQuestions.FLOOR, ContainerFloor.SEAL, ContainerFloor.REPLACE),
        box("box/A/doors-off", BoxQuestions.CARGO_DOORS, CargoDoors.REMOVE, CargoDoors.KEEP),
        box("box/A/end-wall", BoxQuestions.CARGO_DOORS, CargoDoors.REMOVE, CargoDoors.WELD_SHUT),
        box("box/A/doors-welded", BoxQuestions.CARGO_DOORS, CargoDoors.WELD_SHUT, CargoDoors.KEEP));
  }

  private static Arguments with(String stem, Question q, Object yes, Object no) {
    return Arguments.of(
        stem,
        q.label() + ": " + yes,
        house().with(q, yes),
        q.label() + ": " + no,
        house().with(q, no));
  }

  private static Arguments box(String stem, Question q, Object yes, Object no) {
    return Arguments.of(
        stem,
        q.label() + ": " + yes,
        Variants.openings(Variants.form(UnitSystem.METRIC).box("A", q, yes), "A"),
        q.label() + ": " + no,
        Variants.openings(Variants.form(UnitSystem.METRIC).box("A", q, no), "A"));
  }

  private static TestScopes house() {
    return Variants.house(UnitSystem.METRIC);
  }

  @ParameterizedTest(name = "{0} where {1}, not where {3}")
  @MethodSource("cases")
  void a_rule_measures_where_it_applies_and_nowhere_else(
      String stem, String yesName, TestScopes yes, String noName, TestScopes no) {
    assertThat(has(yes.measured(GroundAndShellRules.ALL), stem)).as(yesName).isTrue();
    assertThat(has(no.measured(GroundAndShellRules.ALL), stem)).as(noName).isFalse();
  }

  @Test
  void joints_are_measured_for_joined_boxes_only() {
    for (var joint : Joint.values()) {
      var lines = Variants.joined(UnitSystem.METRIC, joint).measured(GroundAndShellRules.ALL);
      assertThat(has(lines, "joint/")).as(joint.label()).isEqualTo(joint != Joint.NONE);
      assertThat(has(lines, "scaffold/area")).as(joint.label()).isEqualTo(joint == Joint.STACKED);
    }
  }

  @Test
  void welding_plant_is_hired_only_where_the_owner_welds_on_site() {
    var hired = house().measured(GroundAndShellRules.ALL);
    assertThat(has(hired, "steelwork/plant")).isFalse();
    var own = house().doneBy(Trade.STEELWORK, Party.OWNER).measured(GroundAndShellRules.ALL);
    assertThat(has(own, "steelwork/plant")).isTrue();
  }

  @Test
  void a_loan_costs_fees_and_no_loan_costs_none() {
    var none = house().measured(GroundAndShellRules.ALL);
    assertThat(TestScopes.line(none, "preparation/loan-closing").quantity().isZero()).isTrue();
    assertThat(TestScopes.line(none, "preparation/loan-fee").quantity().isZero()).isTrue();
    var loan = house().with(LoanQuestions.AMOUNT, "50000").measured(GroundAndShellRules.ALL);
    assertThat(TestScopes.line(loan, "preparation/loan-closing").quantity().value())
        .isEqualByComparingTo("1");
    assertThat(TestScopes.line(loan, "preparation/loan-fee").quantity().value())
        .isEqualByComparingTo("50");
  }

  @Test
  void a_house_without_openings_has_none_measured() {
    var lines = TestScopes.metric().measured(GroundAndShellRules.ALL);
    assertThat(has(lines, "opening/")).isFalse();
    assertThat(has(lines, "frame/")).isFalse();
    assertThat(has(lines, "steelwork/")).isFalse();
  }
}

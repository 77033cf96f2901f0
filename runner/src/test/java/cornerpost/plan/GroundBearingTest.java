package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.check.Check;
import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Foundation;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.SoilClass;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the checks say of the ground below a house, and of the mass on the crane's hook. */
class GroundBearingTest {
  private static final RunOptions FEW_TRIALS =
      new RunOptions(
          Optional.empty(), List.of(), OptionalLong.of(1), OptionalInt.of(50), "0123456789ab");

  private static Plan plan(Scope scope) {
    var book = Houses.book(Houses.scope("studio-20hc-metric"));
    var result = Planner.plan(scope, Facts.supplied(), Optional.of(book), FEW_TRIALS);
    assertThat(result.faults()).isEmpty();
    return result.plan().orElseThrow();
  }

  private static Check check(Plan plan, String id) {
    return plan.checks().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  private static Check ground(Map<Question, Object> more) {
    return check(
        plan(cornerpost.takeoff.Houses.oneBedroom(UnitSystem.METRIC, more)), "ground-bearing");
  }

  // Snow of 60 kPa x 0.7 on 29.7 m2 alone is 1 248 kN on 14.6 m2 of bed below skids: 85 kPa on clay
  // of 1 500 psf, 71.8 kPa (IRC table R401.4.1).
  @Test
  void skids_that_ask_too_much_of_the_ground_go_to_an_engineer() {
    var over = ground(Map.of(SiteQuestions.FOUNDATION, Foundation.SKIDS, SiteQuestions.SNOW, "60"));
    assertThat(over.severity()).isEqualTo(Check.Severity.PROFESSIONAL);
    assertThat(over.message()).contains("It is passed", "bears 72 kPa", "engineer", "local code");
    assertThat(over.source()).contains("R401.4.1");
    assertThat(over.cells()).isNotEmpty();
    var rock =
        ground(
            Map.of(
                SiteQuestions.FOUNDATION,
                Foundation.SKIDS,
                SiteQuestions.SNOW,
                "60",
                SiteQuestions.SOIL,
                SoilClass.BEDROCK));
    assertThat(rock.severity()).isEqualTo(Check.Severity.NOTE);
    assertThat(rock.message()).doesNotContain("It is passed");
  }

  @ParameterizedTest
  @EnumSource(
      value = Foundation.class,
      names = {"PIERS", "STRIPS", "PRECAST_PADS", "SCREW_PILES", "DRIVEN_PILES"})
  void supports_that_are_sized_by_their_load_keep_the_bearing(Foundation kind) {
    var check = ground(Map.of(SiteQuestions.FOUNDATION, kind, SiteQuestions.SNOW, "8"));
    assertThat(check.severity()).isEqualTo(Check.Severity.NOTE);
    assertThat(check.message()).startsWith("The house weighs").contains("engineer");
  }

  @Test
  void the_lift_is_planned_for_the_load_that_the_crane_is_hired_by() {
    var plan = plan(Houses.scope("studio-20hc-metric"));
    var hook =
        plan.lines().stream()
            .filter(l -> l.id().equals("crane/hook-load"))
            .findFirst()
            .orElseThrow()
            .quantity()
            .asDouble(cornerpost.measure.Unit.KG);
    assertThat(check(plan, "caution/lifting/A").message())
        .contains(String.format(Locale.ROOT, "for at least %,d kg", Math.round(hook)));
  }
}

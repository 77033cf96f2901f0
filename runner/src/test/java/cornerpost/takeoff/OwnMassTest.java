package cornerpost.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnMassTest {
  /** By hand from the density of softwood in ISO 10456, 500 kg/m3: 0.038 x 0.089 x 500 = 1.691. */
  @ParameterizedTest(name = "{0} weighs {1} kg a metre")
  @CsvSource({
    "stud-timber-38x38, 0.722",
    "stud-timber-38x89, 1.691",
    "stud-timber-38x140-treated, 2.66"
  })
  void timber_weighs_its_section_times_its_density(String item, double kg) {
    var fact = Facts.supplied().figure("mass.of." + item);
    assertThat(fact.value().doubleValue()).isCloseTo(kg, within(1e-9));
  }

  @Test
  void what_is_built_in_adds_up_and_stays_live() {
    for (var house : Variants.all(UnitSystem.METRIC).values()) {
      var lines = Takeoff.measure(house.scope(), TestScopes.FACTS);
      for (var l : lines) {
        if (!l.id().startsWith("mass/")) continue;
        assertThat(l.quantity().value()).as(l.id()).isNotNegative();
        assertThat(l.quantity().in(Unit.KG)).as(l.id()).isNotNull();
      }
      double stages =
          sum(
              lines,
              "mass/shell",
              "mass/framing",
              "mass/services",
              "mass/insulation",
              "mass/finishes");
      double removed =
          lines.stream()
              .filter(l -> l.id().startsWith("opening/") && l.id().endsWith("/steel-removed"))
              .mapToDouble(l -> l.quantity().asDouble(Unit.KG))
              .sum();
      assertThat(sum(lines, "mass/fit-out")).isCloseTo(Math.max(0, stages - removed), within(1e-6));
    }
  }

  private static double sum(List<Line> lines, String... ids) {
    var wanted = Set.of(ids);
    return lines.stream()
        .filter(l -> wanted.contains(l.id()))
        .mapToDouble(l -> l.quantity().asDouble(Unit.KG))
        .sum();
  }
}

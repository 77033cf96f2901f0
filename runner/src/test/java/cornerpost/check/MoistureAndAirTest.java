package cornerpost.check;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import cornerpost.price.Estimator;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.Question;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.VapourControl;
import cornerpost.scope.VentilationKind;
import cornerpost.takeoff.Houses;
import cornerpost.takeoff.Takeoff;
import cornerpost.trace.Figure;
import cornerpost.work.WorkPlan;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Advice on room air at cold steel, and on outdoor air. */
class MoistureAndAirTest {
  private static final Facts FACTS = Facts.supplied();
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  private static CheckInput house(UnitSystem units, Map<Question, Object> more) {
    var scope = Houses.oneBedroom(units, more);
    var estimate = Estimator.estimate(scope, List.of(), Optional.empty(), FACTS);
    return new CheckInput(
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
        List.of());
  }

  // IRC 2021 R702.7 and the trade: fibrous insulation inside steel needs vapour control on its warm
  // side; closed-cell foam is its own; steel with all insulation outside stays warm.
  @ParameterizedTest(name = "{0}, {1}, {2}: {3}")
  @CsvSource({
    "INSIDE, MINERAL_WOOL, NONE, true",
    "INSIDE, MINERAL_WOOL, KRAFT, true",
    "INSIDE, MINERAL_WOOL, MEMBRANE, false",
    "INSIDE, SHEEP_WOOL, NONE, true",
    "INSIDE, OPEN_CELL, NONE, true",
    "INSIDE, CLOSED_CELL, NONE, false",
    "INSIDE, NONE, NONE, true",
    "OUTSIDE, MINERAL_WOOL, NONE, false",
  })
  void fibres_inside_steel_without_a_membrane_are_for_a_professional(
      InsulationSide side, InsulationMaterial material, VapourControl vapour, boolean asks) {
    var in =
        house(
            UnitSystem.METRIC,
            Map.of(
                EnvelopeQuestions.SIDE, side,
                EnvelopeQuestions.INSIDE, material,
                EnvelopeQuestions.CEILING, InsulationMaterial.CLOSED_CELL,
                EnvelopeQuestions.VAPOUR, vapour));
    var found = new SteelAndMoisture().look(in);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).severity() == Check.Severity.PROFESSIONAL).isEqualTo(asks);
  }

  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource({"MINERAL_WOOL, NONE, true", "MINERAL_WOOL, MEMBRANE, false", "NONE, NONE, false"})
  void a_ceiling_is_looked_at_whatever_is_in_the_walls(
      InsulationMaterial material, VapourControl vapour, boolean asks) {
    var in =
        house(
            UnitSystem.METRIC,
            Map.of(
                EnvelopeQuestions.INSIDE, InsulationMaterial.CLOSED_CELL,
                EnvelopeQuestions.CEILING, material,
                EnvelopeQuestions.VAPOUR, vapour));
    assertThat(new SteelAndMoisture().look(in).stream().map(Check::id))
        .as("ceiling")
        .contains("steel-and-moisture")
        .matches(ids -> ids.contains("steel-and-moisture/ceiling") == asks);
  }

  // -15 °C is 5 °F: t in °F = 1.8 t in °C + 32 (NIST SP 811, B.7)
  @ParameterizedTest(name = "{0}: {1} is told as {2}")
  @CsvSource({"METRIC, -15, −15 °C", "US, 5, 5 °F"})
  void the_cold_to_design_for_is_told_on_the_scale_of_the_workbook(
      UnitSystem units, String entered, String told) {
    var cold =
        Figure.choice(
            "Services!B20",
            "coldest design temperature",
            new BigDecimal(entered),
            ServicesQuestions.WINTER_TEMPERATURE.unit(units));
    var in = house(units, Map.of(ServicesQuestions.WINTER_TEMPERATURE, cold));
    assertThat(SteelAndMoisture.coldest(in).orElseThrow()).isEqualByComparingTo("-15");
    assertThat(new SteelAndMoisture().look(in).get(0).message())
        .contains("the cold to design for is " + told);
  }

  // -50 °C is 1.8 x -50 + 32 = -58 °F, 25 °C is 77 °F
  @ParameterizedTest(name = "{0}: in {1}, from {2} to {3}")
  @CsvSource({"METRIC, °C, -50, 25", "US, °F, -58, 77"})
  void the_cold_to_design_for_is_asked_on_the_scale_of_the_workbook(
      UnitSystem units, String unit, String least, String most) {
    var question = ServicesQuestions.WINTER_TEMPERATURE;
    assertThat(question.unit(units)).hasToString(unit);
    assertThat(question.least(units).orElseThrow()).isEqualByComparingTo(least);
    assertThat(question.most(units).orElseThrow()).isEqualByComparingTo(most);
  }

  // IRC M1505.4.3: 320 sq ft and a bedroom ask for 18.2 cfm, so the table's least of 30 cfm
  // (14.16 l/s) holds; a bathroom fan moves 50 cfm (M1505.4.4).
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "US, 'asks for 30 cfm', 'move about 50 cfm'",
    "METRIC, 'asks for 14 l/s', 'move about 24 l/s'"
  })
  void outdoor_air_is_set_against_the_fans_chosen(UnitSystem units, String asks, String moves) {
    var in = house(units, Map.of(ServicesQuestions.VENTILATION, VentilationKind.EXTRACT));
    var found = new OutdoorAir().look(in);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).severity()).isEqualTo(Check.Severity.NOTE);
    assertThat(found.get(0).message()).contains(asks).contains(moves);
  }
}

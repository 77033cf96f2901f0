package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.measure.Temperature;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.VapourControl;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether room air can condense on the steel. The steel is a vapour barrier on the cold side: where
 * the insulation is inside, it is about as cold as the weather.
 *
 * <p>Saturation pressure and dew point by ISO 13788 annex E, 0 degrees and above: p = 610.5 exp
 * (17.269 t / (237.3 + t)).
 */
final class SteelAndMoisture implements CheckRule {
  private static final double ROOM_TEMPERATURE = 20;
  private static final double ROOM_HUMIDITY = 0.5;
  private static final String SOURCE =
      "ISO 13788 annex E (dew point at 20 °C, 50 %); IRC 2021 R702.7 (vapour retarders)";

  @Override
  public List<Check> look(CheckInput in) {
    if (!in.scope().generatesTasks() || in.scope().boxes().isEmpty()) return List.of();
    var found = new ArrayList<Check>(walls(in));
    ceiling(in).ifPresent(found::add);
    return found;
  }

  /** Under the roof sheet: the same, whatever is in the walls. */
  private static Optional<Check> ceiling(CheckInput in) {
    var envelope = in.scope().envelope();
    var material = envelope.option(EnvelopeQuestions.CEILING, InsulationMaterial.class);
    var vapour = envelope.option(EnvelopeQuestions.VAPOUR, VapourControl.class);
    if (material == InsulationMaterial.NONE
        || material == InsulationMaterial.CLOSED_CELL
        || vapour == VapourControl.MEMBRANE) {
      return Optional.empty();
    }
    return Optional.of(
        new Check(
            "steel-and-moisture/ceiling",
            Topic.MOISTURE,
            PROFESSIONAL,
            "Room air can reach the cold roof steel through "
                + material.label()
                + " over the ceiling, condense there and drip: a taped membrane on the warm side,"
                + " or closed-cell foam on the steel, keeps it away"
                + coldMonths(in),
            SOURCE,
            List.of(
                envelope.cell(EnvelopeQuestions.CEILING), envelope.cell(EnvelopeQuestions.VAPOUR)),
            in.tasks("ceiling-insulation", "vapour-membrane")));
  }

  private static List<Check> walls(CheckInput in) {
    var envelope = in.scope().envelope();
    var side = envelope.option(EnvelopeQuestions.SIDE, InsulationSide.class);
    var material = envelope.option(EnvelopeQuestions.INSIDE, InsulationMaterial.class);
    var vapour = envelope.option(EnvelopeQuestions.VAPOUR, VapourControl.class);
    var cells =
        List.of(envelope.cell(EnvelopeQuestions.INSIDE), envelope.cell(EnvelopeQuestions.VAPOUR));
    var tasks = in.tasks("wall-insulation", "vapour-membrane", "steel-membrane");
    if (side == InsulationSide.OUTSIDE) {
      return List.of(
          check(
              NOTE,
              "The insulation is outside, so the steel stays warm and room air does not"
                  + " condense on it; keep it unbroken over posts and rails",
              cells,
              tasks));
    }
    var cold = coldMonths(in);
    if (material == InsulationMaterial.NONE) {
      return List.of(
          check(
              PROFESSIONAL,
              "The walls have no insulation inside: bare steel sweats" + cold,
              cells,
              tasks));
    }
    if (material == InsulationMaterial.CLOSED_CELL) {
      return List.of(
          check(
              NOTE,
              "Closed-cell foam bonded to the steel keeps room air from it. Cover every post and"
                  + " rail, and leave no gap"
                  + cold,
              cells,
              tasks));
    }
    if (vapour == VapourControl.MEMBRANE) {
      return List.of(
          check(
              NOTE,
              "A taped membrane on the warm side keeps room air from the steel, as long as every"
                  + " outlet and joint in it is sealed"
                  + cold,
              cells,
              tasks));
    }
    return List.of(
        check(
            PROFESSIONAL,
            "Room air can reach the cold steel through "
                + material.label()
                + " and condense there: a taped membrane on the warm side, or"
                + " closed-cell foam on the steel, keeps it away"
                + cold,
            cells,
            tasks));
  }

  private static Check check(
      Check.Severity severity, String text, List<String> cells, List<String> tasks) {
    return new Check("steel-and-moisture", Topic.MOISTURE, severity, text, SOURCE, cells, tasks);
  }

  private static String coldMonths(CheckInput in) {
    var say = new Say(in);
    var design =
        coldest(in).map(c -> "the cold to design for is " + say.temperature(c, 0)).orElse("");
    var climate = in.book().map(b -> b.region().climate()).orElse(List.of());
    if (climate.isEmpty()) return design.isEmpty() ? "" : "; " + design;
    double dewPoint = dewPoint(ROOM_TEMPERATURE, ROOM_HUMIDITY);
    var limit = BigDecimal.valueOf(dewPoint);
    long colder = climate.stream().filter(m -> m.temperature().compareTo(limit) < 0).count();
    return String.format(
        Locale.ROOT,
        ". Dew point of a room at %s and 50 %%: %s; the mean outside is below that in %d months"
            + " of the year%s",
        say.temperature(BigDecimal.valueOf(ROOM_TEMPERATURE), 0),
        say.temperature(limit, 1),
        colder,
        design.isEmpty() ? "" : "; " + design);
  }

  /** The owner's coldest design temperature or else the region's, degrees Celsius. */
  static Optional<BigDecimal> coldest(CheckInput in) {
    var units = in.scope().units();
    return in.scope()
        .services()
        .findFigure(ServicesQuestions.WINTER_TEMPERATURE)
        .map(t -> Temperature.celsius(t.value(), units))
        .or(() -> in.book().flatMap(b -> b.region().winterDesign()));
  }

  /**
   * Dew point in degrees Celsius, where it is above freezing.
   *
   * @param humidity relative, 0 to 1
   */
  static double dewPoint(double temperature, double humidity) {
    double ln = Math.log(humidity) + 17.269 * temperature / (237.3 + temperature);
    return 237.3 * ln / (17.269 - ln);
  }
}

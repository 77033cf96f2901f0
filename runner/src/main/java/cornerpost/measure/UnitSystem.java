package cornerpost.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units a workbook or a price book is written in; inside, everything is SI. */
public enum UnitSystem {
  METRIC("metric"),
  US("US customary");

  // Pairs by place; the first of several of one size is the one that is shown.
  private static final List<String> METRIC_UNITS =
      List.of("m", "mm", "km", "m2", "m3", "l", "ml", "kg", "t", "kPa", "m3", "m2");

  private static final List<String> US_UNITS =
      List.of(
          "ft", "in", "mile", "sq ft", "cu yd", "gal", "gal", "lb", "lb", "psf", "cu ft", "sq yd");

  private final String label;

  UnitSystem(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }

  /** Either of two units: the metric one or the customary one. */
  public Unit choose(Unit metric, Unit us) {
    return this == METRIC ? metric : us;
  }

  /**
   * The unit in which a reader of this system expects what is given in another: feet for metres,
   * gallons for litres, square feet a gallon for square metres a litre. Units of no system, of
   * money and of time stay as they are. A cubic metre is cubic yards, in a rate cubic feet.
   */
  public Unit shown(Unit given) {
    var from = this == METRIC ? US_UNITS : METRIC_UNITS;
    var to = this == METRIC ? METRIC_UNITS : US_UNITS;
    var parts = given.symbol().split("/", -1);
    boolean changed = false;
    for (int i = 0; i < parts.length; i++) {
      int at = from.indexOf(parts[i]);
      if (at < 0) continue;
      boolean rate = parts.length > 1 && parts[i].equals("m3");
      parts[i] = rate ? Unit.CU_FT.symbol() : to.get(at);
      changed = true;
    }
    if (!changed) return given;
    return Unit.find(String.join("/", parts))
        .filter(u -> u.dimension().equals(given.dimension()))
        .orElse(given);
  }

  public static Optional<UnitSystem> find(String text) {
    return Arrays.stream(values())
        .filter(s -> s.label.equalsIgnoreCase(text) || s.name().equalsIgnoreCase(text))
        .findFirst();
  }
}

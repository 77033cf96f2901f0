package cornerpost.measure;

import java.util.Arrays;
import java.util.Optional;

/** The units a workbook or a price book is written in; inside, everything is SI. */
public enum UnitSystem {
  METRIC("metric"),
  US("US customary");

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

  public static Optional<UnitSystem> find(String text) {
    return Arrays.stream(values())
        .filter(s -> s.label.equalsIgnoreCase(text) || s.name().equalsIgnoreCase(text))
        .findFirst();
  }
}

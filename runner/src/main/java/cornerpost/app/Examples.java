package cornerpost.app;

import cornerpost.measure.UnitSystem;
import cornerpost.workbook.Layouts;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The workbooks that come with the program. */
final class Examples {
  static final List<String> NAMES =
      List.of(
          "one-bedroom-40hc",
          "studio-20hc-metric",
          "two-bedroom-two-boxes",
          "lender-review",
          "mid-build-late-delivery");

  private Examples() {}

  /**
   * The named example, the named layout, or a blank workbook; empty if there is no such example.
   */
  static Optional<byte[]> content(
      Optional<String> example, Optional<String> layout, Optional<UnitSystem> units)
      throws IOException {
    if (layout.isPresent()) {
      return Layouts.workbook(layout.get(), units.orElse(UnitSystem.METRIC));
    }
    if (example.isPresent() && !NAMES.contains(example.get())) return Optional.empty();
    var blank = units.orElse(UnitSystem.METRIC) == UnitSystem.METRIC ? "blank-metric" : "blank-us";
    var name = "/workbook-templates/" + example.orElse(blank) + ".xlsx";
    try (var in = Examples.class.getResourceAsStream(name)) {
      if (in == null) throw new IllegalStateException("The program lacks " + name);
      return Optional.of(in.readAllBytes());
    }
  }
}

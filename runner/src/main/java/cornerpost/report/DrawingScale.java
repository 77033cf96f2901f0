package cornerpost.report;

import cornerpost.measure.UnitSystem;
import java.util.List;

/**
 * At what scale a drawing is printed, and how large its text must be to be read at that size.
 *
 * @param ratio 100 for 1:100
 * @param name as it stands beside a drawing
 * @param width of the drawing, mm in reality
 */
record DrawingScale(int ratio, String name, double width) {
  /** Width of text on A4 and Letter with the page's margins, mm on paper. */
  private static final double PAPER = 178;

  private static final double MM_TO_PX = 96 / 25.4;

  /** Drawing scales in use: ISO 5455:1979; feet and inches by common practice. */
  static DrawingScale of(double widthMm, UnitSystem units) {
    var metric = List.of(50, 100, 200, 500, 1000, 2000);
    var us = List.of(48, 96, 192, 480, 960, 1920);
    var all = units == UnitSystem.METRIC ? metric : us;
    for (int ratio : all) {
      if (widthMm / ratio <= PAPER) return new DrawingScale(ratio, name(ratio, units), widthMm);
    }
    int last = all.get(all.size() - 1);
    return new DrawingScale(last, name(last, units), widthMm);
  }

  private static String name(int ratio, UnitSystem units) {
    if (units == UnitSystem.METRIC) return "1:" + ratio;
    return switch (ratio) {
      case 48 -> "1/4 in to 1 ft";
      case 96 -> "1/8 in to 1 ft";
      case 192 -> "1/16 in to 1 ft";
      default -> "1 in to " + ratio / 12 + " ft";
    };
  }

  /** Sizes for the style sheet: on the screen seven tenths larger than in print. */
  String style() {
    double paper = width / ratio;
    return "--print-width:"
        + Svg.number(paper)
        + "mm;--screen-width:"
        + Svg.number(paper * MM_TO_PX * 1.7)
        + "px";
  }

  /** Millimetres in reality of text that is so many points on paper. */
  double points(double size) {
    return size * 25.4 / 72 * ratio;
  }
}

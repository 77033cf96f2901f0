package cornerpost.report;

import java.util.List;

/**
 * Lines of text that stand under each other, as one thing that is put into a drawing.
 *
 * @param turned read from below, up the page, instead of across
 */
record TextBlock(List<Line> lines, boolean turned) {
  private static final double LINE = 1.12; // height of a line, of the size of its text

  /** A line; {@code size} in mm of reality. */
  record Line(String cssClass, double size, String text) {}

  /** Along the box. */
  double du() {
    return turned ? high() : wide();
  }

  /** Across the box. */
  double dv() {
    return turned ? wide() : high();
  }

  private double wide() {
    return lines.stream().mapToDouble(l -> Crowd.wide(l.text(), l.size())).max().orElse(0);
  }

  private double high() {
    return lines.stream().mapToDouble(l -> LINE * l.size()).sum();
  }

  /** With its middle at a place. */
  Placed.Patch around(double u, double v) {
    return new Placed.Patch(u - du() / 2, v - dv() / 2, du(), dv());
  }

  /**
   * Draws it, upright however the box lies.
   *
   * @param rotation of the box, degrees anticlockwise
   */
  void draw(Svg svg, Placed.Patch at, double rotation) {
    double u = at.u() + at.du() / 2;
    double v = at.v() + at.dv() / 2;
    double lies = ((rotation % 360) + 360) % 360;
    double angle = (turned ? -90 : 0) + (lies > 90.5 && lies < 270.5 ? 180 : 0);
    var transform =
        angle == 0
            ? ""
            : "rotate(" + Svg.number(angle) + " " + Svg.number(u) + " " + Svg.number(v) + ")";
    double top = v - high() / 2;
    for (var line : lines) {
      svg.text(
          "text",
          line.text(),
          "class",
          line.cssClass(),
          "font-size",
          line.size(),
          "text-anchor",
          "middle",
          "x",
          u,
          "y",
          top + Crowd.ABOVE_LINE * line.size() + (LINE - 1) / 2 * line.size(),
          "transform",
          transform);
      top += LINE * line.size();
    }
  }
}

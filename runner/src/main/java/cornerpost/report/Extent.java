package cornerpost.report;

/** The smallest upright rectangle round everything put into it. */
final class Extent {
  double left = Double.POSITIVE_INFINITY;
  double top = Double.POSITIVE_INFINITY;
  double right = Double.NEGATIVE_INFINITY;
  double bottom = Double.NEGATIVE_INFINITY;

  void add(double x, double y) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }

  void add(Placed box, double u, double v, double du, double dv) {
    for (double[] corner : new double[][] {{u, v}, {u + du, v}, {u, v + dv}, {u + du, v + dv}}) {
      var p = box.ground().onPlot(corner[0], corner[1]);
      add(p[0], p[1]);
    }
  }

  void add(Placed box, Placed.Patch p) {
    add(box, p.u(), p.v(), p.du(), p.dv());
  }

  void widen(double by) {
    left -= by;
    right += by;
    top -= by;
    bottom += by;
  }

  boolean meets(Extent other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  String viewBox() {
    return Svg.number(left)
        + " "
        + Svg.number(top)
        + " "
        + Svg.number(width())
        + " "
        + Svg.number(height());
  }
}

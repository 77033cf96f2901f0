package cornerpost.scope;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.trace.Figure;

/**
 * The ground a box covers, in millimetres. On the plot x runs along and y across, to the right hand
 * of somebody who looks along. In the box itself u runs from the door end to the blind end and v
 * from the left side to the right side, seen from the door end looking in.
 *
 * @param x of the door-end left corner; {@code y} likewise
 * @param rotation degrees anticlockwise, seen from above
 * @param length outside; {@code width} likewise
 */
public record Footprint(double x, double y, double rotation, double length, double width) {
  /** Where the choices put a box. */
  public static Footprint of(Box box, Facts facts) {
    return new Footprint(
        mm(box.along()),
        mm(box.across()),
        box.rotation().in(Unit.ONE).doubleValue(),
        mm(box.fact(facts, "length")),
        mm(box.fact(facts, "width")));
  }

  private static double mm(Figure length) {
    return length.in(Unit.MM).doubleValue();
  }

  /** A point of the box on the plot, x first. */
  public double[] onPlot(double u, double v) {
    double a = turn();
    return new double[] {
      x + u * Math.cos(a) - v * Math.sin(a), y + u * Math.sin(a) + v * Math.cos(a)
    };
  }

  /** Whether a point of the plot lies in the box. */
  public boolean covers(double atX, double atY) {
    double a = turn();
    double u = (atX - x) * Math.cos(a) + (atY - y) * Math.sin(a);
    double v = -(atX - x) * Math.sin(a) + (atY - y) * Math.cos(a);
    return u >= 0 && u <= length && v >= 0 && v <= width;
  }

  /** Whether the two share ground at least so many millimetres wide: no line parts them. */
  public boolean overlaps(Footprint other, double least) {
    for (double turn : new double[] {turn(), other.turn()}) {
      for (double angle : new double[] {turn, turn + Math.PI / 2}) {
        double begin = Math.max(leastAlong(angle), other.leastAlong(angle));
        double end = Math.min(mostAlong(angle), other.mostAlong(angle));
        if (end - begin < least) return false;
      }
    }
    return true;
  }

  /** How far the nearest corner lies in a direction, measured from the plot's origin. */
  private double leastAlong(double angle) {
    double near = Double.POSITIVE_INFINITY;
    for (double u : new double[] {0, length}) {
      for (double v : new double[] {0, width}) {
        var p = onPlot(u, v);
        near = Math.min(near, p[0] * Math.cos(angle) + p[1] * Math.sin(angle));
      }
    }
    return near;
  }

  private double mostAlong(double angle) {
    return -leastAlong(angle + Math.PI);
  }

  /** Radians, as x turns towards y. */
  private double turn() {
    return Math.toRadians(-rotation);
  }
}

package cornerpost.report;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.Joint;
import cornerpost.scope.Opening;
import cornerpost.scope.Room;
import cornerpost.scope.Scope;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * A box where the choices put it. All in millimetres. On the plot x runs along and y across, to the
 * right hand of somebody who looks along; so x points right and y down on the page. In the box
 * itself u runs from the door end to the blind end and v from the left side to the right side, seen
 * from the door end looking in.
 *
 * @param x of the door-end left corner; {@code y} likewise
 * @param rotation degrees anticlockwise, seen from above
 * @param level 0 on the ground, 1 on top of that
 */
record Placed(
    Box box,
    double x,
    double y,
    double rotation,
    double length,
    double width,
    double height,
    double insideLength,
    double insideWidth,
    double insideHeight,
    int level) {

  /** A stretch of the box between two partitions; the end walls count as such. */
  record Bay(Room room, double from, double to) {
    double middle() {
      return (from + to) / 2;
    }
  }

  static List<Placed> all(Scope scope, Facts facts) {
    var all = new ArrayList<Placed>();
    for (var b : scope.boxes()) {
      all.add(
          new Placed(
              b,
              mm(b.along()),
              mm(b.across()),
              b.rotation().in(Unit.ONE).doubleValue(),
              mm(b.fact(facts, "length")),
              mm(b.fact(facts, "width")),
              mm(b.fact(facts, "height")),
              mm(b.fact(facts, "inside-length")),
              mm(b.fact(facts, "inside-width")),
              mm(b.fact(facts, "inside-height")),
              level(scope, b)));
    }
    return all;
  }

  /**
   * How many boxes it stands on; a ring of boxes, each stacked on the next, ends where it began.
   */
  private static int level(Scope scope, Box box) {
    int level = 0;
    var met = new HashSet<String>();
    var at = box;
    while (at.joint() == Joint.STACKED && met.add(at.id())) {
      var below = at.joinedTo().flatMap(scope::box);
      if (below.isEmpty()) break;
      level++;
      at = below.get();
    }
    return level;
  }

  static double mm(Figure length) {
    return length.in(Unit.MM).doubleValue();
  }

  double sideWall() {
    return (width - insideWidth) / 2;
  }

  double endWall() {
    return (length - insideLength) / 2;
  }

  /** The rooms in line from the inside of the door end. */
  List<Bay> bays(Scope scope) {
    var bays = new ArrayList<Bay>();
    double at = endWall();
    for (var r : scope.roomsOf(box)) {
      double to = at + mm(r.length());
      bays.add(new Bay(r, at, to));
      at = to;
    }
    return bays;
  }

  /** A rectangle in the box's own u and v. */
  record Patch(double u, double v, double du, double dv) {}

  /**
   * Where an opening is in the plan. In a roof its width runs along the box, and sill height and
   * height across it from the left.
   */
  Patch patch(Opening o) {
    double w = mm(o.width());
    double at = mm(o.offset());
    return switch (o.wall()) {
      case LEFT -> new Patch(at, 0, w, sideWall());
      case RIGHT -> new Patch(at, width - sideWall(), w, sideWall());
      case DOOR_END -> new Patch(0, at, endWall(), w);
      case BLIND_END -> new Patch(length - endWall(), width - at - w, endWall(), w);
      case ROOF -> new Patch(at, mm(o.sill()), w, mm(o.height()));
    };
  }

  /** The corner of the box, or a point of it, on the plot. */
  double[] onPlot(double u, double v) {
    double a = Math.toRadians(-rotation);
    return new double[] {
      x + u * Math.cos(a) - v * Math.sin(a), y + u * Math.sin(a) + v * Math.cos(a)
    };
  }

  /** Whether a rectangle lies between the linings. */
  boolean holds(Patch p) {
    return p.u() >= endWall()
        && p.u() + p.du() <= length - endWall()
        && p.v() >= sideWall()
        && p.v() + p.dv() <= width - sideWall();
  }

  /** Whether a point of the plot lies in the box. */
  boolean covers(double atX, double atY) {
    double a = Math.toRadians(-rotation);
    double u = (atX - x) * Math.cos(a) + (atY - y) * Math.sin(a);
    double v = -(atX - x) * Math.sin(a) + (atY - y) * Math.cos(a);
    return u >= 0 && u <= length && v >= 0 && v <= width;
  }
}

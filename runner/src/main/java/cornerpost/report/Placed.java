package cornerpost.report;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.Footprint;
import cornerpost.scope.Joint;
import cornerpost.scope.Opening;
import cornerpost.scope.Room;
import cornerpost.scope.Scope;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * A box where the choices put it. All in millimetres, and as a {@link Footprint} has them: x points
 * right and y down on the page.
 *
 * @param level 0 on the ground, 1 on top of that
 */
record Placed(
    Box box,
    Footprint ground,
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
              Footprint.of(b, facts),
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

  double length() {
    return ground.length();
  }

  double width() {
    return ground.width();
  }

  double sideWall() {
    return (width() - insideWidth) / 2;
  }

  double endWall() {
    return (length() - insideLength) / 2;
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
      case RIGHT -> new Patch(at, width() - sideWall(), w, sideWall());
      case DOOR_END -> new Patch(0, at, endWall(), w);
      case BLIND_END -> new Patch(length() - endWall(), width() - at - w, endWall(), w);
      case ROOF -> new Patch(at, mm(o.sill()), w, mm(o.height()));
    };
  }

  /** Whether a rectangle lies between the linings. */
  boolean holds(Patch p) {
    return p.u() >= endWall()
        && p.u() + p.du() <= length() - endWall()
        && p.v() >= sideWall()
        && p.v() + p.dv() <= width() - sideWall();
  }
}

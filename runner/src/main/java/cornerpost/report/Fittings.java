package cornerpost.report;

import cornerpost.measure.Unit;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Wall;
import cornerpost.scope.Washing;

/**
 * Beds, baths and kitchens in the plan, of usual sizes (common practice, no source), against the
 * side that has fewer openings. Examples: they show whether a room can hold them.
 */
final class Fittings {
  private final Scope scope;
  private final Placed box;
  private final Svg svg;

  Fittings(Scope scope, Placed box, Svg svg) {
    this.scope = scope;
    this.box = box;
    this.svg = svg;
  }

  void draw(Placed.Bay bay) {
    var side = side(bay);
    svg.open("g", "class", "fittings");
    switch (bay.room().use()) {
      case LIVING -> sofa(bay, side);
      case LIVING_KITCHEN -> {
        kitchen(bay, side);
        sofa(bay, side);
      }
      case KITCHEN -> kitchen(bay, side);
      case BEDROOM -> bed(bay, side);
      case LIVING_SLEEPING -> {
        kitchen(bay, side);
        bed(new Placed.Bay(bay.room(), bay.from(), bay.from() + 2400), side);
      }
      case BATHROOM -> bathroom(bay, side);
      case HALL, UTILITY, STORE -> {}
    }
    svg.close("g");
  }

  private Wall side(Placed.Bay bay) {
    return count(bay, Wall.LEFT) <= count(bay, Wall.RIGHT) ? Wall.LEFT : Wall.RIGHT;
  }

  private long count(Placed.Bay bay, Wall wall) {
    return scope.openingsIn(box.box(), wall).stream()
        .map(box::patch)
        .filter(p -> p.u() < bay.to() && p.u() + p.du() > bay.from())
        .count();
  }

  /** A rectangle that stands {@code deep} into the room from the side wall. */
  private void put(double u, double along, Wall side, double gap, double deep) {
    svg.rect("fitting", u, v(side, gap, deep), along, deep);
  }

  private double v(Wall side, double gap, double deep) {
    return side == Wall.LEFT ? box.sideWall() + gap : box.width() - box.sideWall() - gap - deep;
  }

  private void bed(Placed.Bay bay, Wall side) {
    double wide = Math.min(1400, bay.to() - bay.from() - 500);
    if (wide < 800) return;
    double u = bay.to() - wide - 250;
    put(u, wide, side, 60, 1900);
    put(u + 80, wide / 2 - 120, side, 120, 380);
    put(u + wide / 2 + 40, wide / 2 - 120, side, 120, 380);
  }

  private void sofa(Placed.Bay bay, Wall side) {
    double along = Math.min(1900, (bay.to() - bay.from()) / 2 - 200);
    if (along < 1200) return;
    put(bay.from() + 150, along, side, 60, 850);
    put(bay.from() + 250, along - 200, side, 260, 650);
  }

  private void kitchen(Placed.Bay bay, Wall side) {
    double run = scope.finishes().figure(FinishesQuestions.KITCHEN_RUN).in(Unit.MM).doubleValue();
    double along = Math.min(run, bay.to() - bay.from() - 200);
    if (along < 600) return;
    double u = bay.to() - along - 60;
    put(u, along, side, 60, 600);
    put(u + along * 0.15, 450, side, 160, 380);
    double cooker = u + along - 620;
    for (int i = 0; i < 4; i++) {
      double y = v(side, 60, 600) + 180 + i / 2 * 260;
      svg.add("circle", "class", "fitting", "cx", cooker + 120 + i % 2 * 260, "cy", y, "r", 85.0);
    }
  }

  private void bathroom(Placed.Bay bay, Wall side) {
    boolean bath =
        scope.finishes().option(FinishesQuestions.WASHING, Washing.class) == Washing.BATH;
    double wash = bath ? 750 : 900;
    double at = bay.from() + 70;
    put(at, wash, side, 60, bath ? 1650 : 900);
    at += wash + 150;
    if (at + 400 > bay.to()) return;
    put(at, 400, side, 60, 180);
    svg.add(
        "ellipse",
        "class",
        "fitting",
        "cx",
        at + 200,
        "cy",
        v(side, 240, 440) + 220,
        "rx",
        180.0,
        "ry",
        230.0);
    at += 520;
    if (at + 450 > bay.to()) return;
    put(at, 450, side, 60, 400);
    svg.add(
        "ellipse",
        "class",
        "fitting",
        "cx",
        at + 225,
        "cy",
        v(side, 130, 260) + 130,
        "rx",
        160.0,
        "ry",
        110.0);
  }
}

package cornerpost.report;

import cornerpost.measure.Unit;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Scope;
import cornerpost.scope.Wall;
import cornerpost.scope.Washing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Beds, baths and kitchens in the plan, of usual sizes (common practice, no source). Examples: they
 * show whether a room can hold them. Each stands against a side wall where nothing else stands and
 * no door swings or is walked through; what finds no such place is left out.
 */
final class Fittings {
  /** Floor to stand on before a door that is not swung over it, mm. */
  private static final double STEP = 600;

  private static final double GAP = 60;

  private record Spot(double u, Wall side) {}

  private final Scope scope;
  private final Placed box;
  private final Svg svg;
  private final Crowd crowd;

  /**
   * @param crowd doors and what they swing over; what is drawn is added to it
   */
  Fittings(Scope scope, Placed box, Svg svg, Crowd crowd) {
    this.scope = scope;
    this.box = box;
    this.svg = svg;
    this.crowd = crowd;
  }

  /** The floor inside before the doors and passages of the shell. */
  static List<Placed.Patch> beforeDoors(Scope scope, Placed box) {
    var all = new ArrayList<Placed.Patch>();
    for (var o : scope.openingsOf(box.box())) {
      if (!walkedThrough(o)) continue;
      var p = box.patch(o);
      switch (o.wall()) {
        case LEFT -> all.add(new Placed.Patch(p.u(), 0, p.du(), box.sideWall() + STEP));
        case RIGHT ->
            all.add(
                new Placed.Patch(
                    p.u(), box.width() - box.sideWall() - STEP, p.du(), box.sideWall() + STEP));
        case DOOR_END -> all.add(new Placed.Patch(0, p.v(), box.endWall() + STEP, p.dv()));
        case BLIND_END ->
            all.add(
                new Placed.Patch(
                    box.length() - box.endWall() - STEP, p.v(), box.endWall() + STEP, p.dv()));
        case ROOF -> {}
      }
    }
    return all;
  }

  private static boolean walkedThrough(Opening o) {
    return o.kind() == OpeningKind.PASS_THROUGH
        || o.kind() == OpeningKind.SLIDING_DOOR
        || FloorPlan.isDoor(o.kind());
  }

  void draw(Placed.Bay bay) {
    svg.open("g", "class", "fittings");
    switch (bay.room().use()) {
      case LIVING -> sofa(bay);
      case LIVING_KITCHEN -> {
        kitchen(bay);
        sofa(bay);
      }
      case KITCHEN -> kitchen(bay);
      case BEDROOM -> bed(bay);
      case LIVING_SLEEPING -> {
        kitchen(bay);
        bed(bay);
      }
      case BATHROOM -> bathroom(bay);
      case HALL, UTILITY, STORE -> {}
    }
    svg.close("g");
  }

  // ---- finding a place -----------------------------------------------------------------------

  /** At the far end of the room or at its near end, or from there on; the emptier side first. */
  private Optional<Spot> find(Placed.Bay bay, double along, double deep, boolean fromFarEnd) {
    double first = bay.from() + GAP;
    double last = bay.to() - GAP - along;
    boolean left = count(bay, Wall.LEFT) <= count(bay, Wall.RIGHT);
    for (var side : left ? List.of(Wall.LEFT, Wall.RIGHT) : List.of(Wall.RIGHT, Wall.LEFT)) {
      for (double u : alongTheWall(first, last, fromFarEnd)) {
        var place = new Placed.Patch(u, v(side, 0, deep + GAP), along, deep + GAP);
        if (!crowd.free(place)) continue;
        crowd.take(new Placed.Patch(place.u() - GAP / 2, place.v(), place.du() + GAP, place.dv()));
        return Optional.of(new Spot(u, side));
      }
    }
    return Optional.empty();
  }

  /** Into a corner first, this one or the other; then away from the first corner. */
  private static List<Double> alongTheWall(double first, double last, boolean fromFarEnd) {
    var all = new ArrayList<Double>();
    if (last < first) return all;
    all.add(fromFarEnd ? last : first);
    all.add(fromFarEnd ? first : last);
    for (double step = 50; step <= last - first; step += 50) {
      all.add(fromFarEnd ? last - step : first + step);
    }
    return all;
  }

  private long count(Placed.Bay bay, Wall wall) {
    return scope.openingsIn(box.box(), wall).stream()
        .map(box::patch)
        .filter(p -> p.u() < bay.to() && p.u() + p.du() > bay.from())
        .count();
  }

  // ---- drawing -------------------------------------------------------------------------------

  /** A rectangle that stands {@code deep} into the room from the side wall. */
  private void put(double u, double along, Wall side, double gap, double deep) {
    svg.rect("fitting", u, v(side, gap, deep), along, deep);
  }

  /** The outline of a thing. */
  private void put(String name, double u, double along, Wall side, double deep) {
    svg.rect("fitting", u, v(side, GAP, deep), along, deep, "data-fitting", name);
  }

  private double v(Wall side, double gap, double deep) {
    return side == Wall.LEFT ? box.sideWall() + gap : box.width() - box.sideWall() - gap - deep;
  }

  private void bed(Placed.Bay bay) {
    double wide = Math.min(1400, bay.to() - bay.from() - 500);
    if (wide < 800) return;
    find(bay, wide, 1900, true)
        .ifPresent(
            s -> {
              put("bed", s.u(), wide, s.side(), 1900);
              put(s.u() + 80, wide / 2 - 120, s.side(), 120, 380);
              put(s.u() + wide / 2 + 40, wide / 2 - 120, s.side(), 120, 380);
            });
  }

  private void sofa(Placed.Bay bay) {
    double along = Math.min(1900, (bay.to() - bay.from()) / 2 - 200);
    if (along < 1200) return;
    find(bay, along, 850, false)
        .ifPresent(
            s -> {
              put("sofa", s.u(), along, s.side(), 850);
              put(s.u() + 100, along - 200, s.side(), 260, 650);
            });
  }

  private void kitchen(Placed.Bay bay) {
    double run = scope.finishes().figure(FinishesQuestions.KITCHEN_RUN).in(Unit.MM).doubleValue();
    double most = Math.min(run, bay.to() - bay.from() - 200);
    for (double along = most; along >= 1200; along -= 300) {
      var spot = find(bay, along, 600, true);
      if (spot.isPresent()) {
        kitchen(spot.get(), along);
        return;
      }
    }
  }

  private void kitchen(Spot s, double along) {
    put("kitchen", s.u(), along, s.side(), 600);
    put(s.u() + along * 0.15, 450, s.side(), 160, 380);
    double cooker = s.u() + along - 620;
    for (int i = 0; i < 4; i++) {
      double y = v(s.side(), GAP, 600) + 180 + i / 2 * 260;
      svg.add("circle", "class", "fitting", "cx", cooker + 120 + i % 2 * 260, "cy", y, "r", 85.0);
    }
  }

  private void bathroom(Placed.Bay bay) {
    boolean bath =
        scope.finishes().option(FinishesQuestions.WASHING, Washing.class) == Washing.BATH;
    double wash = bath ? 750 : 900;
    double deep = bath ? 1650 : 700;
    find(bay, wash, deep, false).ifPresent(s -> put("wash", s.u(), wash, s.side(), deep));
    find(bay, 400, 660, false)
        .ifPresent(
            s -> {
              put("toilet", s.u(), 400, s.side(), 180);
              oval(s.u() + 200, v(s.side(), 240, 440) + 220, 180, 230);
            });
    find(bay, 450, 400, false)
        .ifPresent(
            s -> {
              put("basin", s.u(), 450, s.side(), 400);
              oval(s.u() + 225, v(s.side(), 130, 260) + 130, 160, 110);
            });
  }

  private void oval(double u, double v, double rx, double ry) {
    svg.add("ellipse", "class", "fitting", "cx", u, "cy", v, "rx", rx, "ry", ry);
  }
}

package cornerpost.report;

import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Openings in the floor plan: the hole where it is cut, and the usual sign of what is in it. */
final class OpeningSymbols {
  private static final int ROWS = 9;
  private static final int OUTSIDE = -1;

  private final Svg svg;
  private final Placed box;
  private final double textSize;
  private final Crowd crowd;
  private final Outdoors outdoors;

  /**
   * @param crowd what names may not lie on; they are added to it
   * @param outdoors what lies beyond the walls; names there are added to it
   */
  OpeningSymbols(Svg svg, Placed box, double textSize, Crowd crowd, Outdoors outdoors) {
    this.svg = svg;
    this.box = box;
    this.textSize = textSize;
    this.crowd = crowd;
    this.outdoors = outdoors;
  }

  void draw(List<Opening> openings) {
    openings.stream().sorted(Comparator.comparingDouble(o -> box.patch(o).u())).forEach(this::draw);
  }

  private void draw(Opening o) {
    var p = box.patch(o);
    svg.open("g", "data-opening", o.id());
    svg.rect(o.wall() == Wall.ROOF ? "roof-hole" : "hole", p.u(), p.v(), p.du(), p.dv());
    switch (o.kind()) {
      case WINDOW -> glass(o, p, 0.5);
      case GLAZED_DOOR, DOOR -> leaf(o, p);
      case SLIDING_DOOR -> {
        glassPart(p, o, 0.3, 0, 0.55);
        glassPart(p, o, 0.7, 0.45, 1);
      }
      case PASS_THROUGH, VENT, SLEEVE -> {}
    }
    label(o, p);
    svg.close("g");
  }

  private boolean endWall(Opening o) {
    return o.wall() == Wall.DOOR_END || o.wall() == Wall.BLIND_END;
  }

  private void glass(Opening o, Placed.Patch p, double depth) {
    glassPart(p, o, depth, 0, 1);
  }

  private void glassPart(Placed.Patch p, Opening o, double depth, double from, double to) {
    if (o.wall() == Wall.ROOF) return;
    if (endWall(o)) {
      double u = p.u() + depth * p.du();
      svg.line("glass", u, p.v() + from * p.dv(), u, p.v() + to * p.dv());
    } else {
      double v = p.v() + depth * p.dv();
      svg.line("glass", p.u() + from * p.du(), v, p.u() + to * p.du(), v);
    }
  }

  /** Hung at the near edge, opening outwards, as doors of small rooms do. */
  private void leaf(Opening o, Placed.Patch p) {
    double w = endWall(o) ? p.dv() : p.du();
    switch (o.wall()) {
      case LEFT -> leaf(p.u(), 0, p.u(), -w, p.u() + w, 0, w, 1);
      case RIGHT -> leaf(p.u(), box.width(), p.u(), box.width() + w, p.u() + w, box.width(), w, 0);
      case DOOR_END -> leaf(0, p.v(), -w, p.v(), 0, p.v() + w, w, 0);
      case BLIND_END ->
          leaf(box.length(), p.v(), box.length() + w, p.v(), box.length(), p.v() + w, w, 1);
      case ROOF -> {}
    }
  }

  private void leaf(
      double hingeX,
      double hingeY,
      double tipX,
      double tipY,
      double latchX,
      double latchY,
      double radius,
      int sweep) {
    svg.line("leaf", hingeX, hingeY, tipX, tipY);
    svg.add(
        "path",
        "class",
        "swing",
        "d",
        "M"
            + Svg.number(tipX)
            + " "
            + Svg.number(tipY)
            + " A"
            + Svg.number(radius)
            + " "
            + Svg.number(radius)
            + " 0 0 "
            + sweep
            + " "
            + Svg.number(latchX)
            + " "
            + Svg.number(latchY));
  }

  /**
   * Inside the wall at the opening; where something stands there, in the next rows, beside the
   * opening or outside. Vents and sleeves are small and many: outside first.
   */
  private void label(Opening o, Placed.Patch p) {
    var inside = new ArrayList<Placed.Patch>();
    var beside = List.of(0.0, -0.5, 0.5, -1.0, 1.0);
    for (double aside : beside.subList(0, 3)) inside.add(place(o, p, 0, aside));
    for (int row = 0; row < ROWS; row++) {
      for (double aside : beside) inside.add(place(o, p, row, aside));
    }
    if (o.wall() != Wall.ROOF) inside.removeIf(a -> !box.holds(a));
    var beyond = beside.stream().map(aside -> place(o, p, OUTSIDE, aside)).toList();
    boolean small = o.kind() == OpeningKind.VENT || o.kind() == OpeningKind.SLEEVE;
    var at =
        Stream.of(
                small ? outside(beyond) : crowd.firstClear(inside),
                small ? crowd.firstClear(inside) : outside(beyond))
            .flatMap(Optional::stream)
            .findFirst()
            .orElseGet(() -> crowd.best(inside.isEmpty() ? beyond : inside));
    crowd.take(at);
    if (beyond.contains(at)) outdoors.take(box, at);
    svg.text(
        "text",
        o.id(),
        "class",
        "opening-name",
        "font-size",
        textSize,
        "text-anchor",
        "middle",
        "x",
        at.u() + at.du() / 2,
        "y",
        at.v() + Crowd.ABOVE_LINE * textSize);
  }

  private Optional<Placed.Patch> outside(List<Placed.Patch> places) {
    return places.stream().filter(a -> crowd.clear(a) && outdoors.free(box, a)).findFirst();
  }

  /** What a door swings over, outside as it is drawn; empty for what swings over nothing. */
  static Optional<Placed.Patch> swing(Placed box, Opening o) {
    if (!FloorPlan.isDoor(o.kind())) return Optional.empty();
    var p = box.patch(o);
    return switch (o.wall()) {
      case LEFT -> Optional.of(new Placed.Patch(p.u(), -p.du(), p.du(), p.du()));
      case RIGHT -> Optional.of(new Placed.Patch(p.u(), box.width(), p.du(), p.du()));
      case DOOR_END -> Optional.of(new Placed.Patch(-p.dv(), p.v(), p.dv(), p.dv()));
      case BLIND_END -> Optional.of(new Placed.Patch(box.length(), p.v(), p.dv(), p.dv()));
      case ROOF -> Optional.empty();
    };
  }

  /**
   * @param row from the wall inwards; {@link #OUTSIDE} beyond it
   * @param aside along the wall, in widths of the name and half the opening
   */
  private Placed.Patch place(Opening o, Placed.Patch p, int row, double aside) {
    double u = p.u() + p.du() / 2;
    double v = p.v() + p.dv() / 2;
    double t = textSize;
    double wide = Crowd.text(o.id(), 0, 0, t).du();
    switch (o.wall()) {
      case LEFT -> v = row == OUTSIDE ? -0.75 * t : box.sideWall() + t * (1.1 + row);
      case RIGHT ->
          v =
              row == OUTSIDE
                  ? box.width() + t * 1.55
                  : box.width() - box.sideWall() - t * (0.4 + row);
      case DOOR_END -> u = row == OUTSIDE ? -wide : box.endWall() + t * (1.1 + row);
      case BLIND_END ->
          u = row == OUTSIDE ? box.length() + wide : box.length() - box.endWall() - t * (1.1 + row);
      case ROOF -> v += row * t;
    }
    if (endWall(o)) v += aside * (p.dv() / 2 + t);
    else u += aside * (p.du() / 2 + wide);
    return Crowd.text(o.id(), u, v, t);
  }
}

package cornerpost.report;

import cornerpost.scope.Opening;
import cornerpost.scope.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;

/** Openings in the floor plan: the hole where it is cut, and the usual sign of what is in it. */
final class OpeningSymbols {
  private final Svg svg;
  private final Placed box;
  private final double textSize;

  OpeningSymbols(Svg svg, Placed box, double textSize) {
    this.svg = svg;
    this.box = box;
    this.textSize = textSize;
  }

  /** Names that would run into each other along a wall stand in rows. */
  void draw(List<Opening> openings) {
    var ends = new EnumMap<Wall, List<Double>>(Wall.class);
    openings.stream()
        .sorted(Comparator.comparingDouble(o -> box.patch(o).u()))
        .forEach(o -> draw(o, row(o, ends.computeIfAbsent(o.wall(), w -> new ArrayList<>()))));
  }

  private int row(Opening o, List<Double> ends) {
    if (endWall(o)) return 0;
    var p = box.patch(o);
    double half = textSize * 0.33 * o.id().length() + textSize * 0.2;
    double middle = p.u() + p.du() / 2;
    int row = 0;
    while (row < ends.size() && ends.get(row) > middle - half) row++;
    if (row == ends.size()) ends.add(0.0);
    ends.set(row, middle + half);
    return row;
  }

  private void draw(Opening o, int row) {
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
    label(o, p, row);
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

  /** Inside the wall, where it meets neither deck nor dimensions. */
  private void label(Opening o, Placed.Patch p, int row) {
    double u = p.u() + p.du() / 2;
    double v = p.v() + p.dv() / 2;
    double t = textSize;
    switch (o.wall()) {
      case LEFT -> v = box.sideWall() + t * (1.1 + row);
      case RIGHT -> v = box.width() - box.sideWall() - t * (0.4 + row);
      case DOOR_END -> u = box.endWall() + t * 1.1;
      case BLIND_END -> u = box.length() - box.endWall() - t * 1.1;
      case ROOF -> {}
    }
    svg.text(
        "text",
        o.id(),
        "class",
        "opening-name",
        "font-size",
        t,
        "text-anchor",
        "middle",
        "x",
        u,
        "y",
        v);
  }
}

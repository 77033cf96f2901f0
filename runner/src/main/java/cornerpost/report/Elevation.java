package cornerpost.report;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.CargoDoors;
import cornerpost.scope.Foundation;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Scope;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Wall;
import cornerpost.scope.WallCuts;
import cornerpost.scope.WallCuts.Cut;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/**
 * A wall of a box seen from outside, to scale in millimetres: x from its left end, y downwards from
 * the top of the container floor. The floor lies below the underside of the roof by the inside
 * height; the roof itself is taken as thin.
 */
final class Elevation {
  private final Scope scope;
  private final UnitSystem units;
  private final Placed box;
  private final Wall wall;
  private final String id;
  private final List<Cut> cuts;
  private Svg svg;
  private double text;
  private Crowd crowd;

  /**
   * @param cuts what is cut out of any wall of the house
   */
  Elevation(Scope scope, WallCuts cuts, Placed box, Wall wall, String id) {
    this.scope = scope;
    this.units = scope.units();
    this.box = box;
    this.wall = wall;
    this.id = id;
    this.cuts =
        cuts.in(box.box(), wall).stream()
            .sorted(Comparator.comparingDouble(c -> left(box, wall, c)))
            .toList();
  }

  private double run() {
    return wall == Wall.LEFT || wall == Wall.RIGHT ? box.length() : box.width();
  }

  /** The left edge of an opening, seen from outside: the left side shows its door end at right. */
  static double left(Placed box, Wall wall, Cut cut) {
    double offset = Placed.mm(cut.offset());
    return wall == Wall.LEFT ? box.length() - offset - Placed.mm(cut.opening().width()) : offset;
  }

  FloorPlan.Drawing draw() {
    double top = -box.insideHeight();
    double under = top + box.height();
    double ground = scope.site().findFigure(SiteQuestions.FLOOR_HEIGHT).map(Placed::mm).orElse(0.0);
    boolean grounded = box.level() == 0;
    double lowest = grounded ? Math.max(ground, under) : under;
    // one size of text on all four walls of a box: that of the long one
    text = DrawingScale.of(box.length() + 1600, units).points(6.2);
    var page = new Extent();
    page.add(-text * 6, top - text * 1.2);
    page.add(run() + text * 2, lowest + text * 6);
    var scale = DrawingScale.of(box.length() + text * 7, units);
    var own = new DrawingScale(scale.ratio(), scale.name(), page.width());
    svg = Svg.picture(id, page.viewBox(), "drawing", own.style(), title(), description());
    svg.rect("shell", 0, top, run(), box.height(), "data-wall", wall.label());
    svg.rect("ribs", 60, top + 100, run() - 120, box.height() - 250);
    svg.line("floor-line", 0, 0, run(), 0);
    if (wall == Wall.DOOR_END && box.box().cargoDoors() != CargoDoors.REMOVE) cargoDoors(top);
    if (grounded) {
      svg.line("ground", -text * 2, lowest, run() + text * 2, lowest);
      legs(under, ground);
    }
    crowd = new Crowd();
    for (var c : cuts) crowd.take(hole(c));
    crowd.take(new Placed.Patch(0, top - text * 3, run(), text * 3)); // above the roof
    crowd.take(new Placed.Patch(0, under - 5, run(), text * 3));
    for (var c : cuts) opening(c);
    chain(lowest + text * 2.2);
    heights(top, under, ground, grounded);
    return new FloorPlan.Drawing(svg.done(), own.name());
  }

  String title() {
    return "Box " + box.box().id() + ", " + wall.label();
  }

  private double left(Cut cut) {
    return left(box, wall, cut);
  }

  private String description() {
    if (cuts.isEmpty()) return "Seen from outside; no openings.";
    var words = new StringBuilder("Seen from outside, from the left: ");
    for (var c : cuts) words.append(inWords(c.opening())).append("; ");
    return words.substring(0, words.length() - 2) + ".";
  }

  private String inWords(Opening o) {
    return o.id()
        + ", "
        + o.kind().label()
        + ", "
        + size(o.width())
        + " by "
        + size(o.height())
        + " "
        + Words.sizeUnit(units)
        + ", sill "
        + size(o.sill())
        + " "
        + Words.sizeUnit(units)
        + " above the floor";
  }

  private String size(cornerpost.trace.Figure length) {
    return Words.size(length.value(), units);
  }

  private void cargoDoors(double top) {
    double half = run() / 2;
    svg.rect("door-leaf", 90, top + 120, half - 100, box.height() - 240);
    svg.rect("door-leaf", half + 10, top + 120, half - 100, box.height() - 240);
  }

  private void legs(double under, double ground) {
    var site = scope.site();
    if (ground <= under || site.find(SiteQuestions.SUPPORTS_A_SIDE).isEmpty()) return;
    double size = Placed.mm(site.figure(SiteQuestions.PIER_WIDTH));
    boolean side = wall == Wall.LEFT || wall == Wall.RIGHT;
    var kind = site.option(SiteQuestions.FOUNDATION, Foundation.class);
    if (side && (kind == Foundation.STRIPS || kind == Foundation.SKIDS)) {
      svg.rect("support", 0, under, run(), ground - under);
      return;
    }
    int count = side ? site.whole(SiteQuestions.SUPPORTS_A_SIDE) : 2;
    double inset = side ? FloorPlan.CORNER_U : FloorPlan.CORNER_V;
    for (int i = 0; i < count; i++) {
      double x = inset + i * (run() - 2 * inset) / (count - 1);
      svg.rect("support", x - size / 2, under, size, ground - under);
    }
  }

  private Placed.Patch hole(Cut cut) {
    var o = cut.opening();
    double h = Placed.mm(o.height());
    return new Placed.Patch(left(cut), -Placed.mm(o.sill()) - h, Placed.mm(o.width()), h);
  }

  /** The middle of its foot: in the opening, or beside one that is too small, on nothing drawn. */
  private double[] nameAt(Opening o, Placed.Patch p) {
    double middle = p.u() + p.du() / 2;
    double half = p.dv() / 2 + text * 0.35;
    if (p.du() > text * 3 && p.dv() > text * 2) return new double[] {middle, p.v() + half};
    double aside = p.du() / 2 + Crowd.wide(o.id(), text) / 2 + text * 0.15;
    double[][] places = {
      {middle, p.v() - text * 0.4},
      {middle, p.v() + p.dv() + text * 1.05},
      {middle + aside, p.v() + half},
      {middle - aside, p.v() + half},
      {middle + aside, p.v() - text * 0.4},
      {middle - aside, p.v() - text * 0.4},
      {middle + aside, p.v() + p.dv() + text * 1.05},
      {middle - aside, p.v() + p.dv() + text * 1.05}
    };
    for (var at : places) {
      var covered = Crowd.text(o.id(), at[0], at[1], text);
      if (!crowd.clear(covered)) continue;
      crowd.take(covered);
      return at;
    }
    return places[0];
  }

  private void opening(Cut cut) {
    var o = cut.opening();
    var p = hole(cut);
    double x = p.u();
    double w = p.du();
    double h = p.dv();
    double y = p.v();
    svg.open("g", "data-opening", o.id());
    svg.rect("cut", x, y, w, h);
    boolean glazed =
        o.kind() == OpeningKind.WINDOW
            || o.kind() == OpeningKind.SLIDING_DOOR
            || o.kind() == OpeningKind.GLAZED_DOOR;
    double frame = Math.min(60, Math.min(w, h) / 6);
    if (glazed) svg.rect("pane", x + frame, y + frame, w - 2 * frame, h - 2 * frame);
    if (o.kind() == OpeningKind.SLIDING_DOOR) svg.line("glass", x + w / 2, y, x + w / 2, y + h);
    if (FloorPlan.isDoor(o.kind())) {
      svg.add("circle", "class", "knob", "cx", x + w - 100, "cy", y + h / 2, "r", 35.0);
    }
    var at = nameAt(o, p);
    svg.text(
        "text",
        o.id(),
        "class",
        "opening-name",
        "font-size",
        text,
        "text-anchor",
        "middle",
        "x",
        at[0],
        "y",
        at[1]);
    svg.close("g");
  }

  /** Along the wall: what stays, what is cut, what stays; vents and sleeves left aside. */
  private void chain(double y) {
    double at = 0;
    for (var c : cuts) {
      var o = c.opening();
      if (o.kind() == OpeningKind.VENT || o.kind() == OpeningKind.SLEEVE) continue;
      double x = left(c);
      if (x > at) piece(at, x, y);
      piece(x, x + Placed.mm(o.width()), y);
      at = Math.max(at, x + Placed.mm(o.width()));
    }
    if (run() - at > 0.5) piece(at, run(), y);
  }

  private void piece(double from, double to, double y) {
    double t = text * 0.4;
    svg.line("dim-line", from, y, to, y);
    svg.line("dim-line", from - t, y + t, from + t, y - t);
    svg.line("dim-line", to - t, y + t, to + t, y - t);
    var words = Words.size(BigDecimal.valueOf((to - from) / 1000), units);
    double middle = (from + to) / 2;
    boolean narrow = to - from < words.length() * text * 0.62;
    if (narrow) {
      double below = y + text * 0.7;
      svg.text(
          "text",
          words,
          "class",
          "dim",
          "font-size",
          text,
          "text-anchor",
          "start",
          "x",
          middle - text * 0.35,
          "y",
          below,
          "transform",
          "rotate(90 " + Svg.number(middle - text * 0.35) + " " + Svg.number(below) + ")");
    } else {
      svg.text(
          "text",
          words,
          "class",
          "dim",
          "font-size",
          text,
          "text-anchor",
          "middle",
          "x",
          middle,
          "y",
          y + text * 1.3);
    }
  }

  /** The height of the box, and that of its floor above the ground. */
  private void heights(double top, double under, double ground, boolean grounded) {
    double x = -text * 1.6;
    upright(x, top, under);
    if (grounded && ground > text) upright(x - text * 1.7, 0, ground);
  }

  private void upright(double x, double from, double to) {
    double t = text * 0.4;
    svg.line("dim-line", x, from, x, to);
    svg.line("dim-line", x - t, from + t, x + t, from - t);
    svg.line("dim-line", x - t, to + t, x + t, to - t);
    double middle = (from + to) / 2;
    svg.text(
        "text",
        Words.size(BigDecimal.valueOf((to - from) / 1000), units),
        "class",
        "dim",
        "font-size",
        text,
        "text-anchor",
        "middle",
        "x",
        x - text * 0.4,
        "y",
        middle,
        "transform",
        "rotate(-90 " + Svg.number(x - text * 0.4) + " " + Svg.number(middle) + ")");
  }
}

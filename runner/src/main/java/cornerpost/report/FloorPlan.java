package cornerpost.report;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.CargoDoors;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.Foundation;
import cornerpost.scope.Joint;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Scope;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Wall;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The floor plan of one level, to scale in millimetres: shell, rooms, partitions, openings,
 * supports and deck where the choices put them. Fittings are examples, and inner doors stand in the
 * middle of their partition: nobody chose their places.
 */
final class FloorPlan {
  /** Half of a corner fitting of 178 x 162 mm: ISO 1161:2016. A corner support stands under it. */
  static final double CORNER_U = 89;

  static final double CORNER_V = 81;

  private static final double PARTITION = 90;
  private static final double INNER_DOOR = 800;
  private static final int MOST_ROUNDS = 4;

  private final Scope scope;
  private final UnitSystem units;
  private final List<Placed> boxes;
  private final int level;
  private final Optional<Double> stripWidth;
  private final Extent shell = new Extent();
  private Outdoors outdoors;
  private double small;
  private double large;
  private Svg svg;

  /**
   * @param stripWidth measured width of strip footings, mm; where there are none, empty
   */
  FloorPlan(Scope scope, List<Placed> all, int level, Optional<Double> stripWidth) {
    this.stripWidth = stripWidth;
    this.scope = scope;
    this.units = scope.units();
    this.boxes = all.stream().filter(b -> b.level() == level).toList();
    this.level = level;
  }

  /** The drawing, and the name of the scale it prints at. */
  record Drawing(String svg, String scale) {}

  Drawing draw() {
    for (var b : boxes) shell.add(b, 0, 0, b.length(), b.width());
    var built = new Extent();
    built.add(shell.left, shell.top);
    built.add(shell.right, shell.bottom);
    for (var b : boxes) if (hasDeck(b)) built.add(b, deckPatch(b));
    var scale = DrawingScale.of(built.width() + 2600, units);
    Extent page = null;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      page = draw(scale);
      var needed = DrawingScale.of(page.width(), units);
      if (needed.ratio() <= scale.ratio()) {
        scale = new DrawingScale(scale.ratio(), scale.name(), page.width());
        break;
      }
      scale = needed; // the names grow with the scale, and may again need more room
    }
    var named = level == 0 ? "Floor plan" : "Floor plan, level " + (level + 1);
    var picture =
        Svg.picture(
            "plan-" + level, page.viewBox(), "drawing", scale.style(), named, description());
    return new Drawing(picture.add(svg).done(), scale.name());
  }

  /** Draws everything for a scale, and tells how large the picture is. */
  private Extent draw(DrawingScale scale) {
    svg = new Svg();
    outdoors = new Outdoors(boxes);
    small = scale.points(6.2);
    large = scale.points(7.6);
    for (var b : boxes) if (hasDeck(b)) outdoors.deck(b, deckPatch(b));
    for (var b : boxes) swings(b).forEach(swept -> outdoors.take(b, swept));
    for (var b : boxes) box(b);
    var reach = outdoors.reach();
    var page = new Extent();
    page.add(reach.left - small * 2, overall(reach));
    page.add(across(reach), bar(reach));
    return page;
  }

  private String description() {
    var text = new StringBuilder();
    for (var b : boxes) {
      text.append("Box ").append(b.box().id()).append(", ").append(b.box().size().label());
      text.append(", from the door end: ");
      for (var bay : b.bays(scope)) {
        text.append(bay.room().id())
            .append(", ")
            .append(length(bay.to() - bay.from()))
            .append("; ");
      }
      text.append(scope.openingsOf(b.box()).size()).append(" openings. ");
    }
    return text.toString().strip();
  }

  private String length(double mm) {
    return Words.length(BigDecimal.valueOf(mm / 1000), units);
  }

  private void box(Placed b) {
    svg.open(
        "g",
        "data-box",
        b.box().id(),
        "transform",
        "translate("
            + Svg.number(b.ground().x())
            + " "
            + Svg.number(b.ground().y())
            + ") rotate("
            + Svg.number(-b.ground().rotation())
            + ")");
    supports(b);
    deck(b);
    svg.rect("shell", 0, 0, b.length(), b.width(), "data-shell", b.box().id());
    svg.rect("inside", b.endWall(), b.sideWall(), b.insideLength(), b.insideWidth());
    var bays = b.bays(scope);
    var crowd = new Crowd();
    for (int i = 0; i + 1 < bays.size(); i++) crowd.take(partitionPatch(b, bays.get(i)));
    swings(b).forEach(crowd::take);
    boolean chained = chain(b, bays);
    for (int i = 0; i + 1 < bays.size(); i++) innerDoor(b, bays.get(i), crowd);
    Fittings.beforeDoors(scope, b).forEach(crowd::walk);
    for (var bay : bays) room(b, bay, crowd);
    for (int i = 0; i + 1 < bays.size(); i++) partition(b, bays.get(i));
    cargoDoors(b);
    new OpeningSymbols(svg, b, small, crowd, outdoors).draw(scope.openingsOf(b.box()));
    var names = new PlanNames(svg, b, crowd, outdoors, large, small);
    if (hasDeck(b)) {
      var p = deckPatch(b);
      names.deck(p, length(Math.max(p.du(), p.dv())) + " × " + length(Math.min(p.du(), p.dv())));
    }
    for (var bay : bays) {
      names.room(bay, PARTITION / 2, chained ? "" : length(bay.to() - bay.from()));
    }
    svg.close("g");
  }

  private void room(Placed b, Placed.Bay bay, Crowd crowd) {
    svg.open("g", "data-room", bay.room().id());
    svg.rect("room", bay.from(), b.sideWall(), bay.to() - bay.from(), b.insideWidth());
    new Fittings(scope, b, svg, crowd).draw(bay);
    svg.close("g");
  }

  /** What the outside doors of a box swing over. */
  private List<Placed.Patch> swings(Placed b) {
    return scope.openingsOf(b.box()).stream()
        .flatMap(o -> OpeningSymbols.swing(b, o).stream())
        .toList();
  }

  /** What parts a room from the next; an open edge is but a line. */
  private static Placed.Patch partitionPatch(Placed b, Placed.Bay bay) {
    double thick = bay.room().towardsNext() == DoorToNext.OPEN ? 20 : PARTITION;
    return new Placed.Patch(bay.to() - thick / 2, b.sideWall(), thick, b.insideWidth());
  }

  /** What an inner door swings over or slides before, and the floor on both sides of it. */
  private void innerDoor(Placed b, Placed.Bay bay, Crowd crowd) {
    double a = b.width() / 2 - INNER_DOOR / 2;
    double step = INNER_DOOR / 2 + 200;
    switch (bay.room().towardsNext()) {
      case WALL -> {}
      case OPEN, POCKET -> crowd.walk(new Placed.Patch(bay.to() - step, a, 2 * step, INNER_DOOR));
      case SLIDING -> {
        crowd.walk(new Placed.Patch(bay.to() - step, a, 2 * step, INNER_DOOR));
        crowd.take(new Placed.Patch(bay.to(), a - 700, PARTITION + 60, 800));
      }
      case HINGED -> {
        crowd.walk(new Placed.Patch(bay.to() - step, a, step, INNER_DOOR));
        crowd.take(new Placed.Patch(bay.to(), a, INNER_DOOR, INNER_DOOR));
      }
    }
  }

  /** Text that stands upright however the box lies. */
  private void label(Placed b, double u, double v, String cssClass, double size, String text) {
    double turn = ((b.ground().rotation() % 360) + 360) % 360;
    double upright = turn > 90.5 && turn < 270.5 ? 180 : 0;
    svg.text(
        "text",
        text,
        "class",
        cssClass,
        "font-size",
        size,
        "text-anchor",
        "middle",
        "x",
        u,
        "y",
        v,
        "transform",
        upright == 0 ? "" : "rotate(180 " + Svg.number(u) + " " + Svg.number(v) + ")");
  }

  private void partition(Placed b, Placed.Bay bay) {
    var door = bay.room().towardsNext();
    double from = b.sideWall();
    double to = b.width() - b.sideWall();
    double u = bay.to() - PARTITION / 2;
    if (door == DoorToNext.OPEN) {
      svg.line("open-edge", bay.to(), from, bay.to(), to);
      return;
    }
    if (door == DoorToNext.WALL) {
      svg.rect("partition", u, from, PARTITION, to - from, "data-partition", bay.room().id());
      return;
    }
    double a = b.width() / 2 - INNER_DOOR / 2;
    double z = a + INNER_DOOR;
    svg.rect("partition", u, from, PARTITION, a - from, "data-partition", bay.room().id());
    svg.rect("partition", u, z, PARTITION, to - z);
    if (door == DoorToNext.HINGED) {
      svg.line("leaf", bay.to(), a, bay.to() + INNER_DOOR, a);
      svg.add(
          "path",
          "class",
          "swing",
          "d",
          "M"
              + Svg.number(bay.to() + INNER_DOOR)
              + " "
              + Svg.number(a)
              + " A"
              + INNER_DOOR
              + " "
              + INNER_DOOR
              + " 0 0 1 "
              + Svg.number(bay.to())
              + " "
              + Svg.number(z));
    } else if (door == DoorToNext.SLIDING) {
      svg.line("leaf", u + PARTITION + 40, a - 700, u + PARTITION + 40, a + 100);
      svg.line("swing", bay.to(), a, bay.to(), z);
    } else {
      svg.line("swing", bay.to(), a - 700, bay.to(), z);
      svg.line("leaf", bay.to(), a - 700, bay.to(), a + 100);
    }
  }

  private void cargoDoors(Placed b) {
    var doors = b.box().cargoDoors();
    double half = b.width() / 2;
    if (doors == CargoDoors.REMOVE) {
      svg.line("open-edge", 0, b.sideWall(), 0, b.width() - b.sideWall());
      return;
    }
    svg.rect("cargo-door", -55, 20, 55, half - 30);
    svg.rect("cargo-door", -55, half + 10, 55, half - 30);
  }

  // ---- what it stands on, and the deck ----------------------------------------------------

  private void supports(Placed b) {
    var site = scope.site();
    if (b.box().joint() == Joint.STACKED || site.find(SiteQuestions.FOUNDATION).isEmpty()) return;
    var kind = site.option(SiteQuestions.FOUNDATION, Foundation.class);
    double size = Placed.mm(site.figure(SiteQuestions.PIER_WIDTH));
    if (kind == Foundation.SLAB || kind == Foundation.RAFT) {
      svg.rect("support", 0, 0, b.length(), b.width(), "data-support", b.box().id());
      return;
    }
    for (double v : rows(b)) {
      if (kind == Foundation.STRIPS || kind == Foundation.SKIDS) {
        double wide = kind == Foundation.STRIPS ? stripWidth.orElse(size) : size;
        svg.rect("support", 0, v - wide / 2, b.length(), wide, "data-support", b.box().id());
      } else {
        boolean round = kind == Foundation.SCREW_PILES || kind == Foundation.DRIVEN_PILES;
        row(b, v, site.whole(SiteQuestions.SUPPORTS_A_SIDE), size, round);
      }
    }
  }

  /** Under both long sides; boxes side by side share a row under their joint, drawn once. */
  private List<Double> rows(Placed b) {
    var rows = new ArrayList<Double>();
    for (boolean left : new boolean[] {true, false}) {
      var beside = b.ground().onPlot(b.length() / 2, left ? -200 : b.width() + 200);
      var other =
          boxes.stream().filter(o -> o != b && o.ground().covers(beside[0], beside[1])).findFirst();
      if (other.isEmpty()) rows.add(left ? CORNER_V : b.width() - CORNER_V);
      else if (boxes.indexOf(other.get()) > boxes.indexOf(b)) rows.add(left ? 0 : b.width());
    }
    return rows;
  }

  private void row(Placed b, double v, int count, double size, boolean round) {
    for (int i = 0; i < count; i++) {
      double u = CORNER_U + i * (b.length() - 2 * CORNER_U) / (count - 1);
      if (round) {
        svg.add(
            "circle",
            "class",
            "support",
            "cx",
            u,
            "cy",
            v,
            "r",
            size / 2,
            "data-support",
            b.box().id());
      } else {
        svg.rect("support", u - size / 2, v - size / 2, size, size, "data-support", b.box().id());
      }
    }
  }

  private boolean hasDeck(Placed b) {
    var deck = scope.deckAndRoof();
    if (deck.find(DeckAndRoofQuestions.DECK).isEmpty() || !deck.yes(DeckAndRoofQuestions.DECK)) {
      return false;
    }
    var at = deck.findText(DeckAndRoofQuestions.DECK_BOX);
    var id = at.orElseGet(() -> scope.boxes().get(0).id());
    return b.box().id().equals(id);
  }

  /** From the door-end corner of its side on; on an end wall from its left corner. */
  private Placed.Patch deckPatch(Placed b) {
    var deck = scope.deckAndRoof();
    double l = Placed.mm(deck.figure(DeckAndRoofQuestions.DECK_LENGTH));
    double d = Placed.mm(deck.figure(DeckAndRoofQuestions.DECK_DEPTH));
    return switch (deck.option(DeckAndRoofQuestions.DECK_SIDE, Wall.class)) {
      case LEFT -> new Placed.Patch(0, -d, l, d);
      case RIGHT, ROOF -> new Placed.Patch(0, b.width(), l, d);
      case DOOR_END -> new Placed.Patch(-d, 0, d, l);
      case BLIND_END -> new Placed.Patch(b.length(), b.width() - l, d, l);
    };
  }

  private void deck(Placed b) {
    if (!hasDeck(b)) return;
    var p = deckPatch(b);
    svg.rect("deck", p.u(), p.v(), p.du(), p.dv(), "data-deck", b.box().id());
  }

  // ---- dimensions -------------------------------------------------------------------------

  /** Lengths of the rooms along the left side, unless another box or a deck lies there. */
  private boolean chain(Placed b, List<Placed.Bay> bays) {
    double v = -small * 2.1;
    var strip = new Placed.Patch(10, v - small * 2, b.length() - 20, small * 3);
    if (bays.isEmpty() || !outdoors.open(b, strip)) return false;
    outdoors.take(b, new Placed.Patch(0, v - small * 0.2, b.length(), small * 0.6));
    for (var bay : bays) {
      svg.line("dim-line", bay.from(), v, bay.to(), v);
      tick(bay.from(), v);
      tick(bay.to(), v);
      var text = length(bay.to() - bay.from());
      double foot = v - small * 0.45;
      // the length of a short room is wider than the room, and then stands above its neighbours'
      while (!outdoors.free(b, Crowd.text(text, bay.middle(), foot, small))) foot -= small * 1.1;
      outdoors.take(b, Crowd.text(text, bay.middle(), foot, small));
      label(b, bay.middle(), foot, "dim", small, text);
    }
    return true;
  }

  private void tick(double x, double y) {
    double t = small * 0.4;
    svg.line("dim-line", x - t, y + t, x + t, y - t);
  }

  /** The whole length above everything; its upper end. */
  private double overall(Extent reach) {
    double y = reach.top - small * 1.2;
    svg.line("dim-line", shell.left, y, shell.right, y);
    tick(shell.left, y);
    tick(shell.right, y);
    svg.text(
        "text",
        length(shell.width()),
        "class",
        "dim",
        "font-size",
        small,
        "text-anchor",
        "middle",
        "x",
        (shell.left + shell.right) / 2,
        "y",
        y - small * 0.4);
    return y - small * 2.2;
  }

  /** The whole depth to the right of everything; its right end. */
  private double across(Extent reach) {
    double x = reach.right + small * 2;
    double middle = (shell.top + shell.bottom) / 2;
    svg.line("dim-line", x, shell.top, x, shell.bottom);
    tick(x, shell.top);
    tick(x, shell.bottom);
    double foot = x + small * 1.2;
    svg.text(
        "text",
        length(shell.height()),
        "class",
        "dim",
        "font-size",
        small,
        "text-anchor",
        "middle",
        "x",
        foot,
        "y",
        middle,
        "transform",
        "rotate(90 " + Svg.number(foot) + " " + Svg.number(middle) + ")");
    return x + small * 3;
  }

  /** A bar of five metres, or of fifteen feet, below everything; its lower end. */
  private double bar(Extent reach) {
    double unit = units == UnitSystem.METRIC ? 1000 : 3 * 304.8;
    double y = reach.bottom + small * 2;
    for (int i = 0; i < 5; i++) {
      svg.rect(i % 2 == 0 ? "scale-on" : "scale-off", shell.left + i * unit, y, unit, small * 0.5);
    }
    svg.text(
        "text",
        units == UnitSystem.METRIC ? "0 to 5 m" : "0 to 15 ft",
        "class",
        "dim",
        "font-size",
        small,
        "x",
        shell.left,
        "y",
        y + small * 1.8);
    return y + small * 2.6;
  }

  static boolean isDoor(OpeningKind kind) {
    return kind == OpeningKind.DOOR || kind == OpeningKind.GLAZED_DOOR;
  }
}

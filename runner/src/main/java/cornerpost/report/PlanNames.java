package cornerpost.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Names in the floor plan of a box: each inside its own room, on nothing that is drawn. Where there
 * is no such place it is said with fewer words, smaller, or up the page; where even that finds
 * none, it stands outside the box and a line leads to the room.
 */
final class PlanNames {
  private static final double FROM_WALL = 40;
  private static final double SMALLER = 0.82;
  private static final int STEPS = 16;
  private static final int FARTHEST = 40;

  private final Svg svg;
  private final Placed box;
  private final Crowd crowd;
  private final Outdoors outdoors;
  private final double large;
  private final double small;

  PlanNames(Svg svg, Placed box, Crowd crowd, Outdoors outdoors, double large, double small) {
    this.svg = svg;
    this.box = box;
    this.crowd = crowd;
    this.outdoors = outdoors;
    this.large = large;
    this.small = small;
  }

  /**
   * @param halfPartition what a partition takes of the room at either end, mm
   * @param length of the room in words, where no chain of dimensions says it; else empty
   */
  void room(Placed.Bay bay, double halfPartition, String length) {
    var id = bay.room().id();
    var use = bay.room().use().label();
    var room =
        new Placed.Patch(
            bay.from() + halfPartition + FROM_WALL,
            box.sideWall() + FROM_WALL,
            bay.to() - bay.from() - 2 * (halfPartition + FROM_WALL),
            box.insideWidth() - 2 * FROM_WALL);
    var blocks = blocks(id, use.equalsIgnoreCase(id) ? "" : use, length);
    svg.open("g", "data-name", id);
    var inside = inside(blocks, room);
    if (inside.isPresent()) put(inside.get());
    else led(id, blocks.get(0), room);
    svg.close("g");
  }

  private void put(Spot spot) {
    crowd.take(spot.at());
    spot.block().draw(svg, spot.at(), box.ground().rotation());
  }

  /** A deck says what it is inside its outline. */
  void deck(Placed.Patch deck, String size) {
    var lines = List.of(List.of("Deck " + size), List.of("Deck", size), List.of("Deck"));
    var blocks = new ArrayList<TextBlock>();
    for (boolean turned : new boolean[] {false, true}) {
      for (var l : lines) {
        blocks.add(
            new TextBlock(
                l.stream().map(t -> new TextBlock.Line("aside on-deck", small, t)).toList(),
                turned));
      }
    }
    inside(blocks, deck)
        .ifPresent(
            spot -> {
              put(spot);
              outdoors.take(box, spot.at());
            });
  }

  // ---- ways to say it ----------------------------------------------------------------------

  /** From the fullest to the least; the first of all is the one that stands outside. */
  private List<TextBlock> blocks(String id, String use, String length) {
    var blocks = new ArrayList<TextBlock>();
    for (boolean turned : new boolean[] {false, true}) {
      for (double size : new double[] {1, SMALLER}) {
        for (var name : List.of(List.of(id), broken(id))) {
          for (var under : List.of(List.of(use, length), List.of(length), List.of(use))) {
            blocks.add(block(name, under, size, turned));
          }
        }
      }
    }
    // the length is the last to go: nothing else says it
    for (double size : new double[] {1, SMALLER}) {
      for (boolean turned : new boolean[] {false, true}) {
        blocks.add(block(List.of(id), List.of(), size, turned));
        blocks.add(block(broken(id), List.of(), size, turned));
      }
    }
    return blocks;
  }

  private TextBlock block(List<String> name, List<String> under, double size, boolean turned) {
    var lines = new ArrayList<TextBlock.Line>();
    for (var n : name) lines.add(new TextBlock.Line("room-name", large * size, n));
    for (var u : under) {
      if (!u.isEmpty()) lines.add(new TextBlock.Line("aside", small * size, u));
    }
    return new TextBlock(lines, turned);
  }

  /** In two lines of about one length, where the name has a space. */
  private static List<String> broken(String name) {
    int best = -1;
    for (int i = name.indexOf(' '); i >= 0; i = name.indexOf(' ', i + 1)) {
      if (best < 0 || Math.abs(2 * i - name.length()) < Math.abs(2 * best - name.length())) {
        best = i;
      }
    }
    return best < 0 ? List.of(name) : List.of(name.substring(0, best), name.substring(best + 1));
  }

  // ---- places ------------------------------------------------------------------------------

  private record Spot(TextBlock block, Placed.Patch at) {}

  private Optional<Spot> inside(List<TextBlock> blocks, Placed.Patch room) {
    for (var block : blocks) {
      double roomU = (room.du() - block.du()) / 2;
      double roomV = (room.dv() - block.dv()) / 2;
      if (roomU < 0 || roomV < 0) continue;
      var at = crowd.firstClear(places(block, room, roomU, roomV));
      if (at.isPresent()) return Optional.of(new Spot(block, at.get()));
    }
    return Optional.empty();
  }

  /** Round the rim of a rectangle that grows from the middle to the walls. */
  private static List<Placed.Patch> places(
      TextBlock block, Placed.Patch room, double roomU, double roomV) {
    double u = room.u() + room.du() / 2;
    double v = room.v() + room.dv() / 2;
    var places = new ArrayList<Placed.Patch>();
    for (int away = 0; away <= STEPS; away++) {
      double share = (double) away / STEPS;
      for (int i = -away; i <= away; i++) {
        double turn = away == 0 ? 0 : (double) i / STEPS;
        places.add(block.around(u + share * roomU, v + turn * roomV));
        places.add(block.around(u - share * roomU, v + turn * roomV));
        places.add(block.around(u + turn * roomU, v + share * roomV));
        places.add(block.around(u + turn * roomU, v - share * roomV));
      }
    }
    return places;
  }

  /** Outside beyond the nearer free side, with a line from the room. */
  private void led(String id, TextBlock block, Placed.Patch room) {
    double u = room.u() + room.du() / 2;
    double v = box.width() / 2;
    for (int row = 1; row <= FARTHEST; row++) {
      for (int aside = 0; aside <= 8; aside++) {
        for (int sign : new int[] {1, -1}) {
          double along = u + sign * aside * large;
          double away = box.width() / 2 + row * large + block.dv() / 2;
          for (double to : new double[] {v + away, v - away}) {
            var at = block.around(along, to);
            if (!crowd.clear(at) || !outdoors.open(box, at)) continue;
            crowd.take(at);
            outdoors.take(box, at);
            double end = to > v ? at.v() : at.v() + at.dv();
            svg.add(
                "line",
                "class",
                "leader",
                "data-leader",
                id,
                "x1",
                u,
                "y1",
                v,
                "x2",
                along,
                "y2",
                end);
            svg.add("circle", "class", "leader-end", "cx", u, "cy", v, "r", small * 0.18);
            block.draw(svg, at, box.ground().rotation());
            return;
          }
        }
      }
    }
    block.draw(
        svg,
        block.around(u, v),
        box.ground().rotation()); // boxes on all sides: better there than not
  }
}

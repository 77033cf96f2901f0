package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.FLOOR_TILES;
import static cornerpost.takeoff.BuildTask.PLUMBING_SECOND;
import static cornerpost.takeoff.BuildTask.WALL_TILES;
import static cornerpost.takeoff.BuildTask.WATERPROOF;

import cornerpost.measure.Unit;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.Standard;
import cornerpost.scope.Washing;
import cornerpost.scope.WetFloor;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Bathrooms: waterproofing of floor and tiled walls, tiles with adhesive and grout, and what is
 * fitted. Windows are not taken off the wall tiles: their reveals take as many. Grout for each area
 * is (L + W) / (L x W) x depth x joint x density, the makers' common formula.
 */
final class WetRooms implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FINISHES);
    var rooms = in.bathrooms();
    if (rooms.isEmpty()) return out.lines();
    var finishes = job.scope().finishes();
    boolean tiled = finishes.option(FinishesQuestions.WET_FLOOR, WetFloor.class) == WetFloor.TILE;
    var floor =
        out.add(
            "wet-rooms/all/floor-area",
            "Bathroom floors",
            Inside.areas(rooms.stream().map(in::area).toList()),
            job.area(),
            "clear area of each bathroom");
    var walls =
        out.add(
            "wet-rooms/all/wall-tiles",
            "Wall tiles in bathrooms",
            wallTileArea(job, in),
            job.area(),
            "wall line less the door x tile height",
            Buy.of("tile-wall", job.fact("waste.tile"), WALL_TILES),
            Labour.of("lay-wall-tiles", WALL_TILES));
    var rounds = Inside.lengths(rooms.stream().map(in::wallLine).toList());
    var sealed =
        out.add(
            "wet-rooms/all/waterproof-area",
            "Waterproofing under tiles and up the walls",
            floor.plus(walls).max(floor.plus(rounds.times(job.fact("waterproofing.upstand")))),
            job.area(),
            "floor + tiled walls, at least the upstand all round",
            Labour.of("waterproof", WATERPROOF));
    out.add(
        "wet-rooms/all/waterproofing",
        "Waterproofing, two coats",
        sealed.times(job.fact("waterproofing.per-area")),
        job.mass(),
        "area x mass for each area",
        Buy.of("waterproofing", job.fact("waste.paint"), WATERPROOF));
    out.add(
        "wet-rooms/all/waterproof-tape",
        "Waterproofing tape in corners",
        rounds,
        job.length(),
        "wall line of each bathroom",
        Buy.of("waterproofing-tape", job.fact("waste.membrane"), WATERPROOF));
    var tiles = walls;
    if (tiled) {
      out.add(
          "wet-rooms/all/floor-tiles",
          "Floor tiles in bathrooms",
          floor,
          job.area(),
          "bathroom floors",
          Buy.of("tile-floor", job.fact("waste.tile"), FLOOR_TILES),
          Buy.of("tile-backer", job.fact("waste.sheet"), FLOOR_TILES),
          Labour.of("lay-floor-tiles", FLOOR_TILES));
      tiles = walls.plus(floor);
    } else {
      out.add(
          "wet-rooms/all/sheet-vinyl",
          "Sheet vinyl in bathrooms",
          floor,
          job.area(),
          "bathroom floors",
          Buy.of("floor-sheet-vinyl", job.fact("waste.flooring"), FLOOR_TILES),
          Labour.of("lay-sheet-vinyl", FLOOR_TILES));
    }
    adhesive(job, out, "wet-rooms/all/", tiles, WALL_TILES);
    out.add(
        "wet-rooms/all/sealant",
        "Sanitary sealant",
        rounds,
        job.length(),
        "wall line of each bathroom",
        Buy.of("sealant-sanitary", job.fact("waste.fixings"), WALL_TILES));
    fittings(job, out, rooms.size());
    return out.lines();
  }

  /** Wall line less the door, times the tile height; nothing where there is no bathroom. */
  static Figure wallTileArea(Job job, Inside in) {
    var height = job.scope().finishes().figure(FinishesQuestions.WALL_TILE_HEIGHT);
    var terms = new ArrayList<Figure>();
    for (var room : in.bathrooms()) {
      long doors = in.partitions(room).stream().filter(Inside.Partition::hasDoor).count();
      var line = in.wallLine(room);
      if (doors > 0) line = line.minus(job.fact("inner-door.opening-width").times(doors));
      terms.add(line.atLeastZero().times(height.min(in.height(room))));
    }
    return Inside.areas(terms);
  }

  static void adhesive(Job job, Tally out, String id, Figure tiles, BuildTask task) {
    out.add(
        id + "adhesive",
        "Tile adhesive",
        tiles.times(job.fact("tile.adhesive-per-area")),
        job.mass(),
        "tiled area x adhesive for each area",
        Buy.of("tile-adhesive", job.fact("waste.tile"), task));
    out.add(
        id + "grout",
        "Tile grout",
        tiles.times(groutPerArea(job)),
        job.mass(),
        "tiled area x (L + W) / (L x W) x depth x joint x density",
        Buy.of("tile-grout", job.fact("waste.tile"), task));
  }

  /** Mass of grout for an area of the tile in the table of facts. */
  static Figure groutPerArea(Job job) {
    var length = job.fact("tile.length");
    var width = job.fact("tile.width");
    return length
        .plus(width)
        .over(length.times(width))
        .times(job.fact("tile.depth"))
        .times(job.fact("tile.joint"))
        .times(job.fact("grout.density"));
  }

  private static void fittings(Job job, Tally out, int bathrooms) {
    var finishes = job.scope().finishes();
    var level =
        finishes
            .option(FinishesQuestions.BATHROOM_LEVEL, Standard.class)
            .name()
            .toLowerCase(Locale.ROOT);
    var washing = finishes.option(FinishesQuestions.WASHING, Washing.class);
    var count = Figure.count(bathrooms);
    fitting(out, "wc", "Water closets", count, "wc-" + level);
    fitting(out, "basin", "Basins with cabinet and tap", count, "basin-" + level);
    switch (washing) {
      case SHOWER ->
          fitting(out, "shower", "Showers: tray, screen, mixer", count, "shower-" + level);
      case BATH -> fitting(out, "bath", "Baths with screen and mixer", count, "bath-" + level);
    }
    out.add(
        "wet-rooms/fittings/accessories",
        "Mirror, rails, holders",
        count,
        Unit.EACH,
        "a set for each bathroom",
        Buy.of("bathroom-set-" + level, PLUMBING_SECOND),
        Labour.of("hang-accessories", PLUMBING_SECOND));
  }

  private static void fitting(Tally out, String what, String name, Figure count, String item) {
    out.add(
        "wet-rooms/fittings/" + what,
        name,
        count,
        Unit.EACH,
        "one for each bathroom; hours are with the plumbing",
        Buy.of(item, PLUMBING_SECOND));
  }
}

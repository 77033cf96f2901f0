package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.FLOORING;
import static cornerpost.takeoff.BuildTask.FLOOR_PREPARE;
import static cornerpost.takeoff.BuildTask.FLOOR_TILES;

import cornerpost.scope.ContainerFloor;
import cornerpost.scope.FloorFinish;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What is walked on in dry rooms, with underlay or backer; bathrooms are {@link WetRooms}. A box
 * without rooms is covered whole.
 */
final class Floors implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FINISHES);
    var finish = new FloorBuildUp(job).dry();
    var dry =
        job.scope().rooms().stream()
            .filter(r -> r.use() != RoomUse.BATHROOM)
            .map(in::area)
            .collect(Collectors.toCollection(ArrayList::new));
    for (var box : job.scope().boxes()) {
      if (job.scope().roomsOf(box).isEmpty()) {
        dry.add(in.clearLength(box).times(in.clearWidth(box)));
      }
    }
    overlay(job, in, out);
    if (dry.isEmpty()) return out.lines();
    var area =
        out.add(
            "floor/dry-rooms/area",
            "Floors of dry rooms",
            Inside.areas(dry),
            job.area(),
            "clear area of every room but bathrooms");
    var waste = job.fact("waste.flooring");
    var name = "Floor covering, " + finish.label();
    switch (finish) {
      case SEALED ->
          out.add(
              "floor/dry-rooms/lacquer",
              "Floor lacquer on the plywood, two coats",
              area.times(2).over(job.fact("floor.lacquer-coverage")),
              job.liquid(),
              "area x 2 coats / coverage",
              Buy.of("floor-lacquer", job.fact("waste.paint"), FLOORING));
      case VINYL, LAMINATE, WOOD -> {
        var code = finish.name().toLowerCase(Locale.ROOT);
        out.add(
            "floor/dry-rooms/covering",
            name,
            area,
            job.area(),
            "area",
            Buy.of("floor-" + code, waste, FLOORING),
            Labour.of("lay-plank-floor", FLOORING));
        out.add(
            "floor/dry-rooms/underlay",
            "Underlay",
            area,
            job.area(),
            "area",
            Buy.of("floor-underlay", waste, FLOORING));
      }
      case TILE -> {
        out.add(
            "floor/dry-rooms/covering",
            name,
            area,
            job.area(),
            "area",
            Buy.of("tile-floor", job.fact("waste.tile"), FLOOR_TILES),
            Buy.of("tile-backer", job.fact("waste.sheet"), FLOOR_TILES),
            Labour.of("lay-floor-tiles", FLOOR_TILES));
        WetRooms.adhesive(job, out, "floor/dry-rooms/", area, FLOOR_TILES);
      }
    }
    if (finish == FloorFinish.SEALED) {
      out.add(
          "floor/dry-rooms/lacquering",
          "Lacquer the plywood floor",
          area.times(2),
          job.area(),
          "area x 2 coats",
          Labour.of("lacquer-floor", FLOORING));
    }
    return out.lines();
  }

  /** A board over the container floor, so that nobody lives on its timber treatment. */
  private static void overlay(Job job, Inside in, Tally out) {
    var covered = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      if (box.floor() != ContainerFloor.OVERLAY) continue;
      var rooms = job.scope().roomsOf(box);
      if (rooms.isEmpty()) covered.add(in.clearLength(box).times(in.clearWidth(box)));
      for (var room : rooms) covered.add(in.area(room));
    }
    if (covered.isEmpty()) return;
    out.add(
        "floor/house/overlay",
        "Overlay board on the sealed container floor",
        Inside.areas(covered),
        job.area(),
        "clear area of the rooms in boxes whose floor is overlaid",
        Buy.of("floor-overlay-board", job.fact("waste.sheet"), FLOOR_PREPARE),
        Labour.of("lay-overlay-board", FLOOR_PREPARE));
  }
}

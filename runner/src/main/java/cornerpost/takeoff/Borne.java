package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Room;
import cornerpost.trace.Figure;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which box bears what a line measures. What is measured by box, opening, partition or joint stands
 * in that box. What is measured for the whole house is shared: kitchens and wet rooms by their area
 * in each box, the roof build by the plan of the boxes open to the sky, all else by inside floor.
 * The water heater and the panel stand in the first box, where the services enter.
 */
final class Borne {
  /** What is measured for more than one box at once. */
  enum Shared {
    HOUSE("house"),
    KITCHENS("kitchens"),
    WET_ROOMS("wet-rooms"),
    ROOF("roof");

    private final String id;

    Shared(String id) {
      this.id = id;
    }

    String id() {
      return id;
    }
  }

  private final Job job;
  private final Map<String, Box> byStem = new HashMap<>();
  private final Map<Shared, Map<String, Figure>> sizes = new HashMap<>();

  Borne(Job job) {
    this.job = job;
    var scope = job.scope();
    var shape = new Shape(job);
    for (var box : scope.boxes()) {
      byStem.put("box/" + box.id(), box);
      byStem.put("framing/" + box.id(), box);
      shape.joinedTo(box).ifPresent(o -> byStem.put("joint/" + box.id() + "-" + o.id(), box));
      shape.joinedTo(box).ifPresent(o -> byStem.put("stairwell/" + box.id(), o));
    }
    for (var o : scope.openings()) byStem.put("opening/" + o.id(), shape.boxOf(o));
    for (var r : scope.rooms()) {
      scope.box(r.box()).ifPresent(b -> byStem.put("partition/" + r.id(), b));
    }
    byStem.put("electrical/panel", scope.boxes().get(0));
    byStem.put("plumbing/house/water-heater", scope.boxes().get(0));
    var inside = new Inside(job);
    var floors = new LinkedHashMap<String, Figure>();
    var roofs = new LinkedHashMap<String, Figure>();
    for (var box : scope.boxes()) {
      floors.put(box.id(), shape.floorArea(box));
      if (shape.above(box).isEmpty()) roofs.put(box.id(), shape.planArea(box));
    }
    sizes.put(Shared.HOUSE, floors);
    sizes.put(Shared.ROOF, roofs);
    sizes.put(Shared.KITCHENS, areas(inside, inside.kitchens(), floors));
    sizes.put(Shared.WET_ROOMS, areas(inside, inside.bathrooms(), floors));
  }

  private Map<String, Figure> areas(
      Inside inside, List<Room> rooms, Map<String, Figure> otherwise) {
    var areas = new LinkedHashMap<String, Figure>();
    for (var r : rooms) {
      if (job.scope().box(r.box()).isEmpty()) continue;
      areas.merge(r.box(), inside.area(r), Figure::plus);
    }
    return areas.isEmpty() ? otherwise : areas;
  }

  /** The box that bears it alone. */
  Optional<Box> by(Line line) {
    var id = line.id();
    var whole = byStem.get(id);
    if (whole != null) return Optional.of(whole);
    int first = id.indexOf('/');
    int second = id.indexOf('/', first + 1);
    return Optional.ofNullable(byStem.get(second < 0 ? id : id.substring(0, second)));
  }

  /** How the boxes share what none bears alone. */
  static Shared sharing(Line line) {
    if (line.id().startsWith("kitchen/")) return Shared.KITCHENS;
    if (line.id().startsWith("wet-rooms/")) return Shared.WET_ROOMS;
    return line.id().startsWith("roof/") ? Shared.ROOF : Shared.HOUSE;
  }

  /** The part of a shared amount that a box bears; empty if it bears nothing of it. */
  Optional<Figure> part(Shared shared, Box box, Figure amount) {
    var all = sizes.get(shared);
    var own = all.get(box.id());
    if (own == null) return Optional.empty();
    if (all.size() == 1) return Optional.of(amount);
    return Optional.of(
        amount.times(own).over(Figure.sum(Dimension.AREA, List.copyOf(all.values()))));
  }
}

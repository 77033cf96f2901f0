package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.ELECTRICAL_FIRST;
import static cornerpost.takeoff.Inside.lengths;

import cornerpost.measure.Unit;
import cornerpost.scope.Cooking;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.HeatingCooling;
import cornerpost.scope.HotWater;
import cornerpost.scope.Joint;
import cornerpost.scope.Room;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Cable by the geometry: from the panel at the service end of the first box along to the middle of
 * each room and down to it, then on from point to point. A further box adds the width of each box
 * crossed on the way.
 */
final class Wiring implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.SERVICES);
    var power = new ArrayList<Figure>();
    var light = new ArrayList<Figure>();
    for (var room : job.scope().rooms()) {
      power.addAll(sockets(job, in, room));
      light.add(lights(job, in, room));
    }
    var s = job.scope().services();
    power.add(s.figure(ServicesQuestions.EXTRA_SOCKETS).times(toExtra(job)));
    power.add(
        out.add(
            "wiring/outside/sockets",
            "Cable to the sockets outside",
            outside(job, in),
            job.length(),
            "from the panel to the middle of the first box, across to both sides of the house, on"
                + " to the deck; through the wall and an end at each"));
    light.add(
        s.figure(ServicesQuestions.OUTSIDE_LIGHTS)
            .plus(job.measured("electrical/house/smoke-alarms"))
            .times(job.fact("cable.a-light")));
    var counter = job.scope().finishes().figure(FinishesQuestions.KITCHEN_RUN);
    // two circuits, each along the counter: sockets above it, appliances below
    for (var room : in.kitchens()) power.add(home(job, room).plus(counter).times(2));
    if (!in.kitchens().isEmpty()) {
      power.add(
          job.measured("electrical/kitchen/counter-sockets")
              .plus(job.measured("electrical/kitchen/appliance-sockets"))
              .times(job.fact("cable.slack-a-point")));
    }
    if (s.yes(ServicesQuestions.LAUNDRY) && !Plumbing.wetRooms(in).isEmpty()) {
      power.add(single(job, in, Plumbing.wetRooms(in).get(0)));
    }
    cable(job, out, "power", "Cable for sockets", lengths(power), "cable-power");
    cable(
        job, out, "light", "Cable for lights, switches and alarms", lengths(light), "cable-light");
    heavy(job, in, out);
    if (s.yes(ServicesQuestions.DATA)) {
      var data = new ArrayList<Figure>();
      for (var room : job.scope().rooms()) {
        if (ElectricalPoints.isLivedIn(room)) data.add(home(job, room));
      }
      if (!data.isEmpty()) {
        cable(job, out, "data", "Data cable", lengths(data), "cable-data");
      }
    }
    out.add(
        "wiring/house/grommets",
        "Grommets, clips and guard plates where cable passes metal or studs",
        job.measured("electrical/house/all-sockets").plus(job.measured("electrical/house/lights")),
        Unit.EACH,
        "NEC 300.4: a set for each point",
        Buy.of("cable-clips", job.fact("waste.fixings"), ELECTRICAL_FIRST));
    return out.lines();
  }

  /** Rows of their own, so that each run of cable points at them. */
  static List<Line> homeRuns(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.SERVICES);
    for (var room : job.scope().rooms()) {
      out.add(
          "room-cable/" + room.id() + "/home-run",
          room.id() + ", cable from the panel",
          homeRun(job, in, room),
          job.length(),
          "along the box to the middle of the room, up at the panel and down in the room");
    }
    return out.lines();
  }

  /** Round the walls of a room from socket to socket, or to the single points of a small one. */
  private static List<Figure> sockets(Job job, Inside in, Room room) {
    var count = job.measured("room-sockets/" + room.id() + "/count");
    return switch (room.use()) {
      case LIVING, LIVING_KITCHEN, BEDROOM, LIVING_SLEEPING ->
          List.of(
              home(job, room)
                  .plus(in.wallLine(room))
                  .plus(count.times(job.fact("cable.slack-a-point"))));
      case HALL, BATHROOM, UTILITY -> List.of(count.times(single(job, in, room)));
      case KITCHEN, STORE -> List.of();
    };
  }

  /**
   * To a single socket: from the middle of the room to its wall and along that by a quarter of the
   * room, the mean way to a point that may lie anywhere on it.
   */
  private static Figure single(Job job, Inside in, Room room) {
    return home(job, room)
        .plus(in.width(room).over(2))
        .plus(in.length(room).over(4))
        .plus(job.fact("cable.slack-a-point"));
  }

  /** An extra socket hangs on the cable round the rooms lived in; else on one to the first box. */
  private static Figure toExtra(Job job) {
    var end = job.fact("cable.slack-a-point");
    if (job.scope().rooms().stream().anyMatch(ElectricalPoints::isLivedIn)) return end;
    return toMiddle(job).plus(end);
  }

  private static Figure toMiddle(Job job) {
    return new Shape(job)
        .length(job.scope().boxes().get(0))
        .over(2)
        .plus(job.fact("cable.up-and-down"));
  }

  /**
   * One circuit: a socket on each long side of the house at the middle of the first box, the one of
   * the deck half the deck's length from that beside it.
   */
  private static Figure outside(Job job, Inside in) {
    var shape = new Shape(job);
    var way = toMiddle(job);
    for (var box : job.scope().boxes()) {
      boolean first = box.equals(job.scope().boxes().get(0));
      if (first || box.joint() == Joint.SIDE_BY_SIDE) way = way.plus(shape.width(box));
    }
    var deck = job.scope().deckAndRoof();
    if (deck.yes(DeckAndRoofQuestions.DECK)) {
      way = way.plus(deck.figure(DeckAndRoofQuestions.DECK_LENGTH).over(2));
    }
    return way.plus(
        job.measured("electrical/outside/sockets")
            .times(in.wallBuildUp().plus(job.fact("cable.slack-a-point"))));
  }

  /** Along the ceiling of a room, down to each switch, and the ends left at each light. */
  private static Figure lights(Job job, Inside in, Room room) {
    return home(job, room)
        .plus(in.length(room))
        .plus(in.height(room).times(ElectricalPoints.switches(room)))
        .plus(
            job.measured("room-lights/" + room.id() + "/count")
                .times(job.fact("cable.slack-a-point")));
  }

  private static Figure home(Job job, Room room) {
    return job.measured("room-cable/" + room.id() + "/home-run");
  }

  private static void cable(
      Job job, Tally out, String what, String name, Figure length, String item) {
    out.add(
        "wiring/house/" + what,
        name,
        length,
        job.length(),
        "from the panel to each room, round it and from point to point",
        Buy.of(item, job.fact("waste.cable"), ELECTRICAL_FIRST),
        Labour.of("pull-cable", ELECTRICAL_FIRST));
  }

  /** Cooker, water heater, split units and heaters each have a run of their own. */
  private static void heavy(Job job, Inside in, Tally out) {
    var s = job.scope().services();
    var runs = new ArrayList<Figure>();
    if (s.option(ServicesQuestions.COOKING, Cooking.class) == Cooking.ELECTRIC) {
      in.kitchens().forEach(r -> runs.add(home(job, r)));
    }
    if (s.option(ServicesQuestions.HOT_WATER, HotWater.class) != HotWater.GAS_INSTANT
        && !Plumbing.wetRooms(in).isEmpty()) {
      runs.add(home(job, Plumbing.wetRooms(in).get(0)));
    }
    if (s.option(ServicesQuestions.HEATING, HeatingCooling.class) != HeatingCooling.STOVE) {
      runs.add(s.figure(ServicesQuestions.HEADS).times(toHead(job)));
    }
    if (runs.isEmpty()) return;
    cable(
        job,
        out,
        "heavy",
        "Cable for cooker, water heater and heating",
        lengths(runs),
        "cable-heavy");
  }

  /** Indoor units hang in the rooms lived in: the mean of the ways to these. */
  private static Figure toHead(Job job) {
    var ways =
        job.scope().rooms().stream()
            .filter(ElectricalPoints::isLivedIn)
            .map(r -> home(job, r))
            .toList();
    if (!ways.isEmpty()) return lengths(ways).over(ways.size());
    return new Shape(job).length(job.scope().boxes().get(0)).over(2);
  }

  private static Figure homeRun(Job job, Inside in, Room room) {
    return in.fromServices(room)
        .plus(in.fromFirstBox(in.boxOf(room)))
        .plus(job.fact("cable.up-and-down"));
  }
}

package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.ELECTRICAL_FIRST;
import static cornerpost.takeoff.BuildTask.ELECTRICAL_SECOND;
import static cornerpost.takeoff.Inside.counts;

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
 * Socket outlets by the spacing rules of NFPA 70 (NEC) 210.52, lights by area, switches by room,
 * alarms by IRC R314 and R315. A budget, not a design: local codes and a licensed electrician
 * settle it.
 */
final class ElectricalPoints implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.SERVICES);
    sockets(job, in, out);
    lights(job, in, out);
    alarms(job, in, out);
    return out.lines();
  }

  private static void sockets(Job job, Inside in, Tally out) {
    var services = job.scope().services();
    var plain = new ArrayList<Figure>();
    var damp = new ArrayList<Figure>();
    for (var room : job.scope().rooms()) {
      var count = inRoom(job, in, room);
      var line =
          out.add(
              "room-sockets/" + room.id() + "/count",
              room.id() + ", wall sockets",
              count,
              Unit.EACH,
              because(room));
      switch (room.use()) {
        case BATHROOM, UTILITY -> damp.add(line);
        case LIVING, LIVING_KITCHEN, KITCHEN, BEDROOM, LIVING_SLEEPING, HALL, STORE ->
            plain.add(line);
      }
    }
    int kitchens = in.kitchens().size();
    if (kitchens > 0) {
      damp.add(
          out.add(
              "electrical/kitchen/counter-sockets",
              "Sockets over the kitchen counter",
              job.scope()
                  .finishes()
                  .figure(FinishesQuestions.KITCHEN_RUN)
                  .over(job.fact("socket.counter-spacing"))
                  .roundedUp()
                  .times(kitchens),
              Unit.EACH,
              "NEC 210.52(C)(1): none farther than 24 in, so one every 48 in of the run"));
      plain.add(
          out.add(
              "electrical/kitchen/appliance-sockets",
              "Sockets for kitchen appliances",
              job.fact("socket.kitchen-appliances").times(kitchens),
              Unit.EACH,
              "refrigerator, hood, hob ignition or the like; common practice"));
    }
    if (services.yes(ServicesQuestions.LAUNDRY)) damp.add(job.fact("socket.laundry"));
    var outside =
        job.scope().deckAndRoof().yes(DeckAndRoofQuestions.DECK)
            ? job.fact("socket.outside").plus(job.fact("socket.deck"))
            : job.fact("socket.outside");
    damp.add(
        out.add(
            "electrical/outside/sockets",
            "Sockets outside",
            outside,
            Unit.EACH,
            "NEC 210.52(E): front and back, and one at a deck"));
    plain.add(services.figure(ServicesQuestions.EXTRA_SOCKETS));
    var ordinary =
        out.add(
            "electrical/house/sockets",
            "Socket outlets",
            counts(plain),
            Unit.EACH,
            "all rooms, and the extra ones",
            Buy.of("socket", ELECTRICAL_SECOND),
            Buy.of("device-box", ELECTRICAL_FIRST),
            Labour.of("electrical-rough-in", ELECTRICAL_FIRST),
            Labour.of("electrical-trim", ELECTRICAL_SECOND));
    var shielded =
        out.add(
            "electrical/house/protected-sockets",
            "Socket outlets with residual-current protection",
            counts(damp),
            Unit.EACH,
            "NEC 210.8(A): bathrooms, counters, laundry, outside",
            Buy.of("socket-protected", ELECTRICAL_SECOND),
            Buy.of("device-box", ELECTRICAL_FIRST),
            Labour.of("electrical-rough-in", ELECTRICAL_FIRST),
            Labour.of("electrical-trim", ELECTRICAL_SECOND));
    out.add(
        "electrical/house/all-sockets",
        "Socket outlets, all",
        ordinary.plus(shielded),
        Unit.EACH,
        "ordinary and protected");
    if (services.yes(ServicesQuestions.DATA)) {
      long points = job.scope().rooms().stream().filter(r -> isLivedIn(r)).count();
      out.add(
          "electrical/house/data-points",
          "Data points",
          Figure.count(points),
          Unit.EACH,
          "one for each living room and bedroom",
          Buy.of("data-point", ELECTRICAL_SECOND),
          Buy.of("device-box", ELECTRICAL_FIRST),
          Labour.of("electrical-rough-in", ELECTRICAL_FIRST),
          Labour.of("electrical-trim", ELECTRICAL_SECOND));
    }
  }

  static boolean isLivedIn(Room room) {
    return switch (room.use()) {
      case LIVING, LIVING_KITCHEN, BEDROOM, LIVING_SLEEPING -> true;
      case KITCHEN, BATHROOM, HALL, UTILITY, STORE -> false;
    };
  }

  /** Switches of a room: two where it is lived in, at its door and at the bed or the way out. */
  static int switches(Room room) {
    return isLivedIn(room) ? 2 : 1;
  }

  private static Figure inRoom(Job job, Inside in, Room room) {
    return switch (room.use()) {
      case LIVING, LIVING_KITCHEN, BEDROOM, LIVING_SLEEPING ->
          alongWalls(wallSpace(job, in, room), job.fact("socket.wall-spacing"));
      case HALL ->
          in.length(room)
              .ifAtLeast(job.fact("socket.hall-length"), Figure.count(1), Figure.count(0));
      case BATHROOM -> job.fact("socket.bathroom");
      case UTILITY -> job.fact("socket.utility");
      case KITCHEN, STORE -> Figure.count(0);
    };
  }

  /** None of the wall farther than half the spacing from an outlet: one for each spacing begun. */
  static Figure alongWalls(Figure wallSpace, Figure spacing) {
    return wallSpace.over(spacing).roundedUp();
  }

  private static Figure wallSpace(Job job, Inside in, Room room) {
    long doors = in.partitions(room).stream().filter(Inside.Partition::hasDoor).count();
    var line = in.wallLine(room);
    if (doors > 0) line = line.minus(job.fact("inner-door.opening-width").times(doors));
    return line.atLeastZero();
  }

  private static String because(Room room) {
    return switch (room.use()) {
      case LIVING, LIVING_KITCHEN, BEDROOM, LIVING_SLEEPING ->
          "NEC 210.52(A): no wall farther than 6 ft from one, so wall line / 12 ft rounded up";
      case HALL -> "NEC 210.52(H): one in a hall of 10 ft or more";
      case BATHROOM -> "NEC 210.52(D): one at the basin";
      case UTILITY -> "one for general use";
      case KITCHEN, STORE -> "none on the wall; those of the counter are counted apart";
    };
  }

  private static void lights(Job job, Inside in, Tally out) {
    var lights = new ArrayList<Figure>();
    int switches = 1; // the outside lights
    for (var room : job.scope().rooms()) {
      lights.add(
          out.add(
              "room-lights/" + room.id() + "/count",
              room.id() + ", lights",
              in.area(room).over(job.fact("light.area")).roundedUp(),
              Unit.EACH,
              "clear area / area for one light, rounded up; common practice"));
      switches += switches(room);
    }
    out.add(
        "electrical/house/lights",
        "Lights inside",
        counts(lights),
        Unit.EACH,
        "all rooms",
        Buy.of("device-box", ELECTRICAL_FIRST),
        Labour.of("electrical-rough-in", ELECTRICAL_FIRST),
        Labour.of("electrical-trim", ELECTRICAL_SECOND));
    out.add(
        "electrical/outside/lights",
        "Lights outside",
        job.scope().services().figure(ServicesQuestions.OUTSIDE_LIGHTS),
        Unit.EACH,
        "as chosen",
        Buy.of("light-outside", ELECTRICAL_SECOND),
        Labour.of("electrical-rough-in", ELECTRICAL_FIRST),
        Labour.of("electrical-trim", ELECTRICAL_SECOND));
    out.add(
        "electrical/house/switches",
        "Switches",
        Figure.count(switches),
        Unit.EACH,
        "two in living rooms and bedrooms, one in other rooms, one for outside",
        Buy.of("switch", ELECTRICAL_SECOND),
        Buy.of("device-box", ELECTRICAL_FIRST),
        Labour.of("electrical-rough-in", ELECTRICAL_FIRST),
        Labour.of("electrical-trim", ELECTRICAL_SECOND));
  }

  private static void alarms(Job job, Inside in, Tally out) {
    int sleeping = in.sleeping().size();
    long upper = job.scope().boxes().stream().filter(b -> b.joint() == Joint.STACKED).count();
    out.add(
        "electrical/house/smoke-alarms",
        "Smoke alarms, interconnected",
        Figure.count(sleeping + 1 + upper),
        Unit.EACH,
        "IRC R314: in each sleeping room, outside them, on each storey",
        Buy.of("smoke-alarm", ELECTRICAL_SECOND),
        Labour.of("electrical-rough-in", ELECTRICAL_FIRST),
        Labour.of("electrical-trim", ELECTRICAL_SECOND));
    if (burnsFuel(job)) {
      out.add(
          "electrical/house/monoxide-alarms",
          "Carbon-monoxide alarms",
          Figure.count(1 + upper),
          Unit.EACH,
          "IRC R315: outside sleeping areas where fuel is burned",
          Buy.of("monoxide-alarm", ELECTRICAL_SECOND),
          Labour.of("electrical-trim", ELECTRICAL_SECOND));
    }
  }

  static boolean burnsFuel(Job job) {
    var s = job.scope().services();
    return s.option(ServicesQuestions.COOKING, Cooking.class) == Cooking.GAS
        || s.option(ServicesQuestions.HOT_WATER, HotWater.class) == HotWater.GAS_INSTANT
        || s.option(ServicesQuestions.HEATING, HeatingCooling.class) == HeatingCooling.STOVE;
  }
}

package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.PLUMBING_SECOND;
import static cornerpost.takeoff.BuildTask.PLUMBING_SUPPLY;
import static cornerpost.takeoff.BuildTask.PLUMBING_WASTE;
import static cornerpost.takeoff.BuildTask.PRESSURE_TEST;
import static cornerpost.takeoff.BuildTask.TEST_PLUMBING;
import static cornerpost.takeoff.BuildTask.WATER_HEATER;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Cooking;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.HotWater;
import cornerpost.scope.Room;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.Washing;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Fixtures by the use of rooms, drainage fixture units and pipe sizes by table 702.1 and 703.2 of
 * the Uniform Plumbing Code, pipe runs from where the wet rooms lie: mains enter and drains leave
 * at the cargo-door end, low through the side wall, and run along the box to the farthest wet room.
 */
final class Plumbing implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.SERVICES);
    var fixtures = new Fixtures(job, in);
    var all = new ArrayList<Line>();
    var reach = reach(job, in);
    if (fixtures.count() > 0) {
      reach =
          out.add(
              "plumbing/house/reach",
              "From the service end to the farthest wet room, each box",
              reach,
              job.length(),
              "rooms before it and half its own length");
      var units = fixtures(job, fixtures, out);
      waste(job, in, fixtures, units, reach, out);
      supply(job, in, fixtures, reach, out);
      heater(job, out);
      all.addAll(out.lines());
      var tests = new Tally(Stage.CLOSE_OUT);
      tests.add(
          "plumbing/house/tests",
          "Test of fittings, traps and hot water",
          Figure.count(fixtures.count()),
          Unit.EACH,
          "each fixture",
          Labour.of("test-fixture", TEST_PLUMBING));
      all.addAll(tests.lines());
    }
    all.addAll(gas(job, in));
    return all;
  }

  /** How many of each fixture; the rooms and the choices say. */
  record Fixtures(
      int closets, int basins, int showers, int baths, int sinks, int dishwashers, int washers) {
    Fixtures(Job job, Inside in) {
      this(
          in.bathrooms().size(),
          in.bathrooms().size(),
          washing(job) == Washing.SHOWER ? in.bathrooms().size() : 0,
          washing(job) == Washing.BATH ? in.bathrooms().size() : 0,
          in.kitchens().size(),
          job.scope().services().yes(ServicesQuestions.DISHWASHER) ? in.kitchens().size() : 0,
          job.scope().services().yes(ServicesQuestions.LAUNDRY) && !wetRooms(in).isEmpty() ? 1 : 0);
    }

    private static Washing washing(Job job) {
      return job.scope().finishes().option(FinishesQuestions.WASHING, Washing.class);
    }

    int count() {
      return closets + basins + showers + baths + sinks + dishwashers + washers;
    }

    /** Taps with hot and cold count twice. */
    int supplies() {
      return closets + 2 * (basins + showers + baths + sinks) + dishwashers + washers;
    }
  }

  /** Rooms with water, those where a washing machine would stand first. */
  static List<Room> wetRooms(Inside in) {
    var rooms = new ArrayList<>(in.rooms(RoomUse.UTILITY));
    rooms.addAll(in.bathrooms());
    rooms.addAll(in.kitchens());
    return List.copyOf(rooms);
  }

  private static Figure fixtures(Job job, Fixtures f, Tally out) {
    out.add(
        "plumbing/house/fixtures",
        "Fixtures",
        Figure.count(f.count()),
        Unit.EACH,
        "closet, basin and shower or bath for each bathroom, sink for each kitchen, machines",
        Labour.of("plumbing-rough-waste", PLUMBING_WASTE),
        Labour.of("plumbing-rough-supply", PLUMBING_SUPPLY),
        Labour.of("plumbing-set", PLUMBING_SECOND));
    out.add(
        "plumbing/house/connectors",
        "Stop valves, flexible connectors, traps",
        Figure.count(f.count()),
        Unit.EACH,
        "a set for each fixture",
        Buy.of("fixture-connectors", PLUMBING_SECOND));
    return out.add(
        "plumbing/house/fixture-units",
        "Drainage fixture units",
        fixtureUnits(job, f),
        Unit.ONE,
        "UPC table 702.1, private use; a dishwasher drains through the sink");
  }

  static Figure fixtureUnits(Job job, Fixtures f) {
    return job.fact("fixture-units.closet")
        .times(f.closets())
        .plus(job.fact("fixture-units.basin").times(f.basins()))
        .plus(job.fact("fixture-units.shower").times(f.showers()))
        .plus(job.fact("fixture-units.bath").times(f.baths()))
        .plus(job.fact("fixture-units.sink").times(f.sinks()))
        .plus(job.fact("fixture-units.washer").times(f.washers()));
  }

  /** From the service end to the farthest wet room of each box, across other boxes on the way. */
  static Figure reach(Job job, Inside in) {
    var terms = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      wetRooms(in).stream()
          .filter(r -> r.box().equals(box.id()))
          .map(in::fromServices)
          .reduce(Figure::max)
          .map(far -> far.plus(in.fromFirstBox(box)))
          .ifPresent(terms::add);
    }
    return Figure.sum(Dimension.LENGTH, terms);
  }

  /**
   * Along a wet room to its fixtures: these stand along it, so the mean way from the pipe in its
   * middle is a quarter of its length.
   *
   * @param points how many pipes go to the fixtures of a room
   */
  private static Figure branches(Job job, Inside in, String rise, ToIntFunction<Room> points) {
    var terms = new ArrayList<Figure>();
    for (var room : wetRooms(in)) {
      int n = points.applyAsInt(room);
      if (n > 0) terms.add(in.length(room).over(4).plus(job.fact(rise)).times(n));
    }
    return Inside.lengths(terms);
  }

  private static void waste(Job job, Inside in, Fixtures f, Figure units, Figure reach, Tally out) {
    var waste = job.fact("waste.pipe");
    var laundry = f.washers() > 0 ? wetRooms(in).get(0).id() : "";
    ToIntFunction<Room> bathroom = r -> r.use() == RoomUse.BATHROOM ? 1 : 0;
    ToIntFunction<Room> washer = r -> r.id().equals(laundry) ? 1 : 0;
    ToIntFunction<Room> sinks = r -> in.kitchens().contains(r) ? (f.dishwashers() > 0 ? 2 : 1) : 0;
    var drain = reach.plus(branches(job, in, "plumbing.waste-drop", bathroom));
    var large =
        units.ifAtLeast(
            job.fact("drain.three-inch-capacity").plus(Figure.count(1)),
            Figure.count(1),
            Figure.count(0));
    out.add(
        "plumbing/waste/drain-80",
        "Drain, 3 in (80 mm)",
        drain.times(Figure.count(1).minus(large)),
        job.length(),
        "reach + a branch to each closet: a quarter of the room, and down; UPC 703.2: 35 units level",
        Buy.of("pipe-waste-80", waste, PLUMBING_WASTE));
    out.add(
        "plumbing/waste/drain-100",
        "Drain, 4 in (100 mm)",
        drain.times(large),
        job.length(),
        "instead of 3 in where there are more than 35 units",
        Buy.of("pipe-waste-100", waste, PLUMBING_WASTE));
    out.add(
        "plumbing/waste/pipe-50",
        "Waste pipe, 2 in (50 mm)",
        branches(
            job, in, "plumbing.waste-drop", r -> bathroom.applyAsInt(r) + washer.applyAsInt(r)),
        job.length(),
        "to each shower or bath and washing machine: a quarter of the room, and down",
        Buy.of("pipe-waste-50", waste, PLUMBING_WASTE));
    out.add(
        "plumbing/waste/pipe-40",
        "Waste pipe, 1 1/2 in (40 mm)",
        branches(job, in, "plumbing.waste-drop", r -> bathroom.applyAsInt(r) + sinks.applyAsInt(r)),
        job.length(),
        "to each sink, dishwasher and basin: a quarter of the room, and down",
        Buy.of("pipe-waste-40", waste, PLUMBING_WASTE));
    if (f.closets() > 0) {
      var vents = new ArrayList<Figure>();
      for (var room : in.bathrooms()) {
        vents.add(new Shape(job).height(in.boxOf(room)).plus(job.fact("plumbing.vent-above-roof")));
      }
      out.add(
          "plumbing/waste/vent",
          "Vent pipe",
          Inside.lengths(vents),
          job.length(),
          "height of the box + above the roof, each bathroom (IRC P3103)",
          Buy.of("pipe-vent", waste, PLUMBING_WASTE));
      out.add(
          "plumbing/waste/vent-flashings",
          "Vent caps with roof flashing",
          Figure.count(in.bathrooms().size()),
          Unit.EACH,
          "one for each vent",
          Buy.of("vent-flashing", PLUMBING_WASTE));
    }
    out.add(
        "plumbing/waste/fittings",
        "Bends, branches and brackets for waste",
        Figure.count(f.count()),
        Unit.EACH,
        "a set for each fixture",
        Buy.of("waste-fittings", PLUMBING_WASTE));
    out.add(
        "plumbing/house/sleeves",
        "Sealed sleeves, low through the side wall",
        job.fact("plumbing.sleeves-a-wet-room").times(wetRooms(in).size()),
        Unit.EACH,
        "one for waste and one for water, each wet room",
        Buy.of("wall-sleeve", PLUMBING_WASTE),
        Labour.of("fit-sleeve", PLUMBING_WASTE));
  }

  private static void supply(Job job, Inside in, Fixtures f, Figure reach, Tally out) {
    var waste = job.fact("waste.pipe");
    var laundry = f.washers() > 0 ? wetRooms(in).get(0).id() : "";
    ToIntFunction<Room> hot =
        r ->
            r.use() == RoomUse.BATHROOM || in.kitchens().contains(r)
                ? (r.use() == RoomUse.BATHROOM ? 2 : 1)
                : 0;
    ToIntFunction<Room> cold =
        r ->
            hot.applyAsInt(r)
                + (r.use() == RoomUse.BATHROOM ? 1 : 0)
                + (f.dishwashers() > 0 && in.kitchens().contains(r) ? 1 : 0)
                + (r.id().equals(laundry) ? 1 : 0);
    var hotBranches = branches(job, in, "plumbing.supply-rise", hot);
    out.add(
        "plumbing/supply/mains",
        "Supply pipe, 3/4 in (20 mm), hot and cold",
        reach.times(2),
        job.length(),
        "reach, twice (IRC P2903.7: 3/4 in at least)",
        Buy.of("pipe-supply-20", waste, PLUMBING_SUPPLY));
    out.add(
        "plumbing/supply/branches",
        "Supply pipe, 1/2 in (15 mm)",
        hotBranches.plus(branches(job, in, "plumbing.supply-rise", cold)),
        job.length(),
        "to each tap, hot and cold apart: a quarter of the room, and up",
        Buy.of("pipe-supply-15", waste, PLUMBING_SUPPLY));
    out.add(
        "plumbing/supply/insulation",
        "Pipe insulation",
        reach.times(2).plus(hotBranches),
        job.length(),
        "both mains and the hot branches",
        Buy.of("pipe-insulation", waste, PLUMBING_SUPPLY));
    out.add(
        "plumbing/supply/manifold",
        "Main stop, filter, pressure control, manifold",
        Figure.count(1),
        Unit.EACH,
        "one",
        Buy.of("water-entry-set", PLUMBING_SUPPLY),
        Labour.of("fit-water-entry", PLUMBING_SUPPLY));
    out.add(
        "plumbing/supply/fittings",
        "Supply fittings and clips",
        Figure.count(f.supplies()),
        Unit.EACH,
        "a set for each branch",
        Buy.of("supply-fittings", PLUMBING_SUPPLY));
    out.add(
        "plumbing/house/pressure-test",
        "Pressure test of supply and waste",
        Figure.count(1),
        Unit.EACH,
        "IRC P2503: supply and waste, before cover",
        Labour.of("pressure-test", PRESSURE_TEST));
  }

  private static void heater(Job job, Tally out) {
    var kind = job.scope().services().option(ServicesQuestions.HOT_WATER, HotWater.class);
    var item =
        switch (kind) {
          case TANK -> "water-heater-tank";
          case HEAT_PUMP -> "water-heater-heat-pump";
          case ELECTRIC_INSTANT -> "water-heater-electric-instant";
          case GAS_INSTANT -> "water-heater-gas-instant";
        };
    out.add(
        "plumbing/house/water-heater",
        "Water heater, " + kind.label(),
        Figure.count(1),
        Unit.EACH,
        "one",
        Buy.of(item, WATER_HEATER),
        Buy.of("water-heater-set", WATER_HEATER),
        Labour.of("set-water-heater", WATER_HEATER));
  }

  /** The rooms that gas is led to: kitchens that cook with it, the one with the water heater. */
  static List<Room> gasUsers(Job job, Inside in) {
    var s = job.scope().services();
    var users = new ArrayList<Room>();
    if (s.option(ServicesQuestions.COOKING, Cooking.class) == Cooking.GAS) {
      users.addAll(in.kitchens());
    }
    if (s.option(ServicesQuestions.HOT_WATER, HotWater.class) == HotWater.GAS_INSTANT) {
      wetRooms(in).stream().findFirst().ifPresent(users::add);
    }
    return users;
  }

  /**
   * Bottles stand outside at the service end. One pipe runs along to the farthest appliance, and a
   * branch along the room and up to each: the cooker in a kitchen, the water heater in the first
   * wet room.
   */
  private static List<Line> gas(Job job, Inside in) {
    var out = new Tally(Stage.SERVICES);
    var users = gasUsers(job, in);
    if (users.isEmpty()) return out.lines();
    out.add(
        "plumbing/gas/set",
        "Gas bottles, regulator and change-over",
        Figure.count(1),
        Unit.EACH,
        "one set outside; by a licensed fitter",
        Buy.of("gas-set", PLUMBING_SUPPLY));
    var farthest =
        users.stream()
            .map(r -> in.fromServices(r).plus(in.fromFirstBox(in.boxOf(r))))
            .reduce(Figure::max)
            .orElseThrow();
    var terms = new ArrayList<Figure>();
    terms.add(farthest);
    for (var r : users) terms.add(in.length(r).over(4).plus(job.fact("plumbing.gas-rise")));
    out.add(
        "plumbing/gas/pipe",
        "Gas pipe",
        Inside.lengths(terms),
        job.length(),
        "from the service end to the farthest appliance + a branch to each: a quarter of the room,"
            + " and up",
        Buy.of("pipe-gas", job.fact("waste.pipe"), PLUMBING_SUPPLY),
        Labour.of("lay-gas-pipe", PLUMBING_SUPPLY));
    return out.lines();
  }
}

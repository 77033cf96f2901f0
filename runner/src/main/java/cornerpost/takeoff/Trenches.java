package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.CLOSE_TRENCHES;
import static cornerpost.takeoff.BuildTask.CONNECT_POWER;
import static cornerpost.takeoff.BuildTask.CONNECT_WASTE;
import static cornerpost.takeoff.BuildTask.CONNECT_WATER;
import static cornerpost.takeoff.BuildTask.LAY_CABLE;
import static cornerpost.takeoff.BuildTask.LAY_WASTE;
import static cornerpost.takeoff.BuildTask.LAY_WATER;
import static cornerpost.takeoff.BuildTask.SEPTIC;
import static cornerpost.takeoff.BuildTask.TRENCHES;
import static cornerpost.takeoff.BuildTask.WELL;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Digging;
import cornerpost.scope.PowerSupply;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.WasteWater;
import cornerpost.scope.WaterSupply;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * What lies underground between the box and the outside world: a trench for each service by its
 * distance, the pipe or duct in it, tank and field, well or tank, and the connections. Water lies
 * below frost. Waste falls as it runs: its trench is half the fall deeper on the average.
 */
final class Trenches implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var out = new Tally(Stage.FOUNDATION);
    var services = job.scope().services();
    var volumes = new ArrayList<Figure>();
    var lengths = new ArrayList<Figure>();

    var waste = services.figure(ServicesQuestions.WASTE_DISTANCE);
    volumes.add(
        dig(
            job,
            out,
            "waste",
            waste,
            job.fact("trench.waste-cover").plus(waste.times(job.fact("drain.fall")).over(2))));
    lengths.add(waste);
    out.add(
        "trench/waste/pipe",
        "Waste pipe underground, 4 in (110 mm)",
        waste,
        job.length(),
        "distance to sewer or tank",
        Buy.of("pipe-underground-110", job.fact("waste.pipe"), LAY_WASTE),
        Labour.of("lay-waste-pipe", LAY_WASTE));
    out.add(
        "trench/waste/access",
        "Inspection chambers",
        waste.over(job.fact("drain.access-spacing")).roundedUp(),
        Unit.EACH,
        "one for each stretch begun",
        Buy.of("inspection-chamber", LAY_WASTE));

    var water = services.figure(ServicesQuestions.WATER_DISTANCE);
    var frost = job.scope().site().figure(SiteQuestions.FROST_DEPTH);
    volumes.add(
        dig(
            job,
            out,
            "water",
            water,
            frost.plus(job.fact("trench.below-frost")).max(job.fact("trench.water-cover"))));
    lengths.add(water);
    out.add(
        "trench/water/pipe",
        "Water pipe underground, 1 in (25 mm)",
        water,
        job.length(),
        "distance to water",
        Buy.of("pipe-underground-25", job.fact("waste.pipe"), LAY_WATER),
        Labour.of("lay-water-pipe", LAY_WATER));

    if (hasGrid(job)) {
      var power = services.figure(ServicesQuestions.POWER_DISTANCE);
      volumes.add(dig(job, out, "power", power, job.fact("trench.power-cover")));
      lengths.add(power);
      out.add(
          "trench/power/cable",
          "Supply cable in duct",
          power,
          job.length(),
          "distance to electricity",
          Buy.of("cable-supply", job.fact("waste.cable"), LAY_CABLE),
          Buy.of("duct-underground", job.fact("waste.pipe"), LAY_CABLE),
          Labour.of("lay-duct-and-cable", LAY_CABLE));
    }
    fill(job, out, volumes, lengths);
    var all = new ArrayList<>(out.lines());
    all.addAll(plants(job));
    all.addAll(connections(job));
    return all;
  }

  private static boolean hasGrid(Job job) {
    return job.scope().services().option(ServicesQuestions.POWER, PowerSupply.class)
        != PowerSupply.SOLAR;
  }

  private static Figure dig(Job job, Tally out, String what, Figure length, Figure depth) {
    boolean machine =
        job.scope().site().option(SiteQuestions.DIGGING, Digging.class) == Digging.MACHINE;
    var labour = Labour.of(machine ? "trench-machine" : "trench-hand", TRENCHES);
    var volume = length.times(depth).times(job.fact("trench.width"));
    return out.add(
        "trench/" + what + "/dig",
        "Trench for " + what,
        volume,
        job.volume(),
        "distance x depth x width",
        machine
            ? new Resource[] {labour, Buy.of("trench-digger", TRENCHES)}
            : new Resource[] {labour});
  }

  private static void fill(Job job, Tally out, List<Figure> volumes, List<Figure> lengths) {
    var length =
        out.add(
            "trench/all/length",
            "Trenches, all",
            Inside.lengths(lengths),
            job.length(),
            "each service its own",
            Buy.of("warning-tape", job.fact("waste.membrane"), CLOSE_TRENCHES));
    out.add(
        "trench/all/bedding",
        "Sand bedding",
        length.times(job.fact("trench.width")).times(job.fact("trench.bedding")),
        job.volume(),
        "length x width x depth of bedding",
        Buy.of("sand-bedding", job.fact("waste.concrete"), CLOSE_TRENCHES));
    out.add(
        "trench/all/backfill",
        "Backfill of trenches",
        Figure.sum(Dimension.VOLUME, volumes),
        job.volume(),
        "what was dug",
        Labour.of("trench-backfill", CLOSE_TRENCHES));
  }

  private static List<Line> plants(Job job) {
    var out = new Tally(Stage.FOUNDATION);
    var services = job.scope().services();
    var one = Figure.count(1);
    switch (services.option(ServicesQuestions.WASTE, WasteWater.class)) {
      case SEWER -> {}
      case SEPTIC -> {
        out.add(
            "waste-water/house/septic-tank",
            "Septic tank, set and connected",
            one,
            Unit.EACH,
            "one",
            Buy.of("septic-tank", SEPTIC),
            Labour.of("set-septic-tank", SEPTIC));
        long bedrooms = Math.max(1, new Inside(job).sleeping().size());
        out.add(
            "waste-water/house/field",
            "Seepage field",
            job.fact("septic.field-a-bedroom").times(bedrooms),
            job.area(),
            "area for each sleeping room, one at least; the soil test settles it",
            Buy.of("septic-field", SEPTIC),
            Labour.of("lay-septic-field", SEPTIC));
      }
      case HOLDING ->
          out.add(
              "waste-water/house/holding-tank",
              "Holding tank with alarm",
              one,
              Unit.EACH,
              "one",
              Buy.of("holding-tank", SEPTIC),
              Labour.of("set-septic-tank", SEPTIC));
    }
    switch (services.option(ServicesQuestions.WATER, WaterSupply.class)) {
      case MAINS -> {}
      case WELL -> {
        out.add(
            "water-supply/house/well",
            "Drilled and cased well",
            job.fact("well.depth"),
            job.length(),
            "usual depth; the driller settles it",
            Buy.of("well-drilling", WELL));
        out.add(
            "water-supply/house/pump",
            "Well pump, pressure tank and treatment",
            one,
            Unit.EACH,
            "one",
            Buy.of("well-pump-set", WELL),
            Labour.of("fit-pump", WELL));
      }
      case TANK ->
          out.add(
              "water-supply/house/tank",
              "Water tank with pump and filter",
              one,
              Unit.EACH,
              "one",
              Buy.of("water-tank-set", WELL),
              Labour.of("fit-pump", WELL));
    }
    return out.lines();
  }

  private static List<Line> connections(Job job) {
    var out = new Tally(Stage.SERVICES);
    var services = job.scope().services();
    var one = Figure.count(1);
    if (hasGrid(job)) {
      out.add(
          "connection/house/power",
          "Electricity connection and meter",
          one,
          Unit.EACH,
          "fee of the utility, and the meter base",
          Buy.of("fee-electricity", CONNECT_POWER),
          Buy.of("meter-base", CONNECT_POWER),
          Labour.of("connect-power", CONNECT_POWER));
    }
    boolean mains =
        services.option(ServicesQuestions.WATER, WaterSupply.class) == WaterSupply.MAINS;
    out.add(
        "connection/house/water",
        "Water connected",
        one,
        Unit.EACH,
        mains ? "fee of the utility, and the work" : "the work",
        mains
            ? new Resource[] {
              Buy.of("fee-water", CONNECT_WATER), Labour.of("connect-water", CONNECT_WATER)
            }
            : new Resource[] {Labour.of("connect-water", CONNECT_WATER)});
    boolean sewer = services.option(ServicesQuestions.WASTE, WasteWater.class) == WasteWater.SEWER;
    out.add(
        "connection/house/waste",
        "Waste water connected",
        one,
        Unit.EACH,
        sewer ? "fee of the utility, and the work" : "the work",
        sewer
            ? new Resource[] {
              Buy.of("fee-sewer", CONNECT_WASTE), Labour.of("connect-waste", CONNECT_WASTE)
            }
            : new Resource[] {Labour.of("connect-waste", CONNECT_WASTE)});
    return out.lines();
  }
}

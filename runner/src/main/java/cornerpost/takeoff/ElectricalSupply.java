package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.PANEL;
import static cornerpost.takeoff.BuildTask.SOLAR;
import static cornerpost.takeoff.BuildTask.TEST_ELECTRICS;
import static cornerpost.takeoff.Inside.counts;

import cornerpost.measure.Unit;
import cornerpost.scope.Cooking;
import cornerpost.scope.HeatingCooling;
import cornerpost.scope.HotWater;
import cornerpost.scope.PowerSupply;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.VentilationKind;
import cornerpost.scope.WaterSupply;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Circuits, the service load by the larger of two published methods ({@link ServiceLoad}), the
 * panel it asks for, {@link Bonding} and the solar kit. The panel stands at the service end of the
 * first box.
 */
final class ElectricalSupply implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.SERVICES);
    var lighting = lighting(job, out);
    var circuits = circuits(job, in, out, lighting);
    panel(job, in, out, lighting);
    Bonding.rows(job, in, out);
    if (job.scope().services().option(ServicesQuestions.POWER, PowerSupply.class)
        != PowerSupply.GRID) {
      solar(job, in, out);
    }
    var test = new Tally(Stage.CLOSE_OUT);
    test.add(
        "electrical/house/tests",
        "Test of circuits, protection and bonding",
        circuits,
        Unit.EACH,
        "each circuit",
        Labour.of("test-circuit", TEST_ELECTRICS));
    var all = new ArrayList<>(out.lines());
    all.addAll(test.lines());
    return all;
  }

  private static Figure lighting(Job job, Tally out) {
    var shape = new Shape(job);
    var outside = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) outside.add(shape.length(box).times(shape.width(box)));
    return out.add(
        "electrical/load/lighting",
        "General lighting load, VA",
        Inside.areas(outside).times(job.fact("load.lighting-per-area")),
        Unit.ONE,
        "NEC 220.41: outside area x 3 VA a sq ft");
  }

  private static boolean electricCooking(Job job, Inside in) {
    return !in.kitchens().isEmpty()
        && job.scope().services().option(ServicesQuestions.COOKING, Cooking.class)
            == Cooking.ELECTRIC;
  }

  private static HotWater hotWater(Job job) {
    return job.scope().services().option(ServicesQuestions.HOT_WATER, HotWater.class);
  }

  private static HeatingCooling heating(Job job) {
    return job.scope().services().option(ServicesQuestions.HEATING, HeatingCooling.class);
  }

  private static Figure circuits(Job job, Inside in, Tally out, Figure lighting) {
    var s = job.scope().services();
    var terms = new ArrayList<Figure>();
    terms.add(
        out.add(
            "electrical/circuits/lighting",
            "Lighting circuits",
            new ServiceLoad(job).lightingCircuits(lighting),
            Unit.EACH,
            "lighting load / (15 A x 120 V), rounded up"));
    int kitchens = in.kitchens().size();
    if (kitchens > 0) terms.add(job.fact("circuit.small-appliance").times(kitchens));
    if (!in.bathrooms().isEmpty()) terms.add(job.fact("circuit.bathroom"));
    if (s.yes(ServicesQuestions.LAUNDRY)) terms.add(job.fact("circuit.laundry"));
    int own = 1; // sockets and lights outside
    if (electricCooking(job, in)) own += kitchens;
    if (kitchens > 0 && s.yes(ServicesQuestions.DISHWASHER)) own += kitchens;
    if (hotWater(job) != HotWater.GAS_INSTANT) own++;
    if (s.option(ServicesQuestions.VENTILATION, VentilationKind.class)
        == VentilationKind.RECOVERY) {
      own++;
    }
    if (s.option(ServicesQuestions.WATER, WaterSupply.class) != WaterSupply.MAINS) own++;
    terms.add(Figure.count(own));
    terms.add(heatCircuits(job, in));
    return out.add(
        "electrical/house/circuits",
        "Circuits",
        counts(terms),
        Unit.EACH,
        "lighting; NEC 210.11(C): two small-appliance, laundry, bathroom; one for each fixed unit",
        Buy.of("breaker", PANEL),
        Labour.of("connect-circuit", PANEL));
  }

  private static Figure heatCircuits(Job job, Inside in) {
    var heads = job.scope().services().figure(ServicesQuestions.HEADS);
    return switch (heating(job)) {
      case SPLIT -> outdoorUnits(job, heads);
      case PANEL -> heads.over(job.fact("circuit.heaters-on-one")).roundedUp();
      case STOVE -> Figure.count(0);
      case SPLIT_AND_PANEL ->
          outdoorUnits(job, heads)
              .plus(
                  Climate.panelHeaters(job, in)
                      .over(job.fact("circuit.heaters-on-one"))
                      .roundedUp());
    };
  }

  static Figure outdoorUnits(Job job, Figure heads) {
    return heads.over(job.fact("split.heads-on-one")).roundedUp();
  }

  private static void panel(Job job, Inside in, Tally out, Figure lighting) {
    var s = job.scope().services();
    var loads = new ServiceLoad(job);
    int kitchens = in.kitchens().size();
    var small = new ArrayList<Figure>();
    small.add(lighting);
    var circuitLoad = job.fact("load.small-circuit");
    if (kitchens > 0) {
      small.add(circuitLoad.times(job.fact("circuit.small-appliance")).times(kitchens));
    }
    if (s.yes(ServicesQuestions.LAUNDRY)) small.add(circuitLoad);
    var lightingAndSmall =
        out.add(
            "electrical/load/lighting-and-small",
            "Lighting, small-appliance and laundry load, VA",
            counts(small),
            Unit.ONE,
            "NEC 220.52: 1500 VA for each small-appliance and laundry circuit");
    var fixed = new ArrayList<Figure>();
    var heater =
        switch (hotWater(job)) {
          case TANK -> "load.water-tank";
          case HEAT_PUMP -> "load.water-heat-pump";
          case ELECTRIC_INSTANT -> "load.water-instant";
          case GAS_INSTANT -> "load.water-gas";
        };
    fixed.add(job.fact(heater));
    if (kitchens > 0 && s.yes(ServicesQuestions.DISHWASHER)) {
      fixed.add(job.fact("load.dishwasher").times(kitchens));
    }
    if (s.option(ServicesQuestions.WATER, WaterSupply.class) != WaterSupply.MAINS) {
      fixed.add(job.fact("load.pump"));
    }
    var appliances = counts(fixed);
    var cookers = electricCooking(job, in) ? kitchens : 0;
    var heads = s.figure(ServicesQuestions.HEADS);
    var splitHeat = heads.times(job.fact("load.split-head"));
    var each = job.fact("load.panel-heater");
    var heatOptional =
        switch (heating(job)) {
          case SPLIT -> splitHeat;
          case PANEL -> loads.heaters(heads, each);
          case STOVE -> Figure.count(0);
          case SPLIT_AND_PANEL ->
              splitHeat.plus(loads.heaters(Climate.panelHeaters(job, in), each));
        };
    var heatWhole =
        switch (heating(job)) {
          case SPLIT -> splitHeat;
          case PANEL -> heads.times(each);
          case STOVE -> Figure.count(0);
          case SPLIT_AND_PANEL -> splitHeat.plus(Climate.panelHeaters(job, in).times(each));
        };
    var standard =
        out.add(
            "electrical/load/standard",
            "Service load by the standard method, VA",
            loads.standard(
                lightingAndSmall,
                appliances.plus(job.fact("load.range-demand").times(cookers)).plus(heatWhole)),
            Unit.ONE,
            "NEC 220 part III: first 3000 VA whole, then 35 %; range 8 kW; the rest whole");
    var optional =
        out.add(
            "electrical/load/optional",
            "Service load by the optional method, VA",
            loads.optional(
                lightingAndSmall.plus(appliances).plus(job.fact("load.range").times(cookers)),
                heatOptional),
            Unit.ONE,
            "NEC 220.82: first 10 kVA whole, then 40 %; heat pumps whole, heaters 65 %, 40 % from four");
    var amperes =
        out.add(
            "electrical/load/amperes",
            "Service current, A",
            standard.max(optional).over(job.fact("load.service-volts")),
            Unit.ONE,
            "the larger of both methods / 240 V");
    var one = Figure.count(1);
    var none = Figure.count(0);
    var over = amperes.ifAtLeast(job.fact("panel.small").plus(one), one, none);
    out.add(
        "electrical/panel/small",
        "Service panel, 100 A",
        one.minus(over),
        Unit.EACH,
        "NEC 230.79(C): 100 A at least; one unless the current is more",
        Buy.of("panel-100", PANEL),
        Labour.of("fit-panel", PANEL));
    out.add(
        "electrical/panel/large",
        "Service panel, 200 A",
        over,
        Unit.EACH,
        "one where the current is more than 100 A",
        Buy.of("panel-200", PANEL),
        Labour.of("fit-panel", PANEL));
    out.add(
        "electrical/panel/surge",
        "Surge protection",
        one,
        Unit.EACH,
        "NEC 230.67",
        Buy.of("surge-protection", PANEL));
  }

  /**
   * Daily use, panels that make it at the sun hours of a dull month, and a battery for the days
   * without sun. Common practice: a supplier's design settles it.
   */
  private static void solar(Job job, Inside in, Tally out) {
    var s = job.scope().services();
    boolean alone = s.option(ServicesQuestions.POWER, PowerSupply.class) == PowerSupply.SOLAR;
    var terms = new ArrayList<Figure>();
    terms.add(job.fact("solar.use-base"));
    terms.add(job.fact("solar.use-sleeping-room").times(in.sleeping().size()));
    if (electricCooking(job, in)) terms.add(job.fact("solar.use-cooking"));
    switch (hotWater(job)) {
      case TANK, ELECTRIC_INSTANT -> terms.add(job.fact("solar.use-hot-water"));
      case HEAT_PUMP -> terms.add(job.fact("solar.use-hot-water-heat-pump"));
      case GAS_INSTANT -> {}
    }
    var heads = s.figure(ServicesQuestions.HEADS);
    switch (heating(job)) {
      case SPLIT, SPLIT_AND_PANEL -> terms.add(job.fact("solar.use-split-head").times(heads));
      case PANEL -> terms.add(job.fact("solar.use-panel-heater").times(heads));
      case STOVE -> {}
    }
    var use =
        out.add(
            "electrical/solar/daily-use",
            "Electricity used a day, kWh",
            counts(terms),
            Unit.ONE,
            "base, sleeping rooms, cooking, hot water, heating");
    out.add(
        "electrical/solar/panels",
        "Solar panels",
        use.over(job.fact("solar.panel-daily-yield")).roundedUp(),
        Unit.EACH,
        "daily use / yield of a panel a day, rounded up",
        Buy.of("solar-panel", SOLAR),
        Labour.of("fit-solar-panel", SOLAR));
    out.add(
        "electrical/solar/battery",
        "Battery, units of 5 kWh",
        use.times(job.fact(alone ? "solar.battery-days-alone" : "solar.battery-days-with-grid"))
            .over(job.fact("solar.battery-unit"))
            .roundedUp(),
        Unit.EACH,
        "daily use x days without sun / unit, rounded up",
        Buy.of("solar-battery", SOLAR),
        Labour.of("fit-solar-battery", SOLAR));
    out.add(
        "electrical/solar/inverter",
        "Inverter with charge control and isolators",
        Figure.count(1),
        Unit.EACH,
        "one",
        Buy.of("solar-inverter", SOLAR),
        Labour.of("fit-solar-inverter", SOLAR));
  }
}

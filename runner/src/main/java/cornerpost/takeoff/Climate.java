package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.COMMISSION;
import static cornerpost.takeoff.BuildTask.DUCTS;
import static cornerpost.takeoff.BuildTask.SPLIT_LINES;
import static cornerpost.takeoff.BuildTask.SPLIT_UNITS;

import cornerpost.measure.Unit;
import cornerpost.scope.HeatingCooling;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.VentilationKind;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Heating and cooling by the units chosen, and ventilation. Whether the units are strong enough is
 * a check, not a quantity.
 */
final class Climate implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.SERVICES);
    var services = job.scope().services();
    var heads = services.figure(ServicesQuestions.HEADS);
    switch (services.option(ServicesQuestions.HEATING, HeatingCooling.class)) {
      case SPLIT -> split(job, in, out, heads);
      case PANEL -> heaters(out, heads);
      case STOVE -> stove(job, in, out);
      case SPLIT_AND_PANEL -> {
        split(job, in, out, heads);
        heaters(out, panelHeaters(job, in));
      }
    }
    Ventilation.rows(job, in, out);
    boolean recovery =
        services.option(ServicesQuestions.VENTILATION, VentilationKind.class)
            == VentilationKind.RECOVERY;
    if (recovery) recovery(job, in, out);
    else extract(job, in, out);
    var all = new ArrayList<>(out.lines());
    var close = new Tally(Stage.CLOSE_OUT);
    close.add(
        "climate/house/commissioning",
        "Commissioning of heating and ventilation",
        Figure.count(1),
        Unit.EACH,
        "once: airflows measured, units run in, user shown",
        Labour.of("commission-climate", COMMISSION));
    all.addAll(close.lines());
    return all;
  }

  /** A panel heater in each bedroom and bathroom: rooms with a door that is shut. */
  static Figure panelHeaters(Job job, Inside in) {
    return Figure.count((long) in.rooms(RoomUse.BEDROOM).size() + in.bathrooms().size());
  }

  private static void split(Job job, Inside in, Tally out, Figure heads) {
    var outdoor =
        out.add(
            "climate/split/outdoor-units",
            "Outdoor units of split systems",
            ElectricalSupply.outdoorUnits(job, heads),
            Unit.EACH,
            "indoor units / those that one outdoor unit serves, rounded up",
            Buy.of("split-outdoor", SPLIT_UNITS),
            Labour.of("hang-outdoor-unit", SPLIT_UNITS));
    out.add(
        "climate/split/brackets",
        "Brackets with rust-proof bolts and rubber washers",
        outdoor,
        Unit.EACH,
        "one pair for each outdoor unit; the steel wall would hum without the washers",
        Buy.of("split-bracket", SPLIT_LINES),
        Labour.of("fit-split-bracket", SPLIT_LINES));
    out.add(
        "climate/split/indoor-units",
        "Indoor units of split systems",
        heads,
        Unit.EACH,
        "as chosen",
        Buy.of("split-indoor", SPLIT_UNITS),
        Labour.of("hang-indoor-unit", SPLIT_UNITS));
    out.add(
        "climate/split/lines",
        "Refrigerant lines with insulation, drain and cable",
        new SplitLines(job, in).length(out, heads),
        job.length(),
        "an indoor unit to a room lived in, living rooms first; further ones at the mean way",
        Buy.of("split-line", job.fact("waste.pipe"), SPLIT_LINES),
        Buy.of("split-line-cover", job.fact("waste.pipe"), SPLIT_LINES),
        Labour.of("run-split-line", SPLIT_LINES));
  }

  private static void heaters(Tally out, Figure count) {
    out.add(
        "climate/panel/heaters",
        "Electric panel heaters",
        count,
        Unit.EACH,
        "as chosen, or one for each bedroom and bathroom",
        Buy.of("panel-heater", SPLIT_UNITS),
        Labour.of("hang-panel-heater", SPLIT_UNITS));
  }

  private static void stove(Job job, Inside in, Tally out) {
    out.add(
        "climate/stove/stove",
        "Wood stove with hearth and heat shield",
        Figure.count(1),
        Unit.EACH,
        "one",
        Buy.of("wood-stove", SPLIT_UNITS),
        Buy.of("stove-hearth", SPLIT_UNITS),
        Labour.of("set-stove", SPLIT_UNITS));
    var box = job.scope().boxes().get(0);
    out.add(
        "climate/stove/flue",
        "Insulated flue",
        new Shape(job).height(box).plus(job.fact("stove.flue-above-roof")),
        job.length(),
        "height of the box + above the roof",
        Buy.of("flue-insulated", DUCTS),
        Labour.of("fit-flue", DUCTS));
    out.add(
        "climate/stove/flue-flashing",
        "Roof flashing and fire stop for the flue",
        Figure.count(1),
        Unit.EACH,
        "one",
        Buy.of("flue-flashing", DUCTS));
    var rooms = panelHeaters(job, in);
    if (!rooms.isZero()) heaters(out, rooms);
  }

  private static void extract(Job job, Inside in, Tally out) {
    int fans = Ventilation.fanned(in).size();
    if (fans > 0) {
      out.add(
          "climate/ventilation/fans",
          "Extract fans with humidity control",
          Figure.count(fans),
          Unit.EACH,
          "IRC M1505.4.4: one in each bathroom, and in a utility room",
          Buy.of("extract-fan", DUCTS),
          Labour.of("fit-fan", DUCTS));
    }
    int ducts = fans + in.kitchens().size();
    if (ducts > 0) {
      out.add(
          "climate/ventilation/ducts",
          "Ducts of fans and cooker hoods",
          Inside.lengths(new FanDucts(job, in).ofFansAndHoods(out)),
          job.length(),
          "from each fan and hood to the nearest vent of its box",
          Buy.of("duct-rigid", job.fact("waste.pipe"), DUCTS),
          Labour.of("run-duct", DUCTS));
      out.add(
          "climate/ventilation/terminals",
          "Wall terminals with flap, sealed to the steel",
          Figure.count(ducts),
          Unit.EACH,
          "one for each duct",
          Buy.of("duct-terminal", DUCTS));
    }
    long rooms = job.scope().rooms().stream().filter(ElectricalPoints::isLivedIn).count();
    if (rooms > 0) {
      out.add(
          "climate/ventilation/background-vents",
          "Background vents",
          Figure.count(rooms),
          Unit.EACH,
          "one for each living room and bedroom",
          Buy.of("background-vent", DUCTS),
          Labour.of("fit-background-vent", DUCTS));
    }
  }

  private static void recovery(Job job, Inside in, Tally out) {
    out.add(
        "climate/ventilation/recovery-unit",
        "Heat-recovery ventilation unit",
        Figure.count(1),
        Unit.EACH,
        "one",
        Buy.of("recovery-unit", DUCTS),
        Labour.of("hang-recovery-unit", DUCTS));
    var runs = new ArrayList<Figure>();
    for (var room : job.scope().rooms()) {
      switch (room.use()) {
        case LIVING, LIVING_KITCHEN, KITCHEN, BEDROOM, LIVING_SLEEPING, BATHROOM, UTILITY ->
            runs.add(in.fromServices(room).plus(job.fact("duct.a-terminal")));
        case HALL, STORE -> {}
      }
    }
    if (!runs.isEmpty()) {
      out.add(
          "climate/ventilation/ducts",
          "Ventilation ducts to rooms",
          Inside.lengths(runs),
          job.length(),
          "from the unit at the service end to the middle of each room",
          Buy.of("duct-recovery", job.fact("waste.pipe"), DUCTS),
          Labour.of("run-duct", DUCTS));
      out.add(
          "climate/ventilation/room-terminals",
          "Supply and extract terminals in rooms",
          Figure.count(runs.size()),
          Unit.EACH,
          "one for each room",
          Buy.of("room-terminal", DUCTS));
    }
    var hoods = new FanDucts(job, in).ofHoods(out);
    if (!hoods.isEmpty()) {
      out.add(
          "climate/ventilation/hood-ducts",
          "Ducts of cooker hoods",
          Inside.lengths(hoods),
          job.length(),
          "from each hood to the nearest vent of its box",
          Buy.of("duct-rigid", job.fact("waste.pipe"), DUCTS),
          Labour.of("run-duct", DUCTS));
    }
    out.add(
        "climate/ventilation/terminals",
        "Wall terminals with flap, sealed to the steel",
        Figure.count(2L + in.kitchens().size()),
        Unit.EACH,
        "intake and exhaust of the unit, and each cooker hood",
        Buy.of("duct-terminal", DUCTS));
  }
}

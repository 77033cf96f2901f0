package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.APPLIANCES;
import static cornerpost.takeoff.BuildTask.KITCHEN_UNITS;
import static cornerpost.takeoff.BuildTask.PLUMBING_SECOND;
import static cornerpost.takeoff.BuildTask.WORKTOP;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Cooking;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.Standard;
import cornerpost.scope.Worktop;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.List;
import java.util.Locale;

/**
 * Kitchen by its run: base units, wall units over a share of it, worktop, splashback, sink and
 * appliances. The run is that of one kitchen; each room with a kitchen gets one.
 */
final class Kitchen implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FINISHES);
    int kitchens = in.kitchens().size();
    if (kitchens == 0) {
      washer(job, in, out);
      return out.lines();
    }
    var finishes = job.scope().finishes();
    var run =
        out.add(
            "kitchen/all/base-units",
            "Kitchen base units",
            finishes.figure(FinishesQuestions.KITCHEN_RUN).times(kitchens),
            job.length(),
            "run of each kitchen",
            Buy.of("kitchen-base-" + level(job, FinishesQuestions.KITCHEN_LEVEL), KITCHEN_UNITS),
            Labour.of("kitchen-units", KITCHEN_UNITS));
    out.add(
        "kitchen/all/wall-units",
        "Kitchen wall units",
        run.times(finishes.figure(FinishesQuestions.WALL_UNITS)),
        job.length(),
        "run x share with wall units",
        Buy.of("kitchen-wall-" + level(job, FinishesQuestions.KITCHEN_LEVEL), KITCHEN_UNITS),
        Labour.of("kitchen-units", KITCHEN_UNITS));
    var top = finishes.option(FinishesQuestions.WORKTOP, Worktop.class);
    out.add(
        "kitchen/all/worktop",
        "Worktop, " + top.label(),
        run,
        job.length(),
        "run of base units",
        Buy.of(
            "worktop-" + top.name().toLowerCase(Locale.ROOT),
            job.fact("kitchen.worktop-waste"),
            WORKTOP),
        Labour.of(top == Worktop.STONE ? "attend-stone-worktop" : "worktop", WORKTOP));
    var splash =
        out.add(
            "kitchen/all/splashback",
            "Splashback tiles",
            splashbackArea(job, in),
            job.area(),
            "run x height of the splashback",
            Buy.of("tile-wall", job.fact("waste.tile"), WORKTOP),
            Labour.of("splashback", WORKTOP));
    WetRooms.adhesive(job, out, "kitchen/splashback/", splash, WORKTOP);
    out.add(
        "kitchen/all/sink",
        "Kitchen sinks with tap and waste",
        Figure.count(kitchens),
        Unit.EACH,
        "one for each kitchen; hours are with the plumbing",
        Buy.of("kitchen-sink-" + level(job, FinishesQuestions.KITCHEN_LEVEL), PLUMBING_SECOND));
    appliances(job, out, kitchens);
    washer(job, in, out);
    return out.lines();
  }

  /** Run x splashback height; nothing where there is no kitchen. */
  static Figure splashbackArea(Job job, Inside in) {
    int kitchens = in.kitchens().size();
    if (kitchens == 0) return Figure.zero(Dimension.AREA);
    return job.scope()
        .finishes()
        .figure(FinishesQuestions.KITCHEN_RUN)
        .times(job.fact("kitchen.splashback-height"))
        .times(kitchens);
  }

  private static String level(Job job, Question question) {
    return job.scope().finishes().option(question, Standard.class).name().toLowerCase(Locale.ROOT);
  }

  private static void appliances(Job job, Tally out, int kitchens) {
    var services = job.scope().services();
    var level = level(job, FinishesQuestions.APPLIANCES);
    boolean gas = services.option(ServicesQuestions.COOKING, Cooking.class) == Cooking.GAS;
    appliance(out, "cooker", "Hob and oven", kitchens, (gas ? "cooker-gas-" : "cooker-") + level);
    appliance(out, "hood", "Cooker hoods", kitchens, "hood-" + level);
    appliance(out, "fridge", "Refrigerators", kitchens, "fridge-" + level);
    if (services.yes(ServicesQuestions.DISHWASHER)) {
      appliance(out, "dishwasher", "Dishwashers", kitchens, "dishwasher-" + level);
    }
  }

  /** One for the house, wherever there is water. */
  private static void washer(Job job, Inside in, Tally out) {
    if (!job.scope().services().yes(ServicesQuestions.LAUNDRY)) return;
    if (Plumbing.wetRooms(in).isEmpty()) return;
    appliance(
        out, "washer", "Washing machine", 1, "washer-" + level(job, FinishesQuestions.APPLIANCES));
  }

  private static void appliance(Tally out, String what, String name, int count, String item) {
    out.add(
        "kitchen/appliances/" + what,
        name,
        Figure.count(count),
        Unit.EACH,
        "as chosen",
        Buy.of(item, APPLIANCES),
        Labour.of("set-appliance", APPLIANCES));
  }
}

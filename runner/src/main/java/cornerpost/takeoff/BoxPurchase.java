package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.BoxCondition;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Each box bought by size and condition and brought to the plot: a trip, and the way by distance.
 */
final class BoxPurchase implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var box : job.scope().boxes()) lines.addAll(lines(job, box));
    return lines;
  }

  private static List<Line> lines(Job job, Box box) {
    var inYard = box.modified() == ModifiedWhere.IN_YARD;
    var truck =
        switch (job.scope().site().option(SiteQuestions.ACCESS, SiteAccess.class)) {
          case TILT_BED -> "tilt-bed";
          case CRANE -> "truck";
        };
    var lines = new ArrayList<Line>();
    lines.add(
        one(
            "box/" + box.id() + "/purchase",
            "Box " + box.id() + ": " + box.size().label() + ", " + box.condition().label(),
            Buy.of(item(box), inYard ? BuildTask.YARD_STEELWORK : BuildTask.DELIVERY)));
    lines.add(
        one(
            "box/" + box.id() + "/trip",
            "Box " + box.id() + ": loaded and brought",
            Buy.of(truck + "-trip", BuildTask.DELIVERY)));
    lines.add(
        Line.of(
            "box/" + box.id() + "/distance",
            Stage.CONTAINERS,
            "Box " + box.id() + ": way from the depot",
            job.scope().site().figure(SiteQuestions.DELIVERY_DISTANCE),
            job.scope().units().choose(Unit.KM, Unit.MILE),
            "the distance entered; the way back is in the price",
            Buy.of(truck + "-distance", BuildTask.DELIVERY)));
    if (inYard) {
      lines.add(
          Line.of(
              "box/" + box.id() + "/yard",
              Stage.CONTAINERS,
              "Box " + box.id() + ": place in the yard, weeks",
              job.fact("yard.weeks"),
              Unit.count("week"),
              "weeks a box stands there",
              Buy.of("yard-week", BuildTask.YARD_STEELWORK)));
      lines.add(
          one(
              "box/" + box.id() + "/yard-handling",
              "Box " + box.id() + ": brought to the yard and lifted there",
              Buy.of("yard-handling", BuildTask.YARD_STEELWORK)));
    }
    return lines;
  }

  /** Code of the box in the price book: {@code box-40hc-one-trip}. */
  static String item(Box box) {
    return box.size().factId().replace('.', '-') + "-" + condition(box.condition());
  }

  /** The condition as it stands in codes and in the ids of facts. */
  static String condition(BoxCondition condition) {
    return switch (condition) {
      case FACTORY_NEW -> "factory-new";
      case ONE_TRIP -> "one-trip";
      case CARGO_WORTHY -> "cargo-worthy";
      case WIND_TIGHT -> "wind-tight";
      case AS_IS -> "as-is";
    };
  }

  private static Line one(String id, String what, Resource... resources) {
    return Line.of(
        id, Stage.CONTAINERS, what, Figure.count(1), Unit.EACH, "one for each box", resources);
  }
}

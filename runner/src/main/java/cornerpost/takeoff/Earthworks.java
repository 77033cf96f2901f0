package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Digging;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The machine for all earth that is moved; none where digging is by hand. */
final class Earthworks implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    if (!byMachine(job)) return List.of();
    var moved =
        Stream.of("site/topsoil", "foundation/excavation", "drainage/excavation")
            .map(id -> job.find(id).orElse(null))
            .filter(Objects::nonNull)
            .toList();
    var days =
        Figure.sum(Dimension.VOLUME, moved)
            .over(job.fact("excavator.day"))
            .roundedUp()
            .max(Figure.count(1));
    var at = needed(job);
    return List.of(
        Line.of(
            "site/excavator",
            Stage.FOUNDATION,
            "Small excavator, days of hire",
            days,
            Unit.count("day"),
            "all earth moved over a day's output, at least one day",
            Buy.of("excavator-day", at)),
        Line.of(
            "site/excavator-brought",
            Stage.FOUNDATION,
            "Excavator and rammer brought and fetched",
            Figure.count(1),
            Unit.EACH,
            "once",
            Buy.of("excavator-delivery", at)));
  }

  /** The footings; of a house on piles the swale, or the ground to clear. */
  private static BuildTask needed(Job job) {
    if (job.find("foundation/excavation").isPresent()) return BuildTask.EXCAVATE;
    return job.find("drainage/excavation").isPresent() ? BuildTask.DRAINAGE : BuildTask.CLEAR;
  }

  static boolean byMachine(Job job) {
    return job.scope().site().option(SiteQuestions.DIGGING, Digging.class) == Digging.MACHINE;
  }

  static Labour digging(Job job, BuildTask task) {
    return Labour.of(byMachine(job) ? "dig-by-machine" : "dig-by-hand", task);
  }

  static Labour filling(Job job, BuildTask task) {
    return Labour.of(byMachine(job) ? "backfill-by-machine" : "backfill-by-hand", task);
  }
}

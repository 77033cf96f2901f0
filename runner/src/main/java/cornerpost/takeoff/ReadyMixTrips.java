package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.ConcreteSupply;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.List;

/** Trucks of ready-mixed concrete, or the hire of a mixer for bags. */
final class ReadyMixTrips implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var poured =
        job.lines().stream()
            .filter(l -> l.id().startsWith("footing/"))
            .filter(l -> l.id().endsWith("/concrete"))
            .map(Line::named)
            .toList();
    if (poured.isEmpty()) return List.of();
    return switch (job.scope().site().option(SiteQuestions.CONCRETE, ConcreteSupply.class)) {
      case READY_MIX ->
          List.of(
              Line.of(
                  "footing/trucks",
                  Stage.FOUNDATION,
                  "Trucks of concrete",
                  Figure.sum(Dimension.VOLUME, poured)
                      .over(job.fact("mixer-truck.load"))
                      .roundedUp(),
                  Unit.EACH,
                  "all concrete over what a truck holds, rounded up",
                  Buy.of("concrete-truck", BuildTask.POUR)));
      case BAGGED ->
          List.of(
              Line.of(
                  "footing/mixer",
                  Stage.FOUNDATION,
                  "Concrete mixer",
                  Figure.count(1),
                  Unit.EACH,
                  "one hire",
                  Buy.of("mixer-hire", BuildTask.POUR)));
    };
  }
}

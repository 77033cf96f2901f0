package cornerpost.takeoff;

import cornerpost.scope.ConcreteSupply;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;

/** Concrete in a foundation, as it comes to site: by truck, or in bags and mixed by hand. */
final class Concrete {
  private Concrete() {}

  /**
   * @param pour which hours of placing apply: {@code pads}, {@code piers}, {@code strips}, {@code
   *     slab}
   * @param waste the id of the fact: cast against ground or in formwork
   */
  static Line line(
      Job job, String id, String what, Figure volume, String because, String pour, String waste) {
    var supply = job.scope().site().option(SiteQuestions.CONCRETE, ConcreteSupply.class);
    var loss = job.fact(waste);
    return switch (supply) {
      case READY_MIX ->
          Line.of(
              id,
              Stage.FOUNDATION,
              what,
              volume,
              job.volume(),
              because,
              Buy.of("concrete-ready-mix", loss, BuildTask.POUR),
              Labour.of("place-concrete-" + pour, BuildTask.POUR));
      case BAGGED ->
          Line.of(
              id,
              Stage.FOUNDATION,
              what,
              volume,
              job.volume(),
              because,
              Buy.of("concrete-bagged", loss, BuildTask.POUR),
              Labour.of("mix-concrete-by-hand", BuildTask.POUR));
    };
  }
}

package cornerpost.work;

import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;

/**
 * What must be before what in building a container home, whether or not both tasks are in the plan.
 *
 * @param lag never below nothing
 * @param why the reason, in a few words
 */
record Tie(
    BuildTask before,
    BuildTask after,
    LinkRelation relation,
    BigDecimal lag,
    DurationUnit lagUnit,
    String why) {

  /** The plain tie: {@code after} starts when {@code before} is done. */
  boolean isPlain() {
    return relation == LinkRelation.FINISH_TO_START && lag.signum() == 0;
  }
}

package cornerpost.work;

import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Collects the ties of a rule, in words that read as the trade speaks. */
final class Ties {
  private final List<Tie> all = new ArrayList<>();

  /** {@code after} starts when {@code before} is done. */
  Ties then(BuildTask before, BuildTask after, String why) {
    return tie(before, after, LinkRelation.FINISH_TO_START, "0", DurationUnit.DAYS, why);
  }

  /** {@code after} starts when all of {@code before} are done. */
  Ties then(List<BuildTask> before, BuildTask after, String why) {
    before.forEach(b -> then(b, after, why));
    return this;
  }

  /** All of {@code after} wait for {@code before}. */
  Ties then(BuildTask before, List<BuildTask> after, String why) {
    after.forEach(a -> then(before, a, why));
    return this;
  }

  /** Each of the tasks starts when the one named before it is done. */
  Ties inTurn(String why, BuildTask... tasks) {
    for (int i = 1; i < tasks.length; i++) then(tasks[i - 1], tasks[i], why);
    return this;
  }

  /** {@code after} starts so many elapsed days after {@code before} is done. */
  Ties after(String elapsedDays, BuildTask before, BuildTask after, String why) {
    return tie(
        before, after, LinkRelation.FINISH_TO_START, elapsedDays, DurationUnit.ELAPSED_DAYS, why);
  }

  Ties tie(
      BuildTask before,
      BuildTask after,
      LinkRelation relation,
      String lag,
      DurationUnit unit,
      String why) {
    all.add(new Tie(before, after, relation, new BigDecimal(lag), unit, why));
    return this;
  }

  List<Tie> all() {
    return List.copyOf(all);
  }
}

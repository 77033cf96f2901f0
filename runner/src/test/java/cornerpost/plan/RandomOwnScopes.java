package cornerpost.plan;

import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.ProjectQuestions;
import java.util.List;
import java.util.SplittableRandom;

/** Own tasks, links of all kinds, calendars and crews by chance; the seed gives the same again. */
final class RandomOwnScopes {
  private static final List<String> WEEKS =
      List.of("Weekdays", "Six days", "Every day", "Weekends");

  private RandomOwnScopes() {}

  /** Tasks T0 to T(n-1), each linked to some before it; crews that not all can have at once. */
  static OwnScope of(long seed, int tasks, int crews) {
    return of(seed, tasks, crews, false);
  }

  /** Work in whole days alone: no milestones and no waits, whose hour of the day is not noted. */
  static OwnScope worked(long seed, int tasks, int crews) {
    return of(seed, tasks, crews, true);
  }

  private static OwnScope of(long seed, int tasks, int crews, boolean work) {
    var random = new SplittableRandom(seed);
    var scope = new OwnScope().project(ProjectQuestions.CALENDAR, "Weekdays");
    for (int c = 0; c < crews; c++) scope.crew("C" + c, random.nextInt(1, 3));
    for (int i = 0; i < tasks; i++) {
      boolean elapsed = random.nextInt(6) == 0 && !work;
      var unit = elapsed ? DurationUnit.ELAPSED_DAYS : DurationUnit.DAYS;
      scope.task("T" + i, "Task " + i, "" + random.nextInt(work ? 1 : 0, 7), unit);
      scope.calendar("T" + i, WEEKS.get(random.nextInt(WEEKS.size())));
      if (random.nextInt(3) > 0) scope.needs("T" + i, "C" + random.nextInt(crews), 1);
      for (int k = random.nextInt(3); k > 0 && i > 0; k--) {
        var relation = LinkRelation.values()[random.nextInt(3)];
        boolean days = random.nextBoolean() || work;
        var lagUnit = days ? DurationUnit.DAYS : DurationUnit.ELAPSED_DAYS;
        scope.link("T" + random.nextInt(i), "T" + i, relation, "" + random.nextInt(0, 3), lagUnit);
      }
    }
    return scope;
  }
}

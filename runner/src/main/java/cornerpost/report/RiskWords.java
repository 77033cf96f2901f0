package cornerpost.report;

import cornerpost.plan.DatedTask;
import cornerpost.plan.Plan;
import java.time.LocalDate;
import java.time.LocalDateTime;

/** What the trials say, read off the sorted outcomes. */
final class RiskWords {
  private RiskWords() {}

  /** The planned end of the work; the start where there is nothing to do. */
  static LocalDateTime plannedFinish(Plan plan) {
    return plan.programme().tasks().stream()
        .map(DatedTask::finish)
        .max(LocalDateTime::compareTo)
        .orElse(plan.programme().start().atStartOfDay());
  }

  /** The share of the trials that end no later than planned. */
  static double finishWithinPlan(Plan plan) {
    return plan.risk().finish().shareWithin(Words.minutes(plannedFinish(plan)));
  }

  /** The day by which that share of the trials is done. */
  static LocalDate finish(Plan plan, double share) {
    return Words.lastDay(Words.moment(plan.risk().finish().quantile(share)));
  }
}

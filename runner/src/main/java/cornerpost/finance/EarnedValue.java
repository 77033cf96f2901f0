package cornerpost.finance;

import cornerpost.measure.Ratio;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Planned, earned and actual cost and what they foretell, by the terms of ISO 21508:2018 and
 * EIA-748; earned schedule after W. Lipke. What cannot be reckoned is empty, never infinite.
 *
 * @param budget at completion
 * @param planned value of the work that should be in place by now
 * @param earned value of the work in place
 * @param actual cost of it
 * @param time gone, in periods of the plan
 * @param duration planned, in periods
 * @param schedule earned schedule: the time by which the plan had this much in place
 */
public record EarnedValue(
    BigDecimal budget,
    BigDecimal planned,
    BigDecimal earned,
    BigDecimal actual,
    BigDecimal time,
    BigDecimal duration,
    BigDecimal schedule) {

  /**
   * @param plannedByPeriod cumulative planned value at the end of each period, never falling
   */
  public static EarnedValue of(
      List<BigDecimal> plannedByPeriod,
      BigDecimal planned,
      BigDecimal earned,
      BigDecimal actual,
      BigDecimal time) {
    var duration = BigDecimal.valueOf(plannedByPeriod.size());
    var budget = plannedByPeriod.isEmpty() ? BigDecimal.ZERO : last(plannedByPeriod);
    return new EarnedValue(
        budget, planned, earned, actual, time, duration, schedule(plannedByPeriod, earned));
  }

  private static BigDecimal last(List<BigDecimal> values) {
    return values.get(values.size() - 1);
  }

  /**
   * Whole periods whose plan is earned, and the part of the next one: C + (EV - PV(C)) / (PV(C+1) -
   * PV(C)).
   */
  private static BigDecimal schedule(List<BigDecimal> planned, BigDecimal earned) {
    int whole = 0;
    while (whole < planned.size() && planned.get(whole).compareTo(earned) <= 0) whole++;
    if (whole == planned.size()) return BigDecimal.valueOf(whole);
    var before = whole == 0 ? BigDecimal.ZERO : planned.get(whole - 1);
    return BigDecimal.valueOf(whole)
        .add(
            earned
                .subtract(before)
                .max(BigDecimal.ZERO)
                .divide(planned.get(whole).subtract(before), Ratio.PRECISION));
  }

  public BigDecimal costVariance() {
    return earned.subtract(actual);
  }

  public BigDecimal scheduleVariance() {
    return earned.subtract(planned);
  }

  public Optional<BigDecimal> costIndex() {
    return Shares.over(earned, actual);
  }

  public Optional<BigDecimal> scheduleIndex() {
    return Shares.over(earned, planned);
  }

  /** If the rest goes as the work so far: budget over cost index. */
  public Optional<BigDecimal> atCompletionAsSoFar() {
    return costIndex().flatMap(i -> Shares.over(budget, i));
  }

  /** What is then still to be spent. */
  public Optional<BigDecimal> toGoAsSoFar() {
    return atCompletionAsSoFar().map(e -> e.subtract(actual));
  }

  /** The budget less that estimate; below nothing: dearer than budgeted. */
  public Optional<BigDecimal> varianceAsSoFar() {
    return atCompletionAsSoFar().map(budget::subtract);
  }

  /** If the rest goes as budgeted. */
  public BigDecimal atCompletionAsBudgeted() {
    return actual.add(budget.subtract(earned));
  }

  /** If the rest goes as the work so far in cost and in time. */
  public Optional<BigDecimal> atCompletionByBoth() {
    return costIndex()
        .flatMap(c -> scheduleIndex().map(c::multiply))
        .flatMap(i -> Shares.over(budget.subtract(earned), i))
        .map(actual::add);
  }

  /** The cost index that the rest must keep for the budget to hold. */
  public Optional<BigDecimal> toCompleteIndex() {
    return Shares.over(budget.subtract(earned), budget.subtract(actual));
  }

  /** The same for another estimate at completion. */
  public Optional<BigDecimal> toCompleteIndex(BigDecimal atCompletion) {
    return Shares.over(budget.subtract(earned), atCompletion.subtract(actual));
  }

  /** Earned schedule less time gone, in periods. */
  public BigDecimal timeVariance() {
    return schedule.subtract(time);
  }

  public Optional<BigDecimal> timeIndex() {
    return Shares.over(schedule, time);
  }

  /** How long the whole will take at that pace, in periods. */
  public Optional<BigDecimal> durationAtCompletion() {
    return timeIndex().flatMap(i -> Shares.over(duration, i));
  }

  /** The pace that the rest must keep to end as planned. */
  public Optional<BigDecimal> toCompleteTimeIndex() {
    return Shares.over(duration.subtract(schedule), duration.subtract(time));
  }

  public Optional<BigDecimal> complete() {
    return Shares.over(earned, budget);
  }
}

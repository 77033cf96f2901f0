package cornerpost.plan;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The longest path from one event or task to another, in the planned order of work: what decides
 * how soon the second can follow the first.
 *
 * @param from id of the first; empty where the plan has no such task, and so for {@code to}
 * @param steps from the first to the second, both included; empty if nothing leads from one to the
 *     other
 * @param calendar the project's, in which {@code workingDays} are counted
 * @param workingDays from the start of the first to the planned end of the second
 * @param aloneDays the same to the end that the second would have if nothing but the path held it
 * @param elapsedDays calendar days from the first day of the first to the last day of the second
 * @param slackDays how much later than the path asks the second is planned, in days of its own
 *     calendar; 0 where the path drives it
 * @param words the whole in a sentence or two; also why there is no path
 */
public record EventPath(
    Optional<String> from,
    Optional<String> to,
    List<Step> steps,
    String calendar,
    BigDecimal workingDays,
    BigDecimal aloneDays,
    int elapsedDays,
    BigDecimal slackDays,
    String words) {

  /** Nothing was asked. */
  public static final EventPath NONE = none(Optional.empty(), Optional.empty(), "");

  /**
   * A task of the path, with its planned dates.
   *
   * @param driver what makes it follow the step before it, in words
   * @param lastsDays its duration, in days of {@code calendar}
   * @param calendar its own; {@code elapsed days} for a wait
   * @param workingDays of the project's calendar from the end of the step before to its own end; of
   *     the first step from its start. They add up to those of the path
   * @param elapsedDays calendar days from the last day of the step before to its own last day; of
   *     the first step from its first day. They add up to those of the path
   * @param heldBy what outside the path makes it later still; empty if nothing does
   */
  public record Step(
      String id,
      String name,
      String driver,
      LocalDate firstDay,
      LocalDate lastDay,
      BigDecimal lastsDays,
      String calendar,
      BigDecimal workingDays,
      int elapsedDays,
      String heldBy) {}

  public EventPath {
    requireNonNull(from, "from");
    requireNonNull(to, "to");
    steps = List.copyOf(steps);
  }

  /** Of its steps, in order. */
  public List<String> ids() {
    return steps.stream().map(Step::id).toList();
  }

  static EventPath none(Optional<String> from, Optional<String> to, String why) {
    return new EventPath(
        from, to, List.of(), "", BigDecimal.ZERO, BigDecimal.ZERO, 0, BigDecimal.ZERO, why);
  }
}

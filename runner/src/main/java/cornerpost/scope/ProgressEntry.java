package cornerpost.scope;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What has happened to a task.
 *
 * @param task id of the task
 * @param remaining working days of its calendar still to do
 * @param complete share done, 0 to 1
 * @param booked the day for which its crew, crane or inspector is firmly booked
 */
public record ProgressEntry(
    String task,
    Optional<LocalDate> actualStart,
    Optional<LocalDate> actualFinish,
    Optional<BigDecimal> remaining,
    Optional<BigDecimal> complete,
    Optional<LocalDate> booked,
    String cell) {

  /** Nobody is firmly booked. */
  public ProgressEntry(
      String task,
      Optional<LocalDate> actualStart,
      Optional<LocalDate> actualFinish,
      Optional<BigDecimal> remaining,
      Optional<BigDecimal> complete,
      String cell) {
    this(task, actualStart, actualFinish, remaining, complete, Optional.empty(), cell);
  }
}

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
 */
public record ProgressEntry(
    String task,
    Optional<LocalDate> actualStart,
    Optional<LocalDate> actualFinish,
    Optional<BigDecimal> remaining,
    Optional<BigDecimal> complete,
    String cell) {}

package cornerpost.schedule;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What has really happened to a task.
 *
 * <p>A finished task keeps its real dates. A started one keeps its real start; what remains of it
 * is planned after the status moment and still waits for its predecessors. Without {@code
 * remainingMinutes} the remainder is the whole duration less what its calendar worked from the real
 * start to the status moment, and at least one minute.
 */
public record Progress(
    Optional<LocalDateTime> start, Optional<LocalDateTime> finish, OptionalLong remainingMinutes) {
  /** Not begun. */
  public static final Progress NONE =
      new Progress(Optional.empty(), Optional.empty(), OptionalLong.empty());

  public static Progress started(LocalDateTime start) {
    return new Progress(Optional.of(start), Optional.empty(), OptionalLong.empty());
  }

  /** Started, with that many minutes left, counted as the task's duration is. */
  public static Progress started(LocalDateTime start, long remainingMinutes) {
    return new Progress(Optional.of(start), Optional.empty(), OptionalLong.of(remainingMinutes));
  }

  public static Progress finished(LocalDateTime start, LocalDateTime finish) {
    return new Progress(Optional.of(start), Optional.of(finish), OptionalLong.empty());
  }
}

package cornerpost.schedule;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;

/**
 * Whole minutes since 1970-01-01 00:00 local time, the engine's only clock; no zone, no daylight
 * saving.
 */
final class Minutes {
  static final int A_DAY = 24 * 60;

  private Minutes() {}

  /** Seconds are dropped: the engine's smallest step is the minute. */
  static long of(LocalDateTime moment) {
    return moment.toLocalDate().toEpochDay() * A_DAY + moment.toLocalTime().toSecondOfDay() / 60;
  }

  static LocalDateTime moment(long minutes) {
    long day = Math.floorDiv(minutes, (long) A_DAY);
    return LocalDate.ofEpochDay(day).atTime(LocalTime.ofSecondOfDay((minutes - day * A_DAY) * 60));
  }

  static LocalDate date(long minutes) {
    return LocalDate.ofEpochDay(Math.floorDiv(minutes, (long) A_DAY));
  }
}

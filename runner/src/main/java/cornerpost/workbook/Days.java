package cornerpost.workbook;

import cornerpost.measure.Spoken;
import java.time.LocalDate;
import java.time.LocalDateTime;

/** Days as people read them. */
final class Days {
  private Days() {}

  static String shown(LocalDate day) {
    return Spoken.day(day);
  }

  /** The day of a moment in minutes after 1970-01-01; a finish at midnight is of the day before. */
  static LocalDate ofFinish(double minutes) {
    return LocalDateTime.of(1970, 1, 1, 0, 0).plusMinutes(Math.round(minutes) - 1).toLocalDate();
  }
}

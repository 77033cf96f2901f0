package cornerpost.schedule;

import java.time.LocalDate;

/**
 * On which days a stretch of time is shown to people: the one place that decides it.
 *
 * <p>A task shows from the day of its first minute to the day of its last minute, so one that ends
 * at midnight is not shown on the day after. A milestone has no minute of its own; it shows on the
 * day its moment lies in. Only midnight belongs to two days: there a milestone that waits for the
 * finish of something shows at the end of the day before, and any other at the start of the day.
 * (In a calendar with nights off a milestone that follows a finish is at that finish, say Friday
 * 16:00, and so shows on Friday; one set by a date or by a start shows on the day that begins.)
 */
final class ShownDays {
  private ShownDays() {}

  static LocalDate first(long start, long finish, boolean followsFinish) {
    return start == finish ? ofMilestone(start, followsFinish) : Minutes.date(start);
  }

  static LocalDate last(long start, long finish, boolean followsFinish) {
    return start == finish ? ofMilestone(start, followsFinish) : Minutes.date(finish - 1);
  }

  private static LocalDate ofMilestone(long moment, boolean followsFinish) {
    return Minutes.date(followsFinish ? moment - 1 : moment);
  }

  static Dates dates(long start, long finish, boolean followsFinish) {
    return new Dates(
        Minutes.moment(start),
        Minutes.moment(finish),
        first(start, finish, followsFinish),
        last(start, finish, followsFinish));
  }
}

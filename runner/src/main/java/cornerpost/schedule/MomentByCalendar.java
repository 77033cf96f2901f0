package cornerpost.schedule;

/**
 * One moment as a number of working minutes in one calendar after another. Neighbours in a network
 * mostly share a calendar, so the number of the last one asked for is kept.
 */
final class MomentByCalendar {
  private final long moment;
  private WorkCalendar calendar;
  private long worked;

  MomentByCalendar(long moment) {
    this.moment = moment;
  }

  long in(WorkCalendar asked) {
    if (asked != calendar) {
      calendar = asked;
      worked = asked.worked(moment);
    }
    return worked;
  }
}

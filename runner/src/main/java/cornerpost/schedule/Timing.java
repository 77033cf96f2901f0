package cornerpost.schedule;

import java.util.List;

/**
 * What the network alone, with crews without number, says about one task.
 *
 * <p>Float is counted as the task's duration is: in working minutes of its calendar, or in elapsed
 * minutes. It counts moves in the task's own time: a task on weekdays that may slip from Friday
 * evening to Monday morning has none.
 *
 * @param early as soon as its links and dates allow
 * @param late as late as possible without moving the finish of the plan or missing a deadline
 *     further on; before {@code early} when a deadline cannot be met
 * @param totalFloatMinutes from early to late start; negative when a deadline is missed
 * @param freeFloatMinutes how far it can move without moving any other task; never more than total
 *     float
 * @param dayMinutes minutes of one day of its float: its calendar's longest working day, or 24
 *     hours if elapsed
 * @param drivesFinish whether a chain of waits, each for the last that arrives, leads from it to
 *     the finish
 * @param critical whether it has no float left, or drives the finish. The two agree with one
 *     calendar and no deadline; with several, a wait that ends on a weekend drives the finish
 *     though it has hours to spare
 * @param drivers the links that hold it where it is; empty if a date, or nothing, does
 * @param drivenByDate whether the start of the plan, the status moment or its own not-before date
 *     holds it
 */
public record Timing(
    Activity activity,
    Dates early,
    Dates late,
    long totalFloatMinutes,
    long freeFloatMinutes,
    long dayMinutes,
    boolean drivesFinish,
    boolean critical,
    List<Link> drivers,
    boolean drivenByDate) {
  public Timing {
    drivers = List.copyOf(drivers);
  }

  public String id() {
    return activity.id();
  }

  public double totalFloatDays() {
    return (double) totalFloatMinutes / dayMinutes;
  }

  public double freeFloatDays() {
    return (double) freeFloatMinutes / dayMinutes;
  }

  /** Its duration, or what remains of it, in days of its own calendar. */
  public double durationDays() {
    return (double) activity.minutes() / dayMinutes;
  }
}

package cornerpost.schedule;

import static java.util.Objects.requireNonNull;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A task: one unbroken stretch of work, a wait, or a milestone (no duration).
 *
 * @param id its stable name, one in a network
 * @param name what people call it
 * @param minutes duration, 0 or more; 0 makes it a milestone
 * @param unit working minutes of its calendar, or elapsed minutes. An elapsed task starts and ends
 *     at any hour; a milestone in working minutes happens in working time, the ends of the day
 *     included
 * @param calendar when it is worked on; empty takes the network's default
 * @param notBefore it starts no earlier
 * @param deadline it should finish by then; a deadline moves no early date, it makes float negative
 * @param demands how many of each crew it holds from start to finish, 1 or more each
 * @param progress what has really happened
 */
public record Activity(
    String id,
    String name,
    long minutes,
    LagUnit unit,
    Optional<WorkCalendar> calendar,
    Optional<LocalDateTime> notBefore,
    Optional<LocalDateTime> deadline,
    Map<String, Integer> demands,
    Progress progress) {
  public Activity {
    requireNonNull(id, "id");
    requireNonNull(name, "name");
    requireNonNull(unit, "unit");
    requireNonNull(calendar, "calendar");
    requireNonNull(notBefore, "notBefore");
    requireNonNull(deadline, "deadline");
    requireNonNull(progress, "progress");
    demands = Collections.unmodifiableMap(new TreeMap<>(demands)); // sorted: one order in every run
  }

  /** A task of that many working minutes in the network's default calendar. */
  public static Activity working(String id, String name, long minutes) {
    return plain(id, name, minutes, LagUnit.WORKING_MINUTES);
  }

  /** A task or wait that runs through nights, weekends and holidays. */
  public static Activity elapsed(String id, String name, long minutes) {
    return plain(id, name, minutes, LagUnit.ELAPSED_MINUTES);
  }

  /** A moment without duration. */
  public static Activity milestone(String id, String name) {
    return plain(id, name, 0, LagUnit.WORKING_MINUTES);
  }

  private static Activity plain(String id, String name, long minutes, LagUnit unit) {
    return new Activity(
        id,
        name,
        minutes,
        unit,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Progress.NONE);
  }

  public boolean isMilestone() {
    return minutes == 0;
  }

  public boolean isElapsed() {
    return unit == LagUnit.ELAPSED_MINUTES;
  }

  public Activity lasting(long newMinutes) {
    return new Activity(
        id, name, newMinutes, unit, calendar, notBefore, deadline, demands, progress);
  }

  public Activity in(WorkCalendar newCalendar) {
    return new Activity(
        id, name, minutes, unit, Optional.of(newCalendar), notBefore, deadline, demands, progress);
  }

  public Activity notBefore(LocalDateTime moment) {
    return new Activity(
        id, name, minutes, unit, calendar, Optional.of(moment), deadline, demands, progress);
  }

  public Activity by(LocalDateTime newDeadline) {
    return new Activity(
        id, name, minutes, unit, calendar, notBefore, Optional.of(newDeadline), demands, progress);
  }

  /** Adds or replaces the demand for one crew. */
  public Activity needing(int number, String crew) {
    var more = new TreeMap<>(demands);
    more.put(crew, number);
    return new Activity(id, name, minutes, unit, calendar, notBefore, deadline, more, progress);
  }

  public Activity with(Progress newProgress) {
    return new Activity(
        id, name, minutes, unit, calendar, notBefore, deadline, demands, newProgress);
  }
}

package cornerpost.schedule;

import static java.util.Objects.requireNonNull;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * When work goes on: one unbroken stretch on each weekday, holidays left out; for ever, in both
 * directions.
 *
 * <p>A working day starts at 08:00; one longer than 16 hours starts early enough to end at 24:00.
 * "One day" ({@code d}) of a calendar is its longest working day ({@link #dayMinutes()}).
 *
 * <p>Working minutes are numbered without a gap: {@link #worked} gives the number of working
 * minutes before a moment, {@link #startOf} the moment at which a numbered minute begins, {@link
 * #endOf} the moment by which that many are done. A night or weekend is one number and two moments:
 * {@code endOf} is its beginning, {@code startOf} its end. Each look-up is a week's arithmetic and
 * a binary search among the holidays, so no date is too far away.
 */
public final class WorkCalendar {
  private static final int START = 8 * 60;
  private static final int EIGHT_HOURS = 8 * 60;
  private static final int EPOCH_SHIFT = 3; // 1970-01-01 was a Thursday; weeks here begin on Monday

  private final String name;
  private final int[] from = new int[7];
  private final int[] minutes = new int[7];
  private final int[] weekBefore = new int[8];
  private final long weekMinutes;
  private final int dayMinutes;
  private final int commonMinutes; // divides the minutes of every weekday
  private final byte[] weekdayOf; // each such part of a week's work
  private final SortedSet<LocalDate> holidays;
  private final long[] holidayDay; // only those that take working time away
  private final long[] holidayNumber; // working minutes before the holiday
  private final long[] lost; // minutes taken away by the holidays before this one

  /**
   * A calendar of its own.
   *
   * @param name what the owner calls it
   * @param minutesMondayToSunday minutes worked on each weekday, seven numbers from 0 to 1440
   * @param holidays days on which nobody works; empty when this calendar keeps none
   * @throws IllegalArgumentException if there are not seven numbers, one is out of range, or no day
   *     is worked
   */
  public static WorkCalendar of(
      String name, List<Integer> minutesMondayToSunday, Collection<LocalDate> holidays) {
    if (minutesMondayToSunday.size() != 7) {
      throw new IllegalArgumentException(
          "Calendar '"
              + name
              + "' needs seven working times, Monday to Sunday, but has "
              + minutesMondayToSunday.size());
    }
    int[] from = new int[7];
    int[] minutes = new int[7];
    for (int d = 0; d < 7; d++) {
      minutes[d] = minutesMondayToSunday.get(d);
      if (minutes[d] < 0 || minutes[d] > Minutes.A_DAY) {
        throw new IllegalArgumentException(
            "Calendar '"
                + name
                + "' has "
                + minutes[d]
                + " working minutes on "
                + DayOfWeek.of(d + 1)
                + "; a day has 0 to 1440");
      }
      from[d] = Math.min(START, Minutes.A_DAY - minutes[d]);
    }
    return new WorkCalendar(name, from, minutes, holidays);
  }

  /** Monday to Friday, eight hours a day. */
  public static WorkCalendar weekdays(Collection<LocalDate> holidays) {
    return eightHours("Weekdays", holidays, 5, 0);
  }

  /** Monday to Saturday, eight hours a day. */
  public static WorkCalendar sixDays(Collection<LocalDate> holidays) {
    return eightHours("Six days", holidays, 6, 0);
  }

  /** All seven days, eight hours a day. */
  public static WorkCalendar everyDay(Collection<LocalDate> holidays) {
    return eightHours("Every day", holidays, 7, 0);
  }

  /** Saturday and Sunday, eight hours a day. */
  public static WorkCalendar weekends(Collection<LocalDate> holidays) {
    return eightHours("Weekends", holidays, 7, 5);
  }

  /** The same week, with no holiday kept. */
  public WorkCalendar withoutHolidays() {
    return holidays.isEmpty() ? this : new WorkCalendar(name, from, minutes, Set.of());
  }

  /** All 24 hours of all days; a day of it is 24 hours. */
  public static WorkCalendar roundTheClock() {
    return of("Round the clock", List.of(1440, 1440, 1440, 1440, 1440, 1440, 1440), Set.of());
  }

  private static WorkCalendar eightHours(
      String name, Collection<LocalDate> holidays, int days, int skipped) {
    Integer[] minutes = new Integer[7];
    for (int d = 0; d < 7; d++) {
      minutes[d] = d >= skipped && d < days ? EIGHT_HOURS : 0;
    }
    return of(name, List.of(minutes), holidays);
  }

  private WorkCalendar(String name, int[] from, int[] minutes, Collection<LocalDate> holidays) {
    this.name = requireNonNull(name, "name");
    this.holidays = new TreeSet<>(holidays);
    int longest = 0;
    for (int d = 0; d < 7; d++) {
      this.from[d] = from[d];
      this.minutes[d] = minutes[d];
      weekBefore[d + 1] = weekBefore[d] + minutes[d];
      longest = Math.max(longest, minutes[d]);
    }
    dayMinutes = longest;
    weekMinutes = weekBefore[7];
    commonMinutes = commonMinutes();
    weekdayOf = weekdays();
    if (weekMinutes == 0) {
      throw new IllegalArgumentException(
          "Calendar '"
              + name
              + "' has no working time on any weekday, so nothing could ever be done in it");
    }
    holidayDay =
        this.holidays.stream()
            .filter(day -> minutes[day.getDayOfWeek().getValue() - 1] > 0)
            .mapToLong(LocalDate::toEpochDay)
            .toArray();
    holidayNumber = new long[holidayDay.length];
    lost = new long[holidayDay.length + 1];
    for (int h = 0; h < holidayDay.length; h++) {
      long shifted = holidayDay[h] + EPOCH_SHIFT;
      long week = Math.floorDiv(shifted, 7L);
      int weekday = (int) (shifted - week * 7);
      holidayNumber[h] = week * weekMinutes + weekBefore[weekday] - lost[h];
      lost[h + 1] = lost[h] + minutes[weekday];
    }
  }

  private int commonMinutes() {
    int common = 0;
    for (int m : minutes) {
      int a = m;
      while (a != 0) {
        int rest = common % a;
        common = a;
        a = rest;
      }
    }
    return Math.max(1, common);
  }

  private byte[] weekdays() {
    byte[] found = new byte[(int) (weekMinutes / commonMinutes)];
    for (int d = 0; d < 7; d++) {
      Arrays.fill(
          found, weekBefore[d] / commonMinutes, weekBefore[d + 1] / commonMinutes, (byte) d);
    }
    return found;
  }

  /**
   * The time that two calendars have in common, such as a task's own and that of its crew.
   *
   * @throws IllegalArgumentException if they never work at the same time
   */
  public WorkCalendar and(WorkCalendar other) {
    if (equals(other)) {
      return this;
    }
    int[] bothFrom = new int[7];
    int[] both = new int[7];
    for (int d = 0; d < 7; d++) {
      bothFrom[d] = Math.max(from[d], other.from[d]);
      both[d] =
          Math.max(
              0, Math.min(from[d] + minutes[d], other.from[d] + other.minutes[d]) - bothFrom[d]);
    }
    var closed = new TreeSet<>(holidays);
    closed.addAll(other.holidays);
    return new WorkCalendar(name + " and " + other.name, bothFrom, both, closed);
  }

  /** A calendar that works whenever either does, and in any gap between the two on one day. */
  WorkCalendar hull(WorkCalendar other) {
    if (sameTimes(other)) {
      return this;
    }
    int[] first = new int[7];
    int[] length = new int[7];
    for (int d = 0; d < 7; d++) {
      boolean mine = minutes[d] > 0;
      boolean theirs = other.minutes[d] > 0;
      int start =
          mine && theirs ? Math.min(from[d], other.from[d]) : mine ? from[d] : other.from[d];
      int end =
          Math.max(mine ? from[d] + minutes[d] : 0, theirs ? other.from[d] + other.minutes[d] : 0);
      first[d] = start;
      length[d] = Math.max(0, end - start);
    }
    var closed = new TreeSet<LocalDate>();
    for (LocalDate day : holidays) {
      if (other.minutesOn(day) == 0) {
        closed.add(day);
      }
    }
    for (LocalDate day : other.holidays) {
      if (minutesOn(day) == 0) {
        closed.add(day);
      }
    }
    return new WorkCalendar(name + " or " + other.name, first, length, closed);
  }

  public String name() {
    return name;
  }

  /** Days on which nobody works, whether or not their weekday is a working day. */
  public SortedSet<LocalDate> holidays() {
    return java.util.Collections.unmodifiableSortedSet(holidays);
  }

  /** Working minutes of one {@code d}: the longest working day. */
  public int dayMinutes() {
    return dayMinutes;
  }

  /** Minutes worked on a weekday that is no holiday, 0 to 1440. */
  public int minutesOn(DayOfWeek day) {
    return minutes[day.getValue() - 1];
  }

  /** Minutes worked on that date, 0 to 1440. */
  public int minutesOn(LocalDate date) {
    return holidays.contains(date) ? 0 : minutesOn(date.getDayOfWeek());
  }

  public boolean isWorkingDay(LocalDate date) {
    return minutesOn(date) > 0;
  }

  /** The first working day on or after the date. */
  public LocalDate firstWorkingDayFrom(LocalDate date) {
    return Minutes.date(startOf(worked(date.toEpochDay() * Minutes.A_DAY)));
  }

  /** The last working day on or before the date. */
  public LocalDate lastWorkingDayTo(LocalDate date) {
    return Minutes.date(startOf(worked((date.toEpochDay() + 1) * Minutes.A_DAY) - 1));
  }

  /**
   * Working days from the first date to the last, both included; 0 when the last is before the
   * first.
   */
  public long workingDays(LocalDate first, LocalDate last) {
    long count = 0;
    if (last.isBefore(first)) {
      return 0;
    }
    int worked = 0;
    for (int m : minutes) {
      worked += m > 0 ? 1 : 0;
    }
    long days = last.toEpochDay() - first.toEpochDay() + 1;
    count = days / 7 * worked;
    for (long d = first.toEpochDay() + days / 7 * 7; d <= last.toEpochDay(); d++) {
      count += minutesOn(LocalDate.ofEpochDay(d).getDayOfWeek()) > 0 ? 1 : 0;
    }
    return count - (firstHoliday(last.toEpochDay() + 1) - firstHoliday(first.toEpochDay()));
  }

  /**
   * The moment that many working minutes later, or earlier for a negative number. Going forward it
   * is the end of the last minute worked, so a day from Friday 08:00 ends on Friday at 16:00; going
   * back it is the beginning of the first. Zero gives the moment itself.
   */
  public LocalDateTime plus(LocalDateTime moment, long workingMinutes) {
    if (workingMinutes == 0) {
      return moment;
    }
    long number = worked(Minutes.of(moment)) + workingMinutes;
    return Minutes.moment(workingMinutes > 0 ? endOf(number) : startOf(number));
  }

  /** Working minutes from one moment to another; negative when the second is earlier. */
  public long between(LocalDateTime from, LocalDateTime to) {
    return worked(Minutes.of(to)) - worked(Minutes.of(from));
  }

  /**
   * The moment itself if work goes on in the minute after it, else the beginning of the next
   * working minute.
   */
  public LocalDateTime nextStart(LocalDateTime moment) {
    return Minutes.moment(startOf(worked(Minutes.of(moment))));
  }

  /**
   * The moment itself if work goes on in the minute before it, else the end of the last working
   * minute.
   */
  public LocalDateTime lastEnd(LocalDateTime moment) {
    return Minutes.moment(endOf(worked(Minutes.of(moment))));
  }

  /** Number of working minutes before a moment, counted from an arbitrary but fixed origin. */
  long worked(long moment) {
    long day = Math.floorDiv(moment, (long) Minutes.A_DAY);
    int minute = (int) (moment - day * Minutes.A_DAY);
    long shifted = day + EPOCH_SHIFT;
    long week = Math.floorDiv(shifted, 7L);
    int weekday = (int) (shifted - week * 7);
    int h = firstHoliday(day);
    long number = week * weekMinutes + weekBefore[weekday] - lost[h];
    if (h < holidayDay.length && holidayDay[h] == day) {
      return number;
    }
    return number + Math.max(0, Math.min(minute - from[weekday], minutes[weekday]));
  }

  /**
   * The last moment before which exactly that many minutes are worked: when the next of them
   * begins.
   */
  long startOf(long number) {
    int h = holidaysBeforeMinute(number);
    long unbroken = number + lost[h];
    long week =
        (int) unbroken == unbroken // the shorter division is the faster
            ? Math.floorDiv((int) unbroken, (int) weekMinutes)
            : Math.floorDiv(unbroken, weekMinutes);
    int rest = (int) (unbroken - week * weekMinutes);
    int weekday = weekdayOf[rest / commonMinutes];
    return (week * 7 + weekday - EPOCH_SHIFT) * Minutes.A_DAY
        + from[weekday]
        + rest
        - weekBefore[weekday];
  }

  /** The first moment by which that many minutes are worked: when the last of them ends. */
  long endOf(long number) {
    return startOf(number - 1) + 1;
  }

  /** The smallest number of minutes whose end is not before the moment. */
  long numberEndingAtOrAfter(long moment) {
    long number = worked(moment);
    return endOf(number) < moment ? number + 1 : number;
  }

  /** The greatest number whose next minute begins at or before the moment. */
  long numberStartingAtOrBefore(long moment) {
    long number = worked(moment);
    return startOf(number) > moment ? number - 1 : number;
  }

  /**
   * The moment itself if it lies in working time, both ends of the stretch included, else the next
   * beginning.
   */
  long closedAtOrAfter(long moment) {
    long number = worked(moment);
    return endOf(number) == moment ? moment : startOf(number);
  }

  /**
   * The moment itself if it lies in working time, both ends of the stretch included, else the last
   * end.
   */
  long closedAtOrBefore(long moment) {
    long number = worked(moment);
    return startOf(number) == moment ? moment : endOf(number);
  }

  private int firstHoliday(long day) {
    int at = Arrays.binarySearch(holidayDay, day);
    return at >= 0 ? at : -at - 1;
  }

  /** Holidays that lie before the numbered minute; several in a row share one number. */
  private int holidaysBeforeMinute(long number) {
    int low = 0;
    int high = holidayNumber.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (holidayNumber[middle] <= number) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Whether both always work at the same time, whatever they are called. */
  boolean sameTimes(WorkCalendar other) {
    if (this == other) {
      return true;
    }
    for (int d = 0; d < 7; d++) {
      if (minutes[d] != other.minutes[d] || (minutes[d] > 0 && from[d] != other.from[d])) {
        return false;
      }
    }
    return Arrays.equals(holidayDay, other.holidayDay);
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof WorkCalendar other
        && name.equals(other.name)
        && Arrays.equals(from, other.from)
        && Arrays.equals(minutes, other.minutes)
        && holidays.equals(other.holidays);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, Arrays.hashCode(minutes), holidays);
  }

  @Override
  public String toString() {
    return name;
  }
}

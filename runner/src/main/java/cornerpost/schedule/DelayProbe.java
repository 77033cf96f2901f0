package cornerpost.schedule;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Optional;

/**
 * The critical path test: the first open task of the longest path is given a very long delay, and
 * the finish must move by exactly as much.
 *
 * <p>As published, 600 working days are added and the finish must move by 600 working days. Where
 * calendars differ that equality cannot hold, though every link is there: holidays that one
 * calendar works through and another keeps come into the path or leave it, and 600 days of one
 * calendar are not a whole number of days of another. What can hold then, and holds exactly, is
 * this: without holidays every calendar repeats each week, so that a plan whose path is driven by
 * finishes moves as a whole when 120 weeks are added to a task of it. So the delay is put in once
 * more without holidays, as the working time of 120 weeks (600 days of a five-day week), and the
 * finish must move by 120 weeks to the minute.
 *
 * <p>Source: DCMA-EA PAM 200.1 (2012), section 4, check 12; the exact statement for mixed calendars
 * is our own.
 */
final class DelayProbe {
  static final long DAYS = 600;
  private static final long WEEKS = 120;

  private final Timetable timetable;

  private DelayProbe(Timetable timetable) {
    this.timetable = timetable;
  }

  /**
   * What came of it.
   *
   * @param task that was delayed
   * @param movedDays how far the finish moved, in days of the task's calendar, for {@link #DAYS}
   * @param exact whether the finish moved by exactly the delay, by either statement
   */
  record Outcome(Activity task, double movedDays, boolean exact) {}

  /** Empty where no task of the longest path is still to begin. */
  static Optional<Outcome> of(Timetable timetable) {
    return new DelayProbe(timetable).published();
  }

  private static Optional<Activity> probed(Timetable times) {
    return times.longestPath().stream()
        .map(times.network()::get)
        .filter(a -> a.minutes() > 0 && a.progress().start().isEmpty())
        .findFirst();
  }

  private static LocalDateTime delayed(Network network, Activity a, long minutes) {
    return Passes.of(network.with(a.lasting(a.minutes() + minutes))).finish();
  }

  private Optional<Outcome> published() {
    Network network = timetable.network();
    return probed(timetable)
        .map(
            a -> {
              WorkCalendar calendar = network.calendarOf(a.id());
              long delay = DAYS * (a.isElapsed() ? Minutes.A_DAY : calendar.dayMinutes());
              LocalDateTime later = delayed(network, a, delay);
              long moved =
                  a.isElapsed()
                      ? Minutes.of(later) - Minutes.of(timetable.finish())
                      : calendar.between(timetable.finish(), later);
              boolean exact = moved == delay || mixed(a) && movesByWeeks();
              return new Outcome(a, (double) DAYS * moved / delay, exact);
            });
  }

  /** Whether anything open is counted in another time than the task. */
  private boolean mixed(Activity a) {
    Network network = timetable.network();
    WorkCalendar calendar = network.calendarOf(a.id());
    return timetable.timings().stream()
            .map(Timing::activity)
            .filter(t -> t.progress().finish().isEmpty())
            .anyMatch(
                t ->
                    t.isElapsed() != a.isElapsed()
                        || !network.calendarOf(t.id()).sameTimes(calendar))
        || network.links().stream()
            .anyMatch(l -> l.lagMinutes() != 0 && l.lagUnit() == LagUnit.ELAPSED_MINUTES);
  }

  private boolean movesByWeeks() {
    Network plain = withoutHolidays(timetable.network());
    Timetable times = Passes.of(plain);
    return probed(times)
        .map(
            a -> {
              long delay = WEEKS * (a.isElapsed() ? 7L * Minutes.A_DAY : week(plain, a));
              LocalDateTime later = delayed(plain, a, delay);
              return later.equals(times.finish().plusWeeks(WEEKS));
            })
        .orElse(false);
  }

  private static long week(Network network, Activity a) {
    WorkCalendar calendar = network.calendarOf(a.id());
    long sum = 0;
    for (DayOfWeek day : DayOfWeek.values()) {
      sum += calendar.minutesOn(day);
    }
    return sum;
  }

  private static Network withoutHolidays(Network network) {
    var activities = new ArrayList<Activity>();
    for (Activity a : network.activities()) {
      activities.add(a.calendar().map(c -> a.in(c.withoutHolidays())).orElse(a));
    }
    var crews = new ArrayList<Crew>();
    for (Crew c : network.crews()) {
      crews.add(new Crew(c.name(), c.available(), c.calendar().map(WorkCalendar::withoutHolidays)));
    }
    return Network.of(
        activities,
        network.links(),
        crews,
        network.start(),
        network.defaultCalendar().withoutHolidays(),
        network.status());
  }
}

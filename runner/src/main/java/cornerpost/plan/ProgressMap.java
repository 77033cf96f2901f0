package cornerpost.plan;

import cornerpost.schedule.Progress;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.Scope;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;

/**
 * What the owner noted as begun or done, as moments.
 *
 * <p>A real start is the first working minute of its day, a real finish the last (08:00 and 16:00
 * on a day that the calendar does not work). What is noted for the status date itself counts as
 * done by its first minute, from which the rest is planned.
 */
final class ProgressMap {
  private static final int A_DAY = 24 * 60;

  private final WorkPlan work;
  private final Scope scope;
  private final Map<String, WorkCalendar> calendars;
  private final LocalDate status;
  private final Problems problems;

  ProgressMap(
      WorkPlan work,
      Scope scope,
      Map<String, WorkCalendar> calendars,
      LocalDate status,
      Problems problems) {
    this.work = work;
    this.scope = scope;
    this.calendars = calendars;
    this.status = status;
    this.problems = problems;
  }

  /** The entries by id of their task; the first of two for one task. */
  static Map<String, ProgressEntry> entries(Scope scope, WorkPlan work) {
    var found = new HashMap<String, ProgressEntry>();
    for (var e : scope.progress()) {
      var tasks = Delay.find(e.task(), work);
      if (tasks.size() == 1) found.putIfAbsent(tasks.get(0).id(), e);
    }
    return found;
  }

  Map<String, Progress> read() {
    var found = new HashMap<String, Progress>();
    for (var e : scope.progress()) {
      var tasks = Delay.find(e.task(), work);
      if (tasks.size() != 1) {
        problems.remark(
            OwnerSheet.PROGRESS,
            e.cell(),
            "no single task of this plan has the id '" + e.task() + "'",
            "the entry is kept and changes nothing");
      } else if (found.containsKey(tasks.get(0).id())) {
        fault(e, "a second entry for task '" + e.task() + "'", "expected one row for each task");
      } else {
        found.put(tasks.get(0).id(), progress(e, tasks.get(0)));
      }
    }
    return found;
  }

  private void fault(ProgressEntry e, String found, String expected) {
    problems.fault(OwnerSheet.PROGRESS, e.cell(), found, expected);
  }

  private Progress progress(ProgressEntry e, WorkTask t) {
    var calendar = calendars.get(t.calendar());
    if (calendar == null || !sound(e, t.minutes())) return Progress.NONE;
    if (e.actualFinish().isPresent()) {
      var finish = notAfterStatus(end(e.actualFinish().get(), t, calendar));
      var start =
          t.minutes() == 0
              ? finish
              : e.actualStart().map(d -> notAfterStatus(begin(d, t, calendar))).orElse(finish);
      return Progress.finished(start.isAfter(finish) ? finish : start, finish);
    }
    if (e.actualStart().isEmpty()) return Progress.NONE;
    var start = notAfterStatus(begin(e.actualStart().get(), t, calendar));
    var day = BigDecimal.valueOf(t.elapsed() ? A_DAY : calendar.dayMinutes());
    var left =
        e.remaining()
            .map(d -> d.multiply(day))
            .or(
                () ->
                    e.complete()
                        .map(
                            c ->
                                BigDecimal.ONE
                                    .subtract(c)
                                    .multiply(BigDecimal.valueOf(t.minutes()))));
    return left.isPresent()
        ? Progress.started(start, left.get().setScale(0, RoundingMode.UP).longValueExact())
        : Progress.started(start);
  }

  private boolean sound(ProgressEntry e, long minutes) {
    boolean sound = true;
    if (e.actualStart().isPresent() && e.actualStart().get().isAfter(status)) {
      fault(
          e,
          "task '" + e.task() + "' started on " + e.actualStart().get(),
          "expected a day up to the status date, " + status);
      sound = false;
    }
    if (e.actualFinish().isPresent() && e.actualFinish().get().isAfter(status)) {
      fault(
          e,
          "task '" + e.task() + "' finished on " + e.actualFinish().get(),
          "expected a day up to the status date, " + status);
      sound = false;
    }
    if (e.actualStart().isPresent()
        && e.actualFinish().isPresent()
        && e.actualFinish().get().isBefore(e.actualStart().get())) {
      fault(
          e,
          "task '" + e.task() + "' finished before it started",
          "expected a finish on or after " + e.actualStart().get());
      sound = false;
    }
    if (e.actualFinish().isPresent() && e.actualStart().isEmpty() && minutes > 0) {
      fault(
          e,
          "task '" + e.task() + "' is finished but not started",
          "expected the day on which it started");
      sound = false;
    }
    boolean begun =
        e.remaining().isPresent() || e.complete().filter(c -> c.signum() > 0).isPresent();
    if (begun && e.actualStart().isEmpty() && e.actualFinish().isEmpty()) {
      fault(
          e,
          "task '" + e.task() + "' has begun, but no day is given",
          "expected the day on which it started");
      sound = false;
    }
    return sound;
  }

  private LocalDateTime notAfterStatus(LocalDateTime moment) {
    var limit = status.atStartOfDay();
    return moment.isAfter(limit) ? limit : moment;
  }

  private static LocalDateTime begin(LocalDate day, WorkTask t, WorkCalendar calendar) {
    if (t.elapsed()) return day.atStartOfDay();
    return calendar.isWorkingDay(day) ? calendar.nextStart(day.atStartOfDay()) : day.atTime(8, 0);
  }

  private static LocalDateTime end(LocalDate day, WorkTask t, WorkCalendar calendar) {
    if (t.elapsed()) return day.plusDays(1).atStartOfDay();
    return calendar.isWorkingDay(day)
        ? calendar.lastEnd(day.plusDays(1).atStartOfDay())
        : day.atTime(16, 0);
  }
}

package cornerpost.plan;

import cornerpost.measure.Spoken;
import cornerpost.schedule.Progress;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.work.NearIds;
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

  /**
   * The entries by id of their task, as they are planned with; the first of two for one task.
   *
   * @param status the day up to which things can have happened
   */
  static Map<String, ProgressEntry> entries(Scope scope, WorkPlan work, LocalDate status) {
    var found = new HashMap<String, ProgressEntry>();
    for (var e : scope.progress()) {
      var tasks = Delay.find(e.task(), work);
      if (tasks.size() != 1) continue;
      var t = tasks.get(0);
      found.putIfAbsent(t.id(), SettledProgress.of(e, status, t.minutes() == 0).entry());
    }
    return found;
  }

  Map<String, Progress> read() {
    var found = new HashMap<String, Progress>();
    var start = scope.project().date(ProjectQuestions.START);
    if (scope.progress().isEmpty() && status.isAfter(start)) {
      problems.remark(
          OwnerSheet.PROGRESS,
          "",
          "nothing is noted as begun or done, and the plan is of "
              + Spoken.day(status)
              + ", after its start on "
              + Spoken.day(start),
          "all work is planned from that day on; note what is done");
    }
    for (var e : scope.progress()) {
      var tasks = Delay.find(e.task(), work);
      if (tasks.size() != 1) {
        problems.remark(
            OwnerSheet.PROGRESS,
            e.cell(),
            "no single task of this plan has the id '" + e.task() + "'",
            "the entry is kept and changes nothing" + NearIds.hint(e.task(), work));
      } else if (found.containsKey(tasks.get(0).id())) {
        problems.fault(
            OwnerSheet.PROGRESS,
            e.cell(),
            "a second entry for task '" + e.task() + "'",
            "expected one row for each task");
      } else {
        var t = tasks.get(0);
        var settled = SettledProgress.of(e, status, t.minutes() == 0);
        for (var s : settled.said()) {
          problems.remark(OwnerSheet.PROGRESS, e.cell(), s.found(), s.taken());
        }
        found.put(t.id(), progress(settled.entry(), t));
      }
    }
    PassingTime.addTo(found, work, status.atStartOfDay(), problems);
    outOfOrder(found);
    return found;
  }

  /** Work that began before what it waits for was done. */
  private void outOfOrder(Map<String, Progress> found) {
    var cells = new HashMap<String, String>();
    for (var e : scope.progress()) {
      var tasks = Delay.find(e.task(), work);
      if (tasks.size() == 1) cells.putIfAbsent(tasks.get(0).id(), e.cell());
    }
    for (var l : work.links()) {
      var after = found.getOrDefault(l.after(), Progress.NONE);
      if (l.relation() != LinkRelation.FINISH_TO_START || l.lagMinutes() < 0) continue;
      if (after.start().isEmpty()) continue;
      var before = found.getOrDefault(l.before(), Progress.NONE);
      if (before.finish().filter(f -> !f.isAfter(after.start().get())).isPresent()) continue;
      if (before.finish().isPresent() && sameDay(before.finish().get(), after.start().get())) {
        continue; // days are noted, not hours
      }
      problems.remark(
          OwnerSheet.PROGRESS,
          cells.getOrDefault(l.after(), ""),
          "task '"
              + l.after()
              + "' started before '"
              + l.before()
              + (before.finish().isPresent() ? "' was finished" : "', which is not finished"),
          after.finish().isPresent() || before.finish().isPresent()
              ? "both are planned as noted"
              : "its start is kept; what remains of it waits for '" + l.before() + "'");
    }
  }

  private static boolean sameDay(LocalDateTime finish, LocalDateTime start) {
    return finish.minusMinutes(1).toLocalDate().equals(start.toLocalDate());
  }

  private Progress progress(ProgressEntry e, WorkTask t) {
    var calendar = calendars.get(t.calendar());
    if (calendar == null) return Progress.NONE; // said with the task
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

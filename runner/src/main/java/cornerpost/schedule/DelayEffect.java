package cornerpost.schedule;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a delay of one task does to the plan, by a fresh pass; crews aside.
 *
 * @param activity the task as it was
 * @param days the delay, in days of the task's own calendar (24 hours if elapsed)
 * @param finish the new finish of the plan
 * @param lastDay the new last day, as shown to people
 * @param finishMovesDays by how many days of the default calendar the finish moves
 * @param newlyCritical ids of the tasks that were not critical and now are
 */
public record DelayEffect(
    Activity activity,
    long days,
    LocalDateTime finish,
    LocalDate lastDay,
    double finishMovesDays,
    List<String> newlyCritical) {
  public DelayEffect {
    newlyCritical = List.copyOf(newlyCritical);
  }

  /**
   * The task starts so many days after its early start; all that waits for its start or its finish
   * moves with it.
   */
  public static DelayEffect ofLaterStart(Timetable before, String id, long days) {
    Network network = before.network();
    Activity a = network.get(id);
    LocalDateTime start = before.timing(id).early().start();
    return of(before, a.notBefore(later(network, a, start, days)), a, days);
  }

  /** The task takes so many days longer; what waits for its start does not move. */
  public static DelayEffect ofLongerDuration(Timetable before, String id, long days) {
    Network network = before.network();
    Activity a = network.get(id);
    return of(before, a.lasting(a.minutes() + days * before.timing(id).dayMinutes()), a, days);
  }

  /** When the task starts if it starts so many of its own days after that moment. */
  static LocalDateTime later(Network network, Activity a, LocalDateTime from, long days) {
    if (a.isElapsed()) {
      return from.plusDays(days);
    }
    WorkCalendar calendar = network.calendarOf(a.id());
    LocalDateTime moment = calendar.plus(from, days * calendar.dayMinutes());
    return a.isMilestone() ? moment : calendar.nextStart(moment);
  }

  private static DelayEffect of(Timetable before, Activity changed, Activity was, long days) {
    Network network = before.network();
    Timetable after = Passes.of(network.with(changed));
    WorkCalendar calendar = network.defaultCalendar();
    Set<String> critical =
        before.timings().stream()
            .filter(Timing::critical)
            .map(Timing::id)
            .collect(Collectors.toSet());
    return new DelayEffect(
        was,
        days,
        after.finish(),
        after.lastDay(),
        (double) calendar.between(before.finish(), after.finish()) / calendar.dayMinutes(),
        after.timings().stream()
            .filter(t -> t.critical() && !critical.contains(t.id()))
            .map(Timing::id)
            .toList());
  }
}

package cornerpost.plan;

import cornerpost.schedule.Activity;
import cornerpost.schedule.Crew;
import cornerpost.schedule.Network;
import cornerpost.schedule.WorkCalendar;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * How busy each crew is, week by week from Monday, as planned.
 *
 * <p>A person-day is the longest working day of the crew's calendar. A crew without a calendar
 * works whenever its tasks do; what there is of it is then counted in the calendars of the tasks it
 * works on, the longest week of them. A crew shows from its first week of work to its last, idle
 * weeks between included.
 */
final class CrewLoad {
  private final Network network;
  private final Sequence sequence;

  private CrewLoad(Sequence sequence) {
    this.sequence = sequence;
    network = sequence.network();
  }

  static List<Programme.CrewDay> of(Sequence sequence) {
    var load = new CrewLoad(sequence);
    var rows = new ArrayList<Programme.CrewDay>();
    for (var crew : sequence.network().crews()) rows.addAll(load.of(crew));
    return rows;
  }

  private List<Programme.CrewDay> of(Crew crew) {
    var tasks =
        network.activities().stream()
            .filter(a -> a.demands().containsKey(crew.name()) && !a.isMilestone())
            .toList();
    var weeks = new TreeMap<LocalDate, Long>();
    for (var task : tasks) {
      var dates = sequence.planned(task.id());
      int number = task.demands().get(crew.name());
      for (var w = monday(dates.firstDay()); !w.isAfter(dates.lastDay()); w = w.plusWeeks(1)) {
        long minutes = minutesIn(calendar(task, crew), w, dates.start(), dates.finish());
        weeks.merge(w, number * minutes, Long::sum);
      }
    }
    var rows = new ArrayList<Programme.CrewDay>();
    if (weeks.isEmpty()) return rows;
    long day =
        crew.calendar().isPresent()
            ? crew.calendar().get().dayMinutes()
            : tasks.stream().mapToLong(t -> calendar(t, crew).dayMinutes()).max().orElseThrow();
    for (var w = weeks.firstKey(); !w.isAfter(weeks.lastKey()); w = w.plusWeeks(1)) {
      rows.add(
          new Programme.CrewDay(
              crew.name(),
              w,
              Days.of(weeks.getOrDefault(w, 0L), day),
              Days.of(crew.available() * there(crew, tasks, w), day)));
    }
    return rows;
  }

  private WorkCalendar calendar(Activity task, Crew crew) {
    return task.isElapsed()
        ? crew.calendar().orElse(network.calendarOf(task.id()))
        : network.calendarOf(task.id());
  }

  private static long minutesIn(
      WorkCalendar calendar, LocalDate week, LocalDateTime start, LocalDateTime finish) {
    var from = week.atStartOfDay();
    var until = week.plusWeeks(1).atStartOfDay();
    var first = start.isAfter(from) ? start : from;
    var last = finish.isBefore(until) ? finish : until;
    return Math.max(0, calendar.between(first, last));
  }

  private long there(Crew crew, List<Activity> tasks, LocalDate week) {
    var from = week.atStartOfDay();
    var until = week.plusWeeks(1).atStartOfDay();
    return crew.calendar()
        .map(c -> c.between(from, until))
        .orElseGet(
            () ->
                tasks.stream()
                    .mapToLong(t -> calendar(t, crew).between(from, until))
                    .max()
                    .orElse(0));
  }

  private static LocalDate monday(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }
}

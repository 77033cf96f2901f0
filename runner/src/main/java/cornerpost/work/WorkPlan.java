package cornerpost.work;

import cornerpost.scope.CalendarEntry;
import cornerpost.scope.HolidayEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The whole network in the trade's terms, ready to be dated.
 *
 * @param crews with their numbers; tasks demand them by name
 * @param calendars every calendar a task or crew names, supplied and own
 * @param defaultCalendar the calendar the plan's duration is counted in
 */
public record WorkPlan(
    List<WorkTask> tasks,
    List<WorkLink> links,
    List<CrewLimit> crews,
    List<CalendarEntry> calendars,
    List<HolidayEntry> holidays,
    String defaultCalendar) {

  /** How many of a crew there are, and when they work: empty for whenever their tasks do. */
  public record CrewLimit(String name, int available, String calendar) {}

  public WorkPlan {
    tasks = List.copyOf(tasks);
    links = List.copyOf(links);
    crews = List.copyOf(crews);
    calendars = List.copyOf(calendars);
    holidays = List.copyOf(holidays);
  }

  /** The same with more links after its own. */
  public WorkPlan withLinks(List<WorkLink> more) {
    if (more.isEmpty()) return this;
    var all = new ArrayList<>(links);
    all.addAll(more);
    return new WorkPlan(tasks, all, crews, calendars, holidays, defaultCalendar);
  }

  public Optional<WorkTask> task(String id) {
    return tasks.stream().filter(t -> t.id().equals(id)).findFirst();
  }
}

package cornerpost.plan;

import cornerpost.scope.CalendarEntry;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.OwnLink;
import cornerpost.scope.OwnTask;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.scope.SuppliedCalendars;
import cornerpost.work.WorkLink;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The owner's own tasks, links and crews as a work plan. */
final class OwnWork {
  private final Scope scope;
  private final Map<String, CalendarEntry> calendars = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  private final String standard;

  private OwnWork(Scope scope) {
    this.scope = scope;
    SuppliedCalendars.with(scope.calendars()).forEach(c -> calendars.put(c.name(), c));
    standard = scope.project().text(ProjectQuestions.CALENDAR);
  }

  static WorkPlan of(Scope scope, List<HolidayEntry> holidays) {
    var own = new OwnWork(scope);
    return new WorkPlan(
        scope.ownTasks().stream().map(own::task).toList(),
        scope.ownLinks().stream().map(own::link).toList(),
        scope.crews().stream()
            .map(c -> new WorkPlan.CrewLimit(c.name(), c.available(), c.calendar().orElse("")))
            .toList(),
        new ArrayList<>(own.calendars.values()),
        holidays,
        own.standard);
  }

  private WorkTask task(OwnTask t) {
    var calendar = t.calendar().orElse(standard);
    boolean elapsed = t.unit() == DurationUnit.ELAPSED_DAYS;
    long likely = minutes(t.duration(), t.unit(), calendar);
    return new WorkTask(
        t.id(),
        t.name(),
        Stage.CLOSE_OUT,
        likely == 0 ? WorkTask.Kind.MILESTONE : WorkTask.Kind.OWN,
        Optional.empty(),
        Optional.empty(),
        likely,
        elapsed,
        calendar,
        t.demands(),
        t.notBefore(),
        t.deadline(),
        t.optimistic().map(d -> minutes(d, t.unit(), calendar)).orElse(likely),
        t.pessimistic().map(d -> minutes(d, t.unit(), calendar)).orElse(likely),
        elapsed ? 0 : likely / 60.0,
        false,
        "own task",
        List.of());
  }

  private WorkLink link(OwnLink l) {
    var after =
        scope.ownTasks().stream()
            .filter(t -> t.id().equals(l.after()))
            .findFirst()
            .flatMap(OwnTask::calendar)
            .orElse(standard);
    return new WorkLink(
        l.before(),
        l.after(),
        l.relation(),
        minutes(l.lag(), l.lagUnit(), after),
        l.lagUnit(),
        "own link");
  }

  private long minutes(BigDecimal amount, DurationUnit unit, String calendar) {
    var one =
        switch (unit) {
          case HOURS -> BigDecimal.valueOf(60);
          case ELAPSED_DAYS -> BigDecimal.valueOf(24 * 60);
          case DAYS -> dayMinutes(calendar);
        };
    return amount.multiply(one).setScale(0, RoundingMode.HALF_UP).longValueExact();
  }

  private BigDecimal dayMinutes(String calendar) {
    var entry = calendars.get(calendar);
    return entry == null
        ? BigDecimal.valueOf(8 * 60)
        : entry.hours().stream()
            .max(Comparator.naturalOrder())
            .orElseThrow()
            .multiply(BigDecimal.valueOf(60));
  }
}

package cornerpost.plan;

import cornerpost.scope.Scope;
import cornerpost.work.WorkPlan;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/** The days for which crews, cranes and inspectors are firmly booked, on sheet Progress. */
final class Bookings {
  private Bookings() {}

  /** By id of the task; only of tasks that have not begun. */
  static Map<String, LocalDate> of(Scope scope, WorkPlan work, LocalDate status) {
    var booked = new HashMap<String, LocalDate>();
    if (scope.progress().stream().allMatch(p -> p.booked().isEmpty())) return booked;
    ProgressMap.entries(scope, work, status)
        .forEach(
            (id, e) -> {
              if (e.actualStart().isEmpty()) e.booked().ifPresent(d -> booked.put(id, d));
            });
    return booked;
  }
}

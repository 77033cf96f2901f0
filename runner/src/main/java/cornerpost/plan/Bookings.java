package cornerpost.plan;

import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.Scope;
import cornerpost.work.WorkPlan;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** The days for which crews, cranes and inspectors are firmly booked, on sheet Progress. */
final class Bookings {
  private Bookings() {}

  /** By id of the task; only of tasks that have not begun. */
  static Map<String, LocalDate> of(Scope scope, WorkPlan work, LocalDate status) {
    var booked = new HashMap<String, LocalDate>();
    entries(scope, work, status).forEach((id, e) -> booked.put(id, e.booked().orElseThrow()));
    return booked;
  }

  private static Map<String, ProgressEntry> entries(Scope scope, WorkPlan work, LocalDate status) {
    var entries = new TreeMap<String, ProgressEntry>();
    if (scope.progress().stream().allMatch(p -> p.booked().isEmpty())) return entries;
    entries.putAll(ProgressMap.entries(scope, work, status));
    entries.values().removeIf(e -> e.actualStart().isPresent() || e.booked().isEmpty());
    return entries;
  }

  /** Says which cannot be kept: people booked for a day before their work begins must be told. */
  static void sayBroken(
      Scope scope, WorkPlan work, Programme programme, LocalDate status, Problems problems) {
    entries(scope, work, status)
        .forEach(
            (id, e) -> {
              var day = e.booked().orElseThrow();
              var planned = programme.task(id).orElseThrow().firstDay();
              if (!planned.isAfter(day)) return;
              problems.remark(
                  OwnerSheet.PROGRESS,
                  e.cell(),
                  "task '" + id + "' is booked for " + day + " but begins on " + planned,
                  "book it anew, or bring forward what it waits for (sheet Schedule says what)");
            });
  }
}

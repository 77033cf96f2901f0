package cornerpost.workbook;

import cornerpost.scope.Scope;
import java.util.HashMap;

/** Contradictions within the owner's rows. Links and loops are the work planner's to check. */
final class OwnEntryChecks {
  private final Scope scope;
  private final FaultLog faults;

  OwnEntryChecks(Scope scope, FaultLog faults) {
    this.scope = scope;
    this.faults = faults;
  }

  void run() {
    quotes();
    tasks();
    calendars();
    ledger();
  }

  private void quotes() {
    var used = new HashMap<String, String>();
    for (var quote : scope.quotes()) {
      if (quote.used()) {
        var before = used.putIfAbsent(Plain.key(quote.line()), quote.cell());
        if (before != null) {
          faults.faultAt(
              quote.cell(),
              "a second quote in use for line " + Plain.quoted(quote.line()),
              "expected one with Use it = yes; the first is in " + CellPlace.split(before)[1]);
        }
      }
      if (quote.date().isPresent()
          && quote.validUntil().filter(v -> v.isBefore(quote.date().get())).isPresent()) {
        faults.faultAt(
            quote.cell(),
            "a quote of " + quote.date().get() + " valid until " + quote.validUntil().get(),
            "expected the last day it is valid not before its date");
      }
    }
  }

  private void tasks() {
    for (var task : scope.ownTasks()) {
      if (task.optimistic().isPresent() != task.pessimistic().isPresent()) {
        faults.faultAt(
            task.cell(),
            "task '" + task.id() + "' has only one of Optimistic and Pessimistic",
            "expected both or neither");
      } else if (task.optimistic().isPresent()
          && (task.optimistic().get().compareTo(task.duration()) > 0
              || task.pessimistic().get().compareTo(task.duration()) < 0)) {
        faults.faultAt(
            task.cell(),
            "task '"
                + task.id()
                + "' lasts "
                + Plain.number(task.optimistic().get())
                + ", "
                + Plain.number(task.duration())
                + ", "
                + Plain.number(task.pessimistic().get())
                + " (Optimistic, Duration, Pessimistic)",
            "expected none of them less than the one before");
      }
    }
  }

  private void calendars() {
    for (var calendar : scope.calendars()) {
      if (calendar.hours().stream().allMatch(h -> h.signum() == 0)) {
        faults.faultAt(
            calendar.cell(),
            "calendar '" + calendar.name() + "' has no working hours",
            "expected hours on at least one day of the week");
      }
    }
  }

  private void ledger() {
    var shares = new HashMap<String, String>();
    for (var entry : scope.ledger()) {
      if (entry.inPlace().isPresent()) {
        var before = shares.putIfAbsent(entry.line(), entry.cell());
        if (before != null) {
          faults.faultAt(
              entry.cell(),
              "a second Work in place for line " + Plain.quoted(entry.line()),
              "expected one; the first is in the row of " + CellPlace.split(before)[1]);
        }
      }
      if (entry.originalQuantity().isPresent() && entry.originalBudget().isEmpty()) {
        faults.faultAt(
            entry.cell(),
            "an Original quantity without an Original budget for " + Plain.quoted(entry.line()),
            "expected both or only the budget");
      }
    }
  }
}

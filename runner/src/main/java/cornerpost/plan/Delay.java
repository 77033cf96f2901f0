package cornerpost.plan;

import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Scope;
import cornerpost.takeoff.BuildTask;
import cornerpost.work.NearIds;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A task or milestone that comes later than it otherwise would.
 *
 * @param task id of the task
 * @param days calendar days, 0 or more
 * @param sheet where it is entered, or the option; {@code cell} the cell there
 */
record Delay(
    String task, String name, int days, String cause, String borneBy, String sheet, String cell) {
  /** What the plan says of a task that starts where this delay put it. */
  String words() {
    return "delayed by "
        + days
        + (days == 1 ? " day" : " days")
        + (cause.isBlank() ? "" : ": " + cause);
  }

  /**
   * Those of sheet Delays, then those of the command line. An event that is not there is a fault on
   * the command line; on the sheet it may have gone with a change of scope, and its entry is kept.
   */
  static List<Delay> of(Scope scope, RunOptions options, WorkPlan work, Problems problems) {
    var delays = new ArrayList<Delay>();
    for (var d : scope.delays()) {
      var tasks = find(d.event(), work);
      if (tasks.isEmpty()) {
        problems.remark(
            OwnerSheet.DELAYS,
            d.cell(),
            found(d.event(), tasks),
            "the entry is kept and changes nothing" + NearIds.hint(d.event(), work));
      } else if (tasks.size() != 1) {
        problems.fault(
            OwnerSheet.DELAYS, d.cell(), found(d.event(), tasks), expected(d.event(), tasks, work));
      } else if (d.days() < 0) {
        problems.fault(OwnerSheet.DELAYS, d.cell(), d.days() + " days", "expected 0 or more");
      } else {
        var t = tasks.get(0);
        var sheet = OwnerSheet.DELAYS.title();
        delays.add(new Delay(t.id(), t.name(), d.days(), d.cause(), d.borneBy(), sheet, d.cell()));
      }
    }
    for (var d : options.delays()) {
      var tasks = find(d.event(), work);
      if (tasks.size() != 1) {
        problems.fault("--delay " + d, found(d.event(), tasks), expected(d.event(), tasks, work));
      } else if (d.days() < 0) {
        problems.fault("--delay " + d, d.days() + " days", "expected 0 or more");
      } else {
        var t = tasks.get(0);
        var at = "--delay " + d;
        delays.add(new Delay(t.id(), t.name(), d.days(), d.cause(), d.borneBy(), at, ""));
      }
    }
    return delays;
  }

  /** The tasks of that id, else of that name, in any case. */
  static List<WorkTask> find(String event, WorkPlan work) {
    var wanted = event.strip().toLowerCase(Locale.ROOT);
    var byId =
        work.tasks().stream().filter(t -> t.id().toLowerCase(Locale.ROOT).equals(wanted)).toList();
    return !byId.isEmpty()
        ? byId
        : work.tasks().stream()
            .filter(t -> t.name().strip().toLowerCase(Locale.ROOT).equals(wanted))
            .toList();
  }

  static String found(String event, List<WorkTask> tasks) {
    return tasks.isEmpty()
        ? "no task or milestone is called '" + event + "'"
        : tasks.size() + " tasks are called '" + event + "'";
  }

  /** What would be right, with the ids it may have meant. */
  static String expected(String event, List<WorkTask> tasks, WorkPlan work) {
    if (!tasks.isEmpty()) {
      return "expected one of the ids "
          + String.join(", ", tasks.stream().map(WorkTask::id).toList());
    }
    var near = NearIds.of(event, work);
    var wanted = "expected the id or the name of a task of the plan";
    if (!near.isEmpty()) return wanted + "; near to it: " + String.join(", ", near);
    return wanted
        + work.tasks().stream().findFirst().map(t -> ", such as " + usual(work, t.id())).orElse("");
  }

  private static String usual(WorkPlan work, String first) {
    var delivery = BuildTask.DELIVERY.id();
    return work.task(delivery).isPresent() ? delivery : first;
  }
}

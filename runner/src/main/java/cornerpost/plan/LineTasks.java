package cornerpost.plan;

import cornerpost.price.CostLine;
import cornerpost.scope.Stage;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the dated tasks of cost lines and of stages. */
final class LineTasks {
  private final WorkPlan work;
  private final Programme programme;
  private final Map<String, DatedTask> byId = new HashMap<>();
  private final Map<String, DatedTask> byLine = new HashMap<>();

  LineTasks(WorkPlan work, Programme programme) {
    this.work = work;
    this.programme = programme;
    programme.tasks().forEach(t -> byId.put(t.id(), t));
    for (var t : work.tasks()) {
      for (var line : t.costLines()) byLine.put(line, byId.get(t.id()));
    }
  }

  WorkPlan work() {
    return work;
  }

  Programme programme() {
    return programme;
  }

  Optional<DatedTask> task(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * The task with which the line falls due: the own task of its id, that of the line itself, else
   * the work plan's choice.
   */
  Optional<DatedTask> due(CostLine line) {
    return ownTask(line)
        .or(() -> Optional.ofNullable(byLine.get(line.id())))
        .or(() -> line.task().map(byId::get));
  }

  /** An own item goes with the own task of the same id, if there is one. */
  private Optional<DatedTask> ownTask(CostLine line) {
    return line.kind() == CostLine.Kind.OWN_ITEM
        ? task(line.id().substring(line.id().indexOf('/') + 1))
            .filter(t -> t.task().kind() == WorkTask.Kind.OWN)
        : Optional.empty();
  }

  /** The tasks that use what the line buys: of mixed work the hired part and the owner's. */
  List<DatedTask> using(CostLine line) {
    var own =
        line.task().stream()
            .flatMap(id -> List.of(id, id + ":own").stream())
            .flatMap(id -> task(id).stream())
            .toList();
    return own.isEmpty() ? due(line).stream().toList() : own;
  }

  List<DatedTask> of(Stage stage) {
    return programme.of(stage);
  }

  /** The last day of the tasks of a stage; move-in where it has none. */
  LocalDate end(Stage stage) {
    return of(stage).stream()
        .map(DatedTask::lastDay)
        .max(Comparator.naturalOrder())
        .orElse(programme.moveIn());
  }

  /** The first day of the tasks of a stage; the start where it has none. */
  LocalDate start(Stage stage) {
    return of(stage).stream()
        .map(DatedTask::firstDay)
        .min(Comparator.naturalOrder())
        .orElse(programme.start());
  }
}

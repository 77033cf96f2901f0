package cornerpost.plan;

import cornerpost.scope.Stage;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The dated plan of work.
 *
 * @param tasks in order of planned start, then of the build
 * @param finish last working day
 * @param moveIn the day of move-in; the finish where there is no such task
 * @param durationDays working days of the project's calendar from start to finish
 * @param crewLimited whether a crew's number moved anything
 * @param lowerBoundDays no sequence can be shorter; {@code gapDays} is the planned length less that
 * @param proved whether the sequence is known to be the shortest
 * @param criticalPath ids of the longest path of the network alone, start to finish
 * @param drivingPath ids of the path that drives the planned finish, crews included
 * @param deliveryToMoveIn ids of the longest path between the two
 * @param deliveryFloatDays calendar days by which delivery may slip before move-in moves
 * @param path the longest path between the two events asked for
 * @param slippage what a delay of each task does, and the paths next in length
 */
public record Programme(
    List<DatedTask> tasks,
    LocalDate start,
    LocalDate finish,
    LocalDate moveIn,
    Optional<LocalDate> delivery,
    BigDecimal durationDays,
    boolean crewLimited,
    BigDecimal lowerBoundDays,
    BigDecimal gapDays,
    boolean proved,
    List<String> criticalPath,
    List<String> drivingPath,
    List<String> deliveryToMoveIn,
    Optional<Integer> deliveryFloatDays,
    List<CrewDay> crewLoad,
    List<NetworkFinding> findings,
    EventPath path,
    Slippage slippage) {

  /** How many of a crew are at work in the week that begins on {@code week}, in person-days. */
  public record CrewDay(String crew, LocalDate week, BigDecimal personDays, BigDecimal available) {}

  /** A finding about the network's health, as advice. */
  public record NetworkFinding(String check, boolean passed, String message, List<String> ids) {}

  public Programme {
    tasks = List.copyOf(tasks);
    criticalPath = List.copyOf(criticalPath);
    drivingPath = List.copyOf(drivingPath);
    deliveryToMoveIn = List.copyOf(deliveryToMoveIn);
    crewLoad = List.copyOf(crewLoad);
    findings = List.copyOf(findings);
  }

  public Optional<DatedTask> task(String id) {
    return tasks.stream().filter(t -> t.id().equals(id)).findFirst();
  }

  /**
   * By how many days of its own calendar a task may slip before the planned finish moves, the crews
   * keeping their order; of one that has begun, by the links alone.
   */
  public BigDecimal floatOf(DatedTask task) {
    var slip = slippage.tasks().get(task.id());
    return slip == null ? task.totalFloatDays() : slip.floatDays();
  }

  /** The tasks of a stage; orders are placed in a stage, but are not its work. */
  public List<DatedTask> of(Stage stage) {
    return tasks.stream()
        .filter(t -> t.task().stage() == stage && t.task().kind() != WorkTask.Kind.ORDER)
        .toList();
  }
}

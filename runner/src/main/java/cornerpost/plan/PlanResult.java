package cornerpost.plan;

import cornerpost.scope.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What comes of planning.
 *
 * @param plan empty if any problem is a fault
 * @param problems every fault and remark
 */
public record PlanResult(Optional<Plan> plan, List<Problem> problems) {
  public PlanResult {
    problems = List.copyOf(problems);
  }

  /** The problems for which there is no plan. */
  public List<Problem> faults() {
    return problems.stream().filter(p -> p.severity() == Problem.Severity.FAULT).toList();
  }
}

package cornerpost.workbook;

import cornerpost.scope.Problem;
import cornerpost.scope.Scope;
import cornerpost.workbook.parts.StoredBook;
import java.util.List;
import java.util.Optional;

/**
 * What reading a workbook gave.
 *
 * @param book the workbook as it was read; empty where it could not be opened
 * @param scope the choices; empty where any problem is a fault
 * @param sketch where no line of a plan hangs on what is at fault, the choices with something that
 *     stands in for it: enough to look for what else is wrong, never to plan from
 * @param problems every fault and remark, in the order of the sheets
 */
public record Reading(
    Optional<StoredBook> book,
    Optional<Scope> scope,
    Optional<Scope> sketch,
    List<Problem> problems) {
  public Reading {
    problems = List.copyOf(problems);
  }
}

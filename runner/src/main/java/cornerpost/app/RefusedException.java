package cornerpost.app;

import cornerpost.scope.Problem;
import java.util.List;

/** The input cannot be used; carries every problem found. */
final class RefusedException extends Exception {
  private final transient List<Problem> problems;

  RefusedException(List<Problem> problems) {
    super(problems.isEmpty() ? "refused" : problems.get(0).message());
    this.problems = List.copyOf(problems);
  }

  RefusedException(String file, String found, String expected) {
    this(List.of(Problem.fault(file, "", found, expected)));
  }

  List<Problem> problems() {
    return problems;
  }
}

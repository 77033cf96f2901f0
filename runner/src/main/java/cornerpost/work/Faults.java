package cornerpost.work;

import cornerpost.scope.Problem;
import java.util.ArrayList;
import java.util.List;

/** The problems found on the way; each once. */
final class Faults {
  private final List<Problem> all = new ArrayList<>();

  void fault(String cell, String found, String expected) {
    add(Problem.Severity.FAULT, cell, found, expected);
  }

  void remark(String cell, String found, String expected) {
    add(Problem.Severity.REMARK, cell, found, expected);
  }

  private void add(Problem.Severity severity, String label, String found, String expected) {
    int mark = label.lastIndexOf('!');
    var problem =
        mark < 0
            ? new Problem(severity, label, "", found, expected)
            : new Problem(
                severity, label.substring(0, mark), label.substring(mark + 1), found, expected);
    if (!all.contains(problem)) all.add(problem);
  }

  boolean any() {
    return all.stream().anyMatch(p -> p.severity() == Problem.Severity.FAULT);
  }

  List<Problem> all() {
    return List.copyOf(all);
  }
}

package cornerpost.workbook;

import cornerpost.scope.Problem;
import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong, so that one reading reports it all. */
final class FaultLog {
  private final List<Problem> problems = new ArrayList<>();

  void fault(String sheet, String cell, String found, String expected) {
    problems.add(Problem.fault(sheet, cell, found, expected));
  }

  void fault(CellPlace place, String found, String expected) {
    fault(place.sheet(), place.reference(), found, expected);
  }

  /**
   * @param label the label of a cell or only of a sheet: {@code Openings!D5}, {@code Openings}
   */
  void faultAt(String label, String found, String expected) {
    var at = CellPlace.split(label);
    fault(at[0], at[1], found, expected);
  }

  /** A remark; none while there are faults, which may be all there is to it. */
  void remarkAt(String label, String found, String expected) {
    if (hasFaults()) return;
    var at = CellPlace.split(label);
    problems.add(Problem.remark(at[0], at[1], found, expected));
  }

  boolean hasFaults() {
    return problems.stream().anyMatch(p -> p.severity() == Problem.Severity.FAULT);
  }

  List<Problem> all() {
    return List.copyOf(problems);
  }
}

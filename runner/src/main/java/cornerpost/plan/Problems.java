package cornerpost.plan;

import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Problem;
import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong, each with the sheet and cell it stands in. */
final class Problems {
  private final List<Problem> all = new ArrayList<>();

  void fault(OwnerSheet sheet, String cell, String found, String expected) {
    all.add(Problem.fault(sheet.title(), inSheet(cell), found, expected));
  }

  /** A fault of an option of the command line, or of nothing that stands in a sheet. */
  void fault(String place, String found, String expected) {
    all.add(Problem.fault(place, "", found, expected));
  }

  void remark(OwnerSheet sheet, String cell, String found, String expected) {
    all.add(Problem.remark(sheet.title(), inSheet(cell), found, expected));
  }

  void remark(String sheet, String cell, String found, String expected) {
    all.add(Problem.remark(sheet, inSheet(cell), found, expected));
  }

  void addAll(List<Problem> others) {
    all.addAll(others);
  }

  boolean stop() {
    return all.stream().anyMatch(p -> p.severity() == Problem.Severity.FAULT);
  }

  List<Problem> all() {
    return List.copyOf(all);
  }

  /** {@code D5} of {@code Own links!D5}. */
  private static String inSheet(String cell) {
    return cell.substring(cell.lastIndexOf('!') + 1);
  }
}

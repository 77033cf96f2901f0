package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.scope.Scope;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads the owner's workbook into the choices of a plan, reporting every problem at once.
 *
 * <p>It reads what the sheets hold, not who wrote them: any program that saves .xlsx will do.
 * Result sheets of an earlier run and sheets of the owner's own are ignored. Formula cells count by
 * the result stored with them.
 */
public final class WorkbookReader {
  private WorkbookReader() {}

  /** Reads with the facts that come with the program. */
  public static Reading read(byte[] content, String fileName) {
    return read(content, fileName, Facts::supplied);
  }

  /** Reads with facts that are there already. */
  public static Reading read(byte[] content, String fileName, Facts facts) {
    return read(content, fileName, () -> facts);
  }

  /**
   * Reads a workbook. Never throws for what the bytes hold: whatever is wrong with them is a
   * problem.
   *
   * @param content the bytes of the file
   * @param fileName how to call the file in problems that concern it as a whole
   * @param facts the sizes of boxes, against which rooms and openings are checked; asked for once
   *     the file is open
   */
  public static Reading read(byte[] content, String fileName, Supplier<Facts> facts) {
    var faults = new FaultLog();
    var opened = WorkbookFile.open(content, fileName, faults);
    if (opened.isEmpty()) return new Reading(opened, Optional.empty(), faults.all());
    var scope = new ScopeReader(opened.get(), fileName, facts.get(), faults).read();
    return new Reading(
        opened, faults.hasFaults() ? Optional.<Scope>empty() : Optional.of(scope), faults.all());
  }
}

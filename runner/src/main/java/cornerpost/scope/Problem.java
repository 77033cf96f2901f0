package cornerpost.scope;

/**
 * A fault or a remark about the input.
 *
 * @param severity whether it stops the run
 * @param sheet the sheet or file it stands in; empty if none
 * @param cell the cell, such as {@code D5}; empty if none
 * @param found what was found
 * @param expected what would be right
 */
public record Problem(Severity severity, String sheet, String cell, String found, String expected) {

  /** How bad it is. */
  public enum Severity {
    /** Nothing is written. */
    FAULT,
    /** The plan is made; the remark goes with it. */
    REMARK
  }

  public static Problem fault(String sheet, String cell, String found, String expected) {
    return new Problem(Severity.FAULT, sheet, cell, found, expected);
  }

  public static Problem remark(String sheet, String cell, String found, String expected) {
    return new Problem(Severity.REMARK, sheet, cell, found, expected);
  }

  /** One line for people: {@code Openings!D5: found 'wide'; expected a number of millimetres}. */
  public String message() {
    var place = sheet + (cell.isEmpty() ? "" : "!" + cell);
    return (place.isEmpty() ? "" : place + ": ") + found + "; " + expected;
  }
}

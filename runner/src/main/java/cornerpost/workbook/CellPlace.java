package cornerpost.workbook;

import org.apache.poi.ss.util.CellReference;

/**
 * A cell of a sheet. Zero-based indices stay inside this package; people see {@code Openings!D5}.
 */
record CellPlace(String sheet, int row, int column) {
  /** {@code D5}. */
  String reference() {
    return CellReference.convertNumToColString(column) + (row + 1);
  }

  /** {@code Openings!D5}, the sheet's title unquoted. */
  String label() {
    return sheet + "!" + reference();
  }

  /** Sheet and reference of a label; the reference is empty where the label names only a sheet. */
  static String[] split(String label) {
    int mark = label.lastIndexOf('!');
    return mark < 0
        ? new String[] {label, ""}
        : new String[] {label.substring(0, mark), label.substring(mark + 1)};
  }
}

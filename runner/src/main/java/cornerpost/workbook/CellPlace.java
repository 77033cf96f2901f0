package cornerpost.workbook;

import cornerpost.workbook.parts.Place;
import java.util.Optional;

/**
 * A cell of a sheet. Zero-based indices stay inside this package; people see {@code Openings!D5}.
 */
record CellPlace(String sheet, int row, int column) {
  /** {@code D5}. */
  String reference() {
    return Place.reference(row, column);
  }

  /** {@code Openings!D5}, the sheet's title unquoted. */
  String label() {
    return sheet + "!" + reference();
  }

  /** The place a label names; empty where it names only a sheet. */
  static Optional<CellPlace> find(String label) {
    int mark = label.lastIndexOf('!');
    return mark < 0
        ? Optional.empty()
        : Place.find(label.substring(mark + 1))
            .map(p -> new CellPlace(label.substring(0, mark), p.row(), p.column()));
  }

  /** Sheet and reference of a label; the reference is empty where the label names only a sheet. */
  static String[] split(String label) {
    int mark = label.lastIndexOf('!');
    return mark < 0
        ? new String[] {label, ""}
        : new String[] {label.substring(0, mark), label.substring(mark + 1)};
  }
}

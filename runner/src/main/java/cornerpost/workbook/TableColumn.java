package cornerpost.workbook;

import java.util.Arrays;

/** A column of a result sheet, by its place among the others. */
interface TableColumn {
  /** Its place, the first is 0. */
  int ordinal();

  String header();

  /** In characters. */
  int width();

  default String letter() {
    return SheetPage.letter(ordinal());
  }

  /** The cell of a row, on the sheet itself. */
  default String at(int row) {
    return "$" + letter() + row;
  }

  /** Its cells from one row to another, on the sheet itself. */
  default String range(int first, int last) {
    return "$" + letter() + "$" + first + ":$" + letter() + "$" + last;
  }

  /** Column names and widths. */
  static void write(SheetPage page, TableColumn... columns) {
    page.header(
        Addresses.HEADER_ROW,
        Arrays.stream(columns).map(TableColumn::header).toArray(String[]::new));
    for (var c : columns) page.width(c.ordinal(), c.width());
  }
}

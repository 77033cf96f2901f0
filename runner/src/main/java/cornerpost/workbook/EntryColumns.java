package cornerpost.workbook;

import cornerpost.workbook.parts.StoredBook;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where the columns of one of the owner's tables stand, found by their names, so that a result
 * sheet can add up what is typed there later, by the id in the first of them.
 *
 * @param key letter of the column of ids
 */
record EntryColumns(String sheet, String key, Map<String, String> letters, int firstRow) {
  private static final int LAST_HEADER_ROW = 30;

  /** Rows looked through, from the column names on; whole columns would slow every calculation. */
  private static final int MOST_ROWS = 1000;

  /**
   * @param key name of the column of ids
   */
  static Optional<EntryColumns> find(StoredBook workbook, String title, String key) {
    var sheet = workbook.sheet(title);
    if (sheet.isEmpty()) return Optional.empty();
    for (int r : sheet.get().rows()) {
      if (r > LAST_HEADER_ROW) break;
      var names = new HashMap<String, String>();
      for (var cell : sheet.get().row(r)) {
        var held = Held.of(workbook, cell);
        if (held.kind() == Held.Kind.TEXT) {
          names.putIfAbsent(held.text().strip(), SheetPage.letter(cell.column()));
        }
      }
      if (names.containsKey(key)) {
        return Optional.of(
            new EntryColumns(Addresses.sheetName(title), names.get(key), names, r + 2));
      }
    }
    return Optional.empty();
  }

  /** The sum of a column over the rows of an id. */
  String sum(String column, String id) {
    return sumAt(column, quoted(id));
  }

  /**
   * The sum of a column over the rows of the id that a cell holds.
   *
   * @param cell such as {@code $A7}; what it holds must be {@link #isPlain}
   */
  String sumAt(String column, String cell) {
    if (!letters.containsKey(column)) return "0";
    return "SUMIFS(" + range(letters.get(column)) + "," + range(key) + "," + cell + ")";
  }

  /** Whether an id found in a cell means itself: no wildcard is in it. */
  static boolean isPlain(String id) {
    return id.indexOf('*') < 0 && id.indexOf('?') < 0 && id.indexOf('~') < 0;
  }

  /** Whether the rows of an id hold a number in a column that meets a condition. */
  String holds(String column, String id, String condition) {
    return holdsAt(column, quoted(id), condition);
  }

  /** The same for the id that a cell holds, as in {@link #sumAt}. */
  String holdsAt(String column, String cell, String condition) {
    if (!letters.containsKey(column)) return "FALSE";
    return "COUNTIFS("
        + range(key)
        + ","
        + cell
        + ","
        + range(letters.get(column))
        + ",\""
        + condition
        + "\")>0";
  }

  /** The id is written out where it has a wildcard in it, its wildcards marked as plain. */
  private static String quoted(String id) {
    return Addresses.quoted(id.replaceAll("([*?~])", "~$1"));
  }

  private String range(String letter) {
    int last = firstRow + MOST_ROWS - 1;
    return sheet + "!$" + letter + "$" + firstRow + ":$" + letter + "$" + last;
  }
}

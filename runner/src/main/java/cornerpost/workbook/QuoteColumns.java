package cornerpost.workbook;

import cornerpost.workbook.parts.StoredBook;
import java.util.HashMap;
import java.util.Optional;

/**
 * Where the columns of the owner's sheet Quotes stand, found by their names, so that the Cost plan
 * can look up a quote that is typed later.
 */
record QuoteColumns(String line, String use, String quoteFor, String amount, int firstRow) {
  private static final String SHEET = "Quotes";
  private static final int LAST_HEADER_ROW = 30;

  /** Rows looked through, from the column names on; whole columns would slow every calculation. */
  private static final int MOST_QUOTES = 1000;

  static Optional<QuoteColumns> find(StoredBook workbook) {
    var sheet = workbook.sheet(SHEET);
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
      if (names.containsKey("Line") && names.containsKey("Amount")) {
        return Optional.of(
            new QuoteColumns(
                names.get("Line"),
                names.getOrDefault("Use it", ""),
                names.getOrDefault("Price for", ""),
                names.get("Amount"),
                r + 2));
      }
    }
    return Optional.empty();
  }

  /** The price of each unit that is quoted for a line, or an empty text. */
  String each(String idCell, String id) {
    return quoteFor.isEmpty() ? "\"\"" : lookup(criteria(idCell, id, ",\"each unit\""));
  }

  /** The price of the whole line that is quoted, or an empty text; what is not each is whole. */
  String whole(String idCell, String id) {
    return lookup(criteria(idCell, id, ",\"<>each unit\""));
  }

  private String lookup(String criteria) {
    return "IF(COUNTIFS("
        + criteria
        + ","
        + column(amount)
        + ",\">=0\")=0,\"\",SUMIFS("
        + column(amount)
        + ","
        + criteria
        + "))";
  }

  private String criteria(String idCell, String id, String forWhat) {
    return column(line)
        + ","
        + key(idCell, id)
        + (use.isEmpty() ? "" : "," + column(use) + ",\"<>no\"")
        + (quoteFor.isEmpty() ? "" : "," + column(quoteFor) + forWhat);
  }

  /** An id with a wildcard in it is written out, its wildcards marked as plain characters. */
  private static String key(String idCell, String id) {
    if (!id.matches(".*[*?~].*")) return idCell;
    return Addresses.quoted(id.replaceAll("([*?~])", "~$1"));
  }

  private String column(String letter) {
    int last = firstRow + MOST_QUOTES - 1;
    return SHEET + "!$" + letter + "$" + firstRow + ":$" + letter + "$" + last;
  }
}

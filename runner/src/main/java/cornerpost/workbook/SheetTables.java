package cornerpost.workbook;

import org.apache.poi.ss.util.CellRangeAddress;

/** What every table sheet gets once its rows are there. */
final class SheetTables {
  private SheetTables() {}

  /**
   * Freezes column names and first columns, and offers filters.
   *
   * @param lastRow the last row of the table; the header row if it has none
   * @param columns how many columns it has
   * @param frozen how many columns stay in sight
   */
  static void finish(SheetPage page, int lastRow, int columns, int frozen) {
    var sheet = page.sheet();
    sheet.createFreezePane(frozen, Addresses.HEADER_ROW);
    sheet.setRowSumsBelow(false); // a stage's first row stays when its rows are folded away
    if (lastRow > Addresses.HEADER_ROW) {
      sheet.setAutoFilter(
          new CellRangeAddress(Addresses.HEADER_ROW - 1, lastRow - 1, 0, columns - 1));
    }
  }
}

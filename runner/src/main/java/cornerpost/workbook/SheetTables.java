package cornerpost.workbook;

import cornerpost.workbook.parts.Place;

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
    var frame = page.frame();
    frame.freeze(frozen, Addresses.HEADER_ROW);
    frame.summaryAbove();
    if (lastRow > Addresses.HEADER_ROW) {
      frame.filter(Place.range(Addresses.HEADER_ROW - 1, 0, lastRow - 1, columns - 1));
      page.name(
          "_xlnm._FilterDatabase",
          Addresses.fixed(Addresses.HEADER_ROW, 0, lastRow, columns - 1),
          true);
    }
  }
}

package cornerpost.workbook;

import java.util.List;

/** Puts charts on result sheets. */
final class SheetCharts {
  private SheetCharts() {}

  /** Where a chart stands: columns and rows as counted from nothing, the last ones not covered. */
  record Place(int column, int row, int endColumn, int endRow) {}

  static void put(ResultRun run, ResultSheet which, String name, Place place, ChartXml chart) {
    var cells = List.of(place.column, place.row, place.endColumn, place.endRow);
    run.page(which).chart(name, cells, chart);
  }
}

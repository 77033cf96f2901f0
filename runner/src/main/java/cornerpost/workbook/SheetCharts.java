package cornerpost.workbook;

import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFGraphicFrame;

/**
 * Puts charts on result sheets. A chart of an earlier run is found by its name and given its new
 * content, so that charts never pile up.
 */
final class SheetCharts {
  private SheetCharts() {}

  /** Where a chart stands: columns and rows as counted from nothing, the last ones not covered. */
  record Place(int column, int row, int endColumn, int endRow) {}

  static void put(ResultRun run, ResultSheet which, String name, Place place, ChartXml chart) {
    var sheet = run.page(which).sheet();
    var drawing = sheet.createDrawingPatriarch();
    drawing.getShapes(); // ties each chart to its frame, which has the name
    for (var c : drawing.getCharts()) {
      var frame = c.getGraphicFrame();
      if (frame != null && name.equals(frame.getName())) {
        move(frame, place);
        run.chartParts.put(c.getPackagePart().getPartName().getName(), chart.text());
        return;
      }
    }
    create(run, drawing, name, place, chart);
  }

  private static void move(XSSFGraphicFrame frame, Place place) {
    var at = frame.getAnchor();
    at.setCol1(place.column);
    at.setRow1(place.row);
    at.setCol2(place.endColumn);
    at.setRow2(place.endRow);
    at.setDx1(0);
    at.setDy1(0);
    at.setDx2(0);
    at.setDy2(0);
  }

  private static void create(
      ResultRun run, XSSFDrawing drawing, String name, Place place, ChartXml chart) {
    var anchor =
        drawing.createAnchor(0, 0, 0, 0, place.column, place.row, place.endColumn, place.endRow);
    var made = drawing.createChart(anchor);
    made.getGraphicFrame().setName(name);
    run.chartParts.put(made.getPackagePart().getPartName().getName(), chart.text());
  }
}

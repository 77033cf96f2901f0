package cornerpost.app;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Edits a workbook as its owner would: by typing numbers into cells. */
final class WorkbookEdits {
  private WorkbookEdits() {}

  /**
   * @param numbers by cell label, such as {@code Openings!E6}
   */
  static byte[] typed(byte[] workbook, Map<String, Double> numbers) throws IOException {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      for (var n : numbers.entrySet()) {
        int mark = n.getKey().lastIndexOf('!');
        var sheet = book.getSheet(n.getKey().substring(0, mark));
        var at = new CellReference(n.getKey().substring(mark + 1));
        sheet.getRow(at.getRow()).getCell(at.getCol()).setCellValue(n.getValue());
      }
      var out = new ByteArrayOutputStream();
      book.write(out);
      return out.toByteArray();
    }
  }

  /** The address of the cell in the row that begins with {@code id}, under a column's name. */
  static String cell(byte[] workbook, String sheetName, String id, String column)
      throws IOException {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      var sheet = book.getSheet(sheetName);
      int col = -1;
      for (var row : sheet) {
        for (var cell : row) {
          if (col < 0 && text(cell).equals(column)) col = cell.getColumnIndex();
        }
        var first = row.getCell(0);
        if (col >= 0 && first != null && text(first).equals(id)) {
          return sheetName + "!" + new CellReference(row.getRowNum(), col).formatAsString();
        }
      }
    }
    throw new IllegalArgumentException("No row '" + id + "' with '" + column + "' on " + sheetName);
  }

  static double number(byte[] workbook, String label) throws IOException {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      int mark = label.lastIndexOf('!');
      var at = new CellReference(label.substring(mark + 1));
      return book.getSheet(label.substring(0, mark))
          .getRow(at.getRow())
          .getCell(at.getCol())
          .getNumericCellValue();
    }
  }

  private static String text(org.apache.poi.ss.usermodel.Cell cell) {
    return cell.getCellType() == org.apache.poi.ss.usermodel.CellType.STRING
        ? cell.getStringCellValue()
        : "";
  }
}

package cornerpost.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Compares what we stored beside each formula with what another program calculates. */
final class Recalculated {
  private static final double RELATIVE = 1e-9;

  private Recalculated() {}

  /** Where they differ, in words; the number of formulas compared stands first. */
  record Comparison(int formulas, List<String> differences) {}

  static Comparison compare(byte[] ours, byte[] theirs) {
    var differences = new ArrayList<String>();
    int formulas = 0;
    var a = OwnersBook.open(ours);
    var b = OwnersBook.open(theirs);
    for (var title : ResultWorkbook.resultSheets()) {
      if (a.getSheet(title) == null) continue; // some stand only where money has moved
      for (var row : a.getSheet(title)) {
        for (var c : row) {
          if (c.getCellType() != CellType.FORMULA) continue;
          formulas++;
          var theirRow = b.getSheet(title).getRow(c.getRowIndex());
          var other = theirRow == null ? null : theirRow.getCell(c.getColumnIndex());
          var found = difference((XSSFCell) c, other);
          if (!found.isEmpty()) {
            differences.add(
                title + "!" + c.getAddress() + " =" + c.getCellFormula() + ": " + found);
          }
        }
      }
    }
    return new Comparison(formulas, differences);
  }

  private static String difference(XSSFCell ours, XSSFCell theirs) {
    var a = shown(ours);
    var b = theirs == null ? "" : shown(theirs);
    if (a instanceof Double x && b instanceof Double y) {
      return Math.abs(x - y) <= RELATIVE * Math.max(1e-12, Math.abs(x)) ? "" : x + " but " + y;
    }
    return a.equals(b) ? "" : "'" + a + "' but '" + b + "'";
  }

  static Object shown(XSSFCell c) {
    var type =
        c.getCellType() == CellType.FORMULA ? c.getCachedFormulaResultType() : c.getCellType();
    return switch (type) {
      case NUMERIC -> c.getNumericCellValue();
      case BOOLEAN -> c.getBooleanCellValue();
      case ERROR -> "error " + c.getErrorCellString();
      case STRING -> c.getStringCellValue();
      default -> "";
    };
  }

  /** Cells of any sheet that show an error. */
  static List<String> errors(byte[] workbook) {
    var found = new ArrayList<String>();
    for (var sheet : OwnersBook.open(workbook)) {
      for (var row : sheet) {
        for (var c : row) {
          if (shown((XSSFCell) c) instanceof String s && s.startsWith("error ")) {
            found.add(sheet.getSheetName() + "!" + c.getAddress() + " " + s);
          }
        }
      }
    }
    return found;
  }

  /** The value to the right of a label, or in a cell; from a workbook's stored values. */
  static Object rightOf(XSSFWorkbook book, String sheet, String label) {
    for (var row : book.getSheet(sheet)) {
      for (var c : row) {
        if (shown((XSSFCell) c).equals(label)) {
          return shown((XSSFCell) row.getCell(c.getColumnIndex() + 1));
        }
      }
    }
    throw new AssertionError("No '" + label + "' on " + sheet);
  }
}

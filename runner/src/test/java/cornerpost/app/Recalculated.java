package cornerpost.app;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** A workbook as another library reads it: rows of result tables, by id and column name. */
final class Recalculated {
  private final Map<String, List<Row>> sheets = new LinkedHashMap<>();

  Recalculated(byte[] workbook) {
    try (var book = new ReadableWorkbook(new ByteArrayInputStream(workbook))) {
      for (var sheet : book.getSheets().toList()) sheets.put(sheet.getName(), sheet.read());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows below the header, each as column name to cell, by the value of the first column. */
  Map<String, Map<String, Cell>> table(String sheet, String firstColumn) {
    var rows = new LinkedHashMap<String, Map<String, Cell>>();
    List<String> header = null;
    for (var row : sheets.get(sheet)) {
      var first = text(row, 0);
      if (header == null) {
        if (first.equals(firstColumn)) {
          header = new ArrayList<>();
          for (int c = 0; c < row.getCellCount(); c++) header.add(text(row, c));
        }
        continue;
      }
      if (first.isEmpty()) continue;
      var cells = new LinkedHashMap<String, Cell>();
      for (int c = 0; c < Math.min(header.size(), row.getCellCount()); c++) {
        if (row.getCell(c) != null) cells.putIfAbsent(header.get(c), row.getCell(c));
      }
      rows.putIfAbsent(first, cells);
    }
    return rows;
  }

  List<Row> rows(String sheet) {
    return sheets.get(sheet);
  }

  /** The cell to the right of a label, wherever the label stands. */
  Cell beside(String sheet, String label) {
    for (var row : sheets.get(sheet)) {
      for (int c = 0; c + 1 < row.getCellCount(); c++) {
        if (text(row, c).equals(label) && row.getCell(c + 1) != null) return row.getCell(c + 1);
      }
    }
    throw new IllegalArgumentException("No '" + label + "' on sheet " + sheet);
  }

  /** Every text on a sheet. */
  List<String> texts(String sheet) {
    var all = new ArrayList<String>();
    for (var row : sheets.get(sheet)) {
      for (int c = 0; c < row.getCellCount(); c++) {
        if (!text(row, c).isEmpty()) all.add(text(row, c));
      }
    }
    return all;
  }

  /** Cells that show an error, with sheet and address. */
  List<String> errors() {
    var found = new ArrayList<String>();
    sheets.forEach(
        (name, rows) -> {
          for (var row : rows) {
            for (var cell : row) {
              if (cell != null && cell.getType() == CellType.ERROR) {
                found.add(name + "!" + cell.getAddress() + " " + cell.getRawValue());
              }
            }
          }
        });
    return found;
  }

  /** Formulas, by sheet and address. */
  Map<String, String> formulas() {
    var found = new LinkedHashMap<String, String>();
    sheets.forEach(
        (name, rows) -> {
          for (var row : rows) {
            for (var cell : row) {
              if (cell != null && cell.getFormula() != null && !cell.getFormula().isEmpty()) {
                found.put(name + "!" + cell.getAddress(), cell.getFormula());
              }
            }
          }
        });
    return found;
  }

  static String text(Row row, int column) {
    if (column >= row.getCellCount() || row.getCell(column) == null) return "";
    var cell = row.getCell(column);
    if (cell.getType() == CellType.STRING) return cell.asString();
    return cell.getType() == CellType.FORMULA || cell.getType() == CellType.NUMBER
        ? String.valueOf(cell.getRawValue())
        : "";
  }

  static double number(Cell cell) {
    return Double.parseDouble(cell.getRawValue());
  }
}

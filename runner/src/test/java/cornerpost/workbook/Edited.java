package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.scope.Problem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An example workbook with a few cells changed, for tests of what the reader says of them. */
final class Edited {
  /**
   * Inside and outside sizes of a 40 ft high cube, mm: outside ISO 668:2013 (1AAA); inside typical
   * of makers, as a liner maker's table prints them.
   */
  private static final String BOXES =
      """
      id,name,value,unit,source,certainty
      box.40hc.length,length outside,12192,mm,ISO 668:2013,confirmed
      box.40hc.width,width outside,2438,mm,ISO 668:2013,confirmed
      box.40hc.height,height outside,2896,mm,ISO 668:2013,confirmed
      box.40hc.inside-length,length inside,12032,mm,typical of makers,confirmed
      box.40hc.inside-width,width inside,2352,mm,typical of makers,confirmed
      box.40hc.inside-height,height inside,2698,mm,typical of makers,confirmed
      """;

  static final Facts FACTS = facts();

  private static final Map<String, byte[]> MADE = new ConcurrentHashMap<>();

  private final XSSFWorkbook workbook;

  private Edited(byte[] content) {
    try {
      workbook = new XSSFWorkbook(new ByteArrayInputStream(content));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Facts facts() {
    try {
      return Facts.read(
          "boxes.csv", new ByteArrayInputStream(BOXES.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The metric example with two boxes. */
  static byte[] twoBoxes() {
    return MADE.computeIfAbsent(
        "two",
        n -> TemplateWriter.write(TemplateWriter.withUsualRows(TwoBoxExample.entries()), FACTS));
  }

  /** The example in US customary units. */
  static byte[] oneBedroom() {
    return MADE.computeIfAbsent(
        "one",
        n ->
            TemplateWriter.write(TemplateWriter.withUsualRows(OneBedroomExample.entries()), FACTS));
  }

  static Edited of(byte[] content) {
    return new Edited(content);
  }

  static Edited twoBox() {
    return new Edited(twoBoxes());
  }

  static Edited cabin() {
    return new Edited(oneBedroom());
  }

  XSSFCell cell(String label) {
    var at = CellPlace.split(label);
    var ref = new CellReference(at[1]);
    var sheet = workbook.getSheet(at[0]);
    var row =
        sheet.getRow(ref.getRow()) == null
            ? sheet.createRow(ref.getRow())
            : sheet.getRow(ref.getRow());
    var cell = row.getCell(ref.getCol());
    return cell == null ? row.createCell(ref.getCol()) : cell;
  }

  Edited text(String label, String text) {
    cell(label).setCellValue(text);
    return this;
  }

  Edited number(String label, double number) {
    cell(label).setCellValue(number);
    return this;
  }

  Edited date(String label, LocalDate date) {
    cell(label).setCellValue(date);
    var style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
    cell(label).setCellStyle(style);
    return this;
  }

  Edited truth(String label, boolean truth) {
    cell(label).setCellValue(truth);
    return this;
  }

  Edited error(String label, FormulaError error) {
    cell(label).setCellErrorValue(error.getCode());
    return this;
  }

  Edited blank(String label) {
    cell(label).setBlank();
    return this;
  }

  Edited with(Consumer<XSSFWorkbook> change) {
    change.accept(workbook);
    return this;
  }

  Edited row(String sheet, int row, Object... cells) {
    for (int c = 0; c < cells.length; c++) {
      var label = sheet + "!" + CellReference.convertNumToColString(c) + row;
      if (cells[c] instanceof Number n) number(label, n.doubleValue());
      else if (cells[c] instanceof LocalDate d) date(label, d);
      else if (cells[c] instanceof Boolean b) truth(label, b);
      else if (!cells[c].equals("")) text(label, (String) cells[c]);
    }
    return this;
  }

  /** Empties a row; gives what was in it, and last its number. */
  Object[] takeRow(String sheet, int row) {
    var cells = new ArrayList<Object>();
    for (int c = 0; c < workbook.getSheet(sheet).getRow(row - 1).getLastCellNum(); c++) {
      var cell = cell(sheet + "!" + CellReference.convertNumToColString(c) + row);
      switch (cell.getCellType()) {
        case NUMERIC -> cells.add(cell.getNumericCellValue());
        case BOOLEAN -> cells.add(cell.getBooleanCellValue());
        default -> cells.add(cell.toString());
      }
      cell.setBlank();
    }
    cells.add(row);
    return cells.toArray();
  }

  byte[] bytes() {
    var out = new ByteArrayOutputStream();
    try {
      workbook.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  Reading read() {
    return WorkbookReader.read(bytes(), "house.xlsx", FACTS);
  }

  List<String> messages() {
    return read().problems().stream().map(Problem::message).toList();
  }
}

package cornerpost.workbook;

import cornerpost.scope.Answers;
import cornerpost.scope.Labelled;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.Trade;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An owner's workbook that holds a scope's answers in their cells, and things of the owner's. */
final class OwnersBook {
  static final String EXTRA = "My notes & sums";

  private OwnersBook() {}

  /** A row of sheet Quotes. */
  record QuoteRow(String line, String priceFor, String amount, String use) {}

  static byte[] of(Scope scope, QuoteRow... quotes) {
    try (var book = new XSSFWorkbook()) {
      for (var s : OwnerSheet.values()) book.createSheet(s.title());
      for (var answers : answers(scope)) put(book, answers);
      for (var t : Trade.values()) {
        cell(book, scope.assignment(t).cell())
            .setCellValue(number(scope.assignment(t).ownerShare()));
      }
      quotes(book, List.of(quotes));
      extras(book);
      book.getProperties()
          .getCoreProperties()
          .getUnderlyingProperties()
          .setCreatedProperty(java.util.Optional.of(new java.util.Date(0)));
      return bytes(book);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Answers> answers(Scope scope) {
    var all = new ArrayList<>(List.of(scope.project(), scope.site(), scope.deckAndRoof()));
    all.addAll(List.of(scope.envelope(), scope.services(), scope.finishes(), scope.loan()));
    all.add(scope.options());
    scope.boxes().forEach(b -> all.add(b.row()));
    scope.rooms().forEach(r -> all.add(r.row()));
    scope.openings().forEach(o -> all.add(o.row()));
    return all;
  }

  private static void put(XSSFWorkbook book, Answers answers) {
    answers
        .all()
        .forEach(
            (q, a) -> {
              var c = cell(book, a.cell());
              label(c.getSheet(), q, c.getRowIndex(), c.getColumnIndex());
              var v = a.value();
              if (v instanceof Figure f) c.setCellValue(number(f));
              else if (v instanceof Labelled l) c.setCellValue(l.label());
              else if (v instanceof Boolean b) c.setCellValue(b ? "yes" : "no");
              else if (v instanceof LocalDate d) date(book, c, d);
              else c.setCellValue((String) v);
            });
  }

  private static void label(XSSFSheet sheet, Question q, int row, int column) {
    boolean form = q.sheet().shape() == OwnerSheet.Shape.FORM;
    cell(sheet, form ? row : 0, form ? 0 : column).setCellValue(q.label());
  }

  private static void date(
      XSSFWorkbook book, org.apache.poi.xssf.usermodel.XSSFCell c, LocalDate d) {
    c.setCellValue(d);
    var style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
    c.setCellStyle(style);
  }

  private static double number(Figure choice) {
    return choice.leaves().stream()
        .map(Leaf::amount)
        .findFirst()
        .orElse(BigDecimal.ZERO)
        .doubleValue();
  }

  private static void quotes(XSSFWorkbook book, List<QuoteRow> rows) {
    var sheet = book.getSheet("Quotes");
    cell(sheet, 0, 0).setCellValue("Prices from suppliers");
    var names = List.of("Line", "Supplier", "Price for", "Amount", "Use it");
    for (int i = 0; i < names.size(); i++) cell(sheet, 2, i).setCellValue(names.get(i));
    for (int i = 0; i < rows.size(); i++) {
      var q = rows.get(i);
      cell(sheet, 3 + i, 0).setCellValue(q.line());
      cell(sheet, 3 + i, 1).setCellValue("A supplier");
      if (!q.priceFor().isEmpty()) cell(sheet, 3 + i, 2).setCellValue(q.priceFor());
      cell(sheet, 3 + i, 3).setCellValue(Double.parseDouble(q.amount()));
      if (!q.use().isEmpty()) cell(sheet, 3 + i, 4).setCellValue(q.use());
    }
  }

  /** A coloured cell, a note, a validation, a formula and a chart: none of it is ours. */
  private static void extras(XSSFWorkbook book) {
    var sheet = book.createSheet(EXTRA);
    var coloured = book.createCellStyle();
    coloured.setFillForegroundColor(IndexedColors.LIGHT_ORANGE.getIndex());
    coloured.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    for (int i = 0; i < 4; i++) {
      cell(sheet, i, 0).setCellValue(i + 1);
      cell(sheet, i, 0).setCellStyle(coloured);
    }
    cell(sheet, 4, 0).setCellFormula("SUM(A1:A4)");
    cell(sheet, 4, 0).setCellValue(10);
    var drawing = sheet.createDrawingPatriarch();
    var note = drawing.createCellComment(drawing.createAnchor(0, 0, 0, 0, 2, 2, 5, 6));
    note.setString("ask the neighbour");
    cell(sheet, 0, 0).setCellComment(note);
    var helper = sheet.getDataValidationHelper();
    DataValidationConstraint list = helper.createExplicitListConstraint(new String[] {"a", "b"});
    sheet.addValidationData(helper.createValidation(list, new CellRangeAddressList(0, 9, 3, 3)));
    var chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 6, 0, 12, 12));
    var across = chart.createCategoryAxis(AxisPosition.BOTTOM);
    var up = chart.createValueAxis(AxisPosition.LEFT);
    up.setCrosses(AxisCrosses.AUTO_ZERO);
    var data = chart.createData(ChartTypes.LINE, across, up);
    data.addSeries(
        XDDFDataSourcesFactory.fromArray(new String[] {"a", "b", "c", "d"}),
        XDDFDataSourcesFactory.fromArray(new Double[] {1.0, 2.0, 3.0, 4.0}));
    chart.plot(data);
    book.setSheetOrder(EXTRA, 2);
    book.setActiveSheet(1);
  }

  // ---- editing what is there ----------------------------------------------------------------

  /** What a person does to a workbook before saving it. */
  interface Edit {
    void apply(XSSFWorkbook book);
  }

  static byte[] edited(byte[] workbook, Edit edit) {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      edit.apply(book);
      return bytes(book);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static XSSFWorkbook open(byte[] workbook) {
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(workbook));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(XSSFWorkbook book) throws IOException {
    var out = new ByteArrayOutputStream();
    book.write(out);
    return out.toByteArray();
  }

  /** A cell by its label, such as {@code Openings!D2}; made if it is not there. */
  static org.apache.poi.xssf.usermodel.XSSFCell cell(XSSFWorkbook book, String label) {
    int mark = label.lastIndexOf('!');
    var ref = new CellReference(label.substring(mark + 1));
    return cell(book.getSheet(label.substring(0, mark)), ref.getRow(), ref.getCol());
  }

  static org.apache.poi.xssf.usermodel.XSSFCell cell(XSSFSheet sheet, int row, int column) {
    var r = sheet.getRow(row);
    if (r == null) r = sheet.createRow(row);
    var c = r.getCell(column);
    return c == null ? r.createCell(column) : c;
  }
}

package cornerpost.workbook;

import cornerpost.scope.Question;
import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The few looks of a template's cells: entries faintly filled, everything else white. */
final class TemplateStyles {
  private static final String INK = "1B2A33";
  private static final String GREY = "5A6A70";
  private static final String ENTRY_FILL = "EEF4F1";
  private static final String LINE = "7A8B8F";

  private final XSSFWorkbook workbook;
  private final Map<Question.Kind, XSSFCellStyle> entries = new EnumMap<>(Question.Kind.class);
  final XSSFCellStyle purpose;
  final XSSFCellStyle note;
  final XSSFCellStyle startLine;
  final XSSFCellStyle header;
  final XSSFCellStyle label;
  final XSSFCellStyle unit;
  final XSSFCellStyle help;
  final XSSFCellStyle unitRow;
  final XSSFCellStyle checkHeader;
  final XSSFCellStyle check;
  final XSSFCellStyle checkText;
  final XSSFCellStyle checkShare;

  TemplateStyles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    purpose = plain(font(13, true, INK));
    note = plain(font(10, false, GREY));
    startLine = plain(font(11, false, INK));
    startLine.setWrapText(true);
    startLine.setVerticalAlignment(VerticalAlignment.CENTER);
    header = plain(font(11, true, INK));
    header.setBorderBottom(BorderStyle.MEDIUM);
    header.setBottomBorderColor(color(INK));
    header.setWrapText(true);
    header.setVerticalAlignment(VerticalAlignment.BOTTOM);
    label = plain(font(11, false, INK));
    label.setVerticalAlignment(VerticalAlignment.TOP);
    unit = plain(font(10, false, GREY));
    unit.setVerticalAlignment(VerticalAlignment.TOP);
    help = plain(font(10, false, GREY));
    help.setWrapText(true);
    help.setVerticalAlignment(VerticalAlignment.TOP);
    unitRow = plain(font(10, false, GREY));
    unitRow.setAlignment(HorizontalAlignment.LEFT);
    checkHeader = plain(font(10, true, GREY));
    checkHeader.setBorderBottom(BorderStyle.THIN);
    checkHeader.setBottomBorderColor(color(LINE));
    checkHeader.setWrapText(true);
    checkHeader.setVerticalAlignment(VerticalAlignment.BOTTOM);
    check = plain(font(10, false, GREY));
    check.setDataFormat(workbook.createDataFormat().getFormat("#,##0.00"));
    checkText = plain(font(10, false, GREY));
    checkShare = plain(font(10, false, GREY));
    checkShare.setDataFormat(workbook.createDataFormat().getFormat("0%"));
    for (var kind : Question.Kind.values()) entries.put(kind, entryStyle(kind));
  }

  XSSFCellStyle entry(Question.Kind kind) {
    return entries.get(kind);
  }

  private XSSFCellStyle entryStyle(Question.Kind kind) {
    var style = plain(font(11, false, INK));
    style.setFillForegroundColor(color(ENTRY_FILL));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBottomBorderColor(color(LINE));
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setLocked(false);
    var format =
        switch (kind) {
          case NUMBER -> "#,##0.###;-#,##0.###;0";
          case WHOLE -> "0";
          case MONEY -> "#,##0.00";
          case SHARE -> "0.##%";
          case DATE -> "yyyy-mm-dd";
          case TEXT, YES_NO, ONE_OF -> "General";
        };
    style.setDataFormat(workbook.createDataFormat().getFormat(format));
    style.setAlignment(
        switch (kind) {
          case NUMBER, WHOLE, MONEY, SHARE, DATE -> HorizontalAlignment.RIGHT;
          case TEXT, YES_NO, ONE_OF -> HorizontalAlignment.LEFT;
        });
    return style;
  }

  private XSSFCellStyle plain(XSSFFont font) {
    var style = workbook.createCellStyle();
    style.setFont(font);
    return style;
  }

  private XSSFFont font(int points, boolean bold, String rgb) {
    var font = workbook.createFont();
    font.setFontName("Calibri");
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    font.setColor(color(rgb));
    return font;
  }

  static XSSFColor color(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    return new XSSFColor(
        new byte[] {(byte) (value >> 16), (byte) (value >> 8), (byte) value}, null);
  }
}

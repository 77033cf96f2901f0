package cornerpost.workbook;

import cornerpost.scope.Question;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The few looks of a template's cells: entries faintly filled, everything else white. */
final class TemplateStyles {
  private static final String FONT = "Arial";
  private static final String INK = "1B2A33";
  private static final String GREY = "5A6A70";
  private static final String ENTRY_FILL = "EEF4F1";
  private static final String LINE = "B9C4C9";

  private final XSSFWorkbook workbook;
  private final Map<Question.Kind, XSSFCellStyle> entries = new EnumMap<>(Question.Kind.class);
  final XSSFCellStyle purpose;
  final XSSFCellStyle note;
  final XSSFCellStyle startLine;
  final XSSFCellStyle header;
  final XSSFCellStyle numberHeader;
  final XSSFCellStyle label;
  final XSSFCellStyle unit;
  final XSSFCellStyle help;
  final XSSFCellStyle unitRow;
  final XSSFCellStyle checkHeader;
  final XSSFCellStyle check;
  final XSSFCellStyle checkText;
  final XSSFCellStyle checkShare;
  final XSSFCellStyle liveHeader;
  final XSSFCellStyle free;

  TemplateStyles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    usualFont(workbook);
    purpose = plain(font(12, true, INK));
    note = plain(font(9, false, GREY));
    startLine = plain(font(10, false, INK));
    startLine.setWrapText(true);
    startLine.setVerticalAlignment(VerticalAlignment.CENTER);
    header = header(HorizontalAlignment.LEFT);
    numberHeader = header(HorizontalAlignment.RIGHT);
    label = plain(font(10, false, INK));
    label.setVerticalAlignment(VerticalAlignment.CENTER);
    label.setAlignment(HorizontalAlignment.LEFT);
    label.setIndention((short) 1);
    unit = plain(font(9, false, GREY));
    unit.setVerticalAlignment(VerticalAlignment.CENTER);
    unit.setAlignment(HorizontalAlignment.LEFT);
    unit.setIndention((short) 1);
    help = plain(font(9, false, GREY));
    help.setWrapText(true);
    help.setAlignment(HorizontalAlignment.LEFT);
    help.setIndention((short) 1);
    help.setVerticalAlignment(VerticalAlignment.CENTER);
    unitRow = plain(font(9, false, GREY));
    unitRow.setAlignment(HorizontalAlignment.RIGHT);
    unitRow.setIndention((short) 1);
    checkHeader = plain(font(9, true, GREY));
    checkHeader.setBorderBottom(BorderStyle.THIN);
    checkHeader.setBottomBorderColor(color(LINE));
    checkHeader.setWrapText(true);
    checkHeader.setAlignment(HorizontalAlignment.RIGHT);
    checkHeader.setVerticalAlignment(VerticalAlignment.BOTTOM);
    check = plain(font(9, false, GREY));
    check.setDataFormat(workbook.createDataFormat().getFormat("#,##0.00"));
    checkText = plain(font(9, false, GREY));
    checkText.setAlignment(HorizontalAlignment.RIGHT);
    checkShare = plain(font(9, false, GREY));
    checkShare.setDataFormat(workbook.createDataFormat().getFormat("0%"));
    liveHeader = header(HorizontalAlignment.RIGHT);
    for (var formulas : List.of(check, checkText, checkShare, liveHeader)) formulas.setLocked(true);
    for (var beside : List.of(check, checkText, checkShare)) {
      beside.setVerticalAlignment(VerticalAlignment.CENTER);
    }
    free = plain(font(10, false, INK));
    for (var kind : Question.Kind.values()) entries.put(kind, entryStyle(kind));
  }

  /** Column widths count its digits, and the sheets of a result are written in it. */
  private static void usualFont(XSSFWorkbook workbook) {
    var usual = workbook.getFontAt(0);
    usual.setFontName(FONT);
    usual.setFontHeightInPoints((short) 10);
    usual.setScheme(FontScheme.NONE); // else it is the theme's, whatever its name
  }

  XSSFCellStyle entry(Question.Kind kind) {
    return entries.get(kind);
  }

  static boolean isNumber(Question.Kind kind) {
    return switch (kind) {
      case NUMBER, WHOLE, MONEY, SHARE, DATE -> true;
      case TEXT, YES_NO, ONE_OF -> false;
    };
  }

  private XSSFCellStyle header(HorizontalAlignment alignment) {
    var style = plain(font(10, true, INK));
    style.setBorderBottom(BorderStyle.MEDIUM);
    style.setBottomBorderColor(color(INK));
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.BOTTOM);
    style.setAlignment(alignment);
    style.setIndention((short) 1);
    return style;
  }

  private XSSFCellStyle entryStyle(Question.Kind kind) {
    var style = plain(font(10, false, INK));
    style.setFillForegroundColor(color(ENTRY_FILL));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBottomBorderColor(color(LINE));
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    var format =
        switch (kind) {
          case NUMBER ->
              "General"; // any other format shows whole numbers with a dot or too many digits
          case WHOLE -> "0";
          case MONEY -> "#,##0.00";
          case SHARE -> "0.00%";
          case DATE -> "yyyy-mm-dd";
          case TEXT, YES_NO, ONE_OF -> "General";
        };
    style.setDataFormat(workbook.createDataFormat().getFormat(format));
    boolean number = isNumber(kind);
    style.setAlignment(number ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
    style.setIndention((short) 1);
    style.setShrinkToFit(!number);
    return style;
  }

  private XSSFCellStyle plain(XSSFFont font) {
    var style = workbook.createCellStyle();
    style.setFont(font);
    style.setLocked(false); // only live formulas are locked, on the sheets that have some
    return style;
  }

  private XSSFFont font(int points, boolean bold, String rgb) {
    var font = workbook.createFont();
    font.setFontName(FONT);
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    font.setColor(color(rgb));
    return font;
  }

  static XSSFColor color(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    return new XSSFColor(
        new byte[] {(byte) 0xFF, (byte) (value >> 16), (byte) (value >> 8), (byte) value}, null);
  }
}

package cornerpost.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.xmlbeans.impl.values.XmlValueOutOfRangeException;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/**
 * What a cell holds, whichever program wrote it: the cached result where it holds a formula. Taken
 * from the stored form itself, because the library's own getters throw where another program left
 * out what they rely on.
 *
 * @param kind which of the other components says it
 * @param text of a text cell; the code of an error cell; the formula where its result is missing
 * @param number of a number cell, to the 15 digits a spreadsheet keeps
 * @param truth of a yes/no cell
 * @param date what a number is as a date, where it can be one
 */
record Held(
    Kind kind,
    String text,
    BigDecimal number,
    boolean truth,
    boolean percent,
    boolean dateFormat,
    Optional<LocalDate> date) {

  /** What is in the cell. */
  enum Kind {
    NOTHING,
    TEXT,
    NUMBER,
    TRUTH,
    ERROR,
    NOT_CALCULATED,
    /** The file does not say what it should. */
    UNREADABLE
  }

  static final Held NOTHING = of(Kind.NOTHING, "");

  /**
   * Spreadsheet dates before 1904 differ between programs; nobody builds that far back or ahead.
   */
  private static final LocalDate FIRST = LocalDate.of(1990, 1, 1);

  private static final LocalDate LAST = LocalDate.of(2199, 12, 31);

  private static Held of(Kind kind, String text) {
    return new Held(kind, text, BigDecimal.ZERO, false, false, false, Optional.empty());
  }

  static Held of(XSSFCell cell) {
    if (cell == null) return NOTHING;
    try {
      return read(cell);
    } catch (RuntimeException broken) { // a style, a shared text or a type that does not exist
      return of(Kind.UNREADABLE, String.valueOf(broken.getMessage()));
    }
  }

  private static Held read(XSSFCell cell) {
    CTCell stored = cell.getCTCell();
    var value = stored.isSetV() ? stored.getV() : "";
    var type = stored.isSetT() ? typeOf(stored) : Optional.of(STCellType.N);
    return type.isPresent() ? read(cell, stored, value, type.get().intValue()) : isoDate(value);
  }

  /** Empty for the type "d" of later editions of the standard, which the library does not know. */
  private static Optional<STCellType.Enum> typeOf(CTCell stored) {
    try {
      return Optional.ofNullable(stored.getT());
    } catch (XmlValueOutOfRangeException unknown) {
      return Optional.empty();
    }
  }

  private static Held read(XSSFCell cell, CTCell stored, String value, int type) {
    if (type == STCellType.INT_INLINE_STR) {
      return text(
          stored.isSetIs()
              ? new XSSFRichTextString(stored.getIs()).getString()
              : new XSSFRichTextString(value).getString());
    }
    if (type == STCellType.INT_STR) return text(new XSSFRichTextString(value).getString());
    if (value.isBlank()) {
      return stored.isSetF() ? of(Kind.NOT_CALCULATED, cell.getCellFormula()) : NOTHING;
    }
    return switch (type) {
      case STCellType.INT_S ->
          text(
              cell.getSheet()
                  .getWorkbook()
                  .getSharedStringSource()
                  .getItemAt(Integer.parseInt(value.strip()))
                  .getString());
      case STCellType.INT_B ->
          new Held(
              Kind.TRUTH,
              "",
              BigDecimal.ZERO,
              value.strip().equals("1") || value.strip().equalsIgnoreCase("true"),
              false,
              false,
              Optional.empty());
      case STCellType.INT_E -> of(Kind.ERROR, value.strip());
      default -> number(cell, value.strip());
    };
  }

  private static Held text(String text) {
    return Plain.tidy(text).isEmpty() ? NOTHING : of(Kind.TEXT, text);
  }

  private static Held isoDate(String value) {
    try {
      value = value.strip();
      var date = LocalDate.parse(value.length() > 10 ? value.substring(0, 10) : value);
      return new Held(Kind.NUMBER, "", BigDecimal.ZERO, false, false, true, Optional.of(date));
    } catch (DateTimeParseException e) {
      return of(Kind.UNREADABLE, value);
    }
  }

  private static Held number(XSSFCell cell, String value) {
    double amount = Double.parseDouble(value);
    if (!Double.isFinite(amount)) return of(Kind.ERROR, value);
    var style = cell.getCellStyle();
    var format = style == null ? null : style.getDataFormatString();
    return new Held(
        Kind.NUMBER,
        "",
        plain(amount),
        false,
        format != null && format.replaceAll("\"[^\"]*\"|\\\\.", "").contains("%"),
        format != null && DateUtil.isADateFormat(style.getDataFormat(), format),
        dateOf(amount, cell.getSheet().getWorkbook().isDate1904()));
  }

  /** To 15 digits, without trailing zeros, and never as 4.45E+3. */
  private static BigDecimal plain(double amount) {
    var number = new BigDecimal(amount).round(new MathContext(15)).stripTrailingZeros();
    return number.scale() < 0 ? number.setScale(0) : number;
  }

  private static Optional<LocalDate> dateOf(double serial, boolean from1904) {
    if (!DateUtil.isValidExcelDate(serial)) return Optional.empty();
    LocalDateTime moment = DateUtil.getLocalDateTime(serial, from1904);
    if (moment == null) return Optional.empty();
    var date = moment.toLocalDate();
    return date.isBefore(FIRST) || date.isAfter(LAST) ? Optional.empty() : Optional.of(date);
  }

  boolean isNothing() {
    return kind == Kind.NOTHING;
  }

  /** For messages: {@code text 'wide'}, {@code the number 5}. */
  String shown() {
    return switch (kind) {
      case NOTHING -> "an empty cell";
      case TEXT -> "text " + Plain.quoted(text);
      case NUMBER ->
          date.isPresent() && dateFormat
              ? "the date " + date.get()
              : "the number " + Plain.number(number);
      case TRUTH -> truth ? "TRUE" : "FALSE";
      case ERROR -> "the error " + text;
      case NOT_CALCULATED -> "a formula without a stored result";
      case UNREADABLE -> "a cell that is damaged in the file";
    };
  }

  /** The raw content, as a live formula would compare it. */
  Object raw() {
    return switch (kind) {
      case NUMBER -> dateFormat && date.isPresent() ? date.get() : number;
      case TRUTH -> truth;
      default -> text;
    };
  }
}

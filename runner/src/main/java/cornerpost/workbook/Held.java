package cornerpost.workbook;

import cornerpost.workbook.parts.Markup;
import cornerpost.workbook.parts.StoredBook;
import cornerpost.workbook.parts.StoredCell;
import cornerpost.workbook.parts.StoredSheet;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * What a cell holds, whichever program wrote it: the cached result where it holds a formula.
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

  private static final LocalDate ZERO_1900 = LocalDate.of(1899, 12, 30);
  private static final LocalDate ZERO_1904 = LocalDate.of(1904, 1, 1);
  private static final double MOST_DAYS = 1e6;

  private static final LocalDate LAST = LocalDate.of(2199, 12, 31);

  private static Held of(Kind kind, String text) {
    return new Held(kind, text, BigDecimal.ZERO, false, false, false, Optional.empty());
  }

  /** Of a cell that may be missing. */
  static Held of(StoredSheet sheet, int row, int column) {
    return sheet.cell(row, column).map(c -> of(sheet.book(), c)).orElse(NOTHING);
  }

  static Held of(StoredBook book, StoredCell cell) {
    try {
      return read(book, cell);
    } catch (RuntimeException broken) { // a style, a shared text or a number that is none
      return of(Kind.UNREADABLE, String.valueOf(broken.getMessage()));
    }
  }

  private static Held read(StoredBook book, StoredCell cell) {
    var value = cell.value();
    switch (cell.type()) {
      case "inlineStr" -> {
        return text(cell.text().isEmpty() ? Markup.cellText(value) : cell.text());
      }
      case "str" -> {
        return text(Markup.cellText(value));
      }
      case "d" -> {
        return isoDate(value);
      }
      default -> {}
    }
    if (value.isBlank()) {
      return cell.calculated() ? of(Kind.NOT_CALCULATED, cell.formula()) : NOTHING;
    }
    return switch (cell.type()) {
      case "s" -> text(book.sharedText(Integer.parseInt(value.strip())));
      case "b" ->
          new Held(
              Kind.TRUTH,
              "",
              BigDecimal.ZERO,
              value.strip().equals("1") || value.strip().equalsIgnoreCase("true"),
              false,
              false,
              Optional.empty());
      case "e" -> of(Kind.ERROR, value.strip());
      case "n" -> number(book, cell, value.strip());
      default -> of(Kind.UNREADABLE, cell.type());
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

  private static Held number(StoredBook book, StoredCell cell, String value) {
    double amount = Double.parseDouble(value);
    if (!Double.isFinite(amount)) return of(Kind.ERROR, value);
    int number = book.styles().formatOf(cell.style());
    if (number < 0) return of(Kind.UNREADABLE, "no style " + cell.style());
    var shown = book.styles().shownBy(number);
    return new Held(
        Kind.NUMBER,
        "",
        plain(amount),
        false,
        shown.asPercent(),
        shown.asDate(),
        dateOf(amount, book.from1904()));
  }

  /** To 15 digits, without trailing zeros, and never as 4.45E+3. */
  private static BigDecimal plain(double amount) {
    var number = new BigDecimal(amount).round(new MathContext(15)).stripTrailingZeros();
    return number.scale() < 0 ? number.setScale(0) : number;
  }

  private static Optional<LocalDate> dateOf(double serial, boolean from1904) {
    if (!(serial >= 0 && serial < MOST_DAYS)) return Optional.empty();
    // The first of March 1900 is day 61, as if that year had a 29th of February; what lies before
    // is too early to matter.
    var date = (from1904 ? ZERO_1904 : ZERO_1900).plusDays((long) serial);
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

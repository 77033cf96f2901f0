package cornerpost.workbook;

import cornerpost.workbook.parts.BookEdit;
import cornerpost.workbook.parts.Place;
import cornerpost.workbook.parts.SheetFrame;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/** Writes the cells of one result sheet. Rows are those people see, columns count from nothing. */
final class SheetPage {
  /** A spreadsheet's limit for the text of a cell. */
  static final int LONGEST_TEXT = 32_767;

  private static final String CUT = " ... (cut here: the cell holds no more)";
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final LocalDate DAY_ZERO_1904 = LocalDate.of(1904, 1, 1);

  private static final double LINE = 1.34; // height of a line, in sizes of its text
  private static final double TABLE_LINE = 12; // points, of the text of the tables
  private static final double EDGES = 4; // points that a cell keeps free at its sides
  private static final double USUAL_HEIGHT = 15; // points
  private static final double HIGHEST = 409; // points, a spreadsheet's limit

  /** Points between the line under column names and the first row. */
  private static final double AIR = 6;

  private final BookEdit.SheetEdit sheet;
  private final LocalDate dayZero;
  private final SheetStyle plain;
  private final SheetRows rows = new SheetRows();
  private final List<Integer> numbers = new ArrayList<>();
  private final Map<Integer, List<Wrapped>> wrappedTexts = new TreeMap<>();
  private final Map<Integer, Integer> mergedColumns = new HashMap<>();
  private final Map<Long, Integer> shared = new HashMap<>(); // numbers of shared formulas
  private final Set<Integer> fixedHeights = new HashSet<>();

  private record Wrapped(int column, String text, SheetStyle look) {}

  SheetPage(BookEdit.SheetEdit sheet, SheetStyle plain, boolean from1904) {
    this.sheet = sheet;
    this.dayZero = from1904 ? DAY_ZERO_1904 : DAY_ZERO;
    this.plain = plain;
  }

  /** The sheet round the rows. */
  SheetFrame frame() {
    return sheet.frame();
  }

  /** A range by one of the standard's own names. */
  void name(String name, String range, boolean hidden) {
    sheet.name(name, range, hidden);
  }

  /** A chart over cells: first column and row, and those behind the last. */
  void chart(String name, List<Integer> cells, ChartXml chart) {
    sheet.chart(name, cells, chart.text());
  }

  // ---- looks --------------------------------------------------------------------------------

  SheetStyle plain() {
    return plain;
  }

  SheetStyle wrapped() {
    return plain.wrapping();
  }

  SheetStyle number(String format) {
    return plain.formatted(format).aligned(HorizontalAlignment.RIGHT);
  }

  SheetStyle dateLook() {
    return number("ddd d mmm yyyy");
  }

  SheetStyle heading() {
    return plain
        .strong()
        .wrapping()
        .level(VerticalAlignment.BOTTOM)
        .ruledBottom(BorderStyle.THIN, SheetStyle.INK);
  }

  // ---- cells --------------------------------------------------------------------------------

  void cell(int row, int column, SheetStyle look) {
    rows.look(row, column, look);
  }

  /** Text stays text, whatever it begins with; it is kept in the cell itself. */
  void text(int row, int column, String text, SheetStyle look) {
    cell(row, column, look);
    if (text.isEmpty()) return;
    if (look.wrapped()) {
      wrappedTexts
          .computeIfAbsent(row, r -> new ArrayList<>())
          .add(new Wrapped(column, text, look));
    }
    rows.text(row, column, fitting(text));
  }

  void text(int row, int column, String text) {
    text(row, column, text, plain);
  }

  void number(int row, int column, double value, SheetStyle look) {
    cell(row, column, look);
    rows.number(row, column, value);
  }

  void number(int row, int column, BigDecimal value, SheetStyle look) {
    number(row, column, value.doubleValue(), look);
  }

  void date(int row, int column, LocalDate day, SheetStyle look) {
    number(row, column, serial(day), look);
  }

  /** A live formula with the value it has now. */
  void formula(int row, int column, String formula, BigDecimal value, SheetStyle look) {
    formula(row, column, formula, value.doubleValue(), look);
  }

  void formula(int row, int column, String formula, double value, SheetStyle look) {
    cell(row, column, look);
    rows.formula(row, column, formula, value);
  }

  void formula(int row, int column, String formula, String value, SheetStyle look) {
    cell(row, column, look);
    rows.formula(row, column, formula, value);
  }

  /**
   * A live formula that is the same in many rows of a column, but for the rows it names without a
   * dollar sign: written once, which makes a long sheet a third as large.
   *
   * @param group what tells the formulas of a sheet apart
   * @param lastRow of the rows that may share it
   */
  void shared(
      int row,
      int column,
      long group,
      int lastRow,
      Supplier<String> formula,
      BigDecimal value,
      SheetStyle look) {
    cell(row, column, look);
    var known = shared.get(group);
    if (known != null) {
      rows.shared(row, column, known, value.doubleValue());
      return;
    }
    int number = shared.size();
    shared.put(group, number);
    var range = letter(column) + row + ":" + letter(column) + lastRow;
    rows.shared(row, column, number, range, formula.get(), value.doubleValue());
  }

  /**
   * A link to a place in the workbook, such as {@code 'Cost plan'!A12}. A text that must break over
   * lines stays plain: not every program breaks a link, and what is cut off cannot be read.
   */
  void link(int row, int column, String target) {
    if (breaks(row, column)) return;
    cell(row, column, rows.lookOf(row, column).linked());
    frame().link(letter(column) + row, target);
  }

  void link(int row, int column, ResultSheet sheet, int targetRow) {
    link(row, column, Addresses.sheetName(sheet.title()) + "!A" + targetRow);
  }

  private boolean breaks(int row, int column) {
    return wrappedTexts.getOrDefault(row, List.of()).stream()
        .anyMatch(w -> w.column == column && lines(row, w) > 1);
  }

  double serial(LocalDate day) {
    return ChronoUnit.DAYS.between(dayZero, day);
  }

  /** The column name of a text that follows a number keeps its distance, as the text does. */
  void headIndented(int row, int... columns) {
    for (int c : columns) cell(row, c, heading().indented());
  }

  void width(int column, int characters) {
    frame().widthOfText(column, characters);
  }

  void header(int row, String... names) {
    for (int i = 0; i < names.length; i++) text(row, i, names[i], heading());
    height(row, 2 * TABLE_LINE + 5);
  }

  void widths(int... characters) {
    for (int i = 0; i < characters.length; i++) width(i, characters[i]);
  }

  /** The column name of a number stands over the number. */
  void headRight(int row, int... columns) {
    for (int c : columns) cell(row, c, heading().aligned(HorizontalAlignment.RIGHT));
  }

  void merge(int row, int fromColumn, int toColumn) {
    mergedColumns.put(row * 1000 + fromColumn, toColumn);
    frame().merge(Place.range(row - 1, fromColumn, row - 1, toColumn));
  }

  /**
   * Makes rows as high as their wrapped texts need. Programs differ in whether they do that
   * themselves when they open a file.
   */
  private void fitHeights() {
    for (var e : wrappedTexts.entrySet()) {
      if (fixedHeights.contains(e.getKey())) continue;
      double needed = 0;
      for (var w : e.getValue()) {
        int lines = lines(e.getKey(), w);
        if (lines > 1) needed = Math.max(needed, lines * w.look.size() * LINE + 3);
      }
      if (needed > 0) rows.height(e.getKey(), Math.min(needed, HIGHEST));
    }
  }

  private double room(int row, int column) {
    int last = mergedColumns.getOrDefault(row * 1000 + column, column);
    int room = 0;
    for (int c = column; c <= last; c++) room += frame().widthOf(c);
    return TextWidth.room(room, EDGES);
  }

  private int lines(int row, Wrapped w) {
    return TextWidth.lines(w.text, w.look.size(), w.look.bold(), room(row, w.column));
  }

  /**
   * Rows of one line stand in the middle of their height, and the row under a line keeps its
   * distance from it. In rows of several lines all begin at the top.
   */
  private void airUnderLines() {
    for (int row = rows.last(); row >= 1; row--) {
      var height = rows.heightOf(row);
      boolean under = row > 1 && rows.isRuledBelow(row - 1);
      boolean ruled = rows.isRuledAbove(row);
      if (under || ruled || height.isEmpty()) rows.settle(row);
      double air = under ? AIR : ruled ? AIR / 2 : 0;
      if (air > 0) rows.height(row, Math.min(HIGHEST, height.orElse(USUAL_HEIGHT) + air));
    }
  }

  void height(int row, double points) {
    fixedHeights.add(row);
    rows.height(row, points);
  }

  /** The row can be folded away under the one before it. */
  void fold(int row) {
    rows.fold(row);
  }

  /** The last row with anything on it. */
  int lastRow() {
    return rows.last();
  }

  /** Gives its looks their numbers in the workbook, once all its cells are there. */
  void number(SheetStyles styles) {
    fitHeights();
    airUnderLines();
    for (var look : rows.looks()) numbers.add(styles.get(look));
  }

  /** Hands the rows over, for they are complete and their looks numbered. */
  void finish() {
    if (rows.anyFolded()) frame().folds();
    sheet.rows(rows.xml(numbers));
  }

  static String letter(int column) {
    return Place.letters(column);
  }

  /** Cut to what a cell holds, never between the halves of a character; no control characters. */
  static String fitting(String text) {
    var clean = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            p -> {
              boolean kept = p >= ' ' && p != 0xFFFE && p != 0xFFFF && !isLoneHalf(p);
              clean.appendCodePoint(kept || p == '\n' || p == '\t' ? p : ' ');
            });
    if (clean.length() <= LONGEST_TEXT) return clean.toString();
    int end = LONGEST_TEXT - CUT.length();
    if (Character.isHighSurrogate(clean.charAt(end - 1))) end--;
    return clean.substring(0, end) + CUT;
  }

  private static boolean isLoneHalf(int codePoint) {
    return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
  }
}

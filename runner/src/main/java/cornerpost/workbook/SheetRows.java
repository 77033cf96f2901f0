package cornerpost.workbook;

import cornerpost.workbook.parts.Markup;
import cornerpost.workbook.parts.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * The rows of a result sheet, written as the markup of ISO/IEC 29500 part 1, 18.3.1.80 (sheetData).
 * A plan has some ten thousand cells, all ours; as objects of the spreadsheet library they took
 * most of a run's time and memory.
 */
final class SheetRows {
  private final ArrayList<Row> rows = new ArrayList<>(); // by number; none where nothing stands
  private final Map<SheetStyle, Integer> looks = new LinkedHashMap<>();
  private final List<SheetStyle> byNumber = new ArrayList<>();
  private SheetStyle latest; // cells beside each other often have the very same look
  private int latestNumber;

  private static final class Row {
    Cell[] cells = new Cell[16]; // by column; none where nothing stands
    double height;
    boolean folded;

    Cell cell(int column) {
      if (column >= cells.length) {
        cells = Arrays.copyOf(cells, Math.max(column + 1, 2 * cells.length));
      }
      if (cells[column] == null) cells[column] = new Cell();
      return cells[column];
    }
  }

  private static final class Cell {
    int look = -1;
    String type = "";
    String content = "";
  }

  /** Rows count from one, columns from nothing. */
  private Cell cell(int row, int column) {
    return row(row).cell(column);
  }

  private Row row(int row) {
    while (rows.size() <= row) rows.add(null);
    var there = rows.get(row);
    if (there != null) return there;
    var made = new Row();
    rows.set(row, made);
    return made;
  }

  void look(int row, int column, SheetStyle look) {
    if (look != latest) {
      var known = looks.putIfAbsent(look, looks.size());
      if (known == null) byNumber.add(look);
      latest = look;
      latestNumber = known == null ? looks.size() - 1 : known;
    }
    cell(row, column).look = latestNumber;
  }

  SheetStyle lookOf(int row, int column) {
    int look = cell(row, column).look;
    if (look < 0) throw new IllegalStateException("a link on a cell without a look");
    return byNumber.get(look);
  }

  /** The looks of its cells, in the order in which they were first used. */
  Set<SheetStyle> looks() {
    return looks.keySet();
  }

  void text(int row, int column, String text) {
    // The schema knows no such attribute; readers need it only for spaces at the ends.
    var open = text.equals(text.strip()) ? "<is><t>" : "<is><t xml:space=\"preserve\">";
    put(row, column, "inlineStr", open + escaped(text) + "</t></is>");
  }

  void number(int row, int column, double value) {
    put(row, column, "", "<v>" + value + "</v>");
  }

  void formula(int row, int column, String formula, double value) {
    put(row, column, "", "<f>" + escaped(formula) + "</f><v>" + value + "</v>");
  }

  /**
   * A formula that cells below it share, their rows counted from its own: 18.3.1.40, si and ref.
   *
   * @param group number of the formula on the sheet, {@code range} the cells that may share it
   */
  void shared(int row, int column, int group, String range, String formula, double value) {
    var open = "<f t=\"shared\" ref=\"" + range + "\" si=\"" + group + "\">";
    put(row, column, "", open + escaped(formula) + "</f><v>" + value + "</v>");
  }

  /** A later cell of such a formula. */
  void shared(int row, int column, int group, double value) {
    put(row, column, "", "<f t=\"shared\" si=\"" + group + "\"/><v>" + value + "</v>");
  }

  void formula(int row, int column, String formula, String value) {
    put(row, column, "str", "<f>" + escaped(formula) + "</f><v>" + escaped(value) + "</v>");
  }

  private void put(int row, int column, String type, String content) {
    var cell = cell(row, column);
    cell.type = type;
    cell.content = content;
  }

  void height(int row, double points) {
    row(row).height = points;
  }

  /** As set; empty where the row has the sheet's own. */
  OptionalDouble heightOf(int row) {
    var there = row < rows.size() ? rows.get(row) : null;
    return there == null || there.height == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(there.height);
  }

  /** Whether a line under column names or a heading runs under a row. */
  boolean isRuledBelow(int row) {
    return any(row, look -> isLine(look.bottom()) && look.bottom().colour().equals(SheetStyle.INK));
  }

  /** Whether a line runs above a row: above a sum, or where a stage begins. */
  boolean isRuledAbove(int row) {
    return any(row, look -> isLine(look.top()));
  }

  private static boolean isLine(SheetStyle.Edge edge) {
    return edge.line() == BorderStyle.THIN || edge.line() == BorderStyle.MEDIUM;
  }

  private boolean any(int row, Predicate<SheetStyle> wanted) {
    var there = row < rows.size() ? rows.get(row) : null;
    if (there == null) return false;
    for (var c : there.cells) {
      if (c != null && c.look >= 0 && wanted.test(byNumber.get(c.look))) return true;
    }
    return false;
  }

  /** Puts what stands at the top of a row's cells into their middle. */
  void settle(int row) {
    var there = row < rows.size() ? rows.get(row) : null;
    if (there == null) return;
    for (int c = 0; c < there.cells.length; c++) {
      var cell = there.cells[c];
      if (cell == null || cell.look < 0 || cell.content.isEmpty()) continue;
      var look = byNumber.get(cell.look);
      if (look.down() == VerticalAlignment.TOP) look(row, c, look.level(VerticalAlignment.CENTER));
    }
  }

  /** The row can be folded away under the one before it. */
  void fold(int row) {
    row(row).folded = true;
  }

  boolean anyFolded() {
    for (var row : rows) if (row != null && row.folded) return true;
    return false;
  }

  /** The last row with anything on it; nothing on an empty sheet. */
  int last() {
    return Math.max(0, rows.size() - 1);
  }

  /**
   * Markup of {@code row} elements.
   *
   * @param styles the workbook's number of each look, in the order of {@link #looks}
   */
  CharSequence xml(List<Integer> styles) {
    var xml = new StringBuilder(1 << 16);
    int width = 0;
    for (var row : rows) if (row != null) width = Math.max(width, row.cells.length);
    var letters = new String[width];
    for (int c = 0; c < width; c++) letters[c] = Place.letters(c);
    for (int r = 1; r < rows.size(); r++) {
      if (rows.get(r) != null) row(r, rows.get(r), styles, letters, xml);
    }
    return xml;
  }

  private static void row(
      int number, Row row, List<Integer> styles, String[] letters, StringBuilder xml) {
    xml.append("<row r=\"").append(number).append('"');
    if (row.height > 0) xml.append(" ht=\"").append(row.height).append("\" customHeight=\"1\"");
    if (row.folded) xml.append(" outlineLevel=\"1\"");
    xml.append('>');
    for (int c = 0; c < row.cells.length; c++) {
      var cell = row.cells[c];
      if (cell == null) continue;
      xml.append("<c r=\"").append(letters[c]).append(number);
      xml.append("\" s=\"").append(cell.look < 0 ? 0 : styles.get(cell.look)).append('"');
      if (!cell.type.isEmpty()) xml.append(" t=\"").append(cell.type).append('"');
      if (cell.content.isEmpty()) xml.append("/>");
      else xml.append('>').append(cell.content).append("</c>");
    }
    xml.append("</row>");
  }

  private static String escaped(String text) {
    var safe = new StringBuilder(text.length() + 16);
    Markup.escapeCell(text, safe);
    return safe.toString();
  }
}

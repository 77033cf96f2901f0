package cornerpost.workbook;

import cornerpost.workbook.parts.Markup;
import cornerpost.workbook.parts.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The rows of a result sheet, written as the markup of ISO/IEC 29500 part 1, 18.3.1.80 (sheetData).
 * A plan has some ten thousand cells, all ours; as objects of the spreadsheet library they took
 * most of a run's time and memory.
 */
final class SheetRows {
  private final TreeMap<Integer, Row> rows = new TreeMap<>();
  private final Map<SheetStyle, Integer> looks = new LinkedHashMap<>();

  private static final class Row {
    final TreeMap<Integer, Cell> cells = new TreeMap<>();
    double height;
    boolean folded;
  }

  private static final class Cell {
    int look = -1;
    String type = "";
    String content = "";
  }

  /** Rows count from one, columns from nothing. */
  private Cell cell(int row, int column) {
    return row(row).cells.computeIfAbsent(column, c -> new Cell());
  }

  private Row row(int row) {
    return rows.computeIfAbsent(row, r -> new Row());
  }

  void look(int row, int column, SheetStyle look) {
    var known = looks.putIfAbsent(look, looks.size());
    cell(row, column).look = known == null ? looks.size() - 1 : known;
  }

  SheetStyle lookOf(int row, int column) {
    int look = cell(row, column).look;
    return looks.entrySet().stream()
        .filter(e -> e.getValue() == look)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("a link on a cell without a look"));
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

  /** The row can be folded away under the one before it. */
  void fold(int row) {
    row(row).folded = true;
  }

  boolean anyFolded() {
    return rows.values().stream().anyMatch(r -> r.folded);
  }

  /** The last row with anything on it; nothing on an empty sheet. */
  int last() {
    return rows.isEmpty() ? 0 : rows.lastKey();
  }

  /**
   * Markup of {@code row} elements.
   *
   * @param styles the workbook's number of each look, in the order of {@link #looks}
   */
  CharSequence xml(List<Integer> styles) {
    var xml = new StringBuilder(1 << 16);
    for (var r : rows.entrySet()) row(r.getKey(), r.getValue(), styles, xml);
    return xml;
  }

  private static void row(int number, Row row, List<Integer> styles, StringBuilder xml) {
    xml.append("<row r=\"").append(number).append('"');
    if (row.height > 0) xml.append(" ht=\"").append(row.height).append("\" customHeight=\"1\"");
    if (row.folded) xml.append(" outlineLevel=\"1\"");
    xml.append('>');
    for (Map.Entry<Integer, Cell> c : row.cells.entrySet()) {
      var cell = c.getValue();
      xml.append("<c r=\"").append(Place.letters(c.getKey())).append(number);
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

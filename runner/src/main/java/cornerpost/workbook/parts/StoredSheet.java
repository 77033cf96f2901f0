package cornerpost.workbook.parts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** A worksheet as the file has it: its title and its cells. */
public final class StoredSheet {
  private final StoredBook book;
  private final String title;
  private final String part;
  private final TreeMap<Integer, TreeMap<Integer, StoredCell>> rows = new TreeMap<>();

  StoredSheet(StoredBook book, String title, String part) {
    this.book = book;
    this.title = title;
    this.part = part;
  }

  public StoredBook book() {
    return book;
  }

  public String title() {
    return title;
  }

  /** Name of the part that holds it. */
  public String part() {
    return part;
  }

  /** The numbers of the rows with cells, from nothing, in order. */
  public List<Integer> rows() {
    return new ArrayList<>(rows.keySet());
  }

  /** The cells of a row by column; empty where it has none. */
  public Collection<StoredCell> row(int row) {
    return cells(row).values();
  }

  private NavigableMap<Integer, StoredCell> cells(int row) {
    var cells = rows.get(row);
    return cells == null ? java.util.Collections.emptyNavigableMap() : cells;
  }

  public Optional<StoredCell> cell(int row, int column) {
    return Optional.ofNullable(cells(row).get(column));
  }

  /** The last row with a cell; less than nothing on an empty sheet. */
  public int lastRow() {
    return rows.isEmpty() ? -1 : rows.lastKey();
  }

  // ---- reading ------------------------------------------------------------------------------

  StoredSheet read(byte[] xml) {
    try {
      var in = Element.reader(xml);
      int row = -1;
      int column = -1;
      while (in.hasNext()) {
        int event = in.next();
        Element.refuseDocumentType(event);
        if (event != XMLStreamConstants.START_ELEMENT) continue;
        switch (in.getLocalName()) {
          case "row" -> {
            row = rowNumber(in, row + 1);
            column = -1;
          }
          case "c" -> {
            var cell = cell(in, row, column + 1);
            row = cell.row();
            column = cell.column();
            rows.computeIfAbsent(row, r -> new TreeMap<>()).put(column, cell);
          }
          default -> {}
        }
      }
      return this;
    } catch (XMLStreamException e) {
      throw new DamagedFileException(String.valueOf(e.getMessage()));
    }
  }

  /** Writers may leave the number out; rows then follow each other. */
  private static int rowNumber(XMLStreamReader in, int next) {
    var r = in.getAttributeValue(null, "r");
    if (r == null) return next;
    try {
      return Integer.parseInt(r.strip()) - 1;
    } catch (NumberFormatException e) {
      throw new DamagedFileException("a row called " + r);
    }
  }

  private static StoredCell cell(XMLStreamReader in, int row, int nextColumn)
      throws XMLStreamException {
    var reference = in.getAttributeValue(null, "r");
    int column = nextColumn;
    if (reference != null) {
      var place =
          Place.find(reference)
              .orElseThrow(() -> new DamagedFileException("a cell called " + reference));
      row = place.row();
      column = place.column();
    }
    if (!Place.exists(row, column)) throw new DamagedFileException("a cell off the sheet");
    int style = style(in.getAttributeValue(null, "s"));
    var type = in.getAttributeValue(null, "t");
    var value = "";
    var text = "";
    var formula = "";
    boolean calculated = false;
    for (int event = in.next(); event != XMLStreamConstants.END_ELEMENT; event = in.next()) {
      if (event != XMLStreamConstants.START_ELEMENT) continue;
      switch (in.getLocalName()) {
        case "v" -> value = in.getElementText();
        case "f" -> {
          formula = in.getElementText();
          calculated = true;
        }
        case "is" -> text = SharedTexts.richText(in);
        default -> SharedTexts.skip(in);
      }
    }
    return new StoredCell(
        row, column, style, type == null ? "n" : type, value, text, formula, calculated);
  }

  private static int style(String s) {
    try {
      return s == null ? 0 : Integer.parseInt(s.strip());
    } catch (NumberFormatException e) {
      return -1;
    }
  }
}

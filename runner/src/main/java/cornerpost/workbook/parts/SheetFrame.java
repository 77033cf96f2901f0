package cornerpost.workbook.parts;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A worksheet without its rows: what stands round them in the part (ISO/IEC 29500 part 1,
 * 18.3.1.99). Of a sheet that is written again, what a run does not write stays: its comments,
 * pictures, protection and zoom.
 */
public final class SheetFrame {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String ROWS = "sheetData";
  private static final double ROOM_BESIDE_TEXT = 182 / 256.0; // of a character
  private static final double WIDEST = 255;

  /** The order the standard asks for. */
  private static final List<String> ORDER =
      List.of(
          "sheetPr",
          "dimension",
          "sheetViews",
          "sheetFormatPr",
          "cols",
          ROWS,
          "sheetCalcPr",
          "sheetProtection",
          "protectedRanges",
          "scenarios",
          "autoFilter",
          "sortState",
          "dataConsolidate",
          "customSheetViews",
          "mergeCells",
          "phoneticPr",
          "conditionalFormatting",
          "dataValidations",
          "hyperlinks",
          "printOptions",
          "pageMargins",
          "pageSetup",
          "headerFooter",
          "rowBreaks",
          "colBreaks",
          "customProperties",
          "cellWatches",
          "ignoredErrors",
          "smartTags",
          "drawing",
          "legacyDrawing",
          "legacyDrawingHF",
          "drawingHF",
          "picture",
          "oleObjects",
          "controls",
          "webPublishItems",
          "tableParts",
          "extLst");

  /** What every run writes anew. */
  private static final List<String> OURS =
      List.of(
          "dimension",
          "cols",
          "autoFilter",
          "sortState",
          "mergeCells",
          "conditionalFormatting",
          "dataValidations",
          "hyperlinks",
          "rowBreaks",
          "colBreaks");

  private final Element root;
  private final TreeMap<Integer, Double> widths = new TreeMap<>();
  private final Map<String, String> links = new LinkedHashMap<>();
  private final StringBuilder merged = new StringBuilder();
  private int merges;

  private SheetFrame(Element root) {
    this.root = root;
  }

  /** A new sheet. */
  static SheetFrame fresh() {
    return new SheetFrame(Element.of("worksheet").set("xmlns", MAIN));
  }

  /** A sheet that is there, its rows left out. */
  static SheetFrame of(byte[] part) {
    var root = Element.read(part, ROWS);
    root.removeIf(e -> OURS.contains(e.name()) || e.name().equals(ROWS));
    return new SheetFrame(root);
  }

  private Element child(String name) {
    return root.child(name).orElseGet(() -> root.add(name));
  }

  private static Element child(Element parent, String name) {
    return parent.child(name).orElseGet(() -> parent.add(name));
  }

  private Element view() {
    var views = child("sheetViews");
    return views
        .child("sheetView")
        .orElseGet(() -> views.add("sheetView").set("workbookViewId", 0));
  }

  // ---- the screen -----------------------------------------------------------------------------

  /**
   * @param characters of the workbook's usual text
   */
  public void width(int column, double characters) {
    widths.put(column, Math.min(WIDEST, characters));
  }

  /** Room for so many characters, and some beside them. */
  public void widthOfText(int column, int characters) {
    widths.put(column, Math.min(WIDEST, characters) + ROOM_BESIDE_TEXT);
  }

  /** The width of a column in whole characters. */
  public int widthOf(int column) {
    return (int) (double) widths.getOrDefault(column, 8.0);
  }

  public void hideGridlines() {
    view().set("showGridLines", 0);
  }

  /** Keeps the first columns and rows in sight. */
  public void freeze(int columns, int rows) {
    var view = view();
    view.removeIf(e -> e.name().equals("pane") || e.name().equals("selection"));
    var pane = view.add("pane");
    if (columns > 0) pane.set("xSplit", columns);
    if (rows > 0) pane.set("ySplit", rows);
    var corner = columns == 0 ? "bottomLeft" : rows == 0 ? "topRight" : "bottomRight";
    pane.set("topLeftCell", Place.reference(rows, columns))
        .set("activePane", corner)
        .set("state", "frozen");
    view.add("selection").set("pane", corner);
  }

  /** Whether the sheet is the one that shows. */
  void select(boolean selected) {
    if (selected) view().set("tabSelected", 1);
    else view().unset("tabSelected");
  }

  /** A stage's first row stays when its rows are folded away. */
  public void summaryAbove() {
    var properties = child("sheetPr");
    var outline =
        properties
            .child("outlinePr")
            .orElseGet(() -> properties.addBefore(properties.child("pageSetUpPr"), "outlinePr"));
    outline.set("summaryBelow", 0);
  }

  /** Rows can be folded away, one level deep. */
  public void folds() {
    child("sheetFormatPr").set("outlineLevelRow", 1);
  }

  /**
   * @param range such as {@code A3:M40}
   */
  public void filter(String range) {
    child("autoFilter").set("ref", range);
  }

  public void merge(String range) {
    merges++;
    merged.append(range).append(' ');
  }

  /**
   * @param cell such as {@code B7}
   * @param target a place in the workbook, such as {@code 'Cost plan'!A12}
   */
  public void link(String cell, String target) {
    links.put(cell, target);
  }

  void drawing(String link) {
    child("drawing").link(link);
  }

  Optional<String> drawing() {
    return root.child("drawing").map(Element::link);
  }

  // ---- paper ----------------------------------------------------------------------------------

  /** Prints on one page, after {@link #print}. */
  public void onOnePage() {
    child("pageSetup").set("fitToHeight", 1);
  }

  /**
   * Prints as wide as the paper.
   *
   * @param paper the standard's number of the size (18.3.1.63): 9 for A4, 1 for Letter
   * @param margins left, right, top, bottom, header and footer, in inches
   */
  public void print(int paper, boolean landscape, double[] margins, String footer) {
    child(child("sheetPr"), "pageSetUpPr").set("fitToPage", 1);
    var names = new String[] {"left", "right", "top", "bottom", "header", "footer"};
    var edges = child("pageMargins");
    for (int i = 0; i < names.length; i++) edges.set(names[i], margins[i]);
    child("pageSetup")
        .set("paperSize", paper)
        .set("orientation", landscape ? "landscape" : "portrait")
        .set("fitToWidth", 1)
        .set("fitToHeight", 0);
    child(child("headerFooter"), "oddFooter").text(footer);
  }

  /**
   * Prints on several pages side by side, after {@link #print}.
   *
   * @param percent of full size
   * @param firsts the first column of each page but the first; the first of all is 0
   */
  public void sideBySide(int percent, int... firsts) {
    child(child("sheetPr"), "pageSetUpPr").set("fitToPage", 0);
    child("pageSetup").unset("fitToWidth").unset("fitToHeight").set("scale", percent);
    var breaks =
        child("colBreaks").set("count", firsts.length).set("manualBreakCount", firsts.length);
    for (int first : firsts) {
      breaks.add("brk").set("id", first).set("max", 1048575).set("man", 1);
    }
  }

  /** On paper a new page begins after a row, counted from 1. */
  public void newPageAfter(int row) {
    var breaks = child("rowBreaks").set("count", 1).set("manualBreakCount", 1);
    breaks.add("brk").set("id", row).set("max", 16383).set("man", 1);
  }

  // ---- writing --------------------------------------------------------------------------------

  /** The part, with its rows as markup of {@code row} elements. */
  byte[] part(CharSequence rows) {
    if (!child("sheetFormatPr").has("defaultRowHeight")) {
      child("sheetFormatPr").set("defaultRowHeight", 15);
    }
    if (!widths.isEmpty()) {
      var columns = child("cols");
      widths.forEach(
          (c, w) ->
              columns
                  .add("col")
                  .set("min", c + 1)
                  .set("max", c + 1)
                  .set("width", w)
                  .set("customWidth", 1));
    }
    if (merges > 0) {
      var cells = child("mergeCells").set("count", merges);
      for (var range : merged.toString().strip().split(" "))
        cells.add("mergeCell").set("ref", range);
    }
    if (!links.isEmpty()) {
      var all = child("hyperlinks");
      links.forEach((c, t) -> all.add("hyperlink").set("ref", c).set("location", t));
    }
    child(ROWS).text("");
    root.sort(Comparator.comparingInt(e -> ORDER.indexOf(e.name())));
    var xml = new String(root.part(), StandardCharsets.UTF_8);
    // Rows are markup without prefix; in a part that has one they say whose they are.
    var rowsTag = root.isPrefixed() ? "<" + ROWS + " xmlns=\"" + MAIN + "\">" : "<" + ROWS + ">";
    int from = xml.indexOf('<' + prefixed(ROWS) + '>');
    var end = "</" + prefixed(ROWS) + '>';
    int to = xml.indexOf(end, from) + end.length();
    var whole = new StringBuilder(xml.length() + rows.length() + 100);
    whole.append(xml, 0, from).append(rowsTag).append(rows).append("</").append(ROWS).append('>');
    return whole.append(xml, to, xml.length()).toString().getBytes(StandardCharsets.UTF_8);
  }

  private String prefixed(String name) {
    return root.isPrefixed() ? root.prefix() + ":" + name : name;
  }
}

package cornerpost.workbook;

import cornerpost.workbook.parts.Element;
import cornerpost.workbook.parts.Styles;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * The workbook's cell styles, found by their look. A style that is there already is used again, so
 * that a workbook planned many times keeps the styles of one run.
 */
final class SheetStyles {
  /** Spellings of ISO/IEC 29500 part 1, 18.18.55, by the library's codes. */
  private static final String[] PATTERNS = {
    "none",
    "solid",
    "mediumGray",
    "darkGray",
    "lightGray",
    "darkHorizontal",
    "darkVertical",
    "darkDown",
    "darkUp",
    "darkGrid",
    "darkTrellis",
    "lightHorizontal",
    "lightVertical",
    "lightDown",
    "lightUp",
    "lightGrid",
    "lightTrellis",
    "gray125",
    "gray0625"
  };

  /** Spellings of 18.18.3, by the library's codes. */
  private static final String[] LINES = {
    "none",
    "thin",
    "medium",
    "dashed",
    "dotted",
    "thick",
    "double",
    "hair",
    "mediumDashed",
    "dashDot",
    "mediumDashDot",
    "dashDotDot",
    "mediumDashDotDot",
    "slantDashDot"
  };

  /** Spellings of 18.18.40, by the library's codes. */
  private static final String[] ACROSS = {
    "general", "left", "center", "right", "fill", "justify", "centerContinuous", "distributed"
  };

  /** Spellings of 18.18.88, by the library's codes. */
  private static final String[] DOWN = {"top", "center", "bottom", "justify", "distributed"};

  private final Styles styles;
  private final Map<SheetStyle, Integer> known = new HashMap<>();
  private final Map<String, Integer> fonts = new HashMap<>();
  private final Map<String, Integer> fills = new HashMap<>();
  private final Map<String, Integer> borders = new HashMap<>();
  private final SheetStyle plain;

  SheetStyles(Styles styles) {
    this.styles = styles;
    var looks = styles.items("cellXfs");
    for (int i = looks.size() - 1; i >= 0; i--) {
      int index = i;
      look(looks.get(i)).ifPresent(look -> known.put(look, index));
    }
    index("fonts", fonts);
    index("fills", fills);
    index("borders", borders);
    int font = looks.isEmpty() ? 0 : looks.get(0).number("fontId", 0);
    plain = SheetStyle.plain(item("fonts", font).map(f -> value(f, "name")).orElse("Calibri"));
  }

  private void index(String list, Map<String, Integer> places) {
    var items = styles.items(list);
    for (int i = items.size() - 1; i >= 0; i--) places.put(markup(items.get(i)), i);
  }

  private static String markup(Element element) {
    var xml = new StringBuilder();
    element.write(xml);
    return xml.toString();
  }

  private Optional<Element> item(String list, int place) {
    var items = styles.items(list);
    return place < 0 || place >= items.size() ? Optional.empty() : Optional.of(items.get(place));
  }

  /** Text of the size of a table, in the owner's own font. */
  SheetStyle plain() {
    return plain;
  }

  /** The place of a look in the workbook's list, added where it has none like it. */
  int get(SheetStyle look) {
    var there = known.get(look);
    if (there != null) return there;
    int made = make(look);
    known.put(look, made);
    return made;
  }

  // ---- looks that are there -------------------------------------------------------------------

  /** A look of the workbook's; empty where it has what ours never has. */
  private Optional<SheetStyle> look(Element xf) {
    var font = item("fonts", xf.number("fontId", 0));
    var fill = item("fills", xf.number("fillId", 0)).flatMap(f -> f.child("patternFill"));
    var border = item("borders", xf.number("borderId", 0));
    var format = styles.formatCode(xf.number("numFmtId", 0));
    if (font.isEmpty() || fill.isEmpty() || border.isEmpty() || format.isEmpty()) {
      return Optional.empty();
    }
    var f = font.get();
    var ink = rgb(f.child("color"));
    boolean others =
        xf.child("protection").isPresent()
            || says(f, "strike")
            || f.child("vertAlign").isPresent()
            || says(border.get(), "diagonalUp")
            || says(border.get(), "diagonalDown");
    if (others || ink.isEmpty() || !isWhole(value(f, "sz"))) return Optional.empty();
    int pattern = place(PATTERNS, fill.get().get("patternType"), 0);
    boolean none = pattern == 0;
    boolean solid = pattern == 1;
    var aligned = xf.child("alignment").orElseGet(() -> Element.of("alignment"));
    if (aligned.says("shrinkToFit")) return Optional.empty();
    return Optional.of(
        new SheetStyle(
            value(f, "name"),
            (int) Double.parseDouble(value(f, "sz")),
            says(f, "b"),
            says(f, "i"),
            f.child("u").filter(u -> !u.get("val").equals("none")).isPresent(),
            ink.get(),
            FillPatternType.forInt(pattern),
            none ? "" : rgb(fill.get().child("fgColor")).orElse(""),
            none || solid ? "" : rgb(fill.get().child("bgColor")).orElse(""),
            edge(border.get(), "top"),
            edge(border.get(), "bottom"),
            edge(border.get(), "left"),
            edge(border.get(), "right"),
            HorizontalAlignment.forInt(place(ACROSS, aligned.get("horizontal"), 0)),
            VerticalAlignment.forInt(place(DOWN, aligned.get("vertical"), 2)),
            aligned.says("wrapText"),
            aligned.number("indent", 0),
            aligned.number("textRotation", 0),
            format.get()));
  }

  private static boolean isWhole(String size) {
    try {
      return Double.parseDouble(size) == (int) Double.parseDouble(size);
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static String value(Element parent, String child) {
    return parent.child(child).map(c -> c.get("val")).orElse("");
  }

  /** An element without value says yes. */
  private static boolean says(Element parent, String child) {
    return parent.child(child).filter(c -> !c.has("val") || c.says("val")).isPresent()
        || parent.says(child);
  }

  /** A colour given as such; empty for one of a theme or of the old palette. */
  private static Optional<String> rgb(Optional<Element> colour) {
    return colour
        .map(c -> c.get("rgb"))
        .filter(c -> c.length() == 8 && colour.get().get("tint").isEmpty())
        .map(c -> c.substring(2));
  }

  private static SheetStyle.Edge edge(Element border, String side) {
    var e = border.child(side).orElseGet(() -> Element.of(side));
    int line = place(LINES, e.get("style"), 0);
    return new SheetStyle.Edge(BorderStyle.valueOf((short) line), rgb(e.child("color")).orElse(""));
  }

  private static int place(String[] spellings, String found, int otherwise) {
    for (int i = 0; i < spellings.length; i++) {
      if (spellings[i].equals(found)) return i;
    }
    return otherwise;
  }

  // ---- looks that are added -------------------------------------------------------------------

  private int make(SheetStyle look) {
    int place = styles.items("cellXfs").size();
    var xf =
        styles
            .add("cellXfs", "xf")
            .set("numFmtId", styles.format(look.format()))
            .set("fontId", font(look))
            .set("fillId", fill(look))
            .set("borderId", border(look))
            .set("xfId", 0)
            .set("applyNumberFormat", 1)
            .set("applyFont", 1)
            .set("applyFill", 1)
            .set("applyBorder", 1)
            .set("applyAlignment", 1);
    var alignment =
        xf.add("alignment")
            .set("horizontal", ACROSS[look.across().getCode()])
            .set("vertical", DOWN[look.down().getCode()]);
    if (look.rotation() > 0) alignment.set("textRotation", look.rotation());
    if (look.wrapped()) alignment.set("wrapText", 1);
    if (look.indent() > 0) alignment.set("indent", look.indent());
    return place;
  }

  private int font(SheetStyle look) {
    var font = Element.of("font");
    if (look.bold()) font.add("b");
    if (look.italic()) font.add("i");
    if (look.underlined()) font.add("u");
    font.add("sz").set("val", look.size());
    font.add("color").set("rgb", "FF" + look.ink());
    font.add("name").set("val", look.font());
    return place("fonts", font, fonts);
  }

  private int fill(SheetStyle look) {
    var fill = Element.of("fill");
    var pattern = fill.add("patternFill").set("patternType", PATTERNS[look.pattern().getCode()]);
    if (look.pattern() != FillPatternType.NO_FILL) {
      pattern.add("fgColor").set("rgb", "FF" + look.fill());
      if (look.ground().isEmpty()) pattern.add("bgColor").set("indexed", 64);
      else pattern.add("bgColor").set("rgb", "FF" + look.ground());
    }
    return place("fills", fill, fills);
  }

  private int border(SheetStyle look) {
    var border = Element.of("border");
    edge(border, "left", look.left());
    edge(border, "right", look.right());
    edge(border, "top", look.top());
    edge(border, "bottom", look.bottom());
    border.add("diagonal");
    return place("borders", border, borders);
  }

  private static void edge(Element border, String side, SheetStyle.Edge edge) {
    var e = border.add(side);
    if (edge.line() == BorderStyle.NONE) return;
    e.set("style", LINES[edge.line().getCode()]);
    e.add("color").set("rgb", "FF" + edge.colour());
  }

  private int place(String list, Element wanted, Map<String, Integer> places) {
    var markup = markup(wanted);
    var there = places.get(markup);
    if (there != null) return there;
    int place = styles.items(list).size();
    styles.add(list, wanted);
    places.put(markup, place);
    return place;
  }
}

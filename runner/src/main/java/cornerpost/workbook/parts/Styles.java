package cornerpost.workbook.parts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The looks of a workbook's cells (styles part, ISO/IEC 29500 part 1, 18.8). */
public final class Styles {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final int FIRST_OWN_FORMAT = 164;

  /** The lists of the part, in the order the standard asks for. */
  private static final List<String> ORDER =
      List.of(
          "numFmts",
          "fonts",
          "fills",
          "borders",
          "cellStyleXfs",
          "cellXfs",
          "cellStyles",
          "dxfs",
          "tableStyles",
          "colors",
          "extLst");

  private static final List<String> COUNTED = ORDER.subList(0, ORDER.indexOf("dxfs"));

  private final Element root;
  private final Map<Integer, String> formats = new HashMap<>();
  private final Map<Integer, Shown> shown = new HashMap<>();
  private final List<Element> looks;

  private Styles(Element root) {
    this.root = root;
    for (var f : items("numFmts")) formats.put(f.number("numFmtId", -1), f.get("formatCode"));
    looks = items("cellXfs");
  }

  static Styles read(byte[] part) {
    return new Styles(Element.read(part));
  }

  /** Of a workbook that has none: what the standard takes for granted. */
  static Styles plain() {
    var root = Element.of("styleSheet").set("xmlns", MAIN);
    var styles = new Styles(root);
    var font = styles.list("fonts").add("font");
    font.add("sz").set("val", 11);
    font.add("name").set("val", "Calibri");
    styles.list("fills").add("fill").add("patternFill").set("patternType", "none");
    styles.list("fills").add("fill").add("patternFill").set("patternType", "gray125");
    styles.list("borders").add("border");
    zeros(styles.list("cellStyleXfs").add("xf"));
    zeros(styles.list("cellXfs").add("xf")).set("xfId", 0);
    return new Styles(root);
  }

  private static Element zeros(Element xf) {
    return xf.set("numFmtId", 0).set("fontId", 0).set("fillId", 0).set("borderId", 0);
  }

  // ---- reading ------------------------------------------------------------------------------

  /** The items of a list, such as every {@code font} of {@code fonts}. */
  public List<Element> items(String list) {
    return root.child(list).map(Element::children).orElse(List.of());
  }

  /** How many looks of cells there are. */
  public int size() {
    return looks.size();
  }

  /** The number of a look's number format; less than nothing where there is no such look. */
  public int formatOf(int look) {
    return look < 0 || look >= looks.size() ? -1 : looks.get(look).number("numFmtId", 0);
  }

  /** What a number format makes of a number. */
  public record Shown(boolean asDate, boolean asPercent) {}

  /** How a number format shows a number. */
  public Shown shownBy(int format) {
    return shown.computeIfAbsent(
        format,
        f -> {
          var code = formatCode(f).orElse("");
          return new Shown(NumberFormats.isDate(code), NumberFormats.isPercent(code));
        });
  }

  /** The code of a number format, built in or the workbook's own. */
  public Optional<String> formatCode(int format) {
    var own = formats.get(format);
    return own != null ? Optional.of(own) : NumberFormats.builtIn(format);
  }

  // ---- changing -----------------------------------------------------------------------------

  /** A copy that can be changed apart from this one. */
  public Styles copy() {
    return read(part());
  }

  /** The list of that name, made where there is none. */
  private Element list(String name) {
    var there = root.child(name);
    if (there.isPresent()) return there.get();
    var behind = ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size());
    var next = root.children().stream().filter(e -> behind.contains(e.name())).findFirst();
    return root.addBefore(next, name);
  }

  /** An empty item at the end of a list. */
  public Element add(String list, String item) {
    return list(list).add(item);
  }

  /** An item at the end of a list. */
  public void add(String list, Element item) {
    list(list).add(item);
  }

  /** The number of the format with that code, added where the workbook has none. */
  public int format(String code) {
    var builtIn = NumberFormats.builtIn(code);
    if (builtIn.isPresent()) return builtIn.get();
    int free = FIRST_OWN_FORMAT;
    for (var f : formats.entrySet()) {
      if (f.getValue().equals(code)) return f.getKey();
      free = Math.max(free, f.getKey() + 1);
    }
    formats.put(free, code);
    add("numFmts", "numFmt").set("numFmtId", free).set("formatCode", code);
    return free;
  }

  /** The part, with its lists counted. */
  byte[] part() {
    for (var list : root.children()) {
      if (COUNTED.contains(list.name())) list.set("count", list.children().size());
    }
    return root.part();
  }
}

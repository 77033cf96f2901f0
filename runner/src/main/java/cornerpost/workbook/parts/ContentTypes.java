package cornerpost.workbook.parts;

import java.util.Locale;

/** What kind of content each part holds (ISO/IEC 29500 part 2, 7.2.3). */
final class ContentTypes {
  static final String NAME = "[Content_Types].xml";

  private final Element root;

  private ContentTypes(Element root) {
    this.root = root;
  }

  static ContentTypes of(Parts parts) {
    return new ContentTypes(Element.read(parts.get(NAME)));
  }

  String typeOf(String part) {
    for (var e : root.children("Override")) {
      if (e.get("PartName").equalsIgnoreCase("/" + part)) return e.get("ContentType");
    }
    var ending = part.substring(part.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    for (var e : root.children("Default")) {
      if (e.get("Extension").toLowerCase(Locale.ROOT).equals(ending)) return e.get("ContentType");
    }
    return "";
  }

  void put(String part, String type) {
    remove(part);
    root.add("Override").set("PartName", "/" + part).set("ContentType", type);
  }

  void remove(String part) {
    root.removeIf(e -> e.get("PartName").equalsIgnoreCase("/" + part));
  }

  void save(Parts parts) {
    parts.put(NAME, root.part());
  }
}

package cornerpost.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes SVG element by element; text and attributes are escaped, numbers plain. */
final class Svg {
  private final StringBuilder out = new StringBuilder();

  /** Opens an element; attributes come as name, value, name, value. */
  Svg open(String element, Object... attributes) {
    tag(element, attributes);
    out.append('>');
    return this;
  }

  Svg close(String element) {
    out.append("</").append(element).append('>');
    return this;
  }

  /** An element without content. */
  Svg add(String element, Object... attributes) {
    tag(element, attributes);
    out.append("/>");
    return this;
  }

  /** An element that holds text. */
  Svg text(String element, String content, Object... attributes) {
    tag(element, attributes);
    out.append('>').append(escaped(content)).append("</").append(element).append('>');
    return this;
  }

  Svg rect(String cssClass, double x, double y, double width, double height, Object... more) {
    tag("rect", "class", cssClass, "x", x, "y", y, "width", width, "height", height);
    attributes(more);
    out.append("/>");
    return this;
  }

  Svg line(String cssClass, double x1, double y1, double x2, double y2) {
    return add("line", "class", cssClass, "x1", x1, "y1", y1, "x2", x2, "y2", y2);
  }

  /** Text at a place; {@code anchor} start, middle or end. */
  Svg label(String cssClass, double x, double y, String anchor, String content) {
    return text("text", content, "class", cssClass, "x", x, "y", y, "text-anchor", anchor);
  }

  /**
   * A picture with a title and a description that a screen reader says.
   *
   * @param id of the picture on its page; those of its title and description are made from it
   */
  static Svg picture(
      String id, String viewBox, String cssClass, String style, String title, String description) {
    var svg = new Svg();
    svg.open(
        "svg",
        "id",
        id,
        "viewBox",
        viewBox,
        "class",
        cssClass,
        "style",
        style,
        "role",
        "img",
        "aria-labelledby",
        id + "-t " + id + "-d",
        "xmlns",
        "http://www.w3.org/2000/svg");
    svg.text("title", title, "id", id + "-t");
    svg.text("desc", description, "id", id + "-d");
    return svg;
  }

  /** What was drawn apart. */
  Svg add(Svg drawn) {
    out.append(drawn.out);
    return this;
  }

  String done() {
    return out.append("</svg>").toString();
  }

  private void tag(String element, Object... attributes) {
    out.append('<').append(element);
    attributes(attributes);
  }

  private void attributes(Object... attributes) {
    for (int i = 0; i < attributes.length; i += 2) {
      var value = attributes[i + 1] instanceof Double d ? number(d) : attributes[i + 1].toString();
      if (value.isEmpty()) continue;
      out.append(' ').append(attributes[i]).append("=\"").append(escaped(value)).append('"');
    }
  }

  /** To a thousandth, without zeros at the end: on drawings a thousandth of a millimetre. */
  static String number(double value) {
    var d = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return d.signum() == 0 ? "0" : d.toPlainString();
  }

  /** For text and attribute values. */
  static String escaped(String text) {
    var allowed = allowed(text);
    var safe = new StringBuilder(allowed.length() + 16);
    for (int i = 0; i < allowed.length(); i++) {
      char c = allowed.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(c);
      }
    }
    return safe.toString();
  }

  /**
   * Without the characters that XML 1.0, section 2.2, does not allow: control characters mostly.
   */
  static String allowed(String text) {
    StringBuilder safe = null; // most texts, a whole page among them, need no change
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1));
      if (pair || isAllowed(c)) {
        if (safe != null) safe.append(text, i, pair ? i + 2 : i + 1);
        if (pair) i++;
      } else if (safe == null) {
        safe = new StringBuilder(text.length()).append(text, 0, i);
      }
    }
    return safe == null ? text : safe.toString();
  }

  private static boolean isAllowed(char c) {
    return c >= 0x20 && c <= 0xD7FF || c == '\n' || c == '\t' || c == '\r' || isHigh(c);
  }

  private static boolean isHigh(char c) {
    return c >= 0xE000 && c <= 0xFFFD;
  }
}

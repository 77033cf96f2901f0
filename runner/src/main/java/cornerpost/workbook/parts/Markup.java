package cornerpost.workbook.parts;

/** Text as XML holds it, and as a cell holds it. */
public final class Markup {
  private Markup() {}

  /** Text between tags. */
  public static void escape(String text, StringBuilder xml) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> xml.append("&amp;");
        case '<' -> xml.append("&lt;");
        case '>' -> xml.append("&gt;");
        case '\r' -> xml.append("&#13;");
        default -> xml.append(c);
      }
    }
  }

  static void escapeAttribute(String text, StringBuilder xml) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> xml.append("&amp;");
        case '<' -> xml.append("&lt;");
        case '>' -> xml.append("&gt;");
        case '"' -> xml.append("&quot;");
        case '\n', '\r', '\t' -> xml.append("&#").append((int) c).append(';');
        default -> xml.append(c);
      }
    }
  }

  /**
   * Text of a cell. Readers take {@code _x0041_} for a letter by its number (ISO/IEC 29500 part 1,
   * 22.9.2.19); a text that only looks so stays.
   */
  public static void escapeCell(String text, StringBuilder xml) {
    if (text.indexOf("_x") < 0) {
      escape(text, xml);
      return;
    }
    var safe = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '_' && isNumbered(text, i)) safe.append("_x005F_");
      else safe.append(c);
    }
    escape(safe.toString(), xml);
  }

  /** What a cell's text says, letters by their number put back. */
  public static String cellText(String stored) {
    if (stored.indexOf("_x") < 0) return stored;
    var text = new StringBuilder(stored.length());
    for (int i = 0; i < stored.length(); i++) {
      if (stored.charAt(i) == '_' && isNumbered(stored, i)) {
        text.append((char) Integer.parseInt(stored.substring(i + 2, i + 6), 16));
        i += 6;
      } else {
        text.append(stored.charAt(i));
      }
    }
    return text.toString();
  }

  private static boolean isNumbered(String text, int at) {
    if (at + 6 >= text.length() || text.charAt(at + 1) != 'x' || text.charAt(at + 6) != '_') {
      return false;
    }
    for (int i = at + 2; i < at + 6; i++) {
      if (Character.digit(text.charAt(i), 16) < 0) return false;
    }
    return true;
  }
}

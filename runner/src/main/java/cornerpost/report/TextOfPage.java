package cornerpost.report;

import cornerpost.measure.NumberStyle;

/** The text of a page between its tags, where a region's way of writing numbers goes. */
final class TextOfPage {
  private static final String STYLE = "<style>";
  private static final String STYLE_END = "</style>";

  private TextOfPage() {}

  /**
   * The page with the numbers of its text in a style; tags and the style sheet stay as they are.
   */
  static String turned(String page, NumberStyle style) {
    if (style.equals(NumberStyle.PLAIN)) return page;
    var out = new StringBuilder(page.length());
    int at = 0;
    while (at < page.length()) {
      int tag = page.indexOf('<', at);
      if (tag < 0) tag = page.length();
      out.append(style.turned(page.substring(at, tag)));
      if (tag == page.length()) break;
      boolean sheet = page.startsWith(STYLE, tag);
      int end =
          sheet ? page.indexOf(STYLE_END, tag) + STYLE_END.length() : page.indexOf('>', tag) + 1;
      out.append(page, tag, end);
      at = end;
    }
    return out.toString();
  }
}

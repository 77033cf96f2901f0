package cornerpost.workbook;

/**
 * How wide text runs in the sans serif that the workbooks are written in, so that a row is as high
 * as its wrapped text and no higher. Widths of Helvetica in thousandths of its size, from the font
 * metrics published with the standard type 1 fonts (AFM, 1997); Arial has the same.
 */
final class TextWidth {
  private static final int FIRST = ' ';
  private static final int OTHER = 556; // a digit, and most letters with a mark
  private static final double BOLD = 1.07;
  private static final double DIGIT = 5.25; // points of the widths' digit: 7 pixels of 1/96 inch
  private static final double SLACK = 0.97; // programs set text a little apart from each other

  private static final int[] WIDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584 // p to ~
  };

  private TextWidth() {}

  /** Points of a text of so many points. */
  static double of(CharSequence text, int size, boolean bold) {
    int sum = 0;
    for (int i = 0; i < text.length(); i++) {
      int place = text.charAt(i) - FIRST;
      sum += place >= 0 && place < WIDTHS.length ? WIDTHS[place] : OTHER;
    }
    return sum * size / 1000.0 * (bold ? BOLD : 1);
  }

  /**
   * Points that text may fill in columns so many digits wide together; one digit at least.
   *
   * @param edges points that stay free at the sides
   */
  static double room(int digits, double edges) {
    return Math.max(DIGIT, (digits * DIGIT - edges) * SLACK);
  }

  /**
   * Lines of a text in so much room, broken between words; a word longer than the line is broken.
   *
   * @param room in points
   */
  static int lines(String text, int size, boolean bold, double room) {
    double space = of(" ", size, bold);
    int lines = 0;
    for (var paragraph : text.split("\n", -1)) {
      double used = 0;
      lines++;
      for (var word : paragraph.split(" ", -1)) {
        double wide = of(word, size, bold);
        if (used > 0 && used + space + wide > room) {
          lines++;
          used = 0;
        }
        used += (used > 0 ? space : 0) + wide;
        while (used > room) {
          lines++;
          used -= room;
        }
      }
    }
    return lines;
  }
}

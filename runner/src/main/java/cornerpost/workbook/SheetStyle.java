package cornerpost.workbook;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * How a cell looks, as a value: two cells that look alike have equal ones. Colours are {@code
 * RRGGBB}, empty for none.
 */
record SheetStyle(
    String font,
    int size,
    boolean bold,
    boolean italic,
    boolean underlined,
    String ink,
    FillPatternType pattern,
    String fill,
    String ground,
    Edge top,
    Edge bottom,
    Edge left,
    Edge right,
    HorizontalAlignment across,
    VerticalAlignment down,
    boolean wrapped,
    int indent,
    int rotation,
    String format) {

  // Okabe-Ito, made for colour-blind readers; each meaning has a second sign beside its colour.
  static final String INK = "1B2A33";
  static final String QUIET = "5A686F";
  static final String NEAR = "56B4E9";
  static final String FLOAT = "B9C4C9";
  static final String DONE = "7A8B8F";
  static final String GATE = "E69F00";
  static final String OUT = "0072B2";
  static final String STOP = "D55E00";
  static final String ENTRY = "EEF4F1";
  static final String RULE = "C9D1D4";

  /** A border on one side of a cell. */
  record Edge(BorderStyle line, String colour) {
    static final Edge NONE = new Edge(BorderStyle.NONE, "");

    Edge {
      if (line == BorderStyle.NONE) colour = "";
    }

    @Override
    public boolean equals(Object other) {
      return this == other || other instanceof Edge e && line == e.line && colour.equals(e.colour);
    }

    @Override
    public int hashCode() {
      return line.ordinal() * 31 + colour.hashCode();
    }
  }

  // Spelled out, as a run of a second or two pays for linking what a record is given.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof SheetStyle s
            && size == s.size
            && bold == s.bold
            && italic == s.italic
            && underlined == s.underlined
            && wrapped == s.wrapped
            && indent == s.indent
            && rotation == s.rotation
            && pattern == s.pattern
            && across == s.across
            && down == s.down
            && format.equals(s.format)
            && ink.equals(s.ink)
            && fill.equals(s.fill)
            && ground.equals(s.ground)
            && top.equals(s.top)
            && bottom.equals(s.bottom)
            && left.equals(s.left)
            && right.equals(s.right)
            && font.equals(s.font);
  }

  @Override
  public int hashCode() {
    int flags = (bold ? 1 : 0) | (italic ? 2 : 0) | (underlined ? 4 : 0) | (wrapped ? 8 : 0);
    int hash = flags * 31 + format.hashCode();
    hash = hash * 31 + ink.hashCode();
    hash = hash * 31 + fill.hashCode();
    hash = hash * 31 + (across.ordinal() * 8 + down.ordinal());
    return hash * 31 + left.hashCode() + 7 * right.hashCode() + 13 * top.hashCode();
  }

  static SheetStyle plain(String font) {
    return new SheetStyle(
        font,
        9,
        false,
        false,
        false,
        INK,
        FillPatternType.NO_FILL,
        "",
        "",
        Edge.NONE,
        Edge.NONE,
        Edge.NONE,
        Edge.NONE,
        HorizontalAlignment.GENERAL,
        VerticalAlignment.TOP,
        false,
        0,
        0,
        "General");
  }

  // ---- variations ---------------------------------------------------------------------------

  SheetStyle withSize(int points) {
    return with(points, bold, italic, underlined, ink, across, down, wrapped, indent, format);
  }

  SheetStyle strong() {
    return with(size, true, italic, underlined, ink, across, down, wrapped, indent, format);
  }

  SheetStyle slanted() {
    return with(size, bold, true, underlined, ink, across, down, wrapped, indent, format);
  }

  SheetStyle linked() {
    return with(size, bold, italic, true, OUT, across, down, wrapped, indent, format);
  }

  SheetStyle inInk(String colour) {
    return with(size, bold, italic, underlined, colour, across, down, wrapped, indent, format);
  }

  SheetStyle wrapping() {
    return with(size, bold, italic, underlined, ink, across, down, true, indent, format);
  }

  SheetStyle indented() {
    return with(
        size, bold, italic, underlined, ink, HorizontalAlignment.LEFT, down, wrapped, 1, format);
  }

  SheetStyle formatted(String newFormat) {
    return with(size, bold, italic, underlined, ink, across, down, wrapped, indent, newFormat);
  }

  SheetStyle aligned(HorizontalAlignment newAcross) {
    return with(size, bold, italic, underlined, ink, newAcross, down, wrapped, indent, format);
  }

  SheetStyle level(VerticalAlignment newDown) {
    return with(size, bold, italic, underlined, ink, across, newDown, wrapped, indent, format);
  }

  SheetStyle filled(String colour) {
    return patterned(FillPatternType.SOLID_FOREGROUND, colour, "");
  }

  SheetStyle patterned(FillPatternType newPattern, String colour, String newGround) {
    return new SheetStyle(
        font,
        size,
        bold,
        italic,
        underlined,
        ink,
        newPattern,
        colour,
        newGround,
        top,
        bottom,
        left,
        right,
        across,
        down,
        wrapped,
        indent,
        rotation,
        format);
  }

  SheetStyle ruledTop(BorderStyle line, String colour) {
    return edged(new Edge(line, colour), bottom, left, right);
  }

  SheetStyle ruledBottom(BorderStyle line, String colour) {
    return edged(top, new Edge(line, colour), left, right);
  }

  SheetStyle edged(Edge newTop, Edge newBottom, Edge newLeft, Edge newRight) {
    return new SheetStyle(
        font,
        size,
        bold,
        italic,
        underlined,
        ink,
        pattern,
        fill,
        ground,
        newTop,
        newBottom,
        newLeft,
        newRight,
        across,
        down,
        wrapped,
        indent,
        rotation,
        format);
  }

  SheetStyle turned(int degrees) {
    return new SheetStyle(
        font,
        size,
        bold,
        italic,
        underlined,
        ink,
        pattern,
        fill,
        ground,
        top,
        bottom,
        left,
        right,
        across,
        down,
        wrapped,
        indent,
        degrees,
        format);
  }

  private SheetStyle with(
      int newSize,
      boolean newBold,
      boolean newItalic,
      boolean newUnderlined,
      String newInk,
      HorizontalAlignment newAcross,
      VerticalAlignment newDown,
      boolean newWrapped,
      int newIndent,
      String newFormat) {
    return new SheetStyle(
        font,
        newSize,
        newBold,
        newItalic,
        newUnderlined,
        newInk,
        pattern,
        fill,
        ground,
        top,
        bottom,
        left,
        right,
        newAcross,
        newDown,
        newWrapped,
        newIndent,
        rotation,
        newFormat);
  }
}

package cornerpost.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The workbook's cell styles, found by their look. A style that is there already is used again, so
 * that a workbook planned many times keeps the styles of one run.
 */
final class SheetStyles {
  private final XSSFWorkbook workbook;
  private final Map<SheetStyle, XSSFCellStyle> known = new HashMap<>();
  private final SheetStyle plain;

  SheetStyles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    for (int i = workbook.getNumCellStyles() - 1; i >= 0; i--) {
      var style = workbook.getCellStyleAt(i);
      SheetStyle.of(style).ifPresent(look -> known.put(look, style));
    }
    plain = SheetStyle.plain(workbook.getCellStyleAt(0).getFont().getFontName());
  }

  /** Text of the size of a table, in the owner's own font. */
  SheetStyle plain() {
    return plain;
  }

  XSSFCellStyle get(SheetStyle look) {
    return known.computeIfAbsent(look, this::make);
  }

  private XSSFCellStyle make(SheetStyle look) {
    var s = workbook.createCellStyle();
    s.setFont(font(look));
    if (look.pattern() != FillPatternType.NO_FILL) {
      s.setFillForegroundColor(colour(look.fill()));
      if (!look.ground().isEmpty()) s.setFillBackgroundColor(colour(look.ground()));
      s.setFillPattern(look.pattern());
    }
    if (look.top().line() != BorderStyle.NONE) {
      s.setBorderTop(look.top().line());
      s.setTopBorderColor(colour(look.top().colour()));
    }
    if (look.bottom().line() != BorderStyle.NONE) {
      s.setBorderBottom(look.bottom().line());
      s.setBottomBorderColor(colour(look.bottom().colour()));
    }
    if (look.left().line() != BorderStyle.NONE) {
      s.setBorderLeft(look.left().line());
      s.setLeftBorderColor(colour(look.left().colour()));
    }
    if (look.right().line() != BorderStyle.NONE) {
      s.setBorderRight(look.right().line());
      s.setRightBorderColor(colour(look.right().colour()));
    }
    s.setAlignment(look.across());
    s.setVerticalAlignment(look.down());
    s.setWrapText(look.wrapped());
    if (look.indent() > 0) s.setIndention((short) look.indent());
    if (look.rotation() > 0) s.setRotation((short) look.rotation());
    s.setDataFormat(workbook.createDataFormat().getFormat(look.format()));
    return s;
  }

  private XSSFFont font(SheetStyle look) {
    for (int i = 0; i < workbook.getNumberOfFonts(); i++) {
      var f = workbook.getFontAt(i);
      if (f.getFontName().equals(look.font())
          && f.getFontHeightInPoints() == look.size()
          && f.getBold() == look.bold()
          && f.getItalic() == look.italic()
          && f.getUnderline() == (look.underlined() ? Font.U_SINGLE : Font.U_NONE)
          && !f.getStrikeout()
          && f.getTypeOffset() == Font.SS_NONE
          && f.getXSSFColor() != null
          && f.getXSSFColor().getARGBHex() != null
          && f.getXSSFColor().getARGBHex().endsWith(look.ink())) {
        return f;
      }
    }
    var f = workbook.createFont();
    f.setFontName(look.font());
    f.setFontHeightInPoints((short) look.size());
    f.setBold(look.bold());
    f.setItalic(look.italic());
    f.setUnderline(look.underlined() ? Font.U_SINGLE : Font.U_NONE);
    f.setColor(colour(look.ink()));
    return f;
  }

  private static XSSFColor colour(String rgb) {
    int n = Integer.parseInt(rgb, 16);
    return new XSSFColor(
        new byte[] {(byte) 0xFF, (byte) (n >> 16), (byte) (n >> 8), (byte) n}, null);
  }
}

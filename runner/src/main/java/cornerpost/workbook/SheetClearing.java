package cornerpost.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Empties a result sheet where it stands. The sheet itself stays, so that links to it, its place
 * and its tab survive; its charts stay too and are given their new content.
 */
final class SheetClearing {
  private SheetClearing() {}

  static void clear(XSSFSheet sheet) {
    for (int i = sheet.getNumMergedRegions() - 1; i >= 0; i--) sheet.removeMergedRegion(i);
    for (int r = sheet.getLastRowNum(); r >= 0; r--) {
      Row row = sheet.getRow(r);
      if (row != null) sheet.removeRow(row);
    }
    for (var link : List.copyOf(sheet.getHyperlinkList())) sheet.removeHyperlink(link);
    var formats = sheet.getSheetConditionalFormatting();
    for (int i = formats.getNumConditionalFormattings() - 1; i >= 0; i--) {
      formats.removeConditionalFormatting(i);
    }
    for (int r : sheet.getRowBreaks()) sheet.removeRowBreak(r);
    var xml = sheet.getCTWorksheet();
    if (xml.isSetAutoFilter()) xml.unsetAutoFilter();
    if (xml.isSetDataValidations()) xml.unsetDataValidations();
  }
}

package cornerpost.workbook;

import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A form sheet: label, entry, unit, help, one line a question. */
final class TemplateForm {
  static final int HEADER_ROW = 3;
  private static final int LABEL = 0;
  private static final int ENTRY = 1;
  private static final int UNIT = 2;
  private static final int HELP = 3;
  private static final float ROW_POINTS = 20f;
  private static final float AIR = 4f; // under the header's line
  private static final float LINE_POINTS = 11.5f; // of each further line of help
  private static final int HELP_WIDTH = 68;

  private final TemplateStyles styles;
  private final TemplateCells cells;
  private final TemplateLists lists;

  TemplateForm(TemplateStyles styles, TemplateCells cells, TemplateLists lists) {
    this.styles = styles;
    this.cells = cells;
    this.lists = lists;
  }

  void write(XSSFSheet sheet, OwnerSheet owner, List<Question> questions, WorkbookEntries entries) {
    TemplateCells.text(sheet, HEADER_ROW, LABEL, "Choice", styles.header);
    TemplateCells.text(sheet, HEADER_ROW, ENTRY, "Entry", styles.header);
    TemplateCells.text(sheet, HEADER_ROW, UNIT, "Unit", styles.header);
    TemplateCells.text(sheet, HEADER_ROW, HELP, "What it means", styles.header);
    sheet.getRow(HEADER_ROW).setHeightInPoints(ROW_POINTS);
    int row = HEADER_ROW + 1;
    for (var question : questions) {
      TemplateCells.text(sheet, row, LABEL, question.label(), styles.label);
      cells.entry(sheet, row, ENTRY, question, entries.answer(question).orElse(""));
      TemplateCells.text(sheet, row, UNIT, cells.unit(question), styles.unit);
      var help = cells.help(question);
      TemplateCells.text(sheet, row, HELP, help, styles.help)
          .getRow()
          .setHeightInPoints(
              ROW_POINTS
                  + LINE_POINTS * (TemplateTexts.lines(help, 9, HELP_WIDTH) - 1)
                  + (row == HEADER_ROW + 1 ? AIR : 0));
      cells.validate(sheet, question, row, row, ENTRY);
      lists.name(nameOf(owner, question), "'" + owner.title() + "'!$B$" + (row + 1));
      row++;
    }
    sheet.setColumnWidth(LABEL, 36 * 256);
    sheet.setColumnWidth(ENTRY, 38 * 256);
    sheet.setColumnWidth(UNIT, 9 * 256);
    sheet.setColumnWidth(HELP, HELP_WIDTH * 256);
    sheet.createFreezePane(1, HEADER_ROW + 1);
  }

  /** {@code Deck_and_roof.Deck_length}. */
  static String nameOf(OwnerSheet sheet, Question question) {
    return (sheet.title() + "." + question.label()).replaceAll("[^A-Za-z0-9.]+", "_");
  }
}

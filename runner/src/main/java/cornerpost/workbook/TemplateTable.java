package cornerpost.workbook;

import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A table sheet: units above the header, help in comments on it, and rows ready to fill in. */
final class TemplateTable {
  static final int HEADER_ROW = 3;
  static final int FIRST_ROW = HEADER_ROW + 1;

  /** Rows with drop-downs; more may be added below them. */
  static final int READY_ROWS = 30;

  private static final int UNIT_ROW = HEADER_ROW - 1;
  private static final float HEADER_POINTS = 16f;
  private static final float HEADER_OF_TWO_LINES = 28f;
  private static final float FIRST_ROW_POINTS = 18f; // keeps its distance from the header's line
  private static final int SHORT = 11; // letters of a name that is never broken
  private static final int NARROW = 10; // columns of a table with room for whole names
  private static final int COMMENT_COLUMNS = 3;
  private static final int COMMENT_ROWS = 5;

  private final TemplateStyles styles;
  private final TemplateCells cells;

  TemplateTable(TemplateStyles styles, TemplateCells cells) {
    this.styles = styles;
    this.cells = cells;
  }

  void write(XSSFSheet sheet, OwnerSheet owner, List<Question> questions, WorkbookEntries entries) {
    var rows = entries.rows(owner);
    int last = FIRST_ROW + Math.max(READY_ROWS, rows.size()) - 1;
    for (int c = 0; c < questions.size(); c++) {
      var question = questions.get(c);
      TemplateCells.text(sheet, UNIT_ROW, c, cells.unit(question), styles.unitRow);
      var header =
          TemplateCells.text(
              sheet,
              HEADER_ROW,
              c,
              question.label(),
              TemplateStyles.isNumber(question.kind()) ? styles.numberHeader : styles.header);
      comment(sheet, header, question);
      for (int r = FIRST_ROW; r <= last; r++) {
        int index = r - FIRST_ROW;
        var text = index < rows.size() && c < rows.get(index).size() ? rows.get(index).get(c) : "";
        cells.entry(sheet, r, c, question, text);
      }
      cells.validate(sheet, question, FIRST_ROW, last, c);
      sheet.setColumnWidth(c, width(question, rows, c, questions.size()) * 256);
    }
    boolean breaks = false;
    for (int c = 0; c < questions.size(); c++) {
      int letters = sheet.getColumnWidth(c) / 256 - 3;
      breaks |= questions.get(c).label().length() > letters;
    }
    sheet.getRow(HEADER_ROW).setHeightInPoints(breaks ? HEADER_OF_TWO_LINES : HEADER_POINTS);
    sheet.getRow(FIRST_ROW).setHeightInPoints(FIRST_ROW_POINTS);
    sheet.createFreezePane(1, FIRST_ROW);
  }

  private void comment(XSSFSheet sheet, XSSFCell header, Question question) {
    var unit = cells.unit(question);
    var text =
        (unit.isEmpty() ? "" : "In " + unit + ". ")
            + cells.help(question)
            + (question.choices().isEmpty()
                ? ""
                : " One of: " + String.join("; ", question.choices()) + ".");
    if (text.isBlank()) return;
    var anchor = sheet.getWorkbook().getCreationHelper().createClientAnchor();
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    anchor.setCol1(header.getColumnIndex());
    anchor.setCol2(header.getColumnIndex() + COMMENT_COLUMNS);
    anchor.setRow1(HEADER_ROW);
    anchor.setRow2(HEADER_ROW + COMMENT_ROWS);
    var comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(sheet.getWorkbook().getCreationHelper().createRichTextString(text.strip()));
    comment.setAuthor("");
    header.setCellComment(comment);
  }

  /** Wide enough for the longest thing that is usual in it. */
  private static int width(Question question, List<List<String>> rows, int column, int columns) {
    int longest =
        rows.stream()
            .filter(r -> r.size() > column)
            .mapToInt(r -> r.get(column).length())
            .max()
            .orElse(0);
    int choice = question.choices().stream().mapToInt(String::length).max().orElse(0);
    int usual =
        switch (question.kind()) {
          case TEXT -> Math.max(column == 0 ? 10 : 12, longest);
          case DATE -> 11;
          case ONE_OF -> Math.max(Math.min(choice, 18), Math.min(longest, 26));
          default -> 8;
        };
    boolean broken =
        question.label().contains(" ") && columns >= NARROW && question.label().length() > SHORT;
    int header = (question.label().length() + 2) / (broken ? 2 : 1) + 3;
    return Math.min(36, Math.max(Math.max(usual + 2, header), 9));
  }
}

package cornerpost.workbook;

import static cornerpost.scope.OwnerSheet.CALENDARS;
import static cornerpost.scope.OwnerSheet.OPENINGS;
import static cornerpost.scope.OwnerSheet.OWN_TASKS;
import static cornerpost.scope.OwnerSheet.ROOMS;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.CalendarQuestions;
import cornerpost.scope.CrewQuestions;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OwnTaskQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.Wall;
import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Live sums beside the tables, so that the owner sees while typing whether rooms and openings fit.
 * Their column names differ from the table's, so no reader takes them for entries.
 */
final class TemplateChecks {
  private static final int BOXES = 6;
  private static final int CREWS = 6;
  private static final int FIRST = TemplateTable.FIRST_ROW;
  private static final int LAST_SHEET_ROW = FIRST + TemplateTable.READY_ROWS;

  private final XSSFWorkbook workbook;
  private final TemplateStyles styles;
  private final TemplateCells cells;
  private final WorkbookEntries entries;
  private final String unit;

  TemplateChecks(
      XSSFWorkbook workbook, TemplateStyles styles, TemplateCells cells, WorkbookEntries entries) {
    this.workbook = workbook;
    this.styles = styles;
    this.cells = cells;
    this.entries = entries;
    this.unit = entries.units() == UnitSystem.METRIC ? "m" : "ft";
  }

  void write() {
    rooms();
    openings();
    calendars();
    crewColumns();
    for (var s : List.of(ROOMS, OPENINGS, CALENDARS, OWN_TASKS)) {
      protect(workbook.getSheet(s.title()));
    }
  }

  /**
   * Keeps the live formulas from being typed over, without a password; all else stays free: every
   * other cell, rows and columns, looks, notes and filters.
   */
  private void protect(XSSFSheet sheet) {
    int columns = 0;
    for (var row : sheet) columns = Math.max(columns, row.getLastCellNum());
    for (int c = 0; c < columns; c++) sheet.setDefaultColumnStyle(c, styles.free);
    var rest = sheet.getCTWorksheet().getColsArray(0).addNewCol();
    rest.setMin(columns + 1);
    rest.setMax(SpreadsheetVersion.EXCEL2007.getMaxColumns());
    rest.setStyle(styles.free.getIndex());
    rest.setWidth(sheet.getDefaultColumnWidth());
    sheet.enableLocking();
    sheet.lockFormatCells(false);
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockInsertColumns(false);
    sheet.lockInsertRows(false);
    sheet.lockInsertHyperlinks(false);
    sheet.lockDeleteColumns(false);
    sheet.lockDeleteRows(false);
    sheet.lockSort(false);
    sheet.lockAutoFilter(false);
    sheet.lockPivotTables(false);
    sheet.lockObjects(false);
    sheet.lockScenarios(false);
  }

  private static String range(List<Question> columns, Question question) {
    var letter = letter(columns.indexOf(question));
    return "$" + letter + "$" + (FIRST + 1) + ":$" + letter + "$" + LAST_SHEET_ROW;
  }

  private static String letter(int column) {
    return CellReference.convertNumToColString(column);
  }

  private static String boxCell(Question question, int index) {
    return "Containers!$" + letter(BoxQuestions.ALL.indexOf(question)) + "$" + (FIRST + index + 1);
  }

  private static String sizeFact(String name, int index) {
    return "INDEX(" + name + ",MATCH(" + boxCell(BoxQuestions.SIZE, index) + ",list_BoxSize,0))";
  }

  private void heads(XSSFSheet sheet, int column, String... heads) {
    sheet.setColumnWidth(column - 1, 4 * 256); // from left to right: columns stand in that order
    for (int i = 0; i < heads.length; i++) {
      TemplateCells.text(sheet, TemplateTable.HEADER_ROW, column + i, heads[i], styles.checkHeader);
      sheet.setColumnWidth(column + i, 16 * 256);
    }
  }

  private void formula(XSSFSheet sheet, int row, int column, String formula, XSSFCellStyle style) {
    var cell = TemplateCells.row(sheet, row).createCell(column);
    cell.setCellFormula(formula);
    cell.setCellStyle(style);
  }

  private void rooms() {
    var sheet = workbook.getSheet(OwnerSheet.ROOMS.title());
    int at = RoomQuestions.ALL.size() + 1;
    heads(
        sheet,
        at,
        "Rooms in box",
        "Together, " + unit,
        "Inside length, " + unit,
        "Left over, " + unit);
    for (int i = 0; i < BOXES; i++) {
      int r = FIRST + i;
      var name = letter(at) + (r + 1);
      formula(
          sheet,
          r,
          at,
          blankOr(boxCell(BoxQuestions.ID, i), boxCell(BoxQuestions.ID, i)),
          styles.checkText);
      formula(
          sheet,
          r,
          at + 1,
          blankOr(
              name,
              "SUMIFS("
                  + range(RoomQuestions.ALL, RoomQuestions.LENGTH)
                  + ","
                  + range(RoomQuestions.ALL, RoomQuestions.BOX)
                  + ","
                  + name
                  + ")"),
          styles.check);
      formula(sheet, r, at + 2, blankOr(name, sizeFact("size_inside_length", i)), styles.check);
      formula(
          sheet,
          r,
          at + 3,
          blankOr(name, letter(at + 2) + (r + 1) + "-" + letter(at + 1) + (r + 1)),
          styles.check);
    }
  }

  private static String blankOr(String tested, String value) {
    return "IF(" + tested + "=\"\",\"\"," + value + ")";
  }

  private void openings() {
    var sheet = workbook.getSheet(OwnerSheet.OPENINGS.title());
    int at = OpeningQuestions.ALL.size() + 1;
    heads(sheet, at, "Wall of box", "Side", "Cut out, " + unit, "Long, " + unit, "Share cut out");
    var small = entries.units() == UnitSystem.METRIC ? 1000 : 12;
    for (int i = 0; i < BOXES * 2; i++) {
      int r = FIRST + i;
      int box = i / 2;
      var side = i % 2 == 0 ? Wall.LEFT.label() : Wall.RIGHT.label();
      var name = letter(at) + (r + 1);
      formula(
          sheet,
          r,
          at,
          blankOr(boxCell(BoxQuestions.ID, box), boxCell(BoxQuestions.ID, box)),
          styles.checkText);
      formula(sheet, r, at + 1, blankOr(name, "\"" + side + "\""), styles.checkText);
      formula(
          sheet,
          r,
          at + 2,
          blankOr(
              name,
              "SUMIFS("
                  + range(OpeningQuestions.ALL, OpeningQuestions.WIDTH)
                  + ","
                  + range(OpeningQuestions.ALL, OpeningQuestions.BOX)
                  + ","
                  + name
                  + ","
                  + range(OpeningQuestions.ALL, OpeningQuestions.WALL)
                  + ","
                  + letter(at + 1)
                  + (r + 1)
                  + ")/"
                  + small),
          styles.check);
      formula(sheet, r, at + 3, blankOr(name, sizeFact("size_length", box)), styles.check);
      formula(
          sheet,
          r,
          at + 4,
          blankOr(name, letter(at + 2) + (r + 1) + "/" + letter(at + 3) + (r + 1)),
          styles.checkShare);
    }
  }

  private void calendars() {
    var sheet = workbook.getSheet(OwnerSheet.CALENDARS.title());
    int at = CalendarQuestions.ALL.size() + 1;
    heads(sheet, at, "Hours a week");
    for (int r = FIRST; r < FIRST + 10; r++) {
      var first = letter(CalendarQuestions.ALL.indexOf(CalendarQuestions.MONDAY)) + (r + 1);
      var last = letter(CalendarQuestions.ALL.indexOf(CalendarQuestions.SUNDAY)) + (r + 1);
      formula(
          sheet, r, at, blankOr("A" + (r + 1), "SUM(" + first + ":" + last + ")"), styles.check);
    }
  }

  /** Columns of Own tasks that take their names from the rows of Crews. */
  private void crewColumns() {
    var sheet = workbook.getSheet(OwnerSheet.OWN_TASKS.title());
    int at = OwnTaskQuestions.ALL.size();
    var rows = entries.rows(OwnerSheet.OWN_TASKS);
    for (int i = 0; i < CREWS; i++) {
      var crew = "Crews!$A$" + (FIRST + i + 1);
      formula(sheet, TemplateTable.HEADER_ROW, at + i, blankOr(crew, crew), styles.liveHeader);
      for (int r = FIRST; r < LAST_SHEET_ROW; r++) {
        int index = r - FIRST;
        var text =
            index < rows.size() && rows.get(index).size() > at + i
                ? rows.get(index).get(at + i)
                : "";
        cells.entry(sheet, r, at + i, CrewQuestions.AVAILABLE, text);
      }
      sheet.setColumnWidth(at + i, 12 * 256);
    }
  }
}

package cornerpost.workbook;

import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Scope;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;

/**
 * The choices as they stood at this run. Each is compared, live, with what its cell holds now, so
 * that the workbook itself says when dates and worked-out numbers are out of date.
 */
final class RunMark {
  /** Rows of an owner's sheet that are counted. */
  private static final int MOST_ROWS = 2000;

  private final ResultRun run;
  private final SheetPage page;

  private RunMark(ResultRun run, SheetPage page) {
    this.run = run;
    this.page = page;
  }

  /** Writes the rows from {@code row} on; the next free row. */
  static int write(ResultRun run, SheetPage page, int row) {
    return new RunMark(run, page).write(row);
  }

  private int write(int first) {
    int row = first;
    for (var e : choices().entrySet()) {
      if (choice(row, e.getKey(), e.getValue())) row++;
    }
    for (var sheet : OwnerSheet.values()) {
      if (count(row, sheet)) row++;
    }
    return row;
  }

  /** Every cell that takes part, by label, with what is asked there; the empty ones too. */
  private Map<String, String> choices() {
    var scope = run.plan.scope();
    var all = new LinkedHashMap<String, String>();
    for (var e : scope.entered()) all.putIfAbsent(e.cell(), e.label());
    for (var answers : answers(scope)) {
      // A map of answers has no order of its own; cells in reading order give the same bytes.
      answers.all().entrySet().stream()
          .sorted(java.util.Comparator.comparing(e -> order(e.getValue())))
          .forEach(e -> all.putIfAbsent(e.getValue().cell(), e.getKey().label()));
    }
    return all;
  }

  private static String order(Answer answer) {
    var ref = new CellReference(answer.cell().substring(answer.cell().lastIndexOf('!') + 1));
    return String.format(java.util.Locale.ROOT, "%07d %05d", ref.getRow(), ref.getCol());
  }

  private static List<Answers> answers(Scope scope) {
    var all = new ArrayList<Answers>();
    all.add(scope.project());
    scope.boxes().forEach(b -> all.add(b.row()));
    scope.rooms().forEach(r -> all.add(r.row()));
    scope.openings().forEach(o -> all.add(o.row()));
    all.addAll(
        List.of(
            scope.site(),
            scope.deckAndRoof(),
            scope.envelope(),
            scope.services(),
            scope.finishes(),
            scope.loan(),
            scope.options()));
    return all;
  }

  /** Whether there is such a cell; a place without one needs no row. */
  private boolean choice(int row, String label, String asked) {
    int mark = label.lastIndexOf('!');
    if (mark < 0) return false;
    var sheet = run.workbook.getSheet(label.substring(0, mark));
    if (sheet == null) return false;
    var ref = new CellReference(label.substring(mark + 1));
    var r = sheet.getRow(ref.getRow());
    var cell = r == null ? null : r.getCell(ref.getCol());
    var type = cell == null ? CellType.BLANK : shownType(cell);
    if (type == CellType.ERROR) return false;
    var at = Addresses.choice(label);
    var now = "$C" + row;
    var then = "$G" + row;
    var formula = "IF(" + at + "=\"\",\"\"," + at + ")";
    page.text(row, 0, label, page.wrapped());
    page.text(row, 1, asked, page.wrapped());
    String changed;
    if (type == CellType.NUMERIC) {
      double value = cell.getNumericCellValue();
      var look = DateUtil.isCellDateFormatted(cell) ? page.dateLook() : page.number("#,##0.######");
      page.formula(row, 2, formula, value, look);
      page.number(row, 6, value, look.inInk(SheetStyle.QUIET));
      changed =
          "IF(ISNUMBER("
              + now
              + "),IF(ABS("
              + now
              + "-"
              + then
              + ")>0.000000001*(1+ABS("
              + then
              + ")),1,0),1)";
    } else {
      var text = SheetPage.fitting(textOf(cell, type));
      page.formula(row, 2, formula, text, page.wrapped());
      page.text(row, 6, text, page.wrapped().inInk(SheetStyle.QUIET));
      changed = "IF(EXACT(" + now + "&\"\"," + then + "&\"\"),0,1)";
    }
    finish(row, "choice", changed);
    page.link(row, 0, at.replace("$", ""));
    return true;
  }

  private static CellType shownType(XSSFCell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? cell.getCachedFormulaResultType()
        : cell.getCellType();
  }

  private static boolean isFilled(XSSFCell cell, CellType type) {
    return cell.getRowIndex() < MOST_ROWS
        && (type == CellType.NUMERIC
            || type == CellType.BOOLEAN
            || type == CellType.STRING && !cell.getStringCellValue().isEmpty());
  }

  private static String textOf(XSSFCell cell, CellType type) {
    return switch (type) {
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> cell.getBooleanCellValue() ? "TRUE" : "FALSE";
      default -> "";
    };
  }

  private void finish(int row, String kind, String changed) {
    page.text(row, 4, kind.equals("choice") ? "your entry" : "your sheet", page.plain());
    page.text(row, 5, kind);
    page.formula(row, 7, changed, 0, page.number("0").inInk(SheetStyle.QUIET));
  }

  /** How many cells are filled: the first column of a table, the entries of a form. */
  private boolean count(int row, OwnerSheet which) {
    var sheet = run.workbook.getSheet(which.title());
    if (sheet == null || which.shape() == OwnerSheet.Shape.TEXT) return false;
    int column = which.shape() == OwnerSheet.Shape.TABLE ? 0 : 1;
    int filled = 0;
    for (var r : sheet) {
      var cell = sheet.getRow(r.getRowNum()).getCell(column);
      if (cell != null && isFilled(cell, shownType(cell))) filled++;
    }
    var letter = SheetPage.letter(column);
    page.text(row, 0, which.title(), page.wrapped());
    page.text(
        row,
        1,
        which.shape() == OwnerSheet.Shape.TABLE ? "cells filled in the first column" : "entries",
        page.wrapped());
    var range =
        Addresses.sheetName(which.title()) + "!$" + letter + "$1:$" + letter + "$" + MOST_ROWS;
    // By length: programs differ in whether an empty text, or a number, counts as text.
    page.formula(row, 2, "SUMPRODUCT(--(LEN(" + range + ")>0))", filled, page.number("0"));
    page.number(row, 6, filled, page.number("0").inInk(SheetStyle.QUIET));
    finish(row, "count", "IF($C" + row + "=$G" + row + ",0,1)");
    return true;
  }
}

package cornerpost.workbook;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.Question;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes entry cells and what a spreadsheet program checks as they are typed. */
final class TemplateCells {
  private static final int MOST_TITLE = 32;
  private static final int MOST_PROMPT = 255;

  private final UnitSystem units;
  private final TemplateStyles styles;
  private final TemplateLists lists;

  TemplateCells(UnitSystem units, TemplateStyles styles, TemplateLists lists) {
    this.units = units;
    this.styles = styles;
    this.lists = lists;
  }

  static XSSFRow row(XSSFSheet sheet, int index) {
    var row = sheet.getRow(index);
    return row == null ? sheet.createRow(index) : row;
  }

  static XSSFCell text(XSSFSheet sheet, int row, int column, String text, XSSFCellStyle style) {
    var cell = row(sheet, row).createCell(column);
    cell.setCellValue(text);
    cell.setCellStyle(style);
    return cell;
  }

  /**
   * @param text as a person would type it; empty for an empty entry cell
   */
  void entry(XSSFSheet sheet, int row, int column, Question question, String text) {
    var cell = row(sheet, row).createCell(column);
    cell.setCellStyle(styles.entry(question.kind()));
    if (text.isEmpty()) return;
    switch (question.kind()) {
      case NUMBER, WHOLE, MONEY, SHARE -> cell.setCellValue(new BigDecimal(text).doubleValue());
      case DATE -> cell.setCellValue(LocalDate.parse(text));
      case TEXT, YES_NO, ONE_OF -> cell.setCellValue(text);
    }
  }

  /** The unit as it stands beside the entry. */
  String unit(Question question) {
    return switch (question.kind()) {
      case NUMBER -> question.unit(units).symbol();
      case MONEY -> "money";
      case WHOLE, DATE, SHARE, TEXT, YES_NO, ONE_OF -> "";
    };
  }

  /** What the cell means, what it may hold, and what is taken if it is empty. */
  String help(Question question) {
    var text = new StringBuilder(question.help());
    question
        .standard()
        .in(units)
        .ifPresent(
            s ->
                text.append(text.length() == 0 ? "" : " ")
                    .append("Usual: ")
                    .append(shown(question, s))
                    .append('.'));
    if (text.length() == 0 && !question.required()) text.append("May stay empty.");
    return text.toString();
  }

  private String shown(Question question, String standard) {
    return switch (question.kind()) {
      case SHARE -> Plain.number(new BigDecimal(standard).movePointRight(2)) + " %";
      case NUMBER -> standard + (unit(question).isEmpty() ? "" : " " + shownUnit(question));
      default -> standard;
    };
  }

  /** Months and miles in the plural, signs of units as they are. */
  private String shownUnit(Question question) {
    var unit = unit(question);
    return unit.equals("month") || unit.equals("mile") ? Plain.manyOf(unit) : unit;
  }

  void validate(XSSFSheet sheet, Question question, int firstRow, int lastRow, int column) {
    var helper = sheet.getDataValidationHelper();
    var where = new CellRangeAddressList(firstRow, lastRow, column, column);
    var list = lists.of(question);
    var rule =
        list.isPresent() ? helper.createFormulaListConstraint(list.get()) : bounds(sheet, question);
    var validation = helper.createValidation(rule, where);
    validation.setEmptyCellAllowed(true);
    validation.setSuppressDropDownArrow(true); // which in this library shows the arrow
    validation.setShowErrorBox(
        rule.getValidationType() != DataValidationConstraint.ValidationType.ANY);
    validation.setErrorStyle(
        question.list().isPresent()
            ? DataValidation.ErrorStyle.WARNING
            : DataValidation.ErrorStyle.STOP);
    validation.createErrorBox(
        cut(question.label(), MOST_TITLE), cut(allowed(question), MOST_PROMPT));
    var prompt = help(question);
    if (!prompt.isEmpty()) {
      validation.setShowPromptBox(true);
      validation.createPromptBox(cut(question.label(), MOST_TITLE), cut(prompt, MOST_PROMPT));
    }
    sheet.addValidationData(validation);
  }

  private DataValidationConstraint bounds(XSSFSheet sheet, Question question) {
    var helper = sheet.getDataValidationHelper();
    var least = limit(question.least(units), "-1000000000");
    var most = limit(question.most(units), "1000000000");
    return switch (question.kind()) {
      case NUMBER, MONEY, SHARE ->
          helper.createDecimalConstraint(OperatorType.BETWEEN, least, most);
      case WHOLE -> helper.createIntegerConstraint(OperatorType.BETWEEN, least, most);
      case DATE ->
          helper.createDateConstraint(
              OperatorType.BETWEEN, "DATE(1990,1,1)", "DATE(2199,12,31)", "yyyy-mm-dd");
      case TEXT, YES_NO, ONE_OF -> helper.createCustomConstraint("TRUE");
    };
  }

  /** A limit in the unit of the cell, or one that no entry reaches. */
  private static String limit(Optional<BigDecimal> inOwnUnit, String beyond) {
    return inOwnUnit.map(BigDecimal::toPlainString).orElse(beyond);
  }

  private String allowed(Question question) {
    return switch (question.kind()) {
      case NUMBER, MONEY, SHARE, WHOLE ->
          "A number"
              + (unit(question).isEmpty() ? "" : " of " + Plain.manyOf(unit(question)))
              + " between "
              + limit(question.least(units), "-1000000000")
              + " and "
              + limit(question.most(units), "1000000000")
              + ".";
      case DATE -> "A date.";
      default -> "One of the list: " + String.join("; ", question.choices());
    };
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 3) + "...";
  }
}

package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxSize;
import cornerpost.scope.GeneratedTasks;
import cornerpost.scope.Labelled;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.takeoff.BuildTask;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The hidden sheet that holds what the drop-downs offer: a list typed into a validation ends at 255
 * characters, and a list in cells can be seen and repaired in any program.
 */
final class TemplateLists {
  static final String SHEET = "Lists";
  private static final String YES_NO = "list_yes_no";
  private static final String UNIT_SYSTEMS = "list_units";
  private static final int MOST_TASKS = 5_000;
  private static final int TABLE_FIRST_ROW = TemplateTable.FIRST_ROW + 1;
  private static final int TABLE_LAST_ROW = TemplateTable.FIRST_ROW + TemplateTable.READY_ROWS;

  private final XSSFWorkbook workbook;
  private final XSSFSheet sheet;
  private final Map<String, String> named = new LinkedHashMap<>();
  private int columns;

  TemplateLists(XSSFWorkbook workbook, Facts facts, UnitSystem units) {
    this.workbook = workbook;
    this.sheet = workbook.createSheet(SHEET);
    add(YES_NO, List.of("yes", "no"));
    add(UNIT_SYSTEMS, List.of(UnitSystem.METRIC.label(), UnitSystem.US.label()));
    sizes(facts, units);
    own("boxes", OwnerSheet.CONTAINERS);
    own("calendars", OwnerSheet.CALENDARS);
    own("crews", OwnerSheet.CREWS);
    own("rooms", OwnerSheet.ROOMS);
    own("own_tasks", OwnerSheet.OWN_TASKS);
    add("list_build_tasks", Arrays.stream(BuildTask.values()).map(BuildTask::id).toList());
  }

  XSSFSheet sheet() {
    return sheet;
  }

  /** What offers the answers to a question: the name of a range; empty where anything goes. */
  Optional<String> of(Question question) {
    if (question.kind() == Question.Kind.YES_NO) return Optional.of(YES_NO);
    if (question.equals(ProjectQuestions.UNITS)) return Optional.of(UNIT_SYSTEMS);
    if (question.list().isPresent()) {
      return Optional.of("list_" + question.list().get().name().toLowerCase(Locale.ROOT));
    }
    return question.options().map(type -> options(type, question));
  }

  private String options(Class<? extends Labelled> type, Question question) {
    var name = "list_" + type.getSimpleName();
    if (!named.containsKey(name)) add(name, question.choices());
    return name;
  }

  private void add(String name, List<String> values) {
    int column = columns++;
    cell(0, column, name);
    for (int r = 0; r < values.size(); r++) cell(r + 1, column, values.get(r));
    name(name, range(column, values.size()));
  }

  private void cell(int row, int column, String text) {
    var at = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
    at.createCell(column).setCellValue(text);
  }

  private static String range(int column, int size) {
    var letter = CellReference.convertNumToColString(column);
    return SHEET + "!$" + letter + "$2:$" + letter + "$" + (size + 1);
  }

  void name(String name, String formula) {
    var defined = workbook.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(formula);
    named.put(name, formula);
  }

  /** The sizes with their inside and outside lengths, for the live checks. */
  private void sizes(Facts facts, UnitSystem units) {
    var labels = new ArrayList<String>();
    for (var size : BoxSize.values()) labels.add(size.label());
    add("list_BoxSize", labels);
    length("inside-length", facts, units);
    length("length", facts, units);
  }

  private void length(String dimension, Facts facts, UnitSystem units) {
    int column = columns++;
    var name = "size_" + dimension.replace('-', '_');
    cell(0, column, name);
    var unit = units.choose(Unit.M, Unit.FT);
    for (var size : BoxSize.values()) {
      facts
          .find(size.factId() + "." + dimension)
          .ifPresent(
              f ->
                  sheet
                      .getRow(size.ordinal() + 1)
                      .createCell(column)
                      .setCellValue(f.figure().asDouble(unit)));
    }
    name(name, range(column, BoxSize.values().length));
  }

  /**
   * The ids of sheet Schedule once a run has written it; before that the tasks of any build, or the
   * owner's where no others are planned. A sheet that is not there yet can be named only in a text.
   * To be called once sheet Project has its names.
   */
  void tasks() {
    var generated = TemplateForm.nameOf(OwnerSheet.PROJECT, ProjectQuestions.GENERATED_TASKS);
    var ids = "'" + ResultSheet.SCHEDULE.title() + "'!$A$" + Addresses.FIRST_ROW;
    var count = "COUNTA(INDIRECT(\"" + ids + ":$A$" + MOST_TASKS + "\"))";
    var last = "(" + (Addresses.FIRST_ROW - 1) + "+" + count + ")";
    name(
        "list_tasks",
        "IF(ISERROR(INDIRECT(\""
            + ids
            + "\")),IF("
            + generated
            + "=\""
            + GeneratedTasks.NONE.label()
            + "\",list_own_tasks,list_build_tasks),INDIRECT(\""
            + ids
            + ":$A$\"&"
            + last
            + "))");
  }

  /** A list that grows with the rows of one of the owner's tables. */
  private void own(String name, OwnerSheet table) {
    var first = "'" + table.title() + "'!$A$" + TABLE_FIRST_ROW;
    var all = first + ":$A$" + TABLE_LAST_ROW;
    name("list_" + name, first + ":INDEX(" + all + ",MAX(1,COUNTA(" + all + ")))");
  }
}

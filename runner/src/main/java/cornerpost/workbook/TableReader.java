package cornerpost.workbook;

import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.Question;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Reads a table sheet. The header row is the one that holds the column names, wherever it is; what
 * stands above it (explanation, units) is ignored, as are columns of other names and empty rows.
 */
final class TableReader {
  private final EntryReader entries;
  private final FaultLog faults;

  TableReader(EntryReader entries, FaultLog faults) {
    this.entries = entries;
    this.faults = faults;
  }

  /** One row with an entry in it. */
  record TableRow(Answers answers, int row) {}

  /**
   * @param others the columns of other names, by name as typed, in order
   */
  record Table(XSSFSheet sheet, List<TableRow> rows, Map<String, Integer> others) {
    Held held(int row, int column) {
      return Held.of(sheet.getRow(row).getCell(column));
    }

    CellPlace place(int row, int column) {
      return new CellPlace(sheet.getSheetName(), row, column);
    }
  }

  /**
   * @param needed whether a sheet without header row is a fault even if it is empty
   */
  Optional<Table> read(XSSFSheet sheet, List<Question> questions, boolean needed) {
    var title = sheet.getSheetName();
    var header = header(sheet, questions);
    if (header.isEmpty()) {
      if (needed || holdsAnything(sheet)) {
        faults.fault(
            title,
            "",
            "no header row with the column '" + questions.get(0).label() + "'",
            "expected one row with the column names "
                + Plain.list(questions.stream().map(Question::label).toList()));
      }
      return Optional.empty();
    }
    int headerRow = header.get();
    var columns = new LinkedHashMap<Question, Integer>();
    var others = new LinkedHashMap<String, Integer>();
    for (Cell cell : sheet.getRow(headerRow)) {
      column(title, headerRow, (XSSFCell) cell, questions, columns, others);
    }
    var missing = missing(questions, columns);
    if (!missing.isEmpty()) {
      faults.fault(
          new CellPlace(title, headerRow, 0),
          "no column " + Plain.list(missing),
          "expected it in the header row");
      return Optional.empty();
    }
    var rows = new ArrayList<TableRow>();
    for (int r = headerRow + 1; r <= sheet.getLastRowNum(); r++) {
      var row = sheet.getRow(r);
      if (row == null || isEmpty(row, columns)) continue;
      rows.add(new TableRow(answers(title, row, questions, columns), r));
    }
    return Optional.of(new Table(sheet, rows, others));
  }

  /**
   * The row with the first column's name that holds most of the other names too: a row of units
   * above it may say "date" where the column is called Date. The first of equals.
   */
  private static Optional<Integer> header(XSSFSheet sheet, List<Question> questions) {
    var names = questions.stream().map(q -> Plain.key(q.label())).collect(Collectors.toSet());
    var first = Plain.key(questions.get(0).label());
    Optional<Integer> best = Optional.empty();
    int most = 0;
    for (Row row : sheet) {
      var texts = new HashSet<String>();
      for (Cell cell : row) {
        var held = Held.of((XSSFCell) cell);
        if (held.kind() == Held.Kind.TEXT) texts.add(Plain.key(held.text()));
      }
      if (!texts.contains(first)) continue;
      texts.retainAll(names);
      if (texts.size() > most) {
        most = texts.size();
        best = Optional.of(row.getRowNum());
      }
    }
    return best;
  }

  private static boolean holdsAnything(XSSFSheet sheet) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (!Held.of((XSSFCell) cell).isNothing()) return true;
      }
    }
    return false;
  }

  private void column(
      String title,
      int headerRow,
      XSSFCell cell,
      List<Question> questions,
      Map<Question, Integer> columns,
      Map<String, Integer> others) {
    var held = Held.of(cell);
    if (held.isNothing()) return;
    var name = EntryReader.text(held);
    var question = questions.stream().filter(q -> Plain.same(q.label(), name)).findFirst();
    var taken =
        question.isPresent()
            ? columns.putIfAbsent(question.get(), cell.getColumnIndex())
            : others.putIfAbsent(name, cell.getColumnIndex());
    if (taken != null && question.isPresent()) {
      faults.fault(
          new CellPlace(title, headerRow, cell.getColumnIndex()),
          "a second column '" + name + "'",
          "expected each column once");
    }
  }

  private static List<String> missing(List<Question> questions, Map<Question, Integer> columns) {
    return questions.stream()
        .filter(q -> q.required() && q.standard().metric().isEmpty() && !columns.containsKey(q))
        .map(Question::label)
        .toList();
  }

  private static boolean isEmpty(XSSFRow row, Map<Question, Integer> columns) {
    return columns.values().stream().allMatch(c -> Held.of(row.getCell(c)).isNothing());
  }

  private Answers answers(
      String title, XSSFRow row, List<Question> questions, Map<Question, Integer> columns) {
    var firstColumn = columns.get(questions.get(0));
    var first = Held.of(row.getCell(firstColumn));
    var of = first.isNothing() ? "" : EntryReader.text(first);
    var answers = new LinkedHashMap<Question, Answer>();
    for (var question : questions) {
      var column = columns.get(question);
      var answer =
          column == null
              ? entries.absent(question, title)
              : entries.read(
                  question,
                  new CellPlace(title, row.getRowNum(), column),
                  Held.of(row.getCell(column)),
                  question.equals(questions.get(0)) ? "" : of);
      answer.ifPresent(a -> answers.put(question, a));
    }
    return new Answers(title + " row " + (row.getRowNum() + 1), answers);
  }
}

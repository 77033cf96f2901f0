package cornerpost.workbook;

import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.Question;
import cornerpost.workbook.parts.StoredCell;
import cornerpost.workbook.parts.StoredSheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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
  record Table(StoredSheet sheet, List<TableRow> rows, Map<String, Integer> others) {
    Held held(int row, int column) {
      return Held.of(sheet, row, column);
    }

    CellPlace place(int row, int column) {
      return new CellPlace(sheet.title(), row, column);
    }
  }

  /**
   * @param needed whether a sheet without header row is a fault even if it is empty
   */
  Optional<Table> read(StoredSheet sheet, List<Question> questions, boolean needed) {
    var title = sheet.title();
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
    for (var cell : sheet.row(headerRow)) {
      column(sheet, cell, questions, columns, others);
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
    for (int r : sheet.rows()) {
      if (r <= headerRow || isEmpty(sheet, r, columns)) continue;
      rows.add(new TableRow(answers(sheet, r, questions, columns), r));
    }
    return Optional.of(new Table(sheet, rows, others));
  }

  /**
   * The row with the first column's name that holds most of the other names too: a row of units
   * above it may say "date" where the column is called Date. The first of equals.
   */
  private static Optional<Integer> header(StoredSheet sheet, List<Question> questions) {
    var names = questions.stream().map(q -> Plain.key(q.label())).collect(Collectors.toSet());
    var first = Plain.key(questions.get(0).label());
    Optional<Integer> best = Optional.empty();
    int most = 0;
    for (int row : sheet.rows()) {
      var texts = new HashSet<String>();
      for (var cell : sheet.row(row)) {
        var held = Held.of(sheet.book(), cell);
        if (held.kind() == Held.Kind.TEXT) texts.add(Plain.key(held.text()));
      }
      if (!texts.contains(first)) continue;
      texts.retainAll(names);
      if (texts.size() > most) {
        most = texts.size();
        best = Optional.of(row);
      }
    }
    return best;
  }

  private static boolean holdsAnything(StoredSheet sheet) {
    for (int row : sheet.rows()) {
      for (var cell : sheet.row(row)) {
        if (!Held.of(sheet.book(), cell).isNothing()) return true;
      }
    }
    return false;
  }

  private void column(
      StoredSheet sheet,
      StoredCell cell,
      List<Question> questions,
      Map<Question, Integer> columns,
      Map<String, Integer> others) {
    var held = Held.of(sheet.book(), cell);
    if (held.isNothing()) return;
    var name = EntryReader.text(held);
    var question = questions.stream().filter(q -> Plain.same(q.label(), name)).findFirst();
    var taken =
        question.isPresent()
            ? columns.putIfAbsent(question.get(), cell.column())
            : others.putIfAbsent(name, cell.column());
    if (taken != null && question.isPresent()) {
      faults.fault(
          new CellPlace(sheet.title(), cell.row(), cell.column()),
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

  private static boolean isEmpty(StoredSheet sheet, int row, Map<Question, Integer> columns) {
    return columns.values().stream().allMatch(c -> Held.of(sheet, row, c).isNothing());
  }

  private Answers answers(
      StoredSheet sheet, int row, List<Question> questions, Map<Question, Integer> columns) {
    var title = sheet.title();
    var firstColumn = columns.get(questions.get(0));
    var first = Held.of(sheet, row, firstColumn);
    var of = first.isNothing() ? "" : EntryReader.text(first);
    var answers = new LinkedHashMap<Question, Answer>();
    for (var question : questions) {
      var column = columns.get(question);
      var answer =
          column == null
              ? entries.absent(question, title)
              : entries.read(
                  question,
                  new CellPlace(title, row, column),
                  Held.of(sheet, row, column),
                  question.equals(questions.get(0)) ? "" : of);
      answer.ifPresent(a -> answers.put(question, a));
    }
    return new Answers(title + " row " + (row + 1), answers);
  }
}

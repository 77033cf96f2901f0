package cornerpost.workbook;

import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.Question;
import cornerpost.workbook.parts.StoredSheet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a form sheet: labels in column A, anywhere, each with its entry in column B. */
final class FormReader {
  private static final int LABEL = 0;
  private static final int ENTRY = 1;

  private final EntryReader entries;
  private final FaultLog faults;

  FormReader(EntryReader entries, FaultLog faults) {
    this.entries = entries;
    this.faults = faults;
  }

  /** What is in the cell to the right of a label, where the sheet has it. */
  static Optional<Held> find(StoredSheet sheet, Question question) {
    return Optional.ofNullable(labels(sheet).get(Plain.key(question.label())))
        .map(rows -> held(sheet, rows.row()));
  }

  static Optional<CellPlace> placeOf(StoredSheet sheet, Question question) {
    return Optional.ofNullable(labels(sheet).get(Plain.key(question.label())))
        .map(rows -> new CellPlace(sheet.title(), rows.row(), ENTRY));
  }

  private record Label(int row, boolean twice) {}

  Answers read(StoredSheet sheet, List<Question> questions) {
    var title = sheet.title();
    var labels = labels(sheet);
    var answers = new LinkedHashMap<Question, Answer>();
    for (var question : questions) {
      var label = labels.get(Plain.key(question.label()));
      if (label == null) {
        var standard = entries.absent(question, title);
        standard.ifPresent(a -> answers.put(question, a));
        if (standard.isEmpty() && question.required()) {
          faults.fault(
              title,
              "",
              "no line '" + question.label() + "'",
              "expected the label in column A and the entry beside it in column B");
        }
        continue;
      }
      var place = new CellPlace(title, label.row(), ENTRY);
      if (label.twice()) {
        faults.fault(
            place, "the label '" + question.label() + "' stands on two lines", "expected it once");
      }
      entries
          .read(question, place, held(sheet, label.row()), "")
          .ifPresent(a -> answers.put(question, a));
    }
    return new Answers(title, answers);
  }

  /** The answers of a sheet that is not there. */
  Answers absent(String title, List<Question> questions) {
    var answers = new LinkedHashMap<Question, Answer>();
    for (var question : questions) {
      entries.absent(question, title).ifPresent(a -> answers.put(question, a));
    }
    return new Answers(title, answers);
  }

  private static Held held(StoredSheet sheet, int row) {
    return Held.of(sheet, row, ENTRY);
  }

  private static Map<String, Label> labels(StoredSheet sheet) {
    var found = new HashMap<String, Label>();
    for (int row : sheet.rows()) {
      var held = Held.of(sheet, row, LABEL);
      if (held.kind() != Held.Kind.TEXT) continue;
      found.merge(
          Plain.key(held.text()),
          new Label(row, false),
          (first, again) -> new Label(first.row(), true));
    }
    return found;
  }
}

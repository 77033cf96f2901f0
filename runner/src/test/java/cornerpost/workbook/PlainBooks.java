package cornerpost.workbook;

import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Writes entries as bare sheets with another library: label and entry, header row and rows. */
final class PlainBooks {
  private PlainBooks() {}

  /** Every sheet of the owner's, without explanation, units, help or drop-downs. */
  static byte[] of(WorkbookEntries entries) throws IOException {
    var out = new ByteArrayOutputStream();
    try (var workbook = new Workbook(out, "Sheets", "1.0")) {
      for (var owner : OwnerSheet.values()) {
        var sheet = workbook.newWorksheet(owner.title());
        var questions = TemplateWriter.questions(owner);
        switch (owner.shape()) {
          case TEXT -> sheet.value(0, 0, "Anything");
          case FORM -> {
            for (int i = 0; i < questions.size(); i++) {
              sheet.value(i, 0, questions.get(i).label());
              put(sheet, i, 1, questions.get(i), entries.answer(questions.get(i)).orElse(""));
            }
          }
          case TABLE -> {
            for (int c = 0; c < questions.size(); c++) sheet.value(0, c, questions.get(c).label());
            var rows = entries.rows(owner);
            for (int r = 0; r < rows.size(); r++) {
              for (int c = 0; c < Math.min(questions.size(), rows.get(r).size()); c++) {
                put(sheet, r + 1, c, questions.get(c), rows.get(r).get(c));
              }
            }
            if (owner == OwnerSheet.OWN_TASKS) crews(sheet, entries);
          }
        }
        sheet.finish();
      }
    }
    return out.toByteArray();
  }

  private static void crews(Worksheet sheet, WorkbookEntries entries) {
    int first = TemplateWriter.questions(OwnerSheet.OWN_TASKS).size();
    var crews = entries.rows(OwnerSheet.CREWS);
    for (int c = 0; c < crews.size(); c++) {
      sheet.value(0, first + c, crews.get(c).get(0));
      var tasks = entries.rows(OwnerSheet.OWN_TASKS);
      for (int r = 0; r < tasks.size(); r++) {
        if (tasks.get(r).size() > first + c) {
          sheet.value(r + 1, first + c, Double.parseDouble(tasks.get(r).get(first + c)));
        }
      }
    }
  }

  private static void put(Worksheet sheet, int row, int column, Question question, String text) {
    if (text.isEmpty()) return;
    switch (question.kind()) {
      case NUMBER, WHOLE, MONEY, SHARE -> sheet.value(row, column, Double.parseDouble(text));
      case DATE -> {
        sheet.value(row, column, LocalDate.parse(text));
        sheet.style(row, column).format("yyyy-mm-dd").set();
      }
      case YES_NO -> sheet.value(row, column, text.equals("yes"));
      case TEXT, ONE_OF -> sheet.value(row, column, text);
    }
  }
}

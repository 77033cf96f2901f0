package cornerpost.workbook;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What stands in a workbook's entry cells: text as a person would type it, dates in ISO 8601,
 * shares as a number of one. A form's line that is not mentioned holds its standard value.
 */
final class WorkbookEntries {
  private final UnitSystem units;
  private final Map<Question, String> forms = new HashMap<>();
  private final Map<OwnerSheet, List<List<String>>> rows = new EnumMap<>(OwnerSheet.class);

  WorkbookEntries(UnitSystem units) {
    this.units = units;
  }

  UnitSystem units() {
    return units;
  }

  /**
   * @param text what the cell holds; empty for an empty cell
   */
  WorkbookEntries answer(Question question, String text) {
    forms.put(question, text);
    return this;
  }

  /**
   * @param cells the entries from the first column on; on Own tasks the numbers of the crews
   *     follow, in the order of sheet Crews
   */
  WorkbookEntries row(OwnerSheet sheet, String... cells) {
    rows.computeIfAbsent(sheet, s -> new ArrayList<>()).add(List.of(cells));
    return this;
  }

  Optional<String> answer(Question question) {
    var text = forms.containsKey(question) ? forms.get(question) : standard(question);
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private String standard(Question question) {
    return question.standard().in(units).orElse("");
  }

  List<List<String>> rows(OwnerSheet sheet) {
    return List.copyOf(rows.getOrDefault(sheet, List.of()));
  }
}

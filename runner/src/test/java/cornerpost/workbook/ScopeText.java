package cornerpost.workbook;

import cornerpost.scope.Answers;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.trace.Figure;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A scope as lines of text, to compare two of them: figures by value, answers by label; with the
 * cells or, for workbooks laid out in different ways, without.
 */
final class ScopeText {
  private final boolean withCells;
  private final List<String> lines = new ArrayList<>();

  private ScopeText(boolean withCells) {
    this.withCells = withCells;
  }

  static List<String> withCells(Scope scope) {
    return of(scope, true);
  }

  static List<String> withoutCells(Scope scope) {
    return of(scope, false);
  }

  private static List<String> of(Scope scope, boolean withCells) {
    var text = new ScopeText(withCells);
    text.add("scope", scope);
    return text.lines;
  }

  private void add(String path, Object value) {
    if (value instanceof Answers answers) {
      answers.all().entrySet().stream()
          .sorted(Comparator.comparing((Map.Entry<Question, ?> e) -> e.getKey().label()))
          .forEach(
              e -> {
                add(path + "." + e.getKey().label(), e.getValue().value());
                if (withCells) {
                  lines.add(path + "." + e.getKey().label() + " in " + e.getValue().cell());
                }
              });
    } else if (value instanceof Figure figure) {
      lines.add(path + " = " + figure.value().stripTrailingZeros().toPlainString());
    } else if (value instanceof BigDecimal number) {
      lines.add(path + " = " + number.stripTrailingZeros().toPlainString());
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(v -> add(path, v));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) add(path + "[" + i + "]", list.get(i));
    } else if (value instanceof Map<?, ?> map) {
      map.entrySet().stream()
          .sorted(Comparator.comparing((Map.Entry<?, ?> e) -> e.getKey().toString()))
          .forEach(e -> add(path + "." + e.getKey(), e.getValue()));
    } else if (value instanceof Record record) {
      for (var part : record.getClass().getRecordComponents()) component(path, record, part);
    } else {
      lines.add(path + " = " + value);
    }
  }

  private void component(String path, Record record, RecordComponent part) {
    boolean cell = part.getName().equals("cell") || part.getName().equals("afterCell");
    if (cell && !withCells) return;
    try {
      part.getAccessor().setAccessible(true);
      add(path + "." + part.getName(), part.getAccessor().invoke(record));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}

package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Takeoff;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The three take-offs worked by hand in docs/: every row is worked out here apart from the program,
 * and compared with what the program measures of the example.
 */
class HandTakeoffTest {
  private static final Pattern ROW =
      Pattern.compile(
          "^\\| (\\d+) \\| (?:`([^`]+)`)? \\| [^|]* \\| ([^|]+) \\| ([^|]*) \\| ([^|]+) \\| ([^|]*) \\|$",
          Pattern.MULTILINE);

  /**
   * @param intoUnit the step from metres, square metres and so on to the unit shown; may be empty
   */
  private record Row(int number, String arithmetic, String intoUnit, String result, String unit) {}

  private static final String STEP = "step ";

  private static Map<String, Row> rows(String page) throws IOException {
    var rows = new LinkedHashMap<String, Row>();
    var found = ROW.matcher(Files.readString(Path.of("..", "docs", page)));
    while (found.find()) {
      var row =
          new Row(
              Integer.parseInt(found.group(1)),
              found.group(3).strip(),
              found.group(4).strip(),
              found.group(5).strip(),
              found.group(6).strip());
      // a step on the way has no id; other rows point at its number
      var id = found.group(2) == null ? STEP + row.number() : found.group(2);
      assertThat(rows.put(id, row)).as("twice: " + id).isNull();
    }
    return rows;
  }

  private static Map<String, Line> lines(String workbook) {
    var scope = WorkbookReader.read(Examples.workbook(workbook), workbook).scope().orElseThrow();
    var lines = new LinkedHashMap<String, Line>();
    for (var l : Takeoff.measure(scope, Facts.supplied())) lines.put(l.id(), l);
    return lines;
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "takeoff-studio.md, studio-20hc-metric.xlsx",
    "takeoff-one-bedroom.md, one-bedroom-40hc.xlsx",
    "takeoff-two-boxes.md, two-bedroom-two-boxes.xlsx",
  })
  void every_line_is_what_the_hand_works_out(String page, String workbook) throws IOException {
    var rows = rows(page);
    var lines = lines(workbook);
    assertThat(rows.keySet().stream().filter(id -> !id.startsWith(STEP)))
        .containsExactlyInAnyOrderElementsOf(lines.keySet());
    var results = new Results(rows.values());
    rows.forEach(
        (id, row) -> {
          double byHand =
              HandArithmetic.worked("#" + row.number() + row.intoUnit(), results::ofRow);
          double shown = new BigDecimal(row.result()).doubleValue();
          int decimals = Math.max(0, new BigDecimal(row.result()).scale());
          assertThat(shown)
              .as(id + " as it is shown")
              .isCloseTo(byHand, within(Math.max(0.51 * Math.pow(10, -decimals), 1e-9)));
          if (id.startsWith(STEP)) return;
          var line = lines.get(id);
          assertThat(row.unit()).as(id).isEqualTo(line.shownIn().symbol());
          assertThat(line.quantity().asDouble(line.shownIn()))
              .as(id + " = " + row.arithmetic())
              .isCloseTo(byHand, within(1e-6 * Math.max(1, Math.abs(byHand))));
        });
  }

  /** Works rows out as they are asked for: a row may build on one further down, never on itself. */
  private static final class Results {
    private final Map<Integer, String> arithmetic = new HashMap<>();
    private final Map<Integer, Double> worked = new HashMap<>();
    private final Set<Integer> atWork = new HashSet<>();

    Results(Collection<Row> rows) {
      rows.forEach(r -> arithmetic.put(r.number(), r.arithmetic()));
    }

    double ofRow(int number) {
      var known = worked.get(number);
      if (known != null) return known;
      assertThat(arithmetic).as("rows").containsKey(number);
      assertThat(atWork.add(number)).as("row " + number + " builds on itself").isTrue();
      double result = HandArithmetic.worked(arithmetic.get(number), this::ofRow);
      worked.put(number, result);
      return result;
    }
  }

  @Test
  void a_row_that_builds_on_itself_is_refused() {
    var results =
        new Results(
            List.of(
                new Row(1, "#2 x 2", "", "0", ""),
                new Row(2, "#1 + 1", "", "0", ""),
                new Row(3, "#4 + 1", "", "0", ""),
                new Row(4, "2 x 3", "", "6", "")));
    assertThat(results.ofRow(3)).isEqualTo(7);
    assertThatThrownBy(() -> results.ofRow(1)).isInstanceOf(AssertionError.class);
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2 + 3 x 4 | 14
          (2 + 3) x 4 / 8 | 2.5
          10 - 2 - 3 | 5
          12 / 2 / 3 | 2
          up(6.01) + down(6.99) | 13
          up(0.1 x 3 / 0.1) | 3
          max(1, sqrt(16), 2) - min(3, 2) | 2
          #7 x 2 | 14
          """)
  void arithmetic_follows_the_usual_order(String text, double expected) {
    assertThat(HandArithmetic.worked(text, n -> n)).isCloseTo(expected, within(1e-12));
  }

  @Test
  void what_is_no_arithmetic_is_refused() {
    for (var text : new String[] {"2 +", "2 3 y", "(2", "root(4)", ""}) {
      assertThatThrownBy(() -> HandArithmetic.worked(text, n -> n))
          .as(text)
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}

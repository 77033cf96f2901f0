package cornerpost.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever the rules of ground, shell, outside and time ask for has a row of the right dimension.
 */
class PriceRowsTest {
  private static final Path BOOKS = Path.of("..", "price-books");

  @ParameterizedTest
  @ValueSource(strings = {"quarrow-plains-2026", "velmark-coast-2026"})
  void every_item_asked_for_is_priced_by_the_dimension_of_its_line(String book) throws IOException {
    var rows = rows(book, "items", "code");
    assertThat(missing(rows, itemsAskedFor(), "content unit")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"quarrow-plains-2026", "velmark-coast-2026"})
  void every_activity_asked_for_has_hours_by_the_dimension_of_its_line(String book)
      throws IOException {
    var rows = rows(book, "hours", "activity");
    assertThat(missing(rows, activitiesAskedFor(), "per")).isEmpty();
  }

  private static TreeSet<String> missing(
      Map<String, Map<String, String>> rows, Map<String, Dimension> asked, String unitColumn) {
    var missing = new TreeSet<String>();
    asked.forEach(
        (code, dimension) -> {
          var row = rows.get(code);
          if (row == null) missing.add(code + " (" + dimension + ")");
          else if (!Unit.get(row.get(unitColumn)).measures(dimension)) {
            missing.add(code + " is by " + row.get(unitColumn) + ", its line is a " + dimension);
          }
        });
    return missing;
  }

  private static Map<String, Dimension> itemsAskedFor() {
    var asked = new TreeMap<String, Dimension>();
    lines()
        .forEach(
            l -> {
              for (var r : l.resources()) {
                if (r instanceof Resource.Buy b) asked.put(b.item(), l.quantity().dimension());
              }
            });
    return asked;
  }

  private static Map<String, Dimension> activitiesAskedFor() {
    var asked = new TreeMap<String, Dimension>();
    lines()
        .forEach(
            l -> {
              for (var r : l.resources()) {
                if (r instanceof Resource.Labour w) {
                  asked.put(w.activity(), l.quantity().dimension());
                }
              }
            });
    return asked;
  }

  private static Stream<Line> lines() {
    return Variants.all(UnitSystem.METRIC).values().stream()
        .flatMap(s -> s.measured(GroundAndShellRules.ALL).stream());
  }

  private static Map<String, Map<String, String>> rows(String book, String folder, String key)
      throws IOException {
    var all = new LinkedHashMap<String, Map<String, String>>();
    try (var files = Files.list(BOOKS.resolve(book).resolve(folder))) {
      for (var file : files.sorted().toList()) {
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(Files.readString(file));
        while (rows.hasNext()) {
          var row = rows.next();
          all.put(row.get(key), row);
        }
      }
    }
    return all;
  }
}

package cornerpost.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.UnitSystem;
import cornerpost.price.PriceBook;
import cornerpost.price.PriceBookReader;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Joint;
import cornerpost.scope.Question;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is chosen, both supplied price books can price the inside of it. */
class InsidePricesTest {
  private static final List<Line> EVERY_OPTION = measureEveryOption();

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"quarrow-plains-2026", "velmark-coast-2026"})
  void every_option_has_prices_and_hours_in_units_that_fit(String name) throws IOException {
    var book = book(name);
    var missing = new LinkedHashSet<String>();
    int asked = 0;
    for (var line : EVERY_OPTION) {
      for (var r : line.resources()) {
        asked++;
        if (r instanceof Resource.Buy buy) {
          var item = book.findItem(buy.item());
          if (item.isEmpty()) missing.add("item " + buy.item());
          else if (!item.get().contentUnit().measures(line.quantity().dimension())) {
            missing.add("unit of " + buy.item() + " at " + line.id());
          }
        } else if (r instanceof Resource.Labour labour) {
          var hours = book.findHours(labour.activity());
          if (hours.isEmpty()) missing.add("hours " + labour.activity());
          else if (!hours.get().per().measures(line.quantity().dimension())) {
            missing.add("unit of " + labour.activity() + " at " + line.id());
          }
        }
      }
    }
    assertThat(asked).isGreaterThan(1000);
    assertThat(missing).isEmpty();
  }

  static List<Line> everyOption() {
    return EVERY_OPTION;
  }

  /** Each option of each list, one at a time, on a house that has every kind of room. */
  private static List<Line> measureEveryOption() {
    var lines = new ArrayList<Line>();
    var questions =
        Stream.of(
                EnvelopeQuestions.ALL,
                ServicesQuestions.ALL,
                FinishesQuestions.ALL,
                List.of(SiteQuestions.DIGGING))
            .flatMap(List::stream)
            .toList();
    for (Question q : questions) {
      for (var option : q.choices()) {
        Object value = q.kind() == Question.Kind.YES_NO ? option.equals("yes") : option;
        lines.addAll(
            InsideHouses.everyRoom(UnitSystem.METRIC).with(q, value).measured(InsideHouses.RULES));
      }
    }
    lines.addAll(stacked().measured(InsideHouses.RULES));
    return lines;
  }

  private static TestScopes stacked() {
    return TestScopes.metric()
        .box("A")
        .box("B", BoxQuestions.JOINED_TO, "A", BoxQuestions.JOINT, Joint.STACKED);
  }

  static PriceBook book(String name) throws IOException {
    var folder = Path.of("../price-books").resolve(name);
    var files = new TreeMap<String, byte[]>();
    try (var all = Files.walk(folder)) {
      for (var p : all.filter(f -> f.toString().endsWith(".csv")).toList()) {
        files.put(folder.relativize(p).toString().replace('\\', '/'), Files.readAllBytes(p));
      }
    }
    var read = PriceBookReader.read(name, files);
    assertThat(read.problems()).isEmpty();
    return read.book().orElseThrow();
  }
}

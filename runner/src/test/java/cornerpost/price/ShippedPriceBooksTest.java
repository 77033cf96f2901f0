package cornerpost.price;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Scope;
import cornerpost.scope.Trade;
import cornerpost.takeoff.Houses;
import cornerpost.takeoff.Takeoff;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The two price books that come with the program. */
public class ShippedPriceBooksTest {
  private static final Path FOLDER =
      Files.isDirectory(Path.of("price-books"))
          ? Path.of("price-books")
          : Path.of("..", "price-books");

  static Map<String, byte[]> files(String book) throws IOException {
    var root = FOLDER.resolve(book);
    var files = new TreeMap<String, byte[]>();
    try (var paths = Files.walk(root)) {
      for (var p : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
        files.put(root.relativize(p).toString().replace('\\', '/'), Files.readAllBytes(p));
      }
    }
    return files;
  }

  /** The shipped book of that name. */
  public static PriceBook shipped(String book) throws IOException {
    var result = PriceBookReader.read(book, files(book));
    assertThat(result.problems()).isEmpty();
    return result.book().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"quarrow-plains-2026", "velmark-coast-2026"})
  void every_row_loads_and_the_book_says_that_it_is_invented(String name) throws IOException {
    var book = shipped(name);
    assertThat(book.items()).isNotEmpty();
    assertThat(book.hours()).isNotEmpty();
    assertThat(book.rates()).hasSize(Trade.values().length);
    assertThat(book.region().climate()).hasSize(12);
    assertThat(book.region().notice()).contains("invented");
    var years = book.holidays().stream().map(h -> h.date().getYear()).distinct().toList();
    assertThat(years).containsExactly(2026, 2027, 2028, 2029);
  }

  @Test
  void both_books_price_the_same_codes() throws IOException {
    var quarrow = shipped("quarrow-plains-2026");
    var velmark = shipped("velmark-coast-2026");
    assertThat(quarrow.items().keySet())
        .containsExactlyInAnyOrderElementsOf(velmark.items().keySet());
    assertThat(quarrow.hours().keySet())
        .containsExactlyInAnyOrderElementsOf(velmark.hours().keySet());
    for (var code : quarrow.items().keySet()) {
      var a = quarrow.items().get(code);
      var b = velmark.items().get(code);
      assertThat(a.group()).as(code).isEqualTo(b.group());
      assertThat(a.kind()).as(code).isEqualTo(b.kind());
      assertThat(a.contentUnit().dimension()).as(code).isEqualTo(b.contentUnit().dimension());
    }
    for (var code : quarrow.hours().keySet()) {
      assertThat(quarrow.hours().get(code).per().dimension())
          .as(code)
          .isEqualTo(velmark.hours().get(code).per().dimension());
    }
  }

  @Test
  void every_choice_that_is_offered_can_be_priced_by_both() throws IOException {
    var books = List.of(shipped("quarrow-plains-2026"), shipped("velmark-coast-2026"));
    var facts = Facts.supplied();
    var lacking = new TreeSet<String>();
    var houses = new LinkedHashMap<>(Houses.everyChoice(UnitSystem.METRIC));
    assertThat(houses).hasSizeGreaterThan(200);
    houses.put("in feet", Houses.oneBedroom(UnitSystem.US, Map.of()));
    houses.forEach(
        (choice, scope) -> {
          var lines = Takeoff.measure(scope, facts);
          for (var book : books) {
            Needs.missing(scope, lines, book).stream()
                .map(p -> p.message().replaceAll(", needed by[^;]*", ""))
                .forEach(lacking::add);
          }
        });
    assertThat(lacking).isEmpty();
  }

  @Test
  void the_same_house_costs_about_the_same_in_either_units() throws IOException {
    // The same box, rooms and openings, in metres and in feet: only the standard answers differ a
    // little, as 1600 sq ft is not quite 150 m2.
    var book = shipped("velmark-coast-2026");
    var facts = Facts.supplied();
    var metric = total(Houses.oneBedroom(UnitSystem.METRIC, Map.of()), book, facts);
    var us = total(Houses.oneBedroom(UnitSystem.US, Map.of()), book, facts);
    assertThat(us / metric).isBetween(0.97, 1.03);
  }

  private static double total(Scope scope, PriceBook book, Facts facts) {
    var result =
        Estimator.estimate(
            scope, Takeoff.measure(scope, facts), java.util.Optional.of(book), facts);
    return result
        .estimate()
        .orElseThrow(() -> new AssertionError(result.problems()))
        .total()
        .doubleValue();
  }
}

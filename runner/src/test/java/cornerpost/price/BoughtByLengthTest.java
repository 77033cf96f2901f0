package cornerpost.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Scope;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.RandomHouses;
import cornerpost.takeoff.Resource;
import cornerpost.takeoff.Takeoff;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nothing bought by length goes without a cutting plan unless docs/method-cutting.md names it with
 * the reason.
 */
class BoughtByLengthTest {
  private static final Facts FACTS = Facts.supplied();
  private static final Pattern ROW = Pattern.compile("^\\| (`[^|]+) \\| ([^|]+) \\|$");

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  /** The items that the document names, each with a reason. */
  private static Set<String> notPlanned() throws IOException {
    var named = new TreeSet<String>();
    for (var text : Files.readAllLines(Path.of("..", "docs", "method-cutting.md"))) {
      var row = ROW.matcher(text);
      if (!row.matches()) continue;
      assertThat(row.group(2).strip()).as(text).hasSizeGreaterThan(5);
      for (var code : row.group(1).split(",")) {
        var bare = code.strip().replace("`", "");
        assertThat(named.add(bare)).as("twice: " + bare).isTrue();
      }
    }
    assertThat(named).hasSizeGreaterThan(30);
    return named;
  }

  private static boolean byLength(Item item) {
    return item.kind() == Item.Kind.MATERIAL
        && item.contentUnit().dimension().equals(Dimension.LENGTH);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"quarrow-plains-2026", "velmark-coast-2026"})
  void what_a_book_sells_by_length_is_cut_from_whole_bars_or_named_with_a_reason(String folder)
      throws IOException {
    var named = notPlanned();
    var book = ShippedPriceBooksTest.shipped(folder);
    for (var item : book.items().values()) {
      if (!byLength(item) || named.contains(item.code())) continue;
      assertThat(item.wholeOnly()).as(item.code() + " is sold by the bar").isTrue();
    }
    assertThat(book.items().keySet()).containsAll(named);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_line_says_its_pieces_where_its_item_is_planned_and_only_there(long seed)
      throws IOException {
    var named = notPlanned();
    boolean us = seed % 2 == 0;
    var book = ShippedPriceBooksTest.shipped(us ? "quarrow-plains-2026" : "velmark-coast-2026");
    var scope = RandomHouses.of(seed, us ? UnitSystem.US : UnitSystem.METRIC);
    for (var line : Takeoff.measure(scope, FACTS)) {
      var planned = new HashSet<String>();
      boolean lengths = false;
      for (var r : line.resources()) {
        if (!(r instanceof Resource.Buy buy)) continue;
        var item = book.findItem(buy.item()).orElseThrow();
        if (!byLength(item)) continue;
        lengths = true;
        if (!named.contains(item.code())) planned.add(item.code());
      }
      if (!lengths) continue;
      assertThat(!line.pieces().isEmpty())
          .as(line.id() + " says its pieces; planned: " + planned)
          .isEqualTo(!planned.isEmpty());
      // Openings drawn over each other are taken off twice: in one wall the reader refuses them,
      // and
      // a way to the next box that meets a window there is none.
      boolean drawnOver = line.id().equals("trim/house/skirting") && overlap(scope);
      if (!planned.isEmpty() && !drawnOver) piecesMakeUp(line);
    }
  }

  private static boolean overlap(Scope scope) {
    for (var a : scope.openings()) {
      for (var b : scope.openings()) {
        if (a.id().equals(b.id())) continue;
        double begins = a.offset().asDouble(Unit.M);
        double from = b.offset().asDouble(Unit.M);
        double to = from + b.width().asDouble(Unit.M);
        boolean sameWall = a.box().equals(b.box()) && a.wall() == b.wall();
        boolean facing =
            !a.box().equals(b.box())
                && (a.kind() == OpeningKind.PASS_THROUGH || b.kind() == OpeningKind.PASS_THROUGH);
        if ((sameWall || facing) && begins >= from && begins < to) return true;
      }
    }
    return false;
  }

  private static void piecesMakeUp(Line line) {
    double together = 0;
    for (var p : line.pieces()) {
      double length = p.length().asDouble(Unit.M);
      double count = p.count().asDouble(Unit.EACH);
      assertThat(length).as(line.id() + ": " + p.what()).isNotNegative();
      assertThat(count).as(line.id() + ": " + p.what()).isNotNegative();
      assertThat(count - Math.rint(count)).as(p.what()).isCloseTo(0, within(1e-9));
      together += length * count;
    }
    assertThat(together).as(line.id()).isCloseTo(line.quantity().asDouble(Unit.M), within(1e-9));
  }

  @Test
  void every_item_in_the_table_is_bought_by_length() throws IOException {
    var book = ShippedPriceBooksTest.shipped("velmark-coast-2026");
    for (var code : notPlanned()) {
      assertThat(byLength(book.findItem(code).orElseThrow())).as(code).isTrue();
    }
  }
}

package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Joint;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Stage;
import cornerpost.scope.Trade;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Hours of ground, shell, outside and time against published rates and the trade's rules of thumb.
 */
class HoursTest {
  private static final Map<String, Map<String, String>> US = rows("quarrow-plains-2026");
  private static final Map<String, Map<String, String>> METRIC = rows("velmark-coast-2026");

  // Man-hours a unit. Industrial Process Plant Construction Estimating and Man-Hour Analysis,
  // schedule G; placing: F. R. Dagostino, Estimating in Building Construction, figure 10.17.
  @ParameterizedTest(name = "{0}: {1} h a {2}")
  @CsvSource({
    "dig-by-machine, 0.20, cu yd",
    "dig-by-hand, 2.80, cu yd",
    "backfill-by-machine, 0.60, cu yd",
    "backfill-by-hand, 3.00, cu yd",
    "make-formwork, 0.25, sq ft",
    "make-wall-formwork, 0.20, sq ft",
    "fix-rebar, 0.03, lb",
    "fix-mesh, 0.02, sq ft",
    "set-anchor-bolt, 0.25, each",
    "finish-slab, 0.12, sq ft",
    "place-concrete-strips, 0.40, cu yd",
    "place-concrete-pads, 0.873, cu yd",
    "place-concrete-slab, 0.320, cu yd",
    "place-concrete-piers, 0.80, cu yd",
    "paint-outside-wall, 0.0100, sq ft",
  })
  void likely_hours_are_the_published_ones(String activity, double hours, String per) {
    assertThat(US.get(activity)).containsEntry("per", per);
    assertThat(likely(US, activity)).isCloseTo(hours, within(hours * 0.015));
  }

  @Test
  void both_books_have_the_same_hours_in_their_own_units() {
    assertThat(US.keySet()).isEqualTo(METRIC.keySet());
    for (var activity : US.keySet()) {
      double us = likely(US, activity) / factor(US, activity);
      double metric = likely(METRIC, activity) / factor(METRIC, activity);
      assertThat(us).as(activity).isCloseTo(metric, within(metric * 0.001));
    }
  }

  // Setting one box by crane 4 to 6 h, off a tilt-bed 6 to 10 h; shimming, levelling and fixing
  // down 4 to 8 h; 40 ft joint of two boxes 16 to 24 h: common practice, no source.
  @Test
  void setting_and_joining_take_what_the_trade_says() {
    var lines =
        Variants.joined(UnitSystem.METRIC, Joint.SIDE_BY_SIDE).measured(GroundAndShellRules.ALL);
    assertThat(hours(lines, l -> l.id().equals("box/A/set"))).isBetween(4.0, 6.0);
    assertThat(likely(METRIC, "set-box-off-truck")).isBetween(6.0, 10.0);
    assertThat(hours(lines, l -> l.id().matches("box/A/(level|fix-down)"))).isBetween(4.0, 8.0);
    assertThat(hours(lines, l -> l.id().startsWith("joint/"))).isBetween(16.0, 24.0);
  }

  // All steelwork of an opening - mark, cut, frame, weld, grind, prime: door 0.9 x 2.1 m 10 to 16
  // h, window 1.2 x 1.2 m 8 to 12 h: common practice, no source.
  @ParameterizedTest(name = "{0} {1} x {2}")
  @CsvSource({"DOOR, 900, 2100, 10, 16", "WINDOW, 1200, 1200, 8, 12"})
  void steelwork_of_an_opening_takes_what_the_trade_says(
      OpeningKind kind, String width, String height, double least, double most) {
    var lines =
        TestScopes.metric()
            .opening("X", "A", Wall.LEFT, kind, width, height)
            .measured(GroundAndShellRules.ALL);
    assertThat(hours(lines, l -> l.id().startsWith("opening/X/"), Trade.STEELWORK))
        .isBetween(least, most);
    double yard =
        likely(METRIC, "cut-sheet-yard") / likely(METRIC, "cut-sheet"); // a yard is quicker
    assertThat(yard).isLessThan(1);
  }

  // A complete deck 0.65 to 0.86 h a square metre (from memory), less its footings and guard.
  @Test
  void a_deck_takes_what_the_trade_says() {
    var lines = TestScopes.metric().measured(GroundAndShellRules.ALL);
    double area = amount(lines, "deck/area", Unit.M2);
    double hours =
        hours(lines, l -> l.id().matches("deck/(area|joists|beams|posts)") && inStage(l));
    assertThat(hours / area).isBetween(0.60, 0.90);
  }

  private static boolean inStage(Line line) {
    return line.stage() == Stage.OUTSIDE;
  }

  private static double hours(List<Line> lines, Predicate<Line> which) {
    return hours(lines, which, null);
  }

  private static double hours(List<Line> lines, Predicate<Line> which, Trade trade) {
    double sum = 0;
    for (var l : lines) {
      if (!which.test(l)) continue;
      for (var r : l.resources()) {
        if (!(r instanceof Resource.Labour w) || (trade != null && w.trade() != trade)) continue;
        var unit = Unit.get(METRIC.get(w.activity()).get("per"));
        sum += l.quantity().asDouble(unit) * likely(METRIC, w.activity());
      }
    }
    return sum;
  }

  private static double likely(Map<String, Map<String, String>> book, String activity) {
    return Double.parseDouble(book.get(activity).get("likely"));
  }

  /** Base units in one unit that the hours are for. */
  private static double factor(Map<String, Map<String, String>> book, String activity) {
    var unit = Unit.get(book.get(activity).get("per"));
    return Figure.constant("1", unit).value().doubleValue();
  }

  private static Map<String, Map<String, String>> rows(String book) {
    var all = new LinkedHashMap<String, Map<String, String>>();
    for (var file : List.of("ground", "shell", "outside", "time")) {
      var path = Path.of("..", "price-books", book, "hours", file + ".csv");
      try {
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(Files.readString(path));
        while (rows.hasNext()) {
          var row = rows.next();
          all.put(row.get("activity"), row);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return all;
  }
}

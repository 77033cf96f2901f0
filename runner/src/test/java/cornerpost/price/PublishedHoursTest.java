package cornerpost.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.scope.Trade;
import cornerpost.trace.Figure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Hours and crews of the supplied books against docs/method-labour.md and the trade. */
class PublishedHoursTest {
  private static final Pattern RATE =
      Pattern.compile(
          "^\\| `([^`]+)` \\| ([\\d.]+) \\| ([^|]+) \\| (low|likely|high|between) \\| [^|]+ \\|$",
          Pattern.MULTILINE);
  private static final Pattern CREW =
      Pattern.compile("^\\| ([A-Z][^|]+) \\| (\\d) \\| [^|]+ \\|$", Pattern.MULTILINE);

  private static String page() throws IOException {
    return Files.readString(Path.of("..", "docs", "method-labour.md"));
  }

  private static PriceBook book(String name) throws IOException {
    return ShippedPriceBooksTest.shipped(name);
  }

  /** Hours for one of a unit, from hours for another. */
  private static double per(Unit wanted, HoursPerUnit row, double hours) {
    return hours
        * Figure.constant("1", wanted).value().doubleValue()
        / Figure.constant("1", row.per()).value().doubleValue();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"quarrow-plains-2026", "velmark-coast-2026"})
  void rows_with_a_published_source_have_its_hours(String name) throws IOException {
    var hours = book(name).hours();
    var rates = RATE.matcher(page());
    var named = new TreeSet<String>();
    while (rates.find()) {
      var activity = rates.group(1);
      var row = hours.get(activity);
      assertThat(row).as(activity).isNotNull();
      named.add(activity);
      double published = Double.parseDouble(rates.group(2));
      var unit = Unit.get(rates.group(3).strip());
      double low = per(unit, row, row.low().doubleValue());
      double likely = per(unit, row, row.likely().doubleValue());
      double high = per(unit, row, row.high().doubleValue());
      switch (rates.group(4)) {
        case "low" -> assertThat(low).as(activity).isCloseTo(published, within(published * 0.025));
        case "high" ->
            assertThat(high).as(activity).isCloseTo(published, within(published * 0.025));
        case "between" -> assertThat(published).as(activity).isBetween(low, high);
        default -> assertThat(likely).as(activity).isCloseTo(published, within(published * 0.025));
      }
    }
    var publishing = new TreeSet<String>();
    hours.forEach(
        (activity, row) -> {
          assertThat(row.source()).as(activity).isNotBlank();
          boolean marked =
              row.source().startsWith("common practice, no source")
                  || row.source().startsWith("from memory");
          if (!marked) publishing.add(activity);
        });
    assertThat(named).isEqualTo(publishing);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"quarrow-plains-2026", "velmark-coast-2026"})
  void crews_are_those_of_the_document(String name) throws IOException {
    var crews = CREW.matcher(page());
    var found = EnumSet.noneOf(Trade.class);
    while (crews.find()) {
      var label = crews.group(1).strip();
      var trade =
          Stream.of(Trade.values()).filter(t -> t.label().equals(label)).findFirst().orElseThrow();
      found.add(trade);
      assertThat(book(name).rates().get(trade).usualCrew())
          .as(label)
          .isEqualTo(Integer.parseInt(crews.group(2)));
    }
    assertThat(found).isEqualTo(EnumSet.allOf(Trade.class));
  }

  /**
   * One activity of each trade, its likely hours within what is said elsewhere. Handbooks as
   * remembered unless the row says: estimating handbooks and a published work-element table.
   */
  @ParameterizedTest(name = "{0}: {1}, {3} to {4} h a {2}")
  @CsvSource({
    // Industrial Process Plant Construction Estimating and Man-Hour Analysis, schedule G
    "groundworks, dig-by-machine, cu yd, 0.19, 0.21",
    "foundations, make-formwork, sq ft, 0.24, 0.28",
    "utility connections, trench-hand, cu yd, 2.7, 2.9",
    // 4 to 6 hours by crane on ready piers: common practice, no source
    "delivery and setting, set-box-by-crane, each, 4, 6",
    // sheet of 1.6 to 2 mm by plasma or disc 0.05 to 0.17 h a foot: common practice, no source
    "steelwork and openings, cut-sheet, ft, 0.05, 0.17",
    // published work-element table: casement 4 h, x 0.75 for power tools
    "windows and doors, set-opening-window, each, 2.9, 4",
    // metal roof sheets 0.02 to 0.035, deck boards 0.03 to 0.04 h a square foot: from memory
    "roofing and cladding, lay-roof-sheet, sq ft, 0.02, 0.035",
    "deck and outside works, lay-deck-softwood, sq ft, 0.03, 0.04",
    // F. R. Dagostino, fig. 13.55: 0.018 to 0.024 h a square foot of wall
    "framing, frame-partition-timber, sq ft, 0.018, 0.024",
    // from memory
    "electrical, electrical-rough-in, each, 0.8, 1.2",
    "electrical, electrical-trim, each, 0.25, 0.35",
    "electrical, fit-panel, each, 10, 16",
    "plumbing, plumbing-set, each, 2, 4",
    "plumbing, set-water-heater, each, 4, 6",
    "insulation, fit-batts, sq ft, 0.007, 0.012",
    "boarding and plastering, board-walls, sq ft, 0.017, 0.0205",
    "boarding and plastering, board-ceilings, sq ft, 0.021, 0.0245",
    // I. S. Griffith, Carpentry, 1916: 150 sq ft an hour
    "painting, paint-first-coat, sq ft, 0.0060, 0.0068",
    // from memory; tile on backer board takes more than the 0.10 h of a plain floor
    "flooring, lay-plank-floor, sq ft, 0.03, 0.05",
    "tiling, lay-wall-tiles, sq ft, 0.15, 0.17",
    // F. R. Dagostino: baseboard 1.5 to 2.5 h for 100 ft
    "kitchen and joinery, fit-skirting, ft, 0.015, 0.025",
  })
  void likely_hours_of_each_trade_are_within_what_is_said_elsewhere(
      String trade, String activity, String unit, double least, double most) throws IOException {
    assertThat(Stream.of(Trade.values()).map(t -> t.label().toLowerCase(Locale.ROOT)))
        .contains(trade);
    for (var name : List.of("quarrow-plains-2026", "velmark-coast-2026")) {
      var row = book(name).hours().get(activity);
      assertThat(per(Unit.get(unit), row, row.likely().doubleValue()))
          .as(name)
          .isBetween(least, most);
    }
  }

  // A fixture 3 to 5 h to rough in, water and waste together; one split unit 8 to 12 h with its
  // line, 3 to 5 m of it: from memory.
  @Test
  void a_fixture_and_a_split_unit_take_what_handbooks_say_in_all() throws IOException {
    var hours = book("velmark-coast-2026").hours();
    assertThat(
            likely(hours.get("plumbing-rough-waste")) + likely(hours.get("plumbing-rough-supply")))
        .isBetween(3.0, 5.0);
    double metre = per(Unit.M, hours.get("run-split-line"), likely(hours.get("run-split-line")));
    double set =
        Stream.of("hang-outdoor-unit", "hang-indoor-unit", "fit-split-bracket")
            .mapToDouble(a -> likely(hours.get(a)))
            .sum();
    assertThat(set + 3 * metre).isBetween(8.0, 12.0);
    assertThat(set + 5 * metre).isBetween(8.0, 12.0);
  }

  private static double likely(HoursPerUnit row) {
    return row.likely().doubleValue();
  }
}

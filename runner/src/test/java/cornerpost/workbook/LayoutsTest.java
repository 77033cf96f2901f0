package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.takeoff.Takeoff;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutsTest {
  static Stream<String> names() {
    return Layouts.names().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("names")
  void a_layout_lacks_nothing_but_its_start_date(String name) {
    for (var units : UnitSystem.values()) {
      var reading = WorkbookReader.read(Layouts.workbook(name, units).orElseThrow(), name);
      assertThat(reading.problems())
          .as(units.toString())
          .singleElement()
          .satisfies(p -> assertThat(p.message()).contains("Start date"));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("names")
  void its_rooms_fill_the_box_and_the_deck_runs_along_it(String name) {
    var facts = Facts.supplied();
    var entries = Layouts.entries(name, UnitSystem.METRIC).orElseThrow();
    entries.answer(ProjectQuestions.START, "2027-03-01");
    var reading = WorkbookReader.read(TemplateWriter.write(entries, facts), name);
    assertThat(reading.problems()).isEmpty();
    var scope = reading.scope().orElseThrow();
    for (var box : scope.boxes()) {
      double inside = box.fact(facts, "inside-length").asDouble(Unit.M);
      double rooms =
          scope.roomsOf(box).stream().mapToDouble(r -> r.length().asDouble(Unit.M)).sum();
      assertThat(rooms).isCloseTo(inside, within(0.002));
    }
    var lines = Takeoff.measure(scope, facts);
    var deck = lines.stream().filter(l -> l.id().equals("deck/beams")).findFirst().orElseThrow();
    assertThat(deck.quantity().isZero()).isFalse();
    assertThat(lines).allSatisfy(l -> assertThat(l.quantity().value()).isNotNegative());
  }

  @Test
  void every_length_has_its_layouts() {
    assertThat(Layouts.names())
        .contains(
            "open-10",
            "studio-20",
            "studio-20hc",
            "one-bedroom-40hc",
            "one-bedroom-bath-last-40hc",
            "two-bedrooms-living-between-40hc",
            "two-bedrooms-living-beside-40hc",
            "two-boxes-40hc",
            "one-bedroom-45hc",
            "one-bedroom-53hc")
        .doesNotContain("studio-10", "one-bedroom-20");
    assertThat(Layouts.workbook("castle-40", UnitSystem.METRIC)).isEmpty();
  }
}

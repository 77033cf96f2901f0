package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Wall;
import cornerpost.trace.Leaf;
import cornerpost.trace.Places;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold whatever the choices are. */
class MeasureLawsTest {
  private static final List<TakeoffRule> RULES = GroundAndShellRules.ALL;

  /** Boards are sawn to another width where boards are bought by the foot. */
  private static final Set<String> SAWN_TO_ANOTHER_WIDTH =
      Set.of("deck/board-rows", "deck/boards", "deck/screws");

  private static final Map<String, TestScopes> METRIC = Variants.all(UnitSystem.METRIC);
  private static final Map<String, List<Line>> METRIC_LINES = measured(METRIC);
  private static final Map<String, List<Line>> US_LINES = measured(Variants.all(UnitSystem.US));

  static Stream<String> variants() {
    return METRIC.keySet().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("variants")
  void no_quantity_is_below_nothing(String variant) {
    for (var l : lines(UnitSystem.METRIC, variant)) {
      assertThat(l.quantity().value()).as(l.id()).isNotNegative();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("variants")
  void metric_and_customary_workbooks_give_the_same_quantities(String variant) {
    var metric = lines(UnitSystem.METRIC, variant);
    var us = lines(UnitSystem.US, variant);
    assertThat(us.stream().map(Line::id).toList())
        .isEqualTo(metric.stream().map(Line::id).toList());
    for (int i = 0; i < us.size(); i++) {
      var a = metric.get(i);
      if (SAWN_TO_ANOTHER_WIDTH.contains(a.id())) continue;
      double value = a.quantity().value().doubleValue();
      assertThat(us.get(i).quantity().value().doubleValue())
          .as(a.id())
          .isCloseTo(value, within(1e-9 * Math.max(1, value)));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("variants")
  void walls_net_and_openings_make_up_the_gross(String variant) {
    var lines = lines(UnitSystem.METRIC, variant);
    assertThat(
            amount(lines, "shell/outside-wall-area", Unit.M2)
                + amount(lines, "shell/opening-area", Unit.M2))
        .isCloseTo(amount(lines, "shell/outside-wall-gross", Unit.M2), within(1e-9));
    double units =
        METRIC.get(variant).scope().openings().stream()
            .filter(o -> Shape.takesUnit(o) && o.wall() != Wall.ROOF)
            .mapToDouble(MeasureLawsTest::hole)
            .sum();
    assertThat(amount(lines, "shell/opening-area", Unit.M2)).isCloseTo(units, within(1e-9));
  }

  private static double hole(Opening o) {
    return o.width().asDouble(Unit.M) * o.height().asDouble(Unit.M);
  }

  /** So that an edit in the result workbook carries through to the money. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("variants")
  void every_quantity_is_reached_by_live_formulas(String variant) {
    for (var l : lines(UnitSystem.METRIC, variant)) {
      assertThat(l.quantity().allLeaves())
          .as(l.id())
          .noneMatch(leaf -> leaf.kind() == Leaf.Kind.WORKED);
      // a spreadsheet cell holds 8 192 characters of formula
      assertThat(l.quantity().formula(anywhere(), l.shownIn()).length())
          .as(l.id())
          .isLessThan(8192);
    }
  }

  /** Cell references as long as they get. */
  private static Places anywhere() {
    return new Places() {
      @Override
      public String cell(Leaf leaf) {
        return "'Site and foundation'!$D$1000";
      }

      @Override
      public Shown named(String id) {
        return new Shown("'Quantities'!$D$1000", Unit.M);
      }
    };
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void a_wider_opening_never_needs_less(long seed) {
    var random = new Random(seed);
    var kind = OpeningKind.values()[random.nextInt(OpeningKind.values().length)];
    var wall = Wall.values()[random.nextInt(Wall.values().length)];
    int width = 300 + random.nextInt(2000);
    int wider = width + 1 + random.nextInt(800);
    int height = 300 + random.nextInt(1800);
    var narrow = opening(kind, wall, width, height);
    var wide = opening(kind, wall, wider, height);
    var about =
        narrow.stream()
            .filter(l -> l.id().startsWith("opening/") || l.id().startsWith("frame/"))
            .collect(Collectors.toList());
    assertThat(about).isNotEmpty();
    for (var l : about) {
      assertThat(TestScopes.line(wide, l.id()).quantity().value())
          .as(l.id())
          .isGreaterThanOrEqualTo(l.quantity().value());
    }
  }

  private static List<Line> opening(OpeningKind kind, Wall wall, int width, int height) {
    return TestScopes.metric()
        .opening("X", "A", wall, kind, "" + width, "" + height)
        .measured(RULES);
  }

  private static Map<String, List<Line>> measured(Map<String, TestScopes> houses) {
    return houses.entrySet().stream()
        .collect(
            Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> e.getValue().measured(RULES)));
  }

  private static List<Line> lines(UnitSystem units, String variant) {
    return (units == UnitSystem.METRIC ? METRIC_LINES : US_LINES).get(variant);
  }
}

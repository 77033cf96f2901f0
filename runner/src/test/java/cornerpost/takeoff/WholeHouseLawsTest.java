package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.BoxSize;
import cornerpost.scope.Foundation;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Wall;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of the whole take-off that hold for any house, on houses drawn by a seed. */
class WholeHouseLawsTest {
  /** Boards are sawn to another width where boards are bought by the foot. */
  private static final Set<String> SAWN_TO_ANOTHER_WIDTH =
      Set.of("deck/board-rows", "deck/boards", "deck/screws");

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static List<Line> drawn(long seed) {
    return RandomHouses.house(seed, UnitSystem.METRIC, 0).measured();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void no_quantity_is_below_nothing(long seed) {
    for (var l : drawn(seed)) assertThat(l.quantity().value()).as(l.id()).isNotNegative();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void net_walls_and_openings_make_the_gross(long seed) {
    var lines = drawn(seed);
    for (var side :
        List.of(
            "shell/outside-wall-gross shell/outside-wall-area shell/opening-area",
            "inside/wall-gross inside/wall-area inside/wall-openings")) {
      var ids = side.split(" ");
      assertThat(amount(lines, ids[1], Unit.M2) + amount(lines, ids[2], Unit.M2))
          .as(side)
          .isCloseTo(amount(lines, ids[0], Unit.M2), within(1e-9));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void metric_and_customary_entries_make_the_same_house(long seed) {
    var metric = drawn(seed);
    var us = RandomHouses.house(seed, UnitSystem.US, 0).measured();
    assertThat(us.stream().map(Line::id).toList())
        .isEqualTo(metric.stream().map(Line::id).toList());
    for (int i = 0; i < us.size(); i++) {
      if (SAWN_TO_ANOTHER_WIDTH.contains(us.get(i).id())) continue;
      double value = metric.get(i).quantity().value().doubleValue();
      assertThat(us.get(i).quantity().value().doubleValue())
          .as(us.get(i).id())
          .isCloseTo(value, within(1e-9 * Math.max(1, value)));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void wider_openings_never_need_less_frame(long seed) {
    var wide = RandomHouses.house(seed, UnitSystem.METRIC, 40 + (int) (seed * 30)).measured();
    for (var l : drawn(seed)) {
      boolean frame =
          l.id().startsWith("opening/")
              || l.id().startsWith("frame/")
              || l.id().contains("/strengthening-");
      if (!frame) continue;
      assertThat(TestScopes.line(wide, l.id()).quantity().value())
          .as(l.id())
          .isGreaterThanOrEqualTo(l.quantity().value());
    }
  }

  @ParameterizedTest
  @EnumSource(Foundation.class)
  void twice_the_boxes_take_twice_the_ground_and_the_shell(Foundation foundation) {
    for (var size : BoxSize.values()) {
      var one = boxes(foundation, size, "A");
      var two = boxes(foundation, size, "A", "B");
      for (var l : one) {
        if (!doubles(l)) continue;
        assertThat(TestScopes.line(two, l.id()).quantity().value().doubleValue())
            .as(size.label() + ": " + l.id())
            .isCloseTo(2 * l.quantity().value().doubleValue(), within(1e-9));
      }
    }
  }

  /** All rules, with a fit-out that doubles: panel and water heater a house has once. */
  private static final List<TakeoffRule> ALLOWED =
      Takeoff.RULES.stream().map(r -> r instanceof OwnMass ? new AllowedFitOut() : r).toList();

  /** What belongs to boxes; not what the house has once, and not what comes in whole pieces. */
  private static boolean doubles(Line l) {
    return Set.of(
            "shell/floor-area",
            "shell/plan-area",
            "shell/outline",
            "shell/outside-wall-gross",
            "shell/opening-area",
            "shell/outside-wall-area",
            "shell/outside-wall-developed",
            "shell/roof-area",
            "supports/count",
            "supports/plates",
            "supports/packers",
            "supports/anchor-bolts",
            "footing/pads/concrete",
            "footing/pads/reinforcement",
            "footing/piers/concrete",
            "footing/piers/formwork",
            "footing/piers/reinforcement",
            "footing/piles/count",
            "footing/piles/length",
            "footing/strips/length",
            "footing/strips/area",
            "footing/strips/concrete",
            "footing/stems/area",
            "footing/stems/concrete",
            "footing/precast/pads",
            "footing/precast/blocks",
            "footing/skids/length",
            "footing/skids/anchors",
            "ground-cover/membrane",
            "ground-cover/gravel",
            "walls/paint",
            "frame/shs-50x50x3/bars",
            "ceiling-battens/house/length",
            "insulation/walls/volume")
        .contains(l.id());
  }

  private static List<Line> boxes(Foundation foundation, BoxSize size, String... ids) {
    var house = TestScopes.metric().with(SiteQuestions.FOUNDATION, foundation);
    for (var id : ids) {
      house
          .box(id, BoxQuestions.SIZE, size)
          .opening("W" + id, id, Wall.LEFT, OpeningKind.WINDOW, "900", "1000");
    }
    return house.measured(ALLOWED);
  }
}

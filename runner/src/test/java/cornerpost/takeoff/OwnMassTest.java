package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.has;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Foundation;
import cornerpost.scope.FrameSection;
import cornerpost.scope.Joint;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.RoomUse;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.SoilClass;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OwnMassTest {
  /** By hand from the density of softwood in ISO 10456, 500 kg/m3: 0.038 x 0.089 x 500 = 1.691. */
  @ParameterizedTest(name = "{0} weighs {1} kg a metre")
  @CsvSource({
    "stud-timber-38x38, 0.722",
    "stud-timber-38x89, 1.691",
    "stud-timber-38x140-treated, 2.66"
  })
  void timber_weighs_its_section_times_its_density(String item, double kg) {
    var fact = Facts.supplied().figure("mass.of." + item);
    assertThat(fact.value().doubleValue()).isCloseTo(kg, within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void the_house_weighs_what_its_boxes_weigh(long seed) {
    var scope = RandomHouses.of(seed, UnitSystem.METRIC);
    adds(
        Takeoff.measure(scope, TestScopes.FACTS), scope.boxes().stream().map(b -> b.id()).toList());
  }

  @Test
  void the_boxes_share_all_that_is_measured_whatever_the_choices() {
    for (var house : Variants.all(UnitSystem.METRIC).values()) {
      var scope = house.scope();
      adds(
          Takeoff.measure(scope, TestScopes.FACTS),
          scope.boxes().stream().map(b -> b.id()).toList());
    }
  }

  /** The sum by boxes against the plainer one: every line once, frames by their own mass. */
  private static void adds(List<Line> lines, List<String> boxes) {
    double total = 0;
    double fitOut = 0;
    double tares = 0;
    for (var box : boxes) {
      total += amount(lines, "mass/box/" + box + "/total", Unit.KG);
      fitOut += amount(lines, "mass/box/" + box + "/fit-out", Unit.KG);
      tares +=
          amount(lines, "mass/box/" + box + "/total", Unit.KG)
              - amount(lines, "mass/box/" + box + "/fit-out", Unit.KG);
      assertThat(amount(lines, "load/" + box, Unit.KG))
          .isGreaterThan(amount(lines, "mass/box/" + box + "/total", Unit.KG));
    }
    assertThat(amount(lines, "mass/total", Unit.KG)).isCloseTo(total, within(1e-6));
    assertThat(amount(lines, "mass/fit-out", Unit.KG)).isCloseTo(fitOut, within(1e-6));
    assertThat(tares).isGreaterThan(1000);
    double each = 0;
    for (var l : lines) {
      if (Set.of(Stage.PREPARATION, Stage.FOUNDATION, Stage.CLOSE_OUT).contains(l.stage()))
        continue;
      if (l.id().endsWith("/frame-steel")) each += l.quantity().asDouble(Unit.KG);
      if (l.id().startsWith("opening/") && l.id().endsWith("/steel-removed")) {
        each -= l.quantity().asDouble(Unit.KG);
      }
      for (var r : l.resources()) {
        if (!(r instanceof Resource.Buy buy)) continue;
        var fact = TestScopes.FACTS.find("mass.of." + buy.item());
        if (fact.isPresent()) {
          each += l.quantity().times(fact.get().figure()).asDouble(Unit.KG);
        }
      }
    }
    assertThat(fitOut).isCloseTo(each, within(1e-6));
  }

  private static final List<String> OF_BOXES =
      List.of("shell", "framing", "finishes", "steel-out", "lift");

  @Test
  void two_like_boxes_weigh_twice_what_one_weighs() {
    var one = window(coated().box("A"), "A").measured();
    var two = window(window(coated().box("A").box("B"), "A"), "B").measured();
    for (var part : OF_BOXES) {
      double a = amount(one, "mass/box/A/" + part, Unit.KG);
      assertThat(a).as(part).isPositive();
      assertThat(amount(two, "mass/box/A/" + part, Unit.KG)).as(part).isCloseTo(a, within(1e-9));
      assertThat(amount(two, "mass/box/B/" + part, Unit.KG)).as(part).isCloseTo(a, within(1e-9));
    }
    for (var part : List.of("house/insulation", "house/outside", "roof")) {
      assertThat(amount(two, "mass/" + part, Unit.KG))
          .as(part)
          .isCloseTo(2 * amount(one, "mass/" + part, Unit.KG), within(1e-9));
    }
    // what the house has once stands in the first box, where the services enter
    assertThat(has(two, "mass/box/B/services")).isFalse();
  }

  /** A roof that comes in no whole pieces. */
  private static TestScopes coated() {
    return TestScopes.metric().with(DeckAndRoofQuestions.ROOF, RoofBuild.COATING);
  }

  private static TestScopes window(TestScopes house, String box) {
    return house.opening(
        "W" + box,
        box,
        Wall.LEFT,
        OpeningKind.WINDOW,
        "900",
        "1000",
        OpeningQuestions.FRAME,
        FrameSection.SHS_50_4);
  }

  @Test
  void a_kitchen_stands_in_its_box_and_an_upper_box_bears_the_roof() {
    var lines =
        Variants.joined(UnitSystem.METRIC, Joint.STACKED)
            .room("Living", "A", RoomUse.LIVING_KITCHEN, "12.032")
            .room("Bed", "B", RoomUse.BEDROOM, "12.032")
            .measured();
    double kitchens = amount(lines, "mass/kitchens", Unit.KG);
    double roof = amount(lines, "mass/roof", Unit.KG);
    assertThat(kitchens).isPositive();
    assertThat(roof).isPositive();
    double house = 0;
    for (var l : lines) {
      if (l.id().startsWith("mass/house/")) house += l.quantity().asDouble(Unit.KG);
    }
    // like boxes share what is measured for the whole house by half
    assertThat(amount(lines, "mass/box/A/fit-out", Unit.KG))
        .isCloseTo(house / 2 + own(lines, "A") + kitchens, within(1e-6));
    assertThat(amount(lines, "mass/box/B/fit-out", Unit.KG))
        .isCloseTo(house / 2 + own(lines, "B") + roof + wet(lines), within(1e-6));
  }

  /** No bathroom: what there is of wet rooms is shared. */
  private static double wet(List<Line> lines) {
    return has(lines, "mass/wet-rooms") ? amount(lines, "mass/wet-rooms", Unit.KG) / 2 : 0;
  }

  private static double own(List<Line> lines, String box) {
    double sum = 0;
    for (var l : lines) {
      if (!l.id().startsWith("mass/box/" + box + "/")) continue;
      var part = l.id().substring(l.id().lastIndexOf('/') + 1);
      if (Set.of("fit-out", "total", "lift", "hook-load").contains(part)) continue;
      sum += (part.equals("steel-out") ? -1 : 1) * l.quantity().asDouble(Unit.KG);
    }
    return sum;
  }

  // By hand: a window of 1.2 x 1.05 m framed in 50x50x4 tube, centre line 4.70 m x 5.45 kg/m = 25.6
  // kg in; 1.26 m2 x 13.37 kg/m2 = 16.85 kg of side wall out; drip bar 1.32 m x 2.42 kg/m and
  // closure plates 2.4 m x 1.413 kg/m are welded in the yard too.
  @Test
  void a_box_cut_in_a_yard_is_lifted_with_its_frames() {
    var onSite = yard(ModifiedWhere.ON_SITE);
    var inYard = yard(ModifiedWhere.IN_YARD);
    double tare = TestScopes.FACTS.figure("box.40hc.tare").asDouble(Unit.KG);
    assertThat(amount(onSite, "mass/box/A/lift", Unit.KG)).isCloseTo(tare, within(1e-9));
    double drip = amount(inYard, "opening/W/drip-bar", Unit.M) * 2.42;
    double closure = amount(inYard, "opening/W/closure-strip", Unit.M) * 1.413;
    double touchUp = amount(inYard, "opening/W/touch-up", Unit.LITRE) * 0.8;
    assertThat(amount(inYard, "mass/box/A/lift", Unit.KG))
        .isCloseTo(tare + 25.615 - 16.846 + drip + closure + touchUp, within(0.01));
    // rigging 400 kg and 10 %: common practice
    assertThat(amount(inYard, "crane/hook-load", Unit.KG))
        .isCloseTo((amount(inYard, "mass/box/A/lift", Unit.KG) + 400) * 1.1, within(1e-6));
  }

  private static List<Line> yard(ModifiedWhere where) {
    return TestScopes.metric()
        .box("A", BoxQuestions.MODIFIED, where)
        .opening(
            "W",
            "A",
            Wall.LEFT,
            OpeningKind.WINDOW,
            "1200",
            "1050",
            OpeningQuestions.FRAME,
            FrameSection.SHS_50_4)
        .measured();
  }

  /** Pressure x area = load, for every kind of foundation, on weak and on strong ground. */
  @ParameterizedTest
  @EnumSource(Foundation.class)
  void pressure_times_area_is_the_load(Foundation kind) {
    for (var soil : SoilClass.values()) {
      for (var joint : Joint.values()) {
        var house =
            Variants.joined(UnitSystem.METRIC, joint)
                .with(SiteQuestions.FOUNDATION, kind)
                .with(SiteQuestions.SOIL, soil);
        var lines = house.measured();
        double bearing = TestScopes.FACTS.figure(soil.factId() + ".bearing").asDouble(Unit.KPA);
        double carried = 0;
        for (var l : lines) {
          if (l.id().startsWith("footing/") && l.id().endsWith("/pressure")) {
            boolean sized = kind != Foundation.SKIDS;
            if (sized) {
              assertThat(l.quantity().asDouble(Unit.KPA))
                  .as(l.id())
                  .isLessThanOrEqualTo(bearing + 1e-9);
            }
            carried += l.quantity().value().doubleValue() * area(lines, l.id(), kind);
          }
          if (l.id().startsWith("footing/piles/") && l.id().endsWith("/load")) {
            var group = l.id().substring("footing/piles/".length(), l.id().length() - 5);
            carried +=
                l.quantity().asDouble(Unit.KG)
                    * amount(lines, "footing/piles/" + group + "/each", Unit.ONE)
                    * amount(lines, "supports/" + group + "/count", Unit.ONE);
          }
        }
        double loads = 0;
        for (var b : house.scope().boxes()) loads += amount(lines, "load/" + b.id(), Unit.KG);
        assertThat(carried).as(kind + " " + joint).isCloseTo(loads, within(1e-6));
      }
    }
  }

  /** By hand for two 40 ft boxes: the area on which a line's pressure lies, m2. */
  private static double area(List<Line> lines, String id, Foundation kind) {
    var parts = new ArrayList<>(List.of(id.split("/")));
    var group = parts.size() > 3 ? parts.get(2) + "/" + parts.get(3) : "";
    return switch (kind) {
      case PIERS ->
          Math.pow(amount(lines, "footing/pads/" + group + "/side", Unit.M), 2)
              * amount(lines, "supports/" + group + "/count", Unit.ONE);
      case PRECAST_PADS ->
          0.6
              * 0.6
              * amount(lines, "footing/precast/" + group + "/each", Unit.ONE)
              * amount(lines, "supports/" + group + "/count", Unit.ONE);
      case STRIPS ->
          amount(lines, "footing/strips/" + group + "/width", Unit.M) * length(lines, group);
      case SKIDS -> 0.6 * length(lines, group);
      case SLAB, RAFT -> amount(lines, "footing/slab/area", Unit.M2);
      case SCREW_PILES, DRIVEN_PILES -> throw new IllegalArgumentException(id);
    };
  }

  private static double length(List<Line> lines, String group) {
    if (group.endsWith("/shared-side")) return 12.192;
    boolean shared = lines.stream().anyMatch(l -> l.id().contains("/shared-side/"));
    return shared ? 12.192 : 2 * 12.192;
  }

  // By hand: snow of 15 kPa x 0.7 on 29.72 m2 alone puts 312 kN on 24.38 m of skid bed 0.6 m wide.
  @Test
  void a_skid_bed_of_one_width_shows_when_the_ground_is_asked_too_much() {
    var lines =
        TestScopes.metric()
            .with(SiteQuestions.FOUNDATION, Foundation.SKIDS)
            .with(SiteQuestions.SNOW, "60")
            .measured();
    assertThat(amount(lines, "footing/skids/A/side/pressure", Unit.KPA))
        .isGreaterThan(60 * 0.7 * 12.192 * 2.438 / (2 * 12.192 * 0.6))
        .isGreaterThan(71.8);
  }

  /** Materials of the boxes that have no mass in the facts, by the reasons in the document. */
  @Test
  void what_is_left_out_is_listed() throws IOException {
    var text = Files.readString(Path.of("..", "docs", "method-mass.md"));
    var listed = new TreeSet<String>();
    var names =
        Pattern.compile("`([a-z0-9-]+)`").matcher(text.substring(text.indexOf("## Left out")));
    while (names.find()) listed.add(names.group(1));
    assertThat(listed).isEqualTo(SEEN.left());
  }

  @Test
  void document_and_rule_name_the_same_lines() throws IOException {
    var text = Files.readString(Path.of("..", "docs", "method-mass.md"));
    var written = new TreeSet<String>();
    var rows = Pattern.compile("^\\| `(mass/[^`]+)` \\|", Pattern.MULTILINE).matcher(text);
    while (rows.find()) written.add(rows.group(1));
    assertThat(written).isEqualTo(SEEN.lines());
  }

  private static final Seen SEEN = Seen.inAllHouses();

  /**
   * @param lines ids of lines of masses
   * @param left materials that have none
   */
  private record Seen(TreeSet<String> lines, TreeSet<String> left) {
    static Seen inAllHouses() {
      var seen = new Seen(new TreeSet<>(), new TreeSet<>());
      for (var house : Variants.all(UnitSystem.METRIC).values()) seen.look(house.measured());
      for (long seed = 1; seed <= 40; seed++) {
        seen.look(Takeoff.measure(RandomHouses.of(seed, UnitSystem.METRIC), TestScopes.FACTS));
      }
      return seen;
    }

    private void look(List<Line> house) {
      for (var l : house) {
        if (l.id().startsWith("mass/")) {
          lines.add(l.id().replaceAll("^mass/box/[^/]+/", "mass/box/<box>/"));
        }
        if (Set.of(Stage.PREPARATION, Stage.FOUNDATION, Stage.CLOSE_OUT).contains(l.stage())) {
          continue;
        }
        if (l.id().startsWith("frame/")) continue; // its mass stands with each opening
        for (var r : l.resources()) {
          if (!(r instanceof Resource.Buy buy) || buy.item().startsWith("box-")) continue;
          if (TestScopes.FACTS.find("mass.of." + buy.item()).isEmpty()) left.add(buy.item());
        }
      }
    }
  }
}

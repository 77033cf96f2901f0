package cornerpost.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.FrameSection;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.SoilClass;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Values published outside the project, each with its source and how sure it is in
 * outside-values.txt, against what the program takes or measures.
 */
class OutsideValuesTest {
  private static final Job JOB = new Job(TestScopes.metric().scope(), TestScopes.FACTS);
  private static final Map<String, List<Line>> HOUSES =
      Map.of(
          "bare", TestScopes.metric().measured(),
          "window", window(Wall.LEFT, "1050").measured(),
          "blind", window(Wall.BLIND_END, "1050").measured(),
          "tall", window(Wall.LEFT, "1150").measured(),
          "corners",
              bareRoof().with(SiteQuestions.SUPPORTS_A_SIDE, "2").measured(GroundAndShellRules.ALL),
          "rock",
              bareRoof()
                  .with(SiteQuestions.SOIL, SoilClass.BEDROCK)
                  .with(SiteQuestions.PAD_DEPTH, "600")
                  .measured(),
          "deck",
              TestScopes.metric()
                  .with(DeckAndRoofQuestions.DECK_LENGTH, "4")
                  .with(DeckAndRoofQuestions.DECK_DEPTH, "3")
                  .with(SiteQuestions.FROST_DEPTH, "900")
                  .measured(),
          "rooms",
              TestScopes.metric()
                  .room(
                      "Living",
                      "A",
                      RoomUse.LIVING_KITCHEN,
                      "9",
                      RoomQuestions.DOOR,
                      DoorToNext.HINGED)
                  .room("Bath", "A", RoomUse.BATHROOM, "3.032")
                  .measured());

  private record Value(
      String part,
      String what,
      double published,
      double within,
      String unit,
      String measured,
      String source,
      String sure) {
    @Override
    public String toString() {
      return part + ": " + what + " " + published + " " + unit + " (" + source + ")";
    }
  }

  private static TestScopes bareRoof() {
    return TestScopes.metric()
        .with(SiteQuestions.SNOW, "0")
        .with(DeckAndRoofQuestions.ROOF, RoofBuild.BARE);
  }

  private static TestScopes window(Wall wall, String height) {
    return TestScopes.metric()
        .opening(
            "W",
            "A",
            wall,
            OpeningKind.WINDOW,
            "1200",
            height,
            OpeningQuestions.SILL,
            "900",
            OpeningQuestions.FRAME,
            FrameSection.SHS_50_4);
  }

  static List<Value> values() throws IOException {
    try (var in = OutsideValuesTest.class.getResourceAsStream("/outside-values.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(l -> !l.startsWith("#") && !l.isBlank())
          .map(l -> l.split("\\|"))
          .map(
              c ->
                  new Value(
                      c[0].strip(),
                      c[1].strip(),
                      Double.parseDouble(c[2]),
                      Double.parseDouble(c[3]),
                      c[4].strip(),
                      c[5].strip(),
                      c[6].strip(),
                      c[7].strip()))
          .toList();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("values")
  void agrees_with_what_is_published(Value value) {
    assertThat(measured(value)).isCloseTo(value.published(), within(value.within() + 1e-9));
  }

  @Test
  void there_are_sixty_values_at_least_and_some_for_each_part_of_the_build() throws IOException {
    var byPart = new TreeMap<>(values().stream().collect(Collectors.groupingBy(Value::part)));
    assertThat(byPart.keySet())
        .containsExactlyInAnyOrder(
            "box",
            "shell",
            "openings",
            "ground",
            "framing",
            "services",
            "lining",
            "finishes",
            "outside",
            "mass",
            "hours");
    assertThat(values()).hasSizeGreaterThanOrEqualTo(60).doesNotHaveDuplicates();
    assertThat(values())
        .allSatisfy(
            v -> {
              assertThat(v.source()).isNotBlank();
              assertThat(v.sure())
                  .isIn(Set.of("confirmed", "computed", "from memory", "common practice"));
            });
  }

  private static double measured(Value value) {
    var words = value.measured().split(" ");
    return switch (words[0]) {
      case "fact" -> in(TestScopes.FACTS.figure(words[1]), value.unit());
      case "line" -> in(TestScopes.line(HOUSES.get(words[1]), words[2]).quantity(), value.unit());
      case "ratio" ->
          in(
              TestScopes.line(HOUSES.get(words[1]), words[2])
                  .quantity()
                  .over(TestScopes.line(HOUSES.get(words[1]), words[3]).quantity()),
              value.unit());
      case "studs" ->
          StudLayout.studs(Figure.constant(words[1], Unit.M), Figure.constant(words[2], Unit.MM))
              .asDouble(Unit.ONE);
      case "bays" ->
          StudLayout.bays(Figure.constant(words[1], Unit.M), Figure.constant(words[2], Unit.MM))
              .asDouble(Unit.ONE);
      case "wire" -> in(Welds.wire(JOB, Figure.constant(words[1], Unit.M)), value.unit());
      case "hours" -> likelyHours(words[1]);
      default -> throw new IllegalArgumentException(value.measured());
    };
  }

  /** In a unit of the table; a few stand for what the published example counts. */
  private static double in(Figure figure, String unit) {
    return switch (unit) {
      case "cartridge" -> figure.asDouble(Unit.ML) / 310;
      case "bag" -> Math.ceil(figure.asDouble(Unit.CU_FT) / 0.60);
      case "kip" -> figure.asDouble(Unit.LB) / 1000;
      case "lb/cu in" -> figure.asDouble(Unit.get("kg/m3")) * 0.0254 * 0.0254 * 0.0254 / 0.45359237;
      case "in/ft" -> figure.asDouble(Unit.ONE) * 12;
      case "kN" -> figure.asDouble(Unit.KG) * 9.80665 / 1000;
      case "lb/1000 ft" -> figure.asDouble(Unit.get("lb/ft")) * 1000;
      case "psf of 2 ft" -> figure.asDouble(Unit.get("lb/ft")) / 2;
      case "per 7000 sq ft" -> figure.asDouble(Unit.get("each/sq ft")) * 7000;
      case "ft per 7000 sq ft" -> figure.asDouble(Unit.get("ft/sq ft")) * 7000;
      case "gal per 7000 sq ft" -> figure.asDouble(Unit.get("gal/sq ft")) * 7000;
      case "", "each" -> figure.asDouble(Unit.ONE);
      default -> figure.asDouble(Unit.get(unit));
    };
  }

  /** The likely hours of an activity, in the unit in which the customary book has it. */
  private static double likelyHours(String activity) {
    try (var files = Files.list(Path.of("..", "price-books", "quarrow-plains-2026", "hours"))) {
      for (var file : files.toList()) {
        for (var line : Files.readAllLines(file)) {
          if (!line.startsWith(activity + ",")) continue;
          var cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)");
          return Double.parseDouble(cells[4]);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    throw new AssertionError("No hours of " + activity);
  }
}

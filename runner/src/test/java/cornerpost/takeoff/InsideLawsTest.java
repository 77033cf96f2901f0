package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.amount;
import static cornerpost.takeoff.TestScopes.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Wall;
import cornerpost.trace.Leaf;
import cornerpost.trace.Places;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of the inside whatever is chosen. */
class InsideLawsTest {
  private static final List<Question> FORMS =
      Stream.of(
              EnvelopeQuestions.ALL,
              ServicesQuestions.ALL,
              FinishesQuestions.ALL,
              SiteQuestions.ALL,
              DeckAndRoofQuestions.ALL)
          .flatMap(List::stream)
          .toList();

  /** A house whose rooms, openings and options the seed picks; sizes in whole millimetres. */
  private static TestScopes random(long seed, UnitSystem units, int widerMm) {
    var random = new Random(seed);
    var scope = TestScopes.in(units);
    for (var q : FORMS) {
      var choices = q.choices();
      if (!choices.isEmpty()) {
        var picked = choices.get(random.nextInt(choices.size()));
        scope.with(q, q.kind() == Question.Kind.YES_NO ? (Object) picked.equals("yes") : picked);
      } else if (q.kind() == Question.Kind.NUMBER) {
        q.standard().in(UnitSystem.METRIC).ifPresent(text -> scope.with(q, si(text)));
      }
    }
    scope
        .with(EnvelopeQuestions.STUD_SPACING, si("" + (300 + random.nextInt(400))))
        .with(EnvelopeQuestions.STAND_OFF, si("" + random.nextInt(60)))
        .with(EnvelopeQuestions.INSIDE_THICKNESS, si("" + (20 + random.nextInt(120))))
        .with(EnvelopeQuestions.PAINT_COATS, "" + random.nextInt(5))
        .with(FinishesQuestions.KITCHEN_RUN, si("" + (1 + random.nextInt(5))))
        .with(FinishesQuestions.WALL_TILE_HEIGHT, si("" + random.nextInt(2400)))
        .with(ServicesQuestions.HEADS, "" + (1 + random.nextInt(6)));
    int boxes = 1 + random.nextInt(3);
    for (int b = 0; b < boxes; b++) {
      var box = "" + (char) ('A' + b);
      scope.box(box);
      int left = 12032;
      for (int r = 0; left > 0; r++) {
        int length = Math.min(left, 1800 + random.nextInt(3000));
        if (left - length < 1500) length = left;
        var use = RoomUse.values()[random.nextInt(RoomUse.values().length)];
        var door = cornerpost.scope.DoorToNext.values()[random.nextInt(5)];
        scope.room(
            box + r,
            box,
            use,
            si(
                ""
                    + length / 1000
                    + "."
                    + String.format(java.util.Locale.ROOT, "%03d", length % 1000)),
            cornerpost.scope.RoomQuestions.DOOR,
            door);
        left -= length;
      }
      var walls = List.of(Wall.LEFT, Wall.RIGHT);
      for (int i = 0; i < 4; i++) {
        var kind = OpeningKind.values()[random.nextInt(OpeningKind.values().length)];
        int width = 400 + random.nextInt(1600);
        scope.opening(
            box + "-O" + i,
            box,
            walls.get(i % 2),
            kind,
            si("" + (width + widerMm)),
            si("" + (500 + random.nextInt(1500))),
            OpeningQuestions.SILL,
            si("" + random.nextInt(500)),
            OpeningQuestions.OFFSET,
            si("" + (i / 2 * 6 + 1) + "." + (100 + random.nextInt(800))));
      }
    }
    return scope;
  }

  private static List<Line> measured(TestScopes scope) {
    return scope.measured(InsideHouses.RULES);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void net_area_and_openings_make_the_gross_area(long seed) {
    var lines = measured(random(seed, UnitSystem.METRIC, 0));
    assertThat(
            amount(lines, "inside/wall-area", Unit.M2)
                + amount(lines, "inside/wall-openings", Unit.M2))
        .isCloseTo(amount(lines, "inside/wall-gross", Unit.M2), within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
  void no_quantity_is_negative(long seed) {
    for (var line : measured(random(seed, UnitSystem.METRIC, 0))) {
      assertThat(line.quantity().value()).as(line.id()).isNotNegative();
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void wider_openings_never_need_more_board_or_foam(long seed) {
    var narrow = measured(random(seed, UnitSystem.METRIC, 0));
    var wide = measured(random(seed, UnitSystem.METRIC, 137));
    assertThat(amount(wide, "lining/house/wall-faces", Unit.M2))
        .isLessThanOrEqualTo(amount(narrow, "lining/house/wall-faces", Unit.M2));
    if (TestScopes.has(narrow, "insulation/walls/volume")) {
      assertThat(amount(wide, "insulation/walls/volume", Unit.M3))
          .isLessThanOrEqualTo(amount(narrow, "insulation/walls/volume", Unit.M3));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13})
  void metric_and_customary_entries_make_the_same_house(long seed) {
    var metric = measured(random(seed, UnitSystem.METRIC, 0));
    var us = measured(random(seed, UnitSystem.US, 0));
    assertThat(us.stream().map(Line::id)).isEqualTo(metric.stream().map(Line::id).toList());
    for (var line : metric) {
      double expected = line.quantity().value().doubleValue();
      assertThat(TestScopes.line(us, line.id()).quantity().value().doubleValue())
          .as(line.id())
          .isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "inside/wall-area",
    "inside/ceiling-area",
    "inside/floor-area",
    "inside/partition-area",
    "ceiling-battens/house/length",
    "insulation/walls/volume",
    "insulation/ceiling/volume",
    "insulation/underfloor/volume",
    "lining/house/wall-faces",
    "lining/ceilings/boards",
    "lining/joints/tape",
    "paint/inside/area",
    "wet-rooms/all/wall-tiles",
    "floor/dry-rooms/area",
    "kitchen/all/base-units",
    "trim/house/skirting",
    "inner-doors/all/architrave",
    "plumbing/house/fixture-units",
    "electrical/house/lights",
    "electrical/load/lighting"
  })
  void two_equal_boxes_need_twice_as_much(String id) {
    var one =
        measured(InsideHouses.oneBedroom(UnitSystem.METRIC).with(ServicesQuestions.LAUNDRY, false));
    var two = InsideHouses.oneBedroom(UnitSystem.METRIC).with(ServicesQuestions.LAUNDRY, false);
    InsideHouses.rooms(two.box("A").box("B"), "B", " 2")
        .opening(
            "W2",
            "B",
            Wall.RIGHT,
            OpeningKind.WINDOW,
            "1200",
            "1200",
            OpeningQuestions.SILL,
            "900",
            OpeningQuestions.OFFSET,
            "9.5")
        .opening(
            "D2",
            "B",
            Wall.RIGHT,
            OpeningKind.SLIDING_DOOR,
            "2400",
            "2100",
            OpeningQuestions.OFFSET,
            "2");
    var unit = TestScopes.line(one, id).shownIn();
    assertThat(amount(measured(two), id, unit)).isCloseTo(2 * amount(one, id, unit), within(1e-9));
  }

  /** Money must follow an edited opening in the sheet: its width is a leaf of what it changes. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "framing/A-right/studs",
        "framing/A/studs",
        "framing/A/heads",
        "framing/A-right/noggings",
        "insulation/walls/volume",
        "lining/walls/boards",
        "lining/joints/beads",
        "paint/inside/wall-paint",
        "trim/windows/blinds",
        "trim/openings/casing"
      })
  void an_openings_width_is_live(String id) {
    var line = TestScopes.line(measured(InsideHouses.oneBedroom(UnitSystem.METRIC)), id);
    assertThat(line.quantity().allLeaves().stream().map(Leaf::key)).contains("Openings!E2");
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void nothing_rests_on_a_worked_out_number(long seed) {
    for (var line : measured(random(seed, UnitSystem.METRIC, 0))) {
      assertThat(line.quantity().allLeaves())
          .as(line.id())
          .noneMatch(leaf -> leaf.kind() == Leaf.Kind.WORKED);
    }
  }

  @Test
  void what_is_bought_and_what_is_done_never_share_a_code_on_one_line() {
    for (var line : measured(InsideHouses.everyRoom(UnitSystem.METRIC))) {
      var codes = new LinkedHashSet<String>();
      for (var r : line.resources()) {
        assertThat(codes.add(code(r))).as(line.id() + ": " + code(r)).isTrue();
      }
    }
  }

  /** A spreadsheet takes formulas of 8192 characters at most; half is plenty. */
  @Test
  void formulas_stay_short_in_a_house_of_many_openings() {
    var scope = InsideHouses.everyRoom(UnitSystem.US);
    for (int i = 0; i < 24; i++) {
      scope.opening(
          "X" + i,
          i % 2 == 0 ? "A" : "B",
          Wall.LEFT,
          OpeningKind.WINDOW,
          si("300"),
          si("900"),
          OpeningQuestions.OFFSET,
          si("" + (0.2 + i / 2)));
    }
    for (var line : measured(scope)) {
      assertThat(line.quantity().formula(FAR_CELLS, line.shownIn()))
          .as(line.id())
          .hasSizeLessThan(4096);
    }
  }

  /** Every number on a sheet with a long name, far down. */
  private static final Places FAR_CELLS =
      new Places() {
        @Override
        public String cell(Leaf leaf) {
          return "'Site and foundation'!$D$1234";
        }

        @Override
        public Shown named(String id) {
          return new Shown("'Quantities'!$D$1234", Unit.ONE);
        }
      };

  private static String code(Resource resource) {
    if (resource instanceof Resource.Buy buy) return buy.item();
    return ((Resource.Labour) resource).activity();
  }
}

package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.SiteQuestions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/**
 * The drawings read back, against where the choices of {@link SamplePlan#house} put things; worked
 * by hand. The box is 12,192 x 2,438 mm outside and 12,032 x 2,352 mm inside: end walls of 80 mm
 * and side walls of 43 mm.
 */
class DrawingTest {
  private static final Page METRIC = new Page(PlanPage.write(SamplePlan.metric()));
  private static final Page US = new Page(PlanPage.write(SamplePlan.us()));

  private static void at(Element e, double x, double y, double width, double height) {
    var found = Page.rect(e);
    var wanted = new double[] {x, y, width, height};
    for (int i = 0; i < 4; i++) assertThat(found[i]).isCloseTo(wanted[i], within(0.5));
  }

  private static Element plan(Page page) {
    return page.id("plan-0");
  }

  @ParameterizedTest(name = "{0} from {1} mm, {2} mm long")
  @CsvSource({"Living, 80, 5800", "Bath, 5880, 2132", "Bedroom, 8012, 4100"})
  void rooms_lie_in_line_from_the_door_end(String room, double x, double length) {
    at(Page.with(plan(METRIC), "data-room", room), x, 43, length, 2352);
  }

  @Test
  void rooms_of_a_customary_workbook_are_the_same_to_the_millimetre() {
    // 19 ft = 5,791.2 mm; 7 ft = 2,133.6 mm
    at(Page.with(plan(US), "data-room", "Living"), 80, 43, 5791.2, 2352);
    at(Page.with(plan(US), "data-room", "Bath"), 5871.2, 43, 2133.6, 2352);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "D1, 1250, 2395, 2400, 43",
    "W1, 2500, 0, 1200, 43",
    "W2, 6600, 0, 600, 43",
    "W3, 9000, 2395, 1500, 43",
    // blind end, from its left corner seen from outside, which is on the right side:
    // 2,438 - 700 - 900 = 838
    "W4, 12112, 838, 80, 900",
    "V1, 7500, 0, 150, 43"
  })
  void openings_stand_where_they_are_chosen(String id, double x, double y, double w, double h) {
    at(Page.with(plan(METRIC), "data-opening", id), x, y, w, h);
  }

  @Test
  void every_opening_is_cut_in_the_elevation_of_its_wall() {
    // left side seen from outside: the door end at the right; 12,192 - 2,500 - 1,200 = 8,492
    at(Page.with(METRIC.id("wall-0-0"), "data-opening", "W1"), 8492, -2000, 1200, 1000);
    // right side: the door end at the left; sill 900, height 1,200
    at(Page.with(METRIC.id("wall-0-1"), "data-opening", "W3"), 9000, -2100, 1500, 1200);
    at(Page.with(METRIC.id("wall-0-3"), "data-opening", "W4"), 700, -2100, 900, 1200);
    // 60 in = 1,524 mm, 48 in = 1,219.2 mm, 29.5 ft = 8,991.6 mm, sill 36 in = 914.4 mm
    at(Page.with(US.id("wall-0-1"), "data-opening", "W3"), 8991.6, -2133.6, 1524, 1219.2);
  }

  // A passage is cut out of both boxes. Entered 2,000 mm along the right side of a box 12,192 mm
  // long, 2,400 mm wide; the next box begins 1,000 mm further along, so there it lies 1,000 mm
  // along; its left side of 6,058 mm shows the door end at the right: 6,058 - 1,000 - 2,400 =
  // 2,658.
  @Test
  void a_passage_is_drawn_in_the_walls_of_both_boxes() {
    var page =
        page(
            SamplePlan.house(UnitSystem.METRIC)
                .box(
                    BoxQuestions.ID, "B",
                    BoxQuestions.SIZE, "20 ft",
                    BoxQuestions.JOINED_TO, "A",
                    BoxQuestions.JOINT, "side by side",
                    BoxQuestions.JOINT_LENGTH, "6.058",
                    BoxQuestions.ALONG, "1",
                    BoxQuestions.ACROSS, "2.438")
                .opening(
                    "P1", "A", "right side", "pass-through to next box", "2400", "2100", "0", "2"));
    at(Page.with(page.id("wall-0-1"), "data-opening", "P1"), 2000, -2100, 2400, 2100);
    at(Page.with(page.id("wall-1-0"), "data-opening", "P1"), 2658, -2100, 2400, 2100);
  }

  @Test
  void wall_stands_on_the_floor_line_with_its_whole_height() {
    // floor at 0, underside of the roof 2,698 above it, box 2,896 high
    at(Page.with(METRIC.id("wall-0-1"), "data-wall", "right side"), 0, -2698, 12192, 2896);
    at(Page.with(METRIC.id("wall-0-2"), "data-wall", "door end"), 0, -2698, 2438, 2896);
  }

  @Test
  void supports_stand_under_the_corner_fittings_and_evenly_between() {
    var middles = new ArrayList<String>();
    for (var s : Page.in(plan(METRIC), "rect", e -> e.hasAttribute("data-support"))) {
      var r = Page.rect(s);
      assertThat(r[2]).isEqualTo(400);
      assertThat(r[3]).isEqualTo(400);
      middles.add(Math.round(r[0] + r[2] / 2) + "," + Math.round(r[1] + r[3] / 2));
    }
    // 89 and 81 mm: half a corner fitting; the middle one at half of 12,192
    assertThat(middles)
        .containsExactlyInAnyOrder(
            "89,81", "89,2357", "6096,81", "6096,2357", "12103,81", "12103,2357");
  }

  @Test
  void piles_are_round_and_as_many_as_chosen() {
    var page =
        page(
            SamplePlan.house(UnitSystem.METRIC)
                .say(SiteQuestions.FOUNDATION, "screw piles")
                .say(SiteQuestions.SUPPORTS_A_SIDE, "4"));
    var piles = Page.in(plan(page), "circle", e -> e.hasAttribute("data-support"));
    assertThat(piles).hasSize(8);
    // (12,192 - 2 x 89) / 3 = 4,004.667 apart
    assertThat(Page.number(piles.get(1), "cx")).isCloseTo(4093.667, within(0.001));
  }

  @Test
  void boxes_side_by_side_share_one_row_of_supports_under_their_joint() {
    var page =
        page(
            SamplePlan.house(UnitSystem.METRIC)
                .box(
                    BoxQuestions.ID, "B",
                    BoxQuestions.SIZE, "40 ft high cube",
                    BoxQuestions.ACROSS, "2.438",
                    BoxQuestions.JOINED_TO, "A",
                    BoxQuestions.JOINT, "side by side"));
    var all = Page.in(plan(page), "rect", e -> e.hasAttribute("data-support"));
    assertThat(all).hasSize(9); // three rows of three
    var shared =
        all.stream().map(Page::rect).filter(r -> Math.abs(r[1] + r[3] / 2 - 2438) < 0.5).toList();
    assertThat(shared).hasSize(3);
  }

  @Test
  void deck_lies_along_its_side() {
    at(Page.with(plan(METRIC), "data-deck", "A"), 0, 2438, 12190, 2400);
    var left =
        page(
            SamplePlan.house(UnitSystem.METRIC)
                .say(DeckAndRoofQuestions.DECK_SIDE, "left side")
                .say(DeckAndRoofQuestions.DECK_LENGTH, "6")
                .say(DeckAndRoofQuestions.DECK_DEPTH, "3"));
    at(Page.with(plan(left), "data-deck", "A"), 0, -3000, 6000, 3000);
  }

  @Test
  void partition_stands_with_its_middle_where_two_rooms_meet() {
    // Living ends at 80 + 5,800
    at(Page.with(plan(METRIC), "data-partition", "Living"), 5880 - 45, 43, 90, 2352);
  }

  @Test
  void boxes_stand_on_the_plot_where_they_are_put_and_turned() {
    var page =
        page(
            SamplePlan.house(UnitSystem.METRIC)
                .box(
                    BoxQuestions.ID, "B",
                    BoxQuestions.SIZE, "20 ft",
                    BoxQuestions.ALONG, "20",
                    BoxQuestions.ACROSS, "5",
                    BoxQuestions.ROTATION, "90"));
    var b = Page.with(plan(page), "data-box", "B");
    assertThat(b.getAttribute("transform")).isEqualTo("translate(20000 5000) rotate(-90)");
    // turned by a quarter anticlockwise its length runs up the page: the blind end is 6,058 up
    var placed = Placed.all(twoBoxes().scope(), SamplePlan.facts()).get(1);
    assertThat(placed.ground().onPlot(6058, 0)[0]).isCloseTo(20000, within(1e-6));
    assertThat(placed.ground().onPlot(6058, 0)[1]).isCloseTo(5000 - 6058, within(1e-6));
    assertThat(placed.ground().onPlot(0, 2438)[0]).isCloseTo(22438, within(1e-6));
  }

  private static SampleChoices twoBoxes() {
    return SamplePlan.house(UnitSystem.METRIC)
        .box(
            BoxQuestions.ID, "B",
            BoxQuestions.SIZE, "20 ft",
            BoxQuestions.ALONG, "20",
            BoxQuestions.ACROSS, "5",
            BoxQuestions.ROTATION, "90");
  }

  @Test
  void box_on_top_of_another_has_a_plan_of_its_own_without_supports() {
    var page =
        page(
            SamplePlan.house(UnitSystem.METRIC)
                .box(
                    BoxQuestions.ID, "B",
                    BoxQuestions.SIZE, "40 ft high cube",
                    BoxQuestions.JOINED_TO, "A",
                    BoxQuestions.JOINT, "stacked on top"));
    var upper = page.id("plan-1");
    assertThat(Page.in(upper, "g", e -> e.getAttribute("data-box").equals("B"))).hasSize(1);
    assertThat(Page.in(upper, "*", e -> e.hasAttribute("data-support"))).isEmpty();
    assertThat(Page.in(plan(page), "g", e -> e.getAttribute("data-box").equals("B"))).isEmpty();
  }

  @Test
  void fittings_stand_in_their_room_and_before_no_door() {
    var fittings =
        Page.in(
            Page.with(plan(METRIC), "data-room", "Living"),
            "rect",
            e -> e.getAttribute("class").equals("fitting"));
    assertThat(fittings).isNotEmpty();
    for (var f : fittings) {
      var r = Page.rect(f);
      assertThat(r[0]).isGreaterThanOrEqualTo(80);
      assertThat(r[0] + r[2]).isLessThanOrEqualTo(5880);
      // the sliding door D1 is in the right side, from 1,250 to 3,650
      boolean right = r[1] + r[3] / 2 > 1219;
      boolean clear = r[0] + r[2] <= 1250 || r[0] >= 3650;
      assertThat(!right || clear).isTrue();
    }
  }

  private static boolean overlap(double[] a, double[] b) {
    return a[0] < b[0] + b[2] && b[0] < a[0] + a[2] && a[1] < b[1] + b[3] && b[1] < a[1] + a[3];
  }

  @ParameterizedTest(name = "{0}, a door of the kind {1}")
  @CsvSource({
    "shower, 'partition, hinged door'",
    "shower, 'partition, sliding door'",
    "bath with shower over, 'partition, hinged door'",
    "bath with shower over, 'partition, pocket door'"
  })
  void fittings_stand_neither_in_each_other_nor_where_the_door_swings(String wash, String door) {
    var choices = SamplePlan.house(UnitSystem.METRIC).say(FinishesQuestions.WASHING, wash);
    var page =
        page(
            choices
                .room("Bath 2", "A", "bathroom", "2.2", door)
                .room("Bedroom 2", "A", "bedroom", "4", "open, no partition"));
    var things =
        Page.in(plan(page), "rect", e -> e.hasAttribute("data-fitting")).stream()
            .map(Page::rect)
            .toList();
    assertThat(things).hasSizeGreaterThan(5);
    for (int i = 0; i < things.size(); i++) {
      for (int j = i + 1; j < things.size(); j++) {
        assertThat(overlap(things.get(i), things.get(j))).as(i + " and " + j).isFalse();
      }
    }
    // a hinged door of 800 mm swings over a square beyond the partition, in the middle of 2,438
    for (var leaf : Page.in(plan(page), "line", e -> e.getAttribute("class").equals("leaf"))) {
      double from = Page.number(leaf, "x1");
      if (Page.number(leaf, "x2") - from != 800 || Page.number(leaf, "y1") != 819) continue;
      for (var t : things) assertThat(overlap(t, new double[] {from, 819, 800, 800})).isFalse();
    }
  }

  @Test
  void names_stand_on_nothing_that_is_drawn() {
    // two high windows and a vent above one another in the bathroom, as first tried out by an owner
    var page =
        page(
            SamplePlan.house(UnitSystem.METRIC)
                .opening("W9", "A", "left side", "window", "600", "600", "1370", "6.3")
                .opening("V9", "A", "left side", "vent", "150", "150", "2100", "6.5"));
    for (var p : List.of(METRIC, US, page)) {
      var things =
          Page.in(plan(p), "rect", e -> e.hasAttribute("data-fitting")).stream()
              .map(Page::rect)
              .toList();
      var names =
          Page.in(plan(p), "text", e -> e.getAttribute("class").matches("(room|opening)-name"));
      assertThat(names).isNotEmpty();
      var places = names.stream().map(DrawingTest::text).toList();
      for (int i = 0; i < places.size(); i++) {
        var name = names.get(i).getTextContent();
        for (var t : things) assertThat(overlap(t, places.get(i))).as(name).isFalse();
        for (int j = i + 1; j < places.size(); j++) {
          assertThat(overlap(places.get(i), places.get(j))).as(name).isFalse();
        }
      }
    }
  }

  /** Letters of a sans serif are half as wide as high, on average. */
  private static double[] text(Element e) {
    double size = Page.number(e, "font-size");
    double wide = 0.5 * size * e.getTextContent().length();
    return new double[] {
      Page.number(e, "x") - wide / 2, Page.number(e, "y") - 0.7 * size, wide, 0.7 * size
    };
  }

  @Test
  void everything_drawn_lies_inside_the_picture() {
    for (var page : java.util.List.of(METRIC, US, page(twoBoxes()))) {
      var box = plan(page).getAttribute("viewBox").split(" ");
      double left = Double.parseDouble(box[0]);
      double right = left + Double.parseDouble(box[2]);
      for (var r : Page.in(plan(page), "rect", e -> e.hasAttribute("data-shell"))) {
        var rect = Page.rect(r);
        assertThat(rect[0]).isGreaterThanOrEqualTo(left);
        assertThat(rect[0] + rect[2]).isLessThanOrEqualTo(right);
      }
    }
  }

  @Test
  void drawing_prints_at_the_scale_it_names() {
    // 1:100: a hundredth of the picture's width, in millimetres on paper
    var svg = plan(METRIC);
    double width = Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2]);
    assertThat(METRIC.text("plan-figure-0")).contains("Prints at 1:100");
    assertThat(svg.getAttribute("style"))
        .contains("--print-width:" + Svg.number(width / 100) + "mm");
    assertThat(width / 100).isLessThanOrEqualTo(180); // A4 less its margins
    assertThat(US.text("plan-figure-0")).contains("Prints at 1/8 in to 1 ft");
  }

  private static Page page(SampleChoices choices) {
    return new Page(PlanPage.write(SamplePlan.of(choices.scope(), "EUR")));
  }
}

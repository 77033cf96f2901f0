package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Labelled;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Scope;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Wall;
import cornerpost.scope.WallCuts;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/**
 * Floor plans of many houses drawn at random, some with more rooms and openings than anybody would
 * build, read back: what is written stands on nothing else, and a room's name in its room or at the
 * end of a line that leads there. That drawings are lettered clear of their lines is the rule of
 * the trade (ISO 3098-1:2015, 4; from memory).
 */
class CrowdedPlansTest {
  private static final int HOUSES = 150;

  private static final List<String> NAMES =
      List.of(
          "Bath",
          "WC",
          "Hall",
          "Utility room",
          "Bedroom of the children",
          "Living",
          "Study and guest room",
          "Store",
          "Kitchen",
          "Bathroom 2",
          "Pantry",
          "Workshop");

  static List<Integer> seeds() {
    return IntStream.range(0, HOUSES).boxed().toList();
  }

  @ParameterizedTest(name = "house {0}")
  @MethodSource("seeds")
  void what_is_written_stands_clear_and_names_belong_to_their_rooms(int seed) {
    var scope = house(new Random(seed));
    var boxes = Placed.all(scope, SamplePlan.facts());
    var svg = new FloorPlan(scope, boxes, 0, Optional.empty()).draw().svg();
    var page = new Page(svg.getBytes(StandardCharsets.UTF_8));
    var texts = new ArrayList<Map.Entry<String, Rectangle2D>>();
    for (var t : page.all("text")) texts.add(Map.entry(t.getTextContent(), onPage(t, letters(t))));

    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        assertThat(meet(texts.get(i).getValue(), texts.get(j).getValue()))
            .as(texts.get(i).getKey() + " and " + texts.get(j).getKey())
            .isFalse();
      }
    }
    for (var thing : things(page)) {
      for (var t : texts) {
        assertThat(meet(thing.getValue(), t.getValue()))
            .as(t.getKey() + " and " + thing.getKey())
            .isFalse();
      }
    }
    for (var name : page.all("g", e -> e.hasAttribute("data-name"))) {
      var id = name.getAttribute("data-name");
      var room = page.all("g", e -> e.getAttribute("data-room").equals(id)).get(0);
      var walls = onPage(rect(room), bounds(rect(room)));
      boolean led = !Page.in(name, "line", e -> e.getAttribute("data-leader").equals(id)).isEmpty();
      for (var t : Page.in(name, "text", e -> true)) {
        boolean inside = walls.contains(onPage(t, letters(t)));
        assertThat(inside || led).as("%s in its room, or led to it", id).isTrue();
      }
    }
    var picture = page.all("svg").get(0).getAttribute("viewBox").split(" ");
    var paper =
        new Rectangle2D.Double(
            Double.parseDouble(picture[0]),
            Double.parseDouble(picture[1]),
            Double.parseDouble(picture[2]),
            Double.parseDouble(picture[3]));
    for (var t : texts) assertThat(paper.contains(t.getValue())).as(t.getKey()).isTrue();
  }

  /** Partitions, fittings, holes in the walls, and where doors swing. */
  private static List<Map.Entry<String, Rectangle2D>> things(Page page) {
    var things = new ArrayList<Map.Entry<String, Rectangle2D>>();
    for (var r : page.all("rect")) {
      var kind = r.getAttribute("class");
      boolean counts =
          kind.equals("partition") || kind.equals("hole") || r.hasAttribute("data-fitting");
      if (counts) things.add(Map.entry(kind, onPage(r, bounds(r))));
    }
    for (var p : page.all("path", e -> e.getAttribute("class").equals("swing"))) {
      // M tipX tipY A w w 0 0 sweep latchX latchY: the square over which the leaf turns
      var n = p.getAttribute("d").replaceAll("[MA]", " ").strip().split("\\s+");
      var swept = new Rectangle2D.Double(number(n[0]), number(n[1]), 0, 0);
      swept.add(number(n[7]), number(n[8]));
      things.add(Map.entry("swing", onPage(p, swept)));
    }
    return things;
  }

  @ParameterizedTest(name = "house {0}")
  @MethodSource("seeds")
  void names_in_elevations_stand_clear_inside_the_wall(int seed) {
    var scope = house(new Random(seed));
    for (var box : Placed.all(scope, SamplePlan.facts())) {
      for (var wall : List.of(Wall.LEFT, Wall.RIGHT)) {
        var svg =
            new Elevation(scope, new WallCuts(scope, SamplePlan.facts()), box, wall, "w")
                .draw()
                .svg();
        var page = new Page(svg.getBytes(StandardCharsets.UTF_8));
        var walls = bounds(page.all("rect", e -> e.hasAttribute("data-wall")).get(0));
        var names = page.all("text", e -> e.getAttribute("class").equals("opening-name"));
        for (int i = 0; i < names.size(); i++) {
          var name = names.get(i).getTextContent();
          assertThat(walls.contains(letters(names.get(i)))).as(name).isTrue();
          for (int j = i + 1; j < names.size(); j++) {
            assertThat(meet(letters(names.get(i)), letters(names.get(j)))).as(name).isFalse();
          }
        }
      }
    }
  }

  // ---- geometry ------------------------------------------------------------------------------

  private static double number(String text) {
    return Double.parseDouble(text);
  }

  /** They touch by more than a thousandth of a millimetre. */
  private static boolean meet(Rectangle2D a, Rectangle2D b) {
    var both = a.createIntersection(b);
    return both.getWidth() > 1e-3 && both.getHeight() > 1e-3;
  }

  /**
   * Letters of a sans serif are half as wide as high on average, bold ones a tenth wider; capitals
   * are seven tenths high (widths and cap height of the Helvetica font metrics, AFM).
   */
  private static Rectangle2D letters(Element text) {
    double size = Page.number(text, "font-size");
    boolean bold = text.getAttribute("class").endsWith("-name");
    double wide = (bold ? 0.55 : 0.5) * size * text.getTextContent().length();
    double x = Page.number(text, "x");
    double from = text.getAttribute("text-anchor").equals("middle") ? x - wide / 2 : x;
    return new Rectangle2D.Double(from, Page.number(text, "y") - 0.7 * size, wide, 0.7 * size);
  }

  private static Element rect(Element group) {
    return Page.in(group, "rect", e -> true).get(0);
  }

  private static Rectangle2D bounds(Element rect) {
    var r = Page.rect(rect);
    return new Rectangle2D.Double(r[0], r[1], r[2], r[3]);
  }

  /** Through the transforms of the element and of the groups round it; all by quarter turns. */
  private static Rectangle2D onPage(Element element, Rectangle2D own) {
    var all = new AffineTransform();
    for (var at = element; at != null; ) {
      all.preConcatenate(transform(at.getAttribute("transform")));
      at = at.getParentNode() instanceof Element parent ? parent : null;
    }
    return new Path2D.Double(own, all).getBounds2D();
  }

  private static AffineTransform transform(String text) {
    var all = new AffineTransform();
    for (var part : text.split("\\)")) {
      if (part.isBlank()) continue;
      var name = part.substring(0, part.indexOf('(')).strip();
      var n = part.substring(part.indexOf('(') + 1).strip().split("[ ,]+");
      if (name.equals("translate")) all.translate(number(n[0]), number(n[1]));
      else if (n.length == 1) all.rotate(Math.toRadians(number(n[0])));
      else all.rotate(Math.toRadians(number(n[0])), number(n[1]), number(n[2]));
    }
    return all;
  }

  // ---- houses --------------------------------------------------------------------------------

  private static Scope house(Random random) {
    var units = random.nextInt(3) == 0 ? UnitSystem.US : UnitSystem.METRIC;
    boolean us = units == UnitSystem.US;
    boolean small = random.nextInt(3) == 0;
    var size = small ? "20 ft" : "40 ft high cube";
    int boxes = random.nextInt(3) == 0 ? 2 : 1;
    var choices =
        new SampleChoices(units)
            .say(FinishesQuestions.WASHING, one(random, "shower", "bath with shower over"))
            .say(
                SiteQuestions.FOUNDATION,
                one(random, "concrete piers on pad footings", "slab on grade", "screw piles"))
            .say(DeckAndRoofQuestions.DECK, one(random, "yes", "no"))
            .say(
                DeckAndRoofQuestions.DECK_SIDE,
                boxes == 1
                    ? one(random, "left side", "right side", "door end", "blind end")
                    : one(random, "left side", "door end"))
            .say(DeckAndRoofQuestions.DECK_LENGTH, us ? "8" : "2.4")
            .say(DeckAndRoofQuestions.DECK_DEPTH, us ? "10" : "3");
    var turned = boxes == 1 ? one(random, "0", "90", "180") : "0";
    var names = new ArrayList<>(NAMES);
    Collections.shuffle(names, random);
    for (int b = 0; b < boxes; b++) {
      var id = b == 0 ? "A" : "B";
      if (b == 0) {
        choices.box(BoxQuestions.ID, id, BoxQuestions.SIZE, size, BoxQuestions.ROTATION, turned);
      } else {
        choices.box(
            BoxQuestions.ID,
            id,
            BoxQuestions.SIZE,
            size,
            BoxQuestions.ACROSS,
            us ? "7.99869" : "2.438",
            BoxQuestions.JOINED_TO,
            "A",
            BoxQuestions.JOINT,
            "side by side");
      }
      rooms(choices, random, id, names, small ? 5.898 : 12.032, us);
      var joint = boxes == 1 ? "" : b == 0 ? Wall.RIGHT.label() : Wall.LEFT.label();
      openings(choices, random, id, small ? 6058 : 12192, us, joint);
    }
    return choices.scope();
  }

  private static void rooms(
      SampleChoices choices,
      Random random,
      String box,
      List<String> names,
      double length,
      boolean us) {
    int count = 1 + random.nextInt(length < 6 ? 4 : 6);
    var shares = new double[count];
    double sum = 0;
    for (int i = 0; i < count; i++) sum += shares[i] = 0.25 + random.nextDouble();
    for (int i = 0; i < count; i++) {
      double metres = length * shares[i] / sum;
      choices.room(
          names.remove(0),
          box,
          one(random, labels(RoomUse.values())),
          text(us ? metres / 0.3048 : metres, 3),
          one(random, labels(DoorToNext.values())));
    }
  }

  /** Along each side one after another, so that no two share sheet. */
  private static void openings(
      SampleChoices choices, Random random, String box, double length, boolean us, String joint) {
    var counts = new HashMap<String, Integer>();
    for (var wall : List.of(Wall.LEFT, Wall.RIGHT)) {
      double at = 300 + random.nextInt(800);
      while (true) {
        var kind = OpeningKind.values()[random.nextInt(OpeningKind.values().length)];
        double wide =
            switch (kind) {
              case VENT, SLEEVE -> 100;
              case DOOR, GLAZED_DOOR, PASS_THROUGH -> 900;
              case SLIDING_DOOR -> 1800;
              case WINDOW -> 600 + random.nextInt(900);
            };
        if (at + wide > length - 300) break;
        double high = wide == 100 ? 100 : 1000; // what is small may be high up or down low
        double sill = wide == 100 ? random.nextInt(2150) : 800;
        // nothing but a passage leads from one box into the next; all are entered in the first box,
        // for the reader refuses one that comes out at another
        boolean passage = kind == OpeningKind.PASS_THROUGH && box.equals("A");
        if (wall.label().equals(joint) && !passage) {
          at += 500;
          continue;
        }
        var letter = kind.name().substring(0, 1);
        var id = box + letter + counts.merge(letter, 1, Integer::sum);
        choices.opening(
            id,
            box,
            wall.label(),
            kind.label(),
            text(us ? wide / 25.4 : wide, 2),
            text(us ? high / 25.4 : high, 2),
            text(us ? sill / 25.4 : sill, 2),
            text(us ? at / 304.8 : at / 1000, 3));
        at += wide + 350 + random.nextInt(2500);
      }
    }
  }

  private static String[] labels(Labelled[] all) {
    var labels = new String[all.length];
    for (int i = 0; i < all.length; i++) labels[i] = all[i].label();
    return labels;
  }

  private static String one(Random random, String... of) {
    return of[random.nextInt(of.length)];
  }

  private static String text(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}

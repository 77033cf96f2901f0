package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.si;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.BoxSize;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.Joint;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Scope;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import cornerpost.scope.VapourControl;
import cornerpost.scope.Wall;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Houses for the tests of other packages: a one-bedroom one, and one for every choice offered. */
public final class Houses {
  private static final LocalDate START = LocalDate.of(2027, 3, 1);

  private Houses() {}

  /** A one-bedroom 40 ft high cube; the owner does about half of the work. */
  public static Scope oneBedroom(UnitSystem units, Map<Question, Object> more) {
    var house = oneBedroom(TestScopes.in(units));
    more.forEach(house::with);
    return house.scope();
  }

  public static Scope oneBedroom() {
    return oneBedroom(UnitSystem.METRIC, Map.of());
  }

  /**
   * One 45 ft high cube with a deck of 24 x 8 ft along its right side, 24 in above the ground.
   *
   * @param rooms name, use and what stands towards the next one, every room a quarter of the box
   * @param openings name, wall, kind, then width, height and sill in inches and offset in feet
   */
  public static Scope ofRooms(
      Map<Question, Object> more, List<List<Object>> rooms, List<List<Object>> openings) {
    var house =
        TestScopes.us()
            .with(ProjectQuestions.START, START)
            .with(SiteQuestions.FLOOR_HEIGHT, "24")
            .with(DeckAndRoofQuestions.DECK, "yes")
            .with(DeckAndRoofQuestions.DECK_SIDE, Wall.RIGHT)
            .with(DeckAndRoofQuestions.DECK_LENGTH, "24")
            .with(DeckAndRoofQuestions.DECK_DEPTH, "8")
            .box("A", BoxQuestions.SIZE, BoxSize.FORTY_FIVE_HIGH);
    more.forEach(house::with);
    for (var r : rooms) {
      house.room((String) r.get(0), "A", (RoomUse) r.get(1), "11.11", RoomQuestions.DOOR, r.get(2));
    }
    for (var o : openings) {
      var entries = new ArrayList<Object>();
      entries.addAll(List.of(OpeningQuestions.SILL, o.get(5), OpeningQuestions.OFFSET, o.get(6)));
      if (o.size() > 7) entries.addAll(List.of(OpeningQuestions.LANDING, o.get(7)));
      house.opening(
          (String) o.get(0),
          "A",
          (Wall) o.get(1),
          (OpeningKind) o.get(2),
          o.get(3),
          o.get(4),
          entries.toArray());
    }
    return house.scope();
  }

  /**
   * A 40 ft high cube A and a 20 ft one B, joined to it, both beginning at the same end; floors 600
   * mm above the ground, a deck along the left side of A. A holds a living room of 6 m and a hall,
   * B one bedroom.
   *
   * @param openings name, box, wall, kind, then width, height and sill in millimetres and offset in
   *     metres
   */
  public static Scope shorterBoxJoined(Joint joint, List<List<Object>> openings) {
    return shorterBoxJoined(joint, openings, Map.of());
  }

  /**
   * The same.
   *
   * @param parties who does a package of work; what is not named is hired
   */
  public static Scope shorterBoxJoined(
      Joint joint, List<List<Object>> openings, Map<Trade, Party> parties) {
    var house =
        TestScopes.metric()
            .with(ProjectQuestions.START, START)
            .with(SiteQuestions.FLOOR_HEIGHT, "600")
            .with(DeckAndRoofQuestions.DECK, "yes")
            .with(DeckAndRoofQuestions.DECK_SIDE, Wall.LEFT)
            .box("A", BoxQuestions.SIZE, BoxSize.FORTY_HIGH)
            .box(
                "B",
                BoxQuestions.SIZE,
                BoxSize.TWENTY_HIGH,
                BoxQuestions.JOINED_TO,
                "A",
                BoxQuestions.JOINT,
                joint,
                BoxQuestions.JOINT_LENGTH,
                "6.058",
                BoxQuestions.ACROSS,
                joint == Joint.STACKED ? "0" : "2.438")
            .room("Living", "A", RoomUse.LIVING_KITCHEN, "6", RoomQuestions.DOOR, DoorToNext.HINGED)
            .room("Hall", "A", RoomUse.HALL, "6.032")
            .room("Bedroom", "B", RoomUse.BEDROOM, "5.898");
    parties.forEach(house::doneBy);
    for (var o : openings) {
      house.opening(
          (String) o.get(0),
          (String) o.get(1),
          (Wall) o.get(2),
          (OpeningKind) o.get(3),
          o.get(4),
          o.get(5),
          OpeningQuestions.SILL,
          o.get(6),
          OpeningQuestions.OFFSET,
          o.get(7));
    }
    return house.scope();
  }

  /** The same, everything hired. */
  public static Scope hired() {
    return hired(Map.of());
  }

  public static Scope hired(Map<Question, Object> more) {
    var house = TestScopes.metric().with(ProjectQuestions.START, START).box("A");
    more.forEach(house::with);
    rooms(house, "A");
    openings(house, "A");
    return house.scope();
  }

  /** Two joined boxes, worked on in a yard, with much of what may be chosen. */
  public static Scope twoBoxes() {
    return rich(twoBoxes(TestScopes.metric())).scope();
  }

  /** One house for every value that a drop-down of a form or table offers, by its name. */
  public static Map<String, Scope> everyChoice(UnitSystem units) {
    var all = new LinkedHashMap<String, Scope>();
    var forms =
        List.of(
            ProjectQuestions.ALL,
            SiteQuestions.ALL,
            DeckAndRoofQuestions.ALL,
            EnvelopeQuestions.ALL,
            ServicesQuestions.ALL,
            FinishesQuestions.ALL,
            OptionsQuestions.ALL);
    for (var form : forms) {
      for (var q : form) {
        if (q.equals(ProjectQuestions.GENERATED_TASKS)) continue;
        for (var choice : q.choices()) {
          Object value = choice;
          put(all, units, q, choice, h -> h.with(q, value));
        }
      }
    }
    for (var q : BoxQuestions.ALL) {
      for (var choice : q.choices()) {
        if (q.equals(BoxQuestions.JOINT) && choice.equals(Joint.NONE.label())) continue;
        var house = TestScopes.in(units).with(ProjectQuestions.START, START);
        if (q.equals(BoxQuestions.JOINT)) {
          house.box("A");
          house.box(
              "B",
              BoxQuestions.JOINED_TO,
              "A",
              BoxQuestions.JOINT,
              choice,
              BoxQuestions.JOINT_LENGTH,
              si("2.3"),
              BoxQuestions.ACROSS,
              si("2.438"));
          rooms(house, "B");
        } else {
          house.box("A", q, choice);
        }
        rooms(house, "A");
        openings(house, "A");
        all.put(q.label() + ": " + choice, owners(house).scope());
      }
    }
    for (var q : OpeningQuestions.ALL) {
      if (q.equals(OpeningQuestions.WALL)) continue;
      for (var choice : q.choices()) {
        var house = oneBedroom(TestScopes.in(units));
        var kind = OpeningKind.WINDOW;
        if (q.equals(OpeningQuestions.KIND)) {
          for (var k : OpeningKind.values()) if (k.label().equals(choice)) kind = k;
          house.opening(
              "X1",
              "A",
              Wall.LEFT,
              kind,
              si("900"),
              si("900"),
              OpeningQuestions.SILL,
              si("900"),
              OpeningQuestions.OFFSET,
              si("2"));
        } else {
          house.opening(
              "X1",
              "A",
              Wall.LEFT,
              kind,
              si("900"),
              si("900"),
              OpeningQuestions.SILL,
              si("900"),
              OpeningQuestions.OFFSET,
              si("2"),
              q,
              choice);
        }
        all.put(q.label() + ": " + choice, house.scope());
      }
    }
    for (var use : RoomUse.values()) {
      var house = oneBedroom(TestScopes.in(units));
      all.put(
          "Use: " + use.label(),
          house.room("X", "A", use, si("1.5"), RoomQuestions.DOOR, DoorToNext.HINGED).scope());
    }
    return all;
  }

  /** On the plain house, and on one with much chosen where a choice may say more there. */
  private static void put(
      Map<String, Scope> all,
      UnitSystem units,
      Question q,
      String choice,
      UnaryOperator<TestScopes> chosen) {
    var name = q.sheet().title() + ", " + q.label() + ": " + choice;
    all.put(name, chosen.apply(oneBedroom(TestScopes.in(units))).scope());
    if (q.sheet() == OwnerSheet.ENVELOPE || q.sheet() == OwnerSheet.DECK_AND_ROOF) {
      all.put(name + ", rich", chosen.apply(rich(twoBoxes(TestScopes.in(units)))).scope());
    }
  }

  private static TestScopes oneBedroom(TestScopes house) {
    house.with(ProjectQuestions.START, START).box("A");
    rooms(house, "A");
    openings(house, "A");
    return owners(house);
  }

  private static TestScopes twoBoxes(TestScopes house) {
    house.with(ProjectQuestions.START, START);
    house.box("A", BoxQuestions.MODIFIED, ModifiedWhere.IN_YARD);
    house.box(
        "B",
        BoxQuestions.JOINED_TO,
        "A",
        BoxQuestions.JOINT,
        Joint.SIDE_BY_SIDE,
        BoxQuestions.JOINT_LENGTH,
        si("6"),
        BoxQuestions.ACROSS,
        si("2.438"));
    for (var box : List.of("A", "B")) rooms(house, box);
    openings(house, "B");
    house.opening(
        "W9",
        "A",
        Wall.LEFT,
        OpeningKind.WINDOW,
        si("1200"),
        si("1200"),
        OpeningQuestions.SILL,
        si("900"),
        OpeningQuestions.OFFSET,
        si("2"));
    return owners(house);
  }

  private static TestScopes rich(TestScopes house) {
    return house
        .with(EnvelopeQuestions.SIDE, InsulationSide.BOTH)
        .with(EnvelopeQuestions.OUTSIDE, InsulationMaterial.PIR)
        .with(EnvelopeQuestions.OUTSIDE_THICKNESS, si("50"))
        .with(EnvelopeQuestions.INSIDE, InsulationMaterial.MINERAL_WOOL)
        .with(EnvelopeQuestions.VAPOUR, VapourControl.values()[1])
        .with(EnvelopeQuestions.MEMBRANE_ON_STEEL, "yes")
        .with(DeckAndRoofQuestions.ROOF, RoofBuild.MEMBRANE)
        .with(DeckAndRoofQuestions.ROOF_INSULATION, si("100"))
        .with(DeckAndRoofQuestions.AWNING_LENGTH, si("4"))
        .with(DeckAndRoofQuestions.AWNING_DEPTH, si("2"))
        .with(DeckAndRoofQuestions.CLADDING, "timber boards on battens")
        .with(DeckAndRoofQuestions.CLAD_SHARE, "0.6")
        .with(SiteQuestions.FLOOR_HEIGHT, si("1200"))
        .with(SiteQuestions.DRAINAGE, "french drain")
        .with(ServicesQuestions.DISHWASHER, "yes")
        .with(FinishesQuestions.FURNITURE, "3000")
        .with(LoanQuestions.AMOUNT, "50000");
  }

  private static void rooms(TestScopes house, String box) {
    house
        .room(box + " living", box, RoomUse.LIVING_KITCHEN, si("5.9"))
        .room(box + " bath", box, RoomUse.BATHROOM, si("2"), RoomQuestions.DOOR, DoorToNext.HINGED)
        .room(box + " bed", box, RoomUse.BEDROOM, si("4"));
  }

  private static void openings(TestScopes house, String box) {
    opening(house, "W1" + box, box, OpeningKind.WINDOW, "1200", "1200", "900", "1");
    opening(house, "W2" + box, box, OpeningKind.WINDOW, "600", "600", "1500", "7");
    opening(house, "W3" + box, box, OpeningKind.WINDOW, "1200", "1200", "900", "9.5");
    opening(house, "D1" + box, box, OpeningKind.DOOR, "900", "2100", "0", "4");
  }

  private static void opening(
      TestScopes house,
      String id,
      String box,
      OpeningKind kind,
      String width,
      String height,
      String sill,
      String offset) {
    house.opening(
        id,
        box,
        Wall.RIGHT,
        kind,
        si(width),
        si(height),
        OpeningQuestions.SILL,
        si(sill),
        OpeningQuestions.OFFSET,
        si(offset));
  }

  private static TestScopes owners(TestScopes house) {
    for (var t :
        List.of(
            Trade.FRAMING,
            Trade.INSULATION,
            Trade.BOARDING,
            Trade.PAINTING,
            Trade.FLOORING,
            Trade.DECKING,
            Trade.JOINERY,
            Trade.CLEANING)) {
      house.doneBy(t, Party.OWNER);
    }
    return house.doneBy(Trade.TILING, Party.MIXED).doneBy(Trade.STEELWORK, Party.MIXED);
  }

  /** A line for each task at which somebody works: something bought and somebody's hours. */
  public static List<Line> oneLineForEveryTask() {
    var lines = new ArrayList<Line>();
    for (var t : BuildTask.values()) {
      if (t.kind() != BuildTask.Kind.WORK) continue;
      lines.add(
          Line.of(
              "all/" + t.id(),
              t.stage(),
              t.title(),
              cornerpost.trace.Figure.constant("10", cornerpost.measure.Unit.EACH),
              cornerpost.measure.Unit.EACH,
              "ten of each",
              Resource.Buy.of("thing", t),
              Resource.Labour.of("doing", t)));
    }
    return lines;
  }
}

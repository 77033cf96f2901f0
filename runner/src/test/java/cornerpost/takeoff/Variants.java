package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.si;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxCondition;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.BoxSize;
import cornerpost.scope.CargoDoors;
import cornerpost.scope.Cladding;
import cornerpost.scope.ConcreteSupply;
import cornerpost.scope.ContainerFloor;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DeckBoard;
import cornerpost.scope.Digging;
import cornerpost.scope.Drainage;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.Foundation;
import cornerpost.scope.FrameSection;
import cornerpost.scope.Glazing;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.Joint;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.Party;
import cornerpost.scope.PermitClass;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.SoilClass;
import cornerpost.scope.Trade;
import cornerpost.scope.Wall;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Houses that between them take every structural choice of the ground, the shell and the outside.
 * Amounts are the same metric ones in either unit system, so that quantities can be compared.
 */
final class Variants {
  private Variants() {}

  static Map<String, TestScopes> all(UnitSystem units) {
    var all = new LinkedHashMap<String, TestScopes>();
    for (var f : Foundation.values()) {
      all.put("foundation " + f, house(units).with(SiteQuestions.FOUNDATION, f));
    }
    for (var s : SoilClass.values()) all.put("soil " + s, house(units).with(SiteQuestions.SOIL, s));
    for (var r : RoofBuild.values()) {
      all.put(
          "roof " + r,
          house(units)
              .with(DeckAndRoofQuestions.ROOF, r)
              .with(DeckAndRoofQuestions.ROOF_INSULATION, si("100")));
    }
    for (var c : Cladding.values()) {
      all.put(
          "cladding " + c,
          house(units)
              .with(DeckAndRoofQuestions.CLADDING, c)
              .with(DeckAndRoofQuestions.CLAD_SHARE, "0.7"));
    }
    for (var b : DeckBoard.values()) {
      all.put("deck " + b, house(units).with(DeckAndRoofQuestions.DECK_BOARD, b));
    }
    for (var m : InsulationMaterial.values()) {
      all.put(
          "outside insulation " + m,
          house(units)
              .with(EnvelopeQuestions.SIDE, InsulationSide.BOTH)
              .with(EnvelopeQuestions.OUTSIDE, m)
              .with(EnvelopeQuestions.OUTSIDE_THICKNESS, si("60")));
    }
    for (var p : PermitClass.values()) {
      all.put("permit " + p, house(units).with(ProjectQuestions.PERMIT, p));
    }
    for (var d : Drainage.values()) {
      all.put("drainage " + d, house(units).with(SiteQuestions.DRAINAGE, d));
    }
    all.put(
        "by hand",
        house(units)
            .with(SiteQuestions.DIGGING, Digging.HAND)
            .with(SiteQuestions.CONCRETE, ConcreteSupply.BAGGED)
            .with(SiteQuestions.ACCESS, SiteAccess.TILT_BED)
            .with(LoanQuestions.AMOUNT, "50000")
            .doneBy(Trade.STEELWORK, Party.OWNER));
    all.put("bare", bare(units));
    for (var size : BoxSize.values()) {
      for (var condition : BoxCondition.values()) {
        all.put(size + " " + condition, box(units, size, condition));
      }
    }
    for (var j : Joint.values()) all.put("joint " + j, joined(units, j));
    all.put("uneven", sideBySide(units, BoxSize.FORTY_HIGH, BoxSize.TWENTY_HIGH));
    all.put("every opening", everyOpening(units));
    return all;
  }

  /** A section of the same size wherever the workbook comes from. */
  private static TestScopes framed(
      TestScopes scopes, String id, String box, Wall wall, OpeningKind kind, String w, String h) {
    return scopes.opening(
        id, box, wall, kind, si(w), si(h), OpeningQuestions.FRAME, FrameSection.SHS_50_3);
  }

  /** One box with a door, windows and a sleeve. */
  static TestScopes house(UnitSystem units) {
    return openings(form(units).box("A"), "A");
  }

  static TestScopes openings(TestScopes scopes, String box) {
    framed(scopes, "D-" + box, box, Wall.RIGHT, OpeningKind.GLAZED_DOOR, "900", "2050");
    framed(scopes, "W-" + box, box, Wall.RIGHT, OpeningKind.WINDOW, "1200", "1050");
    return framed(scopes, "S-" + box, box, Wall.LEFT, OpeningKind.SLEEVE, "110", "110");
  }

  static TestScopes joined(UnitSystem units, Joint joint) {
    var scopes =
        form(units)
            .box("A")
            .box(
                "B",
                BoxQuestions.JOINED_TO,
                "A",
                BoxQuestions.JOINT,
                joint,
                BoxQuestions.JOINT_LENGTH,
                si("12.192"));
    framed(scopes, "W1", "A", Wall.LEFT, OpeningKind.WINDOW, "1200", "1050");
    return framed(scopes, "P1", "A", Wall.RIGHT, OpeningKind.PASS_THROUGH, "2400", "2100");
  }

  /** Box B beside A, both beginning at the same end, over the length of the shorter. */
  static TestScopes sideBySide(UnitSystem units, BoxSize one, BoxSize other) {
    return form(units)
        .box("A", BoxQuestions.SIZE, one)
        .box(
            "B",
            BoxQuestions.SIZE,
            other,
            BoxQuestions.JOINED_TO,
            "A",
            BoxQuestions.JOINT,
            Joint.SIDE_BY_SIDE,
            BoxQuestions.JOINT_LENGTH,
            si("20"),
            BoxQuestions.ACROSS,
            si("2.438"));
  }

  private static TestScopes bare(UnitSystem units) {
    return form(units)
        .with(DeckAndRoofQuestions.DECK, false)
        .with(DeckAndRoofQuestions.GUTTERS, false)
        .with(ProjectQuestions.ENGINEER, false)
        .with(SiteQuestions.FLOOR_HEIGHT, si("0"))
        .with(SiteQuestions.FROST_DEPTH, si("0"))
        .with(SiteQuestions.FENCE, si("0"))
        .with(DeckAndRoofQuestions.STEPS, "0");
  }

  private static TestScopes box(UnitSystem units, BoxSize size, BoxCondition condition) {
    var floors = ContainerFloor.values();
    var doors = CargoDoors.values();
    return openings(
        form(units)
            .box(
                "A",
                BoxQuestions.SIZE,
                size,
                BoxQuestions.CONDITION,
                condition,
                BoxQuestions.FLOOR,
                floors[condition.ordinal() % floors.length],
                BoxQuestions.CARGO_DOORS,
                doors[(condition.ordinal() + size.ordinal()) % doors.length],
                BoxQuestions.MODIFIED,
                ModifiedWhere.values()[size.ordinal() % 2]),
        "A");
  }

  private static TestScopes everyOpening(UnitSystem units) {
    var scopes = form(units);
    for (var doors : CargoDoors.values()) {
      for (var where : ModifiedWhere.values()) {
        scopes.box(
            doors + "-" + where,
            BoxQuestions.CARGO_DOORS,
            doors,
            BoxQuestions.MODIFIED,
            where,
            BoxQuestions.CONDITION,
            BoxCondition.AS_IS);
      }
    }
    int n = 0;
    var frames = FrameSection.values();
    var glazings = Glazing.values();
    for (var doors : CargoDoors.values()) {
      for (var wall : Wall.values()) {
        for (var kind : OpeningKind.values()) {
          for (var glazing : glazings) {
            scopes.opening(
                "O" + n,
                doors + "-" + ModifiedWhere.values()[n % 2],
                wall,
                kind,
                si("500"),
                si("600"),
                OpeningQuestions.GLAZING,
                glazing,
                OpeningQuestions.OPENS,
                n % 3 != 0,
                OpeningQuestions.FRAME,
                frames[n % frames.length]);
            n++;
          }
        }
      }
    }
    return scopes;
  }

  /** Form sheets with the same metric amounts in both unit systems. */
  static TestScopes form(UnitSystem units) {
    var scopes = TestScopes.in(units);
    for (var q : SiteQuestions.ALL) same(scopes, q);
    for (var q : DeckAndRoofQuestions.ALL) same(scopes, q);
    for (var q : EnvelopeQuestions.ALL) same(scopes, q);
    return scopes;
  }

  private static void same(TestScopes scopes, Question q) {
    if (q.kind() != Question.Kind.NUMBER || q.standard().metric().isEmpty()) return;
    scopes.with(q, si(q.standard().metric()));
  }
}

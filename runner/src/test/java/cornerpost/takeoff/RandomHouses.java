package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.si;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxCondition;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.BoxSize;
import cornerpost.scope.CargoDoors;
import cornerpost.scope.ContainerFloor;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.FloorTreatment;
import cornerpost.scope.FrameSection;
import cornerpost.scope.Joint;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Party;
import cornerpost.scope.PermitClass;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Scope;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import cornerpost.scope.Wall;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/**
 * Houses drawn by a seed: one to three boxes, alone or joined, with rooms and openings, and every
 * drop-down of the forms drawn. Amounts are the same metric ones in either unit system.
 */
public final class RandomHouses {
  private static final List<List<Question>> FORMS =
      List.of(
          SiteQuestions.ALL,
          DeckAndRoofQuestions.ALL,
          EnvelopeQuestions.ALL,
          ServicesQuestions.ALL,
          FinishesQuestions.ALL);

  private final SplittableRandom random;
  private final TestScopes house;
  private final int wider;

  private RandomHouses(long seed, UnitSystem units, int wider) {
    this.random = new SplittableRandom(seed);
    this.house = Variants.form(units);
    this.wider = wider;
  }

  /** The house of a seed, for tests of other packages. */
  public static Scope of(long seed, UnitSystem units) {
    return house(seed, units, 0).scope();
  }

  /**
   * The house of a seed with who does what, permit, engineer, orders, calendars and loan drawn too:
   * all that decides which tasks there are, how long and in whose time.
   */
  public static Scope planned(long seed, UnitSystem units) {
    var house = house(seed, units, 0);
    var random = new SplittableRandom(~seed);
    house
        .with(ProjectQuestions.PERMIT, one(random, PermitClass.values()))
        .with(ProjectQuestions.ENGINEER, random.nextBoolean() ? "yes" : "no")
        .with(ProjectQuestions.ORDER_EARLY, random.nextBoolean() ? "yes" : "no")
        .with(ProjectQuestions.CALENDAR, random.nextInt(4) == 0 ? "Six days" : "Weekdays")
        .with(
            OptionsQuestions.OWNER_CALENDAR,
            one(random, new String[] {"Weekends", "Weekends", "Six days", "Weekdays"}))
        .with(OptionsQuestions.OWNER_HANDS, "" + random.nextInt(1, 4))
        .with(LoanQuestions.AMOUNT, random.nextBoolean() ? "50000" : "0");
    int hired = random.nextInt(1, 10); // from nearly all by the owner to nearly all hired
    for (var trade : Trade.values()) {
      house.doneBy(
          trade,
          random.nextInt(10) < hired
              ? Party.HIRED
              : random.nextInt(4) == 0 ? Party.MIXED : Party.OWNER);
    }
    return house.scope();
  }

  private static <T> T one(SplittableRandom random, T[] of) {
    return of[random.nextInt(of.length)];
  }

  /**
   * @param wider millimetres added to the width of every opening
   */
  static TestScopes house(long seed, UnitSystem units, int wider) {
    return new RandomHouses(seed, units, wider).drawn();
  }

  private TestScopes drawn() {
    house.with(ProjectQuestions.START, LocalDate.of(2027, 3, 1));
    for (var form : FORMS) {
      for (var q : form) {
        var choices = q.choices();
        if (!choices.isEmpty()) house.with(q, choices.get(random.nextInt(choices.size())));
        else if (!q.metric().equals(q.us())) {
          q.standard().in(UnitSystem.METRIC).ifPresent(amount -> house.with(q, si(amount)));
        }
      }
    }
    house
        .with(SiteQuestions.SUPPORTS_A_SIDE, "" + random.nextInt(2, 6))
        .with(SiteQuestions.FROST_DEPTH, si("" + random.nextInt(0, 1500)))
        .with(SiteQuestions.FLOOR_HEIGHT, si("" + random.nextInt(0, 1500)))
        .with(EnvelopeQuestions.STUD_SPACING, si("" + random.nextInt(300, 700)))
        .with(EnvelopeQuestions.INSIDE_THICKNESS, si("" + random.nextInt(0, 150)))
        .with(EnvelopeQuestions.CEILING_THICKNESS, si("" + random.nextInt(0, 150)))
        .with(EnvelopeQuestions.PAINT_COATS, "" + random.nextInt(0, 5))
        .with(ServicesQuestions.HEADS, "" + random.nextInt(1, 6));
    int boxes = random.nextInt(1, 4);
    for (int i = 0; i < boxes; i++) box(i);
    return house;
  }

  private void box(int i) {
    var id = "" + (char) ('A' + i);
    var joint = i == 0 ? Joint.NONE : one(Joint.values());
    Object[] joined =
        joint == Joint.NONE
            ? new Object[] {}
            : new Object[] {
              BoxQuestions.JOINED_TO,
              "" + (char) ('A' + i - 1),
              BoxQuestions.JOINT,
              joint,
              BoxQuestions.JOINT_LENGTH,
              si("" + random.nextInt(2, 6))
            };
    Object[] own = {
      BoxQuestions.SIZE, one(BoxSize.values()),
      BoxQuestions.CONDITION, one(BoxCondition.values()),
      BoxQuestions.MODIFIED, one(ModifiedWhere.values()),
      BoxQuestions.FLOOR, one(ContainerFloor.values()),
      BoxQuestions.TREATMENT, one(FloorTreatment.values()),
      BoxQuestions.CARGO_DOORS, one(CargoDoors.values())
    };
    house.box(id, Stream.of(own, joined).flatMap(Stream::of).toArray());
    int rooms = random.nextInt(0, 4);
    for (int r = 0; r < rooms; r++) {
      house.room(
          "Room " + id + r,
          id,
          one(RoomUse.values()),
          si("" + (random.nextInt(10, 30) / 10.0)),
          RoomQuestions.DOOR,
          one(DoorToNext.values()));
    }
    int openings = random.nextInt(0, 5);
    for (int o = 0; o < openings; o++) {
      house.opening(
          id + "-O" + o,
          id,
          one(Wall.values()),
          one(OpeningKind.values()),
          si("" + (random.nextInt(100, 900) + wider)),
          si("" + random.nextInt(100, 900)),
          OpeningQuestions.SILL,
          si("" + random.nextInt(0, 1000)),
          OpeningQuestions.OFFSET,
          si("" + (random.nextInt(3, 12) / 10.0)),
          OpeningQuestions.FRAME,
          random.nextInt(5) == 0 ? FrameSection.NO_FRAME : FrameSection.SHS_50_3);
    }
  }

  private <T> T one(T[] of) {
    return of[random.nextInt(of.length)];
  }
}

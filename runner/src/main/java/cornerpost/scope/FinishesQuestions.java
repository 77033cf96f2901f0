package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.FINISHES;

import cornerpost.measure.Unit;
import java.util.List;

/** What sheet Finishes asks. */
public final class FinishesQuestions {
  public static final Question FLOOR =
      Question.oneOf(FINISHES, "Floor covering", FloorFinish.class).standard(FloorFinish.VINYL);
  public static final Question WET_FLOOR =
      Question.oneOf(FINISHES, "Wet-room floor", WetFloor.class).standard(WetFloor.TILE);
  public static final Question WALL_TILE_HEIGHT =
      Question.number(FINISHES, "Wall tile height in wet rooms", Unit.MM, Unit.IN)
          .standard("1200", "48")
          .upTo("2800")
          .help("From the floor up.");
  public static final Question WASHING =
      Question.oneOf(FINISHES, "To wash in", Washing.class).standard(Washing.SHOWER);
  public static final Question BATHROOM_LEVEL =
      Question.oneOf(FINISHES, "Bathroom fittings", Standard.class).standard(Standard.MIDDLE);
  public static final Question KITCHEN_RUN =
      Question.number(FINISHES, "Kitchen run", Unit.M, Unit.FT)
          .standard("3", "10")
          .upTo("15")
          .help("All base units together.");
  public static final Question WALL_UNITS =
      Question.share(FINISHES, "Share of the run with wall units")
          .standard("0.5")
          .upTo("1")
          .help("Of the kitchen run.");
  public static final Question KITCHEN_LEVEL =
      Question.oneOf(FINISHES, "Kitchen units", Standard.class).standard(Standard.MIDDLE);
  public static final Question WORKTOP =
      Question.oneOf(FINISHES, "Worktop", Worktop.class).standard(Worktop.LAMINATE);
  public static final Question APPLIANCES =
      Question.oneOf(FINISHES, "Appliances", Standard.class).standard(Standard.MIDDLE);
  public static final Question INNER_DOORS =
      Question.oneOf(FINISHES, "Inner doors", InnerDoor.class).standard(InnerDoor.HOLLOW);
  public static final Question SKIRTING = Question.yesNo(FINISHES, "Skirting").standard("yes");
  public static final Question WARDROBE =
      Question.number(FINISHES, "Wardrobe run", Unit.M, Unit.FT)
          .standard("1.8", "6")
          .upTo("15")
          .help("All wardrobes together.");
  public static final Question BLINDS = Question.yesNo(FINISHES, "Blinds").standard("yes");
  public static final Question FURNITURE =
      Question.money(FINISHES, "Furniture allowance").standard("0");

  public static final List<Question> ALL =
      List.of(
          FLOOR,
          WET_FLOOR,
          WALL_TILE_HEIGHT,
          WASHING,
          BATHROOM_LEVEL,
          KITCHEN_RUN,
          WALL_UNITS,
          KITCHEN_LEVEL,
          WORKTOP,
          APPLIANCES,
          INNER_DOORS,
          SKIRTING,
          WARDROBE,
          BLINDS,
          FURNITURE);

  private FinishesQuestions() {}
}

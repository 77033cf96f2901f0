package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.DECK_AND_ROOF;

import cornerpost.measure.Unit;
import java.util.List;

/** What sheet Deck and roof asks. */
public final class DeckAndRoofQuestions {
  public static final Question DECK = Question.yesNo(DECK_AND_ROOF, "Deck").standard("yes");
  public static final Question DECK_BOX =
      Question.from(DECK_AND_ROOF, "Deck along box", Question.OwnList.BOXES)
          .optional()
          .help("Empty: the first box.");
  public static final Question DECK_SIDE =
      Question.oneOf(DECK_AND_ROOF, "Deck on side", Wall.class).standard(Wall.RIGHT);
  public static final Question DECK_LENGTH =
      Question.number(DECK_AND_ROOF, "Deck length", Unit.M, Unit.FT)
          .standard("12.19", "40")
          .upTo("60");
  public static final Question DECK_DEPTH =
      Question.number(DECK_AND_ROOF, "Deck depth", Unit.M, Unit.FT).standard("2.4", "8").upTo("12");
  public static final Question DECK_BOARD =
      Question.oneOf(DECK_AND_ROOF, "Deck boards", DeckBoard.class).standard(DeckBoard.SOFTWOOD);
  public static final Question JOIST_SPACING =
      Question.number(DECK_AND_ROOF, "Joist spacing", Unit.MM, Unit.IN)
          .from("200")
          .upTo("800")
          .standard("400", "16");
  public static final Question STEPS =
      Question.whole(DECK_AND_ROOF, "Flights of steps").standard("1").upTo("6");
  public static final Question STEP_WIDTH =
      Question.number(DECK_AND_ROOF, "Width of steps", Unit.MM, Unit.IN)
          .from("600")
          .upTo("6000")
          .standard("1000", "40");
  public static final Question AWNING_LENGTH =
      Question.number(DECK_AND_ROOF, "Awning length", Unit.M, Unit.FT).standard("0").upTo("60");
  public static final Question AWNING_DEPTH =
      Question.number(DECK_AND_ROOF, "Awning depth", Unit.M, Unit.FT).standard("0").upTo("12");
  public static final Question ROOF =
      Question.oneOf(DECK_AND_ROOF, "Roof", RoofBuild.class).standard(RoofBuild.OVER_ROOF);
  public static final Question OVERHANG =
      Question.number(DECK_AND_ROOF, "Roof overhang", Unit.MM, Unit.IN)
          .standard("300", "12")
          .upTo("2000");
  public static final Question ROOF_INSULATION =
      Question.number(DECK_AND_ROOF, "Insulation above the roof", Unit.MM, Unit.IN)
          .standard("0")
          .upTo("400");
  public static final Question GUTTERS = Question.yesNo(DECK_AND_ROOF, "Gutters").standard("yes");
  public static final Question CLADDING =
      Question.oneOf(DECK_AND_ROOF, "Outside walls", Cladding.class).standard(Cladding.PAINT);
  public static final Question CLAD_SHARE =
      Question.share(DECK_AND_ROOF, "Share of the walls clad")
          .upTo("1")
          .standard("1")
          .help("The rest is painted.");
  public static final Question PATH_LENGTH =
      Question.number(DECK_AND_ROOF, "Path length", Unit.M, Unit.FT)
          .standard("10", "33")
          .upTo("500");
  public static final Question PLANTING =
      Question.number(DECK_AND_ROOF, "Area to grade and plant", Unit.M2, Unit.SQ_FT)
          .standard("60", "650")
          .upTo("20000");

  public static final List<Question> ALL =
      List.of(
          DECK,
          DECK_BOX,
          DECK_SIDE,
          DECK_LENGTH,
          DECK_DEPTH,
          DECK_BOARD,
          JOIST_SPACING,
          STEPS,
          STEP_WIDTH,
          AWNING_LENGTH,
          AWNING_DEPTH,
          ROOF,
          OVERHANG,
          ROOF_INSULATION,
          GUTTERS,
          CLADDING,
          CLAD_SHARE,
          PATH_LENGTH,
          PLANTING);

  private DeckAndRoofQuestions() {}
}

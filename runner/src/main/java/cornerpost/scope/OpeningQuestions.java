package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.OPENINGS;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Openings. */
public final class OpeningQuestions {
  public static final Question ID =
      Question.text(OPENINGS, "Opening").help("A short name: W1, D1.");
  public static final Question BOX = Question.from(OPENINGS, "Box", Question.OwnList.BOXES);
  public static final Question WALL = Question.oneOf(OPENINGS, "Wall", Wall.class);
  public static final Question KIND =
      Question.oneOf(OPENINGS, "Kind", OpeningKind.class)
          .help("A pass-through is entered once, on either of the two boxes.");
  public static final Question WIDTH =
      Question.number(OPENINGS, "Width", Unit.MM, Unit.IN).from("50").upTo("16000");
  public static final Question HEIGHT =
      Question.number(OPENINGS, "Height", Unit.MM, Unit.IN).from("50").upTo("16000");
  public static final Question SILL =
      Question.number(OPENINGS, "Sill height", Unit.MM, Unit.IN)
          .upTo("3000")
          .standard("0")
          .help("Above the container floor; 0 for doors.");
  public static final Question OFFSET =
      Question.number(OPENINGS, "Offset", Unit.M, Unit.FT)
          .upTo("16.2")
          .help(
              "From the door-end corner to the near edge; on end walls from the left corner, seen from outside.");
  public static final Question GLAZING =
      Question.oneOf(OPENINGS, "Glazing", Glazing.class).standard(Glazing.DOUBLE_LOW_E);
  public static final Question OPENS =
      Question.yesNo(OPENINGS, "Opens").standard("yes").help("Whether the unit can be opened.");
  public static final Question FRAME =
      Question.oneOf(OPENINGS, "Steel frame", FrameSection.class)
          .standard(FrameSection.SHS_50_3.label(), FrameSection.HSS_2_2_8.label());

  public static final Question LANDING =
      Question.text(OPENINGS, "Landing")
          .optional()
          .help(
              "Of an outside door that the deck does not serve: the Id of the row of sheet Own items"
                  + " for its landing and steps.");

  public static final List<Question> ALL =
      List.of(ID, BOX, WALL, KIND, WIDTH, HEIGHT, SILL, OFFSET, GLAZING, OPENS, FRAME, LANDING);

  private OpeningQuestions() {}
}

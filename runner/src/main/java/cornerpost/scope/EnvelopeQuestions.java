package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.ENVELOPE;

import cornerpost.measure.Unit;
import java.util.List;

/** What sheet Envelope asks. */
public final class EnvelopeQuestions {
  public static final Question SIDE =
      Question.oneOf(ENVELOPE, "Wall insulation on", InsulationSide.class)
          .standard(InsulationSide.INSIDE);
  public static final Question INSIDE =
      Question.oneOf(ENVELOPE, "Wall insulation inside", InsulationMaterial.class)
          .standard(InsulationMaterial.CLOSED_CELL);
  public static final Question INSIDE_THICKNESS = thickness("Thickness inside", "50", "2");
  public static final Question OUTSIDE =
      Question.oneOf(ENVELOPE, "Wall insulation outside", InsulationMaterial.class)
          .standard(InsulationMaterial.NONE);
  public static final Question OUTSIDE_THICKNESS = thickness("Thickness outside", "0", "0");
  public static final Question CEILING =
      Question.oneOf(ENVELOPE, "Ceiling insulation", InsulationMaterial.class)
          .standard(InsulationMaterial.CLOSED_CELL);
  public static final Question CEILING_THICKNESS = thickness("Ceiling thickness", "75", "3");
  public static final Question UNDERFLOOR =
      Question.oneOf(ENVELOPE, "Underfloor insulation", InsulationMaterial.class)
          .standard(InsulationMaterial.CLOSED_CELL);
  public static final Question UNDERFLOOR_THICKNESS = thickness("Underfloor thickness", "50", "2");
  public static final Question VAPOUR =
      Question.oneOf(ENVELOPE, "Vapour control", VapourControl.class)
          .standard(VapourControl.NONE)
          .help("Keeps room air from cold steel.");
  public static final Question MEMBRANE_ON_STEEL =
      Question.yesNo(ENVELOPE, "Membrane on the steel before the studs")
          .standard("no")
          .help("Usual where batts are used.");
  public static final Question STUD =
      Question.oneOf(ENVELOPE, "Studs", StudSection.class).standard(StudSection.TIMBER_38_38);
  public static final Question TREATED = Question.yesNo(ENVELOPE, "Treated timber").standard("yes");
  public static final Question STUD_SPACING =
      Question.number(ENVELOPE, "Stud spacing", Unit.MM, Unit.IN)
          .from("200")
          .upTo("1200")
          .standard("600", "24")
          .help("From middle to middle.");
  public static final Question NOGGING_ROWS =
      Question.whole(ENVELOPE, "Rows of noggings")
          .standard("1")
          .upTo("5")
          .help("Cross pieces between the studs; each row runs along the whole wall.");
  public static final Question STAND_OFF =
      Question.number(ENVELOPE, "Gap behind the studs", Unit.MM, Unit.IN)
          .standard("0")
          .upTo("200")
          .help("Between the steel and the studs.");
  public static final Question BATTEN_SPACING =
      Question.number(ENVELOPE, "Ceiling batten spacing", Unit.MM, Unit.IN)
          .from("200")
          .upTo("1200")
          .standard("400", "16")
          .help("From middle to middle.");
  public static final Question PARTITION_STUD =
      Question.oneOf(ENVELOPE, "Partition studs", StudSection.class)
          .standard(StudSection.TIMBER_38_64);
  public static final Question WALL_BOARD =
      Question.oneOf(ENVELOPE, "Wall board", LiningBoard.class).standard(LiningBoard.PLASTERBOARD);
  public static final Question CEILING_BOARD =
      Question.oneOf(ENVELOPE, "Ceiling board", LiningBoard.class)
          .standard(LiningBoard.PLASTERBOARD);
  public static final Question BOARD_FINISH =
      Question.oneOf(ENVELOPE, "Board finish", BoardFinish.class).standard(BoardFinish.SKIM);
  public static final Question PAINT_COATS =
      Question.whole(ENVELOPE, "Coats of paint inside").standard("3").upTo("6");
  public static final Question SHELL_COATS =
      Question.whole(ENVELOPE, "Coats of paint outside").standard("2").upTo("6");

  public static final List<Question> ALL =
      List.of(
          SIDE,
          INSIDE,
          INSIDE_THICKNESS,
          OUTSIDE,
          OUTSIDE_THICKNESS,
          CEILING,
          CEILING_THICKNESS,
          UNDERFLOOR,
          UNDERFLOOR_THICKNESS,
          VAPOUR,
          MEMBRANE_ON_STEEL,
          STUD,
          TREATED,
          STUD_SPACING,
          NOGGING_ROWS,
          STAND_OFF,
          BATTEN_SPACING,
          PARTITION_STUD,
          WALL_BOARD,
          CEILING_BOARD,
          BOARD_FINISH,
          PAINT_COATS,
          SHELL_COATS);

  private EnvelopeQuestions() {}

  private static Question thickness(String label, String mm, String inches) {
    return Question.number(ENVELOPE, label, Unit.MM, Unit.IN).standard(mm, inches).upTo("400");
  }
}

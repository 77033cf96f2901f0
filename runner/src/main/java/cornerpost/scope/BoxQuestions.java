package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.CONTAINERS;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Containers. */
public final class BoxQuestions {
  public static final Question ID = Question.text(CONTAINERS, "Box").help("A short name: A, B.");
  public static final Question SIZE =
      Question.oneOf(CONTAINERS, "Size", BoxSize.class).standard(BoxSize.FORTY_HIGH);
  public static final Question CONDITION =
      Question.oneOf(CONTAINERS, "Condition", BoxCondition.class).standard(BoxCondition.ONE_TRIP);
  public static final Question MODIFIED =
      Question.oneOf(CONTAINERS, "Steelwork done", ModifiedWhere.class)
          .standard(ModifiedWhere.ON_SITE);
  public static final Question JOINED_TO =
      Question.from(CONTAINERS, "Joined to", Question.OwnList.BOXES)
          .optional()
          .help("The box it is joined to; empty where it stands alone.");
  public static final Question JOINT =
      Question.oneOf(CONTAINERS, "Joint", Joint.class)
          .standard(Joint.NONE)
          .help("A box stacked on top brings a stairwell and a stair inside.");
  public static final Question JOINT_LENGTH =
      Question.number(CONTAINERS, "Joint length", Unit.M, Unit.FT)
          .standard("0")
          .upTo("20")
          .help("Over which length the two boxes touch.");
  public static final Question FLOOR =
      Question.oneOf(CONTAINERS, "Floor", ContainerFloor.class).standard(ContainerFloor.OVERLAY);
  public static final Question TREATMENT =
      Question.oneOf(CONTAINERS, "Floor treatment", FloorTreatment.class)
          .standard(FloorTreatment.UNKNOWN)
          .help("As the data plate says.");
  public static final Question CARGO_DOORS =
      Question.oneOf(CONTAINERS, "Cargo doors", CargoDoors.class).standard(CargoDoors.KEEP);
  public static final Question ALONG =
      Question.number(CONTAINERS, "Position along", Unit.M, Unit.FT)
          .from("-200")
          .standard("0")
          .help("Of the door-end left corner on the plot.");
  public static final Question ACROSS =
      Question.number(CONTAINERS, "Position across", Unit.M, Unit.FT)
          .from("-200")
          .standard("0")
          .help("Of the same corner, to the right hand of somebody who looks along.");
  public static final Question ROTATION =
      Question.number(CONTAINERS, "Rotation, degrees", Unit.ONE)
          .from("-360")
          .upTo("360")
          .standard("0")
          .help("Anticlockwise, seen from above.");

  public static final List<Question> ALL =
      List.of(
          ID,
          SIZE,
          CONDITION,
          MODIFIED,
          JOINED_TO,
          JOINT,
          JOINT_LENGTH,
          FLOOR,
          TREATMENT,
          CARGO_DOORS,
          ALONG,
          ACROSS,
          ROTATION);

  private BoxQuestions() {}
}

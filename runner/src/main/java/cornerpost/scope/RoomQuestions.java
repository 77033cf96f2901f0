package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.ROOMS;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Rooms: the rooms of each box in line, from the cargo-door end. */
public final class RoomQuestions {
  public static final Question ID = Question.text(ROOMS, "Room").help("A short name: Bedroom 1.");
  public static final Question BOX = Question.from(ROOMS, "Box", Question.OwnList.BOXES);
  public static final Question USE = Question.oneOf(ROOMS, "Use", RoomUse.class);
  public static final Question LENGTH =
      Question.number(ROOMS, "Length", Unit.M, Unit.FT)
          .from("0.3")
          .upTo("16.2")
          .help("Along the box, between the end wall and the middle of the partition.");
  public static final Question DOOR =
      Question.oneOf(ROOMS, "Towards the next room", DoorToNext.class).standard(DoorToNext.OPEN);

  public static final List<Question> ALL = List.of(ID, BOX, USE, LENGTH, DOOR);

  private RoomQuestions() {}
}

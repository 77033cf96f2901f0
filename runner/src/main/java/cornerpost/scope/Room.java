package cornerpost.scope;

import cornerpost.trace.Figure;

/** A room, as chosen; rooms of a box lie in line from its cargo-door end. */
public record Room(Answers row) {
  public String id() {
    return row.text(RoomQuestions.ID);
  }

  public String box() {
    return row.text(RoomQuestions.BOX);
  }

  public RoomUse use() {
    return row.option(RoomQuestions.USE, RoomUse.class);
  }

  /** Along the box, from the end wall or the middle of a partition to the next. */
  public Figure length() {
    return row.figure(RoomQuestions.LENGTH);
  }

  public DoorToNext towardsNext() {
    return row.option(RoomQuestions.DOOR, DoorToNext.class);
  }
}

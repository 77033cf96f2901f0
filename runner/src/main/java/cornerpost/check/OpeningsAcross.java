package cornerpost.check;

import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.scope.Box;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.Wall;
import cornerpost.scope.WallCuts;
import cornerpost.scope.WallCuts.Cut;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** Openings that a partition meets: a window into two rooms, a door half walled up. */
final class OpeningsAcross implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    var cuts = new WallCuts(in.scope(), in.facts());
    for (var box : in.scope().boxes()) {
      var rooms = in.scope().roomsOf(box);
      var at = box.fact(in.facts(), "length").minus(box.fact(in.facts(), "inside-length")).over(2);
      for (int i = 0; i + 1 < rooms.size(); i++) {
        at = at.plus(rooms.get(i).length());
        if (rooms.get(i).towardsNext() == DoorToNext.OPEN) continue;
        for (var wall : List.of(Wall.LEFT, Wall.RIGHT, Wall.ROOF)) {
          for (var cut : cuts.in(box, wall)) {
            if (across(cut, at)) found.add(say(in, box, cut, rooms.get(i), rooms.get(i + 1), at));
          }
        }
      }
    }
    return found;
  }

  private static boolean across(Cut cut, Figure partition) {
    return cut.opening().kind() != OpeningKind.SLEEVE
        && Say.less(cut.offset(), partition)
        && Say.less(partition, cut.end());
  }

  private static Check say(
      CheckInput in, Box box, Cut cut, Room before, Room after, Figure partition) {
    var say = new Say(in);
    Opening o = cut.opening();
    return new Check(
        "across/" + o.id() + "/" + before.id(),
        Topic.ROOMS,
        PROFESSIONAL,
        "Opening "
            + o.id()
            + (o.box().equals(box.id()) ? "" : " in box " + box.id())
            + ", from "
            + say.length(cut.offset())
            + " to "
            + say.length(cut.end())
            + ", lies across the partition between "
            + before.id()
            + " and "
            + after.id()
            + " at "
            + say.length(partition)
            + ": move the one or the other. All three are measured from the outside corner at the"
            + " door end; a room's own length begins at the inside of the end wall",
        "geometry",
        List.of(o.row().cell(OpeningQuestions.OFFSET), before.row().cell(RoomQuestions.LENGTH)),
        in.tasks("mark-openings", "partitions"));
  }
}

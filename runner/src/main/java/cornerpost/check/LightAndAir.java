package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.measure.Dimension;
import cornerpost.scope.Opening;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Glass and openable area of each habitable room, as a share of its floor. */
final class LightAndAir implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    for (var room : in.scope().rooms()) {
      var floor = in.measured("room/" + room.id() + "/area");
      if (floor.isEmpty() || !ClearSizes.habitable(room.use())) continue;
      found.add(
          share(
              in,
              room,
              floor.get(),
              "light",
              "glazing-share",
              "glass-of-unit",
              RoomOpenings::glazed));
      found.add(
          share(
              in,
              room,
              floor.get(),
              "air",
              "opening-share",
              "open-of-unit",
              o -> (RoomOpenings.glazed(o) || RoomOpenings.door(o)) && o.opens()));
    }
    return found;
  }

  private static Check share(
      CheckInput in,
      Room room,
      Figure floor,
      String what,
      String limit,
      String part,
      Predicate<Opening> counts) {
    var areas =
        RoomOpenings.of(in, room).stream()
            .filter(counts)
            .map(o -> o.width().times(o.height()).times(in.limit(part)))
            .toList();
    var have = Figure.sum(Dimension.AREA, areas);
    var need = floor.times(in.limit(limit));
    var say = new Say(in);
    boolean lacks = Say.less(have, need);
    var kind = what.equals("light") ? "glass" : "openable area";
    return new Check(
        "room-" + what + "/" + room.id(),
        Topic.ROOMS,
        lacks ? PROFESSIONAL : NOTE,
        room.id()
            + " has about "
            + say.area(have)
            + " of "
            + kind
            + "; "
            + Say.share(in.limit(limit))
            + " of its floor is "
            + say.area(need)
            + (lacks ? ": a larger window, or " + instead(what) + " as the code allows" : ""),
        in.source(limit),
        List.of(room.row().cell(RoomQuestions.USE)),
        in.tasks("mark-openings"));
  }

  private static String instead(String what) {
    return what.equals("light") ? "artificial light" : "mechanical ventilation";
  }
}

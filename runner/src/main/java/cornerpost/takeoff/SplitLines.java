package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Room;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Refrigerant lines from where the units hang: the outdoor unit on the outside wall at the middle
 * of the first living room, an indoor unit in each room lived in, living rooms first. A line runs
 * along the box to the middle of its room and across other boxes on the way; rise, passage through
 * the wall and tails come with each. Further indoor units than such rooms go the mean way.
 */
final class SplitLines {
  private final Job job;
  private final Inside in;

  SplitLines(Job job, Inside in) {
    this.job = job;
    this.in = in;
  }

  Figure length(Tally out, Figure heads) {
    var rooms = rooms();
    var tails = job.fact("split.line-tails");
    if (rooms.isEmpty()) {
      var first = job.scope().boxes().get(0);
      return heads.times(new Shape(job).length(first).over(2).plus(tails));
    }
    var ways = new ArrayList<Figure>();
    for (var room : rooms) {
      ways.add(
          out.add(
              "room-split/" + room.id() + "/line",
              room.id() + ", refrigerant line from the outdoor unit",
              way(rooms.get(0), room).plus(tails),
              job.length(),
              "along and across the boxes from the middle of the first living room, and rise,"
                  + " passage and tails"));
    }
    var terms = new ArrayList<Figure>();
    for (int i = 0; i < ways.size(); i++) {
      var hung = heads.minus(Figure.count(i)).atLeastZero().min(Figure.count(1));
      terms.add(ways.get(i).times(hung));
    }
    var more = heads.minus(Figure.count(ways.size())).atLeastZero();
    terms.add(more.times(Inside.lengths(ways).over(ways.size())));
    return Inside.lengths(terms);
  }

  private List<Room> rooms() {
    return job.scope().rooms().stream()
        .filter(ElectricalPoints::isLivedIn)
        .sorted(Comparator.comparing(SplitLines::bedroom)) // stable: else as they lie
        .toList();
  }

  private static boolean bedroom(Room room) {
    return switch (room.use()) {
      case BEDROOM -> true;
      case LIVING, LIVING_KITCHEN, LIVING_SLEEPING, KITCHEN, BATHROOM, HALL, UTILITY, STORE ->
          false;
    };
  }

  private Figure way(Room from, Room to) {
    if (from.id().equals(to.id())) return Figure.zero(Dimension.LENGTH);
    var along = Inside.apart(in.fromServices(from), in.fromServices(to));
    if (from.box().equals(to.box())) return along;
    return along.plus(Inside.apart(in.fromFirstBox(in.boxOf(from)), in.fromFirstBox(in.boxOf(to))));
  }
}

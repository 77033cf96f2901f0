package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.SKIRTING;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Opening;
import cornerpost.scope.Room;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Inside.Stretch;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Skirting round the rooms that are not tiled: along every wall, up to doors and to each opening
 * that reaches down to it, a window as low as the skirting is high too, and not behind kitchen
 * units. The edges of a way through two boxes are cased, not skirted.
 */
final class Skirting implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var out = new Tally(Stage.FINISHES);
    if (!job.scope().finishes().yes(FinishesQuestions.SKIRTING)) return out.lines();
    var in = new Inside(job);
    var taken = new ArrayList<>(takenByOpenings(job, in, out));
    var behindUnits = takenByUnits(job, in, out);
    taken.addAll(behindUnits.values());
    out.addCut(
        "trim/house/skirting",
        "Skirting",
        length(job, in, taken),
        job.length(),
        "wall lines of dry rooms less doors, openings down to the floor and kitchen units",
        boards(job, in, behindUnits),
        Buy.of("skirting", job.fact("waste.studs"), SKIRTING),
        Labour.of("fit-skirting", SKIRTING));
    return out.lines();
  }

  /** What each opening takes of the skirting; a way through two boxes in the rooms of both. */
  private static List<Figure> takenByOpenings(Job job, Inside in, Tally out) {
    var rows = new ArrayList<Figure>();
    for (var o : job.scope().openings()) {
      if (!Inside.isFramed(o)) continue;
      var taken = new ArrayList<Figure>();
      for (var box : job.scope().boxes()) {
        for (var wall : Inside.WALLS) {
          if (!in.openings(box, wall).contains(o)) continue;
          if (job.scope().roomsOf(box).isEmpty()) taken.add(in.taken(box, o, wall).length());
          for (var room : job.scope().roomsOf(box)) {
            if (room.use() == RoomUse.BATHROOM || !in.walls(room).contains(wall)) continue;
            taken.add(in.taken(room, o, wall).length());
          }
        }
      }
      if (taken.isEmpty()) continue;
      rows.add(
          out.add(
              "opening/" + o.id() + "/skirting",
              "Opening " + o.id() + ": skirting that it takes",
              ifLow(job, o, Inside.lengths(taken)),
              job.length(),
              "its width in the walls of dry rooms, if it comes down to the skirting"));
    }
    return rows;
  }

  /** The base units of a kitchen, as far as its room has walls for them. */
  private static Map<String, Figure> takenByUnits(Job job, Inside in, Tally out) {
    var rows = new LinkedHashMap<String, Figure>();
    for (var room : in.kitchens()) {
      rows.put(
          room.id(),
          out.add(
              "room-kitchen/" + room.id() + "/skirting",
              room.id() + ": skirting that kitchen units take",
              job.scope().finishes().figure(FinishesQuestions.KITCHEN_RUN).min(line(job, in, room)),
              job.length(),
              "run of the base units, not more than the walls of the room"));
    }
    return rows;
  }

  /** The line of its walls less inner doors. */
  private static Figure line(Job job, Inside in, Room room) {
    long doors = doors(in, room);
    var line = in.wallLine(room);
    if (doors == 0) return line;
    return line.minus(job.fact("inner-door.opening-width").times(doors)).atLeastZero();
  }

  private static Figure length(Job job, Inside in, List<Figure> taken) {
    var lines = new ArrayList<Figure>();
    for (var room : job.scope().rooms()) {
      if (room.use() == RoomUse.BATHROOM) continue;
      lines.add(line(job, in, room));
    }
    for (var box : job.scope().boxes()) {
      if (!job.scope().roomsOf(box).isEmpty()) continue;
      lines.add(in.clearLength(box).plus(in.clearWidth(box)).times(2));
    }
    var all = Inside.lengths(lines);
    return taken.isEmpty() ? all : all.minus(Inside.lengths(taken)).atLeastZero();
  }

  /** A door ends the skirting whatever its sill; a window only where it comes down to it. */
  private static Figure ifLow(Job job, Opening opening, Figure length) {
    if (Inside.isWalkedThrough(opening)) return length;
    return opening
        .sill()
        .ifAtLeast(job.fact("skirting.height"), Figure.zero(Dimension.LENGTH), length);
  }

  private static List<Opening> framed(Inside in, Box box, Wall wall) {
    return in.openings(box, wall).stream().filter(Inside::isFramed).toList();
  }

  private static long doors(Inside in, Room room) {
    return in.partitions(room).stream().filter(Inside.Partition::hasDoor).count();
  }

  // ---- boards ---------------------------------------------------------------------------------

  /** A board along each wall, in parts where an opening parts it, less those behind units. */
  private static List<Piece> boards(Job job, Inside in, Map<String, Figure> behindUnits) {
    var boards = new ArrayList<Piece>();
    var beyond = Figure.zero(Dimension.LENGTH);
    for (var room : job.scope().rooms()) {
      if (room.use() == RoomUse.BATHROOM) continue;
      var ofRoom = new ArrayList<Piece>();
      for (var wall : in.walls(room)) {
        var run = Inside.isAcross(wall) ? in.width(room) : in.length(room);
        var gaps = gaps(job, in, in.boxOf(room), wall, o -> in.taken(room, o, wall));
        ofRoom.addAll(parts(gaps, run, room.id() + along(wall)));
      }
      for (var p : in.partitions(room)) {
        if (!p.hasDoor()) {
          ofRoom.add(Piece.of(in.width(room), 1, room.id() + ", skirting across the box"));
          continue;
        }
        var beside = job.fact("inner-door.offset");
        var rest = in.width(room).minus(job.fact("inner-door.opening-width")).minus(beside);
        ofRoom.add(Piece.of(beside, 1, room.id() + ", skirting beside a door"));
        ofRoom.add(Piece.of(rest, 1, room.id() + ", skirting beyond a door"));
      }
      var units = behindUnits.get(room.id());
      if (units != null) beyond = beyond.plus(leaveOut(ofRoom, units));
      boards.addAll(ofRoom);
    }
    for (var box : job.scope().boxes()) {
      if (!job.scope().roomsOf(box).isEmpty()) continue;
      for (var wall : Inside.WALLS) {
        var run = Inside.isAcross(wall) ? in.clearWidth(box) : in.clearLength(box);
        var gaps = gaps(job, in, box, wall, o -> in.taken(box, o, wall));
        boards.addAll(parts(gaps, run, box.id() + along(wall)));
      }
    }
    leaveOut(boards, beyond);
    return boards;
  }

  /**
   * Units stand along the longest boards, which they shorten or leave out.
   *
   * @return what of the run is longer than all boards
   */
  private static Figure leaveOut(List<Piece> boards, Figure run) {
    var left = run;
    while (left.value().signum() > 0 && !boards.isEmpty()) {
      var longest =
          boards.stream().max(Comparator.comparing(b -> b.length().value())).orElseThrow();
      var rest = longest.length().minus(left);
      left = left.minus(longest.length()).atLeastZero();
      int at = boards.indexOf(longest);
      boards.remove(at);
      if (rest.value().signum() > 0) {
        boards.add(at, Piece.of(rest, 1, longest.what() + ", beside kitchen units"));
      }
    }
    return left;
  }

  private static String along(Wall wall) {
    return ", skirting " + (Inside.isAcross(wall) ? "across" : "along") + " the box";
  }

  /** Where a wall has none, in the order of the wall. */
  private static List<Stretch> gaps(
      Job job, Inside in, Box box, Wall wall, Function<Opening, Stretch> taken) {
    var gaps = new ArrayList<Stretch>();
    for (var o : framed(in, box, wall)) {
      var gap = taken.apply(o);
      if (!ifLow(job, o, gap.length()).isZero()) gaps.add(gap);
    }
    gaps.sort(Comparator.comparing(gap -> gap.from().value()));
    return gaps;
  }

  private static List<Piece> parts(List<Stretch> gaps, Figure run, String what) {
    if (gaps.isEmpty()) return List.of(Piece.of(run, 1, what));
    var parts = new ArrayList<Piece>();
    var from = Figure.zero(Dimension.LENGTH);
    for (var gap : gaps) {
      parts.add(Piece.of(gap.from().minus(from), 1, what + ", up to an opening"));
      from = gap.to();
    }
    parts.add(Piece.of(run.minus(from), 1, what + ", beyond an opening"));
    parts.removeIf(p -> p.length().value().signum() <= 0);
    return parts;
  }
}

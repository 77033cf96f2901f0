package cornerpost.plan;

import cornerpost.schedule.PathBetween;
import cornerpost.schedule.Timetable;
import cornerpost.schedule.Timing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** Asks the planned order of work how much room it leaves. */
final class SlippageMaker {
  /** The longest path and so many that come next. */
  private static final int PATHS = 4;

  /** Tasks that are looked at for a path of their own. */
  private static final int LOOKED_AT = 12;

  private final Timetable times;

  private SlippageMaker(Timetable times) {
    this.times = times;
  }

  static Slippage of(Timetable ordered) {
    var maker = new SlippageMaker(ordered);
    var slips = new HashMap<String, Slippage.Slip>();
    ordered
        .finishMoves(Slippage.DELAYS)
        .forEach(
            (id, moves) -> {
              var t = ordered.timing(id);
              slips.put(
                  id, new Slippage.Slip(Days.of(t.totalFloatMinutes(), t.dayMinutes()), moves));
            });
    return new Slippage(slips, maker.paths());
  }

  /** Each next path leads through the task with least float that no path before it has. */
  private List<Slippage.NearPath> paths() {
    var network = times.network();
    if (network.find(ProgrammeMaker.DELIVERY).isEmpty()
        || network.find(ProgrammeMaker.MOVE_IN).isEmpty()) {
      return List.of();
    }
    var found = new ArrayList<Slippage.NearPath>();
    var used = new HashSet<String>();
    var next =
        times.timings().stream()
            .filter(t -> t.activity().progress().finish().isEmpty() && !t.activity().isMilestone())
            .sorted(Comparator.comparingDouble(SlippageMaker::days))
            .toList();
    times
        .longestPath(ProgrammeMaker.DELIVERY, ProgrammeMaker.MOVE_IN)
        .map(PathBetween::ids)
        .ifPresent(
            ids -> {
              found.add(path(ids, times.timing(ProgrammeMaker.DELIVERY)));
              used.addAll(ids);
            });
    int looked = 0;
    for (var t : next) {
      if (found.isEmpty() || found.size() == PATHS || looked == LOOKED_AT) break;
      if (used.contains(t.id())) continue;
      looked++;
      through(t)
          .ifPresent(
              ids -> {
                found.add(path(ids, t));
                used.addAll(ids);
              });
    }
    return found;
  }

  private static double days(Timing t) {
    return t.totalFloatDays();
  }

  private static Slippage.NearPath path(List<String> ids, Timing t) {
    return new Slippage.NearPath(ids, t.id(), Days.of(t.totalFloatMinutes(), t.dayMinutes()));
  }

  private Optional<List<String>> through(Timing t) {
    return times
        .longestPath(ProgrammeMaker.DELIVERY, t.id())
        .flatMap(
            first ->
                times
                    .longestPath(t.id(), ProgrammeMaker.MOVE_IN)
                    .map(
                        second -> {
                          var ids = new ArrayList<>(first.ids());
                          ids.addAll(second.ids().subList(1, second.ids().size()));
                          return ids;
                        }));
  }
}

package cornerpost.schedule;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The best schedule of a small network, whatever its relations, lags and calendars: wherever the
 * earliest dates ask a crew for too much, two of the tasks at work then must lie one after the
 * other, and every such pair is tried.
 *
 * <p>Theorem (F. J. Radermacher, "Scheduling of project networks", Annals of Operations Research 4
 * (1985) 227-252): any schedule within crew numbers puts some two tasks of each set that is too
 * many one after the other. The earliest dates that keep those pairs end no later than the
 * schedule, since each date only grows with those it waits for. So the least end over all ways to
 * choose the pairs is the best there is.
 */
final class EverySettlement {
  private final Network network;
  private final Graph g;
  private final List<int[]> pairs = new ArrayList<>();
  private long best;

  private EverySettlement(Network network, long known) {
    this.network = network;
    g = network.graph();
    best = known;
  }

  /**
   * @param known an end that can be had
   */
  static LocalDateTime bestFinish(Network network, LocalDateTime known) {
    var every = new EverySettlement(network, Minutes.of(known));
    every.settle();
    return Minutes.moment(every.best);
  }

  private void settle() {
    var plan = new Sweep(g);
    long end = earliest(plan);
    if (end >= best) {
      return;
    }
    var many = tooMany(plan);
    if (many.isEmpty()) {
      best = end;
      return;
    }
    for (int i : many) {
      for (int j : many) {
        if (i != j) {
          pairs.add(new int[] {i, j});
          settle();
          pairs.remove(pairs.size() - 1);
        }
      }
    }
  }

  /**
   * The earliest dates that keep links and pairs; given up when they end no sooner than the best
   * known.
   */
  private long earliest(Sweep plan) {
    for (int i : g.order()) {
      plan.put(i, plan.earliest(i, g.minutes), g.minutes[i]);
    }
    boolean moved = true;
    long end = Long.MIN_VALUE;
    while (moved && end < best) {
      moved = false;
      for (int i : g.order()) {
        long at = Math.max(plan.place[i], plan.earliest(i, g.minutes));
        for (int[] p : pairs) {
          if (p[1] == i) {
            at = Math.max(at, g.placeStartingFrom(i, plan.finish[p[0]]));
          }
        }
        if (at > plan.place[i]) {
          plan.put(i, at, g.minutes[i]);
          moved = true;
        }
        end = Math.max(end, plan.finish[i]);
      }
    }
    return end;
  }

  /** The tasks at work at a moment at which they are too many; empty if there is none. */
  private List<Integer> tooMany(Sweep plan) {
    for (Crew crew : network.crews()) {
      for (int k = 0; k < g.size; k++) {
        var running = new ArrayList<Integer>();
        int needed = 0;
        for (int i = 0; i < g.size; i++) {
          Activity a = network.activities().get(i);
          int need = a.isMilestone() ? 0 : a.demands().getOrDefault(crew.name(), 0);
          if (need > 0 && plan.start[i] <= plan.start[k] && plan.finish[i] > plan.start[k]) {
            running.add(i);
            needed += need;
          }
        }
        if (needed > crew.available()) {
          return running;
        }
      }
    }
    return List.of();
  }
}

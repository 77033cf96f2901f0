package cornerpost.schedule;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The best schedule of a small network: every order of its tasks, each put in at the first hour
 * that breaks no rule.
 */
final class EveryOrder {
  private final Network network;
  private final Graph g;
  private final Sweep plan;
  private final boolean[] placed;
  private long best = Long.MAX_VALUE;

  private EveryOrder(Network network) {
    this.network = network;
    g = network.graph();
    plan = new Sweep(g);
    placed = new boolean[g.size];
  }

  static LocalDateTime bestFinish(Network network) {
    var every = new EveryOrder(network);
    every.extend(0, Long.MIN_VALUE);
    return Minutes.moment(every.best);
  }

  private void extend(int count, long end) {
    if (end >= best) {
      return;
    }
    if (count == g.size) {
      best = end;
      return;
    }
    for (int i = 0; i < g.size; i++) {
      if (!placed[i] && ready(i)) {
        long at = plan.earliest(i, g.minutes);
        plan.put(i, at, g.minutes[i]);
        while (short_(i)) {
          at++;
          plan.put(i, at, g.minutes[i]);
        }
        placed[i] = true;
        extend(count + 1, Math.max(end, plan.finish[i]));
        placed[i] = false;
      }
    }
  }

  private boolean ready(int i) {
    for (int k = g.inFirst[i]; k < g.inFirst[i + 1]; k++) {
      if (!placed[g.before[g.in[k]]]) {
        return false;
      }
    }
    return true;
  }

  private boolean short_(int i) {
    Activity a = network.activities().get(i);
    if (a.isMilestone()) {
      return false;
    }
    for (Crew crew : network.crews()) {
      int need = a.demands().getOrDefault(crew.name(), 0);
      if (need == 0) {
        continue;
      }
      List<Long> moments = new ArrayList<>(List.of(plan.start[i]));
      for (int j = 0; j < g.size; j++) {
        if (placed[j] && plan.start[j] > plan.start[i] && plan.start[j] < plan.finish[i]) {
          moments.add(plan.start[j]);
        }
      }
      for (long m : moments) {
        int used = need;
        for (int j = 0; j < g.size; j++) {
          if (placed[j] && plan.start[j] <= m && plan.finish[j] > m) {
            used += network.activities().get(j).demands().getOrDefault(crew.name(), 0);
          }
        }
        if (used > crew.available()) {
          return true;
        }
      }
    }
    return false;
  }
}

package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Finds for each task of a plan the crews, and the tasks they were busy on, that kept it from
 * starting sooner.
 */
final class Waits {
  private Waits() {}

  static List<List<Wait>> of(Network network, Sweep plan, List<Dates> planned) {
    Graph g = network.graph();
    var use = new CrewUse(network);
    use.putAll(plan);
    var all = new ArrayList<List<Wait>>();
    for (int i = 0; i < g.size; i++) {
      all.add(use.crewOf[i].length == 0 ? List.of() : of(i, network, plan, use, planned.get(i)));
    }
    return List.copyOf(all);
  }

  private static List<Wait> of(int i, Network network, Sweep plan, CrewUse use, Dates dates) {
    Graph g = network.graph();
    long ready = g.placeStartingFrom(i, g.release[i]);
    for (int k = g.inFirst[i]; k < g.inFirst[i + 1]; k++) {
      int l = g.in[k];
      int b = g.before[l];
      ready = Math.max(ready, g.placeAfter(l, plan.start[b], plan.finish[b], g.minutes[i]));
    }
    if (ready >= plan.place[i]) {
      return List.of();
    }
    // One step sooner it would hold its crews from here to there; who holds them at a moment that
    // is short?
    long from = g.startAt(i, plan.place[i] - 1);
    long until = g.finishAt(i, plan.place[i] - 1, g.minutes[i]);
    var waits = new ArrayList<Wait>();
    for (int c = 0; c < use.crewOf[i].length; c++) {
      int crew = use.crewOf[i][c];
      int needed = use.needed[i][c];
      var busy = new TreeSet<Integer>();
      int free = use.available(crew);
      var holders = new ArrayList<Integer>();
      for (int j = 0; j < g.size; j++) {
        if (j != i
            && need(use, j, crew) > 0
            && use.heldFrom(j, plan) < until
            && plan.finish[j] > from) {
          holders.add(j);
        }
      }
      for (int j : holders) {
        long moment = Math.max(from, use.heldFrom(j, plan));
        var then = new TreeSet<Integer>();
        int left = use.available(crew);
        for (int k : holders) {
          if (use.heldFrom(k, plan) <= moment && plan.finish[k] > moment) {
            then.add(k);
            left -= need(use, k, crew);
          }
        }
        if (left < needed) {
          busy.addAll(then);
          free = Math.min(free, left);
        }
      }
      if (!busy.isEmpty()) {
        waits.add(
            new Wait(
                network.activities().get(i),
                network.crews().get(crew).name(),
                needed,
                free,
                busy.stream().map(network.activities()::get).toList(),
                ShownDays.first(g.startAt(i, ready), Long.MAX_VALUE, false),
                dates.firstDay()));
      }
    }
    return List.copyOf(waits);
  }

  private static int need(CrewUse use, int i, int crew) {
    for (int c = 0; c < use.crewOf[i].length; c++) {
      if (use.crewOf[i][c] == crew) {
        return use.needed[i][c];
      }
    }
    return 0;
  }
}

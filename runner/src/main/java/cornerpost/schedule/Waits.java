package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;

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
    long ready = plan.earliest(i, g.minutes);
    if (ready >= plan.place[i]) {
      return List.of();
    }
    // One step sooner it would hold its crews from here to there; at which moment is a crew short,
    // and who holds it?
    long from = g.startAt(i, plan.place[i] - 1);
    long until = g.finishAt(i, plan.place[i] - 1, g.minutes[i]);
    var waits = new ArrayList<Wait>();
    for (int c = 0; c < use.crewOf[i].length; c++) {
      int crew = use.crewOf[i][c];
      int needed = use.needed[i][c];
      int least = use.available(crew);
      long when = from;
      for (long moment : use.changes(crew, from, until)) {
        boolean own = moment >= use.heldFrom(i, plan) && moment < plan.finish[i];
        int free = use.available(crew) - use.usedAt(crew, moment) + (own ? needed : 0);
        if (free < least) {
          least = free;
          when = moment;
        }
      }
      if (least < needed) {
        waits.add(
            new Wait(
                network.activities().get(i),
                network.crews().get(crew).name(),
                needed,
                least,
                holders(i, crew, when, network, plan, use),
                ShownDays.first(g.startAt(i, ready), Long.MAX_VALUE, false),
                dates.firstDay()));
      }
    }
    return List.copyOf(waits);
  }

  private static List<Activity> holders(
      int i, int crew, long moment, Network network, Sweep plan, CrewUse use) {
    var holders = new ArrayList<Activity>();
    for (int j = 0; j < network.activities().size(); j++) {
      if (j != i
          && plan.finish[j] > moment
          && use.needs(j, crew)
          && use.heldFrom(j, plan) <= moment) {
        holders.add(network.activities().get(j));
      }
    }
    return holders;
  }
}

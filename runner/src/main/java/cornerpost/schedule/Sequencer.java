package cornerpost.schedule;

import java.util.PriorityQueue;

/** Finds planned dates that ask no crew for more than it has, and finish early. */
public final class Sequencer {
  private Sequencer() {}

  /**
   * A schedule within crew numbers.
   *
   * <p>If the early dates ask no crew for too much they are the schedule. Each task holds its crews
   * from its start to its finish, nights and weekends between included.
   *
   * @param budget how long to look for a better one
   * @param seed of the random numbers; the same seed and schedule count give the same schedule
   */
  public static CrewSchedule sequence(Network network, Budget budget, long seed) {
    Timetable timetable = Passes.of(network);
    Graph g = network.graph();
    var early = new Sweep(g);
    early.forward(g.minutes);
    var use = new CrewUse(network);
    use.putAll(early);
    if (!use.overSubscribed()) {
      return new CrewSchedule(timetable, early, early.end, false, 1);
    }
    long[] late = early.backward(g.minutes, early.end);
    var plan = new Sweep(g);
    serial(g, use, plan, late);
    return new CrewSchedule(timetable, plan, early.end, true, 1);
  }

  /**
   * Serial schedule generation: the ready task with the earliest latest finish is put where its
   * crews first have room.
   */
  private static void serial(Graph g, CrewUse use, Sweep plan, long[] late) {
    use.clear();
    int[] waiting = new int[g.size];
    var ready =
        new PriorityQueue<Integer>(
            (a, b) -> {
              int byLate =
                  Long.compare(
                      g.finishAt(a, late[a], g.minutes[a]), g.finishAt(b, late[b], g.minutes[b]));
              return byLate != 0 ? byLate : Integer.compare(a, b);
            });
    for (int i = 0; i < g.size; i++) {
      waiting[i] = g.inFirst[i + 1] - g.inFirst[i];
      if (waiting[i] == 0) {
        ready.add(i);
      }
    }
    plan.end = Long.MIN_VALUE;
    while (!ready.isEmpty()) {
      int i = ready.remove();
      plan.put(i, firstFit(i, g, use, plan), g.minutes[i]);
      if (use.crewOf[i].length > 0) {
        use.put(i, use.heldFrom(i, plan), plan.finish[i]);
      }
      plan.end = Math.max(plan.end, plan.finish[i]);
      for (int o = g.outFirst[i]; o < g.outFirst[i + 1]; o++) {
        if (--waiting[g.after[g.out[o]]] == 0) {
          ready.add(g.after[g.out[o]]);
        }
      }
    }
  }

  private static long firstFit(int i, Graph g, CrewUse use, Sweep plan) {
    if (g.state[i] == Graph.DONE) {
      return 0;
    }
    long at = g.placeStartingFrom(i, g.release[i]);
    for (int k = g.inFirst[i]; k < g.inFirst[i + 1]; k++) {
      int l = g.in[k];
      int b = g.before[l];
      at = Math.max(at, g.placeAfter(l, plan.start[b], plan.finish[b], g.minutes[i]));
    }
    while (use.crewOf[i].length > 0) {
      long busy = use.shortUntil(i, g.startAt(i, at), g.finishAt(i, at, g.minutes[i]));
      if (busy == Long.MIN_VALUE) {
        break;
      }
      at = g.placeStartingFrom(i, busy);
    }
    return at;
  }
}

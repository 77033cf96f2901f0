package cornerpost.schedule;

import java.util.Arrays;

/** A word for each step, that holds all crews: any number of crews and any duration. */
final class FreeCrewsByStep extends FreeCrews {
  private final int[] duration;
  private final long[] demand;
  private final long guards;
  private final long available;
  private final long[] free;

  FreeCrewsByStep(ScaledProject p) {
    duration = p.duration;
    demand = p.demand;
    guards = p.guards;
    available = p.available;
    free = new long[p.horizon + 2];
    Arrays.fill(free, available);
  }

  /** Looks at each stretch from its last step, so that it passes over a busy time in strides. */
  @Override
  int take(int task, int from) {
    long[] free = this.free;
    long demand = this.demand[task];
    long guards = this.guards;
    int duration = this.duration[task];
    int t = from;
    int known = from; // from here to the end of the stretch there is something left to look at
    int u = from + duration;
    while (--u >= known) {
      if ((free[u] - demand & guards) != guards) {
        known = t + duration;
        t = u + 1;
        u = t + duration;
      }
    }
    put(task, t);
    return t;
  }

  @Override
  void put(int task, int start) {
    int until = start + duration[task];
    for (int v = start; v < until; v++) {
      free[v] -= demand[task];
    }
  }

  @Override
  void clear(int until) {
    Arrays.fill(free, 0, until, available);
  }
}

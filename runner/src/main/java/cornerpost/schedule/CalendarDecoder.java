package cornerpost.schedule;

import java.util.Arrays;

/**
 * Serial schedule generation on real dates, with any mix of calendars, relations and elapsed time.
 */
final class CalendarDecoder extends Decoder {
  private final Graph g;
  private final CrewUse use;
  private final Sweep plan;
  private final int[] task;
  private final int[][] before;
  private final int[][] after;
  private final long[] back;
  private final long[] kept;
  private final long[] keys;
  private final Order order;
  private final int[] goingOn; // under way: the place of each is given
  private final boolean[] given;
  private final UnderWay underWay;

  CalendarDecoder(Network network) {
    super(
        (int)
            java.util.stream.IntStream.range(0, network.graph().size)
                .filter(i -> network.graph().state[i] != Graph.DONE)
                .count());
    g = network.graph();
    use = new CrewUse(network);
    plan = new Sweep(g);
    task = Arrays.stream(g.order()).filter(i -> g.state[i] != Graph.DONE).toArray();
    int[] number = new int[g.size];
    Arrays.fill(number, -1);
    for (int k = 0; k < size; k++) {
      number[task[k]] = k;
    }
    Incidence out = g.outgoing();
    before = new int[size][];
    after = new int[size][];
    for (int k = 0; k < size; k++) {
      int i = task[k];
      before[k] =
          Arrays.stream(g.in, g.inFirst[i], g.inFirst[i + 1])
              .map(l -> number[g.before[l]])
              .filter(b -> b >= 0)
              .distinct()
              .toArray();
      after[k] =
          Arrays.stream(out.link(), out.first()[i], out.first()[i + 1])
              .map(l -> number[g.after[l]])
              .filter(a -> a >= 0)
              .distinct()
              .toArray();
    }
    for (int i = 0; i < g.size; i++) {
      if (g.state[i] == Graph.DONE) {
        plan.put(i, 0, g.minutes[i]);
      }
    }
    back = new long[size];
    kept = new long[size];
    keys = new long[size];
    order = new Order(before, after);
    underWay = UnderWay.of(network);
    goingOn = Arrays.stream(underWay.tasks).map(i -> number[i]).toArray();
    given = new boolean[size];
    for (int k : goingOn) {
      given[k] = true;
    }
  }

  @Override
  long forward(int[] list) {
    use.clear();
    long end = Long.MIN_VALUE;
    for (int i : underWay.tasks) {
      put(i, underWay.place[i]);
      end = Math.max(end, plan.finish[i]);
    }
    for (int k : list) {
      if (given[k]) {
        continue;
      }
      int i = task[k];
      long at = plan.earliest(i, g.minutes);
      while (use.crewOf[i].length > 0) {
        long busy = use.shortUntil(i, g.startAt(i, at), g.finishAt(i, at, g.minutes[i]));
        if (busy == Long.MIN_VALUE) {
          break;
        }
        at = g.placeStartingFrom(i, busy);
      }
      put(i, at);
      end = Math.max(end, plan.finish[i]);
    }
    plan.end = end;
    return end;
  }

  @Override
  long stretched(long end, double more) {
    return end + (long) ((end - g.start) * more);
  }

  private void put(int i, long at) {
    plan.put(i, at, g.minutes[i]);
    if (use.crewOf[i].length > 0) {
      use.put(i, use.heldFrom(i, plan), plan.finish[i]);
    }
  }

  /** Holidays and nights count from a given end, so that needs a forward schedule first. */
  @Override
  boolean startsFromBack() {
    return false;
  }

  @Override
  long backward(int[] list, long limit) {
    use.clear();
    long first = Long.MAX_VALUE;
    for (int k : goingOn) {
      int i = task[k];
      put(i, underWay.place[i]);
      back[k] = underWay.place[i];
      first = Math.min(first, g.startAt(i, back[k]));
    }
    for (int k = size - 1; k >= 0; k--) {
      if (given[list[k]]) {
        continue;
      }
      int i = task[list[k]];
      long at = plan.latest(i, g.minutes, plan.end);
      while (use.crewOf[i].length > 0) {
        long busy = use.shortFrom(i, g.startAt(i, at), g.finishAt(i, at, g.minutes[i]));
        if (busy == Graph.NEVER) {
          break;
        }
        at = g.placeFinishingBy(i, busy, g.minutes[i]);
      }
      put(i, at);
      back[list[k]] = at;
      first = Math.min(first, g.startAt(i, at));
    }
    return plan.end - first;
  }

  @Override
  void listByStart(int[] list) {
    sort(list, false);
  }

  @Override
  void listByFinish(int[] list) {
    sort(list, true);
  }

  private void sort(int[] list, boolean byFinish) {
    long low = Long.MAX_VALUE;
    for (int k = 0; k < size; k++) {
      int i = task[k];
      keys[k] = byFinish ? plan.finish[i] : g.startAt(i, plan.place[i]);
      low = Math.min(low, keys[k]);
    }
    for (int k = 0; k < size; k++) {
      keys[k] = (keys[k] - low) * size + k; // ties in the order of waiting
    }
    Arrays.sort(keys);
    for (int k = 0; k < size; k++) {
      list[k] = (int) (keys[k] % size);
    }
    order.repair(list);
  }

  @Override
  int unmoved() {
    int count = 0;
    for (int k = 0; k < size; k++) {
      count += back[k] == plan.place[task[k]] ? 1 : 0;
    }
    return count;
  }

  @Override
  void keep() {
    for (int k = 0; k < size; k++) {
      kept[k] = plan.place[task[k]];
    }
  }

  /** Puts the tasks where another search has them; places by position in the network. */
  void show(long[] places) {
    for (int i : task) {
      plan.put(i, places[i], g.minutes[i]);
    }
  }

  /** The kept schedule. */
  void putInto(Sweep target) {
    target.end = Long.MIN_VALUE;
    for (int i = 0; i < g.size; i++) {
      if (g.state[i] == Graph.DONE) {
        target.put(i, 0, g.minutes[i]);
      }
    }
    for (int k = 0; k < size; k++) {
      target.put(task[k], kept[k], g.minutes[task[k]]);
    }
    for (int i = 0; i < g.size; i++) {
      target.end = Math.max(target.end, target.finish[i]);
    }
  }

  @Override
  long[] urgency() {
    var early = new Sweep(g);
    early.forward(g.minutes);
    long[] late = early.backward(g.minutes, early.end);
    long[] urgency = new long[size];
    for (int k = 0; k < size; k++) {
      urgency[k] = g.startAt(task[k], late[task[k]]);
    }
    return urgency;
  }

  @Override
  int[] before(int k) {
    return before[k];
  }

  @Override
  int[] after(int k) {
    return after[k];
  }
}

package cornerpost.schedule;

import java.util.Arrays;

/** Serial schedule generation on an array of steps, forward and in reversed time. */
final class ScaledDecoder extends Decoder {
  final ScaledProject p;
  final int[] start;
  final int[] kept;
  private final int[] back;
  private final long[] free;
  private final int[] counts;
  private final boolean orderKeepsWaiting;
  private int used;
  private int end;
  private final Order order;

  ScaledDecoder(ScaledProject project) {
    super(project.size);
    p = project;
    start = new int[size];
    kept = new int[size];
    back = new int[size];
    free = new long[project.horizon + 2];
    counts = new int[project.horizon + 3];
    boolean keeps = true;
    for (int j = 0; j < size; j++) {
      for (int a = 0; a < p.before[j].length; a++) {
        int i = p.before[j][a];
        int lag = p.lagBefore[j][a];
        keeps &= lag >= 0 && lag + p.duration[j] - p.duration[i] >= 0;
      }
    }
    orderKeepsWaiting = keeps;
    order = new Order(p.before, p.after);
    Arrays.fill(free, p.available);
  }

  @Override
  long forward(int[] list) {
    Arrays.fill(free, 0, used, p.available);
    int last = 0;
    for (int k = 0; k < size; k++) {
      int j = list[k];
      int t = p.release[j];
      int[] before = p.before[j];
      int[] lag = p.lagBefore[j];
      for (int a = 0; a < before.length; a++) {
        t = Math.max(t, start[before[a]] + lag[a]);
      }
      t = fit(j, t);
      start[j] = t;
      last = Math.max(last, t + p.duration[j]);
    }
    used = last;
    end = last;
    return last;
  }

  private int fit(int j, int from) {
    long demand = p.demand[j];
    int d = p.duration[j];
    if (demand == 0) {
      return from;
    }
    int t = from;
    int run = 0;
    long guards = p.guards;
    while (run < d) {
      run = (free[t] - demand & guards) == guards ? run + 1 : 0;
      t++;
    }
    for (int u = t - d; u < t; u++) {
      free[u] -= demand;
    }
    return t - d;
  }

  @Override
  long backward(int[] list) {
    Arrays.fill(free, 0, used, p.available);
    int last = 0;
    for (int k = size - 1; k >= 0; k--) {
      int j = list[k];
      int t = 0;
      int[] after = p.after[j];
      int[] lag = p.lagAfter[j];
      for (int a = 0; a < after.length; a++) {
        t = Math.max(t, start[after[a]] + lag[a]);
      }
      t = fit(j, t);
      start[j] = t; // counted back from the end, to the finish
      last = Math.max(last, t + p.duration[j]);
    }
    used = last;
    for (int j = 0; j < size; j++) {
      start[j] = end - start[j] - p.duration[j];
      back[j] = start[j];
    }
    return last;
  }

  @Override
  void listByStart(int[] list) {
    sort(list, false);
  }

  @Override
  void listByFinish(int[] list) {
    sort(list, true);
  }

  /** Counting sort; ties in the order of waiting, which is that of the numbers. */
  private void sort(int[] list, boolean byFinish) {
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (int j = 0; j < size; j++) {
      int at = byFinish ? start[j] + p.duration[j] : start[j];
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    int span = high - low + 2;
    Arrays.fill(counts, 0, span, 0);
    for (int j = 0; j < size; j++) {
      counts[(byFinish ? start[j] + p.duration[j] : start[j]) - low + 1]++;
    }
    for (int t = 1; t < span; t++) {
      counts[t] += counts[t - 1];
    }
    for (int j = 0; j < size; j++) {
      list[counts[(byFinish ? start[j] + p.duration[j] : start[j]) - low]++] = j;
    }
    if (!orderKeepsWaiting) {
      order.repair(list);
    }
  }

  @Override
  int unmoved() {
    int least = Integer.MAX_VALUE;
    for (int j = 0; j < size; j++) {
      least = Math.min(least, back[j] - start[j]);
    }
    int count = 0;
    for (int j = 0; j < size; j++) {
      count += back[j] - start[j] == least ? 1 : 0;
    }
    return count;
  }

  @Override
  void keep() {
    System.arraycopy(start, 0, kept, 0, size);
  }

  @Override
  long[] urgency() {
    long[] late = new long[size];
    for (int j = size - 1; j >= 0; j--) {
      int tail = 0;
      for (int a = 0; a < p.after[j].length; a++) {
        tail = Math.max(tail, (int) late[p.after[j][a]] + p.lagAfter[j][a]);
      }
      late[j] = tail;
    }
    for (int j = 0; j < size; j++) {
      late[j] = -late[j];
    }
    return late;
  }

  @Override
  int[] before(int task) {
    return p.before[task];
  }

  @Override
  int[] after(int task) {
    return p.after[task];
  }

  /** Puts the tasks where another search has them; places by position in the network. */
  void show(long[] places, Graph g) {
    for (int j = 0; j < size; j++) {
      int i = p.task[j];
      long number =
          g.kind[i] == Graph.WORK ? places[i] : g.calendar[i].worked(g.startAt(i, places[i]));
      start[j] = (int) Math.floorDiv(number - p.base + p.step - 1, p.step);
    }
  }

  /** The end of the tasks where they are. */
  int endOfStarts() {
    int last = 0;
    for (int j = 0; j < size; j++) {
      last = Math.max(last, start[j] + p.duration[j]);
    }
    return last;
  }

  /** The kept schedule with real dates. */
  void putInto(Sweep plan) {
    Graph g = plan.graph;
    int[] number = new int[g.size];
    for (int k = 0; k < size; k++) {
      number[p.task[k]] = k;
    }
    plan.end = Long.MIN_VALUE;
    for (int i : g.order) {
      long at = 0;
      if (g.kind[i] == Graph.MOMENT && g.state[i] != Graph.DONE) {
        at =
            plan.earliest(
                i, g.minutes); // the end of one day or the beginning of the next: its links know
      } else if (g.state[i] != Graph.DONE) {
        at = p.base + p.step * kept[number[i]];
        at = g.kind[i] == Graph.ELAPSED ? g.calendar[i].startOf(at) : at;
      }
      plan.put(i, at, g.minutes[i]);
      plan.end = Math.max(plan.end, plan.finish[i]);
    }
  }
}

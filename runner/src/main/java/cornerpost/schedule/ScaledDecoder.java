package cornerpost.schedule;

import java.util.Arrays;

/** Serial schedule generation on an array of steps, forward and in reversed time. */
final class ScaledDecoder extends Decoder {
  private static final int AT_ONCE = 3; // links

  final ScaledProject p;
  final int[] start;
  final int[] kept;
  private final int[] tail; // from the start of a task to the end of the whole, at least
  private final int[] head; // earliest start, by links alone
  private final int[] back;
  private final int[] finish; // for a moment
  private final int[] firstBefore; // pairs of a task before and its lag, three at a time
  private final int[] linksBefore;
  private final int[] firstAfter;
  private final int[] linksAfter;
  private final FreeCrews crews;
  private final int[] counts;
  private final int[] listed; // for a moment
  private final boolean orderKeepsWaiting;
  private int used;
  private int end;
  private final Order order;
  private final boolean reversed; // keeps for a decoder of the front

  ScaledDecoder(ScaledProject project) {
    this(project, new int[project.size], false);
  }

  private ScaledDecoder(ScaledProject project, int[] kept, boolean reversed) {
    super(project.size);
    p = project;
    this.kept = kept;
    this.reversed = reversed;
    start = new int[size];
    back = new int[size];
    finish = new int[size];
    firstBefore = new int[size + 1];
    linksBefore = inARow(p.before, p.lagBefore, firstBefore);
    firstAfter = new int[size + 1];
    linksAfter = inARow(p.after, p.lagAfter, firstAfter);
    crews = FreeCrews.of(project);
    counts = new int[project.horizon + 3];
    listed = new int[size];
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
    tail = new int[size];
    for (int j = size - 1; j >= 0; j--) {
      tail[j] = p.duration[j];
      for (int a = 0; a < p.after[j].length; a++) {
        int s = p.after[j][a];
        tail[j] = Math.max(tail[j], p.lagAfter[j][a] - p.duration[s] + p.duration[j] + tail[s]);
      }
    }
    head = p.release.clone();
    for (int j = 0; j < size; j++) {
      for (int a = 0; a < p.before[j].length; a++) {
        head[j] = Math.max(head[j], head[p.before[j][a]] + p.lagBefore[j][a]);
      }
    }
  }

  /**
   * Pairs of a task and its lag, for one task after another. The last pair of a task is repeated up
   * to the next multiple of three: most tasks wait for one to three others, and a loop of one round
   * for all of them is one that a processor guesses right.
   */
  private static int[] inARow(int[][] task, int[][] lag, int[] first) {
    for (int j = 0; j < task.length; j++) {
      first[j + 1] = first[j] + (task[j].length + AT_ONCE - 1) / AT_ONCE * 2 * AT_ONCE;
    }
    int[] row = new int[first[task.length]];
    for (int j = 0; j < task.length; j++) {
      for (int a = 0; first[j] + 2 * a < first[j + 1]; a++) {
        int link = Math.min(a, task[j].length - 1);
        row[first[j] + 2 * a] = task[j][link];
        row[first[j] + 2 * a + 1] = lag[j][link];
      }
    }
    return row;
  }

  /** The latest of the moment and those that three links of a row ask for. */
  private static int latest(int t, int[] start, int[] links, int a) {
    return Math.max(
        Math.max(t, start[links[a]] + links[a + 1]),
        Math.max(start[links[a + 2]] + links[a + 3], start[links[a + 4]] + links[a + 5]));
  }

  @Override
  long forward(int[] list) {
    return forward(list, NONE);
  }

  @Override
  boolean resumes() {
    return orderKeepsWaiting;
  }

  @Override
  void note(int[] places) {
    System.arraycopy(start, 0, places, 0, size);
  }

  @Override
  long forward(int[] list, long limit) {
    return forward(list, 0, start, limit);
  }

  @Override
  long forward(int[] list, int same, int[] places, long limit) {
    crews.clear(used);
    int most = (int) Math.min(limit, Integer.MAX_VALUE / 2);
    FreeCrews crews = this.crews;
    int[] start = this.start;
    int[] links = linksBefore;
    int[] first = firstBefore;
    int[] release = p.release;
    int[] duration = p.duration;
    long[] demands = p.demand;
    int last = put(list, 0, same, places);
    for (int k = same; k < size; k++) {
      int j = list[k];
      int t = release[j];
      int to = first[j + 1];
      for (int a = first[j]; a < to; a += 2 * AT_ONCE) {
        t = latest(t, start, links, a);
      }
      int d = duration[j];
      t = demands[j] == 0 ? t : crews.take(j, t);
      start[j] = t;
      last = Math.max(last, t + d);
      if (t + tail[j] > most) {
        used = Math.max(used, last);
        return NONE;
      }
    }
    used = last;
    end = last;
    return last;
  }

  /** Puts tasks of the list where they are known to go; gives the end of the last of them. */
  private int put(int[] list, int from, int to, int[] places) {
    int last = 0;
    for (int k = from; k < to; k++) {
      int j = list[k];
      int t = places[j];
      start[j] = t;
      last = Math.max(last, t + p.duration[j]);
      if (p.demand[j] != 0) {
        crews.put(j, t);
      }
    }
    return last;
  }

  @Override
  long stretched(long end, double more) {
    return end + (long) (end * more);
  }

  @Override
  boolean startsFromBack() {
    return true;
  }

  @Override
  void noteFromBack(int[] places) {
    for (int j = 0; j < size; j++) {
      places[j] = end - back[j] - p.duration[j];
    }
  }

  @Override
  long backward(int[] list, long limit) {
    return backward(list, 0, start, limit);
  }

  @Override
  long backward(int[] list, int same, int[] places, long limit) {
    crews.clear(used);
    int most = (int) Math.min(limit, Integer.MAX_VALUE / 2);
    FreeCrews crews = this.crews;
    int[] start = this.start;
    int[] links = linksAfter;
    int[] first = firstAfter;
    int[] duration = p.duration;
    long[] demands = p.demand;
    int last = put(list, size - same, size, places);
    for (int k = size - same - 1; k >= 0; k--) {
      int j = list[k];
      int t = 0;
      int to = first[j + 1];
      for (int a = first[j]; a < to; a += 2 * AT_ONCE) {
        t = latest(t, start, links, a);
      }
      int d = duration[j];
      t = demands[j] == 0 ? t : crews.take(j, t);
      start[j] = t; // counted back from the end, to the finish
      last = Math.max(last, t + d);
      if (t + d + head[j] > most) {
        used = Math.max(used, last);
        return NONE;
      }
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

  /** Counting sort; what ties keeps its order in the list, so that it comes from the parents. */
  private void sort(int[] list, boolean byFinish) {
    int[] at = start;
    if (byFinish) {
      at = finish;
      for (int j = 0; j < size; j++) {
        at[j] = start[j] + p.duration[j];
      }
    }
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (int j = 0; j < size; j++) {
      low = Math.min(low, at[j]);
      high = Math.max(high, at[j]);
    }
    int span = high - low + 2;
    int[] counts = this.counts;
    Arrays.fill(counts, 0, span, 0);
    for (int j = 0; j < size; j++) {
      counts[at[j] - low + 1]++;
    }
    int sum = 0;
    for (int t = 1; t < span; t++) {
      sum += counts[t];
      counts[t] = sum;
    }
    System.arraycopy(list, 0, listed, 0, size);
    for (int j : listed) {
      list[counts[at[j] - low]++] = j;
    }
    if (!orderKeepsWaiting) {
      order.repair(list);
    }
  }

  @Override
  int unmoved() {
    int least = Integer.MAX_VALUE;
    for (int j = 0; j < size; j++) {
      finish[j] = back[j] - start[j];
      least = Math.min(least, finish[j]);
    }
    int count = 0;
    for (int j = 0; j < size; j++) {
      count += finish[j] == least ? 1 : 0;
    }
    return count;
  }

  @Override
  Decoder reversed() {
    ScaledProject mirror = p.mirrored();
    return mirror == null ? null : new ScaledDecoder(mirror, kept, true);
  }

  @Override
  void keep() {
    if (reversed) {
      p.mirror(start, endOfStarts(), kept);
    } else {
      System.arraycopy(start, 0, kept, 0, size);
    }
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
    for (int i : g.order()) {
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

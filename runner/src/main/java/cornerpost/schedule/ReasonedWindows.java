package cornerpost.schedule;

import java.util.Arrays;

/**
 * The windows of {@link TimeWindows} once more, narrowed by the same rules, with the reason of
 * every change kept, so that a dead end can be traced back to the orders that made it.
 *
 * <p>Of each event of the {@link Trail} the consequences are drawn: along links, for tasks that are
 * known to go one before the other, and from the nogoods. Once these are through the crews are
 * looked at whose tasks have changed ({@link CrewRules}).
 */
final class ReasonedWindows {
  final OrderLiterals orders;
  final Trail trail;
  final Reasons reasons;
  final Deductions deductions;
  private final CrewRules crewRules;
  private final Nogoods nogoods;

  private final Graph g;
  private final Incidence out;
  private final long[] minutes;
  private final int n;
  private final int words;
  private final int[][] rivals;
  private final long[] sharing; // bit j of row i: the two tasks have a crew in common

  ReasonedWindows(TimeWindows windows, Nogoods nogoods) {
    g = windows.g;
    out = g.outgoing();
    this.nogoods = nogoods;
    minutes = g.minutes;
    n = g.size;
    orders = new OrderLiterals(windows);
    trail = new Trail(windows, orders);
    reasons = new Reasons(trail, windows.groups(), nogoods);
    deductions = new Deductions(trail, reasons);
    crewRules = new CrewRules(trail, deductions, reasons, windows.groups());
    words = trail.words;
    rivals = new int[n][];
    sharing = new long[n * words];
    for (int i = 0; i < n; i++) {
      rivals[i] = windows.rivals(i);
      for (int j : windows.sharing(i)) {
        sharing[i * words + (j >> 6)] |= 1L << j;
      }
    }
    nogoods.literals(orders.count);
  }

  /** Takes over what the windows know without any order supposed; false if it cannot be. */
  boolean open(TimeWindows windows) {
    trail.backTo(0);
    for (int i = 0; i < n; i++) {
      if (g.state[i] != Graph.DONE && !trail.narrow(i, windows.low[i], windows.high[i])) {
        return false;
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (!windows.before(i, j)) continue;
        int l = orders.of(i, j);
        int opposite = orders.of(j, i);
        if (l < 0) trail.precede(i, j);
        else if (!deductions.become(l, Trail.SUPPOSED, 0)) return false;
        if (opposite >= 0 && !deductions.become(opposite ^ 1, Trail.SUPPOSED, 0)) return false;
      }
    }
    Arrays.fill(trail.unsettled, true);
    for (int i = 0; i < n; i++) {
      if (g.state[i] != Graph.DONE && (!followLow(i) || !followHigh(i))) return false;
    }
    return settle();
  }

  /** Supposes an order, on a new level; not settled yet. */
  void suppose(int l) {
    trail.deepen();
    deductions.become(l, Trail.SUPPOSED, 0);
  }

  /** Whether an order cannot be; that its tasks leave no room for it becomes an event. */
  boolean ruledOut(int l) {
    if (trail.value[l] == 0 && room(l) < 0) deductions.become(l ^ 1, Trail.NO_ROOM, 0);
    return trail.value[l] < 0;
  }

  /** Minutes of the clock by which the first of an order can slip. */
  long room(int l) {
    return trail.lateStart[orders.second[l]] - trail.earlyFinish[orders.first[l]];
  }

  /** Applies all rules until nothing changes; false at a dead end, whose causes are then asked. */
  boolean settle() {
    while (true) {
      for (int e = trail.following(); e >= 0; e = trail.following()) {
        if (!follow(e)) return false;
      }
      int k = flagged(trail.unsettled);
      if (k >= 0) {
        trail.unsettled[k] = false;
        trail.unsearched[k] = true;
        if (!crewRules.energy(k) || !crewRules.sequence(k)) return false;
        continue;
      }
      k = flagged(trail.unsearched); // takes longest, so last
      if (k < 0) break;
      trail.unsearched[k] = false;
      if (!crewRules.edges(k)) return false;
    }
    if (trail.depth == 0) trail.facts();
    return true;
  }

  private static int flagged(boolean[] crews) {
    for (int k = 0; k < crews.length; k++) {
      if (crews[k]) return k;
    }
    return -1;
  }

  private boolean follow(int e) {
    if (trail.ofOrder(e)) return followOrder(trail.what[e]);
    if (!trail.isLast(e)) return true; // a later one says more
    return trail.ofLow(e) ? followLow(trail.task(e)) : followHigh(trail.task(e));
  }

  private boolean followOrder(int l) {
    int i = orders.first[l];
    int j = orders.second[l];
    if (i >= 0) {
      trail.precede(i, j);
      trail.changed(i);
      trail.changed(j);
      if (!inOrder(i, j) || !inBetween(i, j)) return false;
    }
    return nogoods.follow(trail.value, deductions, l);
  }

  private boolean inOrder(int i, int j) {
    return startAfter(j, i) && finishBefore(i, j);
  }

  private boolean startAfter(int j, int i) {
    return deductions.raise(j, g.placeStartingFrom(j, trail.earlyFinish[i]), Trail.ORDER, i);
  }

  private boolean finishBefore(int i, int j) {
    long place = g.placeFinishingBy(i, trail.lateStart[j], minutes[i]);
    return deductions.lower(i, place, Trail.ORDER, j);
  }

  /** What is after the second is after the first; what is before the first, before the second. */
  private boolean inBetween(int i, int j) {
    long[] after = trail.after;
    long[] before = trail.before;
    for (int w = 0; w < words; w++) {
      long later = after[j * words + w] & sharing[i * words + w] & ~after[i * words + w];
      for (; later != 0; later &= later - 1) {
        int k = (w << 6) + Long.numberOfTrailingZeros(later);
        if (!deductions.become(orders.of(i, k), Trail.BETWEEN, j)) return false;
      }
      long sooner = before[i * words + w] & sharing[j * words + w] & ~before[j * words + w];
      for (; sooner != 0; sooner &= sooner - 1) {
        int k = (w << 6) + Long.numberOfTrailingZeros(sooner);
        if (!deductions.become(orders.of(k, j), Trail.BETWEEN, i)) return false;
      }
    }
    return true;
  }

  private boolean followLow(int i) {
    long start = g.state[i] == Graph.RUNNING ? g.realStart[i] : trail.earlyStart[i];
    long finish = trail.earlyFinish[i];
    for (int o = out.first()[i]; o < out.first()[i + 1]; o++) {
      int l = out.link()[o];
      int a = g.after[l];
      if (g.state[a] != Graph.DONE
          && !deductions.raise(a, g.placeAfter(l, start, finish, minutes[a]), Trail.LINK, l)) {
        return false;
      }
    }
    for (int w = 0; w < words; w++) {
      long bits = trail.after[i * words + w] & sharing[i * words + w];
      for (; bits != 0; bits &= bits - 1) {
        int j = (w << 6) + Long.numberOfTrailingZeros(bits);
        if (finish > trail.earlyStart[j] && !startAfter(j, i)) return false;
      }
    }
    for (int j : rivals[i]) {
      if (finish > trail.lateStart[j] && !noRoom(i, j)) return false;
    }
    return true;
  }

  private boolean followHigh(int j) {
    long start = trail.lateStart[j];
    for (int q = g.inFirst[j]; q < g.inFirst[j + 1]; q++) {
      int l = g.in[q];
      int b = g.before[l];
      if (g.movable(l)) {
        long place = g.placeBefore(l, trail.high[j], minutes[j], minutes[b]);
        if (!deductions.lower(b, place, Trail.LINK, l)) return false;
      }
    }
    for (int w = 0; w < words; w++) {
      long bits = trail.before[j * words + w] & sharing[j * words + w];
      for (; bits != 0; bits &= bits - 1) {
        int i = (w << 6) + Long.numberOfTrailingZeros(bits);
        if (trail.lateFinish[i] > start && !finishBefore(i, j)) return false;
      }
    }
    for (int i : rivals[j]) {
      if (trail.earlyFinish[i] > start && !noRoom(i, j)) return false;
    }
    return true;
  }

  /** The first task cannot go before the second, so that the second goes first. */
  private boolean noRoom(int i, int j) {
    return deductions.become(orders.of(j, i), Trail.NO_ROOM, 0);
  }
}

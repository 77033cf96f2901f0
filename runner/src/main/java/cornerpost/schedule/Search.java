package cornerpost.schedule;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Looks for a better order of work: a genetic algorithm on lists of tasks with forward-backward
 * improvement.
 *
 * <p>A list becomes a schedule by serial generation; each new schedule is pushed to the back and
 * then to the front again (justification). Where 46 to 80 tasks share a calendar the list is put in
 * from the back at once, then pushed to the front, and the order of finishes that comes of it is
 * the list of the next children: two schedules a child instead of three. Two parents, each the
 * better of two at random, give a child that takes a block of neighbours from one and the order of
 * all others from the other; some tasks are then moved within what their links allow. A child that
 * is much longer than its parents is given up before it is pushed: it hardly ever becomes better
 * than they. The child takes the place of the worse parent if it is no worse. Among schedules of
 * equal end that with fewer tasks held fast between back and front is better.
 *
 * <p>When nothing improves any more a population starts anew, and with 46 to 80 tasks the one at
 * rest is put by. When the next is at rest too, the better halves of both are bred on together;
 * what comes of two such pairs is joined likewise, and so on. The best schedule of all is kept.
 *
 * <p>Sources: S. Hartmann, "A competitive genetic algorithm for resource-constrained project
 * scheduling", Naval Research Logistics 45 (1998) 733-750 (lists); V. Valls, F. Ballestin and S.
 * Quintanilla, "Justification and RCPSP", European Journal of Operational Research 165 (2005)
 * 375-386, and "A hybrid genetic algorithm for the RCPSP", ibid. 185 (2008) 495-508 (justification;
 * blocks from one parent); R. Kolisch, "Efficient priority rules for the RCPSP", Journal of
 * Operations Management 14 (1996) 179-192 (first lists: biased random sampling by latest start).
 * The tie rule, the joining in pairs and the sizes are our own; that children are put in from the
 * other end than their parents is after D. Debels and M. Vanhoucke, "A bi-population based genetic
 * algorithm for the resource-constrained project scheduling problem", ICCSA 2005, 378-387.
 */
final class Search {
  private static final int LARGE = 80; // tasks; the sizes here were found by trial
  private static final int FEWEST_FROM_BACK =
      46; // up to 45 the other way finds every optimum known
  private static final int POPULATION = 300;
  private static final int POPULATION_FROM_BACK = 200;
  private static final int POPULATION_OF_LARGE = 150;
  private static final int STALE_ROUNDS = 150;
  private static final int STALE_ROUNDS_FROM_BACK = 20;
  private static final double MOST_MOVED = 0.13;
  private static final double MOST_MOVED_FROM_BACK = 0.08;

  /** How much longer than its parents a schedule may be at first. */
  private static final double WORTH_PUSHING = 0.06;

  private static final double WORTH_PUSHING_LARGE = 0.03;
  private static final int ASK_AFTER = 5_000; // tasks put in
  private static final int MOST_FOR_BLOCKS =
      2_000; // above, the table of who waits for whom gets too large

  private final Decoder decoder;
  private final int n;
  private final Budget budget;
  private final long[] urgency;
  private final double moveRate;
  private final boolean fromBack;
  private final int population;
  private final int mostStale;
  private final double worthPushing;
  private final int[][] lists;
  private final long[] ends;
  private final long[] worth; // end first, then tasks held fast
  private final boolean[] in;
  private final boolean[] later;
  private final int[] position;
  private long[][] ancestors;
  private Order order;
  private int filled;
  private int stale;
  private int[] child;
  private long random;
  private long bestEnd = Long.MAX_VALUE;
  private long bestOfPopulation = Long.MAX_VALUE;
  private long built;
  private long builtAtAsked;
  private boolean stopped;
  private long builtAtBest;
  private final Half[] putBy = new Half[64]; // by how often they were joined
  private int joined;

  Search(Decoder decoder, Budget budget, long seed) {
    this.decoder = decoder;
    this.budget = budget;
    n = decoder.size;
    urgency = decoder.urgency();
    boolean large = n > LARGE;
    fromBack = n >= FEWEST_FROM_BACK && !large && decoder.startsFromBack();
    moveRate = Math.min(fromBack ? MOST_MOVED_FROM_BACK : MOST_MOVED, 750.0 / ((double) n * n));
    int most = large ? POPULATION_OF_LARGE : fromBack ? POPULATION_FROM_BACK : POPULATION;
    population = (int) Math.max(10, Math.min(most, budget.schedules() / 60));
    mostStale = (fromBack ? STALE_ROUNDS_FROM_BACK : STALE_ROUNDS) * population;
    worthPushing = large ? WORTH_PUSHING_LARGE : WORTH_PUSHING;
    lists = new int[population][];
    ends = new long[population];
    worth = new long[population];
    in = new boolean[n];
    later = new boolean[n];
    position = new int[n];
    child = new int[n];
    random = seed * 0x9E3779B97F4A7C15L + 0x1234567L;
    random = random == 0 ? 1 : random;
  }

  long bestEnd() {
    return bestEnd;
  }

  long built() {
    return built;
  }

  /** Whether the budget is spent. */
  boolean spent() {
    return built >= budget.schedules()
        || built - builtAtBest >= budget.patience()
        || built > 0 && stopped();
  }

  /** Asks only after some work: what is asked may be a clock, which takes as long as some tasks. */
  private boolean stopped() {
    if (built == builtAtAsked || builtAtAsked == 0 || (built - builtAtAsked) * n >= ASK_AFTER) {
      builtAtAsked = built;
      stopped = budget.stop().getAsBoolean();
    }
    return stopped;
  }

  /** The better half of a population. */
  private record Half(int[][] lists, long[] ends, long[] worth) {}

  /** Lets the decoder hold the schedule of one of the best of the population, at random. */
  void showElite() {
    int chosen = below(filled);
    for (int k = 0; k < 20; k++) {
      int other = below(filled);
      chosen = ends[other] < ends[chosen] ? other : chosen;
    }
    System.arraycopy(lists[chosen], 0, child, 0, n);
    if (fromBack) {
      decoder.backward(child, Decoder.NONE);
      decoder.listByStart(child);
    }
    decoder.forward(child);
  }

  /**
   * Takes the schedule that the decoder holds now into the population, in place of one of the
   * worse.
   *
   * @param end of that schedule
   */
  void takeIn(long end) {
    keep(end);
    decoder.listByStart(child);
    int worst = 0;
    for (int q = 1; q < filled; q++) {
      worst = worth[q] > worth[worst] ? q : worst;
    }
    System.arraycopy(child, 0, lists[worst], 0, n);
    keep(decoder.forward(lists[worst]));
    built++;
    list(lists[worst]);
    evaluate(lists[worst], fromBack);
    ends[worst] = lastEnd;
    worth[worst] = lastWorth;
    bestOfPopulation = Math.min(bestOfPopulation, lastWorth);
    stale = 0;
  }

  /** Builds up to so many more schedules, or until one ends by the goal. */
  void run(long more, long goal) {
    long until = built + Math.min(more, budget.schedules() - built);
    while (bestEnd > goal && built < until && !spent()) {
      if (filled < population) {
        lists[filled] = lists[filled] == null ? new int[n] : lists[filled];
        double bias = filled == 0 ? 8 : filled % 4 == 0 ? 1 : 2;
        if (n <= MOST_FOR_BLOCKS) {
          sample(lists[filled], bias);
        } else {
          shuffle(lists[filled], filled == 0 ? 0 : 0.2);
        }
        evaluate(lists[filled], filled > 0 && fromBack);
        worth[filled] = lastWorth;
        ends[filled] = lastEnd;
        bestOfPopulation = Math.min(bestOfPopulation, lastWorth);
        filled++;
      } else {
        breed();
        if (stale > mostStale) {
          stale = 0;
          join();
        }
      }
    }
  }

  private long lastEnd;
  private long lastWorth;

  private void evaluate(int[] list, boolean back) {
    evaluate(list, back, Decoder.NONE, Decoder.NONE);
  }

  /**
   * Builds the schedule, pushes it to the front in the end, and makes the list the order that comes
   * of it; false, and the list of no use, if at first it is longer than the limit, or in the end
   * than what is wanted.
   */
  private boolean evaluate(int[] list, boolean back, long limit, long wanted) {
    long first = back ? decoder.backward(list, limit) : decoder.forward(list, limit);
    if (first == Decoder.NONE) {
      built++;
      return false;
    }
    if (!back) {
      keep(first);
      decoder.listByFinish(list);
      decoder.backward(list, Decoder.NONE);
    }
    decoder.listByStart(list);
    long end = decoder.forward(list, wanted);
    boolean taken = end != Decoder.NONE;
    if (taken) {
      keep(end);
      lastEnd = end;
      lastWorth = end * (n + 1) + decoder.unmoved();
      list(list);
    }
    built += back ? 2 : 3;
    return taken;
  }

  /** Fills the list in the order in which it will be put in. */
  private void list(int[] list) {
    if (fromBack) {
      decoder.listByFinish(list);
    } else {
      decoder.listByStart(list);
    }
  }

  /**
   * Puts a population at rest by, or joins its better half with that of one that was joined as
   * often.
   */
  private void join() {
    if (!fromBack) {
      filled = 0;
      bestOfPopulation = Long.MAX_VALUE;
      return;
    }
    Integer[] byWorth = new Integer[population];
    Arrays.setAll(byWorth, k -> k);
    Arrays.sort(byWorth, Comparator.comparingLong(k -> worth[k])); // keeps the order of equals
    int half = population / 2;
    Half other = putBy[joined];
    if (other == null) {
      other = new Half(new int[half][], new long[half], new long[half]);
      for (int k = 0; k < half; k++) {
        int from = byWorth[k];
        other.lists[k] = lists[from];
        lists[from] = null;
        other.ends[k] = ends[from];
        other.worth[k] = worth[from];
      }
      putBy[joined] = other;
      joined = 0;
      filled = 0;
      bestOfPopulation = Long.MAX_VALUE;
      return;
    }
    for (int k = 0; k < half; k++) {
      int to = byWorth[population - 1 - k];
      lists[to] = other.lists[k];
      ends[to] = other.ends[k];
      worth[to] = other.worth[k];
      bestOfPopulation = Math.min(bestOfPopulation, worth[to]);
    }
    putBy[joined] = null;
    joined++;
  }

  private void keep(long end) {
    if (end < bestEnd) {
      bestEnd = end;
      builtAtBest = built;
      decoder.keep();
    }
  }

  private void breed() {
    int a = better(below(population), below(population));
    int b = better(below(population), below(population));
    stale++;
    if (a == b) {
      return;
    }
    if (n <= MOST_FOR_BLOCKS) {
      block(lists[a], lists[b], child);
    } else {
      twoPoints(lists[a], lists[b], child);
    }
    move(child);
    long longer = Math.max(ends[a], ends[b]); // what ends later is not taken in
    if (!evaluate(child, fromBack, decoder.stretched(longer, worthPushing), longer)) {
      return;
    }
    if (lastWorth < bestOfPopulation) {
      bestOfPopulation = lastWorth;
      stale = 0;
    }
    for (int q = 0; q < population; q++) {
      if (worth[q] == lastWorth && Arrays.equals(lists[q], child)) {
        return;
      }
    }
    int worse = worth[a] > worth[b] ? a : b;
    if (lastWorth <= worth[worse]) {
      int[] freed = lists[worse];
      lists[worse] = child;
      child = freed;
      worth[worse] = lastWorth;
      ends[worse] = lastEnd;
    }
  }

  private int better(int a, int b) {
    return worth[a] <= worth[b] ? a : b;
  }

  /**
   * A random list, each next task drawn with odds of its urgency among the ready ones, raised to
   * the bias.
   */
  private void sample(int[] list, double bias) {
    int[] waiting = new int[n];
    int[] ready = new int[n];
    double[] odds = new double[n];
    int m = 0;
    for (int j = 0; j < n; j++) {
      waiting[j] = decoder.before(j).length;
      if (waiting[j] == 0) {
        ready[m++] = j;
      }
    }
    for (int k = 0; k < n; k++) {
      long latest = Long.MIN_VALUE;
      long soonest = Long.MAX_VALUE;
      for (int e = 0; e < m; e++) {
        latest = Math.max(latest, urgency[ready[e]]);
        soonest = Math.min(soonest, urgency[ready[e]]);
      }
      double scale = Math.max(1, (latest - soonest) / 50.0);
      double sum = 0;
      for (int e = 0; e < m; e++) {
        odds[e] = Math.pow((latest - urgency[ready[e]]) / scale + 1, bias);
        sum += odds[e];
      }
      double draw = unit() * sum;
      int e = 0;
      while (e < m - 1 && (draw -= odds[e]) >= 0) {
        e++;
      }
      int j = ready[e];
      ready[e] = ready[--m];
      list[k] = j;
      for (int after : decoder.after(j)) {
        if (--waiting[after] == 0) {
          ready[m++] = after;
        }
      }
    }
  }

  /**
   * A block of neighbours in a stays together in the order of a; all others keep the order of b
   * around it.
   */
  private void block(int[] a, int[] b, int[] child) {
    if (ancestors == null) {
      ancestors = ancestors();
    }
    int length = Math.min(n, 3 + below(Math.max(1, (int) (0.3 * n))));
    int from = below(n - length + 1);
    Arrays.fill(in, false);
    Arrays.fill(later, false);
    for (int k = 0; k < n; k++) {
      position[b[k]] = k;
    }
    long[] before = new long[ancestors.length == 0 ? 0 : ancestors[0].length];
    long sum = 0;
    for (int k = from; k < from + length; k++) {
      in[a[k]] = true;
      sum += position[a[k]];
      for (int w = 0; w < before.length; w++) {
        before[w] |= ancestors[a[k]][w];
      }
    }
    int at = 0;
    for (int k = 0; k < n; k++) {
      int j = b[k];
      if (!in[j]) {
        boolean mustBefore = (before[j >> 6] >>> j & 1) != 0;
        if (!mustBefore && (k * (long) length > sum || waitsForLater(j))) {
          later[j] = true;
        } else {
          child[at++] = j;
        }
      }
    }
    for (int k = from; k < from + length; k++) {
      child[at++] = a[k];
    }
    for (int j : b) {
      if (later[j]) {
        child[at++] = j;
      }
    }
  }

  /**
   * A list by urgency, each task shaken by up to so much of the whole span: for networks too large
   * to draw one by one.
   */
  private void shuffle(int[] list, double noise) {
    long first = Arrays.stream(urgency).min().orElse(0);
    long span = Arrays.stream(urgency).max().orElse(0) - first;
    double[] key = new double[n];
    for (int j = 0; j < n; j++) {
      key[j] = urgency[j] - first + noise * span * unit();
    }
    int[] sorted =
        java.util.stream.IntStream.range(0, n)
            .boxed()
            .sorted((x, y) -> Double.compare(key[x], key[y]))
            .mapToInt(Integer::intValue)
            .toArray();
    System.arraycopy(sorted, 0, list, 0, n);
    if (order == null) {
      int[][] before = new int[n][];
      int[][] after = new int[n][];
      for (int j = 0; j < n; j++) {
        before[j] = decoder.before(j);
        after[j] = decoder.after(j);
      }
      order = new Order(before, after);
    }
    order.repair(list);
  }

  private boolean waitsForLater(int j) {
    for (int i : decoder.before(j)) {
      if (in[i] || later[i]) {
        return true;
      }
    }
    return false;
  }

  private long[][] ancestors() {
    long[][] all = new long[n][(n + 63) / 64];
    for (int j = 0; j < n; j++) {
      for (int i : decoder.before(j)) {
        all[j][i >> 6] |= 1L << i;
        for (int w = 0; w < all[j].length; w++) {
          all[j][w] |= all[i][w];
        }
      }
    }
    return all;
  }

  /** The front of a, then what b has next, then the rest of a. */
  private void twoPoints(int[] a, int[] b, int[] child) {
    int from = below(n);
    int to = from + below(n - from + 1);
    Arrays.fill(in, false);
    int at = 0;
    while (at < from) {
      child[at] = a[at];
      in[a[at++]] = true;
    }
    for (int k = 0; k < n && at < to; k++) {
      if (!in[b[k]]) {
        in[b[k]] = true;
        child[at++] = b[k];
      }
    }
    for (int j : a) {
      if (!in[j]) {
        child[at++] = j;
      }
    }
  }

  /**
   * Moves some tasks to a random place between those they wait for and those that wait for them.
   */
  private void move(int[] list) {
    for (int k = 0; k < n; k++) {
      position[list[k]] = k;
    }
    for (int t = 0; t < n; t++) {
      if (unit() < moveRate) {
        int at = below(n);
        int j = list[at];
        int low = -1;
        int high = n;
        for (int i : decoder.before(j)) {
          low = Math.max(low, position[i]);
        }
        for (int i : decoder.after(j)) {
          high = Math.min(high, position[i]);
        }
        int to = low + 1 + below(high - low - 1);
        for (; at < to; at++) {
          list[at] = list[at + 1];
          position[list[at]] = at;
        }
        for (; at > to; at--) {
          list[at] = list[at - 1];
          position[list[at]] = at;
        }
        list[at] = j;
        position[j] = at;
      }
    }
  }

  /** G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (2003) 14. */
  private long bits() {
    random ^= random << 13;
    random ^= random >>> 7;
    random ^= random << 17;
    return random;
  }

  private int below(int bound) {
    return (int) ((bits() >>> 32) * bound >>> 32);
  }

  private double unit() {
    return (bits() >>> 11) * 0x1.0p-53;
  }
}

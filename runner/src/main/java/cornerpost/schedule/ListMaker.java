package cornerpost.schedule;

import java.util.Arrays;

/**
 * Makes lists of tasks for a search: first ones by urgency, children of two, and small changes.
 *
 * <p>Sources: R. Kolisch, "Efficient priority rules for the RCPSP", Journal of Operations
 * Management 14 (1996) 179-192 (first lists: biased random sampling by latest start); V. Valls, F.
 * Ballestin and S. Quintanilla, "A hybrid genetic algorithm for the RCPSP", European Journal of
 * Operational Research 185 (2008) 495-508 (blocks from one parent); S. Hartmann, "A competitive
 * genetic algorithm for resource-constrained project scheduling", Naval Research Logistics 45
 * (1998) 733-750 (two points, for large networks).
 */
final class ListMaker {
  private static final int MOST_FOR_BLOCKS =
      2_000; // above, the table of who waits for whom gets too large

  private final Decoder decoder;
  private final int n;
  private final RandomDraw draw;
  private final double longestBlock;
  private final long[] urgency;
  private final double[] atMost; // odds of 0, of up to 1, ... moves
  private final int words; // of a set of tasks, a bit each
  private final long[] in;
  private final long[] before;
  private final long[] blockOrLater;
  private final int[] later;
  private final int[] position;
  private long[] ancestors; // a set for each task
  private Order order;

  /**
   * @param moveRate the odds that one of as many moves as there are tasks is made; 0 or more, less
   *     than 1
   * @param longestBlock share of the tasks that a child takes from one parent at the most, above 0
   */
  ListMaker(Decoder decoder, RandomDraw draw, double moveRate, double longestBlock) {
    this.decoder = decoder;
    this.draw = draw;
    this.longestBlock = longestBlock;
    n = decoder.size;
    urgency = decoder.urgency();
    words = (n + 63) / 64;
    in = new long[words];
    before = new long[words];
    blockOrLater = new long[words];
    later = new int[n];
    position = new int[n];
    atMost = new double[n];
    double odds = Math.pow(1 - moveRate, n);
    double sum = 0;
    for (int moves = 0; moves < n; moves++) {
      sum += odds;
      atMost[moves] = sum;
      odds *= (n - moves) * moveRate / ((moves + 1) * (1 - moveRate));
    }
  }

  /**
   * A list by urgency, with as much chance in it as its number in the population asks for; number 0
   * is nearly without.
   */
  void fill(int[] list, int number) {
    if (n <= MOST_FOR_BLOCKS) {
      sample(list, number == 0 ? 8 : number % 4 == 0 ? 1 : 2);
    } else {
      shuffle(list, number == 0 ? 0 : 0.2);
    }
  }

  /** The child of two lists. */
  void cross(int[] a, int[] b, int[] child) {
    if (n <= MOST_FOR_BLOCKS) {
      block(a, b, child);
    } else {
      twoPoints(a, b, child);
    }
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
      double left = draw.unit() * sum;
      int e = 0;
      while (e < m - 1 && (left -= odds[e]) >= 0) {
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
   * around it: those before the first of the block in b stay before it, those after the last stay
   * after it. Between them without a branch on where a task goes, which a processor would guess
   * wrong half the time.
   */
  private void block(int[] a, int[] b, int[] child) {
    if (ancestors == null) {
      ancestors = ancestors();
    }
    int length = Math.min(n, 3 + draw.below(Math.max(1, (int) (longestBlock * n))));
    int from = draw.below(n - length + 1);
    Arrays.fill(in, 0);
    Arrays.fill(before, 0);
    for (int k = 0; k < n; k++) {
      position[b[k]] = k;
    }
    int first = n;
    int last = 0;
    long sum = 0;
    for (int k = from; k < from + length; k++) {
      int j = a[k];
      in[j >> 6] |= 1L << j;
      first = Math.min(first, position[j]);
      last = Math.max(last, position[j]);
      sum += position[j];
      for (int w = 0; w < words; w++) {
        before[w] |= ancestors[j * words + w];
      }
    }
    System.arraycopy(in, 0, blockOrLater, 0, words);
    int early = first;
    int late = 0;
    for (int k = first; k <= last; k++) {
      int j = b[k];
      int w = j >> 6;
      long waits = 0;
      for (int v = 0; v < words; v++) {
        waits |= ancestors[j * words + v] & blockOrLater[v];
      }
      int free = 1 - (int) (in[w] >>> j & 1);
      int may = free & 1 - (int) (before[w] >>> j & 1);
      int goes = may & ((k * (long) length > sum ? 1 : 0) | (waits != 0 ? 1 : 0));
      child[early] = j;
      early += free - goes;
      later[late] = j;
      late += goes;
      blockOrLater[w] |= (long) goes << j;
    }
    System.arraycopy(b, 0, child, 0, first);
    System.arraycopy(a, from, child, early, length);
    System.arraycopy(later, 0, child, early + length, late);
    System.arraycopy(b, last + 1, child, last + 1, n - last - 1);
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
      key[j] = urgency[j] - first + noise * span * draw.unit();
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

  private long[] ancestors() {
    long[] all = new long[n * words];
    for (int j = 0; j < n; j++) {
      for (int i : decoder.before(j)) {
        all[j * words + (i >> 6)] |= 1L << i;
        for (int w = 0; w < words; w++) {
          all[j * words + w] |= all[i * words + w];
        }
      }
    }
    return all;
  }

  /** The front of a, then what b has next, then the rest of a. */
  private void twoPoints(int[] a, int[] b, int[] child) {
    int from = draw.below(n);
    int to = from + draw.below(n - from + 1);
    boolean[] taken = new boolean[n];
    int at = 0;
    while (at < from) {
      child[at] = a[at];
      taken[a[at++]] = true;
    }
    for (int k = 0; k < n && at < to; k++) {
      if (!taken[b[k]]) {
        taken[b[k]] = true;
        child[at++] = b[k];
      }
    }
    for (int j : a) {
      if (!taken[j]) {
        child[at++] = j;
      }
    }
  }

  /**
   * Moves some tasks to a random place between those they wait for and those that wait for them.
   */
  void move(int[] list) {
    double drawn = draw.unit();
    if (drawn < atMost[0]) {
      return;
    }
    for (int k = 0; k < n; k++) {
      position[list[k]] = k;
    }
    for (int moves = 0; moves < n && drawn >= atMost[moves]; moves++) {
      int at = draw.below(n);
      int j = list[at];
      int low = -1;
      int high = n;
      for (int i : decoder.before(j)) {
        low = Math.max(low, position[i]);
      }
      for (int i : decoder.after(j)) {
        high = Math.min(high, position[i]);
      }
      int to = low + 1 + draw.below(high - low - 1);
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

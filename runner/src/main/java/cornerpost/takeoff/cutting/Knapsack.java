package cornerpost.takeoff.cutting;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The fullest bar by value: bounded knapsack by branch and bound, depth first, in order of value a
 * length. Exact unless it meets its limit of steps.
 */
final class Knapsack {
  private static final int MOST_STEPS = 300_000;

  private final int[] sizes;
  private final int[] counts;
  private final double[] values;
  private final int[] order;
  private final int[] now;
  private int[] best;
  private double bestValue;
  private int steps;

  private Knapsack(Demand d, double[] values) {
    this.sizes = d.sizes();
    this.counts = d.counts();
    this.values = values;
    this.now = new int[sizes.length];
    this.best = new int[sizes.length];
    this.order =
        IntStream.range(0, sizes.length)
            .filter(i -> values[i] > 0 && counts[i] > 0)
            .boxed()
            .sorted(
                Comparator.<Integer>comparingDouble(i -> -values[i] / sizes[i])
                    .thenComparing(i -> i))
            .mapToInt(i -> i)
            .toArray();
  }

  /**
   * @param pattern how many of each length
   * @param proved whether no pattern is worth more
   */
  record Found(int[] pattern, double value, boolean proved) {}

  static Found best(Demand d, double[] values) {
    var search = new Knapsack(d, values);
    search.branch(0, d.room(), 0);
    return new Found(search.best, search.bestValue, search.steps < MOST_STEPS);
  }

  private void branch(int at, int left, double value) {
    if (value > bestValue) {
      bestValue = value;
      best = now.clone();
    }
    if (at == order.length || steps >= MOST_STEPS) return;
    steps++;
    if (value + fractional(at, left) <= bestValue + 1e-12) return;
    int type = order[at];
    for (int k = Math.min(counts[type], left / sizes[type]); k >= 0; k--) {
      now[type] = k;
      branch(at + 1, left - k * sizes[type], value + k * values[type]);
    }
    now[type] = 0;
  }

  /** No more than this comes of what is left: pieces may be split. */
  private double fractional(int from, int room) {
    double value = 0;
    long left = room;
    for (int i = from; i < order.length && left > 0; i++) {
      int type = order[i];
      long whole = (long) counts[type] * sizes[type];
      if (whole <= left) {
        value += counts[type] * values[type];
        left -= whole;
      } else {
        return value + values[type] * left / sizes[type];
      }
    }
    return value;
  }
}

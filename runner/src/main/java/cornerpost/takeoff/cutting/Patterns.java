package cornerpost.takeoff.cutting;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The cutting patterns of the relaxed problem, where a pattern may be used a fraction of a time:
 * column generation by P. C. Gilmore and R. E. Gomory, "A linear programming approach to the
 * cutting-stock problem", Operations Research 9 (1961), 849-859. Dense inverse; lengths number
 * tens.
 *
 * <p>Where rounding or the limit of steps stops it early the patterns still cover the demand, and
 * the bound still holds: it is reckoned in whole numbers from the prices of the pieces, whatever
 * they are.
 */
final class Patterns {
  /** Prices of pieces are rounded down to this part of a bar before the bound is reckoned. */
  private static final double GRAIN = 1e7;

  private final Demand demand;
  private final int[] rows; // lengths that are wanted
  private final int[][] patterns; // the basis
  private final double[][] inverse;
  private final double[] times;
  private int bound;

  private Patterns(Demand demand) {
    this.demand = demand;
    this.rows = IntStream.range(0, demand.types()).filter(i -> demand.counts()[i] > 0).toArray();
    int m = rows.length;
    patterns = new int[m][];
    inverse = new double[m][m];
    times = new double[m];
    for (int r = 0; r < m; r++) {
      int type = rows[r];
      int most = Math.min(demand.counts()[type], demand.room() / demand.sizes()[type]);
      patterns[r] = new int[demand.types()];
      patterns[r][type] = most;
      inverse[r][r] = 1.0 / most;
      times[r] = (double) demand.counts()[type] / most;
    }
  }

  static Patterns of(Demand demand) {
    var p = new Patterns(demand);
    p.solve();
    return p;
  }

  /** Bars below which no plan of whole bars can go; 0 if it was not found out. */
  int bound() {
    return bound;
  }

  int size() {
    return patterns.length;
  }

  int[] pattern(int i) {
    return patterns[i];
  }

  /** How often pattern {@code i} is used, a fraction. */
  double times(int i) {
    return times[i];
  }

  private void solve() {
    int m = rows.length;
    for (int step = 0; step < 60 * m + 60; step++) {
      var prices = prices();
      var found = Knapsack.best(demand, prices);
      if (found.value() <= 1 + 1e-9 || !exchange(found.pattern())) {
        bound = bound(prices);
        return;
      }
    }
    bound = bound(prices());
  }

  private double[] prices() {
    var prices = new double[demand.types()];
    for (int c = 0; c < rows.length; c++) {
      double sum = 0;
      for (var row : inverse) sum += row[c];
      prices[rows[c]] = Math.max(0, sum);
    }
    return prices;
  }

  /** Takes the pattern into the basis; false where the numbers no longer allow it. */
  private boolean exchange(int[] pattern) {
    int m = rows.length;
    var column = new double[m];
    for (int r = 0; r < m; r++) {
      for (int c = 0; c < m; c++) column[r] += inverse[r][c] * pattern[rows[c]];
    }
    int leave = -1;
    double least = Double.MAX_VALUE;
    for (int r = 0; r < m; r++) {
      if (column[r] > 1e-9 && times[r] / column[r] < least - 1e-12) {
        least = times[r] / column[r];
        leave = r;
      }
    }
    if (leave < 0) return false;
    double pivot = column[leave];
    for (int c = 0; c < m; c++) inverse[leave][c] /= pivot;
    times[leave] /= pivot;
    for (int r = 0; r < m; r++) {
      if (r == leave || column[r] == 0) continue;
      for (int c = 0; c < m; c++) inverse[r][c] -= column[r] * inverse[leave][c];
      times[r] = Math.max(0, times[r] - column[r] * times[leave]);
    }
    patterns[leave] = pattern;
    return true;
  }

  /**
   * Any prices for which no bar is worth more than V show that pieces worth W need W / V bars. In
   * whole numbers, so that it is exact; V is proved, or nothing is said.
   */
  private int bound(double[] prices) {
    var whole = Arrays.stream(prices).map(p -> Math.floor(p * GRAIN)).toArray();
    var fullest = Knapsack.best(demand, whole);
    if (!fullest.proved() || fullest.value() <= 0) return 0;
    double worth = 0;
    for (int i = 0; i < whole.length; i++) worth += whole[i] * demand.counts()[i];
    return LowerBound.ceil((long) worth, (long) fullest.value());
  }
}

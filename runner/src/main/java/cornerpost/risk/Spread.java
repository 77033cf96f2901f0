package cornerpost.risk;

import java.util.Arrays;

/** Outcomes of many trials, sorted. */
public final class Spread {
  private final double[] sorted;

  public Spread(double[] outcomes) {
    if (outcomes.length == 0) throw new IllegalArgumentException("No outcomes");
    sorted = outcomes.clone();
    Arrays.sort(sorted);
  }

  public int size() {
    return sorted.length;
  }

  public double mean() {
    double sum = 0;
    for (double x : sorted) sum += x;
    return sum / sorted.length;
  }

  /**
   * The outcome that a share of the trials does not pass: the smallest x with at least {@code
   * share} of the outcomes at or below it.
   *
   * @param share above 0, up to 1
   */
  public double quantile(double share) {
    int rank = (int) Math.ceil(share * sorted.length - 1e-9);
    return sorted[Math.min(sorted.length, Math.max(1, rank)) - 1];
  }

  /** The share of outcomes at or below {@code limit}. */
  public double shareWithin(double limit) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] <= limit) low = middle + 1;
      else high = middle;
    }
    return (double) low / sorted.length;
  }

  public double least() {
    return sorted[0];
  }

  public double most() {
    return sorted[sorted.length - 1];
  }
}

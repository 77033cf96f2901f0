package cornerpost.takeoff.cutting;

/**
 * Bars below which no plan can go, cheaply.
 *
 * <p>Sum of lengths over the bar; and L2 of S. Martello and P. Toth, "Lower bounds and reduction
 * procedures for the bin packing problem", Discrete Applied Mathematics 28 (1990), 59-70: for each
 * K up to half a bar, pieces longer than room - K stand alone with nothing beside them, those over
 * half a bar stand one to a bar, and what they leave must take the others from K up.
 */
final class LowerBound {
  private LowerBound() {}

  static int of(Demand d) {
    if (d.isEmpty()) return 0;
    int best = ceil(d.total(), d.room());
    best = Math.max(best, l2(d, 0));
    for (int i = 0; i < d.types(); i++) {
      if (2L * d.sizes()[i] <= d.room() && d.counts()[i] > 0) {
        best = Math.max(best, l2(d, d.sizes()[i]));
      }
    }
    return best;
  }

  private static int l2(Demand d, int least) {
    int alone = 0;
    int big = 0;
    long bigLength = 0;
    long small = 0;
    for (int i = 0; i < d.types(); i++) {
      int size = d.sizes()[i];
      int count = d.counts()[i];
      if (size > d.room() - least) {
        alone += count;
      } else if (2L * size > d.room()) {
        big += count;
        bigLength += (long) size * count;
      } else if (size >= least) {
        small += (long) size * count;
      }
    }
    long beside = (long) big * d.room() - bigLength;
    return alone + big + Math.max(0, ceil(small - beside, d.room()));
  }

  static int ceil(long a, long b) {
    return Math.toIntExact(-Math.floorDiv(-a, b));
  }
}

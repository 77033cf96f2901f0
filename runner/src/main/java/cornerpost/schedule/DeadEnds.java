package cornerpost.schedule;

import java.util.Arrays;

/**
 * Learns from dead ends: each is traced back to orders that cannot all hold, which is kept as a
 * nogood, and all suppositions are taken back under which it already says something.
 *
 * <p>Traced back is what was found under the last supposition, up to the one order from which all
 * the rest of it follows (the first unique implication point), and of what was found before it
 * whatever is no order. How often an order took part is counted, and what lies longer ago counts
 * less. Method: J. P. Marques-Silva and K. A. Sakallah, "GRASP", IEEE Transactions on Computers 48
 * (1999) 506-521; M. W. Moskewicz et al., "Chaff", DAC 2001, 530-535 (counting).
 */
final class DeadEnds {
  private static final double FADING = 0.95;

  private static final double MOST = 1e100;

  private final Trail trail;
  private final Reasons reasons;
  private final Deductions deductions;
  private final Nogoods nogoods;
  private final double[] counted; // by variable, in units of one
  private double one = 1;
  private int[] learned = new int[64]; // literals, false under suppositions before the last
  private int size;

  DeadEnds(ReasonedWindows windows, Nogoods nogoods) {
    trail = windows.trail;
    reasons = windows.reasons;
    deductions = windows.deductions;
    this.nogoods = nogoods;
    counted = new double[windows.orders.count / 2];
  }

  /**
   * How often the order, or its opposite, took part in dead ends, the last of them counted as 1.
   */
  double part(int literal) {
    return counted[literal >> 1] / one;
  }

  /** Learns from the one whose causes are asked for; false if it rests on no supposition. */
  boolean learn() {
    if (trail.depth == 0) {
      return false;
    }
    while (true) {
      int only = trace();
      if (only >= 0) {
        adopt(only ^ 1);
        return true;
      }
      int top = 0;
      for (int k = 0; k < size; k++) {
        top = Math.max(top, level(learned[k]));
      }
      if (top == 0) {
        return false;
      }
      trail.backTo(top); // it was a dead end before the last supposition
      for (int k = 0; k < size; k++) {
        reasons.askFor(learned[k] ^ 1);
      }
    }
  }

  private int level(int literal) {
    return trail.level[trail.eventOf[literal >> 1]];
  }

  /** The order of the last level that with those learned makes the dead end; -1 if none. */
  private int trace() {
    size = 0;
    int only = -1;
    for (int e = trail.events - 1; e >= 0; e--) {
      if (!reasons.takeUp(e)) continue;
      if (trail.ofOrder(e)) {
        int literal = trail.what[e];
        counted[literal >> 1] += one;
        if (trail.level[e] < trail.depth) {
          if (size == learned.length) learned = Arrays.copyOf(learned, 2 * size);
          learned[size++] = literal ^ 1;
          continue;
        }
        if (!reasons.asksOfLast()) {
          only = literal;
          continue;
        }
      }
      reasons.explain(e);
    }
    return only;
  }

  private void adopt(int opposite) {
    one /= FADING;
    if (one > MOST) {
      for (int v = 0; v < counted.length; v++) {
        counted[v] /= one;
      }
      one = 1;
    }
    int[] clause = new int[size + 1];
    clause[0] = opposite;
    int back = 0;
    for (int k = 0; k < size; k++) {
      clause[k + 1] = learned[k];
      if (level(learned[k]) > back) { // the second watched is the last to have become false
        back = level(learned[k]);
        clause[k + 1] = clause[1];
        clause[1] = learned[k];
      }
    }
    trail.backTo(back);
    deductions.follow(opposite, size == 0 ? Nogoods.NONE : nogoods.add(clause));
  }
}

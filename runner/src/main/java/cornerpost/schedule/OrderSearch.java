package cornerpost.schedule;

import java.util.function.BooleanSupplier;

/**
 * Proves how early a network with any mix of calendars, relations and lags can end, by deciding for
 * tasks that want the same crew which goes first.
 *
 * <p>An end one minute before the best known is supposed, and {@link TimeWindows} narrows what can
 * be. If the tasks at their earliest then ask no crew for too much, that is a better schedule. Else
 * a conflict is taken and each order that settles it is tried in turn. In any schedule within crew
 * numbers two tasks of each set that is too many lie one after the other, so nothing is missed.
 *
 * <p>Which conflict comes first is told at {@link OrderChoices}. Method: F. J. Radermacher,
 * "Scheduling of project networks", Annals of Operations Research 4 (1985) 227-252 (forbidden
 * sets).
 */
final class OrderSearch {
  /** With fewer orders to try there is no trying of both orders of every two tasks first. */
  private static final long ENOUGH_TO_TRY = 100;

  private static final int MOST_ROUNDS = 5; // of that

  private final Graph g;
  private final Sweep early;
  private final TimeWindows windows;
  private final OrderChoices orders;
  private final BooleanSupplier stop;
  private long[] best;
  private long end;
  private long nodes;
  private long most;
  private boolean cut;

  OrderSearch(Network network, CrewUse use, Sweep early, BooleanSupplier stop) {
    g = network.graph();
    this.early = early;
    this.stop = stop;
    windows = new TimeWindows(network, use);
    orders = new OrderChoices(g, use, windows);
  }

  /**
   * The earliest end, from the early end on, that the windows alone do not refute; the known end at
   * the most. Found by halving: a "destructive" bound after R. Klein and A. Scholl, "Computing
   * lower bounds by destructive improvement", European Journal of Operational Research 112 (1999)
   * 322-346.
   */
  long lowestEnd(long known) {
    long lowest = early.end;
    long highest = known;
    while (lowest < highest) {
      long middle = lowest + (highest - lowest) / 2;
      if (windows.open(early, middle)) {
        highest = middle;
      } else {
        lowest = middle + 1;
      }
    }
    return lowest;
  }

  Graph graph() {
    return g;
  }

  /** Windows opened and orders tried so far. */
  long nodes() {
    return nodes;
  }

  /** Places of the tasks in the best schedule found, by position in the network. */
  long[] best() {
    return best;
  }

  /** The end of it. */
  long end() {
    return end;
  }

  /**
   * Looks for ends before the one known.
   *
   * @param known an end that can be had
   * @param mostNodes orders tried before it gives up
   * @return whether it went through everything: then nothing ends before {@link #end}
   */
  boolean run(long known, long mostNodes) {
    end = known;
    best = null;
    if (g.size > TimeWindows.MOST_TASKS) {
      return false;
    }
    most = nodes + mostNodes;
    cut = false;
    do {
      nodes++;
    } while (windows.open(early, end - 1) && (mostNodes < ENOUGH_TO_TRY || tryAll()) && node());
    return !cut;
  }

  /**
   * Tries both orders of every two tasks that want the same crew, and keeps what is left where one
   * is refuted; false if for some two both are.
   */
  private boolean tryAll() {
    boolean changed = true;
    for (int round = 0; changed && round < MOST_ROUNDS; round++) {
      changed = false;
      for (int i = 0; i < g.size; i++) {
        for (int j : windows.rivals(i)) {
          if (j == i || windows.before(i, j) || windows.before(j, i)) continue;
          if (nodes >= most) return true;
          nodes++;
          long[][] state = windows.state();
          boolean possible = windows.decide(i, j);
          windows.restore(state);
          if (!possible) {
            changed = true;
            if (!windows.decide(j, i)) return false;
          }
        }
      }
    }
    return true;
  }

  /** Tries what the settled windows leave; true if that gave a better schedule. */
  private boolean node() {
    int[][] choices = orders.choices();
    if (choices.length == 0) {
      take();
      return true;
    }
    long[][] state = windows.state();
    for (int[] c : choices) {
      if (nodes >= most || (nodes & 63) == 0 && stop.getAsBoolean()) {
        cut = true;
        return false;
      }
      nodes++;
      if (windows.decide(c[0], c[1]) && node()) {
        return true;
      }
      if (cut) {
        return false;
      }
      windows.restore(state);
    }
    return false;
  }

  private void take() {
    long last = Long.MIN_VALUE;
    for (int i = 0; i < g.size; i++) {
      last = Math.max(last, g.state[i] == Graph.DONE ? g.realFinish[i] : windows.earlyFinish[i]);
    }
    end = last;
    best = windows.low.clone();
  }
}

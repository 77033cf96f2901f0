package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;
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
 * <p>Of tasks that overlap and cannot run at once the pair is taken that must be done in the
 * shortest time from the earliest start of either to the latest finish (found by trial), and first
 * the order that leaves more room. Where every two could run at once but not all, the conflict is a
 * smallest set that is too many. Method: F. J. Radermacher, "Scheduling of project networks",
 * Annals of Operations Research 4 (1985) 227-252 (forbidden sets); C.-C. Cheng and S. F. Smith,
 * "Applying constraint satisfaction techniques to job shop scheduling", Annals of Operations
 * Research 70 (1997) 327-357 (which order first).
 */
final class OrderSearch {
  private final Graph g;
  private final CrewUse use;
  private final Sweep early;
  private final TimeWindows windows;
  private final BooleanSupplier stop;
  private long[] best;
  private long end;
  private long nodes;
  private long most;
  private boolean cut;

  OrderSearch(Network network, CrewUse use, Sweep early, BooleanSupplier stop) {
    g = network.graph();
    this.use = use;
    this.early = early;
    this.stop = stop;
    windows = new TimeWindows(network, use);
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
    } while (windows.open(early, end - 1) && node());
    return !cut;
  }

  /** Tries what the settled windows leave; true if that gave a better schedule. */
  private boolean node() {
    int[][] choices = choices();
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

  /** The orders of which any schedule keeps one; none if the early dates are a schedule. */
  private int[][] choices() {
    long least = Long.MAX_VALUE;
    int first = -1;
    int second = -1;
    for (int i = 0; i < g.size; i++) {
      for (int j : windows.rivals(i)) {
        if (j > i
            && windows.earlyStart[i] < windows.earlyFinish[j]
            && windows.earlyStart[j] < windows.earlyFinish[i]) {
          long one = windows.lateStart[j] - windows.earlyFinish[i];
          long two = windows.lateStart[i] - windows.earlyFinish[j];
          long room =
              Math.max(windows.lateFinish[i], windows.lateFinish[j])
                  - Math.min(windows.earlyStart[i], windows.earlyStart[j]);
          if (room < least) {
            least = room;
            first = one >= two ? i : j;
            second = one >= two ? j : i;
          }
        }
      }
    }
    if (first >= 0) {
      return new int[][] {{first, second}, {second, first}};
    }
    return tooMany();
  }

  /** Orders that settle a smallest set of tasks that overlap and are too many for a crew. */
  private int[][] tooMany() {
    for (int crew = 0; crew < use.crews(); crew++) {
      int wanted = crew;
      int[] tasks =
          java.util.stream.IntStream.range(0, g.size)
              .filter(i -> use.needs(i, wanted))
              .boxed()
              .sorted((x, y) -> Long.compare(windows.earlyStart[x], windows.earlyStart[y]))
              .mapToInt(Integer::intValue)
              .toArray();
      for (int k = 0; k < tasks.length; k++) {
        long moment = windows.earlyStart[tasks[k]];
        List<Integer> running = new ArrayList<>();
        int needed = 0;
        for (int q = 0; q <= k; q++) {
          if (windows.earlyFinish[tasks[q]] > moment) {
            running.add(tasks[q]);
            needed += use.need(tasks[q], crew);
          }
        }
        if (needed > use.available(crew)) {
          return settling(running, needed, crew);
        }
      }
    }
    return new int[0][];
  }

  private int[][] settling(List<Integer> running, int needed, int crew) {
    var set = new ArrayList<>(running);
    set.sort((x, y) -> use.need(x, crew) - use.need(y, crew)); // a small set has few orders
    int sum = needed;
    for (int i : List.copyOf(set)) {
      if (sum - use.need(i, crew) > use.available(crew)) {
        set.remove(Integer.valueOf(i));
        sum -= use.need(i, crew);
      }
    }
    List<int[]> orders = new ArrayList<>();
    for (int i : set) {
      for (int j : set) {
        if (i != j && windows.earlyFinish[i] <= windows.lateStart[j]) {
          orders.add(new int[] {i, j});
        }
      }
    }
    orders.sort((x, y) -> Long.compare(room(y), room(x)));
    return orders.isEmpty() ? new int[][] {{set.get(0), set.get(1)}} : orders.toArray(int[][]::new);
  }

  private long room(int[] order) {
    return windows.lateStart[order[1]] - windows.earlyFinish[order[0]];
  }
}

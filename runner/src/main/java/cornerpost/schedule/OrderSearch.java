package cornerpost.schedule;

import java.util.function.BooleanSupplier;

/**
 * Proves how early a network with any mix of calendars, relations and lags can end, by deciding for
 * tasks that want the same crew which goes first.
 *
 * <p>An end one minute before the best known is supposed, and {@link TimeWindows} narrows what can
 * be. If the tasks at their earliest then ask no crew for too much, that is a better schedule. Else
 * a conflict is taken and an order that settles it supposed. In any schedule within crew numbers
 * two tasks of each set that is too many lie one after the other, so nothing is missed. From every
 * dead end it is learned which orders cannot go together ({@link DeadEnds}); now and then the
 * search begins anew with all it has learned, which holds for any earlier end too.
 *
 * <p>Of tasks that overlap and cannot run at once the pair is taken that must be done in the
 * shortest time from the earliest start of either to the latest finish, divided by how much it had
 * to do with dead ends, and first the order that leaves more room. Where every two could run at
 * once but not all, the conflict is a smallest set that is too many.
 *
 * <p>Method: F. J. Radermacher, "Scheduling of project networks", Annals of Operations Research 4
 * (1985) 227-252 (forbidden sets); C.-C. Cheng and S. F. Smith, "Applying constraint satisfaction
 * techniques to job shop scheduling", ibid. 70 (1997) 327-357 (which order first); D. Grimes, E.
 * Hebrard and A. Malapert, "Closing the open shop: contradicting conventional wisdom", CP 2009,
 * 400-408 (windows divided by what failed); M. Luby, A. Sinclair and D. Zuckerman, Information
 * Processing Letters 47 (1993) 173-180 (when to begin anew).
 */
final class OrderSearch {
  private static final int BEGIN_ANEW = 30; // dead ends, times the numbers of Luby
  private static final double WEIGHT = 5; // of dead ends; found by trial, like the other sizes

  private final Graph g;
  private final CrewUse use;
  private final Sweep early;
  private final TimeWindows roots;
  private final BooleanSupplier stop;
  private ReasonedWindows windows; // made when first needed, with what follows
  private DeadEnds deadEnds;
  private int[] pairs; // literals of tasks that cannot run at once
  private long[] best;
  private long end = Long.MAX_VALUE;
  private boolean possible = true;
  private long effort;
  private long dead;
  private int beginnings = 1;
  private long beginAnewAt = BEGIN_ANEW;

  OrderSearch(Network network, CrewUse use, Sweep early, BooleanSupplier stop) {
    g = network.graph();
    this.use = use;
    this.early = early;
    this.stop = stop;
    roots = new TimeWindows(network, use);
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
      if (roots.open(early, middle)) {
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

  /** Places of the tasks in the best schedule found by the last run; null if it found none. */
  long[] best() {
    return best;
  }

  /** The end of it, or the end that was known. */
  long end() {
    return end;
  }

  /**
   * Looks for ends before the one known.
   *
   * @param known an end that can be had
   * @param most orders supposed and dead ends met before it gives up; what was learned stays
   * @return whether it went through everything: then nothing ends before {@link #end}
   */
  boolean run(long known, long most) {
    best = null;
    if (!OrderLiterals.suits(roots)) {
      end = known;
      return false;
    }
    if (known < end) {
      end = known;
      possible = open();
    }
    long until = effort + most;
    while (possible && effort < until && ((effort & 63) != 0 || !stop.getAsBoolean())) {
      effort++;
      if (!windows.settle()) {
        dead++;
        possible = deadEnds.learn();
      } else if (dead >= beginAnewAt) {
        windows.trail.backTo(0);
        beginnings++;
        beginAnewAt = dead + BEGIN_ANEW * luby(beginnings);
      } else if (!supposeOfPair() && !supposeOfSet()) {
        take();
        windows.trail.backTo(0);
        possible = open();
      }
    }
    return !possible;
  }

  /** 1, 1, 2, 1, 1, 2, 4, 1, ... */
  private static long luby(int i) {
    int whole = Integer.highestOneBit(i + 1); // i of whole - 1 ends a row
    return whole == i + 1 ? whole / 2 : luby(i - whole + 1);
  }

  private boolean open() {
    if (windows == null) {
      var nogoods = new Nogoods();
      windows = new ReasonedWindows(roots, nogoods);
      deadEnds = new DeadEnds(windows, nogoods);
      pairs = windows.orders.pairs();
    }
    return roots.open(early, end - 1) && windows.open(roots);
  }

  private boolean supposeOfPair() {
    double least = Double.MAX_VALUE;
    int chosen = -1;
    Trail trail = windows.trail;
    for (int l : pairs) {
      int i = windows.orders.first[l];
      int j = windows.orders.second[l];
      if (trail.value[l] != 0
          || trail.earlyStart[i] >= trail.earlyFinish[j]
          || trail.earlyStart[j] >= trail.earlyFinish[i]) {
        continue;
      }
      long whole =
          Math.max(trail.lateFinish[i], trail.lateFinish[j])
              - Math.min(trail.earlyStart[i], trail.earlyStart[j]);
      double room = whole / (1 + WEIGHT * deadEnds.part(l));
      if (room < least) {
        least = room;
        chosen = windows.room(l) >= windows.room(l ^ 1) ? l : l ^ 1;
      }
    }
    if (chosen >= 0) windows.suppose(chosen);
    return chosen >= 0;
  }

  /** Where a set of tasks is too many for a crew: an order of two, or a dead end if none can be. */
  private boolean supposeOfSet() {
    int[] set = OrderChoices.tooMany(use, windows.trail.earlyStart, windows.trail.earlyFinish);
    if (set.length == 0) return false;
    int chosen = -1;
    for (int i : set) {
      for (int j : set) {
        int l = windows.orders.of(i, j);
        if (i == j || windows.ruledOut(l)) continue;
        if (chosen < 0 || windows.room(l) > windows.room(chosen)) chosen = l;
      }
    }
    if (chosen >= 0) {
      windows.suppose(chosen);
      return true;
    }
    for (int i : set) {
      for (int j : set) {
        if (i != j) windows.reasons.askFor(windows.orders.of(i, j) ^ 1);
      }
    }
    possible = deadEnds.learn();
    return true;
  }

  private void take() {
    long last = Long.MIN_VALUE;
    for (int i = 0; i < g.size; i++) {
      last =
          Math.max(last, g.state[i] == Graph.DONE ? g.realFinish[i] : windows.trail.earlyFinish[i]);
    }
    end = last;
    best = windows.trail.low.clone();
  }
}

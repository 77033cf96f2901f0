package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A moment before which no schedule can end, for any mix of calendars.
 *
 * <p>An end is supposed and the late dates that go with it are worked out. If then a crew has more
 * work in tasks that must lie between two moments than it has working time there, the end is
 * impossible. The smallest end that survives is found by halving. (A "destructive" bound: R. Klein
 * and A. Scholl, "Computing lower bounds by destructive improvement", European Journal of
 * Operational Research 112 (1999) 322-346, with the interval test alone.)
 */
final class Bounds {
  private static final int MOST_TASKS_OF_A_CREW = 400; // the test looks at all pairs

  private final Graph g;
  private final CrewUse use;
  private final Sweep early;
  private final List<int[]> tasksOfCrew = new ArrayList<>();
  private final List<WorkCalendar> hullOfCrew = new ArrayList<>();

  Bounds(Graph graph, CrewUse use, Sweep early) {
    g = graph;
    this.use = use;
    this.early = early;
    for (int crew = 0; crew < use.crews(); crew++) {
      int wanted = crew;
      int[] tasks =
          java.util.stream.IntStream.range(0, g.size).filter(i -> need(i, wanted) > 0).toArray();
      tasksOfCrew.add(tasks.length > MOST_TASKS_OF_A_CREW ? new int[0] : tasks);
      hullOfCrew.add(hull(tasks));
    }
  }

  /** Time in which any of the tasks can be worked on, rounded up to one stretch a day. */
  private WorkCalendar hull(int[] tasks) {
    WorkCalendar all = null;
    for (int i : tasks) {
      WorkCalendar own = g.kind[i] == Graph.ELAPSED ? WorkCalendar.roundTheClock() : g.calendar[i];
      all = all == null ? own : all.hull(own);
    }
    return all;
  }

  private int need(int i, int crew) {
    for (int c = 0; c < use.crewOf[i].length; c++) {
      if (use.crewOf[i][c] == crew) {
        return use.needed[i][c];
      }
    }
    return 0;
  }

  /**
   * The earliest end from the early end on that the test does not refute; the known end at the
   * most.
   */
  long lowestEnd(long known) {
    long low = early.end;
    long high = known;
    while (low < high) {
      long middle = low + (high - low) / 2;
      if (possible(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private boolean possible(long end) {
    long[] late = early.backward(g.minutes, end, false);
    for (int crew = 0; crew < tasksOfCrew.size(); crew++) {
      if (!possible(crew, late)) {
        return false;
      }
    }
    return true;
  }

  private boolean possible(int crew, long[] late) {
    int[] tasks = tasksOfCrew.get(crew);
    if (tasks.length == 0) {
      return true;
    }
    long[] from = new long[tasks.length];
    long[] until = new long[tasks.length];
    Integer[] byUntil = new Integer[tasks.length];
    var starts = new TreeSet<Long>();
    for (int k = 0; k < tasks.length; k++) {
      int i = tasks[k];
      from[k] = use.heldFrom(i, early);
      until[k] = g.finishAt(i, late[i], g.minutes[i]);
      byUntil[k] = k;
      starts.add(from[k]);
    }
    java.util.Arrays.sort(byUntil, (x, y) -> Long.compare(until[x], until[y]));
    WorkCalendar hull = hullOfCrew.get(crew);
    int available = use.available(crew);
    for (long first : starts) {
      long before = hull.worked(first);
      long work = 0;
      for (int k : byUntil) {
        if (from[k] >= first) {
          work += g.minutes[tasks[k]] * need(tasks[k], crew);
          if (work > available * (hull.worked(until[k]) - before)) {
            return false;
          }
        }
      }
    }
    return true;
  }
}

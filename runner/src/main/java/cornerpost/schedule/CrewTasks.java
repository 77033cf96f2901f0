package cornerpost.schedule;

import java.util.Arrays;

/** The tasks of one crew, with room for what the rules of working time add up. */
final class CrewTasks {
  final int[] all;
  final long[] energy; // minutes times number needed
  final int available;
  final int[] one; // those of which no two can run at once
  final WorkCalendar union;
  final long[] from;
  final long[] until;
  final long[] work;
  final long[] found;
  final long[] sums;
  final long[] ends;
  final long[] key;
  final int[] order;

  CrewTasks(Graph g, CrewUse use, int crew, int[] tasks) {
    all = tasks;
    available = use.available(crew);
    energy = new long[tasks.length];
    WorkCalendar hull = null;
    for (int k = 0; k < tasks.length; k++) {
      int i = tasks[k];
      energy[k] = g.minutes[i] * use.need(i, crew);
      WorkCalendar own = g.kind[i] == Graph.ELAPSED ? WorkCalendar.roundTheClock() : g.calendar[i];
      hull = hull == null ? own : hull.hull(own);
    }
    union = hull;
    one = Arrays.stream(tasks).filter(i -> 2 * use.need(i, crew) > available).toArray();
    int m = tasks.length;
    from = new long[m];
    until = new long[m];
    work = new long[m];
    found = new long[m];
    sums = new long[m];
    ends = new long[m];
    key = new long[m];
    order = new int[m];
  }

  /** Puts the positions of the first so many in order, the largest key first; ties by position. */
  int[] sort(int m) {
    for (int k = 0; k < m; k++) {
      long own = key[k];
      int p = k;
      while (p > 0 && key[order[p - 1]] < own) {
        order[p] = order[p - 1];
        p--;
      }
      order[p] = k;
    }
    return order;
  }
}

package cornerpost.schedule;

/**
 * Narrows {@link TimeWindows} by the working time of a crew: no two moments may leave it too
 * little, a task comes after the working time of all that must go before it, and edge finding tells
 * that a task comes before or after a set of others. Sources: see there.
 */
final class CrewTime {
  private final TimeWindows windows;
  private final Graph g;
  private final long[] minutes;
  private final long[] foundBack; // of a crew's tasks, with time reversed

  CrewTime(TimeWindows windows) {
    this.windows = windows;
    g = windows.g;
    minutes = g.minutes;
    foundBack = new long[windows.groups().stream().mapToInt(k -> k.one.length).max().orElse(0)];
  }

  /** Whether the crew has working time enough between any two moments. */
  boolean energy(CrewTasks group) {
    if (group.one.length == group.all.length) {
      return true; // edge finding says it too
    }
    int m = group.all.length;
    measure(group, group.all);
    System.arraycopy(group.from, 0, group.key, 0, m);
    int[] latestFirst = group.sort(m);
    for (int last = 0; last < m; last++) {
      long sum = 0;
      long limit = group.until[last];
      for (int k = 0; k < m; k++) {
        int q = latestFirst[k];
        if (group.until[q] <= limit) {
          sum += group.energy[q];
          if (sum > group.available * (limit - group.from[q])) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private void measure(CrewTasks group, int[] tasks) {
    for (int k = 0; k < tasks.length; k++) {
      group.from[k] = group.union.worked(windows.earlyStart[tasks[k]]);
      group.until[k] = group.union.worked(windows.lateFinish[tasks[k]]);
    }
  }

  /** Tasks of which no two can run at once: what must go before or after others. */
  boolean sequence(CrewTasks group) {
    int[] tasks = group.one;
    int m = tasks.length;
    if (m < 2) {
      return true;
    }
    measure(group, tasks);
    for (int k = 0; k < m; k++) {
      group.work[k] = minutes[tasks[k]];
      group.found[k] = Long.MIN_VALUE;
      foundBack[k] = Long.MIN_VALUE;
    }
    if (!edges(group, group.found)) {
      return false;
    }
    known(group, false);
    for (int k = 0; k < m; k++) {
      long from = group.from[k];
      group.from[k] = -group.until[k];
      group.until[k] = -from;
    }
    if (!edges(group, foundBack)) {
      return false;
    }
    known(group, true);
    for (int k = 0; k < m; k++) {
      int i = tasks[k];
      if (group.found[k] > -group.until[k]
          && !windows.raise(i, g.placeStartingFrom(i, group.union.endOf(group.found[k])))) {
        return false;
      }
      if (foundBack[k] > group.from[k]
          && !windows.lower(
              i, g.placeFinishingBy(i, group.union.startOf(-foundBack[k]), minutes[i]))) {
        return false;
      }
    }
    return true;
  }

  /** A task comes after the working time of all that are known to go before it. */
  private void known(CrewTasks group, boolean back) {
    int m = group.one.length;
    long[] found = back ? foundBack : group.found;
    for (int k = 0; k < m; k++) {
      int j = group.one[k];
      long at = Long.MIN_VALUE;
      for (int s = m - 1; s >= 0; s--) {
        int q = group.order[s];
        int i = group.one[q];
        if (q != k && (back ? windows.before(j, i) : windows.before(i, j))) {
          at = Math.max(at, group.from[q]) + group.work[q];
        }
      }
      found[k] = Math.max(found[k], at);
    }
  }

  /** Edge finding; false if a set of tasks needs more time than there is. */
  private boolean edges(CrewTasks group, long[] found) {
    int m = group.one.length;
    long[] from = group.from;
    long[] until = group.until;
    System.arraycopy(from, 0, group.key, 0, m);
    int[] latestFirst = group.sort(m);
    long[] sums = group.sums;
    long[] ends = group.ends;
    for (int last = 0; last < m; last++) {
      long limit = until[last];
      long sum = 0;
      long end = Long.MIN_VALUE;
      for (int s = 0; s < m; s++) {
        int q = latestFirst[s];
        if (until[q] <= limit) {
          sum += group.work[q];
          end = Math.max(end, from[q] + sum);
          if (end > limit) {
            return false;
          }
        }
        sums[s] = sum;
        ends[s] = end;
      }
      long longest = Long.MIN_VALUE;
      long endOfLongest = Long.MIN_VALUE;
      for (int s = m - 1; s >= 0; s--) {
        int q = latestFirst[s];
        if (until[q] <= limit) {
          if (from[q] + sums[s] > longest) {
            longest = from[q] + sums[s];
            endOfLongest = ends[s];
          }
        } else {
          if (sums[s] > 0 && from[q] + sums[s] + group.work[q] > limit) {
            found[q] = Math.max(found[q], ends[s]);
          }
          if (longest > Long.MIN_VALUE && longest + group.work[q] > limit) {
            found[q] = Math.max(found[q], endOfLongest);
          }
        }
      }
    }
    return true;
  }
}

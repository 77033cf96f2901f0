package cornerpost.schedule;

import java.util.List;

/**
 * Narrows windows by the working time of a crew, with the causes: no two moments may leave the crew
 * too little of it, a task comes after all that are known to go before it, and edge finding tells
 * from the working time between two moments that a task comes after a set of others.
 *
 * <p>Each rule is applied forward and, with time reversed, backward: the numbers of the crew's time
 * are then negative and count back. Sources: see {@link TimeWindows}.
 */
final class CrewRules {
  private final Trail trail;
  private final Deductions deductions;
  private final Reasons reasons;
  private final Graph g;
  private final long[] minutes;
  private final List<CrewTasks> groups;
  private final CrewSets sets;

  // of the crew that is looked at, the latest first
  private final int[] task;
  private final long[] edgeLimit; // what was found rests on tasks that finish by this
  private final int[] edgeUpTo; // and stand up to here

  CrewRules(Trail trail, Deductions deductions, Reasons reasons, List<CrewTasks> groups) {
    this.trail = trail;
    this.deductions = deductions;
    this.reasons = reasons;
    this.groups = groups;
    g = trail.g;
    minutes = g.minutes;
    sets = trail.sets;
    int most = groups.stream().mapToInt(k -> k.one.length).max().orElse(0);
    task = new int[most];
    edgeLimit = new long[most];
    edgeUpTo = new int[most];
  }

  /** Whether the crew has working time enough between any two moments. */
  boolean energy(int index) {
    CrewTasks group = groups.get(index);
    int m = group.all.length;
    if (group.one.length == m) {
      return true; // edge finding says it too
    }
    for (int k = 0; k < m; k++) {
      group.from[k] = group.union.worked(trail.earlyStart[group.all[k]]);
      group.until[k] = group.union.worked(trail.lateFinish[group.all[k]]);
      group.key[k] = group.from[k];
    }
    int[] order = group.sort(m);
    for (int last = 0; last < m; last++) {
      long sum = 0;
      long limit = group.until[last];
      for (int s = 0; s < m; s++) {
        int q = order[s];
        if (group.until[q] <= limit) {
          sum += group.energy[q];
          if (sum > group.available * (limit - group.from[q])) {
            askOfEnergy(group, order, s, limit, sum);
            return false;
          }
        }
      }
    }
    return true;
  }

  private void askOfEnergy(CrewTasks group, int[] order, int upTo, long limit, long sum) {
    long earliest = limit - (sum - 1) / group.available;
    for (int s = 0; s <= upTo; s++) {
      if (group.until[order[s]] <= limit) {
        int i = group.all[order[s]];
        reasons.needWithin(group, false, i, earliest, limit, trail.events);
      }
    }
  }

  /** What the crew's tasks that are known to go before or after others leave them. */
  boolean sequence(int index) {
    return known(index, false) && known(index, true);
  }

  /** Edge finding; false if a set of tasks needs more time than there is. */
  boolean edges(int index) {
    return edges(index, false) && edges(index, true);
  }

  /** Puts down the tasks of which no two can run at once, the latest first. */
  private void arrange(CrewTasks group, boolean back) {
    int m = group.one.length;
    for (int k = 0; k < m; k++) {
      int i = group.one[k];
      group.key[k] = back ? -lateFinish(group, i) : earlyStart(group, i);
    }
    int[] order = group.sort(m);
    for (int s = 0; s < m; s++) {
      int i = group.one[order[s]];
      group.from[s] = group.key[order[s]];
      group.until[s] = back ? -earlyStart(group, i) : lateFinish(group, i);
      group.work[s] = minutes[i];
      task[s] = i;
    }
  }

  private long earlyStart(CrewTasks group, int i) {
    return group.union.worked(trail.earlyStart[i]);
  }

  private long lateFinish(CrewTasks group, int i) {
    return group.union.worked(trail.lateFinish[i]);
  }

  private boolean narrow(CrewTasks group, boolean back, int j, long number, byte why, int set) {
    int known = trail.events;
    boolean possible =
        back
            ? deductions.lower(
                j, g.placeFinishingBy(j, group.union.startOf(-number), minutes[j]), why, set)
            : deductions.raise(j, g.placeStartingFrom(j, group.union.endOf(number)), why, set);
    if (trail.events == known) sets.backTo(set); // nobody will ask for it
    return possible;
  }

  // ---- what is known to go before -------------------------------------------------------------

  /** A task comes after the working time of all that are known to go before it. */
  private boolean known(int index, boolean back) {
    CrewTasks group = groups.get(index);
    arrange(group, back);
    long[] rows = back ? trail.after : trail.before;
    int m = group.one.length;
    for (int k = 0; k < m; k++) {
      int row = task[k] * trail.words;
      long sum = 0;
      long best = Long.MIN_VALUE;
      int until = -1;
      for (int s = 0; s < m; s++) {
        int i = task[s];
        if ((rows[row + (i >> 6)] >>> i & 1) != 0) {
          sum += group.work[s];
          if (group.from[s] + sum > best) {
            best = group.from[s] + sum;
            until = s;
          }
        }
      }
      if (best > group.from[k]) {
        int set = knownSet(index, back, rows, row, until);
        if (!narrow(group, back, task[k], best, Trail.KNOWN, set)) return false;
      }
    }
    return true;
  }

  private int knownSet(int index, boolean back, long[] rows, int row, int until) {
    int set = sets.begin(index, back, 0);
    int members = 0;
    for (int s = 0; s <= until; s++) {
      int i = task[s];
      if ((rows[row + (i >> 6)] >>> i & 1) != 0) {
        sets.add(i);
        members++;
      }
    }
    sets.close(set, members, members);
    return set;
  }

  // ---- edge finding ---------------------------------------------------------------------------

  private boolean edges(int index, boolean back) {
    CrewTasks group = groups.get(index);
    arrange(group, back);
    if (!findEdges(group, back)) return false;
    for (int s = 0; s < group.one.length; s++) {
      if (group.found[s] > group.from[s]) {
        int set = edgeSet(index, group, back, s);
        if (!narrow(group, back, task[s], group.found[s], Trail.EDGE, set)) return false;
      }
    }
    return true;
  }

  private boolean findEdges(CrewTasks group, boolean back) {
    int m = group.one.length;
    long[] from = group.from;
    long[] until = group.until;
    long[] work = group.work;
    long[] sums = group.sums;
    long[] ends = group.ends;
    long most = 0;
    for (int s = 0; s < m; s++) {
      most = Math.max(most, work[s]);
      group.found[s] = Long.MIN_VALUE;
    }
    for (int last = 0; last < m; last++) {
      long limit = until[last];
      int begin = 0;
      while (from[begin] >= limit) {
        begin++;
      }
      long sum = 0;
      long end = Long.MIN_VALUE;
      for (int s = begin; s < m; s++) {
        if (until[s] <= limit) {
          sum += work[s];
          end = Math.max(end, from[s] + sum);
        }
        sums[s] = sum;
        ends[s] = end;
      }
      if (end > limit) {
        askOfOverload(group, back, limit);
        return false;
      }
      if (end + most <= limit) continue; // no task is too long to lie between
      long longest = Long.MIN_VALUE;
      int at = -1;
      for (int s = m - 1; s >= begin; s--) {
        if (until[s] <= limit) {
          if (from[s] + sums[s] > longest) {
            longest = from[s] + sums[s];
            at = s;
          }
        } else {
          if (sums[s] > 0 && from[s] + sums[s] + work[s] > limit) {
            edge(group, s, ends[s], limit, s);
          }
          if (at >= 0 && longest + work[s] > limit) {
            edge(group, s, ends[at], limit, at);
          }
        }
      }
    }
    return true;
  }

  private void edge(CrewTasks group, int s, long end, long limit, int upTo) {
    if (end > group.found[s]) {
      group.found[s] = end;
      edgeLimit[s] = limit;
      edgeUpTo[s] = upTo;
    }
  }

  private void askOfOverload(CrewTasks group, boolean back, long limit) {
    long best = Long.MIN_VALUE;
    long sum = 0;
    long needs = 0;
    int until = 0;
    for (int s = 0; s < group.one.length; s++) {
      if (group.until[s] <= limit) {
        sum += group.work[s];
        if (group.from[s] + sum > best) {
          best = group.from[s] + sum;
          until = s;
          needs = sum;
        }
      }
    }
    long earliest = limit - needs + 1;
    for (int s = 0; s <= until; s++) {
      if (group.until[s] <= limit) {
        reasons.needWithin(group, back, task[s], earliest, limit, trail.events);
      }
    }
  }

  private int edgeSet(int index, CrewTasks group, boolean back, int k) {
    long limit = edgeLimit[k];
    int set = sets.begin(index, back, limit);
    int members = 0;
    int making = 0;
    long sum = 0;
    long best = Long.MIN_VALUE;
    for (int s = 0; s <= edgeUpTo[k]; s++) {
      if (group.until[s] <= limit) {
        sets.add(task[s]);
        members++;
        sum += group.work[s];
        if (group.from[s] + sum > best) {
          best = group.from[s] + sum;
          making = members;
        }
      }
    }
    sets.close(set, members, making);
    return set;
  }
}

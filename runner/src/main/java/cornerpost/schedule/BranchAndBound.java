package cornerpost.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * Proves how early a scaled project can end, by going through all schedules that could be better
 * than the best known.
 *
 * <p>Time moves forward. At each decision time the ready task with the longest tail either starts,
 * or is put off until some task it shares a crew with can have ended. Left out are: a start that
 * could be one step earlier; a state in which the same tasks have been started no later in a state
 * gone through before (the cut-set rule); and any state from which the longest tails, or the work
 * left for a crew, do not end before the best known. A task that meets no competitor before it
 * could end starts at once.
 *
 * <p>Only for lags that are not negative. Method after E. Demeulemeester and W. Herroelen, "A
 * branch-and-bound procedure for the multiple resource-constrained project scheduling problem",
 * Management Science 38 (1992) 1803-1818, with the start-or-put-off branching of C. Le Pape and
 * others in place of their delaying alternatives.
 */
final class BranchAndBound {
  private static final int MOST_STATES = 400_000;

  private final ScaledProject p;
  private final long mostNodes;
  private final BooleanSupplier stop;
  private final int[] tail; // from the start of a task to the end of the project, at least
  private final int[] byTail;
  private final int[] reach; // how long after its start a task still matters to others
  private final int[][] rival; // tasks that share a crew
  private final int[] crews; // those that can be short
  private final long[] free;
  private final int[] start;
  private final int[] hold;
  private final int[] unstartedBefore;
  private final long[] started; // as a bit set
  private final Map<Key, List<int[]>> states = new HashMap<>();
  private int statesKept;
  private int[] best;
  private int end;
  private long nodes;
  private boolean cut;

  /** A set of started tasks. */
  private record Key(long a, long b) {}

  /**
   * A search for an end before the given one.
   *
   * @param end the best known; only earlier ends are looked for
   * @param mostNodes decisions after which the search gives up
   */
  BranchAndBound(ScaledProject project, int end, long mostNodes, BooleanSupplier stop) {
    p = project;
    this.end = end;
    this.mostNodes = mostNodes;
    this.stop = stop;
    int n = p.size;
    tail = new int[n];
    reach = new int[n];
    for (int j = n - 1; j >= 0; j--) {
      tail[j] = p.duration[j];
      reach[j] = p.duration[j];
      for (int a = 0; a < p.after[j].length; a++) {
        int s = p.after[j][a];
        int lag = p.lagAfter[j][a] - p.duration[s] + p.duration[j];
        tail[j] = Math.max(tail[j], lag + tail[s]);
        reach[j] = Math.max(reach[j], lag);
      }
    }
    byTail =
        java.util.stream.IntStream.range(0, n)
            .boxed()
            .sorted((x, y) -> tail[y] - tail[x])
            .mapToInt(Integer::intValue)
            .toArray();
    crews =
        java.util.stream.IntStream.range(0, p.crewShift.length)
            .filter(c -> p.crewShift[c] >= 0)
            .toArray();
    rival = new int[n][];
    for (int j = 0; j < n; j++) {
      int[] found = new int[n];
      int m = 0;
      for (int k = 0; k < n; k++) {
        if (k != j && sharesCrew(j, k)) {
          found[m++] = k;
        }
      }
      rival[j] = Arrays.copyOf(found, m);
    }
    free = new long[p.horizon + 2];
    Arrays.fill(free, p.available);
    start = new int[n];
    Arrays.fill(start, -1);
    hold = new int[n];
    unstartedBefore = new int[n];
    for (int j = 0; j < n; j++) {
      unstartedBefore[j] = p.before[j].length;
    }
    started = new long[2];
  }

  /** Whether the method is for this project: lags not negative, and not too many tasks. */
  static boolean suits(ScaledProject p) {
    if (p.size > 128) {
      return false;
    }
    for (int[] lags : p.lagBefore) {
      for (int lag : lags) {
        if (lag < 0) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean sharesCrew(int j, int k) {
    for (int c : crews) {
      if (p.need[c][j] > 0 && p.need[c][k] > 0) {
        return true;
      }
    }
    return false;
  }

  /** Searches; true if it went through everything, so that {@link #end} cannot be bettered. */
  boolean run() {
    node(0, 0);
    return !cut;
  }

  /** Decisions taken. */
  long nodes() {
    return nodes;
  }

  /** The end of the best schedule known now. */
  int end() {
    return end;
  }

  /** Starts of a schedule better than the one known before; null if none was found. */
  int[] best() {
    return best;
  }

  private boolean fits(int j, int t) {
    return (free[t] - p.demand[j] & p.guards) == p.guards;
  }

  private void node(int count, int time) {
    if (cut) {
      return;
    }
    int n = p.size;
    int t = time;
    int[] earliest = new int[n];
    int[] bound = new int[n]; // earliest start by links alone
    var held = new ArrayList<int[]>();
    boolean fresh = true;
    while (true) {
      if (++nodes > mostNodes || (nodes & 1023) == 0 && stop.getAsBoolean()) {
        cut = true;
        break;
      }
      if (count == n) {
        int last = 0;
        for (int j = 0; j < n; j++) {
          last = Math.max(last, start[j] + p.duration[j]);
        }
        if (last < end) {
          end = last;
          best = start.clone();
        }
        break;
      }
      int next = earliestStarts(t, earliest, bound);
      if (next < 0) {
        break;
      }
      if (next > t || fresh) {
        t = next;
        if (energyTooLong(t, earliest) || fresh && dominated(t)) {
          break;
        }
        fresh = false; // later on this node would only find itself among the states gone through
      }
      int j = choose(t, earliest);
      if (p.demand[j] == 0) {
        begin(j, t);
        node(count + 1, t);
        undo(j, t);
        break;
      }
      if (!fits(j, t)) {
        held.add(new int[] {j, hold[j]});
        int later = t + 1;
        while (!fits(j, later)) {
          later++;
        }
        hold[j] = later;
        continue;
      }
      boolean couldBeSooner = t > 0 && bound[j] < t && fits(j, t - 1);
      boolean alone = unrivalled(j, t, earliest);
      if (!couldBeSooner) {
        begin(j, t);
        node(count + 1, t);
        undo(j, t);
      }
      if (alone && !couldBeSooner) {
        break;
      }
      int later = Integer.MAX_VALUE;
      for (int k : rival[j]) {
        int ends = (start[k] >= 0 ? start[k] : earliest[k]) + p.duration[k];
        if (ends > t) {
          later = Math.min(later, ends);
        }
      }
      if (later == Integer.MAX_VALUE) {
        break;
      }
      held.add(new int[] {j, hold[j]});
      hold[j] = later;
    }
    for (int k = held.size() - 1; k >= 0; k--) {
      hold[held.get(k)[0]] = held.get(k)[1];
    }
  }

  /** Works out the earliest starts; gives the first of them, or -1 if some tail is too long. */
  private int earliestStarts(int t, int[] earliest, int[] bound) {
    int first = Integer.MAX_VALUE;
    for (int j = 0; j < p.size; j++) {
      if (start[j] >= 0) {
        continue;
      }
      int links = p.release[j];
      for (int a = 0; a < p.before[j].length; a++) {
        int i = p.before[j][a];
        links = Math.max(links, (start[i] >= 0 ? start[i] : earliest[i]) + p.lagBefore[j][a]);
      }
      bound[j] = links;
      earliest[j] = Math.max(Math.max(links, t), hold[j]);
      if (earliest[j] + tail[j] >= end) {
        return -1;
      }
      first = Math.min(first, earliest[j]);
    }
    return first;
  }

  private int choose(int t, int[] earliest) {
    for (int j : byTail) {
      if (start[j] < 0 && earliest[j] == t && unstartedBefore[j] == 0) {
        return j;
      }
    }
    throw new IllegalStateException("no task is ready at " + t);
  }

  private void begin(int j, int t) {
    start[j] = t;
    started[j >> 6] |= 1L << j;
    for (int u = t; u < t + p.duration[j]; u++) {
      free[u] -= p.demand[j];
    }
    for (int s : p.after[j]) {
      unstartedBefore[s]--;
    }
  }

  private void undo(int j, int t) {
    start[j] = -1;
    started[j >> 6] &= ~(1L << j);
    for (int u = t; u < t + p.duration[j]; u++) {
      free[u] += p.demand[j];
    }
    for (int s : p.after[j]) {
      unstartedBefore[s]++;
    }
  }

  /** Whether everything that could run beside the task before it ends leaves room for it. */
  private boolean unrivalled(int j, int t, int[] earliest) {
    int until = t + p.duration[j];
    for (int c : crews) {
      int need = p.need[c][j];
      if (need == 0) {
        continue;
      }
      int room =
          (int)
              (free[t] >>> p.crewShift[c]
                  & (1L << 32 - Integer.numberOfLeadingZeros(p.crewAvailable[c])) - 1);
      int wanted = need;
      for (int k : rival[j]) {
        if (start[k] < 0 && earliest[k] < until) {
          wanted += p.need[c][k];
        }
      }
      if (wanted > room) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether some crew has more work left, before a tail that must follow, than time until the best
   * known end.
   */
  private boolean energyTooLong(int t, int[] earliest) {
    for (int c : crews) {
      long work = 0;
      int least = Integer.MAX_VALUE;
      for (int j :
          byTail) { // the longest tails first: each set is all with at least this tail after their
        // end
        int need = p.need[c][j];
        int ends = start[j] + p.duration[j];
        if (need == 0 || start[j] >= 0 && ends <= t) {
          continue;
        }
        work += (long) need * (start[j] < 0 ? p.duration[j] : ends - t);
        least = Math.min(least, tail[j] - p.duration[j]);
        long steps = (work + p.crewAvailable[c] - 1) / p.crewAvailable[c];
        if (t + steps + least >= end) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * The cut-set rule: keeps this state, unless one at least as good with the same tasks started was
   * gone through.
   */
  private boolean dominated(int t) {
    int m = 0;
    int[] alive = new int[2 * p.size + 1];
    for (int j = 0; j < p.size; j++) {
      if (start[j] >= 0 && start[j] + reach[j] > t) {
        alive[++m] = j;
        alive[++m] = start[j];
      }
    }
    alive[0] = t;
    var key = new Key(started[0], started[1]);
    List<int[]> before = states.get(key);
    if (before != null) {
      for (int[] s : before) {
        if (s[0] <= t && asGood(s, t)) {
          return true;
        }
      }
    }
    if (statesKept < MOST_STATES) {
      states.computeIfAbsent(key, k -> new ArrayList<>(2)).add(Arrays.copyOf(alive, m + 1));
      statesKept++;
    }
    return false;
  }

  private boolean asGood(int[] s, int t) {
    for (int k = 1; k < s.length; k += 2) {
      int j = s[k];
      if (s[k + 1] > Math.max(start[j], t - reach[j])) {
        return false;
      }
    }
    return true;
  }
}

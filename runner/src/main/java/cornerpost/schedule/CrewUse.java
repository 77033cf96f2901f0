package cornerpost.schedule;

import java.util.Arrays;
import java.util.HashMap;

/** How many of each crew are busy at any moment, while tasks are put in one by one. */
final class CrewUse {
  private final Graph graph;
  private final int[] available;
  final int[][] crewOf; // crews a task needs, and how many of each
  final int[][] needed;
  private final long[][] times; // per crew: moments at which its use changes
  private final int[][] used; // from that moment on
  private final int[] changes;

  CrewUse(Network network) {
    graph = network.graph();
    var index = new HashMap<String, Integer>();
    int crews = network.crews().size();
    available = new int[crews];
    for (Crew c : network.crews()) {
      available[index.size()] = c.available();
      index.put(c.name(), index.size());
    }
    crewOf = new int[graph.size][];
    needed = new int[graph.size][];
    for (int i = 0; i < graph.size; i++) {
      var demands = network.activities().get(i).demands();
      boolean holds = graph.state[i] != Graph.DONE && graph.minutes[i] > 0;
      crewOf[i] = holds ? demands.keySet().stream().mapToInt(index::get).toArray() : new int[0];
      needed[i] =
          holds ? demands.values().stream().mapToInt(Integer::intValue).toArray() : new int[0];
    }
    times = new long[crews][8];
    used = new int[crews][8];
    changes = new int[crews];
  }

  int crews() {
    return available.length;
  }

  int available(int crew) {
    return available[crew];
  }

  void clear() {
    Arrays.fill(changes, 0);
  }

  /** Position of the last change at or before the moment; -1 if it is before all. */
  private int segment(int crew, long moment) {
    int at = Arrays.binarySearch(times[crew], 0, changes[crew], moment);
    return at >= 0 ? at : -at - 2;
  }

  int usedAt(int crew, long moment) {
    int at = segment(crew, moment);
    return at < 0 ? 0 : used[crew][at];
  }

  /** The first moment, and all after it but before the last, at which the crew's use changes. */
  long[] changes(int crew, long first, long last) {
    int from = segment(crew, first) + 1;
    int until = Math.max(from, segment(crew, last - 1) + 1);
    long[] moments = new long[until - from + 1];
    moments[0] = first;
    System.arraycopy(times[crew], from, moments, 1, until - from);
    return moments;
  }

  boolean needs(int i, int crew) {
    return need(i, crew) > 0;
  }

  /** How many of the crew the task needs; 0 if it does not need it. */
  int need(int i, int crew) {
    for (int c = 0; c < crewOf[i].length; c++) {
      if (crewOf[i][c] == crew) {
        return needed[i][c];
      }
    }
    return 0;
  }

  /** Cuts the profile at the moment, so that a change can begin there; gives its position. */
  private int cut(int crew, long moment) {
    int at = segment(crew, moment);
    if (at >= 0 && times[crew][at] == moment) {
      return at;
    }
    int n = changes[crew];
    if (n == times[crew].length) {
      times[crew] = Arrays.copyOf(times[crew], 2 * n);
      used[crew] = Arrays.copyOf(used[crew], 2 * n);
    }
    System.arraycopy(times[crew], at + 1, times[crew], at + 2, n - at - 1);
    System.arraycopy(used[crew], at + 1, used[crew], at + 2, n - at - 1);
    times[crew][at + 1] = moment;
    used[crew][at + 1] = at < 0 ? 0 : used[crew][at];
    changes[crew]++;
    return at + 1;
  }

  /** Occupies the crews of a task from one moment to another. */
  void put(int i, long from, long until) {
    for (int c = 0; c < crewOf[i].length; c++) {
      int crew = crewOf[i][c];
      int first = cut(crew, from);
      int last = cut(crew, until);
      for (int k = first; k < last; k++) {
        used[crew][k] += needed[i][c];
      }
    }
  }

  /**
   * The end of the last stretch between two moments in which a crew of the task is short;
   * Long.MIN_VALUE if none is.
   */
  long shortUntil(int i, long from, long until) {
    long latest = Long.MIN_VALUE;
    for (int c = 0; c < crewOf[i].length; c++) {
      int crew = crewOf[i][c];
      int room = available[crew] - needed[i][c];
      int first = Math.max(0, segment(crew, from));
      for (int k = segment(crew, until - 1); k >= first; k--) {
        if (used[crew][k] > room) {
          latest = Math.max(latest, times[crew][k + 1]);
          break;
        }
      }
    }
    return latest;
  }

  /**
   * The beginning of the first stretch between two moments in which a crew of the task is short;
   * NEVER if none is.
   */
  long shortFrom(int i, long from, long until) {
    long earliest = Graph.NEVER;
    for (int c = 0; c < crewOf[i].length; c++) {
      int crew = crewOf[i][c];
      int room = available[crew] - needed[i][c];
      int last = segment(crew, until - 1);
      for (int k = Math.max(0, segment(crew, from)); k <= last; k++) {
        if (used[crew][k] > room) {
          earliest = Math.min(earliest, times[crew][k]);
          break;
        }
      }
    }
    return earliest;
  }

  /** Whether any crew is asked for more than it has. */
  boolean overSubscribed() {
    for (int crew = 0; crew < available.length; crew++) {
      for (int k = 0; k < changes[crew]; k++) {
        if (used[crew][k] > available[crew]) {
          return true;
        }
      }
    }
    return false;
  }

  /** When the task holds its crews: from when its work begins, or goes on again, to its finish. */
  long heldFrom(int i, Sweep plan) {
    return graph.startAt(i, plan.place[i]);
  }

  /** Puts all tasks in as they are planned. */
  void putAll(Sweep plan) {
    clear();
    for (int i = 0; i < graph.size; i++) {
      if (crewOf[i].length > 0) {
        put(i, heldFrom(i, plan), plan.finish[i]);
      }
    }
  }
}

package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * Which two tasks to put in order next, so that no crew is asked for too much.
 *
 * <p>Of tasks that overlap and cannot run at once the pair is taken that must be done in the
 * shortest time from the earliest start of either to the latest finish, divided by how often either
 * had no place left so far (found by trial), and first the order that leaves more room. Where every
 * two could run at once but not all, the conflict is a smallest set that is too many. Method: C.-C.
 * Cheng and S. F. Smith, "Applying constraint satisfaction techniques to job shop scheduling",
 * Annals of Operations Research 70 (1997) 327-357 (which order first); F. Boussemart, F. Hemery, C.
 * Lecoutre and L. Sais, "Boosting systematic search by weighting constraints", ECAI 2004, 146-150
 * (what failed often comes first).
 */
final class OrderChoices {
  private final Graph g;
  private final CrewUse use;
  private final TimeWindows windows;

  OrderChoices(Graph graph, CrewUse use, TimeWindows windows) {
    g = graph;
    this.use = use;
    this.windows = windows;
  }

  /** The orders of which any schedule keeps one; none if the early dates are a schedule. */
  int[][] choices() {
    double least = Double.MAX_VALUE;
    int first = -1;
    int second = -1;
    for (int i = 0; i < g.size; i++) {
      for (int j : windows.rivals(i)) {
        if (j > i
            && windows.earlyStart[i] < windows.earlyFinish[j]
            && windows.earlyStart[j] < windows.earlyFinish[i]) {
          long one = windows.lateStart[j] - windows.earlyFinish[i];
          long two = windows.lateStart[i] - windows.earlyFinish[j];
          double room =
              (Math.max(windows.lateFinish[i], windows.lateFinish[j])
                      - Math.min(windows.earlyStart[i], windows.earlyStart[j]))
                  / (windows.blame[i] + windows.blame[j]);
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
    int[] set = tooMany(use, windows.earlyStart, windows.earlyFinish);
    List<int[]> settling = new ArrayList<>();
    for (int i : set) {
      for (int j : set) {
        if (i != j && windows.earlyFinish[i] <= windows.lateStart[j]) {
          settling.add(new int[] {i, j});
        }
      }
    }
    settling.sort((x, y) -> Long.compare(room(y), room(x)));
    return set.length > 0 && settling.isEmpty()
        ? new int[][] {{set[0], set[1]}}
        : settling.toArray(int[][]::new);
  }

  private long room(int[] order) {
    return windows.lateStart[order[1]] - windows.earlyFinish[order[0]];
  }

  /**
   * A smallest set of tasks that overlap at these moments and are too many for a crew; empty if
   * there is none.
   */
  static int[] tooMany(CrewUse use, long[] earlyStart, long[] earlyFinish) {
    for (int crew = 0; crew < use.crews(); crew++) {
      int wanted = crew;
      int[] tasks =
          java.util.stream.IntStream.range(0, earlyStart.length)
              .filter(i -> use.needs(i, wanted))
              .boxed()
              .sorted((x, y) -> Long.compare(earlyStart[x], earlyStart[y]))
              .mapToInt(Integer::intValue)
              .toArray();
      for (int k = 0; k < tasks.length; k++) {
        long moment = earlyStart[tasks[k]];
        List<Integer> running = new ArrayList<>();
        int needed = 0;
        for (int q = 0; q <= k; q++) {
          if (earlyFinish[tasks[q]] > moment) {
            running.add(tasks[q]);
            needed += use.need(tasks[q], crew);
          }
        }
        if (needed > use.available(crew)) {
          return smallest(use, crew, running, needed);
        }
      }
    }
    return new int[0];
  }

  private static int[] smallest(CrewUse use, int crew, List<Integer> running, int needed) {
    var set = new ArrayList<>(running);
    set.sort((x, y) -> use.need(x, crew) - use.need(y, crew)); // a small set has few orders
    int sum = needed;
    for (int i : List.copyOf(set)) {
      if (sum - use.need(i, crew) > use.available(crew)) {
        set.remove(Integer.valueOf(i));
        sum -= use.need(i, crew);
      }
    }
    return set.stream().mapToInt(Integer::intValue).toArray();
  }
}

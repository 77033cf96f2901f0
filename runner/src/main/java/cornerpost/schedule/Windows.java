package cornerpost.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Betters a schedule by setting part of it free: the tasks of a stretch of time may be put in anew,
 * all others keep the order in which their crews go from one to the next, and the exact search
 * looks for any earlier end.
 *
 * <p>Method: D. Godard, P. Laborie and W. Nuijten, "Randomized large neighborhood search for
 * cumulative scheduling", ICAPS 2005, 81-89, with {@link BranchAndBound} as its search.
 */
final class Windows {
  private static final int NODES = 1_500; // decisions a window; most are settled long before

  private final ScaledProject p;
  private final SplittableRandom random;
  private final BooleanSupplier stop;
  private int freed =
      18; // tasks in a window; grows while windows are settled, shrinks while they are not
  private long nodes;

  Windows(ScaledProject project, long seed, BooleanSupplier stop) {
    p = project;
    this.stop = stop;
    random = new SplittableRandom(seed);
  }

  /** Decisions taken so far. */
  long nodes() {
    return nodes;
  }

  /** Starts of a schedule that ends before the given end; null if this window does not give one. */
  int[] better(int[] start, int end) {
    Integer[] byStart = new Integer[p.size];
    Arrays.setAll(byStart, k -> k);
    Arrays.sort(byStart, (x, y) -> start[x] != start[y] ? start[x] - start[y] : x - y);
    boolean[] free = new boolean[p.size];
    int first = random.nextInt(p.size) - freed / 2;
    for (int k = Math.max(0, first); k < Math.min(p.size, first + freed); k++) {
      free[byStart[k]] = true;
    }
    int[] order = Arrays.stream(byStart).mapToInt(Integer::intValue).toArray();
    var exact =
        new BranchAndBound(
            new ScaledProject(p, order, chains(order, start, free)), end, NODES, stop);
    boolean settled = exact.run();
    nodes += exact.nodes();
    freed = settled ? Math.min(p.size, freed + 1) : Math.max(8, freed - 1);
    if (exact.best() == null) {
      return null;
    }
    int[] found = new int[p.size];
    for (int k = 0; k < p.size; k++) {
      found[order[k]] = exact.best()[k];
    }
    return found;
  }

  /**
   * For each task that is not free the tasks its hands come from, passing over free ones: one chain
   * for each pair of hands.
   */
  private List<List<Integer>> chains(int[] order, int[] start, boolean[] free) {
    List<List<Integer>> from = new ArrayList<>();
    for (int k = 0; k < p.size; k++) {
      from.add(new ArrayList<>());
    }
    for (int c = 0; c < p.crewAvailable.length; c++) {
      if (p.crewShift[c] < 0) {
        continue;
      }
      int[] idleFrom = new int[p.crewAvailable[c]];
      int[] last = new int[p.crewAvailable[c]];
      Arrays.fill(last, -1);
      for (int j : order) {
        int wanted = p.need[c][j];
        for (int pass = 0; pass < 2 && wanted > 0; pass++) {
          for (int hand = 0; hand < last.length && wanted > 0; hand++) {
            boolean known =
                last[hand] < 0 || from.get(j).contains(last[hand]); // keeps the number of links low
            if (idleFrom[hand] <= start[j] && (pass == 1 || known)) {
              if (!free[j]) {
                if (last[hand] >= 0 && !known) {
                  from.get(j).add(last[hand]);
                }
                last[hand] = j;
              }
              idleFrom[hand] = start[j] + p.duration[j];
              wanted--;
            }
          }
        }
      }
    }
    return from;
  }
}

package cornerpost.schedule;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Work under way that goes on at once: nothing it waits for holds it up. Its crews stay with it,
 * and others take what they leave; nobody is called off a task that is half done.
 *
 * <p>Where more is noted as under way than the crews can do at once, those begun first go on.
 */
final class UnderWay {
  private UnderWay() {}

  /**
   * Positions of such tasks in the network.
   *
   * @param early earliest places by the links alone
   */
  static int[] of(Network network, Sweep early) {
    Graph g = network.graph();
    int[] running =
        IntStream.range(0, g.size)
            .filter(i -> g.state[i] == Graph.RUNNING && !waits(g, i))
            .boxed()
            .sorted(Comparator.comparingLong(i -> g.realStart[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    if (running.length == 0) {
      return running;
    }
    var use = new CrewUse(network);
    return Arrays.stream(running).filter(i -> fits(use, early, i)).toArray();
  }

  /** Whether a task that is not done yet may hold up what remains of it. */
  private static boolean waits(Graph g, int i) {
    for (int q = g.inFirst[i]; q < g.inFirst[i + 1]; q++) {
      int l = g.in[q];
      byte before = g.state[g.before[l]];
      if (before == Graph.NOT_STARTED || before == Graph.RUNNING && !g.fromStart[l]) {
        return true;
      }
    }
    return false;
  }

  private static boolean fits(CrewUse use, Sweep early, int i) {
    if (use.crewOf[i].length == 0) {
      return false; // no crew is kept by it: its links alone place it
    }
    long from = use.heldFrom(i, early);
    if (use.shortUntil(i, from, early.finish[i]) != Long.MIN_VALUE) {
      return false;
    }
    use.put(i, from, early.finish[i]);
    return true;
  }
}

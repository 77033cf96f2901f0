package cornerpost.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Work under way that goes on at once: nothing it waits for holds it up. Its crews stay with it,
 * and others take what they leave; nobody is called off a task that is half done.
 *
 * <p>Where more is noted as under way than the crews can do at once, those begun first go on.
 */
final class UnderWay {
  /** Positions in the network. */
  final int[] tasks;

  /** Where each of them goes on, by position in the network; nothing is said of other tasks. */
  final long[] place;

  private UnderWay(int[] tasks, long[] place) {
    this.tasks = tasks;
    this.place = place;
  }

  static UnderWay of(Network network) {
    Graph g = network.graph();
    List<Integer> running =
        IntStream.range(0, g.size)
            .filter(i -> g.state[i] == Graph.RUNNING && !waits(g, i))
            .boxed()
            .sorted(Comparator.comparingLong(i -> g.realStart[i]))
            .toList();
    if (running.isEmpty()) {
      return new UnderWay(new int[0], new long[0]);
    }
    var early = new Sweep(g);
    early.forward(g.minutes);
    var use = new CrewUse(network);
    var goOn = IntStream.builder();
    for (int i : running) {
      long from = use.heldFrom(i, early);
      boolean keepsCrew = use.crewOf[i].length > 0; // else its links alone place it
      if (keepsCrew && use.shortUntil(i, from, early.finish[i]) == Long.MIN_VALUE) {
        use.put(i, from, early.finish[i]);
        goOn.add(i);
      }
    }
    return new UnderWay(goOn.build().toArray(), early.place);
  }

  /** Whether a task that is not done yet may hold up what remains of it. */
  private static boolean waits(Graph g, int i) {
    for (int q = g.inFirst[i]; q < g.inFirst[i + 1]; q++) {
      if (g.movable(g.in[q])) {
        return true;
      }
    }
    return false;
  }
}

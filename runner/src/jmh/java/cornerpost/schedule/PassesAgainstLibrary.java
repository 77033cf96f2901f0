package cornerpost.schedule;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.jgrapht.traverse.TopologicalOrderIterator;

/**
 * Prints how long early dates, late dates, total and free float of a large network take on flat
 * arrays, with and without building them, and through a general graph library's own iterators
 * (JGraphT: a topological iterator, edge sets, maps by vertex).
 *
 * <p>Arguments: numbers of tasks (1000,10000,100000,1000000), up to how many tasks the library runs
 * too (100000), rounds (9; the least is printed). Five links a task, all four relations, lags. The
 * calendar is round the clock, so that both sides add the same numbers and the results, which are
 * compared, can agree; the same passes on weekdays with holidays are timed as well. Times are of
 * the thread's processor time. Where objects lie in memory counts for much, so give the collector
 * of the program itself (-XX:+UseSerialGC) as well as the default one.
 */
public final class PassesAgainstLibrary {
  private PassesAgainstLibrary() {}

  public static void main(String[] args) {
    String[] sizes = (args.length > 0 ? args[0] : "1000,10000,100000,1000000").split(",");
    int most = args.length > 1 ? Integer.parseInt(args[1]) : 100_000;
    int rounds = args.length > 2 ? Integer.parseInt(args[2]) : 9;
    for (int k = 0; k < 100; k++) { // lets the compiler see the code
      new Case(3_000, WorkCalendar.roundTheClock()).measure(2, true);
    }
    for (String size : sizes) {
      int tasks = Integer.parseInt(size);
      new Case(tasks, WorkCalendar.roundTheClock()).measure(rounds, tasks <= most).print("round the clock");
      new Case(tasks, WorkCalendar.weekdays(RandomNetworks.HOLIDAYS)).measure(rounds, false).print("weekdays");
    }
  }

  private static final class Case {
    private final int tasks;
    private final Network network;
    private double passes = Double.MAX_VALUE;
    private double built = Double.MAX_VALUE;
    private double library = Double.MAX_VALUE;

    Case(int tasks, WorkCalendar calendar) {
      this.tasks = tasks;
      var random = new Random(1);
      List<Activity> activities = new ArrayList<>();
      List<Link> links = new ArrayList<>();
      for (int i = 0; i < tasks; i++) {
        activities.add(Activity.working("T" + i, "task", 60 + random.nextInt(2_400)));
        for (int k = 0; k < 5 && i > 0; k++) {
          links.add(
              new Link(
                  "T" + (i - 1 - random.nextInt(Math.min(i, 200))),
                  "T" + i,
                  Relation.values()[random.nextInt(10) < 7 ? 0 : random.nextInt(4)],
                  random.nextInt(4) == 0 ? random.nextInt(900) : 0,
                  LagUnit.WORKING_MINUTES));
        }
      }
      network = Network.of(activities, links, List.of(), Networks.MONDAY.atStartOfDay(), calendar);
    }

    Case measure(int rounds, boolean withLibrary) {
      for (int r = 0; r < rounds; r++) {
        long t0 = now();
        var graph = new Graph(network);
        long t1 = now();
        var floats = Floats.of(graph);
        long t2 = now();
        passes = Math.min(passes, t2 - t1);
        built = Math.min(built, t2 - t0);
        if (withLibrary) {
          var theirs = new Library(network);
          long t3 = now();
          theirs.run();
          library = Math.min(library, now() - t3);
          theirs.compare(floats);
        }
      }
      return this;
    }

    void print(String calendar) {
      int links = network.links().size();
      System.out.println(
          String.format(
              Locale.ROOT,
              "%,9d tasks %,10d links, %-15s | passes and floats %9.3f ms, %5.1f ns a link | with the arrays built %9.3f ms%s",
              tasks,
              links,
              calendar,
              passes / 1e6,
              passes / links,
              built / 1e6,
              library == Double.MAX_VALUE
                  ? ""
                  : String.format(
                      Locale.ROOT,
                      " | library %9.1f ms: %.1f times, %.1f times with the arrays built",
                      library / 1e6,
                      library / passes,
                      library / built)));
    }
  }

  /** The same passes as one would write them on the library's graph. */
  private static final class Library {
    private final org.jgrapht.Graph<Activity, LinkEdge> graph = new DirectedMultigraph<>(LinkEdge.class);
    private final Map<Activity, Long> early = new HashMap<>();
    private final Map<Activity, Long> late = new HashMap<>();
    private final Map<Activity, Long> free = new HashMap<>();
    private final Network network;

    /** An edge that knows its link. */
    static final class LinkEdge extends DefaultEdge {
      private static final long serialVersionUID = 1;
      private transient Link link;
    }

    Library(Network network) {
      this.network = network;
      for (Activity a : network.activities()) {
        graph.addVertex(a);
      }
      for (Link l : network.links()) {
        var edge = new LinkEdge();
        edge.link = l;
        graph.addEdge(network.get(l.before()), network.get(l.after()), edge);
      }
    }

    /** What the start of the task after must be at least behind that of the task before. */
    private long least(LinkEdge e) {
      long lag = e.link.lagMinutes();
      lag += e.link.relation().fromStart() ? 0 : graph.getEdgeSource(e).minutes();
      return lag - (e.link.relation().toFinish() ? graph.getEdgeTarget(e).minutes() : 0);
    }

    void run() {
      long start = Minutes.of(network.start());
      long end = start;
      List<Activity> order = new ArrayList<>();
      var iterator = new TopologicalOrderIterator<>(graph);
      while (iterator.hasNext()) {
        Activity a = iterator.next();
        order.add(a);
        long at = start;
        for (LinkEdge e : graph.incomingEdgesOf(a)) {
          at = Math.max(at, early.get(graph.getEdgeSource(e)) + least(e));
        }
        early.put(a, at);
        end = Math.max(end, at + a.minutes());
      }
      for (int k = order.size() - 1; k >= 0; k--) {
        Activity a = order.get(k);
        long at = end - a.minutes();
        long slack = at - early.get(a);
        for (LinkEdge e : graph.outgoingEdgesOf(a)) {
          Activity after = graph.getEdgeTarget(e);
          at = Math.min(at, late.get(after) - least(e));
          slack = Math.min(slack, early.get(after) - least(e) - early.get(a));
        }
        late.put(a, at);
        free.put(a, slack);
      }
    }

    void compare(Floats floats) {
      for (int i = 0; i < network.activities().size(); i++) {
        Activity a = network.activities().get(i);
        if (early.get(a) != floats.early().start[i]
            || late.get(a) - early.get(a) != floats.total()[i]
            || Math.min(free.get(a), late.get(a) - early.get(a)) != floats.free()[i]) {
          throw new AssertionError("the two disagree on " + a.id());
        }
      }
    }
  }

  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}

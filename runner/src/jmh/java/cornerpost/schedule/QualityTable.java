package cornerpost.schedule;

import java.lang.management.ManagementFactory;
import java.util.Locale;

/**
 * Prints how near the crew-limited sequencer comes to the best schedules known, for a time limit on one thread.
 *
 * <p>Arguments: seconds of processor time an instance (default 1), seed (default 1), then the sets (default all). The limit
 * is of the thread's own processor time, so that a busy machine measures the same. Each schedule is checked by {@link
 * Feasible} before it counts.
 */
public final class QualityTable {
  private final double seconds;
  private final long seed;

  private QualityTable(double seconds, long seed) {
    this.seconds = seconds;
    this.seed = seed;
  }

  public static void main(String[] args) {
    double seconds = args.length > 0 ? Double.parseDouble(args[0]) : 1;
    long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
    var table = new QualityTable(seconds, seed);
    new QualityTable(0.05, 0).set("j30"); // lets the compiler see the code before anything is measured
    System.out.println();
    for (String set : args.length > 2 ? args[2].split(",") : new String[] {"patterson", "j30", "j60", "j120"}) {
      System.out.println(table.set(set));
    }
  }

  private String set(String set) {
    boolean patterson = set.equals("patterson");
    int instances = 0;
    int atBest = 0;
    int proved = 0;
    double ours = 0;
    double best = 0;
    long schedules = 0;
    double longest = 0;
    double total = 0;
    var missed = new StringBuilder();
    for (var e : Networks.known(patterson ? set : "psplib/" + set).entrySet()) {
      var problem = patterson ? Networks.patterson(e.getKey()) : Networks.psplib(set, e.getKey());
      var network = problem.network(Networks.EVERY_DAY);
      long begun = processorTime();
      var budget = Budget.until(() -> processorTime() - begun > seconds * 1e9);
      var schedule = Sequencer.sequence(network, budget, seed);
      double took = (processorTime() - begun) / 1e9;
      var faults = Feasible.dayFaults(problem, schedule);
      if (!faults.isEmpty()) {
        throw new AssertionError(e.getKey() + ": " + faults);
      }
      String known = e.getValue()[patterson ? 0 : 1];
      long value = Long.parseLong(known.substring(known.lastIndexOf('.') + 1));
      long found = Networks.day(schedule.finish());
      double path = Passes.of(network).durationDays();
      instances++;
      atBest += found <= value ? 1 : 0;
      if (found > value) {
        missed.append(' ').append(e.getKey()).append(' ').append(found).append('/').append(value);
      }
      proved += schedule.proved() ? 1 : 0;
      ours += 100 * (found - path) / path;
      best += 100 * (value - path) / path;
      schedules += schedule.schedulesBuilt();
      longest = Math.max(longest, took);
      total += took;
    }
    return String.format(
        Locale.ROOT,
        "%-9s n %3d | at best known %3d | proved %3d | above critical path %.3f %% (best known %.3f %%, %.3f points more) | schedules %,d"
            + " | time mean %.3f s, longest %.2f s |%s",
        set,
        instances,
        atBest,
        proved,
        ours / instances,
        best / instances,
        (ours - best) / instances,
        schedules / instances,
        total / instances,
        longest,
        missed);
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}

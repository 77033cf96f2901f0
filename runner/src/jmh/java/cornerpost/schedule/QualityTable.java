package cornerpost.schedule;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Prints how near the crew-limited sequencer comes to the best schedules known, for a time limit on one thread.
 *
 * <p>Arguments: seconds of processor time an instance (default 1; 1000 or more is a number of schedules, which makes the
 * result the same on any machine), seeds (default 1; with commas), the sets (default all;
 * with commas), every how manieth instance (default 1, all), and a pattern to be found in the file name (default any). The
 * limit is of the thread's own processor time, so that a busy machine measures the same. Each schedule is checked by
 * {@link Feasible} before it counts.
 */
public final class QualityTable {
  private final double seconds;
  private final long seed;
  private final int step;
  private final String word;

  private QualityTable(double seconds, long seed, int step, String word) {
    this.seconds = seconds;
    this.seed = seed;
    this.step = step;
    this.word = word;
  }

  public static void main(String[] args) {
    double seconds = args.length > 0 ? Double.parseDouble(args[0]) : 1;
    String[] seeds = (args.length > 1 ? args[1] : "1").split(",");
    String[] sets = (args.length > 2 ? args[2] : "patterson,j30,j60,j120").split(",");
    int step = args.length > 3 ? Integer.parseInt(args[3]) : 1;
    String word = args.length > 4 ? args[4] : "";
    for (String set : new String[] {"j30", "j120"}) { // lets the compiler see the code before anything is measured
      new QualityTable(set.equals("j30") ? 0.05 : 0.3, 0, 1, "").set(set);
    }
    for (String set : sets) {
      double points = 0;
      for (String seed : seeds) {
        points += new QualityTable(seconds, Long.parseLong(seed), step, word).set(set);
      }
      if (seeds.length > 1) {
        System.out.printf(Locale.ROOT, "%-9s mean of %d seeds: %.3f points more%n", set, seeds.length, points / seeds.length);
      }
    }
  }

  /** Prints a line; gives the percentage points above the best known. */
  private double set(String set) {
    boolean patterson = set.equals("patterson");
    int at = 0;
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
      if (at++ % step != 0 || !Pattern.compile(word).matcher(e.getKey()).find()) {
        continue;
      }
      var problem = patterson ? Networks.patterson(e.getKey()) : Networks.psplib(set, e.getKey());
      var network = problem.network(Networks.EVERY_DAY);
      long begun = processorTime();
      var budget =
          seconds < 1000
              ? Budget.until(() -> processorTime() - begun > seconds * 1e9)
              : Budget.schedules((long) seconds);
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
    if (seed == 0) {
      return 0; // warming up
    }
    System.out.printf(
        Locale.ROOT,
        "%-9s seed %d, n %3d | at best known %3d | proved %3d | above critical path %.3f %% (best known %.3f %%, %.3f points more) | schedules %,d"
            + " | time mean %.3f s, longest %.2f s |%s%n",
        set,
        seed,
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
    return (ours - best) / instances;
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}

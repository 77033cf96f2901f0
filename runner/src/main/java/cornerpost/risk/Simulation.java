package cornerpost.risk;

import cornerpost.schedule.Network;
import cornerpost.schedule.Passes;
import cornerpost.schedule.Trial;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Draws durations and prices many times and plans the network anew with each draw, so that cost and
 * finish come from the same trial.
 *
 * <p>Every duration and every amount is triangular ({@link Range}). Durations share one normal
 * factor, prices another, each with the same correlation r: z = sqrt(r) common + sqrt(1 - r) own,
 * and the draw is the quantile at the normal probability of z (a one-factor Gaussian copula; the
 * rank correlation of two of them is 6 / pi asin(r / 2)). Hired hours move with the duration of
 * their task. What is paid by the month grows with the time from start to finish.
 *
 * <p>Each variable has a random stream of its own, made from the seed and its id: adding a task
 * leaves the draws of the others as they were. No clock, no threads; the same seed gives the same
 * result. Cost O(trials x (tasks + links + amounts)).
 */
public final class Simulation {
  private static final int DRIVERS_SHOWN = 10;

  private final Network network;
  private final Map<String, Range> durations;
  private final List<CostRange> costs;
  private final double correlation;

  /**
   * @param durations minutes of each task that is uncertain, by id; the others keep theirs
   * @param correlation between any two durations, and between any two prices: 0 to below 1
   */
  public Simulation(
      Network network, Map<String, Range> durations, List<CostRange> costs, double correlation) {
    if (!(correlation >= 0 && correlation < 1)) {
      throw new IllegalArgumentException("correlation must be 0 to below 1, found " + correlation);
    }
    this.network = network;
    this.durations = Map.copyOf(durations);
    this.costs = List.copyOf(costs);
    this.correlation = correlation;
  }

  /** What is held against each trial: the planned total and finish, and the start. */
  public record Target(double total, long finishMinute, long startMinute) {}

  /**
   * @param trials 1 or more
   */
  public RiskResult run(int trials, long seed, Target target) {
    var activities = network.activities();
    int tasks = activities.size();
    var minutes = new double[tasks][];
    var z = new double[tasks][];
    var common = gaussians(seed, "durations in common", trials);
    var index = new LinkedHashMap<String, Integer>();
    for (int i = 0; i < tasks; i++) {
      var a = activities.get(i);
      index.put(a.id(), i);
      var range = durations.get(a.id());
      if (range == null || range.certain()) continue;
      z[i] = mixed(common, gaussians(seed, "duration " + a.id(), trials));
      minutes[i] = draws(range, z[i]);
    }

    var cost = new double[trials];
    var finish = new double[trials];
    var drives = new int[tasks];
    var trial = Passes.trial(network);
    var running = running(index, trials, target.startMinute);
    var drawn = new long[tasks];
    for (int i = 0; i < tasks; i++) drawn[i] = network.minutesLeft(activities.get(i).id());
    for (int t = 0; t < trials; t++) {
      for (int i = 0; i < tasks; i++) if (minutes[i] != null) drawn[i] = Math.round(minutes[i][t]);
      trial.run(drawn);
      finish[t] = trial.finishMinute();
      for (int i = 0; i < tasks; i++) if (trial.drivesFinish(i)) drives[i]++;
      for (var r : running.values()) r.note(t, trial);
    }

    var amounts = new ArrayList<double[]>();
    var prices = gaussians(seed, "prices in common", trials);
    for (var c : costs) {
      var task = c.task().map(index::get);
      double[] own;
      if (task.isPresent() && z[task.get()] != null) own = draws(c.amount(), z[task.get()]);
      else if (c.amount().certain()) own = null;
      else own = draws(c.amount(), mixed(prices, gaussians(seed, "price " + c.id(), trials)));
      for (int t = 0; t < trials; t++) {
        double amount = own == null ? c.amount().likely() : own[t];
        if (c.running().isPresent()) {
          var paid = c.running().get();
          amount *=
              Math.max(0, finish[t] - running.get(paid.from()).begin[t]) / paid.minutesPaidFor();
          if (own != null) own[t] = amount;
        }
        cost[t] += amount;
      }
      amounts.add(own);
    }

    int both = 0;
    for (int t = 0; t < trials; t++) {
      if (cost[t] <= target.total && finish[t] <= target.finishMinute) both++;
    }
    var share = new LinkedHashMap<String, Double>();
    for (int i = 0; i < tasks; i++) share.put(activities.get(i).id(), (double) drives[i] / trials);
    return new RiskResult(
        trials,
        seed,
        "triangular",
        new Spread(cost),
        new Spread(finish),
        (double) both / trials,
        share,
        costDrivers(amounts, cost),
        timeDrivers(minutes, finish));
  }

  /** When in each trial the time that is paid for begins. */
  private static final class Begins {
    private final int[] tasks;
    private final double[] begin;

    Begins(int[] tasks, int trials, long start) {
      this.tasks = tasks;
      begin = new double[trials];
      Arrays.fill(begin, start);
    }

    void note(int trial, Trial run) {
      for (int i : tasks) begin[trial] = Math.max(begin[trial], run.startMinute(i));
    }
  }

  private Map<List<String>, Begins> running(Map<String, Integer> index, int trials, long start) {
    var all = new HashMap<List<String>, Begins>();
    for (var c : costs) {
      for (var from : c.running().stream().map(CostRange.Running::from).toList()) {
        var tasks = from.stream().filter(index::containsKey).mapToInt(index::get).toArray();
        all.computeIfAbsent(from, f -> new Begins(tasks, trials, start));
      }
    }
    return all;
  }

  private List<RiskResult.Driver> costDrivers(List<double[]> amounts, double[] cost) {
    var found = new ArrayList<RiskResult.Driver>();
    for (int i = 0; i < costs.size(); i++) {
      if (amounts.get(i) == null) continue;
      double r = correlation(amounts.get(i), cost);
      found.add(
          new RiskResult.Driver(
              costs.get(i).id(), costs.get(i).name(), r, deviation(amounts.get(i))));
    }
    return strongest(found);
  }

  private List<RiskResult.Driver> timeDrivers(double[][] minutes, double[] finish) {
    var found = new ArrayList<RiskResult.Driver>();
    for (int i = 0; i < minutes.length; i++) {
      if (minutes[i] == null) continue;
      var a = network.activities().get(i);
      double day = a.isElapsed() ? 24 * 60 : network.calendarOf(a.id()).dayMinutes();
      double r = correlation(minutes[i], finish);
      found.add(new RiskResult.Driver(a.id(), a.name(), r, deviation(minutes[i]) / day));
    }
    return strongest(found);
  }

  /** By how much of the spread they carry: correlation times their own deviation; ties by id. */
  private static List<RiskResult.Driver> strongest(List<RiskResult.Driver> drivers) {
    return drivers.stream()
        .sorted(
            Comparator.comparingDouble(RiskResult.Driver::carried)
                .reversed()
                .thenComparing(RiskResult.Driver::id))
        .limit(DRIVERS_SHOWN)
        .toList();
  }

  private double[] mixed(double[] common, double[] own) {
    double a = Math.sqrt(correlation);
    double b = Math.sqrt(1 - correlation);
    var z = new double[own.length];
    for (int t = 0; t < z.length; t++) z[t] = a * common[t] + b * own[t];
    return z;
  }

  private static double[] draws(Range range, double[] z) {
    var x = new double[z.length];
    for (int t = 0; t < x.length; t++) x[t] = range.quantile(Normal.probability(z[t]));
    return x;
  }

  private static double[] gaussians(long seed, String id, int trials) {
    var random = new SplittableRandom(mix(seed, id));
    var z = new double[trials];
    for (int t = 0; t < trials; t++) z[t] = random.nextGaussian();
    return z;
  }

  /** FNV-1a over the id, started from the seed: a stream that depends on nothing else. */
  private static long mix(long seed, String id) {
    long h = 0xcbf29ce484222325L ^ seed * 0x9E3779B97F4A7C15L;
    for (int i = 0; i < id.length(); i++) h = (h ^ id.charAt(i)) * 0x100000001b3L;
    return h;
  }

  private static double mean(double[] x) {
    double sum = 0;
    for (double v : x) sum += v;
    return sum / x.length;
  }

  private static double deviation(double[] x) {
    double m = mean(x);
    double sum = 0;
    for (double v : x) sum += (v - m) * (v - m);
    return Math.sqrt(sum / x.length);
  }

  /** Pearson's; 0 where either does not vary. */
  private static double correlation(double[] x, double[] y) {
    double mx = mean(x);
    double my = mean(y);
    double xy = 0;
    double xx = 0;
    double yy = 0;
    for (int i = 0; i < x.length; i++) {
      xy += (x[i] - mx) * (y[i] - my);
      xx += (x[i] - mx) * (x[i] - mx);
      yy += (y[i] - my) * (y[i] - my);
    }
    return xx == 0 || yy == 0 ? 0 : xy / Math.sqrt(xx * yy);
  }
}

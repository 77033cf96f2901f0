package cornerpost.schedule;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Prints how near the crew-limited sequencer and a general-purpose constraint solver (OR-Tools
 * CP-SAT, one worker) come to the best schedules known, in equal wall-clock time, in turn on each
 * instance.
 *
 * <p>Arguments: the sets (j120, or j30,j60,j120), seconds an instance (0.2,1,5), every how manieth
 * instance (1 takes all), seed (1), a file in which each result is kept
 * (target/solver-comparison.csv), and how many instances to run at the most this time, each
 * number of seconds counting (all). What the file holds already is not run again, so that a long run
 * can be broken off and taken up; the table is of all that the file holds for these arguments.
 *
 * <p>The solver is helped: it is given the end of one serial pass as its horizon, which also counts
 * as its result where it finds nothing, and building its model and loading its library cost it
 * nothing. Both sides' code is warmed up first; every schedule is checked before it counts.
 */
public final class SolverComparison {
  private static final WorkCalendar DAYS = Networks.EVERY_DAY;
  private static final String COLUMNS =
      "set,instance,seconds,seed,critical path,best known,ours,ours proved,solver,solver proved,solver found";

  private SolverComparison() {}

  public static void main(String[] args) throws IOException {
    String[] sets = (args.length > 0 ? args[0] : "j120").split(",");
    String[] budgets = (args.length > 1 ? args[1] : "0.2,1,5").split(",");
    int step = args.length > 2 ? Integer.parseInt(args[2]) : 1;
    int seed = args.length > 3 ? Integer.parseInt(args[3]) : 1;
    Path file = Path.of(args.length > 4 ? args[4] : "target/solver-comparison.csv");
    int most = args.length > 5 ? Integer.parseInt(args[5]) : Integer.MAX_VALUE;
    Map<String, String> kept = kept(file);
    var wanted = new ArrayList<String>();
    for (String set : sets) {
      for (String seconds : budgets) {
        int at = 0;
        for (String instance : Networks.known("psplib/" + set).keySet()) {
          if (at++ % step == 0) {
            wanted.add(String.join(",", set, instance, seconds, "" + seed));
          }
        }
      }
    }
    var open = wanted.stream().filter(w -> !kept.containsKey(w)).limit(most).toList();
    if (!open.isEmpty()) {
      Loader.loadNativeLibraries();
      warmUp(seed);
    }
    int done = 0;
    for (String w : open) {
      String result = run(w);
      kept.put(w, result);
      Files.writeString(file, w + "," + result + "\n", StandardOpenOption.APPEND);
      System.out.println(++done + " of " + open.size() + ": " + w + ": " + result);
    }
    System.out.println();
    System.out.println(
        "| set | seconds | instances | ours, % above critical path | solver | best known | ours at best known"
            + " | solver | ours proved | solver | ours ahead | ours behind | solver without a schedule |");
    System.out.println("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (String set : sets) {
      for (String seconds : budgets) {
        System.out.println(row(set, seconds, wanted, kept));
      }
    }
  }

  /** The results in the file, which is begun if there is none. */
  private static Map<String, String> kept(Path file) throws IOException {
    var kept = new HashMap<String, String>();
    if (Files.notExists(file)) {
      if (file.getParent() != null) {
        Files.createDirectories(file.getParent());
      }
      Files.writeString(file, COLUMNS + "\n");
    }
    for (String line : Files.readAllLines(file)) {
      String[] c = line.split(",");
      if (c.length == COLUMNS.split(",").length && !line.equals(COLUMNS)) {
        kept.put(
            String.join(",", Arrays.copyOf(c, 4)),
            String.join(",", Arrays.copyOfRange(c, 4, c.length)));
      }
    }
    return kept;
  }

  private static void warmUp(int seed) {
    int k = 0;
    for (String file : Networks.known("psplib/j30").keySet()) {
      var problem = Networks.psplib("j30", file);
      ours(problem.network(DAYS), 0.2, seed);
      if (k++ < 3) {
        theirs(problem, 100_000, 0.2, seed);
      }
    }
    for (String file : Networks.known("psplib/j120").keySet()) {
      ours(Networks.psplib("j120", file).network(DAYS), 0.3, seed);
    }
  }

  /** The columns of a result behind the seed. */
  private static String run(String wanted) {
    String[] w = wanted.split(",");
    double seconds = Double.parseDouble(w[2]);
    int seed = Integer.parseInt(w[3]);
    var problem = Networks.psplib(w[0], w[1]);
    var network = problem.network(DAYS);
    long path = Math.round(Passes.of(network).durationDays());
    String known = Networks.known("psplib/" + w[0]).get(w[1])[1];
    long value = Long.parseLong(known.substring(known.lastIndexOf('.') + 1));
    long first = Networks.day(Sequencer.sequence(network, Budget.schedules(1), seed).finish());
    var schedule = ours(network, seconds, seed);
    var faults = Feasible.dayFaults(problem, schedule);
    if (!faults.isEmpty()) {
      throw new AssertionError(w[1] + ": " + faults);
    }
    long[] their = theirs(problem, first, seconds, seed);
    return path
        + ","
        + value
        + ","
        + Networks.day(schedule.finish())
        + ","
        + (schedule.proved() ? 1 : 0)
        + ","
        + their[0]
        + ","
        + their[1]
        + ","
        + their[2];
  }

  private static String row(String set, String seconds, List<String> wanted, Map<String, String> kept) {
    int n = 0;
    double[] above = new double[3];
    int[] count = new int[7];
    for (String w : wanted) {
      if (!kept.containsKey(w) || !w.startsWith(set + ",") || !w.split(",")[2].equals(seconds)) {
        continue;
      }
      long[] r = Arrays.stream(kept.get(w).split(",")).mapToLong(Long::parseLong).toArray();
      n++;
      above[0] += 100.0 * (r[2] - r[0]) / r[0];
      above[1] += 100.0 * (r[4] - r[0]) / r[0];
      above[2] += 100.0 * (r[1] - r[0]) / r[0];
      count[0] += r[2] <= r[1] ? 1 : 0;
      count[1] += r[4] <= r[1] ? 1 : 0;
      count[2] += (int) r[3];
      count[3] += (int) r[5];
      count[4] += r[2] < r[4] ? 1 : 0;
      count[5] += r[2] > r[4] ? 1 : 0;
      count[6] += r[6] == 0 ? 1 : 0;
    }
    if (n == 0) {
      return "| " + set + " | " + seconds + " | 0 |";
    }
    return String.format(
        Locale.ROOT,
        "| %s | %s | %d | %.3f | %.3f | %.3f | %d | %d | %d | %d | %d | %d | %d |",
        set,
        seconds,
        n,
        above[0] / n,
        above[1] / n,
        above[2] / n,
        count[0],
        count[1],
        count[2],
        count[3],
        count[4],
        count[5],
        count[6]);
  }

  private static CrewSchedule ours(Network network, double seconds, int seed) {
    long begun = System.nanoTime();
    return Sequencer.sequence(
        network, Budget.until(() -> System.nanoTime() - begun > seconds * 1e9), seed);
  }

  /** End, whether proved (1), and whether any schedule was found (1). */
  private static long[] theirs(Networks.Problem p, long horizon, double seconds, int seed) {
    var model = new CpModel();
    int n = p.duration().length;
    IntVar[] start = new IntVar[n];
    IntervalVar[] interval = new IntervalVar[n];
    IntVar end = model.newIntVar(0, horizon, "end");
    for (int i = 0; i < n; i++) {
      start[i] = model.newIntVar(0, horizon, "s" + i);
      interval[i] = model.newFixedSizeIntervalVar(start[i], p.duration()[i], "t" + i);
    }
    for (int i = 0; i < n; i++) {
      var finish = LinearExpr.newBuilder().add(start[i]).add(p.duration()[i]).build();
      model.addGreaterOrEqual(end, finish);
      for (int s : p.successors()[i]) {
        model.addGreaterOrEqual(start[s], finish);
      }
    }
    for (int r = 0; r < p.capacity().length; r++) {
      var crew = model.addCumulative(p.capacity()[r]);
      for (int i = 0; i < n; i++) {
        if (p.demand()[i][r] > 0 && p.duration()[i] > 0) {
          crew.addDemand(interval[i], p.demand()[i][r]);
        }
      }
    }
    model.minimize(end);
    var solver = new CpSolver();
    solver
        .getParameters()
        .setMaxTimeInSeconds(seconds)
        .setNumWorkers(1)
        .setRandomSeed(seed);
    CpSolverStatus status = solver.solve(model);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    if (!found) {
      return new long[] {horizon, 0, 0};
    }
    for (int i = 0; i < n; i++) {
      for (int s : p.successors()[i]) {
        if (solver.value(start[s]) < solver.value(start[i]) + p.duration()[i]) {
          throw new AssertionError("the solver's schedule breaks a link");
        }
      }
    }
    return new long[] {solver.value(end), status == CpSolverStatus.OPTIMAL ? 1 : 0, 1};
  }
}

package cornerpost.schedule;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.Locale;

/**
 * Prints how near the crew-limited sequencer and a general-purpose constraint solver (OR-Tools
 * CP-SAT, one worker) come to the best schedules known, in equal wall-clock time, in turn on each
 * instance.
 *
 * <p>Arguments: the sets (j120, or j30,j60,j120), seconds an instance (0.2,1,5), every how manieth
 * instance (1 takes all), seed (1). The solver is helped: it is given the end of one serial pass as
 * its horizon, which also counts as its result where it finds nothing, and building its model and
 * loading its library cost it nothing. Both sides' code is warmed up first; every schedule is
 * checked before it counts.
 */
public final class SolverComparison {
  private static final WorkCalendar DAYS = Networks.EVERY_DAY;

  private SolverComparison() {}

  public static void main(String[] args) {
    String[] sets = (args.length > 0 ? args[0] : "j120").split(",");
    String[] budgets = (args.length > 1 ? args[1] : "0.2,1,5").split(",");
    int step = args.length > 2 ? Integer.parseInt(args[2]) : 1;
    int seed = args.length > 3 ? Integer.parseInt(args[3]) : 1;
    Loader.loadNativeLibraries();
    warmUp(seed);
    for (String set : sets) {
      for (String seconds : budgets) {
        System.out.println(line(set, Double.parseDouble(seconds), step, seed));
      }
    }
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
  }

  private static String line(String set, double seconds, int step, int seed) {
    int at = 0;
    int n = 0;
    int ahead = 0;
    int behind = 0;
    int nothing = 0;
    double[] sum = new double[3];
    int[] best = new int[2];
    int[] proved = new int[2];
    for (var e : Networks.known("psplib/" + set).entrySet()) {
      if (at++ % step != 0) {
        continue;
      }
      var problem = Networks.psplib(set, e.getKey());
      var network = problem.network(DAYS);
      double path = Passes.of(network).durationDays();
      String known = e.getValue()[1];
      long value = Long.parseLong(known.substring(known.lastIndexOf('.') + 1));
      long first = Networks.day(Sequencer.sequence(network, Budget.schedules(1), seed).finish());
      var schedule = ours(network, seconds, seed);
      var faults = Feasible.dayFaults(problem, schedule);
      if (!faults.isEmpty()) {
        throw new AssertionError(e.getKey() + ": " + faults);
      }
      long our = Networks.day(schedule.finish());
      long[] their = theirs(problem, first, seconds, seed);
      n++;
      nothing += their[2] == 0 ? 1 : 0;
      ahead += our < their[0] ? 1 : 0;
      behind += our > their[0] ? 1 : 0;
      best[0] += our <= value ? 1 : 0;
      best[1] += their[0] <= value ? 1 : 0;
      proved[0] += schedule.proved() ? 1 : 0;
      proved[1] += their[1] == 1 ? 1 : 0;
      sum[0] += 100 * (our - path) / path;
      sum[1] += 100 * (their[0] - path) / path;
      sum[2] += 100 * (value - path) / path;
    }
    return String.format(
        Locale.ROOT,
        "%s, %.1f s, n %d | above critical path: ours %.3f %%, solver %.3f %%, best known %.3f %%"
            + " | at best known %d, %d | proved %d, %d | ours ahead on %d, behind on %d"
            + " | solver without a schedule %d",
        set,
        seconds,
        n,
        sum[0] / n,
        sum[1] / n,
        sum[2] / n,
        best[0],
        best[1],
        proved[0],
        proved[1],
        ahead,
        behind,
        nothing);
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

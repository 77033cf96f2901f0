package cornerpost.schedule;

/** Finds planned dates that ask no crew for more than it has, and end early. */
public final class Sequencer {
  private static final long FIRST_ROUND =
      1_500; // schedules; each later round is four times as long
  private static final long LEAST_NODES =
      6_000; // decisions of the exact search, about a schedule's worth each

  private static final int SMALL = 70; // tasks up to which the exact search gets a larger share

  private Sequencer() {}

  /**
   * A schedule within crew numbers.
   *
   * <p>If the early dates ask no crew for too much they are the schedule, and nothing ends earlier.
   * Else rounds of {@link Search} take turns with an exact search ({@link BranchAndBound}, where
   * all tasks share one calendar) until the end meets a lower bound, the exact search has gone
   * through everything, or the budget is spent. A task holds its crews from its start to its
   * finish, nights and weekends between included; one that has started holds them from when it goes
   * on.
   *
   * @param budget how long to look for a better one
   * @param seed of the random numbers; the same network, seed and schedule count give the same
   *     schedule
   */
  public static CrewSchedule sequence(Network network, Budget budget, long seed) {
    Timetable timetable = Passes.of(network);
    Graph g = network.graph();
    var early = new Sweep(g);
    early.forward(g.minutes);
    var use = new CrewUse(network);
    use.putAll(early);
    if (!use.overSubscribed()) {
      return new CrewSchedule(timetable, early, early.end, false, 1);
    }
    var plan = new Sweep(g);
    var scaled = ScaledProject.of(network, early);
    if (scaled.isPresent()) {
      var run = new ScaledRun(scaled.get(), early, use, plan, budget, seed);
      return new CrewSchedule(timetable, plan, run.bound(), true, run.built());
    }
    var decoder = new CalendarDecoder(network);
    var search = new Search(decoder, budget, seed);
    search.run(1, early.end);
    long bound = new Bounds(g, use, early).lowestEnd(search.bestEnd());
    search.run(Long.MAX_VALUE, bound);
    decoder.putInto(plan);
    return new CrewSchedule(timetable, plan, Math.min(bound, plan.end), true, search.built());
  }

  /** The search where all tasks share one calendar and times are small whole numbers. */
  private static final class ScaledRun {
    private final ScaledProject project;
    private final ScaledDecoder decoder;
    private final Search search;
    private final Budget budget;
    private long bound; // in steps

    ScaledRun(
        ScaledProject project, Sweep early, CrewUse use, Sweep plan, Budget budget, long seed) {
      this.project = project;
      this.budget = budget;
      decoder = new ScaledDecoder(project);
      search = new Search(decoder, budget, seed);
      search.run(1, 0);
      Graph g = early.graph;
      bound = steps(new Bounds(g, use, early).lowestEnd(realEnd(g, search.bestEnd())), g);
      rounds();
      decoder.putInto(plan);
      end = plan.end;
      real = search.bestEnd() <= bound ? plan.end : Math.min(plan.end, realEnd(g, bound));
    }

    private final long end;
    private final long real;

    long bound() {
      return Math.min(end, real);
    }

    long built() {
      return search.built();
    }

    /** The fewest steps that do not end before the moment. */
    private long steps(long moment, Graph g) {
      long numbers = g.calendar[project.task[0]].worked(moment) - project.base;
      return Math.min(search.bestEnd(), Math.floorDiv(numbers + project.step - 1, project.step));
    }

    private long realEnd(Graph g, long steps) {
      return g.calendar[project.task[0]].endOf(project.base + steps * project.step);
    }

    private void rounds() {
      boolean exact = BranchAndBound.suits(project);
      long round = FIRST_ROUND;
      while (search.bestEnd() > bound && !search.spent()) {
        search.run(round, bound);
        if (exact && search.bestEnd() > bound && !search.spent()) {
          prove(LEAST_NODES + Math.min(round, budget.schedules()));
        }
        round = exact && project.size <= SMALL ? 4 * round : Long.MAX_VALUE;
      }
    }

    private void prove(long nodes) {
      int best = (int) search.bestEnd();
      var whole = new BranchAndBound(project, best, nodes, budget.stop());
      boolean through = whole.run();
      if (whole.best() != null) {
        System.arraycopy(whole.best(), 0, decoder.kept, 0, decoder.size);
        search.betterKnown(whole.end());
      }
      if (through) {
        bound = whole.end();
        return;
      }
      while (bound
          < search.bestEnd()) { // can it end at the bound? if not, the bound is one step later
        var one = new BranchAndBound(project, (int) bound + 1, nodes / 10, budget.stop());
        if (!one.run()) {
          return;
        }
        if (one.best() != null) {
          System.arraycopy(one.best(), 0, decoder.kept, 0, decoder.size);
          search.betterKnown(one.end());
          return;
        }
        bound++;
      }
    }
  }
}

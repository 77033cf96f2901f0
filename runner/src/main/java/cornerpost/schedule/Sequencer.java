package cornerpost.schedule;

/** Finds planned dates that ask no crew for more than it has, and end early. */
public final class Sequencer {
  /** Schedules; each later round is four times as long. */
  private static final long FIRST_ROUND = 1_500;

  private static final long LONGEST_ROUND = 24_000;

  /** Decisions of the exact search in any round; one costs less than a schedule. */
  private static final long LEAST_NODES = 6_000;

  /** The same where tasks are many; a proof that is easy to have takes no more. */
  private static final long FEW_NODES = 1_000;

  /**
   * Schedules for each further decision, beyond few tasks: what is not proved soon hardly ever is.
   */
  private static final long SCHEDULES_A_NODE = 64;

  /** Effort of {@link OrderSearch} that shows whether a proof is easy to have. */
  private static final long FEW_ORDERS = 40;

  /** The same in the second round where calendars differ; it doubles in each later one. */
  private static final long MANY_ORDERS = 1_000;

  /** The same once no better schedule has come for long: every house tried is proved by then. */
  private static final long LAST_ORDERS = 60_000;

  /** Of a network too large to be proved, no more than take some ten seconds. */
  private static final long LAST_ORDERS_TIMES_TASKS = 9_000_000;

  /** Schedules in the first round where calendars differ. */
  private static final long FIRST_ORDERS = 60;

  private Sequencer() {}

  /**
   * A schedule within crew numbers.
   *
   * <p>If the early dates ask no crew for too much they are the schedule, and nothing ends earlier.
   * Else rounds of {@link Search} take turns with an exact search ({@link BranchAndBound} where it
   * is fit for it, else {@link OrderSearch}) until the end meets a lower bound, the exact search
   * has gone through everything, or the budget is spent. A task holds its crews from its start to
   * its finish, nights and weekends between included; one that has started holds them from when it
   * goes on, which is at once unless its links hold it ({@link UnderWay}).
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
      var orders = new OrderSearch(network, use, early, budget.stop());
      var run = new ScaledRun(scaled.get(), orders, plan, budget, seed);
      return new CrewSchedule(timetable, plan, run.bound(), true, run.built());
    }
    var decoder = new CalendarDecoder(network);
    var search = new Search(decoder, budget, seed);
    var orders = new OrderSearch(network, use, early, budget.stop());
    search.run(1, early.end);
    boolean proved = search.bestEnd() <= early.end;
    long most = FEW_ORDERS;
    for (long round = FIRST_ORDERS; !proved && !search.spent(); round = 3 * round) {
      proved = decide(orders, decoder, search, within(budget, most));
      if (!proved) {
        search.run(round, early.end);
      }
      most = most == FEW_ORDERS ? MANY_ORDERS : 2 * most;
    }
    if (!proved) {
      long last = Math.min(LAST_ORDERS, LAST_ORDERS_TIMES_TASKS / network.activities().size());
      proved = decide(orders, decoder, search, within(budget, last));
    }
    long bound = proved ? search.bestEnd() : orders.lowestEnd(search.bestEnd());
    decoder.putInto(plan);
    return new CrewSchedule(timetable, plan, Math.min(bound, plan.end), true, search.built());
  }

  private static long within(Budget budget, long most) {
    return budget.schedules() < FIRST_ORDERS ? Math.min(most, budget.schedules()) : most;
  }

  /** Whether nothing can end before the best schedule there then is. */
  private static boolean decide(
      OrderSearch orders, CalendarDecoder decoder, Search search, long most) {
    boolean through = orders.run(search.bestEnd(), most);
    if (orders.best() != null) {
      decoder.show(orders.best());
      search.takeIn(orders.end());
    }
    return through;
  }

  /** The search where all tasks share one calendar and times are small whole numbers. */
  private static final class ScaledRun {
    private final ScaledProject project;
    private final ScaledDecoder decoder;
    private final Search search;
    private final Budget budget;
    private final Windows windows;
    private final OrderSearch orders;
    private final ScaledProject mirror; // null where reversed time is not for the exact search
    private final boolean small;
    private long bound; // in steps
    private long endTried;
    private long nodesTried;

    ScaledRun(ScaledProject project, OrderSearch orders, Sweep plan, Budget budget, long seed) {
      this.orders = orders;
      this.project = project;
      this.budget = budget;
      small = project.size <= SearchSizes.SMALL;
      decoder = new ScaledDecoder(project);
      search = new Search(decoder, budget, seed);
      search.run(1, 0);
      mirror = mirror(project);
      windows = new Windows(project, seed, budget.stop());
      Graph g = orders.graph();
      bound = steps(orders.lowestEnd(realEnd(g, search.bestEnd())), g);
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
      long round = exact ? FIRST_ROUND : 2 * FIRST_ORDERS;
      if (search.bestEnd() > bound) {
        decide(FIRST_ORDERS);
      }
      while (search.bestEnd() > bound && !search.spent()) {
        search.run(round, bound);
        if (!exact && search.bestEnd() > bound && !search.spent()) {
          decide(round / 2);
        }
        if (exact && search.bestEnd() > bound && !search.spent()) {
          long least = project.size <= SearchSizes.LARGE ? LEAST_NODES : FEW_NODES;
          long more =
              small ? 3 * Math.min(round, budget.schedules()) : search.built() / SCHEDULES_A_NODE;
          prove(least + more);
          if (small) {
            openWindows(round / 2);
          }
        }
        if (small) {
          round = 4 * round;
        } else {
          round =
              !exact || project.size <= SearchSizes.LARGE
                  ? Math.min(4 * round, LONGEST_ROUND)
                  : Long.MAX_VALUE;
        }
      }
    }

    private static ScaledProject mirror(ScaledProject project) {
      ScaledProject mirror = project.mirrored();
      return mirror != null && BranchAndBound.suits(mirror) ? mirror : null;
    }

    /** Where lags are negative or tasks are many. */
    private void decide(long most) {
      boolean through = orders.run(realEnd(orders.graph(), search.bestEnd()), most);
      if (orders.best() != null) {
        decoder.show(orders.best(), orders.graph());
        search.takeIn(steps(orders.end(), orders.graph()));
      }
      if (through) {
        bound = search.bestEnd();
      }
    }

    private void openWindows(long most) {
      long until = windows.nodes() + most;
      while (search.bestEnd() > bound && windows.nodes() < until && !search.spent()) {
        search.showElite();
        int[] found = windows.better(decoder.start, (int) search.bestEnd());
        if (found != null) {
          take(found);
        }
      }
    }

    /**
     * From the start every time, so it is worth while only with about twice as many decisions; up
     * to few tasks, for which there are many decisions, with a better schedule too.
     */
    private void prove(long nodes) {
      boolean better = small && search.bestEnd() != endTried;
      if (!better && 5 * nodes < 9 * nodesTried) {
        return;
      }
      endTried = search.bestEnd();
      nodesTried = nodes;
      boolean through = exact(project, nodes, false);
      if (!through && mirror != null && search.bestEnd() > bound) {
        through = exact(mirror, nodes, true);
      }
      if (through) {
        bound = search.bestEnd();
      }
      while (bound
          < search.bestEnd()) { // can it end at the bound? if not, the bound is one step later
        var one = new BranchAndBound(project, (int) bound + 1, nodes / 20, budget.stop());
        if (!one.run()) {
          return;
        }
        if (one.best() != null) {
          take(one.best());
          return;
        }
        bound++;
      }
    }

    /** Whether the exact search went through everything, from the front or in reversed time. */
    private boolean exact(ScaledProject p, long nodes, boolean reversed) {
      var whole = new BranchAndBound(p, (int) search.bestEnd(), nodes, budget.stop());
      boolean through = whole.run();
      int[] found = whole.best();
      if (found != null && reversed) {
        int[] forward = new int[found.length];
        p.mirror(found, whole.end(), forward);
        found = forward;
      }
      if (found != null) {
        take(found);
      }
      return through;
    }

    /**
     * Takes in a schedule by its starts; serial generation in their order closes any gap it has
     * left.
     */
    private void take(int[] start) {
      System.arraycopy(start, 0, decoder.start, 0, start.length);
      search.takeIn(decoder.endOfStarts());
    }
  }
}

package cornerpost.schedule;

/**
 * The sizes of a {@link Search}, found by trial for four kinds of projects: what was tried stands
 * in docs/method-schedule.md.
 *
 * @param population lists bred together
 * @param staleRounds children without improvement, times the population, until it is at rest
 * @param partners looked at for each parent
 * @param rivals for a place in the population, besides the parents
 * @param moveRate the odds that one of as many moves of a child as there are tasks is made
 * @param longestBlock share of the tasks that a child takes from one parent at the most
 * @param worthPushing how much longer than its parents a schedule may be at first; 0.06 is 6 %
 * @param bothWays whether every second population is put in in reversed time
 */
record SearchSizes(
    int population,
    int staleRounds,
    int partners,
    int rivals,
    double moveRate,
    double longestBlock,
    double worthPushing,
    boolean bothWays) {
  /** Tasks beyond which time is better spent on orders of work than on an exact search. */
  static final int LARGE = 80;

  /**
   * Up to so many tasks the exact search gets the larger share, and putting in from the front finds
   * every optimum known.
   */
  static final int SMALL = 45;

  static boolean fromBack(int tasks) {
    return tasks > SMALL;
  }

  /**
   * The sizes for so many tasks.
   *
   * @param fromBack whether children are put in from the back
   */
  static SearchSizes of(int tasks, boolean fromBack) {
    if (tasks > LARGE) {
      double moveRate = 250.0 / tasks / tasks;
      return fromBack
          ? new SearchSizes(300, 20, 5, 6, moveRate, 0.3, 0.02, false)
          : new SearchSizes(200, 150, 5, 0, moveRate, 0.3, 0.02, false);
    }
    return fromBack
        ? new SearchSizes(400, 20, 8, 6, 0.06, 0.15, 0.06, true)
        : new SearchSizes(300, 150, 5, 0, 0.13, 0.3, 0.06, false);
  }
}

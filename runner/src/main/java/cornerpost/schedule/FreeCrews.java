package cornerpost.schedule;

/** How much of each crew is still free, step by step, while tasks are put in one by one. */
abstract class FreeCrews {
  static FreeCrews of(ScaledProject project) {
    return FreeCrewsByEight.suits(project)
        ? new FreeCrewsByEight(project)
        : new FreeCrewsByStep(project);
  }

  /**
   * Takes the crews of a task, which has some duration, for the first stretch in which all of them
   * are free.
   *
   * @param task number in the project
   * @param from first step in which it may start
   * @return the step in which it starts
   */
  abstract int take(int task, int from);

  /** Takes the crews of a task, which are free, from the step in which it starts. */
  abstract void put(int task, int start);

  /** Frees all crews again, from the first step up to the given one, past which none is taken. */
  abstract void clear(int until);
}

package cornerpost.schedule;

/**
 * Turns an order of tasks into a schedule within crew numbers, from the front or from the back.
 *
 * <p>Tasks are numbered so that each comes after those it waits for. A list is any order with that
 * property.
 */
abstract class Decoder {
  static final long NONE = Long.MAX_VALUE;

  final int size;

  Decoder(int size) {
    this.size = size;
  }

  /**
   * Each task in turn as early as its links and the crews still free allow; gives the end, smaller
   * is better.
   */
  abstract long forward(int[] list);

  /**
   * The same, given up at once with {@link #NONE} where it turns out that it would end after the
   * limit; then there is no last schedule.
   */
  long forward(int[] list, long limit) {
    long end = forward(list);
    return end > limit ? NONE : end;
  }

  /**
   * The same, where the first tasks are known to go where another schedule has them; only where the
   * decoder {@link #resumes}.
   *
   * @param same how many
   * @param places of that schedule
   */
  long forward(int[] list, int same, int[] places, long limit) {
    return forward(list, limit);
  }

  /**
   * Whether the tasks of a forward schedule, in the order of their starts, are known to be put in
   * where they are, so that two lists that begin alike need not both be built from the beginning.
   */
  boolean resumes() {
    return false;
  }

  /** Notes where the last forward schedule has its tasks; only where the decoder resumes. */
  void note(int[] places) {
    throw new UnsupportedOperationException();
  }

  /**
   * The same as {@link #backward(int[], long)}, where the last tasks are known to go where another
   * schedule from the back has them; only where the decoder {@link #startsFromBack}.
   *
   * @param same how many
   * @param places of that schedule, as noted by {@link #noteFromBack}
   */
  long backward(int[] list, int same, int[] places, long limit) {
    return backward(list, limit);
  }

  /** Notes where the last schedule from the back has its tasks, counted from its end. */
  void noteFromBack(int[] places) {
    throw new UnsupportedOperationException();
  }

  /** The end of a schedule that takes so much more time than one with the given end. */
  abstract long stretched(long end, double more);

  /**
   * Each task in turn, from the back of the list, as late as its links and the crews still free
   * allow; gives the length from the first start to the end of the last forward schedule.
   *
   * @param limit given up at once with {@link #NONE} where it turns out that the length would be
   *     more; a decoder that does not start from the back need not heed it
   */
  abstract long backward(int[] list, long limit);

  /**
   * Whether a list can be put in from the back at once, with no forward schedule of it: where the
   * length does not depend on the day of the end.
   */
  abstract boolean startsFromBack();

  /**
   * A decoder of the same tasks in reversed time, each numbered as many from the last as here from
   * the first; what it keeps, this one keeps. Null where there is none.
   */
  Decoder reversed() {
    return null;
  }

  /**
   * Puts the list in the order of the starts of the last schedule, forward or backward.
   *
   * @param list each task once, none before one it waits for: what starts at once may keep its
   *     order
   */
  abstract void listByStart(int[] list);

  /** The same in the order of finishes. */
  abstract void listByFinish(int[] list);

  /** Keeps the last forward schedule as the best so far. */
  abstract void keep();

  /**
   * Of a forward schedule that followed a backward one, the number of tasks that could not be moved
   * between the two. Fewer leave more room for an improvement.
   */
  abstract int unmoved();

  /** Latest start of each task when nothing is short, in any unit: small is urgent. */
  abstract long[] urgency();

  /** Predecessors of a task. */
  abstract int[] before(int task);

  abstract int[] after(int task);
}

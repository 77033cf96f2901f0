package cornerpost.schedule;

import java.util.Arrays;

/**
 * Sets of a crew's tasks that narrowed the window of another, written down one behind the other so
 * that the reason can be told later; those of a level go with it.
 *
 * <p>A set is known by the position where it begins. Its tasks stand the latest first, of their
 * earliest starts, or of their latest finishes with time reversed; of them the first so many make
 * the end after which the other task must come.
 */
final class CrewSets {
  private static final int HEAD = 5; // group, direction, limit, tasks, tasks that make the end

  private long[] numbers = new long[4096];
  private int used;

  /** Where the next set begins. */
  int used() {
    return used;
  }

  /** Begins a set and returns its position; tasks follow, then {@link #close}. */
  int begin(int group, boolean back, long limit) {
    makeRoom(HEAD);
    int at = used;
    numbers[at] = group;
    numbers[at + 1] = back ? 1 : 0;
    numbers[at + 2] = limit;
    used += HEAD;
    return at;
  }

  void add(int task) {
    makeRoom(1);
    numbers[used++] = task;
  }

  void close(int at, int tasks, int making) {
    numbers[at + 3] = tasks;
    numbers[at + 4] = making;
  }

  /** Takes back this set and all after it. */
  void backTo(int at) {
    used = at;
  }

  private void makeRoom(int more) {
    if (used + more > numbers.length) numbers = Arrays.copyOf(numbers, 2 * numbers.length);
  }

  int group(int at) {
    return (int) numbers[at];
  }

  /** Whether time was reversed. */
  boolean back(int at) {
    return numbers[at + 1] != 0;
  }

  /** Number of the crew's time by which all of an edge's tasks finish. */
  long limit(int at) {
    return numbers[at + 2];
  }

  int tasks(int at) {
    return (int) numbers[at + 3];
  }

  /** How many of the tasks, from the first on, make the end. */
  int making(int at) {
    return (int) numbers[at + 4];
  }

  int task(int at, int k) {
    return (int) numbers[at + HEAD + k];
  }
}

package cornerpost.schedule;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The orders of every two tasks with a crew in common, numbered as literals: 2v and 2v + 1 are each
 * the opposite of the other.
 *
 * <p>Of two tasks that cannot run at once, one literal says that the first goes first, its opposite
 * that the second does. Of two that can, the opposite only says that it is not so.
 */
final class OrderLiterals {
  private static final int MOST_ORDERS = 1_000_000; // that could be asked about

  /** How many there are. */
  final int count;

  final int[] first; // task that goes first by the literal; -1 where it only says what is not so
  final int[] second;
  private final int n;
  private final int[] literal; // of task i before task j, at i * n + j; -1 if there is none

  OrderLiterals(TimeWindows windows) {
    n = windows.g.size;
    literal = new int[n * n];
    Arrays.fill(literal, -1);
    int used = 0;
    for (int i = 0; i < n; i++) {
      int[] rivals = windows.rivals(i);
      for (int j : windows.sharing(i)) {
        if (literal[i * n + j] >= 0) continue;
        literal[i * n + j] = used;
        if (Arrays.stream(rivals).anyMatch(r -> r == j)) {
          literal[j * n + i] = used + 1;
        }
        used += 2;
      }
    }
    count = used;
    first = new int[count];
    second = new int[count];
    Arrays.fill(first, -1);
    Arrays.fill(second, -1);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (literal[i * n + j] >= 0) {
          first[literal[i * n + j]] = i;
          second[literal[i * n + j]] = j;
        }
      }
    }
  }

  /** Whether the tables of all orders stay small enough. */
  static boolean suits(TimeWindows windows) {
    return windows.g.size <= TimeWindows.MOST_TASKS
        && windows.groups().stream().mapToLong(k -> (long) k.all.length * k.all.length).sum()
            <= MOST_ORDERS
        && windows.wholeCrews();
  }

  /** That the first task finishes before the second starts; -1 if they share no crew. */
  int of(int i, int j) {
    return literal[i * n + j];
  }

  /** Of every two tasks that cannot run at once the literal that the first goes first. */
  int[] pairs() {
    return IntStream.iterate(0, l -> l < count, l -> l + 2)
        .filter(l -> first[l + 1] >= 0)
        .toArray();
  }
}

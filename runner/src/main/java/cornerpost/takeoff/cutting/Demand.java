package cornerpost.takeoff.cutting;

import java.util.Arrays;

/**
 * Pieces wanted, longest first: {@code sizes[i]} with its kerf, {@code counts[i]} times.
 *
 * @param room of a bar, by {@link Stock#room}
 */
record Demand(int[] sizes, int[] counts, int room) {
  /** The same lengths, other counts. */
  Demand left(int[] others) {
    return new Demand(sizes, others, room);
  }

  int types() {
    return sizes.length;
  }

  int pieces() {
    return Arrays.stream(counts).sum();
  }

  boolean isEmpty() {
    return pieces() == 0;
  }

  long total() {
    long sum = 0;
    for (int i = 0; i < sizes.length; i++) sum += (long) sizes[i] * counts[i];
    return sum;
  }
}

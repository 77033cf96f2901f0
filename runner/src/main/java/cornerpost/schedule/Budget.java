package cornerpost.schedule;

import static java.util.Objects.requireNonNull;

import java.util.function.BooleanSupplier;

/**
 * How long the sequencer may look for a better order of work.
 *
 * @param schedules how many complete schedules it may build, 1 or more. With a schedule count alone
 *     the result depends only on the network and the seed
 * @param patience how many schedules it may build on without one that ends sooner, 1 or more
 * @param stop asked now and then; true ends the search. The engine has no clock of its own: a
 *     caller that wants a time limit passes it here, and gives up that two runs are the same
 */
public record Budget(long schedules, long patience, BooleanSupplier stop) {
  public Budget {
    requireNonNull(stop, "stop");
    if (schedules < 1 || patience < 1) {
      throw new IllegalArgumentException(
          "A budget needs at least 1 schedule, found " + Math.min(schedules, patience));
    }
  }

  public static Budget schedules(long count) {
    return new Budget(count, Long.MAX_VALUE, () -> false);
  }

  /** The same, given up after so many schedules without a better one. */
  public Budget withPatience(long fruitless) {
    return new Budget(schedules, fruitless, stop);
  }

  /** No count, only the condition. */
  public static Budget until(BooleanSupplier stop) {
    return new Budget(Long.MAX_VALUE, Long.MAX_VALUE, stop);
  }
}

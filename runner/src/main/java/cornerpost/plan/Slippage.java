package cornerpost.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * How much room the planned order of work leaves, crews keeping their order.
 *
 * @param tasks by id; those that have begun are left out
 * @param nearPaths the longest path from delivery to move-in, then those through the tasks with
 *     least float that the paths before leave out; empty where one of the two is not in the plan
 */
public record Slippage(Map<String, Slip> tasks, List<NearPath> nearPaths) {
  /** Days late for which the plan says what they do. */
  public static final List<Integer> DELAYS = List.of(1, 5, 10);

  /** Nothing worked out. */
  public static final Slippage NONE = new Slippage(Map.of(), List.of());

  /**
   * What one task leaves.
   *
   * @param floatDays days of its own calendar by which it may slip before the planned finish moves
   * @param finishMoves calendar days by which the last day moves if it starts late by each of
   *     {@link #DELAYS}, in days of its own calendar
   */
  public record Slip(BigDecimal floatDays, List<Integer> finishMoves) {
    public Slip {
      finishMoves = List.copyOf(finishMoves);
    }
  }

  /**
   * A chain from delivery to move-in.
   *
   * @param ids from the one to the other
   * @param through the task that sets it apart from those before it
   * @param floatDays by how many days of that task's calendar it may slip before the finish moves
   */
  public record NearPath(List<String> ids, String through, BigDecimal floatDays) {
    public NearPath {
      ids = List.copyOf(ids);
    }
  }

  public Slippage {
    tasks = Map.copyOf(tasks);
    nearPaths = List.copyOf(nearPaths);
  }
}

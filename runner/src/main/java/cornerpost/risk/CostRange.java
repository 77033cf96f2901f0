package cornerpost.risk;

import java.util.Optional;

/**
 * An uncertain amount of money, tax and price rise included.
 *
 * @param task the task whose hours it pays: it then moves with that task's duration
 * @param byTime whether it grows with the time from start to finish
 */
public record CostRange(
    String id, String name, Range amount, Optional<String> task, boolean byTime) {}

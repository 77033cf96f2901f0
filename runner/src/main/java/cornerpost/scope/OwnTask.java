package cornerpost.scope;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * A task the owner adds.
 *
 * @param duration in {@code unit}; nothing for a milestone
 * @param calendar the name of its calendar; empty for the project's
 * @param demands how many of each crew, by crew name
 */
public record OwnTask(
    String id,
    String name,
    BigDecimal duration,
    DurationUnit unit,
    Optional<BigDecimal> optimistic,
    Optional<BigDecimal> pessimistic,
    Optional<String> calendar,
    Optional<LocalDate> notBefore,
    Optional<LocalDate> deadline,
    Map<String, Integer> demands,
    String cell) {
  public OwnTask {
    demands = Map.copyOf(demands);
  }
}

package cornerpost.work;

import static java.util.Objects.requireNonNull;

import cornerpost.scope.Party;
import cornerpost.scope.Stage;
import cornerpost.scope.Trade;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A task of the plan, before it has dates.
 *
 * @param id stable; for generated tasks that of {@link cornerpost.takeoff.BuildTask} or {@code
 *     order/} and a supplier group
 * @param minutes duration: working minutes of its calendar, or elapsed minutes where {@code
 *     elapsed}
 * @param calendar name of its calendar
 * @param demands how many of each crew it needs, by crew name
 * @param optimisticMinutes shortest likely duration, {@code pessimisticMinutes} longest; equal to
 *     {@code minutes} where nothing is known
 * @param hours hours of work in it, of all hands
 * @param weather whether bad weather stops it
 * @param why in words: hours, people, or the source of the wait
 * @param costLines ids of the cost lines that fall due with it
 */
public record WorkTask(
    String id,
    String name,
    Stage stage,
    Kind kind,
    Optional<Trade> trade,
    Optional<Party> party,
    long minutes,
    boolean elapsed,
    String calendar,
    Map<String, Integer> demands,
    Optional<LocalDate> notBefore,
    Optional<LocalDate> deadline,
    long optimisticMinutes,
    long pessimisticMinutes,
    double hours,
    boolean weather,
    String why,
    List<String> costLines) {

  /** What kind of task it is. */
  public enum Kind {
    WORK,
    /** Ordering, permit, curing, drying: time passes. */
    WAIT,
    /** Ordered and delivered: an elapsed lead time. */
    ORDER,
    /** A hold point. */
    INSPECTION,
    MILESTONE,
    /** The owner's. */
    OWN
  }

  public WorkTask {
    requireNonNull(id, "id");
    requireNonNull(calendar, "calendar");
    if (minutes < 0) throw new IllegalArgumentException(id + " has a duration below nothing");
    demands = Map.copyOf(demands);
    costLines = List.copyOf(costLines);
  }
}

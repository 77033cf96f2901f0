package cornerpost.schedule;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * People, or a machine, of which only so many are there.
 *
 * @param available how many at once, 0 or more
 * @param calendar when they work; a task in working minutes that needs them goes on only in time it
 *     shares with them. Empty: whenever the task does
 */
public record Crew(String name, int available, Optional<WorkCalendar> calendar) {
  public Crew {
    requireNonNull(name, "name");
    requireNonNull(calendar, "calendar");
  }

  public static Crew of(String name, int available) {
    return new Crew(name, available, Optional.empty());
  }
}

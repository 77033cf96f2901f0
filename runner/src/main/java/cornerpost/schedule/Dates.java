package cornerpost.schedule;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * When a task goes on.
 *
 * @param start the moment it begins
 * @param finish the moment it ends; not before the start
 * @param firstDay the day people say it starts on, by {@link ShownDays}
 * @param lastDay the last day on which something is done; for a milestone its one day
 */
public record Dates(
    LocalDateTime start, LocalDateTime finish, LocalDate firstDay, LocalDate lastDay) {}

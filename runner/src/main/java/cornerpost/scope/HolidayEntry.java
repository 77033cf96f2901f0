package cornerpost.scope;

import java.time.LocalDate;

/** A day on which calendars that keep holidays do not work. */
public record HolidayEntry(LocalDate date, String name, String cell) {}

package cornerpost.scope;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The working weeks that are there without being entered; a row of Calendars overrides one. */
public final class SuppliedCalendars {
  public static final String WEEKDAYS = "Weekdays";
  public static final String SIX_DAYS = "Six days";
  public static final String EVERY_DAY = "Every day";
  public static final String WEEKENDS = "Weekends";
  public static final String ROUND_THE_CLOCK = "Round the clock";

  /** All of them; a working day has eight hours. */
  public static final List<CalendarEntry> ALL =
      List.of(
          eightHours(WEEKDAYS, 0, 5),
          eightHours(SIX_DAYS, 0, 6),
          eightHours(EVERY_DAY, 0, 7),
          eightHours(WEEKENDS, 5, 7),
          new CalendarEntry(
              ROUND_THE_CLOCK, Collections.nCopies(7, BigDecimal.valueOf(24)), false, ""));

  private SuppliedCalendars() {}

  private static CalendarEntry eightHours(String name, int from, int to) {
    var hours = new ArrayList<BigDecimal>();
    for (int d = 0; d < 7; d++) hours.add(BigDecimal.valueOf(d >= from && d < to ? 8 : 0));
    return new CalendarEntry(name, hours, true, "");
  }

  /** The owner's calendars, and the supplied ones that the owner did not override. */
  public static List<CalendarEntry> with(List<CalendarEntry> own) {
    var all = new ArrayList<CalendarEntry>();
    for (var s : ALL) {
      if (own.stream().noneMatch(o -> o.name().equalsIgnoreCase(s.name()))) all.add(s);
    }
    all.addAll(own);
    return List.copyOf(all);
  }

  /** A calendar by its name, whatever its capitals. */
  public static Optional<CalendarEntry> find(List<CalendarEntry> own, String name) {
    return with(own).stream().filter(c -> c.name().equalsIgnoreCase(name.strip())).findFirst();
  }

  /** Hours of one {@code d} of a calendar: its longest working day. */
  public static BigDecimal hoursOfADay(CalendarEntry calendar) {
    return calendar.hours().stream().max(BigDecimal::compareTo).orElse(BigDecimal.ZERO);
  }
}

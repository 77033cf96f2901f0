package cornerpost.scope;

import java.math.BigDecimal;
import java.util.List;

/**
 * A working week.
 *
 * @param hours from Monday to Sunday, each 0 to 24
 */
public record CalendarEntry(
    String name, List<BigDecimal> hours, boolean keepsHolidays, String cell) {
  public CalendarEntry {
    hours = List.copyOf(hours);
    if (hours.size() != 7) throw new IllegalArgumentException("A week has seven days");
  }
}

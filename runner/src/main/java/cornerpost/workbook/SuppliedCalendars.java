package cornerpost.workbook;

import cornerpost.scope.CalendarEntry;
import cornerpost.scope.OwnerSheet;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;

/** The working weeks every workbook has, eight hours a working day, holidays kept. */
final class SuppliedCalendars {
  private static final BigDecimal EIGHT = BigDecimal.valueOf(8);

  static final List<CalendarEntry> ALL =
      List.of(
          week("Weekdays", 1, 5),
          week("Six days", 1, 6),
          week("Every day", 1, 7),
          week("Weekends", 6, 7));

  private SuppliedCalendars() {}

  private static CalendarEntry week(String name, int first, int last) {
    var hours =
        IntStream.rangeClosed(1, 7)
            .mapToObj(d -> d >= first && d <= last ? EIGHT : BigDecimal.ZERO)
            .toList();
    return new CalendarEntry(name, hours, true, OwnerSheet.CALENDARS.title());
  }
}

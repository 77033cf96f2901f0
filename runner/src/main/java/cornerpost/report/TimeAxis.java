package cornerpost.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;

/**
 * Days across a chart.
 *
 * @param from the first day; {@code to} the first one past the chart
 * @param left where the first day begins; {@code width} of all
 */
record TimeAxis(LocalDate from, LocalDate to, double left, double width) {
  static TimeAxis of(LocalDate first, LocalDate last, double left, double width) {
    var from = first.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    return new TimeAxis(from, last.plusDays(2), left, width);
  }

  double x(LocalDate day) {
    return x(day.atStartOfDay());
  }

  double x(LocalDateTime moment) {
    var begin = from.atStartOfDay();
    double minutes = ChronoUnit.MINUTES.between(begin, moment);
    double all = ChronoUnit.MINUTES.between(begin, to.atStartOfDay());
    return left + width * Math.min(1, Math.max(0, minutes / all));
  }

  /** Lines at the beginning of months, with their names; of every third if they are many. */
  void draw(Svg svg, double top, double bottom) {
    long months = ChronoUnit.MONTHS.between(from, to);
    int step = months <= 14 ? 1 : months <= 40 ? 3 : 12;
    var m = from.withDayOfMonth(1);
    while (m.isBefore(to)) {
      if (step == 1 || (m.getMonthValue() - 1) % step == 0) {
        double x = x(m);
        if (!m.isBefore(from)) svg.line("grid", x, top, x, bottom);
        double next = x(m.plusMonths(step));
        var name = Words.month(java.time.YearMonth.from(m));
        if (next - x > 52) svg.label("axis", x + 4, top + 11, "start", name);
        else if (next - x > 24) svg.label("axis", x + 3, top + 11, "start", name.substring(0, 3));
      }
      m = m.plusMonths(1);
    }
    svg.line("axis-line", left, top + 16, left + width, top + 16);
  }

  void status(Svg svg, LocalDate status, double top, double bottom) {
    if (status.isBefore(from) || status.isAfter(to)) return;
    double x = x(status);
    svg.line("status-line", x, top, x, bottom);
  }
}

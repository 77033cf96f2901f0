package cornerpost.finance;

import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.scope.DayCount;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Simple interest by day count, charged at the end of each calendar month and rounded then, once,
 * half up.
 *
 * <p>A sum drawn on a day bears interest from that day; one drawn on the first bears the whole
 * month. Actual counts take the days of the calendar; 30/360 takes every month as thirty days (bond
 * basis: a 31st counts as the 30th).
 */
public final class Interest {
  private final BigDecimal rate;
  private final DayCount dayCount;
  private final int decimals;

  /**
   * @param rate for a year, as a share: 0.08
   * @param decimals of the currency's minor unit
   */
  public Interest(BigDecimal rate, DayCount dayCount, int decimals) {
    this.rate = rate;
    this.dayCount = dayCount;
    this.decimals = decimals;
  }

  /** Days that a year of the interest has. */
  public static int yearDays(DayCount count) {
    return count == DayCount.ACTUAL_365 ? 365 : 360;
  }

  /** What was drawn, and when. */
  public record Drawn(LocalDate date, BigDecimal amount) {}

  /**
   * A month of interest.
   *
   * @param balance owed at its end, before this month's interest
   */
  public record Month(YearMonth month, BigDecimal balance, BigDecimal charged) {}

  /** What becomes of a month's interest. */
  public enum Treatment {
    /** The borrower pays it at the end of the month. */
    PAID,
    /** It is added to what is owed, and bears interest from then on. */
    ADDED
  }

  /** Days from one day to another, the second not counted, as the day count counts them. */
  public long days(LocalDate from, LocalDate to) {
    if (dayCount != DayCount.THIRTY_360) return ChronoUnit.DAYS.between(from, to);
    int first = Math.min(30, from.getDayOfMonth());
    int second = to.getDayOfMonth() == 31 && first == 30 ? 30 : to.getDayOfMonth();
    return 360L * (to.getYear() - from.getYear())
        + 30L * (to.getMonthValue() - from.getMonthValue())
        + second
        - first;
  }

  /** For a balance that stands for so many days of the day count. */
  public BigDecimal of(BigDecimal balance, long days) {
    return Money.halfUp(
        balance
            .multiply(rate)
            .multiply(BigDecimal.valueOf(days))
            .divide(BigDecimal.valueOf(yearDays(dayCount)), Ratio.PRECISION),
        decimals);
  }

  private BigDecimal exact(BigDecimal balance, LocalDate from, LocalDate to) {
    if (!to.isAfter(from)) return BigDecimal.ZERO;
    return balance
        .multiply(rate)
        .multiply(BigDecimal.valueOf(days(from, to)))
        .divide(BigDecimal.valueOf(yearDays(dayCount)), Ratio.PRECISION);
  }

  /** For a balance that stands from one day to another. */
  public BigDecimal of(BigDecimal balance, LocalDate from, LocalDate to) {
    return Money.halfUp(exact(balance, from, to), decimals);
  }

  /**
   * For one month.
   *
   * @param until the day on which the loan ends; no interest from then on
   */
  public BigDecimal in(YearMonth month, List<Drawn> drawn, LocalDate until) {
    var first = month.atDay(1);
    var next = month.plusMonths(1).atDay(1);
    var end = next.isBefore(until) ? next : until;
    var sum = BigDecimal.ZERO;
    for (var d : drawn) {
      sum = sum.add(exact(d.amount(), d.date().isAfter(first) ? d.date() : first, end));
    }
    return Money.halfUp(sum, decimals);
  }

  /** Month by month, from the first draw to the end of the loan; none without a draw. */
  public List<Month> months(List<Drawn> drawn, LocalDate until, Treatment treatment) {
    var months = new ArrayList<Month>();
    var owed = new ArrayList<>(drawn);
    var first = drawn.stream().map(Drawn::date).min(LocalDate::compareTo);
    if (first.isEmpty()) return months;
    for (var m = YearMonth.from(first.get()); m.atDay(1).isBefore(until); m = m.plusMonths(1)) {
      var next = m.plusMonths(1).atDay(1);
      var charged = in(m, owed, until);
      var balance =
          owed.stream()
              .filter(d -> d.date().isBefore(next))
              .map(Drawn::amount)
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      months.add(new Month(m, balance, charged));
      if (treatment == Treatment.ADDED) owed.add(new Drawn(next, charged));
    }
    return months;
  }
}

package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.scope.DayCount;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InterestTest {
  private static final BigDecimal RATE = new BigDecimal("0.0825");

  // Worked example: 8.25 % a year, 30/360, draws at the start of months 1 to 7; each month's
  // interest rounded half up to the cent. Balance x rate / 12 by hand for every row.
  private static final List<String> DRAWS =
      List.of("30000", "36000", "42000", "40000", "36000", "30000", "19900");
  private static final List<String> PAID =
      List.of("206.25", "453.75", "742.50", "1017.50", "1265.00", "1471.25", "1608.06");
  private static final List<String> ADDED =
      List.of("206.25", "455.17", "747.05", "1027.18", "1281.75", "1496.81", "1643.91");
  private static final List<String> ADDED_BALANCE =
      List.of(
          "30000.00", "66206.25", "108661.42", "149408.47", "186435.65", "217717.40", "239114.21");

  private static List<Interest.Drawn> drawn() {
    var drawn = new ArrayList<Interest.Drawn>();
    for (int i = 0; i < DRAWS.size(); i++) {
      drawn.add(
          new Interest.Drawn(LocalDate.of(2027, 1, 1).plusMonths(i), new BigDecimal(DRAWS.get(i))));
    }
    return drawn;
  }

  private static Interest interest() {
    return new Interest(RATE, DayCount.THIRTY_360, 2);
  }

  private static List<String> charged(List<Interest.Month> months) {
    return months.stream().map(m -> m.charged().toPlainString()).toList();
  }

  @Test
  void interest_paid_each_month_is_that_of_the_worked_example() {
    var months = interest().months(drawn(), LocalDate.of(2027, 8, 1), Interest.Treatment.PAID);
    assertThat(charged(months)).isEqualTo(PAID);
    assertThat(sum(months)).isEqualByComparingTo("6764.31");
    assertThat(months.get(6).balance()).isEqualByComparingTo("233900");
  }

  @Test
  void interest_added_to_the_loan_is_that_of_the_worked_example() {
    var months = interest().months(drawn(), LocalDate.of(2027, 8, 1), Interest.Treatment.ADDED);
    assertThat(charged(months)).isEqualTo(ADDED);
    assertThat(months.stream().map(m -> m.balance().setScale(2).toPlainString()).toList())
        .isEqualTo(ADDED_BALANCE);
    assertThat(sum(months)).isEqualByComparingTo("6858.12");
    assertThat(months.get(6).balance().add(months.get(6).charged()))
        .isEqualByComparingTo("240758.12");
  }

  @Test
  void two_months_more_at_the_end_cost_what_the_worked_example_says() {
    var late = interest().months(drawn(), LocalDate.of(2027, 10, 1), Interest.Treatment.PAID);
    assertThat(sum(late).subtract(new BigDecimal("6764.31"))).isEqualByComparingTo("3216.12");
  }

  /**
   * The bounds that the month-by-month sum lies between: half of the loan drawn for all seven
   * months, 233,900 x 8.25 % x 7/12 x 50 % = 5,628.22 (a rule of thumb on public pages of lenders),
   * and all of it, 11,256.44. A front-loaded curve comes to more than the rule: here by a fifth.
   */
  @Test
  void rule_of_thumb_is_too_low_for_a_front_loaded_curve_and_all_drawn_is_the_most() {
    var loan = new BigDecimal("233900");
    var whole = interest().of(loan, LocalDate.of(2027, 1, 1), LocalDate.of(2027, 8, 1));
    assertThat(whole).isEqualByComparingTo("11256.44");
    var half = new BigDecimal("0.5").multiply(loan);
    assertThat(interest().of(half, LocalDate.of(2027, 1, 1), LocalDate.of(2027, 8, 1)))
        .isEqualByComparingTo("5628.22");
    var planned =
        sum(interest().months(drawn(), LocalDate.of(2027, 8, 1), Interest.Treatment.PAID));
    assertThat(planned).isBetween(new BigDecimal("5628.22"), whole);
  }

  // On a balance that stands still the months add up to balance x rate x days / year, each month's
  // half a cent of rounding aside; added to the loan at 30/360 it is balance x (1 + rate / 12)^n.
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void interest_on_a_constant_balance_has_a_closed_form(long seed) {
    var random = new SplittableRandom(seed);
    for (int round = 0; round < 20; round++) {
      var rate = BigDecimal.valueOf(random.nextInt(1, 2000), 4);
      var count = DayCount.values()[random.nextInt(3)];
      var balance = BigDecimal.valueOf(random.nextLong(1, 50_000_000), 2);
      var from = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(0, 500));
      var to = from.plusDays(random.nextInt(1, 700));
      var interest = new Interest(rate, count, 2);
      var drawn = List.of(new Interest.Drawn(from, balance));
      var months = interest.months(drawn, to, Interest.Treatment.PAID);
      double days =
          switch (count) {
            case THIRTY_360 -> months30(from, to);
            default -> from.until(to, ChronoUnit.DAYS);
          };
      double year = count == DayCount.ACTUAL_365 ? 365 : 360;
      double closed = balance.doubleValue() * rate.doubleValue() * days / year;
      assertThat(sum(months).doubleValue()).isCloseTo(closed, within(0.005 * months.size() + 1e-6));

      int n = random.nextInt(1, 30);
      var first = LocalDate.of(2027, 1, 1);
      var added =
          new Interest(rate, DayCount.THIRTY_360, 2)
              .months(
                  List.of(new Interest.Drawn(first, balance)),
                  first.plusMonths(n),
                  Interest.Treatment.ADDED);
      double grown = balance.doubleValue() * Math.pow(1 + rate.doubleValue() / 12, n);
      // a rounding of half a cent grows with the rest
      double slack = 0.005 * n * Math.pow(1 + rate.doubleValue() / 12, n) + 1e-6;
      assertThat(balance.add(sum(added)).doubleValue()).isCloseTo(grown, within(slack));
    }
  }

  /** Days of thirty to a month, month by month as interest is charged: each month's own count. */
  private static double months30(LocalDate from, LocalDate to) {
    double days = 0;
    for (var day = from; day.isBefore(to); ) {
      var next = day.withDayOfMonth(1).plusMonths(1);
      var end = next.isBefore(to) ? next : to;
      int first = Math.min(30, day.getDayOfMonth());
      int second = end.getDayOfMonth();
      if (second == 31 && first == 30) second = 30;
      int months = end.getMonthValue() - day.getMonthValue() + 12 * (end.getYear() - day.getYear());
      days += 30.0 * months + second - first;
      day = end;
    }
    return days;
  }

  // 100,000 at 8 % for a month of 31 days: 100000 x 0.08 x 31 / 360, x 31 / 365, x 30 / 360.
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"ACTUAL_360, 688.89", "ACTUAL_365, 679.45", "THIRTY_360, 666.67"})
  void a_month_of_thirty_one_days_by_each_day_count(DayCount count, BigDecimal expected) {
    var interest = new Interest(new BigDecimal("0.08"), count, 2);
    assertThat(
            interest.of(
                new BigDecimal("100000"), LocalDate.of(2027, 1, 1), LocalDate.of(2027, 2, 1)))
        .isEqualByComparingTo(expected);
  }

  // 30/360 bond basis (ISDA 2006 definitions, section 4.16(f)), from memory; the days by its
  // formula.
  @ParameterizedTest(name = "{0} to {1}: {2}")
  @CsvSource({
    "2027-01-15, 2027-02-01, 16",
    "2027-01-31, 2027-02-28, 28",
    "2027-01-30, 2027-03-31, 60",
    "2027-01-29, 2027-03-31, 62",
    "2027-02-28, 2027-03-31, 33",
    "2027-01-01, 2028-01-01, 360"
  })
  void thirty_days_a_month_by_the_bond_basis(LocalDate from, LocalDate to, long days) {
    assertThat(interest().days(from, to)).isEqualTo(days);
  }

  @Test
  void nothing_drawn_bears_nothing_and_the_day_of_repayment_is_not_charged() {
    var end = LocalDate.of(2027, 8, 1);
    assertThat(interest().months(List.of(), end, Interest.Treatment.PAID)).isEmpty();
    var oneDay = new Interest(new BigDecimal("0.365"), DayCount.ACTUAL_365, 2);
    var drawn = List.of(new Interest.Drawn(LocalDate.of(2027, 3, 10), new BigDecimal("1000")));
    assertThat(sum(oneDay.months(drawn, LocalDate.of(2027, 3, 11), Interest.Treatment.PAID)))
        .isEqualByComparingTo("1.00");
    assertThat(oneDay.months(drawn, LocalDate.of(2027, 3, 10), Interest.Treatment.PAID))
        .allSatisfy(m -> assertThat(m.charged()).isZero());
  }

  private static BigDecimal sum(List<Interest.Month> months) {
    return months.stream().map(Interest.Month::charged).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

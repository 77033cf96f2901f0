package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.scope.DayCount;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

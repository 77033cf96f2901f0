package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.UnitSystem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
  @ParameterizedTest(name = "{0} to {1} decimals is {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | 0 | 0",
        "-0.4 | 0 | 0",
        "999.5 | 0 | 1,000",
        "1234567.891 | 2 | 1,234,567.89",
        "-1234.5 | 0 | \u22121,235",
        "0.005 | 2 | 0.01"
      })
  void thousands_are_separated(BigDecimal value, int decimals, String words) {
    assertThat(Words.number(value, decimals)).isEqualTo(words);
  }

  @ParameterizedTest(name = "{0} is shown as {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "28.299264 | 28.3",
        "28.349264 | 28.35",
        "0.0012345 | 0.001235",
        "12345.678 | 12,346",
        "100 | 100"
      })
  void measured_numbers_keep_four_digits(BigDecimal value, String words) {
    assertThat(Words.number(value)).isEqualTo(words);
  }

  @Test
  void days_of_the_week_are_right() {
    // 2000-01-01 was a Saturday: the Gregorian calendar's cycle, ISO 8601
    assertThat(Words.day(LocalDate.of(2000, 1, 1))).isEqualTo("Sat 1 Jan 2000");
    assertThat(Words.day(LocalDate.of(2027, 4, 12))).isEqualTo("Mon 12 Apr 2027");
  }

  @ParameterizedTest(name = "{0} m is {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "12.192 | 40\u2032\u00a00\u2033",
        "2.4384 | 8\u2032\u00a00\u2033",
        "0.3048 | 1\u2032\u00a00\u2033",
        "0.1016 | 0\u2032\u00a04\u2033",
        "0.2921 | 0\u2032\u00a011 1/2\u2033",
        "0.304 | 0\u2032\u00a011 15/16\u2033"
      })
  void feet_and_inches_go_to_the_sixteenth(BigDecimal metres, String words) {
    assertThat(Words.length(metres, UnitSystem.US)).isEqualTo(words);
  }

  @Test
  void metres_go_to_the_millimetre() {
    assertThat(Words.length(new BigDecimal("12.1924"), UnitSystem.METRIC))
        .isEqualTo("12.192\u00a0m");
    assertThat(Words.size(new BigDecimal("1.2"), UnitSystem.METRIC)).isEqualTo("1200");
  }

  @Test
  void money_carries_its_code_and_one_day_is_not_days() {
    assertThat(Words.money(new BigDecimal("78400.49"), Currency.getInstance("USD")))
        .isEqualTo("USD\u00a078,400");
    assertThat(Words.days(new BigDecimal("1.00"))).isEqualTo("1\u00a0day");
    assertThat(Words.days(new BigDecimal("2.26"))).isEqualTo("2.3\u00a0days");
  }

  @Test
  void work_that_ends_at_midnight_was_done_the_day_before() {
    assertThat(Words.lastDay(LocalDateTime.of(2027, 5, 2, 0, 0)))
        .isEqualTo(LocalDate.of(2027, 5, 1));
    assertThat(Words.moment(0)).isEqualTo(LocalDateTime.of(1970, 1, 1, 0, 0));
  }
}

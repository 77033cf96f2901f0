package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a reserve carries the interest to come. */
class InterestReserveTest {
  // Worked example: 8.25 % a year, 30/360, 233,900 drawn at the start of months 1 to 7; balance x
  // rate / 12 by hand for every row, 6,764.31 in all. Two months more cost 3,216.12.
  private static final List<BigDecimal> INTEREST =
      Stream.of("206.25", "453.75", "742.50", "1017.50", "1265.00", "1471.25", "1608.06")
          .map(BigDecimal::new)
          .toList();
  private static final BigDecimal AFTERWARDS = new BigDecimal("1608.0625"); // 233,900 x 0.0825 / 12

  private static InterestReserve reserve(String budget, String charged, int from) {
    return InterestReserve.of(
        new BigDecimal(budget),
        new BigDecimal(charged),
        INTEREST.subList(from, 7),
        Collections.nCopies(7 - from, BigDecimal.ONE),
        AFTERWARDS,
        2);
  }

  // 3,685.00 are the first five months, 294.25 a fifth of the sixth; 1,402.50 the first three.
  @ParameterizedTest(name = "{0} less {1} from month {2} on carries {3} months, {4} is missing")
  @CsvSource({
    "6764.31, 0.00, 0, 7, 0.00",
    "9980.43, 0.00, 0, 9, 0.00",
    "3979.25, 0.00, 0, 5.2, 2785.06",
    "6764.31, 1402.50, 3, 4, 0.00",
    "1402.50, 1402.50, 3, 0, 5361.81",
    "1000.00, 1402.50, 3, 0, 5361.81"
  })
  void months_are_those_whose_interest_the_reserve_pays(
      String budget, String charged, int from, double months, BigDecimal beyond) {
    var r = reserve(budget, charged, from);
    assertThat(r.months().orElseThrow().doubleValue()).isCloseTo(months, within(1e-4));
    assertThat(r.beyond()).isEqualByComparingTo(beyond);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"0.00", "500.00"})
  void without_interest_to_come_no_number_of_months_is_said(String budget) {
    var r =
        InterestReserve.of(
            new BigDecimal(budget),
            BigDecimal.ZERO,
            List.of(BigDecimal.ZERO),
            List.of(BigDecimal.ONE),
            BigDecimal.ZERO,
            2);
    assertThat(r.months()).isEmpty();
    assertThat(r.left()).isEqualByComparingTo(budget);
  }
}

package cornerpost.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTest {
  // International yard and pound agreement, 1959; US gallon 231 cubic inches. Exact.
  @ParameterizedTest(name = "1 {0} is {1} {2}")
  @CsvSource({
    "ft, 0.3048, m", "in, 25.4, mm", "mile, 1.609344, km", "sq ft, 0.09290304, m2",
    "cu yd, 27, cu ft", "lb, 0.45359237, kg", "gal, 3.785411784, l", "board ft, 144, in3"
  })
  void conversion_is_exact(String from, BigDecimal expected, String to) {
    var cubicInch = new Unit("in3", Dimension.VOLUME, Ratio.of("0.000016387064"));
    var target = to.equals("in3") ? cubicInch : Unit.get(to);
    var one = Unit.get(from).toBase().applyTo(BigDecimal.ONE);
    assertThat(target.toBase().inverse().applyTo(one)).isEqualByComparingTo(expected);
  }

  // 1 psf = 47.880 26 Pa and 1 kPa = 20.885 43 psf, derived from the pound and the foot.
  @Test
  void pounds_per_square_foot_agree_with_kilopascals() {
    var kpa = Unit.KPA.toBase().over(Unit.PSF.toBase()).applyTo(BigDecimal.ONE);
    assertThat(kpa.doubleValue())
        .isCloseTo(20.885434, org.assertj.core.api.Assertions.within(1e-6));
  }

  @ParameterizedTest(name = "{0} reads back")
  @CsvSource({"m2", "sq ft", "kg/m", "h/m2", "sheet", "USD/each"})
  void a_symbol_reads_back(String symbol) {
    if (symbol.startsWith("USD")) {
      assertThat(Unit.money("USD").per(Unit.EACH).symbol()).isEqualTo(symbol);
    } else {
      assertThat(Unit.get(symbol).symbol()).isEqualTo(symbol);
    }
  }

  @Test
  void an_unknown_unit_is_refused_with_the_known_ones() {
    assertThatThrownBy(() -> Unit.get("furlong"))
        .hasMessageContaining("furlong")
        .hasMessageContaining("sq ft");
  }

  // Half-up: 0.125 -> 0.13, 2.675 -> 2.68 (binary double gives 2.67), 1.005 -> 1.01, -0.125 ->
  // -0.13.
  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "0.125, 0.13",
    "0.135, 0.14",
    "2.675, 2.68",
    "1.005, 1.01",
    "-0.125, -0.13",
    "0.0049, 0.00",
    "0.00499999999999, 0.01"
  })
  void money_rounds_half_up_after_guard_digits(BigDecimal exact, BigDecimal expected) {
    var usd = Currency.getInstance("USD");
    assertThat(Money.rounded(exact, usd).amount()).isEqualByComparingTo(expected);
  }

  // ISO 4217 minor units: USD 2, JPY 0, KWD 3.
  @ParameterizedTest(name = "{0} has {1} decimals")
  @CsvSource({"USD, 1.23", "JPY, 1", "KWD, 1.235"})
  void money_rounds_to_the_currency(String code, BigDecimal expected) {
    var money = Money.rounded(new BigDecimal("1.2345"), Currency.getInstance(code));
    assertThat(money.amount()).isEqualByComparingTo(expected);
  }

  @Test
  void currencies_do_not_mix() {
    var usd = Money.zero(Currency.getInstance("USD"));
    var eur = Money.zero(Currency.getInstance("EUR"));
    assertThatThrownBy(() -> usd.plus(eur)).hasMessageContaining("USD/EUR");
  }
}

package cornerpost.measure;

import static cornerpost.measure.UnitSystem.METRIC;
import static cornerpost.measure.UnitSystem.US;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * By NIST Special Publication 811 (2008), B.7: t in °C is (t in °F - 32) / 1.8. The fixed points
 * are facts of physics: water freezes at 0 °C or 32 °F, boils at 100 °C or 212 °F, and at -40 both
 * scales meet.
 */
class TemperatureTest {
  @ParameterizedTest(name = "{0} °C is {1} °F")
  @CsvSource({"0, 32", "100, 212", "-40, -40", "-15, 5", "20, 68"})
  void a_temperature_reads_on_both_scales(String celsius, String fahrenheit) {
    var c = new BigDecimal(celsius);
    var f = new BigDecimal(fahrenheit);
    assertThat(Temperature.shown(c, US)).isEqualByComparingTo(f);
    assertThat(Temperature.celsius(f, US)).isEqualByComparingTo(c);
    assertThat(Temperature.shown(c, METRIC)).isEqualByComparingTo(c);
    assertThat(Temperature.celsius(c, METRIC)).isEqualByComparingTo(c);
  }
}

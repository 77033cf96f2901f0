package cornerpost.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DewPointTest {
  // Dew points computed from ISO 13788 annex E (inverse), two decimals.
  @ParameterizedTest(name = "{0} C at {1}: {2} C")
  @CsvSource({
    "20, 0.5, 9.27",
    "18, 0.3, 0.19",
    "21, 0.65, 14.17",
    "22, 0.8, 18.39",
    "24, 0.4, 9.58"
  })
  void agrees_with_the_standard(double temperature, double humidity, double expected) {
    assertThat(SteelAndMoisture.dewPoint(temperature, humidity)).isCloseTo(expected, within(0.006));
  }
}

package cornerpost.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units and lengths as a reader of the other system expects them. */
class ShownUnitsTest {
  @ParameterizedTest(name = "{0} for a reader of {1} units: {2}")
  @CsvSource({
    "m, US, ft",
    "mm, US, in",
    "m2/l, US, sq ft/gal",
    "kg/m3, US, lb/cu ft",
    "m3, US, cu yd",
    "kPa, US, psf",
    "h, US, h",
    "sheet, US, sheet",
    "sq ft, US, sq ft",
    "in, METRIC, mm",
    "sq ft/gal, METRIC, m2/l",
    "m, METRIC, m",
  })
  void a_unit_is_that_of_the_reader(String given, UnitSystem reader, String shown) {
    assertThat(reader.shown(Unit.get(given)).symbol()).isEqualTo(shown);
  }

  // By hand, in sixteenths: 44.475066 ft = 533.700787 in = 8539.21 sixteenths = 44 ft 5 11/16 in
  // and a fifth of a sixteenth; 2438 mm = 95.984 in = 1535.75 sixteenths.
  @ParameterizedTest(name = "{0} m {1}: {2}")
  @CsvSource({
    "13.556, DOWN, 44′ 5 11/16″",
    "13.556, UP, 44′ 5 3/4″",
    "2.438, DOWN, 7′ 11 15/16″",
    "2.438, UP, 8′ 0″",
    "0.3048, UP, 1′ 0″",
    "0.3048, DOWN, 1′ 0″",
  })
  void a_length_is_brought_to_a_mark_of_the_tape(
      BigDecimal metres, RoundingMode mode, String said) {
    assertThat(Spoken.feetAndInches(Spoken.onTape(metres, UnitSystem.US, mode)))
        .isEqualTo(said.replace(' ', '\u00a0').replaceAll("\u00a0(\\d+/)", " $1"));
  }

  @ParameterizedTest(name = "{0} m {1}: {2} m")
  @CsvSource({"2.4384, DOWN, 2.438", "2.4384, UP, 2.439", "2.438, UP, 2.438"})
  void a_metric_tape_has_millimetres(BigDecimal metres, RoundingMode mode, BigDecimal marked) {
    assertThat(Spoken.onTape(metres, UnitSystem.METRIC, mode)).isEqualByComparingTo(marked);
  }

  // By hand: 18 in below nothing is one sign and a length, not a sign at each of its parts.
  @ParameterizedTest(name = "{0} m: {1}")
  @CsvSource({"-0.4572, −1′\u00a06″", "0.4572, 1′\u00a06″", "-0.00001, 0′\u00a00″"})
  void a_length_below_nothing_has_one_sign(BigDecimal metres, String said) {
    assertThat(Spoken.feetAndInches(metres)).isEqualTo(said);
  }
}

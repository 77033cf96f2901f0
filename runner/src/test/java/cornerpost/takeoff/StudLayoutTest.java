package cornerpost.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.Unit;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StudLayoutTest {
  // By hand from the rule of carpentry estimating, studs = ceil(L / s) + 1:
  // 12.0/0.4 = 30 + 1; 12.0/0.6 = 20 + 1; 39.37 ft / 16 in = ceil(29.53) + 1; / 24 in = ceil(19.69)
  // + 1; 2.30/0.4 = ceil(5.75) + 1; 2.30/0.6 = ceil(3.83) + 1; joists of a 4.0 m deck at 0.4 m: 11.
  @ParameterizedTest(name = "{0} m at {1} {2}: {3} studs")
  @CsvSource({
    "12.0, 400, mm, 31",
    "12.0, 600, mm, 21",
    "12.0, 16, in, 31",
    "12.0, 24, in, 21",
    "2.30, 400, mm, 7",
    "2.30, 600, mm, 5",
    "4.0, 400, mm, 11"
  })
  void studs_along_a_run(String run, String spacing, String unit, int expected) {
    var studs = StudLayout.studs(length(run, Unit.M), length(spacing, Unit.get(unit)));
    assertThat(studs.value()).isEqualByComparingTo(BigDecimal.valueOf(expected));
  }

  // 12.0 m at 400 mm: 30 bays, one row of noggings of 400 - 38 = 362 mm is 30 x 0.362 = 10.86 m.
  @ParameterizedTest
  @CsvSource({"12.0, 400, 30, 10.86"})
  void noggings_fill_the_bays(String run, String spacing, int pieces, double metres) {
    var s = length(spacing, Unit.MM);
    var bays = StudLayout.bays(length(run, Unit.M), s);
    assertThat(bays.value()).isEqualByComparingTo(BigDecimal.valueOf(pieces));
    assertThat(bays.times(s.minus(length("38", Unit.MM))).asDouble(Unit.M)).isEqualTo(metres);
  }

  /** A plainer method: walk the grid stud by stud, in whole millimetres. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13})
  void displaced_studs_are_those_whose_place_the_opening_covers(long seed) {
    var random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      int spacing = 200 + random.nextInt(1000);
      int from = random.nextInt(9000);
      int width = 50 + random.nextInt(3000);
      int walked = 0;
      for (int at = 0; at <= from + width; at += spacing) if (at > from) walked++;
      var counted =
          StudLayout.displaced(
              length("" + from, Unit.MM),
              length("" + width, Unit.MM),
              length("" + spacing, Unit.MM));
      assertThat(counted.value())
          .as("from %d, width %d, spacing %d", from, width, spacing)
          .isEqualByComparingTo(BigDecimal.valueOf(walked));
    }
  }

  private static Figure length(String amount, Unit unit) {
    return Figure.constant(amount, unit);
  }
}

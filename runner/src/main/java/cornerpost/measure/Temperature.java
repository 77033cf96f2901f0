package cornerpost.measure;

import java.math.BigDecimal;

/**
 * Temperatures on the scale that a reader uses. Inside, all are degrees Celsius: a scale has a zero
 * of its own, so its numbers do not convert by a factor as a {@link Unit} does. One degree
 * Fahrenheit is 5/9 of a kelvin and 32 °F is 0 °C exactly: NIST Special Publication 811 (2008), B.7
 * and B.8.
 */
public final class Temperature {
  private static final BigDecimal DEGREES_OF_ONE_KELVIN = new BigDecimal("1.8");
  private static final BigDecimal FREEZING = new BigDecimal("32");

  private Temperature() {}

  /** The scale of a unit system: a mark beside a number, never multiplied with anything. */
  public static Unit scale(UnitSystem units) {
    return units.choose(Unit.CELSIUS, Unit.FAHRENHEIT);
  }

  /** What stands on the scale of a unit system, for so many degrees Celsius; exact. */
  public static BigDecimal shown(BigDecimal celsius, UnitSystem units) {
    return units == UnitSystem.METRIC
        ? celsius
        : celsius.multiply(DEGREES_OF_ONE_KELVIN).add(FREEZING);
  }

  /** Degrees Celsius of what stands on the scale of a unit system; 34 digits. */
  public static BigDecimal celsius(BigDecimal shown, UnitSystem units) {
    return units == UnitSystem.METRIC
        ? shown
        : shown.subtract(FREEZING).divide(DEGREES_OF_ONE_KELVIN, Ratio.PRECISION);
  }
}

package cornerpost.check;

import cornerpost.measure.Spoken;
import cornerpost.measure.Temperature;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in a message, in the units the reader entered. */
final class Say {
  private final UnitSystem units;

  Say(CheckInput in) {
    this.units = in.scope().units();
  }

  /** To a millimetre or a tenth of an inch. */
  String small(Figure length) {
    return number(length, units.choose(Unit.MM, Unit.IN), units == UnitSystem.METRIC ? 0 : 1);
  }

  /** To the centimetre, or in feet and inches. */
  String length(Figure length) {
    return units == UnitSystem.METRIC
        ? number(length, Unit.M, 2)
        : Spoken.feetAndInches(length.in(Unit.M));
  }

  String area(Figure area) {
    return number(area, units.choose(Unit.M2, Unit.SQ_FT), units == UnitSystem.METRIC ? 2 : 1);
  }

  String mass(Figure mass) {
    return number(mass, units.choose(Unit.KG, Unit.LB), 0);
  }

  String pressure(Figure pressure) {
    return number(pressure, units.choose(Unit.KPA, Unit.PSF), 0);
  }

  /** A temperature in whole degrees Celsius or Fahrenheit, with its sign. */
  String temperature(BigDecimal celsius, int decimals) {
    return Spoken.number(Temperature.shown(celsius, units), decimals)
        + " "
        + Temperature.scale(units);
  }

  static String share(Figure share) {
    return share.in(Unit.PERCENT).setScale(0, RoundingMode.HALF_UP).toPlainString() + " %";
  }

  private static String number(Figure figure, Unit unit, int decimals) {
    return Spoken.number(figure.in(unit), decimals) + " " + unit;
  }

  /** Whether a is less than b, by more than the last digit of a nanometre. */
  static boolean less(Figure a, Figure b) {
    return b.value().subtract(a.value()).compareTo(new BigDecimal("1e-9")) > 0;
  }
}

package cornerpost.workbook;

import cornerpost.measure.Spoken;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Lengths in messages, as a tape reads them: sixteenths of an inch or whole millimetres. What was
 * found is rounded up and what is allowed down, so that the two never read the same.
 *
 * @param units of the workbook
 */
record TapeWords(UnitSystem units) {
  /** Of what is entered in inches or millimetres. */
  String foundSmall(BigDecimal metres) {
    return small(metres, RoundingMode.UP);
  }

  String atMostSmall(BigDecimal metres) {
    return small(metres, RoundingMode.DOWN);
  }

  /** Of what is entered in feet or metres; feet with decimals beside, as they are typed. */
  String foundLarge(BigDecimal metres) {
    return large(metres, RoundingMode.UP);
  }

  String atMostLarge(BigDecimal metres) {
    return large(metres, RoundingMode.DOWN);
  }

  /** A length that is compared with nothing. */
  String large(BigDecimal metres) {
    return large(metres, RoundingMode.HALF_UP);
  }

  private String small(BigDecimal metres, RoundingMode mode) {
    var tape = Spoken.onTape(metres, units, mode);
    return units == UnitSystem.METRIC
        ? Plain.number(Unit.MM.toBase().inverse().applyTo(tape)) + " mm"
        : Spoken.inches(tape) + " in";
  }

  private String large(BigDecimal metres, RoundingMode mode) {
    var tape = Spoken.onTape(metres, units, mode);
    if (units == UnitSystem.METRIC) return Plain.number(tape) + " m";
    var feet = Unit.FT.toBase().inverse().applyTo(metres).setScale(9, RoundingMode.HALF_UP);
    return Spoken.feetAndInches(tape).replace('\u00a0', ' ')
        + " ("
        + feet.setScale(2, mode).stripTrailingZeros().toPlainString()
        + " ft)";
  }
}

package cornerpost.report;

import cornerpost.measure.Spoken;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Labelled;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.Locale;

/** Numbers, dates and money as people read them; English, the same on every machine. */
final class Words {
  private static final DateTimeFormatter DAY_ONLY =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter ISO =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);
  private static final LocalDateTime ORIGIN = LocalDate.EPOCH.atStartOfDay();

  private Words() {}

  /** {@code Mon 12 Apr 2027}. */
  static String day(LocalDate date) {
    return Spoken.day(date);
  }

  /** {@code 12 Apr 2027}. */
  static String dayOnly(LocalDate date) {
    return DAY_ONLY.format(date);
  }

  static String month(YearMonth month) {
    return Spoken.month(month);
  }

  /** ISO 8601, always with seconds. */
  static String iso(LocalDateTime moment) {
    return ISO.format(moment);
  }

  /** Minutes of the network's clock, which begins with 1970, as a moment. */
  static LocalDateTime moment(double minutes) {
    return ORIGIN.plusMinutes(Math.round(minutes));
  }

  /**
   * The day on which work that ends then is done: an end at midnight belongs to the day before it.
   */
  static LocalDate lastDay(LocalDateTime exclusiveFinish) {
    return exclusiveFinish.minusMinutes(1).toLocalDate();
  }

  static double minutes(LocalDateTime moment) {
    return java.time.Duration.between(ORIGIN, moment).toMinutes();
  }

  /** Thousands separated, with so many decimals. */
  static String number(BigDecimal value, int decimals) {
    return Spoken.number(value, decimals);
  }

  /** Four significant digits at least, no zeros at the end: enough to check by hand. */
  static String number(BigDecimal value) {
    if (value.signum() == 0) return "0";
    int whole = value.precision() - value.scale();
    int decimals = Math.max(0, Math.min(6, 4 - whole));
    var rounded = value.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return number(rounded, Math.max(0, rounded.scale()));
  }

  /** Without cents, for summaries: {@code USD 78,400}. */
  static String money(BigDecimal amount, Currency currency) {
    return Spoken.money(amount, currency);
  }

  /** A share as a whole percentage. */
  static String percent(double share) {
    return number(BigDecimal.valueOf(share * 100), 0) + "\u00a0%";
  }

  /** With at most one decimal. */
  static String tenths(BigDecimal value) {
    return Spoken.tenths(value);
  }

  /** Days with at most one decimal, and the word. */
  static String days(BigDecimal days) {
    return Spoken.days(days);
  }

  /**
   * A length as it stands on drawings: metres to the millimetre; or feet and inches to the
   * sixteenth.
   */
  static String length(BigDecimal metres, UnitSystem units) {
    if (units == UnitSystem.METRIC) return number(metres, 3) + "\u00a0m";
    return Spoken.feetAndInches(metres);
  }

  /** A short length, as openings are given: millimetres, or inches to the sixteenth. */
  static String size(BigDecimal metres, UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return metres
          .multiply(BigDecimal.valueOf(1000))
          .setScale(0, RoundingMode.HALF_UP)
          .toPlainString();
    }
    return Spoken.inches(metres);
  }

  static String sizeUnit(UnitSystem units) {
    return units == UnitSystem.METRIC ? "mm" : "in";
  }

  /** What a cell holds, as text for data: ISO dates, plain numbers, labels, yes and no. */
  static String entry(Object value) {
    if (value instanceof Figure f) return f.value().stripTrailingZeros().toPlainString();
    if (value instanceof Labelled l) return l.label();
    if (value instanceof Boolean b) return b ? "yes" : "no";
    if (value instanceof BigDecimal b) return b.stripTrailingZeros().toPlainString();
    return value.toString();
  }

  /** With a full stop, unless it ends in a sign already. */
  static String ended(String text) {
    var t = text.strip();
    return t.isEmpty() || ".!?…".indexOf(t.charAt(t.length() - 1)) >= 0 ? t : t + ".";
  }

  /** A unit as people write it: square and cubic metres with their raised figures. */
  static String unit(Unit unit) {
    return unit.symbol().replace("m2", "m\u00b2").replace("m3", "m\u00b3");
  }

  /** A measured number with its unit. */
  static String measured(BigDecimal value, Unit unit) {
    return (number(value) + "\u00a0" + unit(unit)).strip();
  }

  /** First letter large. */
  static String sentence(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}

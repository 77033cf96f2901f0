package cornerpost.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/**
 * Days, numbers, money and lengths as people say and draw them; English, the same on every machine.
 * Data keeps ISO 8601 and plain numbers.
 */
public final class Spoken {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);
  private static final long SIXTEENTHS_A_FOOT = 12 * 16;
  private static final BigDecimal SIXTEEN = new BigDecimal(16);

  private Spoken() {}

  /** {@code Mon 12 Apr 2027}: the month in letters, so that nobody takes the day for the month. */
  public static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** {@code Apr 2027}. */
  public static String month(YearMonth month) {
    return MONTH.format(month);
  }

  /** Thousands separated, with so many decimals, half up; below nothing with a minus sign. */
  public static String number(BigDecimal value, int decimals) {
    var rounded = value.setScale(decimals, RoundingMode.HALF_UP);
    var plain = rounded.abs().toPlainString();
    int point = plain.indexOf('.');
    var whole = point < 0 ? plain : plain.substring(0, point);
    var text = new StringBuilder(whole);
    for (int at = whole.length() - 3; at > 0; at -= 3) text.insert(at, ',');
    if (point >= 0) text.append(plain.substring(point));
    return (rounded.signum() < 0 ? "\u2212" : "") + text;
  }

  /** With at most one decimal. */
  public static String tenths(BigDecimal value) {
    var rounded = value.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    return number(rounded, Math.max(0, rounded.scale()));
  }

  /** Days with at most one decimal, and the word. */
  public static String days(BigDecimal days) {
    var shown = tenths(days);
    return shown + "\u00a0" + (shown.equals("1") ? "day" : "days");
  }

  /** {@code one, two and three}. */
  public static String list(List<String> words) {
    if (words.size() < 2) return String.join("", words);
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** The first sentence of a text, with its full stop. */
  public static String firstSentence(String text) {
    var t = text.strip();
    for (int at = t.indexOf(". "); at >= 0; at = t.indexOf(". ", at + 1)) {
      if (at + 2 < t.length() && Character.isUpperCase(t.charAt(at + 2))) {
        return t.substring(0, at + 1);
      }
    }
    return t.isEmpty() || ".!?".indexOf(t.charAt(t.length() - 1)) >= 0 ? t : t + ".";
  }

  /** Without cents, for summaries: {@code USD 78,400}. */
  public static String money(BigDecimal amount, Currency currency) {
    return currency.getCurrencyCode() + "\u00a0" + number(amount, 0);
  }

  /**
   * A length as it stands on drawings in feet and inches to the sixteenth: {@code 1′ 11 5/8″}; one
   * sign before the whole of a length below nothing.
   */
  public static String feetAndInches(BigDecimal metres) {
    long signed = sixteenths(metres);
    long sixteenths = Math.abs(signed);
    return (signed < 0 ? "\u2212" : "")
        + sixteenths / SIXTEENTHS_A_FOOT
        + "\u2032\u00a0"
        + inches(sixteenths % SIXTEENTHS_A_FOOT)
        + "\u2033";
  }

  /** A length brought to a mark of the tape: sixteenths of an inch, or whole millimetres. */
  public static BigDecimal onTape(BigDecimal metres, UnitSystem units, RoundingMode mode) {
    var unit = units.choose(Unit.MM, Unit.IN);
    var marks = units == UnitSystem.METRIC ? BigDecimal.ONE : SIXTEEN;
    var at = unit.toBase().inverse().applyTo(metres).multiply(marks);
    // what a conversion leaves behind the ninth digit is no part of the length
    var whole = at.setScale(9, RoundingMode.HALF_UP).setScale(0, mode);
    return unit.toBase().applyTo(whole.divide(marks, MathContext.DECIMAL128));
  }

  /** Inches to the sixteenth, without a sign: {@code 11 5/8}. */
  public static String inches(BigDecimal metres) {
    return inches(Math.abs(sixteenths(metres)));
  }

  private static long sixteenths(BigDecimal metres) {
    return Unit.IN
        .toBase()
        .inverse()
        .applyTo(metres)
        .multiply(BigDecimal.valueOf(16))
        .setScale(0, RoundingMode.HALF_UP)
        .longValueExact();
  }

  private static String inches(long sixteenths) {
    long whole = sixteenths / 16;
    long part = sixteenths % 16;
    if (part == 0) return Long.toString(whole);
    long divisor = Long.lowestOneBit(part);
    var fraction = part / divisor + "/" + 16 / divisor;
    return whole == 0 ? fraction : whole + " " + fraction;
  }
}

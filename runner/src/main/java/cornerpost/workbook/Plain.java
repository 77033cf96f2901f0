package cornerpost.workbook;

import cornerpost.measure.Spelling;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Text as people type it, made comparable. */
final class Plain {
  private static final int SHOWN_LENGTH = 60;
  private static final MathContext SHOWN_DIGITS = new MathContext(6);

  private Plain() {}

  /** Without outer spaces; inner runs of any space, the no-break one too, become one space. */
  static String tidy(String text) {
    var tidy = new StringBuilder(text.length());
    boolean space = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isSpace(c)) {
        space = tidy.length() > 0;
      } else {
        if (space) tidy.append(' ');
        space = false;
        tidy.append(c);
      }
    }
    return tidy.toString();
  }

  private static boolean isSpace(char c) {
    return c == ' '
        || c >= '\t' && c <= '\r'
        || c == '\u00A0'
        || c == '\u2007'
        || c == '\u202F'
        || Character.isWhitespace(c);
  }

  /** What two spellings of one name have in common. */
  static String key(String text) {
    return tidy(text).toLowerCase(Locale.ROOT);
  }

  static boolean same(String a, String b) {
    return key(a).equals(key(b));
  }

  /** In quotes, cut where it is long. */
  static String quoted(String text) {
    var tidy = tidy(text);
    return "'"
        + (tidy.length() <= SHOWN_LENGTH ? tidy : tidy.substring(0, SHOWN_LENGTH) + "...")
        + "'";
  }

  static String number(BigDecimal amount) {
    var rounded = amount.round(SHOWN_DIGITS).stripTrailingZeros();
    return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
  }

  static String list(Collection<String> names) {
    return String.join(", ", names.stream().map(n -> "'" + n + "'").toList());
  }

  /** The allowed names, with the likeliest one first where a slip is plain. */
  static String oneOf(String found, List<String> allowed) {
    if (allowed.isEmpty()) return "expected a name, and there is none yet";
    var near = nearest(found, allowed).map(n -> "; maybe '" + n + "'").orElse("");
    return (allowed.size() == 1 ? "expected " : "expected one of ") + list(allowed) + near;
  }

  /** The name that differs by a slip of the pen: a third of its letters at most, or part of it. */
  static Optional<String> nearest(String found, List<String> allowed) {
    return Spelling.nearest(tidy(found), allowed);
  }

  /** A unit as it is said in a sentence: {@code inches}; the symbol where it is a word already. */
  static String manyOf(String unit) {
    return switch (unit) {
      case "mm" -> "millimetres";
      case "m" -> "metres";
      case "km" -> "kilometres";
      case "in" -> "inches";
      case "ft" -> "feet";
      case "mile" -> "miles";
      case "m2" -> "square metres";
      case "sq ft" -> "square feet";
      case "kPa" -> "kilopascals";
      case "psf" -> "pounds a square foot";
      case "h" -> "hours";
      case "month" -> "months";
      default -> unit;
    };
  }
}

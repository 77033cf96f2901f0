package cornerpost.workbook.parts;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Number formats: those every workbook has, and what a format's code makes of a number. */
final class NumberFormats {
  /** Codes that stand in no file, by number: ISO/IEC 29500 part 1, 18.8.30 (numFmt). */
  private static final Map<Integer, String> BUILT_IN = builtIn();

  private NumberFormats() {}

  private static Map<Integer, String> builtIn() {
    var codes = new HashMap<Integer, String>();
    codes.put(0, "General");
    codes.put(1, "0");
    codes.put(2, "0.00");
    codes.put(3, "#,##0");
    codes.put(4, "#,##0.00");
    codes.put(9, "0%");
    codes.put(10, "0.00%");
    codes.put(11, "0.00E+00");
    codes.put(12, "# ?/?");
    codes.put(13, "# ??/??");
    codes.put(14, "m/d/yy");
    codes.put(15, "d-mmm-yy");
    codes.put(16, "d-mmm");
    codes.put(17, "mmm-yy");
    codes.put(18, "h:mm AM/PM");
    codes.put(19, "h:mm:ss AM/PM");
    codes.put(20, "h:mm");
    codes.put(21, "h:mm:ss");
    codes.put(22, "m/d/yy h:mm");
    codes.put(37, "#,##0 ;(#,##0)");
    codes.put(38, "#,##0 ;[Red](#,##0)");
    codes.put(39, "#,##0.00;(#,##0.00)");
    codes.put(40, "#,##0.00;[Red](#,##0.00)");
    codes.put(45, "mm:ss");
    codes.put(46, "[h]:mm:ss");
    codes.put(47, "mmss.0");
    codes.put(48, "##0.0E+0");
    codes.put(49, "@");
    return Map.copyOf(codes);
  }

  static Optional<String> builtIn(int number) {
    return Optional.ofNullable(BUILT_IN.get(number));
  }

  static Optional<Integer> builtIn(String code) {
    return BUILT_IN.entrySet().stream()
        .filter(e -> e.getValue().equals(code))
        .map(Map.Entry::getKey)
        .min(Integer::compare);
  }

  /** The letters and signs of a code that do something: without what stands for itself. */
  private static String active(String code) {
    var active = new StringBuilder();
    for (int i = 0; i < code.length(); i++) {
      char c = code.charAt(i);
      switch (c) {
        case '"' -> i = behind(code, '"', i);
        case '[' -> {
          int end = behind(code, ']', i);
          // Elapsed hours, minutes or seconds do something; colours and conditions do not.
          var inside = code.substring(i + 1, Math.max(i + 1, Math.min(end, code.length())));
          if (inside.matches("[hHmMsS]+")) active.append(inside);
          i = end;
        }
        case '\\', '_', '*' -> i++;
        default -> active.append(c);
      }
    }
    return active.toString();
  }

  private static int behind(String code, char end, int from) {
    int at = code.indexOf(end, from + 1);
    return at < 0 ? code.length() : at;
  }

  /** Whether a number is shown as a day or a time; only the part for positive numbers counts. */
  static boolean isDate(String code) {
    var active = active(code);
    int part = active.indexOf(';');
    var positive = part < 0 ? active : active.substring(0, part);
    if (positive.equalsIgnoreCase("General")) return false;
    return positive.chars().anyMatch(c -> "dDmMyYhHsS".indexOf(c) >= 0);
  }

  static boolean isPercent(String code) {
    return active(code).indexOf('%') >= 0;
  }
}

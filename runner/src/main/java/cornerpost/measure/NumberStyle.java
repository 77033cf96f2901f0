package cornerpost.measure;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How a region writes numbers. The program says every number one way, {@code 1,234.56}; a text is
 * turned to the region's way where it reaches a reader, so that figures and the sentences they
 * stand in agree. Numbers of clauses and tables ({@code R304.1}, {@code ACI 308.1}) stay as they
 * are printed in their documents; dates have no signs to turn.
 *
 * @param thousands the sign between thousands
 * @param decimal the sign before the decimals
 */
public record NumberStyle(String thousands, String decimal) {
  /** As the program itself speaks. */
  public static final NumberStyle PLAIN = new NumberStyle(",", ".");

  /** As a price book names the styles. */
  public static final List<String> SAMPLES =
      List.of("1,234.56", "1.234,56", "1 234,56", "1 234.56", "1'234.56");

  private static final String NARROW_SPACE = "\u202f"; // does not break
  private static final String RAISED_COMMA = "\u2019";

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}.,/:§#_-])(\\d{1,3}(?:,\\d{3})+|\\d+)(\\.\\d+)?(?![\\p{L}\\p{N}_]|[.,:/-]\\d)");

  /**
   * The abbreviation of a standard, perhaps with its number or year, or the word for a part of one.
   */
  private static final Pattern REFERENCE =
      Pattern.compile(
          "(?:^|[^\\p{L}\\p{N}])"
              + "(?:([A-Z]{2,})(?:[ \u00a0-]\\d+(?:-\\d+)?)?"
              + "|(?i:table|tables|chapter|section|clause|figure|handbook|article))[ \u00a0]$");

  private static final int REFERENCE_LETTERS = 24;

  private static final Set<String> CURRENCIES =
      Currency.getAvailableCurrencies().stream()
          .map(Currency::getCurrencyCode)
          .collect(Collectors.toUnmodifiableSet());

  /**
   * The style that a sample shows.
   *
   * @param sample one of {@link #SAMPLES}
   */
  public static Optional<NumberStyle> find(String sample) {
    if (!SAMPLES.contains(sample)) return Optional.empty();
    var thousands =
        switch (sample.charAt(1)) {
          case ' ' -> NARROW_SPACE;
          case '\'' -> RAISED_COMMA;
          default -> sample.substring(1, 2);
        };
    return Optional.of(new NumberStyle(thousands, sample.substring(5, 6)));
  }

  /** A text with its numbers in this style. */
  public String turned(String text) {
    if (equals(PLAIN)) return text;
    return NUMBER.matcher(text).replaceAll(m -> Matcher.quoteReplacement(number(text, m)));
  }

  private String number(String text, MatchResult m) {
    if (m.group(2) != null && isReference(text, m.start())) return m.group();
    return m.group(1).replace(",", thousands)
        + (m.group(2) == null ? "" : decimal + m.group(2).substring(1));
  }

  private static boolean isReference(String text, int at) {
    var before = REFERENCE.matcher(text.substring(Math.max(0, at - REFERENCE_LETTERS), at));
    return before.find() && (before.group(1) == null || !CURRENCIES.contains(before.group(1)));
  }
}

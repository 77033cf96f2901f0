package cornerpost.measure;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** How far one word is from another, to say what a misspelt name may have meant. */
public final class Spelling {
  private Spelling() {}

  /**
   * Letters to insert, delete or replace to turn one word into the other. Method: V. I.
   * Levenshtein, 1966.
   */
  public static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) before[j] = j;
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(replaced, 1 + Math.min(before[j], now[j - 1]));
      }
      before = now;
    }
    return before[b.length()];
  }

  /** The name that differs by a slip of the pen: a third of its letters at most, or part of it. */
  public static Optional<String> nearest(String found, Collection<String> allowed) {
    var sought = plain(found);
    if (sought.isEmpty()) return Optional.empty();
    var close =
        allowed.stream()
            .filter(a -> isSlip(sought, plain(a)))
            .min(Comparator.comparingInt(a -> distance(sought, plain(a))));
    if (close.isPresent()) return close;
    var parts =
        allowed.stream()
            .filter(a -> plain(a).contains(sought) || sought.contains(plain(a)))
            .toList();
    return parts.size() == 1 ? Optional.of(parts.get(0)) : Optional.empty();
  }

  /** Whether one differs from a name by a third of its letters at most; both made plain. */
  public static boolean isSlip(String sought, String name) {
    return distance(sought, name) <= Math.max(1, name.length() / 3);
  }

  /** Without capitals, with one blank between words. */
  public static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }
}

package cornerpost.measure;

import java.util.Locale;

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

  /** Without capitals, with one blank between words. */
  public static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }
}

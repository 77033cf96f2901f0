package cornerpost.report;

/** Makes of any id a place on the page that a link can point at: no two ids share one. */
final class Anchors {
  private Anchors() {}

  static String quantity(String id) {
    return of("quantity", id);
  }

  static String line(String id) {
    return of("line", id);
  }

  static String task(String id) {
    return of("task", id);
  }

  /** A picture of cuttings, from the pattern at a place on. */
  static String cutting(String item, int from) {
    return of("cutting", item + "/" + from);
  }

  /** Letters, digits, hyphen and dot stay; a slash becomes a colon; the rest its number. */
  static String of(String kind, String id) {
    var out = new StringBuilder(kind).append(':');
    id.codePoints()
        .forEach(
            c -> {
              boolean plain =
                  c >= 'a' && c <= 'z'
                      || c >= 'A' && c <= 'Z'
                      || c >= '0' && c <= '9'
                      || c == '-'
                      || c == '.';
              if (plain) out.appendCodePoint(c);
              else if (c == '/') out.append(':');
              else out.append('_').append(Integer.toHexString(c)).append('_');
            });
    return out.toString();
  }
}

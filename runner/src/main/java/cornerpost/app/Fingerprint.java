package cornerpost.app;

import cornerpost.scope.Scope;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A short mark of the input: the entries of the workbook (not its bytes, so that a result workbook
 * planned again has the mark of the workbook it came from), the price book's files and the options.
 */
final class Fingerprint {
  private static final int BYTES = 6;

  private Fingerprint() {}

  /** The mark of a price book's files. */
  static String of(PriceBookFolder.Contents book) {
    var digest = sha256();
    book.files()
        .forEach(
            (path, content) -> {
              add(digest, path);
              digest.update(content);
            });
    return HexFormat.of().formatHex(digest.digest());
  }

  /**
   * @param bookMark the mark of the price book; empty where there is none
   */
  static String of(Scope scope, String bookMark, PlanRun.Request request) {
    var digest = sha256();
    for (var e : scope.entered()) add(digest, e.cell() + "=" + e.value());
    add(digest, bookMark);
    add(
        digest,
        request.asOf() + " " + request.delays() + " " + request.seed() + " " + request.trials());
    request.baseline().ifPresent(b -> add(digest, b));
    request.path().from().ifPresent(e -> add(digest, "from " + e));
    request.path().to().ifPresent(e -> add(digest, "to " + e));
    return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
  }

  private static void add(MessageDigest digest, String text) {
    digest.update(text.getBytes(StandardCharsets.UTF_8));
    digest.update((byte) 0);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }
}

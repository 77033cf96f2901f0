package cornerpost.report;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Content lines of RFC 5545, section 3.1: ended by CRLF, folded so that none is longer than 75
 * octets, never inside a character; text escaped as section 3.3.11 says.
 */
final class IcsText {
  private static final int MOST_OCTETS = 75;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

  void line(String name, String value) {
    fold(name + ":" + value);
  }

  void text(String name, String value) {
    line(name, escaped(value));
  }

  byte[] done() {
    return bytes.toByteArray();
  }

  /** Control characters other than a line's end have no place in a text value. */
  static String escaped(String text) {
    var out = new StringBuilder();
    text.replace("\r\n", "\n")
        .replace('\r', '\n')
        .codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '\\' -> out.append("\\\\");
                case ';' -> out.append("\\;");
                case ',' -> out.append("\\,");
                case '\n' -> out.append("\\n");
                case '\t' -> out.append(' ');
                default -> {
                  if (!Character.isISOControl(c)) out.appendCodePoint(c);
                }
              }
            });
    return out.toString();
  }

  private void fold(String content) {
    int octets = 0;
    for (int at = 0; at < content.length(); ) {
      int c = content.codePointAt(at);
      var encoded = new String(Character.toChars(c)).getBytes(StandardCharsets.UTF_8);
      if (octets + encoded.length > MOST_OCTETS) {
        bytes.writeBytes(new byte[] {'\r', '\n', ' '});
        octets = 1;
      }
      bytes.writeBytes(encoded);
      octets += encoded.length;
      at += Character.charCount(c);
    }
    bytes.writeBytes(new byte[] {'\r', '\n'});
  }
}

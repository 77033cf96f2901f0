package cornerpost.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs a workbook anew, so that the same content gives the same bytes at any time of day. */
final class ResultZip {
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final int LEVEL = 6;
  private static final String NO_ROWS = "<sheetData/>";

  private ResultZip() {}

  /**
   * @param parts texts that take the place of parts, by part name such as {@code
   *     /xl/charts/chart1.xml}
   * @param rows markup that takes the place of the empty rows of sheets, by part name
   */
  static byte[] packed(byte[] workbook, Map<String, String> parts, Map<String, String> rows)
      throws IOException {
    var entries =
        new TreeMap<String, byte[]>(
            Comparator.comparingInt(ResultZip::rank).thenComparing(Comparator.naturalOrder()));
    try (var in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (var e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        if (!e.isDirectory()) entries.put(e.getName(), in.readAllBytes());
      }
    }
    parts.forEach((n, t) -> entries.put(n.substring(1), t.getBytes(StandardCharsets.UTF_8)));
    rows.forEach((n, t) -> entries.computeIfPresent(n.substring(1), (name, xml) -> filled(xml, t)));
    var bytes = new ByteArrayOutputStream();
    try (var out = new ZipOutputStream(bytes)) {
      out.setLevel(LEVEL);
      for (var e : entries.entrySet()) {
        var entry = new ZipEntry(e.getKey());
        entry.setTimeLocal(NO_TIME);
        out.putNextEntry(entry);
        out.write(e.getValue());
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static byte[] filled(byte[] sheet, String rows) {
    var xml = new String(sheet, StandardCharsets.UTF_8);
    int at = xml.indexOf(NO_ROWS);
    if (at < 0) throw new IllegalStateException("A result sheet has rows of another's");
    return (xml.substring(0, at) + rows + xml.substring(at + NO_ROWS.length()))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static int rank(String name) {
    if (name.equals("[Content_Types].xml")) return 0;
    return name.equals("_rels/.rels") ? 1 : 2;
  }
}

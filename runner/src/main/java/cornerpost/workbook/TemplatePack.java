package cornerpost.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Packs a template anew in a fixed order and without times, so that the same content is the same
 * bytes.
 */
final class TemplatePack {
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final int LEVEL = 6;

  private TemplatePack() {}

  static byte[] packed(byte[] workbook) throws IOException {
    var entries =
        new TreeMap<String, byte[]>(
            Comparator.comparingInt(TemplatePack::rank).thenComparing(Comparator.naturalOrder()));
    try (var in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (var e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        entries.put(e.getName(), in.readAllBytes());
      }
    }
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

  /** Programs look for these first. */
  private static int rank(String name) {
    if (name.equals("[Content_Types].xml")) return 0;
    return name.equals("_rels/.rels") ? 1 : 2;
  }
}

package cornerpost.workbook.parts;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveInputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * The parts of a package by name, without the leading slash. Reading counts what is unpacked, so
 * that nothing is built from a file made to fill memory: 2,000 parts, 200 MB a part and 600 MB in
 * all, and no part unpacking to more than a hundred times its size once it passes 100 KB.
 */
public final class Parts {
  private static final int KB = 1024;
  private static final long MOST_PART = 200L * KB * KB;
  private static final long MOST_UNPACKED = 600L * KB * KB;
  private static final int MOST_PARTS = 2_000;
  private static final int MOST_SWELLING = 100;
  private static final int SWELLING_COUNTS = 100 * KB;
  private static final String MACROS = "vbaProject.bin";
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final int LEVEL = 4; // a tenth larger than the usual 6, and half the time

  private final Map<String, byte[]> parts;

  private Parts(Map<String, byte[]> parts) {
    this.parts = parts;
  }

  /**
   * Unpacks a file.
   *
   * @throws DamagedFileException if it is not a package, is cut short, holds programs or unpacks to
   *     more than the limits
   */
  public static Parts read(byte[] content) {
    try {
      return new Parts(unpacked(content, false));
    } catch (ZipException e) { // the JDK's stream refuses what some writers put after a part
      try {
        return new Parts(unpacked(content, true));
      } catch (IOException | IllegalArgumentException again) {
        throw new DamagedFileException(String.valueOf(again.getMessage()));
      }
    } catch (IOException | IllegalArgumentException e) { // the latter for a name that is no text
      throw new DamagedFileException(String.valueOf(e.getMessage()));
    }
  }

  /** Either reader's next entry: its name, empty for a folder; null at the end. */
  private interface Entries {
    String next() throws IOException;
  }

  private static Map<String, byte[]> unpacked(byte[] content, boolean lenient) throws IOException {
    var source = new ByteArrayInputStream(content);
    if (lenient) {
      try (var zip = new ZipArchiveInputStream(source)) {
        return unpacked(
            source,
            zip,
            () -> {
              var e = zip.getNextEntry();
              return e == null ? null : e.isDirectory() ? "" : e.getName();
            });
      }
    }
    try (var zip = new ZipInputStream(source)) {
      return unpacked(
          source,
          zip,
          () -> {
            var e = zip.getNextEntry();
            return e == null ? null : e.isDirectory() ? "" : e.getName();
          });
    }
  }

  private static Map<String, byte[]> unpacked(
      ByteArrayInputStream source, InputStream zip, Entries entries) throws IOException {
    var parts = new LinkedHashMap<String, byte[]>();
    byte[] buffer = new byte[64 * KB];
    long all = 0;
    for (var name = entries.next(); name != null; name = entries.next()) {
      if (name.isEmpty()) continue;
      if (name.startsWith("/")) name = name.substring(1);
      if (name.endsWith(MACROS)) {
        throw new DamagedFileException(DamagedFileException.Kind.MACROS, name);
      }
      int before = source.available();
      var part = new ByteArrayOutputStream();
      for (int n = zip.read(buffer); n > 0; n = zip.read(buffer)) {
        part.write(buffer, 0, n);
        all += n;
        int taken = before - source.available() + 2 * KB; // the unpacker reads ahead
        boolean swells =
            part.size() > SWELLING_COUNTS && part.size() > (long) MOST_SWELLING * taken;
        if (swells || part.size() > MOST_PART || all > MOST_UNPACKED) throw swelling();
      }
      if (parts.put(name, part.toByteArray()) != null) {
        throw new DamagedFileException("two parts of one name: " + name);
      }
      if (parts.size() > MOST_PARTS) throw swelling();
    }
    if (parts.isEmpty()) throw new DamagedFileException("no part in it");
    return parts;
  }

  private static DamagedFileException swelling() {
    return new DamagedFileException(
        DamagedFileException.Kind.SWELLS, "it unpacks to more than its size allows for");
  }

  /** Whether any part's name ends so. */
  public boolean anyNamed(String ending) {
    return parts.keySet().stream().anyMatch(n -> n.endsWith(ending));
  }

  /** A part by its name; names differ by more than case (ISO/IEC 29500 part 2, 6.2.2.3). */
  public Optional<byte[]> find(String name) {
    var exact = parts.get(name);
    if (exact != null) return Optional.of(exact);
    return parts.entrySet().stream()
        .filter(e -> e.getKey().equalsIgnoreCase(name))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /**
   * A part that must be there.
   *
   * @throws DamagedFileException if it is not
   */
  public byte[] get(String name) {
    return find(name).orElseThrow(() -> new DamagedFileException("no part " + name));
  }

  /** Adds a part, or puts it in the place of the one of that name. */
  public void put(String name, byte[] content) {
    remove(name);
    parts.put(name, content);
  }

  public void remove(String name) {
    parts.keySet().removeIf(n -> n.equalsIgnoreCase(name));
  }

  /** The first name with a number that is not taken: {@code xl/charts/chart3.xml}. */
  public String free(String before, String after) {
    for (int n = 1; ; n++) {
      var name = before + n + after;
      if (find(name).isEmpty()) return name;
    }
  }

  /** A copy that can be changed apart from this one. */
  public Parts copy() {
    return new Parts(new LinkedHashMap<>(parts));
  }

  /** The package as a file: the same parts give the same bytes at any time of day. */
  public byte[] packed() {
    var sorted =
        new TreeMap<String, byte[]>(
            Comparator.comparingInt(Parts::rank).thenComparing(Comparator.naturalOrder()));
    sorted.putAll(parts);
    var deflated =
        sorted.entrySet().parallelStream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> deflated(e.getValue())));
    var bytes = new ByteArrayOutputStream(1 << 19);
    try (var out = new ZipArchiveOutputStream(bytes)) {
      for (var e : sorted.entrySet()) {
        var entry = new ZipArchiveEntry(e.getKey());
        entry.setTimeLocal(NO_TIME);
        entry.setMethod(ZipEntry.DEFLATED);
        entry.setSize(e.getValue().length);
        entry.setCompressedSize(deflated.get(e.getKey()).length);
        entry.setCrc(crc(e.getValue()));
        out.addRawArchiveEntry(entry, new ByteArrayInputStream(deflated.get(e.getKey())));
      }
    } catch (IOException e) { // into memory
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static byte[] deflated(byte[] content) {
    var deflater = new Deflater(LEVEL, true);
    try {
      deflater.setInput(content);
      deflater.finish();
      var bytes = new ByteArrayOutputStream(content.length / 4 + 64);
      byte[] buffer = new byte[16 * KB];
      while (!deflater.finished()) bytes.write(buffer, 0, deflater.deflate(buffer));
      return bytes.toByteArray();
    } finally {
      deflater.end();
    }
  }

  private static long crc(byte[] content) {
    var crc = new CRC32();
    crc.update(content);
    return crc.getValue();
  }

  /** Readers look for these two first. */
  private static int rank(String name) {
    if (name.equals("[Content_Types].xml")) return 0;
    return name.equals("_rels/.rels") ? 1 : 2;
  }
}

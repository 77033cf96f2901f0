package cornerpost.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveInputStream;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Opens a workbook from bytes that nobody has vouched for. Whatever they are, the answer is a
 * workbook or one problem in plain words.
 *
 * <p>Limits: a file of 100 MB, 2,000 parts, 200 MB a part and 600 MB in all when unpacked, and no
 * part unpacking to more than a hundred times its size once it passes 100 KB. An owner's workbook
 * is under a hundredth of that; pictures on the owner's own sheets are allowed for.
 */
final class WorkbookFile {
  private static final int MB = 1024 * 1024;
  private static final long MOST_FILE = 100L * MB;
  private static final long MOST_PART = 200L * MB;
  private static final long MOST_UNPACKED = 600L * MB;
  private static final int MOST_PARTS = 2_000;
  private static final String MACROS = "vbaProject.bin";
  private static final String EXPECTED = "expected a workbook saved as .xlsx";

  private WorkbookFile() {}

  static Optional<XSSFWorkbook> open(byte[] content, String fileName, FaultLog faults) {
    var refusal = refusal(content);
    if (refusal.isPresent()) {
      faults.fault(fileName, "", refusal.get().found(), refusal.get().expected());
      return Optional.empty();
    }
    PoiLog.off();
    // POI keeps its limits in static fields; they are set to the same values before each reading.
    ZipSecureFile.setMaxEntrySize(MOST_PART);
    ZipSecureFile.setMaxFileCount(MOST_PARTS);
    ZipSecureFile.setMinInflateRatio(0.01);
    try {
      var workbook = new XSSFWorkbook(new ByteArrayInputStream(content));
      if (workbook.isMacroEnabled()) {
        workbook.close();
        faults.fault(
            fileName, "", "a workbook with macros", "expected one without; save it as .xlsx");
        return Optional.empty();
      }
      return Optional.of(workbook);
    } catch (IOException | RuntimeException e) { // every kind of damage throws a kind of its own
      faults.fault(fileName, "", damage(content, messages(e)), EXPECTED);
      return Optional.empty();
    }
  }

  private record Refusal(String found, String expected) {}

  private static Optional<Refusal> refusal(byte[] content) {
    if (content.length == 0) return refuse("an empty file", EXPECTED);
    if (content.length > MOST_FILE) {
      return refuse(
          "a file of " + content.length / MB + " MB", "expected at most " + MOST_FILE / MB + " MB");
    }
    if (startsWith(content, 0xD0, 0xCF, 0x11, 0xE0)) return Optional.of(oldFormat(content));
    if (startsWith(content, 'P', 'K', 3, 4)) return unpacked(content);
    return refuse(
        looksLikeText(content)
            ? "a text file, such as .csv, not a workbook"
            : "a file that is not a workbook",
        EXPECTED);
  }

  private static Optional<Refusal> refuse(String found, String expected) {
    return Optional.of(new Refusal(found, expected));
  }

  private static boolean startsWith(byte[] content, int... bytes) {
    if (content.length < bytes.length) return false;
    for (int i = 0; i < bytes.length; i++) {
      if ((content[i] & 0xFF) != bytes[i]) return false;
    }
    return true;
  }

  private static boolean looksLikeText(byte[] content) {
    int seen = Math.min(content.length, 4096);
    for (int i = 0; i < seen; i++) {
      if (content[i] >= 0 && content[i] < 9) return false;
    }
    return true;
  }

  /** The old container holds a binary workbook or an encrypted new one. */
  private static Refusal oldFormat(byte[] content) {
    try (var files = new POIFSFileSystem(new ByteArrayInputStream(content))) {
      if (files.getRoot().hasEntryCaseInsensitive("EncryptedPackage")) {
        return new Refusal(
            "a workbook locked with a password", "expected one without; save it unlocked");
      }
      if (files.getRoot().hasEntryCaseInsensitive("Workbook")
          || files.getRoot().hasEntryCaseInsensitive("Book")) {
        return new Refusal("a workbook in the old .xls form", EXPECTED);
      }
    } catch (IOException | RuntimeException e) {
      return new Refusal("a damaged file in an old format", EXPECTED);
    }
    return new Refusal("a file in an old format that is not a workbook", EXPECTED);
  }

  /**
   * Counts what the parts unpack to, so that nothing is built from a file made to fill memory. Not
   * with the JDK's own stream, which refuses what some writers put after a part.
   */
  private static Optional<Refusal> unpacked(byte[] content) {
    var tooMuch = "a file that unpacks to far more than a workbook holds";
    try (var zip = zip(content)) {
      byte[] buffer = new byte[64 * 1024];
      long all = 0;
      int parts = 0;
      for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().endsWith(MACROS)) {
          return refuse("a workbook with macros", "expected one without; save it as .xlsx");
        }
        long part = 0;
        for (int n = zip.read(buffer); n > 0; n = zip.read(buffer)) {
          part += n;
          all += n;
          if (part > MOST_PART || all > MOST_UNPACKED) return refuse(tooMuch, EXPECTED);
        }
        parts++;
        if (parts > MOST_PARTS) return refuse(tooMuch, EXPECTED);
      }
      return Optional.empty();
    } catch (IOException | RuntimeException e) { // a damaged packing throws either
      return refuse("a file that is cut short or damaged", EXPECTED);
    }
  }

  private static ZipArchiveInputStream zip(byte[] content) {
    return new ZipArchiveInputStream(new ByteArrayInputStream(content));
  }

  private static boolean hasPart(byte[] content, String name) {
    try (var zip = zip(content)) {
      for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().endsWith(name)) return true;
      }
      return false;
    } catch (IOException | RuntimeException e) {
      return false; // it was read before; this cannot tell more
    }
  }

  /** What was thrown says the least; what it was thrown for says more. */
  private static String messages(Throwable thrown) {
    var all = new StringBuilder();
    for (var t = thrown; t != null; t = t.getCause()) all.append(t.getMessage()).append('\n');
    return all.toString();
  }

  private static String damage(byte[] content, String message) {
    if (message.contains("Zip bomb"))
      return "a file that unpacks to far more than a workbook holds";
    if (message.contains("Strict OOXML")) return "a workbook saved as 'strict' .xlsx";
    if (message.contains("DOCTYPE") || message.contains("doctype")) {
      return "a file with a document type in it, which no spreadsheet program writes";
    }
    if (hasPart(content, "content.xml"))
      return "a file of another office format (.ods or the like)";
    if (hasPart(content, "document.xml")) return "a text document, not a workbook";
    if (hasPart(content, "workbook.bin")) return "a workbook in the binary .xlsb form";
    return hasPart(content, "workbook.xml")
        ? "a workbook that is damaged"
        : "a packed file that is not a workbook";
  }
}

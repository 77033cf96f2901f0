package cornerpost.workbook;

import cornerpost.workbook.parts.DamagedFileException;
import cornerpost.workbook.parts.Parts;
import cornerpost.workbook.parts.StoredBook;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/**
 * Opens a workbook from bytes that nobody has vouched for. Whatever they are, the answer is a
 * workbook or one problem in plain words.
 *
 * <p>Limits: a file of 100 MB, and what {@link Parts} allows for. An owner's workbook is under a
 * hundredth of that; pictures on the owner's own sheets are allowed for.
 */
final class WorkbookFile {
  private static final int MB = 1024 * 1024;
  private static final long MOST_FILE = 100L * MB;
  private static final String EXPECTED = "expected a workbook saved as .xlsx";

  private WorkbookFile() {}

  static Optional<StoredBook> open(byte[] content, String fileName, FaultLog faults) {
    var refusal = refusal(content);
    if (refusal.isPresent()) {
      faults.fault(fileName, "", refusal.get().found(), refusal.get().expected());
      return Optional.empty();
    }
    try {
      return Optional.of(StoredBook.read(content));
    } catch (DamagedFileException e) {
      var found = damage(content, e.kind());
      faults.fault(fileName, "", found.found(), found.expected());
      return Optional.empty();
    } catch (RuntimeException e) { // what the JDK's readers throw where bytes are turned over
      faults.fault(fileName, "", "a workbook that is damaged", EXPECTED);
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
    if (startsWith(content, 'P', 'K', 3, 4)) return Optional.empty();
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
    PoiLog.off();
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

  private static Refusal damage(byte[] content, DamagedFileException.Kind kind) {
    return switch (kind) {
      case SWELLS -> new Refusal("a file that unpacks to far more than a workbook holds", EXPECTED);
      case STRICT -> new Refusal("a workbook saved as 'strict' .xlsx", EXPECTED);
      case DOCUMENT_TYPE ->
          new Refusal(
              "a file with a document type in it, which no spreadsheet program writes", EXPECTED);
      case MACROS ->
          new Refusal("a workbook with macros", "expected one without; save it as .xlsx");
      case DAMAGED -> new Refusal(otherPackage(content), EXPECTED);
    };
  }

  private static String otherPackage(byte[] content) {
    Parts parts;
    try {
      parts = Parts.read(content);
    } catch (DamagedFileException e) {
      return "a file that is cut short or damaged";
    }
    if (parts.anyNamed("content.xml")) return "a file of another office format (.ods or the like)";
    if (parts.anyNamed("document.xml")) return "a text document, not a workbook";
    if (parts.anyNamed("workbook.bin")) return "a workbook in the binary .xlsb form";
    return parts.anyNamed("workbook.xml")
        ? "a workbook that is damaged"
        : "a packed file that is not a workbook";
  }
}

package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import cornerpost.scope.Problem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are not what they should be: one clear problem each, and never an exception. */
class FileFaultsTest {
  private static final String WANTED = "; expected a workbook saved as .xlsx";

  private static void says(byte[] content, String message) {
    var reading = WorkbookReader.read(content, "house.xlsx", Edited.FACTS);

    assertThat(reading.scope()).isEmpty();
    assertThat(reading.problems())
        .extracting(Problem::message)
        .containsExactly("house.xlsx: " + message);
  }

  @Test
  void an_empty_file() {
    says(new byte[0], "an empty file" + WANTED);
  }

  @Test
  void a_text_file_under_another_name() {
    says(
        "Box,Size\nA,40 ft high cube\n".getBytes(StandardCharsets.UTF_8),
        "a text file, such as .csv, not a workbook" + WANTED);
  }

  @Test
  void bytes_without_sense() {
    says(new byte[] {7, 0, 1, 2, 3, 4, 5}, "a file that is not a workbook" + WANTED);
  }

  @Test
  void the_old_binary_form() throws IOException {
    var out = new ByteArrayOutputStream();
    try (var workbook = new HSSFWorkbook()) {
      workbook.createSheet("Project");
      workbook.write(out);
    }
    says(out.toByteArray(), "a workbook in the old .xls form" + WANTED);
  }

  @Test
  void a_workbook_with_a_password() throws Exception {
    var out = new ByteArrayOutputStream();
    try (var files = new POIFSFileSystem()) {
      var encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("corner");
      try (var hidden = encryptor.getDataStream(files)) {
        hidden.write(Edited.twoBoxes());
      }
      files.writeFilesystem(out);
    }
    says(
        out.toByteArray(),
        "a workbook locked with a password; expected one without; save it unlocked");
  }

  @Test
  void a_workbook_with_macros() throws IOException {
    var out = new ByteArrayOutputStream();
    try (var workbook = new XSSFWorkbook(XSSFWorkbookType.XLSM)) {
      workbook.createSheet("Project");
      workbook.write(out);
    }
    says(out.toByteArray(), "a workbook with macros; expected one without; save it as .xlsx");
  }

  @Test
  void macros_under_an_innocent_content_type() throws IOException {
    var parts = parts(Edited.twoBoxes());
    parts.put("xl/vbaProject.bin", new byte[] {1});
    says(packed(parts), "a workbook with macros; expected one without; save it as .xlsx");
  }

  @Test
  void a_file_cut_short() {
    var whole = Edited.twoBoxes();
    says(Arrays.copyOf(whole, whole.length / 2), "a file that is cut short or damaged" + WANTED);
  }

  @Test
  void a_file_that_unpacks_without_end() throws IOException {
    var parts = parts(Edited.twoBoxes());
    parts.put("xl/worksheets/sheet1.xml", new byte[300 * 1024 * 1024]);
    says(packed(parts), "a file that unpacks to far more than a workbook holds" + WANTED);
  }

  @Test
  void a_part_that_swells_more_than_a_hundredfold() throws IOException {
    var parts = parts(Edited.twoBoxes());
    var spaces = new byte[40 * 1024 * 1024];
    Arrays.fill(spaces, (byte) ' ');
    parts.put("xl/worksheets/sheet1.xml", spaces);
    says(packed(parts), "a file that unpacks to far more than a workbook holds" + WANTED);
  }

  @Test
  void a_document_type_that_reaches_for_other_files() throws IOException {
    var parts = parts(Edited.twoBoxes());
    parts.put(
        "xl/sharedStrings.xml",
        """
        <?xml version="1.0"?><!DOCTYPE sst [<!ENTITY x SYSTEM "file:///etc/hostname">]>
        <sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>&x;</t></si></sst>
        """
            .getBytes(StandardCharsets.UTF_8));
    says(
        packed(parts),
        "a file with a document type in it, which no spreadsheet program writes" + WANTED);
  }

  @Test
  void an_archive_of_something_else() throws IOException {
    says(
        packed(Map.of("notes.txt", new byte[] {65})),
        "a packed file that is not a workbook" + WANTED);
  }

  @Test
  void an_open_document_spreadsheet() throws IOException {
    var parts = new TreeMap<String, byte[]>();
    parts.put("content.xml", "<a/>".getBytes(StandardCharsets.UTF_8));
    parts.put(
        "mimetype",
        "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.UTF_8));
    says(packed(parts), "a file of another office format (.ods or the like)" + WANTED);
  }

  @Test
  void a_workbook_without_any_of_our_sheets() throws IOException {
    var out = new ByteArrayOutputStream();
    try (var workbook = new XSSFWorkbook()) {
      workbook.createSheet("Budget");
      workbook.write(out);
    }
    assertThat(WorkbookReader.read(out.toByteArray(), "house.xlsx", Edited.FACTS).problems())
        .extracting(Problem::found)
        .containsExactly(
            "no sheet 'Project'",
            "no sheet 'Containers'",
            "no sheet 'Rooms'",
            "no sheet 'Openings'",
            "no sheet 'Site and foundation'",
            "no sheet 'Deck and roof'",
            "no sheet 'Envelope'",
            "no sheet 'Services'",
            "no sheet 'Finishes'",
            "no sheet 'Who does what'");
  }

  /** Bytes are turned over anywhere in the file; whatever comes of it, reading ends in words. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void a_damaged_file_never_throws(long seed) {
    var random = new SplittableRandom(seed);
    var content = Edited.twoBoxes().clone();
    for (int i = 0; i < 1 + random.nextInt(20); i++) {
      content[random.nextInt(content.length)] = (byte) random.nextInt(256);
    }

    assertThatCode(() -> WorkbookReader.read(content, "house.xlsx", Edited.FACTS))
        .doesNotThrowAnyException();
  }

  /** Digits and letters are changed inside the parts, so that the packing is sound. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
  void damaged_parts_never_throw(long seed) throws IOException {
    var random = new SplittableRandom(seed);
    var parts = parts(Edited.twoBoxes());
    for (var part : parts.entrySet()) {
      if (!part.getKey().startsWith("xl/worksheets/") && random.nextInt(4) > 0) continue;
      var bytes = part.getValue();
      for (int i = 0; i < 1 + random.nextInt(12); i++) {
        int at = random.nextInt(bytes.length);
        if (Character.isLetterOrDigit(bytes[at])) bytes[at] = (byte) ('0' + random.nextInt(60));
      }
    }
    var content = packed(parts);

    assertThatCode(() -> WorkbookReader.read(content, "house.xlsx", Edited.FACTS))
        .doesNotThrowAnyException();
  }

  private static TreeMap<String, byte[]> parts(byte[] workbook) throws IOException {
    var parts = new TreeMap<String, byte[]>();
    try (var in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (var e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        parts.put(e.getName(), in.readAllBytes());
      }
    }
    return parts;
  }

  private static byte[] packed(Map<String, byte[]> parts) throws IOException {
    var out = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(out)) {
      for (var part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }
}

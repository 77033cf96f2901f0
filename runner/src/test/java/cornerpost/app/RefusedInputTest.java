package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.function.Consumer;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad input: every fault with its place and remedy, status 1, nothing written, nothing lost. */
class RefusedInputTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void a_copy_of_an_example() {
    file = folder.resolve("house.xlsx");
  }

  private Runs.Run refused(byte[] content) throws IOException {
    Files.write(file, content);
    var run = Runs.run("plan", file);
    assertThat(run.status()).as(run.err()).isEqualTo(1);
    assertThat(run.err())
        .doesNotContain("\tat ")
        .doesNotContain("Exception")
        .contains("nothing was written");
    assertThat(run.out()).isEmpty();
    assertThat(folder.toFile().list()).containsExactly("house.xlsx");
    assertThat(Files.readAllBytes(file)).isEqualTo(content);
    return run;
  }

  private static byte[] example(Consumer<XSSFWorkbook> change) throws IOException {
    var content = Files.readAllBytes(Runs.example("one-bedroom-40hc"));
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(content))) {
      change.accept(book);
      var out = new ByteArrayOutputStream();
      book.write(out);
      return out.toByteArray();
    }
  }

  /** The cell of a table: in the n-th row with an entry, under a column's name. */
  private static Cell cell(XSSFWorkbook book, String sheet, String column, int entry) {
    var s = book.getSheet(sheet);
    int header = headerRow(s, column);
    int col = column(s, header, column);
    return s.getRow(header + entry).getCell(col) == null
        ? s.getRow(header + entry).createCell(col)
        : s.getRow(header + entry).getCell(col);
  }

  private static int headerRow(XSSFSheet sheet, String column) {
    for (var row : sheet) {
      for (var c : row) if (c.toString().equals(column)) return row.getRowNum();
    }
    throw new IllegalArgumentException("No column " + column + " on " + sheet.getSheetName());
  }

  private static int column(XSSFSheet sheet, int header, String column) {
    for (var c : sheet.getRow(header)) if (c.toString().equals(column)) return c.getColumnIndex();
    throw new IllegalArgumentException(column);
  }

  private static Cell entry(XSSFWorkbook book, String sheet, String label) {
    for (var row : book.getSheet(sheet)) {
      if (row.getCell(0) != null && row.getCell(0).toString().strip().equals(label)) {
        return row.getCell(1);
      }
    }
    throw new IllegalArgumentException("No label " + label + " on " + sheet);
  }

  private static String at(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress();
  }

  @Test
  void several_faults_are_all_named_at_once_each_with_its_cell() throws IOException {
    var places = new java.util.ArrayList<String>();
    var run =
        refused(
            example(
                book -> {
                  var text = cell(book, "Openings", "Width", 1);
                  text.setCellValue("wide");
                  var negative = cell(book, "Openings", "Height", 2);
                  negative.setCellValue(-12);
                  var date = entry(book, "Project", "Start date");
                  date.setCellValue("first of March");
                  var room = cell(book, "Rooms", "Use", 1);
                  room.setCellValue("ballroom");
                  for (var c : Arrays.asList(text, negative, date, room)) places.add(at(c));
                }));
    assertThat(run.err())
        .contains(places)
        .contains("wide")
        .contains("-12")
        .contains("first of March");
    assertThat(run.err()).contains("living"); // what would be right
  }

  @Test
  void a_missing_price_book_is_named_with_the_other_faults_and_the_books_there_are()
      throws IOException {
    var places = new java.util.ArrayList<String>();
    var run =
        refused(
            example(
                book -> {
                  var prices = entry(book, "Project", "Price book");
                  prices.setBlank();
                  var date = entry(book, "Project", "Start date");
                  date.setBlank();
                  for (var c : Arrays.asList(prices, date)) places.add(at(c));
                }));
    assertThat(run.err()).contains(places).contains("quarrow-plains-2026").contains("--prices");
  }

  @Test
  void an_opening_wider_than_its_wall() throws IOException {
    var run = refused(example(b -> cell(b, "Openings", "Width", 1).setCellValue(600)));
    assertThat(run.err()).contains("Openings!").contains("wall");
  }

  @Test
  void an_opening_over_another() throws IOException {
    var run =
        refused(
            example(
                b -> {
                  for (var column : new String[] {"Box", "Wall"}) {
                    cell(b, "Openings", column, 2)
                        .setCellValue(cell(b, "Openings", column, 1).getStringCellValue());
                  }
                  for (var column : new String[] {"Offset", "Sill height"}) {
                    cell(b, "Openings", column, 2)
                        .setCellValue(cell(b, "Openings", column, 1).getNumericCellValue());
                  }
                }));
    assertThat(run.err()).contains("Openings!").containsAnyOf("over", "overlap");
  }

  @Test
  void a_room_list_longer_than_the_box() throws IOException {
    var run = refused(example(b -> cell(b, "Rooms", "Length", 1).setCellValue(38)));
    assertThat(run.err()).contains("Rooms!").contains("ft");
  }

  @Test
  void a_quote_that_cannot_be_read_hides_no_other_fault() throws IOException {
    var run =
        refused(
            example(
                b -> {
                  cell(b, "Quotes", "Amount", 1).setCellValue("about 30");
                  var line = cell(b, "Quotes", "Line", 1).getStringCellValue();
                  for (int row = 2; row <= 3; row++) {
                    cell(b, "Quotes", "Line", row).setCellValue(row == 2 ? line : "no/such:line");
                    cell(b, "Quotes", "Price for", row).setCellValue("each unit");
                    cell(b, "Quotes", "Amount", row).setCellValue(31);
                    cell(b, "Quotes", "Use it", row).setCellValue("yes");
                  }
                  cell(b, "Quotes", "Use it", 1).setCellValue("yes");
                }));
    assertThat(run.err())
        .contains("text 'about 30' in a number cell")
        .contains("a second quote in use for line")
        .contains("a quote for 'no/such:line', which is no line of this plan");
  }

  // Which lines there are does not hang on a number: a quote for none of them is told at once.
  @ParameterizedTest
  @CsvSource({
    "Openings, Width, wide",
    "Openings, Width, ''",
    "Rooms, Length, 1 or 2",
    "Holidays, Date, soon"
  })
  void a_number_that_cannot_be_read_hides_no_quote_for_no_line(
      String sheet, String column, String entry) throws IOException {
    var run =
        refused(
            example(
                b -> {
                  if (entry.isEmpty()) cell(b, sheet, column, 1).setBlank();
                  else cell(b, sheet, column, 1).setCellValue(entry);
                  cell(b, "Quotes", "Line", 1).setCellValue("no/such:line");
                }));
    assertThat(run.err())
        .contains(sheet + "!")
        .contains("a quote for 'no/such:line', which is no line of this plan");
    assertThat(run.err().lines().filter(l -> l.contains("a quote for"))).hasSize(1);
  }

  // What an unreadable choice would bring along nobody knows.
  @Test
  void a_choice_that_cannot_be_read_says_nothing_of_quotes() throws IOException {
    var run =
        refused(
            example(
                b -> {
                  cell(b, "Openings", "Kind", 1).setCellValue("hole");
                  cell(b, "Quotes", "Line", 1).setCellValue("no/such:line");
                }));
    assertThat(run.err()).contains("Openings!").doesNotContain("a quote for");
  }

  @Test
  void an_unknown_price_code() throws IOException {
    var content =
        example(
            b -> {
              cell(b, "Quotes", "Line", 1).setCellValue("no/such/line:nothing");
            });
    Files.write(file, content);
    var run = Runs.run("plan", file);
    assertThat(run.status()).as("a quote without its line is kept and listed").isZero();
    assertThat(run.err()).contains("Quotes!").contains("no/such/line:nothing");

    var book = folder.resolve("thin-book");
    try (var files = Files.walk(Runs.HOME.resolve("price-books/quarrow-plains-2026"))) {
      for (var f : (Iterable<Path>) files::iterator) {
        var copy =
            book.resolve(
                Runs.HOME.resolve("price-books/quarrow-plains-2026").relativize(f).toString());
        if (Files.isDirectory(f)) {
          Files.createDirectories(copy);
          continue;
        }
        var text = Files.readString(f, StandardCharsets.UTF_8);
        Files.writeString(copy, text.replace("floor-vinyl,", "floor-vinil,"));
      }
    }
    var missing = Runs.run("plan", file, "--prices", book, "--out", folder.resolve("out"));
    assertThat(missing.status()).isEqualTo(1);
    assertThat(missing.err()).contains("floor-vinyl");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void a_missing_sheet() throws IOException {
    var run = refused(example(b -> b.removeSheetAt(b.getSheetIndex("Openings"))));
    assertThat(run.err()).contains("Openings");
  }

  @Test
  void a_loop_in_the_links_names_its_tasks_in_order() throws IOException {
    var run =
        refused(
            example(
                b -> {
                  var s = b.getSheet("Own links");
                  int header = headerRow(s, "Before");
                  int before = column(s, header, "Before");
                  int after = column(s, header, "After");
                  int last = header + 1;
                  while (s.getRow(last) != null
                      && s.getRow(last).getCell(before) != null
                      && !s.getRow(last).getCell(before).toString().isEmpty()) last++;
                  var row = s.getRow(last) == null ? s.createRow(last) : s.getRow(last);
                  row.createCell(before).setCellValue("wall-board");
                  row.createCell(after).setCellValue("wall-studs");
                }));
    assertThat(run.err())
        .contains("Own links!")
        .contains("Studs, plates and noggings on the walls")
        .contains("Board the walls");
  }

  @Test
  void an_encrypted_workbook() throws Exception {
    var out = new ByteArrayOutputStream();
    try (var fs = new POIFSFileSystem()) {
      var encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (var stream = encryptor.getDataStream(fs)) {
        stream.write(Files.readAllBytes(Runs.example("one-bedroom-40hc")));
      }
      fs.writeFilesystem(out);
    }
    assertThat(refused(out.toByteArray()).err()).contains("house.xlsx").contains("password");
  }

  @Test
  void text_renamed_to_xlsx() throws IOException {
    var csv = "Box,Size\nA,40 ft\n".getBytes(StandardCharsets.UTF_8);
    assertThat(refused(csv).err()).contains("house.xlsx").contains(".xlsx");
  }

  @Test
  void an_empty_file() throws IOException {
    assertThat(refused(new byte[0]).err()).contains("house.xlsx").contains("empty");
  }

  @Test
  void half_a_file() throws IOException {
    var whole = Files.readAllBytes(Runs.example("one-bedroom-40hc"));
    assertThat(refused(Arrays.copyOf(whole, whole.length / 2)).err()).contains("house.xlsx");
  }

  @Test
  void a_file_open_elsewhere_for_writing() throws Exception {
    Files.copy(Runs.example("one-bedroom-40hc"), file);
    // a second process holds the lock: one of our own would be seen as ours
    var holder =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                LockHolder.class.getName(),
                file.toString())
            .redirectErrorStream(true)
            .start();
    try {
      assertThat(holder.getInputStream().read())
          .as("the other process holds the lock")
          .isEqualTo('+');
      var run = Runs.run("plan", file);
      assertThat(run.status()).isEqualTo(1);
      assertThat(run.err()).contains("house.xlsx").contains("open in another program");
      assertThat(folder.toFile().list()).containsExactly("house.xlsx");
    } finally {
      holder.destroy();
      holder.waitFor();
    }
  }

  @Test
  void a_result_open_elsewhere_is_not_overwritten() throws IOException {
    Files.copy(Runs.example("one-bedroom-40hc"), file);
    Files.writeString(folder.resolve(".~lock.house-plan.xlsx#"), "somebody");
    var run = Runs.run("plan", file);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).contains("house-plan.xlsx").contains("close it there");
  }

  /** Holds a lock on a file until it is ended. */
  static final class LockHolder {
    public static void main(String[] args) throws Exception {
      try (var channel =
          FileChannel.open(Path.of(args[0]), StandardOpenOption.READ, StandardOpenOption.WRITE)) {
        channel.lock();
        System.out.print('+');
        System.out.flush();
        Thread.sleep(60_000);
      }
    }
  }
}

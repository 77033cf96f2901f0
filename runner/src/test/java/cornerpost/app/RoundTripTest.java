package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.office.LibreOffice;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The result is the next input; the same input gives the same bytes; nothing of the owner is lost.
 */
class RoundTripTest {
  private static final List<String> ENDINGS = List.of(".xlsx", ".html", ".json", ".ics");

  @TempDir Path folder;

  static List<String> examples() {
    return Runs.EXAMPLE_NAMES;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void two_runs_give_the_same_bytes(String example) throws IOException {
    var first = folder.resolve("first");
    var second = folder.resolve("second");
    assertThat(Runs.run("plan", Runs.example(example), "--out", first).status()).isZero();
    assertThat(Runs.run("plan", Runs.example(example), "--out", second).status()).isZero();
    for (var ending : ENDINGS) {
      assertThat(Files.readAllBytes(second.resolve(example + "-plan" + ending)))
          .as(ending)
          .isEqualTo(Files.readAllBytes(first.resolve(example + "-plan" + ending)));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void the_result_planned_again_is_the_same_plan(String example) throws IOException {
    assertThat(Runs.run("plan", Runs.example(example), "--out", folder).status()).isZero();
    var result = folder.resolve(example + "-plan.xlsx");
    var again = folder.resolve("again");
    var run = Runs.run("plan", result, "--out", again);
    assertThat(run.status()).as(run.err()).isZero();
    for (var ending : List.of(".json", ".html", ".ics")) {
      assertThat(again.resolve(example + "-plan" + ending))
          .hasSameTextualContentAs(folder.resolve(example + "-plan" + ending));
    }
    var third = folder.resolve("third");
    assertThat(Runs.run("plan", again.resolve(example + "-plan.xlsx"), "--out", third).status())
        .isZero();
    assertThat(Files.readAllBytes(third.resolve(example + "-plan.xlsx")))
        .as("a result planned twice is byte for byte the same workbook")
        .isEqualTo(Files.readAllBytes(again.resolve(example + "-plan.xlsx")));
  }

  @Test
  void what_the_owner_added_to_the_result_is_still_there_after_the_next_run() throws IOException {
    var example = "one-bedroom-40hc";
    assertThat(Runs.run("plan", Runs.example(example), "--out", folder).status()).isZero();
    var file = folder.resolve(example + "-plan.xlsx");
    Files.write(file, withOwnersAdditions(Files.readAllBytes(file)));
    var before = Files.readAllBytes(file);

    var run = Runs.run("plan", file);
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(folder.toFile().list())
        .as("the old file is set aside under a dated name")
        .anyMatch(n -> n.matches(example + "-plan \\d{4}-\\d{2}-\\d{2}\\.xlsx"));
    for (var f : folder.toFile().listFiles()) {
      if (f.getName().matches(".*-plan \\d.*")) {
        assertThat(Files.readAllBytes(f.toPath())).isEqualTo(before);
      }
    }
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      assertThat(book.getSheet("Notes of mine").getRow(2).getCell(1).getStringCellValue())
          .isEqualTo("ask about the gate");
      var cell = book.getSheet("Project").getRow(0).getCell(0);
      assertThat(cell.getCellComment().getString().getString()).isEqualTo("a note of mine");
      assertThat(cell.getCellStyle().getFillForegroundColor())
          .isEqualTo(IndexedColors.LAVENDER.getIndex());
    }
  }

  private static byte[] withOwnersAdditions(byte[] workbook) throws IOException {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      var mine = book.createSheet("Notes of mine");
      mine.createRow(2).createCell(1).setCellValue("ask about the gate");
      var sheet = book.getSheet("Project");
      var cell = sheet.getRow(0).getCell(0);
      var style = book.createCellStyle();
      style.cloneStyleFrom(cell.getCellStyle());
      style.setFillForegroundColor(IndexedColors.LAVENDER.getIndex());
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      cell.setCellStyle(style);
      if (cell.getCellComment() != null) cell.removeCellComment();
      var comment =
          sheet
              .createDrawingPatriarch()
              .createCellComment(new XSSFClientAnchor(0, 0, 0, 0, 3, 3, 6, 7));
      comment.setString("a note of mine");
      cell.setCellComment(comment);
      var out = new ByteArrayOutputStream();
      book.write(out);
      return out.toByteArray();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void a_workbook_saved_by_libreoffice_plans_the_same(String example) throws IOException {
    LibreOffice.needed();
    assertThat(Runs.run("plan", Runs.example(example), "--out", folder).status()).isZero();
    var saved = Files.createDirectories(folder.resolve("saved")).resolve(example + ".xlsx");
    Files.write(saved, LibreOffice.recalculated(Files.readAllBytes(Runs.example(example))));
    var run = Runs.run("plan", saved);
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(saved.resolveSibling(example + "-plan.json"))
        .hasSameTextualContentAs(folder.resolve(example + "-plan.json"));
  }
}

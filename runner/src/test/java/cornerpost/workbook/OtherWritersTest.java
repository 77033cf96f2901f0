package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks that other programs wrote read the same as ours. */
class OtherWritersTest {

  private static WorkbookEntries entries(String example) {
    return TemplateWriter.withUsualRows(
        example.equals("cabin") ? OneBedroomExample.entries() : TwoBoxExample.entries());
  }

  @ParameterizedTest
  @ValueSource(strings = {"cabin", "two boxes"})
  void a_workbook_filled_in_by_another_library_reads_the_same(String example) throws IOException {
    var ours =
        WorkbookReader.read(
            TemplateWriter.write(entries(example), Edited.FACTS), "ours.xlsx", Edited.FACTS);
    var theirs = WorkbookReader.read(PlainBooks.of(entries(example)), "theirs.xlsx", Edited.FACTS);

    assertThat(theirs.problems()).isEmpty();
    assertThat(strip(theirs)).containsExactlyInAnyOrderElementsOf(strip(ours));
  }

  /** All but the raw contents of cells, where yes may be a text or a truth value. */
  private static List<String> strip(Reading reading) {
    return ScopeText.withoutCells(reading.scope().orElseThrow()).stream()
        .filter(l -> !l.startsWith("scope.entered"))
        .toList();
  }

  @Test
  void a_network_in_four_bare_sheets_reads() throws IOException {
    var out = new ByteArrayOutputStream();
    try (var workbook = new Workbook(out, "Sheets", "1.0")) {
      var project = workbook.newWorksheet("Project");
      rows(
          project,
          new Object[][] {
            {"Project name", "Shed"},
            {"Start date", LocalDate.of(2027, 3, 1)},
            {"Generated tasks", "none"}
          });
      project.finish();
      var tasks = workbook.newWorksheet("Own tasks");
      rows(
          tasks,
          new Object[][] {
            {
              "Id", "Name", "Duration", "Duration unit", "Calendar", "Not before", "Mason", "Helper"
            },
            {"a", "Dig", 3, "d", "Weekdays", LocalDate.of(2027, 3, 3), 1, 2},
            {"b", "Cure", 5, "elapsed d"},
            {"c", "Roof", 12, "h", "Six days", null, null, 1}
          });
      tasks.finish();
      var links = workbook.newWorksheet("Own links");
      rows(
          links,
          new Object[][] {
            {"Before", "After", "Relation", "Lag", "Lag unit"},
            {"a", "b"},
            {"a", "c", "start-to-start", -2, "h"}
          });
      links.finish();
      var crews = workbook.newWorksheet("Crews");
      rows(crews, new Object[][] {{"Name", "Number available"}, {"Mason", 1}, {"Helper", 2}});
      crews.finish();
    }

    var reading = WorkbookReader.read(out.toByteArray(), "network.xlsx", Edited.FACTS);

    assertThat(reading.problems()).isEmpty();
    var scope = reading.scope().orElseThrow();
    assertThat(scope.generatesTasks()).isFalse();
    assertThat(scope.ownTasks()).extracting(t -> t.id()).containsExactly("a", "b", "c");
    assertThat(scope.ownTasks().get(0).demands()).isEqualTo(Map.of("Mason", 1, "Helper", 2));
    assertThat(scope.ownTasks().get(0).notBefore()).contains(LocalDate.of(2027, 3, 3));
    assertThat(scope.ownTasks().get(1).unit()).isEqualTo(DurationUnit.ELAPSED_DAYS);
    assertThat(scope.ownTasks().get(2).duration()).isEqualByComparingTo("12");
    assertThat(scope.ownLinks().get(0).relation()).isEqualTo(LinkRelation.FINISH_TO_START);
    assertThat(scope.ownLinks().get(0).lag()).isEqualByComparingTo("0");
    assertThat(scope.ownLinks().get(1).relation()).isEqualTo(LinkRelation.START_TO_START);
    assertThat(scope.ownLinks().get(1).lag()).isEqualByComparingTo("-2");
    assertThat(scope.ownLinks().get(1).lagUnit()).isEqualTo(DurationUnit.HOURS);
    assertThat(scope.crews()).extracting(c -> c.available()).containsExactly(1, 2);
  }

  private static void rows(Worksheet sheet, Object[][] rows) {
    for (int r = 0; r < rows.length; r++) {
      for (int c = 0; c < rows[r].length; c++) {
        if (rows[r][c] instanceof Number n) sheet.value(r, c, n);
        else if (rows[r][c] instanceof LocalDate d) sheet.value(r, c, d);
        else if (rows[r][c] != null) sheet.value(r, c, (String) rows[r][c]);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"cabin", "two boxes"})
  void a_workbook_saved_again_by_an_office_program_reads_the_same(
      String example, @TempDir Path folder) throws Exception {
    var soffice = office();
    assumeTrue(soffice.isPresent(), "soffice is not on the path");
    var ours = TemplateWriter.write(entries(example), Edited.FACTS);
    Files.createDirectory(folder.resolve("out"));
    Files.write(folder.resolve("house.xlsx"), ours);
    var process =
        new ProcessBuilder(
                soffice.get().toString(),
                "--headless",
                "--norestore",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--convert-to",
                "xlsx:Calc MS Excel 2007 XML",
                "--outdir",
                folder.resolve("out").toString(),
                folder.resolve("house.xlsx").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();
    assertThat(process.waitFor(3, TimeUnit.MINUTES)).isTrue();

    var theirs =
        WorkbookReader.read(
            Files.readAllBytes(folder.resolve("out/house.xlsx")), "theirs.xlsx", Edited.FACTS);

    assertThat(theirs.problems()).isEmpty();
    assertThat(ScopeText.withCells(theirs.scope().orElseThrow()))
        .isEqualTo(
            ScopeText.withCells(
                WorkbookReader.read(ours, "ours.xlsx", Edited.FACTS).scope().orElseThrow()));
  }

  private static Optional<Path> office() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .map(d -> Path.of(d, "soffice"))
        .filter(Files::isExecutable)
        .findFirst();
  }
}

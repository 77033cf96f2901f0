package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.workbook.ResultWorkbook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {
  @TempDir Path folder;

  @Test
  void no_command_is_wrong_usage() {
    var run = Runs.run();
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("a command is missing").contains("plan").contains("check");
    assertThat(run.out()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "bake",
        "plan",
        "plan a.xlsx b.xlsx",
        "plan a.xlsx --ovt x",
        "plan a.xlsx --as-of tomorrow",
        "plan a.xlsx --delay delivery",
        "plan a.xlsx --trials 0",
        "plan a.xlsx --seed x",
        "new",
        "new a.xlsx --units furlongs",
        "new a.xlsx --example castle",
        "new a.xls"
      })
  void wrong_usage_says_what_is_wrong_and_how_to_call(String line) {
    var run = Runs.run((Object[]) line.split(" "));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("cornerpost: ").contains("Usage:").doesNotContain("\tat ");
  }

  @Test
  void help_goes_to_standard_output() {
    assertThat(Runs.run("--help").status()).isZero();
    assertThat(Runs.run("plan", "--help").out()).contains("--delay").contains("--as-of");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"metric", "us"})
  void a_new_blank_workbook_is_made_once_and_never_overwritten(String units) throws IOException {
    var file = folder.resolve("my.xlsx");
    assertThat(Runs.run("new", file, "--units", units).status()).isZero();
    var before = Files.readAllBytes(file);
    var again = Runs.run("new", file, "--units", units);
    assertThat(again.status()).isEqualTo(1);
    assertThat(again.err()).contains("is there already");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void every_example_can_be_made_new() {
    for (var name : Examples.NAMES) {
      assertThat(Runs.run("new", folder.resolve(name + ".xlsx"), "--example", name).status())
          .isZero();
    }
  }

  @Test
  void a_file_that_is_not_there_is_refused() {
    var run = Runs.run("plan", folder.resolve("nothing.xlsx"));
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).contains("nothing.xlsx").contains("no such file");
  }

  @Test
  void an_unknown_price_book_is_refused_with_the_known_ones() {
    var run =
        Runs.run("plan", Runs.example("one-bedroom-40hc"), "--prices", folder, "--out", folder);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).contains("quarrow-plains-2026").contains("velmark-coast-2026");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void names_are_not_doubled() {
    var names = OutputNames.of(Path.of("house-plan.xlsx"), Path.of("out"));
    assertThat(names.workbook()).isEqualTo(Path.of("out/house-plan.xlsx"));
    assertThat(OutputNames.of(Path.of("-plan.xlsx"), Path.of("")).stem()).isEqualTo("-plan-plan");
    assertThat(OutputNames.of(Path.of("my.house.xlsx"), Path.of("")).stem())
        .isEqualTo("my.house-plan");
  }

  @Test
  void what_was_entered_in_an_earlier_result_is_kept_and_said() throws IOException {
    var example = Runs.example("one-bedroom-40hc");
    var result = folder.resolve("one-bedroom-40hc-plan.xlsx");
    assertThat(Runs.run("plan", example, "--out", folder).err()).doesNotContain("is kept as");
    assertThat(Runs.run("plan", example, "--out", folder).err()).doesNotContain("is kept as");
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(4); // nothing was entered, so nothing is set aside
    }
    var entered = WorkbookEdits.typed(Files.readAllBytes(result), Map.of("Openings!E6", 1234.0));
    Files.write(result, entered);
    var run = Runs.run("plan", example, "--out", folder);
    assertThat(run.status()).isZero();
    var kept = folder.resolve("one-bedroom-40hc-plan 2027-03-01.xlsx");
    assertThat(run.err())
        .contains("one-bedroom-40hc-plan.xlsx: was changed since it was written")
        .contains("it is kept as '" + kept.getFileName() + "'");
    assertThat(Files.readAllBytes(kept)).isEqualTo(entered);
    assertThat(ResultWorkbook.isAsWritten(result)).isTrue();
  }
}

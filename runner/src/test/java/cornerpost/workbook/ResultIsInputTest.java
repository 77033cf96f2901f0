package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import cornerpost.price.PriceBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A result workbook is the next input. */
class ResultIsInputTest {
  private static final Path BOOKS = Path.of("..", "price-books");

  @ParameterizedTest
  @CsvSource({
    "one-bedroom-40hc.xlsx, quarrow-plains-2026",
    "two-bedroom-two-boxes.xlsx, velmark-coast-2026"
  })
  void an_example_that_was_planned_reads_the_same_again(String example, String book)
      throws IOException {
    var owners = ExampleWorkbooks.all().get(example);
    var before = WorkbookReader.read(owners, example).scope().orElseThrow();
    var planned =
        Planner.plan(
            before,
            Facts.supplied(),
            PriceBookReader.read(book, files(BOOKS.resolve(book))).book(),
            RunOptions.NONE);

    var result = ResultWorkbook.write(owners, planned.plan().orElseThrow());

    var after = WorkbookReader.read(result, example);
    assertThat(after.problems()).isEmpty();
    assertThat(ScopeText.withCells(after.scope().orElseThrow()))
        .isEqualTo(ScopeText.withCells(before));
  }

  private static TreeMap<String, byte[]> files(Path folder) throws IOException {
    var files = new TreeMap<String, byte[]>();
    try (var all = Files.walk(folder)) {
      for (var file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    return files;
  }
}

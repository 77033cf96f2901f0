package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.price.PriceBook;
import cornerpost.price.PriceBookReader;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.ScopeEdit;
import cornerpost.workbook.WorkbookReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;

/** The example workbooks of the repository, and the price books they name. */
final class Houses {
  private Houses() {}

  static Scope scope(String example) {
    try {
      var file = root().resolve("workbook-templates").resolve(example + ".xlsx");
      var read = WorkbookReader.read(Files.readAllBytes(file), example);
      assertThat(read.problems()).isEmpty();
      return read.scope().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same with nothing on sheet Delays. */
  static Scope withoutDelays(Scope s) {
    return ScopeEdit.of(s).delays(List.of()).scope();
  }

  static PriceBook book(Scope scope) {
    var name = scope.project().text(ProjectQuestions.PRICE_BOOK);
    var folder = root().resolve("price-books").resolve(name);
    var files = new HashMap<String, byte[]>();
    try (var paths = Files.walk(folder)) {
      for (var p : paths.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(p).toString().replace('\\', '/'), Files.readAllBytes(p));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    var read = PriceBookReader.read(name, files);
    assertThat(read.problems()).isEmpty();
    return read.book().orElseThrow();
  }

  private static Path root() {
    var here = Path.of("").toAbsolutePath();
    return here.endsWith("runner") ? here.getParent() : here;
  }
}

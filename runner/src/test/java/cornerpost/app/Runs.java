package cornerpost.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Runs the command line inside the test, with the repository as its home. */
final class Runs {
  static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  static final Path EXAMPLES = HOME.resolve("workbook-templates");

  /** The houses among the supplied workbooks: what is generated and priced from choices. */
  static final List<String> EXAMPLE_NAMES =
      Examples.NAMES.stream().filter(n -> !n.equals("lender-review")).toList();

  record Run(int status, String out, String err) {}

  private Runs() {}

  static Run run(Object... args) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    var texts = List.of(args).stream().map(Object::toString).toArray(String[]::new);
    var cli =
        new Cli(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            HOME);
    int status = cli.run(texts).exitStatus();
    return new Run(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  static Path example(String name) {
    return EXAMPLES.resolve(name + ".xlsx");
  }
}

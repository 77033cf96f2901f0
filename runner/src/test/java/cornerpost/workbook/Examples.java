package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.plan.Plan;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import cornerpost.price.PriceBook;
import cornerpost.price.PriceBookReader;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Runs the supplied example houses, as the program does. */
public final class Examples {
  public static final List<String> HOUSES =
      List.of("one-bedroom-40hc.xlsx", "studio-20hc-metric.xlsx", "two-bedroom-two-boxes.xlsx");

  private Examples() {}

  public static byte[] workbook(String name) {
    return bytes(folder("workbook-templates").resolve(name));
  }

  private static Path folder(String name) {
    var here = Path.of("").toAbsolutePath();
    return (here.endsWith("runner") ? here.getParent() : here).resolve(name);
  }

  public static Plan plan(byte[] workbook) {
    return plan(workbook, Map.of());
  }

  /** A run with some prices changed: code and likely price. */
  static Plan plan(byte[] workbook, Map<String, String> prices) {
    var reading = WorkbookReader.read(workbook, "example.xlsx");
    var scope =
        reading.scope().orElseThrow(() -> new AssertionError(reading.problems().toString()));
    var book = book(scope, prices);
    var options = RunOptions.NONE;
    var result = Planner.plan(scope, Facts.supplied(), java.util.Optional.of(book), options);
    return result.plan().orElseThrow(() -> new AssertionError(result.problems().toString()));
  }

  /** A price book as it is supplied. */
  static PriceBook book(String name) {
    return book(name, Map.of());
  }

  private static PriceBook book(Scope scope, Map<String, String> prices) {
    return book(scope.project().text(ProjectQuestions.PRICE_BOOK), prices);
  }

  private static PriceBook book(String name, Map<String, String> prices) {
    var folder = folder("price-books").resolve(name);
    var files = new TreeMap<String, byte[]>();
    try (var all = Files.walk(folder)) {
      for (var f : all.filter(Files::isRegularFile).toList()) {
        var key = folder.relativize(f).toString().replace('\\', '/');
        files.put(key, repriced(key, bytes(f), prices));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    var result = PriceBookReader.read(name, files);
    return result.book().orElseThrow(() -> new AssertionError(result.problems().toString()));
  }

  /** The likely price of an item set anew; a changed low or high keeps the three in order. */
  private static byte[] repriced(String file, byte[] content, Map<String, String> prices) {
    if (!file.startsWith("items/")) return content;
    var lines = new String(content, StandardCharsets.UTF_8).split("\n", -1);
    int likely = List.of(lines[0].strip().split(",")).indexOf("likely");
    for (int i = 1; i < lines.length; i++) {
      var code = lines[i].split(",", 2)[0];
      if (!prices.containsKey(code)) continue;
      var cells = lines[i].split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
      cells[likely - 1] = "0";
      cells[likely] = prices.get(code);
      cells[likely + 1] = "999999";
      lines[i] = String.join(",", cells);
    }
    return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

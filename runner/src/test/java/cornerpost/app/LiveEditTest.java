package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.office.LibreOffice;
import cornerpost.scope.Answer;
import cornerpost.scope.Question;
import cornerpost.trace.Figure;
import cornerpost.workbook.WorkbookReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Numbers typed into the result workbook, recalculated in LibreOffice, give the totals of a new run
 * on the changed entries: to the cent.
 */
class LiveEditTest {
  private static final String EXAMPLE = "one-bedroom-40hc";

  @TempDir Path folder;

  @Test
  void a_wider_opening_another_price_and_another_quote_give_the_totals_of_a_new_run()
      throws IOException {
    LibreOffice.needed();
    var input = Files.readAllBytes(Runs.example(EXAMPLE));
    var result = planned(input, "first", Runs.HOME.resolve("price-books/quarrow-plains-2026"));

    var width = firstOpening(input, "Width");
    var quote = quoteAmount(input);
    var typed = new LinkedHashMap<String, Double>();
    typed.put(width, WorkbookEdits.number(input, width) + 7.5);
    typed.put(quote, WorkbookEdits.number(input, quote) * 1.0731);
    var code = "ready-mix";
    var line = somePrice(Runs.HOME.resolve("price-books/quarrow-plains-2026/items/ground.csv"));
    code = line[0];
    double price = Double.parseDouble(line[9]);
    double newPrice = Math.round(price * 111.7) / 100.0;

    var withPrice = new LinkedHashMap<>(typed);
    withPrice.put(WorkbookEdits.cell(result, "Prices used", code, "Price"), newPrice);
    var edited = new Recalculated(LibreOffice.recalculated(WorkbookEdits.typed(result, withPrice)));
    assertThat(String.join(" ", edited.texts("Summary")))
        .contains("changed since this run")
        .doesNotContain("Choices match this run");

    var book = copyOfBook("quarrow-plains-2026", code, price, newPrice);
    var again = planned(WorkbookEdits.typed(input, typed), "second", book);
    var fresh = new Recalculated(LibreOffice.recalculated(again));
    assertThat(String.join(" ", fresh.texts("Summary"))).contains("Choices match this run");
    assertSameMoney(edited, fresh);
    assertThat(total(edited)).isNotCloseTo(total(new Recalculated(result)), within(5.0));
  }

  /**
   * Every number of every form and table that a rule may use is moved a little: any rule that
   * branches in Java on a number the owner can type shows here.
   */
  @ParameterizedTest(name = "{0}, seed {1}")
  @CsvSource({
    "one-bedroom-40hc, 1",
    "one-bedroom-40hc, 2",
    "studio-20hc-metric, 3",
    "two-bedroom-two-boxes, 4"
  })
  void any_numbers_typed_give_the_totals_of_a_new_run(String example, long seed)
      throws IOException {
    LibreOffice.needed();
    var input = Files.readAllBytes(Runs.example(example));
    var result = planned(input, "first", null, example);
    var typed = movedALittle(input, seed);
    assertThat(typed.size()).isGreaterThan(40);
    var edited = new Recalculated(LibreOffice.recalculated(WorkbookEdits.typed(result, typed)));
    var again = planned(WorkbookEdits.typed(input, typed), "second", null, example);
    assertSameMoney(edited, new Recalculated(again));
  }

  private static Map<String, Double> movedALittle(byte[] input, long seed) {
    var scope = WorkbookReader.read(input, "x.xlsx", Facts.supplied()).scope().orElseThrow();
    var random = new SplittableRandom(seed);
    var typed = new LinkedHashMap<String, Double>();
    var all = new java.util.ArrayList<Map<Question, Answer>>();
    scope.boxes().forEach(b -> all.add(b.row().all()));
    scope.openings().forEach(o -> all.add(o.row().all()));
    for (var a :
        java.util.List.of(
            scope.site(),
            scope.deckAndRoof(),
            scope.envelope(),
            scope.services(),
            scope.finishes(),
            scope.options(),
            scope.loan())) {
      all.add(a.all());
    }
    for (var answers : all) {
      answers.entrySet().stream()
          .filter(
              e ->
                  e.getKey().kind() == Question.Kind.NUMBER
                      || e.getKey().kind() == Question.Kind.MONEY)
          .filter(e -> e.getValue().value() instanceof Figure && !e.getValue().assumed())
          .sorted(java.util.Comparator.comparing(e -> e.getValue().cell()))
          .forEach(
              e -> {
                var unit =
                    e.getKey().kind() == Question.Kind.MONEY
                        ? Unit.base(((Figure) e.getValue().value()).dimension())
                        : e.getKey().unit(scope.units());
                double now = ((Figure) e.getValue().value()).in(unit).doubleValue();
                if (now == 0) return;
                double moved =
                    Math.round(now * (1 + (random.nextDouble() - 0.6) * 0.06) * 100) / 100.0;
                if (moved > 0) typed.put(e.getValue().cell(), moved);
              });
    }
    return typed;
  }

  private static void assertSameMoney(Recalculated edited, Recalculated fresh) {
    var before = edited.table("Cost plan", "Id");
    var after = fresh.table("Cost plan", "Id");
    assertThat(before.keySet()).isEqualTo(after.keySet());
    var softly = new org.assertj.core.api.SoftAssertions();
    after.forEach(
        (id, row) -> {
          if (row.get("Amount") == null || row.get("Amount").getRawValue() == null) return;
          softly
              .assertThat(Recalculated.number(before.get(id).get("Amount")))
              .as(id)
              .isCloseTo(Recalculated.number(row.get("Amount")), within(1e-6));
        });
    softly.assertThat(total(edited)).isCloseTo(total(fresh), within(0.001));
    softly.assertAll();
  }

  private static double total(Recalculated book) {
    return Recalculated.number(book.beside("Summary", "Total cost"));
  }

  private byte[] planned(byte[] input, String name, Path book) throws IOException {
    return planned(input, name, book, EXAMPLE);
  }

  private byte[] planned(byte[] input, String name, Path book, String example) throws IOException {
    var at = Files.createDirectories(folder.resolve(name));
    var file = at.resolve(example + ".xlsx");
    Files.write(file, input);
    var run = book == null ? Runs.run("plan", file) : Runs.run("plan", file, "--prices", book);
    assertThat(run.status()).as(run.err()).isZero();
    return Files.readAllBytes(at.resolve(example + "-plan.xlsx"));
  }

  private static String firstOpening(byte[] input, String column) throws IOException {
    var scope = WorkbookReader.read(input, "x.xlsx", Facts.supplied()).scope().orElseThrow();
    return WorkbookEdits.cell(input, "Openings", scope.openings().get(0).id(), column);
  }

  private static String quoteAmount(byte[] input) {
    var scope = WorkbookReader.read(input, "x.xlsx", Facts.supplied()).scope().orElseThrow();
    return scope.quotes().stream().filter(q -> q.used()).findFirst().orElseThrow().cell();
  }

  private static String[] somePrice(Path file) throws IOException {
    return Files.readAllLines(file).stream()
        .filter(l -> l.startsWith("ready-mix") || l.startsWith("concrete"))
        .findFirst()
        .orElseThrow()
        .split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
  }

  /** The book with one likely price changed; low and high make room for it. */
  private Path copyOfBook(String name, String code, double from, double to) throws IOException {
    var source = Runs.HOME.resolve("price-books").resolve(name);
    var target = folder.resolve("book").resolve(name);
    try (var files = Files.walk(source)) {
      for (var f : (Iterable<Path>) files::iterator) {
        var copy = target.resolve(source.relativize(f).toString());
        if (Files.isDirectory(f)) {
          Files.createDirectories(copy);
          continue;
        }
        var text = Files.readString(f, StandardCharsets.UTF_8);
        if (f.toString().contains("items")) {
          text =
              text.lines()
                  .map(l -> l.startsWith(code + ",") ? repriced(l, to) : l)
                  .collect(java.util.stream.Collectors.joining("\n", "", "\n"));
        }
        Files.writeString(copy, text);
      }
    }
    return target;
  }

  private static String repriced(String line, double to) {
    var cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
    cells[9] = String.valueOf(to);
    cells[10] = String.valueOf(Math.max(to, Double.parseDouble(cells[10])));
    cells[8] = String.valueOf(Math.min(to, Double.parseDouble(cells[8])));
    return String.join(",", cells);
  }
}

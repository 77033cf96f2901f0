package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import cornerpost.office.LibreOffice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** LibreOffice calculates every formula of the result anew: it must find what the JSON says. */
class RecalculationTest {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  @TempDir Path folder;

  static java.util.List<String> examples() {
    return Runs.EXAMPLE_NAMES;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void every_quantity_amount_and_total_is_what_the_plan_says(String example) throws IOException {
    LibreOffice.needed();
    var run = Runs.run("plan", Runs.example(example), "--out", folder);
    assertThat(run.status()).as(run.err()).isZero();
    var plan = JSON.readTree(folder.resolve(example + "-plan.json").toFile());
    var written = Files.readAllBytes(folder.resolve(example + "-plan.xlsx"));
    var book = new Recalculated(LibreOffice.recalculated(written));

    assertThat(book.errors()).isEmpty();
    quantities(plan, book);
    costLines(plan, book);
    assertThat(Recalculated.number(book.beside("Summary", "Total cost")))
        .isCloseTo(plan.at("/totals/total").doubleValue(), within(0.001));
    assertThat(String.join(" ", book.texts("Summary"))).contains("Choices match this run");
  }

  private static void quantities(JsonNode plan, Recalculated book) {
    var rows = book.table("Quantities", "Id");
    var softly = new SoftAssertions();
    for (var q : plan.get("quantities")) {
      var id = q.get("id").asText();
      softly.assertThat(rows).as("row of %s", id).containsKey(id);
      if (!rows.containsKey(id)) continue;
      double expected = q.get("value").doubleValue();
      softly
          .assertThat(Recalculated.number(rows.get(id).get("Quantity")))
          .as(id)
          .isCloseTo(expected, within(1e-9 * Math.max(Math.abs(expected), 1e-3)));
    }
    softly.assertThat(plan.get("quantities").size()).isGreaterThan(80);
    softly.assertAll();
  }

  private static void costLines(JsonNode plan, Recalculated book) {
    var rows = book.table("Cost plan", "Id");
    var softly = new SoftAssertions();
    double sum = 0;
    for (var line : plan.get("costLines")) {
      var id = line.get("id").asText();
      softly.assertThat(rows).as("row of %s", id).containsKey(id);
      if (!rows.containsKey(id)) continue;
      var row = rows.get(id);
      double amount = line.get("amount").doubleValue();
      sum += amount;
      softly
          .assertThat(Recalculated.number(row.get("Amount")))
          .as(id)
          .isCloseTo(amount, within(1e-6));
      double quantity = line.get("quantity").doubleValue();
      softly
          .assertThat(Recalculated.number(row.get("Quantity")))
          .as(id)
          .isCloseTo(quantity, within(1e-9 * Math.max(Math.abs(quantity), 1e-3)));
      softly.assertThat(row.get("Amount").getFormula()).as("formula of %s", id).isNotEmpty();
    }
    softly.assertThat(sum).isCloseTo(plan.at("/totals/total").doubleValue(), within(0.005));
    softly.assertAll();
  }
}

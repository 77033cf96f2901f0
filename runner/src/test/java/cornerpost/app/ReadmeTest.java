package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README answers about the late box is what a run says today. */
class ReadmeTest {
  private static final String EXAMPLE = "mid-build-late-delivery";

  @TempDir Path folder;

  private static String day(JsonNode date, String pattern) {
    return LocalDate.parse(date.asText())
        .format(DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH));
  }

  /** To the whole: cents move with every price. */
  private static String money(JsonNode amount) {
    var format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ENGLISH));
    return "some USD " + format.format(amount.decimalValue().setScale(0, RoundingMode.HALF_UP));
  }

  private static void says(String text) throws IOException {
    var readme = Files.readString(Runs.HOME.resolve("README.md"));
    assertThat(readme.contains(text)).as("README says: %s", text).isTrue();
  }

  @Test
  void the_three_lines_on_the_late_box_are_those_of_a_run() throws IOException {
    var run = Runs.run("plan", Runs.example(EXAMPLE), "--out", folder);
    assertThat(run.status()).as(run.err()).isZero();
    var json = new ObjectMapper().readTree(folder.resolve(EXAMPLE + "-plan.json").toFile());
    var r = json.get("replanning");

    var late = r.at("/slip/points/12");
    var planned = LocalDate.parse(r.at("/slip/planned").asText());
    var last = LocalDate.parse(r.at("/slip/lastDay").asText());
    assertThat(ChronoUnit.DAYS.between(planned, last)).isEqualTo(2);
    says(
        "\n- Twelve days late moves move-in by "
            + late.get("moveInDays")
            + ", to "
            + day(late.get("moveIn"), "EEE d MMM yyyy")
            + ", and costs "
            + money(late.get("cost"))
            + "; up to "
            + day(r.at("/slip/lastDay"), "EEE d MMM yyyy")
            + ", two days late, nothing would have moved.\n");

    var q = r.get("resequencing");
    var idle = StreamSupport.stream(q.get("idle").spliterator(), false).toList();
    for (var crew : new String[] {"Steelwork and openings", "Electrical"}) {
      var first =
          idle.stream().filter(i -> i.get("crew").asText().equals(crew)).findFirst().orElseThrow();
      says("stand idle from " + day(first.get("from"), "d MMMM") + ";");
    }
    assertThat(q.at("/soonest/moveIn")).isEqualTo(q.get("present")); // none ends sooner
    assertThat(q.at("/fewest/changed")).isEqualTo(q.at("/fewest/atLeast")); // shown to be fewest
    says(
        "none ends sooner, and "
            + q.at("/fewest/changed")
            + " bookings change: no order that ends no later changes fewer.\n");

    var back = r.get("recovery");
    assertThat(back.get("reached").asBoolean()).isTrue();
    assertThat(back.get("measures")).allMatch(m -> m.get("what").asText().startsWith("hired"));
    says("\n- The two weeks can be won back for " + money(back.get("cost")) + ", by hir");
    assertThat(late.get("moveInDays").asInt()).isEqualTo(14); // two weeks
  }
}

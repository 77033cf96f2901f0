package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans that are kept stay in the result workbook, and a late run is compared with the last. */
class KeptPlansTest {
  private static final String EXAMPLE = "one-bedroom-40hc";

  @TempDir Path folder;

  private JsonNode replanning(Path where) throws IOException {
    var json = Files.readString(where.resolve(EXAMPLE + "-plan.json"));
    return new ObjectMapper().readTree(json).get("replanning");
  }

  @Test
  void kept_plans_survive_runs_and_a_late_plan_is_compared_with_the_last() throws IOException {
    var first = folder.resolve("first");
    var kept = Runs.run("plan", Runs.example(EXAMPLE), "--out", first, "--baseline", "Contract");
    assertThat(kept.status()).as(kept.err()).isZero();
    var one = replanning(first);
    assertThat(one.at("/baseline/name").asText()).isEqualTo("Contract");
    assertThat(one.at("/baseline/moveInDays").asInt()).isZero();
    assertThat(one.at("/baseline/rows"))
        .allSatisfy(r -> assertThat(r.get("money").decimalValue()).isEqualByComparingTo("0"));

    var second = folder.resolve("second");
    var file = first.resolve(EXAMPLE + "-plan.xlsx");
    var late =
        Runs.run("plan", file, "--out", second, "--baseline", "Late", "--delay", "delivery=40");
    assertThat(late.status()).as(late.err()).isZero();
    var two = replanning(second);
    assertThat(two.get("kept").size()).isEqualTo(2 * one.get("kept").size());
    assertThat(two.at("/baseline/names").toString()).isEqualTo("[\"Contract\",\"Late\"]");

    var third = folder.resolve("third");
    var plain = Runs.run("plan", second.resolve(EXAMPLE + "-plan.xlsx"), "--out", third);
    assertThat(plain.status()).as(plain.err()).isZero();
    var three = replanning(third);
    assertThat(three.get("kept")).isEqualTo(two.get("kept"));
    assertThat(three.at("/baseline/name").asText()).isEqualTo("Late");
    assertThat(three.at("/baseline/moveInDays").asInt()).isNegative(); // it is not late here
  }

  @Test
  void a_delay_of_the_command_line_has_its_cause_and_who_bears_it() throws IOException {
    var delay = "Boxes delivered=9, flood on the road,the haulier";
    var run = Runs.run("plan", Runs.example(EXAMPLE), "--out", folder, "--delay", delay);
    assertThat(run.status()).as(run.err()).isZero();
    var json = Files.readString(folder.resolve(EXAMPLE + "-plan.json"));
    var first = new ObjectMapper().readTree(json).at("/finance/delays/0");
    assertThat(first.get("days").asInt()).isEqualTo(9);
    assertThat(first.get("cause").asText()).isEqualTo("flood on the road");
    assertThat(first.get("borneBy").asText()).isEqualTo("the haulier");
    var wrong = Runs.run("plan", Runs.example(EXAMPLE), "--delay", "delivery,9");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("EVENT=DAYS");
  }

  @Test
  void each_crew_gets_a_calendar_when_it_is_asked_for() throws IOException {
    var run = Runs.run("plan", Runs.example(EXAMPLE), "--out", folder, "--crew-calendars");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(Files.readString(folder.resolve(EXAMPLE + "-plan-electrical.ics")))
        .startsWith("BEGIN:VCALENDAR\r\n")
        .contains("CATEGORIES:Electrical\r\n")
        .endsWith("END:VCALENDAR\r\n");
    assertThat(folder.resolve(EXAMPLE + "-plan-owner.ics")).exists();
  }
}

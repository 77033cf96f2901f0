package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Networks typed into Own tasks and Own links with another library, and planned as a file. */
class OwnNetworkFileTest {
  private static final LocalDate START = LocalDate.of(2026, 11, 2);

  @TempDir Path folder;

  private record Task(String id, int days, List<String> before, int[] demands) {}

  /**
   * Hendrickson and Au, Project Management for Construction, ch. 10, table 10-1: nine activities,
   * 30 days; early start, late start, total and free float.
   */
  @ParameterizedTest(name = "{0}: early {1}, late {2}, float {3}, free {4}")
  @CsvSource({
    "A, 0, 0, 0, 0",
    "B, 0, 9, 9, 9",
    "C, 4, 4, 0, 0",
    "D, 4, 15, 11, 10",
    "E, 12, 13, 1, 0",
    "F, 12, 12, 0, 0",
    "G, 21, 22, 1, 1",
    "H, 21, 25, 4, 4",
    "I, 24, 24, 0, 0"
  })
  void a_published_network_comes_out_as_published(
      String id, int early, int late, int total, int free) throws IOException {
    var none = new int[0];
    var tasks =
        List.of(
            new Task("A", 4, List.of(), none),
            new Task("B", 3, List.of(), none),
            new Task("C", 8, List.of("A"), none),
            new Task("D", 7, List.of("A"), none),
            new Task("E", 9, List.of("B", "C"), none),
            new Task("F", 12, List.of("B", "C"), none),
            new Task("G", 2, List.of("D", "E"), none),
            new Task("H", 5, List.of("D", "E"), none),
            new Task("I", 6, List.of("F", "G"), none));
    var schedule = planned(tasks, new int[0]);
    assertThat(schedule.get("durationDays").asDouble()).isEqualTo(30);
    var task = task(schedule, id);
    assertThat(day(task, "earlyStart")).isEqualTo(early);
    assertThat(day(task, "lateStart")).isEqualTo(late);
    assertThat(task.get("totalFloatDays").asDouble()).isCloseTo(total, within(1e-9));
    assertThat(task.get("freeFloatDays").asDouble()).isCloseTo(free, within(1e-9));
    assertThat(task.get("critical").asBoolean()).isEqualTo(total == 0);
  }

  /**
   * J. H. Patterson, Management Science 30(7), 1984, problem 1: critical path 18, with three crews
   * of 2, 1 and 2 the optimum is 19.
   */
  @Test
  void a_published_project_with_crews_is_planned_at_its_optimum() throws IOException {
    var tasks = new ArrayList<Task>();
    int[] days = {0, 6, 4, 3, 1, 6, 2, 1, 4, 3, 2, 3, 5, 0};
    int[][] after = {
      {2, 3, 4}, {9, 10}, {5, 6, 7}, {8, 11}, {10}, {12}, {8, 11}, {13}, {14}, {12}, {12}, {13},
      {14}, {}
    };
    int[][] demands = {
      {0, 0, 0}, {1, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {1, 0, 1}, {1, 0, 0}, {0, 0, 0},
      {0, 1, 1}, {0, 0, 1}, {0, 0, 1}, {0, 1, 0}, {0, 0, 0}, {0, 0, 0}
    };
    for (int i = 0; i < days.length; i++) {
      var before = new ArrayList<String>();
      for (int j = 0; j < after.length; j++) {
        for (int a : after[j]) if (a == i + 1) before.add("T" + (j + 1));
      }
      tasks.add(new Task("T" + (i + 1), days[i], before, demands[i]));
    }
    assertThat(planned(tasks, new int[0]).get("durationDays").asDouble()).isEqualTo(18);
    var limited = planned(tasks, new int[] {2, 1, 2});
    assertThat(limited.get("durationDays").asDouble()).isEqualTo(19);
    assertThat(limited.get("crewLimited").asBoolean()).isTrue();
    assertThat(limited.get("gapDays").asDouble()).isZero();
  }

  private static JsonNode task(JsonNode schedule, String id) {
    for (var t : schedule.get("tasks")) if (t.get("id").asText().equals(id)) return t;
    throw new IllegalArgumentException(id);
  }

  /** Days from the start: the calendar works every day. */
  private static long day(JsonNode task, String field) {
    return ChronoUnit.DAYS.between(START, LocalDate.parse(task.get(field).asText()));
  }

  private JsonNode planned(List<Task> tasks, int[] available) throws IOException {
    var out = new ByteArrayOutputStream();
    try (var book = new Workbook(out, "Test", "1.0")) {
      var project = book.newWorksheet("Project");
      row(project, 0, "Start date", START);
      project.style(0, 1).format("yyyy-mm-dd").set();
      row(project, 1, "Calendar", "Every day");
      row(project, 2, "Generated tasks", "none");
      var own = book.newWorksheet("Own tasks");
      row(own, 0, "Id", "Name", "Duration", "Duration unit");
      for (int c = 0; c < available.length; c++) own.value(0, 4 + c, "Crew " + (c + 1));
      var links = book.newWorksheet("Own links");
      row(links, 0, "Before", "After", "Relation", "Lag", "Lag unit");
      int link = 1;
      for (int i = 0; i < tasks.size(); i++) {
        var t = tasks.get(i);
        row(own, i + 1, t.id(), "Task " + t.id(), t.days(), "d");
        for (int c = 0; c < available.length; c++) {
          if (t.demands()[c] > 0) own.value(i + 1, 4 + c, t.demands()[c]);
        }
        for (var b : t.before()) row(links, link++, b, t.id(), "finish-to-start", 0, "d");
      }
      if (available.length > 0) {
        var crews = book.newWorksheet("Crews");
        row(crews, 0, "Name", "Number available", "Calendar", "Rate");
        for (int c = 0; c < available.length; c++) {
          crews.value(c + 1, 0, "Crew " + (c + 1));
          crews.value(c + 1, 1, available[c]);
        }
      }
    }
    var file = folder.resolve("network.xlsx");
    Files.write(file, out.toByteArray());
    var run = Runs.run("plan", file);
    assertThat(run.status()).as(run.err()).isZero();
    return new ObjectMapper()
        .readTree(folder.resolve("network-plan.json").toFile())
        .get("schedule");
  }

  private static void row(Worksheet sheet, int row, Object... values) {
    for (int c = 0; c < values.length; c++) {
      if (values[c] instanceof LocalDate d) sheet.value(row, c, d);
      else if (values[c] instanceof Number n) sheet.value(row, c, n);
      else sheet.value(row, c, values[c].toString());
    }
  }
}

package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import cornerpost.office.LibreOffice;
import cornerpost.takeoff.BuildTask;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The path between two chosen events, in the workbook, the page and the data of whole runs. */
class LongestPathRunTest {
  private static final String EXAMPLE = "one-bedroom-40hc";
  private static final String SHEET = "Longest path";

  @TempDir Path folder;

  private JsonNode planned(Object... args) throws IOException {
    var run = Runs.run(args);
    assertThat(run.status()).as(run.err()).isZero();
    var json = Files.readString(folder.resolve(EXAMPLE + "-plan.json"));
    return new ObjectMapper().readTree(json).at("/schedule");
  }

  private Path result() {
    return folder.resolve(EXAMPLE + "-plan.xlsx");
  }

  private static List<String> texts(JsonNode list, String field) {
    var found = new ArrayList<String>();
    list.forEach(n -> found.add(field.isEmpty() ? n.asText() : n.get(field).asText()));
    return found;
  }

  @Test
  void delivery_to_move_in_is_shown_unless_something_else_is_asked() throws IOException {
    var schedule = planned("plan", Runs.example(EXAMPLE), "--out", folder);
    var path = schedule.get("longestPath");
    assertThat(path.get("from").asText()).isEqualTo("delivery");
    assertThat(path.get("to").asText()).isEqualTo("move-in");
    assertThat(texts(path.get("steps"), "id"))
        .isEqualTo(texts(schedule.get("deliveryToMoveIn"), ""));
    var rows = new Recalculated(Files.readAllBytes(result())).table(SHEET, "Step").values();
    assertThat(rows.iterator().next().get("Id").asString()).isEqualTo("delivery");
    assertThat(rows).hasSize(path.get("steps").size());
    assertThat(Files.readString(folder.resolve(EXAMPLE + "-plan.html")))
        .contains("The longest path from Boxes delivered to Move-in")
        .contains("waits for Set the boxes on their supports");
  }

  @Test
  void the_choice_of_the_workbook_is_shown_everywhere_and_survives_the_next_run()
      throws IOException {
    var chosen = folder.resolve(EXAMPLE + ".xlsx");
    Files.write(
        chosen,
        chosen(
            Files.readAllBytes(Runs.example(EXAMPLE)), "footing-inspection", "Fix the boxes down"));
    var path = planned("plan", chosen).get("longestPath");
    var ids = texts(path.get("steps"), "id");
    assertThat(ids).startsWith("footing-inspection", "pour").endsWith("fix-down");
    var once = new Recalculated(Files.readAllBytes(result()));
    var rows = once.table(SHEET, "Step").values().stream().toList();
    assertThat(rows).extracting(r -> r.get("Id").asString()).isEqualTo(ids);
    assertThat(rows.get(1).get("What drives it").asString())
        .isEqualTo("waits for Footing inspection, before concrete");
    assertThat(once.texts(SHEET)).contains(path.get("words").asText());
    assertThat(Files.readString(folder.resolve(EXAMPLE + "-plan.html")))
        .contains(path.get("words").asText());
    assertThat(path.get("words").asText()).startsWith("From Footing inspection, before concrete,");

    assertThat(planned("plan", result()).get("longestPath")).isEqualTo(path);
    assertThat(new Recalculated(Files.readAllBytes(result())).texts(SHEET))
        .isEqualTo(once.texts(SHEET));
  }

  @Test
  void sums_of_the_sheet_are_those_of_the_data_when_recalculated() throws IOException {
    LibreOffice.needed();
    var path = planned("plan", Runs.example(EXAMPLE), "--out", folder).get("longestPath");
    var book = new Recalculated(LibreOffice.recalculated(Files.readAllBytes(result())));
    assertThat(book.errors()).isEmpty();
    var rows = book.rows(SHEET);
    var total =
        rows.stream()
            .filter(r -> Recalculated.text(r, 2).equals("From the first to the last"))
            .findFirst()
            .orElseThrow();
    assertThat(Recalculated.number(total.getCell(8))).isEqualTo(path.get("workingDays").asDouble());
    assertThat(Recalculated.number(total.getCell(9))).isEqualTo(path.get("elapsedDays").asDouble());
    var steps = book.table(SHEET, "Step");
    path.get("steps")
        .forEach(
            s -> {
              var row =
                  steps.values().stream()
                      .filter(r -> r.get("Id").asString().equals(s.get("id").asText()))
                      .findFirst()
                      .orElseThrow();
              assertThat(Recalculated.number(row.get("Elapsed days")))
                  .as(s.get("id").asText())
                  .isEqualTo(s.get("elapsedDays").asDouble());
            });
  }

  @Test
  void the_command_line_chooses_too_and_that_there_is_no_path_is_said() throws IOException {
    var path =
        planned(
                "plan",
                Runs.example(EXAMPLE),
                "--out",
                folder,
                "--path-from",
                "move-in",
                "--path-to",
                "Boxes delivered")
            .get("longestPath");
    assertThat(path.get("steps")).isEmpty();
    var words =
        "No path leads from Move-in to Boxes delivered: neither the links nor the order of the crews"
            + " make the second wait for the first. One leads from Boxes delivered to Move-in.";
    assertThat(path.get("words").asText()).isEqualTo(words);
    assertThat(new Recalculated(Files.readAllBytes(result())).texts(SHEET)).contains(words);
    assertThat(Files.readString(folder.resolve(EXAMPLE + "-plan.html"))).contains(words);
  }

  @Test
  void an_event_that_is_not_there_is_refused_with_what_is_near() {
    var run = Runs.run("plan", Runs.example(EXAMPLE), "--out", folder, "--path-to", "watertigth");
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err())
        .contains("--path-to watertigth: no task or milestone is called 'watertigth'")
        .contains("near to it: watertight");
    assertThat(folder.toFile().list()).isEmpty();
    assertThat(Runs.run("plan", Runs.example(EXAMPLE), "--path-from").status()).isEqualTo(2);
    assertThat(Runs.run("plan", "--help").out()).contains("--path-from").contains("--path-to");
  }

  /** Before a run any build's tasks are offered, or the owner's; after it those of the plan. */
  @Test
  void drop_downs_offer_the_tasks_there_are() throws IOException {
    LibreOffice.needed();
    var blank = Files.readAllBytes(Runs.EXAMPLES.resolve("blank-metric.xlsx"));
    assertThat(offered(blank))
        .containsExactly("" + BuildTask.values().length, BuildTask.values()[0].id());
    var schedule = planned("plan", Runs.example(EXAMPLE), "--out", folder);
    assertThat(offered(Files.readAllBytes(result())))
        .containsExactly("" + schedule.get("tasks").size(), schedule.at("/tasks/0/id").asText());
    assertThat(offered(own(blank))).containsExactly("2", "first");
  }

  private static byte[] own(byte[] blank) throws IOException {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(blank))) {
      type(book, "Project", "Generated tasks", "none");
      var tasks = book.getSheet("Own tasks");
      tasks.getRow(4).getCell(0).setCellValue("first");
      tasks.getRow(5).getCell(0).setCellValue("second");
      return bytes(book);
    }
  }

  /** How many the list holds, and the first. */
  private static List<String> offered(byte[] workbook) throws IOException {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      for (var label : List.of("Longest path from", "Longest path to")) {
        var cell = entry(book, "Options", label);
        assertThat(book.getSheet("Options").getDataValidations())
            .anyMatch(
                v ->
                    v.getValidationConstraint().getFormula1() != null
                        && v.getValidationConstraint().getFormula1().equals("list_tasks")
                        && v.getRegions().getCellRangeAddresses()[0].isInRange(cell));
      }
      var row = book.createSheet("Asked").createRow(0);
      row.createCell(0).setCellFormula("ROWS(list_tasks)");
      row.createCell(1).setCellFormula("INDEX(list_tasks,1)");
      var asked = new Recalculated(LibreOffice.recalculated(bytes(book))).rows("Asked").get(0);
      return List.of(asked.getCell(0).getRawValue().replace(".0", ""), asked.getCell(1).getText());
    }
  }

  private static byte[] chosen(byte[] workbook, String from, String to) throws IOException {
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      type(book, "Options", "Longest path from", from);
      type(book, "Options", "Longest path to", to);
      return bytes(book);
    }
  }

  private static void type(XSSFWorkbook book, String sheet, String label, String entry) {
    entry(book, sheet, label).setCellValue(entry);
  }

  private static org.apache.poi.ss.usermodel.Cell entry(
      XSSFWorkbook book, String sheet, String label) {
    for (var row : book.getSheet(sheet)) {
      var first = row.getCell(0);
      if (first != null && first.toString().equals(label)) return row.getCell(1);
    }
    throw new IllegalArgumentException(label);
  }

  private static byte[] bytes(XSSFWorkbook book) throws IOException {
    var out = new ByteArrayOutputStream();
    book.write(out);
    return out.toByteArray();
  }
}

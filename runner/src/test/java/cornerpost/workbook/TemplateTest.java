package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.scope.Problem;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateTest {
  private static final Path FOLDER = Path.of("..", "workbook-templates");

  @ParameterizedTest
  @ValueSource(
      strings = {"one-bedroom-40hc.xlsx", "studio-20hc-metric.xlsx", "two-bedroom-two-boxes.xlsx"})
  void an_example_reads_without_any_problem(String name) throws Exception {
    var reading = WorkbookReader.read(ExampleWorkbooks.all().get(name), name);

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.scope()).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"blank-metric.xlsx", "blank-us.xlsx"})
  void a_blank_workbook_asks_for_a_date_a_box_and_a_room(String name) {
    var reading = WorkbookReader.read(ExampleWorkbooks.all().get(name), name);

    assertThat(reading.problems())
        .extracting(Problem::message)
        .containsExactly(
            "Project!B6: Start date is empty; expected a date typed as a date, not as text",
            "Containers: no box; expected at least one row with a box",
            "Rooms: no room; expected at least one row with a room");
  }
}

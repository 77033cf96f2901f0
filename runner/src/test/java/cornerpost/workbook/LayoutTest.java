package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.scope.Problem;
import cornerpost.scope.SiteQuestions;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Where labels, columns and sheets may stand, and what is said where they are missing. */
class LayoutTest {

  @Test
  void a_missing_sheet_is_named_once() {
    assertThat(Edited.twoBox().with(w -> remove(w, "Containers")).messages())
        .contains(
            "house.xlsx: no sheet 'Containers'; expected it; a new workbook has every sheet ready"
                + " to fill in")
        .noneMatch(m -> m.contains("no box"));
    assertThat(Edited.twoBox().with(w -> remove(w, "Project")).messages())
        .containsExactly(
            "house.xlsx: no sheet 'Project'; expected it; a new workbook has every sheet ready to"
                + " fill in");
  }

  @Test
  void sheets_that_may_wait_may_be_missing() {
    var reading =
        Edited.twoBox()
            .with(
                w -> {
                  for (var name :
                      new String[] {
                        "Start here",
                        "Quotes",
                        "Own items",
                        "Own tasks",
                        "Own links",
                        "Crews",
                        "Calendars",
                        "Holidays",
                        "Progress",
                        "Delays",
                        "Loan",
                        "Options",
                        "Lists"
                      }) {
                    remove(w, name);
                  }
                })
            .read();

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.scope().orElseThrow().calendars())
        .extracting(c -> c.name())
        .containsExactly("Weekdays", "Six days", "Every day", "Weekends");
  }

  @Test
  void a_missing_line_takes_its_usual_value_with_a_source_that_says_so() {
    var scope = Edited.twoBox().text("Site and foundation!A13", "").read().scope().orElseThrow();

    var depth = scope.site().figure(SiteQuestions.FROST_DEPTH);
    assertThat(depth.inWords())
        .contains("600 mm")
        .contains("default/site-and-foundation/frost-depth");
    assertThat(depth.leaves()).allMatch(l -> l.source().contains("no entry of this name"));
  }

  @Test
  void a_missing_line_without_usual_value_is_a_fault_of_the_sheet() {
    assertThat(Edited.twoBox().text("Project!A6", "Begin").messages())
        .containsExactly(
            "Project: no line 'Start date'; expected the label in column A and the entry beside it"
                + " in column B");
  }

  @Test
  void a_label_on_two_lines_is_a_fault() {
    assertThat(Edited.twoBox().text("Project!A30", "start date").messages())
        .containsExactly(
            "Project!B6: the label 'Start date' stands on two lines; expected it once");
  }

  @Test
  void a_missing_column_is_a_fault_of_the_header_row() {
    assertThat(
            Edited.twoBox().text("Openings!E4", "Breadth").text("Openings!H4", "Along").messages())
        .containsExactly("Openings!A4: no column 'Width', 'Offset'; expected it in the header row");
  }

  @Test
  void a_missing_column_with_a_usual_value_takes_it() {
    var scope = Edited.twoBox().text("Openings!I4", "Pane").read().scope().orElseThrow();

    assertThat(scope.openings().get(4).glazing().label()).isEqualTo("double, low-e");
  }

  @Test
  void a_column_of_the_same_name_twice_is_a_fault() {
    assertThat(Edited.twoBox().text("Openings!L4", "Width").messages())
        .containsExactly("Openings!L4: a second column 'Width'; expected each column once");
  }

  @Test
  void a_sheet_without_its_header_row_is_a_fault() {
    assertThat(Edited.twoBox().text("Rooms!A4", "Chamber").messages())
        .contains(
            "Rooms: no header row with the column 'Room'; expected one row with the column names"
                + " 'Room', 'Box', 'Use', 'Length', 'Towards the next room'");
  }

  @Test
  void rows_may_leave_gaps_and_stand_under_a_header_anywhere() {
    var moved =
        Edited.twoBox()
            .with(
                w -> {
                  var sheet = w.getSheet("Rooms");
                  sheet.shiftRows(6, 40, 3);
                  sheet.shiftRows(3, 60, 2);
                });

    assertThat(moved.read().problems()).isEmpty();
    assertThat(moved.read().scope().orElseThrow().rooms()).hasSize(6);
  }

  @Test
  void hidden_sheets_merged_cells_and_sheets_of_the_owner_do_no_harm() {
    var edited =
        Edited.twoBox()
            .with(
                w -> {
                  w.setSheetHidden(w.getSheetIndex("Envelope"), true);
                  w.getSheet("Finishes").addMergedRegion(new CellRangeAddress(4, 4, 1, 2));
                  w.createSheet("Paint colours").createRow(0).createCell(0).setCellValue("Room");
                  w.createSheet("Summary").createRow(0).createCell(0).setCellValue("Total cost");
                });

    assertThat(edited.messages()).isEmpty();
  }

  @Test
  void a_workbook_of_own_tasks_only_needs_one() {
    var none =
        Edited.twoBox()
            .text("Project!B11", "none")
            .with(w -> remove(w, "Containers"))
            .with(w -> remove(w, "Rooms"));

    assertThat(none.read().problems())
        .extracting(Problem::message)
        .containsExactly("Own tasks: no task; expected at least one row with a task");
    var one = none.row("Own tasks", 5, "t1", "Task", 2, "d").read();
    assertThat(one.problems()).isEmpty();
    assertThat(one.scope().orElseThrow().openings()).isEmpty();
  }

  private static void remove(XSSFWorkbook workbook, String sheet) {
    workbook.removeSheetAt(workbook.getSheetIndex(sheet));
  }
}

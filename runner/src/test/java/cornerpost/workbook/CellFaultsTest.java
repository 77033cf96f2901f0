package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.Unit;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.ProjectQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

class CellFaultsTest {
  private static final String DATE_WANTED = "; expected a date typed as a date, not as text";

  @ParameterizedTest(name = "{0} holding {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Openings!E5 | wide | Openings!E5: text 'wide' in a number cell (Width); expected a number of millimetres
          Openings!E5 | 2400 | Openings!E5: text '2400' in a number cell (Width); expected a number of millimetres
          Openings!H6 | 5,4  | Openings!H6: text '5,4' in a number cell (Offset); expected a number of metres
          Envelope!B18 | two | Envelope!B18: text 'two' in a number cell (Stud spacing); expected a number of millimetres
          Envelope!B19 | two | Envelope!B19: text 'two' in a number cell (Rows of noggings); expected a whole number
          Loan!B5 | ninety | Loan!B5: text 'ninety' in a number cell (Loan); expected an amount of money as a plain number
          Loan!B7 | 5.5 % | Loan!B7: text '5.5 %' in a number cell (Interest a year); expected a share, such as 15 % or 0.15
          Openings!J5 | perhaps | Openings!J5: text 'perhaps' (Opens); expected yes or no
          Openings!C5 | lefty side | Openings!C5: text 'lefty side' (Wall); expected one of 'left side', 'right side', 'door end', 'blind end', 'roof'; maybe 'left side'
          Openings!C5 | east | Openings!C5: text 'east' (Wall); expected one of 'left side', 'right side', 'door end', 'blind end', 'roof'
          Containers!F6 | side | Containers!F6: text 'side' (Joint); expected one of 'stands alone', 'side by side', 'end to end', 'stacked on top'; maybe 'side by side'
          Project!B6 | 2027-02-01 | Project!B6: text '2027-02-01' in a date cell (Start date); expected a date typed as a date, not as text
          Project!B9 | feet | Project!B9: text 'feet' (Units); expected 'metric', 'US customary', the units of every number in the workbook
          """)
  void a_text_that_does_not_fit_is_a_fault_of_its_cell(String cell, String text, String message) {
    assertThat(Edited.twoBox().text(cell, text).messages()).containsExactly(message);
  }

  @ParameterizedTest(name = "{0} holding {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Openings!E5 | -900 | Openings!E5: the number -900 (Width); expected a number of millimetres from 50 to 16000
          Openings!E5 | 20 | Openings!E5: the number 20 (Width); expected a number of millimetres from 50 to 16000
          Rooms!D5 | 0.2 | Rooms!D5: the number 0.2 (Length); expected a number of metres from 0.3 to 16.2
          Envelope!B19 | 1.5 | Envelope!B19: 1.5 (Rows of noggings); expected a whole number
          Envelope!B19 | 6 | Envelope!B19: the number 6 (Rows of noggings); expected a whole number from 0 to 5
          Loan!B10 | 60 | Loan!B10: the number 60 (Retainage); expected a share, such as 15 % or 0.15 from 0 % to 50 %
          Loan!B5 | -1 | Loan!B5: the number -1 (Loan); expected an amount of money as a plain number from 0 up
          Openings!D5 | 3 | Openings!D5: the number 3 (Kind); expected one of 'window', 'door', 'glazed door', 'sliding door', 'pass-through to next box', 'vent', 'service sleeve'
          Openings!J5 | 1 | Openings!J5: the number 1 (Opens); expected yes or no
          """)
  void a_number_that_does_not_fit_is_a_fault_of_its_cell(
      String cell, double number, String message) {
    assertThat(Edited.twoBox().number(cell, number).messages()).containsExactly(message);
  }

  @Test
  void limits_are_said_in_the_units_of_the_workbook() {
    assertThat(Edited.cabin().number("Openings!E5", 1).messages())
        .containsExactly(
            "Openings!E5: the number 1 (Width); expected a number of inches from 2 to 640");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Openings!E5 | Openings!E5: Width is empty; expected a number of millimetres
          Rooms!B5 | Rooms!B5: Box is empty; expected a name
          Project!B6 | Project!B6: Start date is empty; expected a date typed as a date, not as text
          Project!B9 | Project!B9: Units is empty; expected 'metric', 'US customary', the units of every number in the workbook
          """)
  void an_empty_cell_that_has_no_usual_value_is_a_fault(String cell, String message) {
    assertThat(Edited.twoBox().blank(cell).messages()).containsExactly(message);
  }

  @Test
  void an_empty_cell_with_a_usual_value_takes_it_and_says_so() {
    var scope = Edited.twoBox().blank("Finishes!B10").read().scope().orElseThrow();

    var answer = scope.finishes().find(FinishesQuestions.KITCHEN_RUN).orElseThrow();
    assertThat(answer.assumed()).isTrue();
    assertThat(answer.cell()).isEqualTo("Finishes!B10");
    assertThat(scope.finishes().figure(FinishesQuestions.KITCHEN_RUN).in(Unit.M))
        .isEqualByComparingTo("3");
  }

  @Test
  void a_date_in_a_number_cell_is_a_fault() {
    assertThat(Edited.twoBox().date("Openings!E5", LocalDate.of(2027, 3, 3)).messages())
        .containsExactly(
            "Openings!E5: the date 2027-03-03 in a number cell (Width); expected a number of millimetres");
  }

  @Test
  void a_number_without_a_date_format_is_a_date_if_it_can_be_one() {
    // 46419 days after 1899-12-30 is 2027-02-01: 46419 = 127 years x 365 + 32 leap days + 32
    var plain = Edited.twoBox().number("Project!B6", 46419).with(CellFaultsTest::startUnformatted);

    assertThat(plain.read().scope().orElseThrow().project().date(ProjectQuestions.START))
        .isEqualTo(LocalDate.of(2027, 2, 1));
    assertThat(Edited.twoBox().number("Project!B6", 20270201).messages())
        .containsExactly(
            "Project!B6: the number 20270200 in a date cell (Start date)" + DATE_WANTED);
  }

  private static void startUnformatted(XSSFWorkbook workbook) {
    workbook.getSheet("Project").getRow(5).getCell(1).setCellStyle(null);
  }

  @Test
  void dates_of_a_workbook_that_counts_from_1904_are_understood() {
    var edited =
        Edited.twoBox()
            .with(w -> w.getCTWorkbook().getWorkbookPr().setDate1904(true))
            .number("Project!B6", 46419 - 1462); // the two counts are 1462 days apart

    assertThat(edited.read().scope().orElseThrow().project().date(ProjectQuestions.START))
        .isEqualTo(LocalDate.of(2027, 2, 1));
  }

  @Test
  void a_formula_counts_by_its_stored_result() {
    var edited = Edited.twoBox();
    edited.cell("Openings!E5").setCellFormula("2*1200");
    edited.cell("Openings!E5").setCellValue(2400);

    assertThat(edited.read().scope().orElseThrow().openings().get(0).width().in(Unit.MM))
        .isEqualByComparingTo("2400");
  }

  @Test
  void a_formula_without_a_stored_result_is_a_fault() {
    var edited = Edited.twoBox();
    edited.cell("Openings!E5").setBlank();
    edited.cell("Openings!E5").setCellFormula("2*1200");

    assertThat(edited.messages())
        .containsExactly(
            "Openings!E5: a formula without a stored result (Width); expected a number of millimetres; open"
                + " the workbook in a spreadsheet program and save it, so that it is calculated");
  }

  @Test
  void an_error_cell_is_a_fault() {
    assertThat(Edited.twoBox().error("Openings!E5", FormulaError.REF).messages())
        .containsExactly("Openings!E5: the error #REF! (Width); expected a number of millimetres");
  }

  @Test
  void a_cell_that_points_at_a_text_the_file_does_not_hold_is_a_fault() {
    var edited = Edited.twoBox();
    edited.cell("Openings!A5").getCTCell().setV("999999");

    assertThat(edited.messages())
        .contains("Openings!A5: a cell that is damaged in the file (Opening); expected a name");
  }

  @ParameterizedTest(name = "{0} is {1} of one")
  @CsvSource({"0.055, 0.055", "5.5, 0.055", "0, 0", "1, 1"})
  void a_share_above_one_is_per_cents(double typed, BigDecimal share) {
    var edited = Edited.twoBox().number("Loan!B7", typed);
    edited.cell("Loan!B7").setCellStyle(null);

    assertThat(edited.read().scope().orElseThrow().loan().figure(LoanQuestions.RATE).value())
        .isEqualByComparingTo(share);
  }

  @Test
  void a_cell_in_per_cent_holds_a_share_of_one_whatever_its_size() {
    assertThat(Edited.twoBox().number("Loan!B7", 5.5).messages())
        .containsExactly(
            "Loan!B7: the number 5.5 (Interest a year); expected a share, such as 15 % or 0.15 from"
                + " 0 % to 100 %");
  }

  @Test
  void yes_and_no_may_be_truth_values_or_text_in_any_case() {
    var edited =
        Edited.twoBox()
            .truth("Openings!J5", false)
            .text("Openings!J6", " NO ")
            .text("Openings!J7", "Yes")
            .text("Openings!J8", "TRUE");

    assertThat(edited.read().scope().orElseThrow().openings().subList(0, 4))
        .extracting(o -> o.opens())
        .containsExactly(false, false, true, true);
  }

  @Test
  void names_may_have_spaces_around_them_other_case_and_no_break_spaces() {
    var edited =
        Edited.twoBox()
            .text("Openings!C5", "  LEFT\u00A0side ")
            .text("Openings!B5", " a ")
            .text("Project!A6", " start DATE ");

    var opening = edited.read().scope().orElseThrow().openings().get(0);
    assertThat(opening.wall().label()).isEqualTo("left side");
    assertThat(opening.box()).isEqualTo("A");
  }

  @Test
  void a_name_may_be_typed_as_a_number() {
    var edited = Edited.twoBox().number("Rooms!A5", 1);

    assertThat(edited.read().scope().orElseThrow().rooms().get(0).id()).isEqualTo("1");
  }

  @Test
  void text_may_stand_in_the_cell_itself() {
    var edited = Edited.twoBox();
    var cell = edited.cell("Openings!A5").getCTCell();
    cell.unsetV();
    cell.setT(STCellType.INLINE_STR);
    cell.addNewIs().setT("Slider");

    assertThat(edited.read().scope().orElseThrow().openings().get(0).id()).isEqualTo("Slider");
  }

  @Test
  void all_faults_are_reported_at_once() {
    var edited =
        Edited.twoBox()
            .text("Openings!E5", "wide")
            .text("Loan!B5", "ninety")
            .blank("Project!B6")
            .text("Rooms!B6", "C");

    assertThat(edited.messages())
        .containsExactly(
            "Project!B6: Start date is empty" + DATE_WANTED,
            "Openings!E5: text 'wide' in a number cell (Width); expected a number of millimetres",
            "Loan!B5: text 'ninety' in a number cell (Loan); expected an amount of money as a plain"
                + " number",
            "Rooms!B6: the name 'C' (Box), which is not there; expected one of 'A', 'B'; maybe 'A'");
  }
}

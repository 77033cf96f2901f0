package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.plan.Plan;
import cornerpost.scope.OwnerSheet;
import cornerpost.takeoff.HouseScopes;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;

/** What is the owner's stays the owner's; what is ours does not pile up. */
class OwnersSheetsTest {
  private static final Plan PLAN = TestPlans.plan(HouseScopes.metric("House & garden"));
  private static final byte[] OWNER = OwnersBook.of(PLAN.scope());
  private static final byte[] RESULT = ResultWorkbook.write(OWNER, PLAN);

  private static List<String> sheets(XSSFWorkbook book) {
    var names = new ArrayList<String>();
    book.forEach(s -> names.add(s.getSheetName()));
    return names;
  }

  @Test
  void result_sheets_stand_behind_the_owners_in_order() {
    var owners = sheets(OwnersBook.open(OWNER));
    var expected = new ArrayList<>(owners);
    expected.addAll(
        List.of(
            "Summary",
            "Quantities",
            "Cost plan",
            "Buying list",
            "Cutting plans",
            "Schedule",
            "Bar chart",
            "Longest path",
            "Inspections",
            "Crew load",
            "Cash flow",
            "Draws",
            "Cost to complete",
            "Baseline",
            "Look-ahead",
            "Delay effects",
            "Resequencing",
            "Recovery",
            "Risk",
            "Checks",
            "Prices used",
            "Facts used"));
    assertThat(owners.indexOf(OwnersBook.EXTRA)).isEqualTo(2);
    assertThat(sheets(OwnersBook.open(RESULT))).isEqualTo(expected);
    assertThat(sheets(OwnersBook.open(ResultWorkbook.write(RESULT, PLAN)))).isEqualTo(expected);
  }

  @Test
  void note_colour_validation_formula_and_chart_of_the_owner_survive_two_runs() {
    var sheet = OwnersBook.open(ResultWorkbook.write(RESULT, PLAN)).getSheet(OwnersBook.EXTRA);
    var first = sheet.getRow(0).getCell(0);
    assertThat(first.getCellComment().getString().getString()).isEqualTo("ask the neighbour");
    assertThat(first.getCellStyle().getFillPattern()).isEqualTo(FillPatternType.SOLID_FOREGROUND);
    assertThat(first.getCellStyle().getFillForegroundColor()).isEqualTo((short) 52);
    assertThat(sheet.getDataValidations()).hasSize(1);
    assertThat(sheet.getRow(4).getCell(0).getCellFormula()).isEqualTo("SUM(A1:A4)");
    assertThat(sheet.getDrawingPatriarch().getCharts()).hasSize(1);
  }

  @Test
  void every_cell_of_the_owner_holds_what_it_held() {
    var before = OwnersBook.open(OWNER);
    var after = OwnersBook.open(RESULT);
    for (var sheet : before) {
      for (var row : sheet) {
        for (var cell : row) {
          var now =
              after
                  .getSheet(sheet.getSheetName())
                  .getRow(cell.getRowIndex())
                  .getCell(cell.getColumnIndex());
          assertThat(now.toString()).isEqualTo(cell.toString());
          assertThat(now.getCellStyle().getDataFormatString())
              .isEqualTo(cell.getCellStyle().getDataFormatString());
        }
      }
    }
  }

  @Test
  void a_fresh_result_opens_on_summary_and_a_later_one_where_the_owner_left_it() {
    var first = OwnersBook.open(RESULT);
    assertThat(first.getSheetName(first.getActiveSheetIndex())).isEqualTo("Summary");
    var left =
        OwnersBook.edited(
            RESULT,
            b -> {
              b.getSheet("Summary").setSelected(false);
              b.setActiveSheet(b.getSheetIndex("Project"));
            });
    var again = OwnersBook.open(ResultWorkbook.write(left, PLAN));
    assertThat(again.getSheetName(again.getActiveSheetIndex())).isEqualTo("Project");
  }

  @Test
  void charts_styles_fonts_and_texts_do_not_pile_up() {
    var once = OwnersBook.open(RESULT);
    var bytes = RESULT;
    for (int i = 0; i < 3; i++) bytes = ResultWorkbook.write(bytes, PLAN);
    var often = OwnersBook.open(bytes);
    assertThat(charts(often)).isEqualTo(charts(once));
    assertThat(charts(once))
        .containsEntry("Summary", 1)
        .containsEntry("Cash flow", 1)
        .containsEntry("Crew load", 1)
        .containsEntry("Risk", 2);
    assertThat(often.getNumCellStyles()).isEqualTo(once.getNumCellStyles());
    assertThat(often.getNumberOfFonts()).isEqualTo(once.getNumberOfFonts());
    assertThat(often.getSharedStringSource().getUniqueCount())
        .isEqualTo(once.getSharedStringSource().getUniqueCount());
    assertThat(often.getNumberOfNames()).isEqualTo(once.getNumberOfNames());
    assertThat(often.getSheet("Cost plan").getHyperlinkList())
        .hasSameSizeAs(once.getSheet("Cost plan").getHyperlinkList());
  }

  private static Map<String, Integer> charts(XSSFWorkbook book) {
    var found = new HashMap<String, Integer>();
    for (var s : book) {
      var drawing = book.getSheet(s.getSheetName()).getDrawingPatriarch();
      if (drawing != null) found.put(s.getSheetName(), drawing.getCharts().size());
    }
    return found;
  }

  @Test
  void a_deleted_result_sheet_comes_back_in_its_place() {
    var without = OwnersBook.edited(RESULT, b -> b.removeSheetAt(b.getSheetIndex("Draws")));
    assertThat(sheets(OwnersBook.open(ResultWorkbook.write(without, PLAN))))
        .isEqualTo(sheets(OwnersBook.open(RESULT)));
  }

  @Test
  void a_sheet_of_the_owner_with_a_results_name_is_kept_beside_it() {
    var taken =
        OwnersBook.edited(
            OWNER,
            b -> OwnersBook.cell(b.createSheet("Risk"), 0, 0).setCellValue("my own worries"));
    var book = OwnersBook.open(ResultWorkbook.write(taken, PLAN));
    assertThat(book.getSheet("Risk (own)").getRow(0).getCell(0).getStringCellValue())
        .isEqualTo("my own worries");
    assertThat(book.getSheet("Risk").getRow(0).getCell(0).getStringCellValue())
        .contains(ResultSheet.MARK);
  }

  @Test
  void owners_text_is_never_a_formula() {
    var book = OwnersBook.open(RESULT);
    var cells = new ArrayList<org.apache.poi.ss.usermodel.Cell>();
    for (var row : book.getSheet("Quantities")) {
      row.forEach(
          c -> {
            if (c.toString().startsWith("=Painted")) cells.add(c);
          });
    }
    assertThat(cells).hasSize(1);
    assertThat(cells.get(0).getStringCellValue()).isEqualTo("=Painted \"walls\" & more");
  }

  @Test
  void text_longer_than_a_cell_is_cut_between_characters() {
    var long_ = "\uD83C\uDFE0".repeat(20_000);
    var cut = SheetPage.fitting(long_);
    assertThat(cut).hasSizeLessThanOrEqualTo(SheetPage.LONGEST_TEXT).contains("cut here");
    assertThat(cut.codePoints().allMatch(p -> p == 0x1F3E0 || p < 128)).isTrue();
    assertThat(SheetPage.fitting("a".repeat(SheetPage.LONGEST_TEXT)))
        .hasSize(SheetPage.LONGEST_TEXT)
        .doesNotContain("cut");
    assertThat(SheetPage.fitting("bell \u0007 and tab \t")).isEqualTo("bell   and tab \t");
  }

  @Test
  void a_workbook_without_quotes_gets_a_cost_plan_all_the_same() {
    var without = OwnersBook.edited(OWNER, b -> b.removeSheetAt(b.getSheetIndex("Quotes")));
    var book = OwnersBook.open(ResultWorkbook.write(without, PLAN));
    assertThat(Recalculated.rightOf(book, "Summary", "Total cost"))
        .isEqualTo(PLAN.estimate().total().doubleValue());
    var rate = book.getSheet("Cost plan").getRow(Addresses.FIRST_ROW - 1).getCell(5);
    assertThat(rate.getCellFormula()).doesNotContain("Quotes");
  }

  /** Read with a library that shares no code with the one that wrote it. */
  @Test
  void another_reader_finds_the_fixed_columns_and_the_figures_of_the_plan() throws IOException {
    try (var book = new ReadableWorkbook(new ByteArrayInputStream(RESULT))) {
      var quantities = table(book, "Quantities");
      assertThat(quantities.get(0).subList(0, 6))
          .containsExactly("Id", "Stage", "Description", "Quantity", "Unit", "How it comes about");
      assertThat(quantities).hasSize(1 + PLAN.lines().size());
      for (int i = 0; i < PLAN.lines().size(); i++) {
        var line = PLAN.lines().get(i);
        var row = quantities.get(i + 1);
        assertThat(row.get(0)).isEqualTo(line.id());
        assertThat(Double.parseDouble(row.get(3)))
            .isCloseTo(
                line.quantity().asDouble(line.shownIn()),
                org.assertj.core.data.Percentage.withPercentage(1e-7));
        assertThat(row.get(4)).isEqualTo(line.shownIn().symbol());
      }
      var costs = table(book, "Cost plan");
      assertThat(costs.get(0).subList(0, 9))
          .containsExactly(
              "Id", "Stage", "Description", "Quantity", "Unit", "Rate", "Amount", "Basis", "Party");
      var amounts = new HashMap<String, Double>();
      costs.stream().skip(1).forEach(r -> amounts.put(r.get(0), Double.parseDouble(r.get(6))));
      assertThat(amounts).hasSize(PLAN.estimate().lines().size());
      for (var l : PLAN.estimate().lines()) {
        assertThat(amounts).containsEntry(l.id(), l.money().doubleValue());
      }
      assertThat(table(book, "Schedule").get(0).subList(0, 9))
          .containsExactly(
              "Id",
              "Stage",
              "Task",
              "Start",
              "Finish",
              "Duration",
              "Total float",
              "Free float",
              "Drives move-in");
    }
  }

  /** The header row of a table and the rows below it. */
  private static List<List<String>> table(ReadableWorkbook book, String sheet) throws IOException {
    var rows = new ArrayList<List<String>>();
    for (Row row : book.findSheet(sheet).orElseThrow().read()) {
      boolean header = row.getCellCount() > 0 && "Id".equals(text(row, 0));
      if (!header && rows.isEmpty()) continue;
      var cells = new ArrayList<String>();
      for (int c = 0; c < row.getCellCount(); c++) cells.add(text(row, c));
      rows.add(cells);
    }
    return rows;
  }

  private static String text(Row row, int column) {
    return row.getOptionalCell(column)
        .map(c -> c.getValue() == null ? "" : c.getValue().toString())
        .orElse("");
  }

  @Test
  void owner_and_result_sheets_have_names_of_their_own() {
    assertThat(Arrays.stream(OwnerSheet.values()).map(OwnerSheet::title))
        .doesNotContainAnyElementsOf(ResultWorkbook.resultSheets());
  }
}

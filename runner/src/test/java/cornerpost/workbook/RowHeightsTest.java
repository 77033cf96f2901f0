package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.UnitSystem;
import cornerpost.plan.Plan;
import cornerpost.takeoff.HouseScopes;
import java.io.ByteArrayInputStream;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows are as high as their text, and none stands close under a line. */
class RowHeightsTest {
  private static final Plan PLAN = TestPlans.plan(HouseScopes.us("Prairie box"));

  // Widths of the letters by the Helvetica font metrics (AFM): H 722, e 556, l 222, o 556
  @ParameterizedTest(name = "{0}: {1} thousandths")
  @CsvSource({"Hello, 2278", "1234567890, 5560", "ll, 444", "'', 0", "WAX, 2278"})
  void text_is_as_wide_as_its_letters(String text, double thousandths) {
    assertThat(TextWidth.of(text, 1000, false)).isCloseTo(thousandths, within(0.001));
  }

  // By hand: 'Hello' at 10 points is 22.78 points wide, a space 2.78
  @ParameterizedTest(name = "{0} in {1} points: {2} lines")
  @CsvSource({
    "Hello Hello, 48.4, 1",
    "Hello Hello, 48.3, 2",
    "Hello, 22.8, 1",
    "Hello, 11.4, 2",
    "'', 10, 1"
  })
  void text_breaks_between_words_where_the_room_ends(String text, double room, int lines) {
    assertThat(TextWidth.lines(text, 10, false, room)).isEqualTo(lines);
  }

  @Test
  void first_row_of_every_result_sheet_keeps_its_distance_from_the_line_above() {
    var book = OwnersBook.open(ResultWorkbook.write(OwnersBook.of(PLAN.scope()), PLAN));
    int seen = 0;
    for (var which : ResultSheet.values()) {
      var sheet = book.getSheet(which.title());
      if (sheet == null || which == ResultSheet.SUMMARY || which == ResultSheet.LENDER_REVIEW) {
        continue;
      }
      var first = sheet.getRow(Addresses.FIRST_ROW - 1);
      if (first == null) continue;
      seen++;
      // a line of nine points stands 12 high; 3 points of air above it and below
      assertThat(first.getHeightInPoints()).as(which.title()).isGreaterThanOrEqualTo(18);
      assertMiddle(which.title(), first);
    }
    assertThat(seen).isGreaterThan(15);
  }

  private static void assertMiddle(String sheet, XSSFRow row) {
    for (var cell : row) {
      if (cell.getCellType() == CellType.BLANK) continue;
      assertThat(cell.getCellStyle().getVerticalAlignment())
          .as(sheet + " " + cell.getAddress())
          .isNotEqualTo(VerticalAlignment.TOP);
    }
  }

  @Test
  void results_are_written_in_the_font_of_the_template() throws Exception {
    var template = TemplateWriter.blank(UnitSystem.US);
    try (var book = new XSSFWorkbook(new ByteArrayInputStream(template))) {
      var entry = book.getSheet("Project").getRow(4).getCell(1).getCellStyle().getFont();
      assertThat(List.of(book.getFontAt(0).getFontName(), entry.getFontName()))
          .containsOnly("Arial");
    }
  }
}

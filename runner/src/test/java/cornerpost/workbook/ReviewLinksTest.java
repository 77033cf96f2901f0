package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Where each figure of sheet Lender review leads. */
class ReviewLinksTest {
  /** What stands beside or above the figure that a link leads to, where it has another name. */
  private static final Map<String, String> NAMED =
      Map.ofEntries(
          Map.entry(ReviewPage.LEFT_OVER, "Left over (below nothing: lacking)"),
          Map.entry("Left over, 4 weeks later", "Left over, later"),
          Map.entry("Left over, prices up 10 % on what is not under contract", "Left over, dearer"),
          Map.entry(
              "Left over, 4 weeks later and prices up 10 % on what is not under contract",
              "Left over, later and dearer"),
          Map.entry("Can be drawn now", "Amount due now"),
          Map.entry("Estimate at completion", "At completion"),
          Map.entry("More than the original budget", "Variance"),
          Map.entry("of it by price", "By price"),
          Map.entry("by quantity", "By quantity"),
          Map.entry("by scope", "By scope"),
          Map.entry("by time", "By time"),
          Map.entry("Work in place", "Complete"),
          Map.entry("Cost index (earned over actual)", "Cost performance index (CPI)"),
          Map.entry("Time index (earned schedule over time gone)", "ES / AT"),
          Map.entry("Finish, as planned now", "Finish"),
          Map.entry("Loan matures", "Maturity"),
          Map.entry("Cash below nothing in a coming month", "Own cash"),
          Map.entry("Draws ahead of the work in place", "Drawn ahead of work"),
          Map.entry("Lines above their revised budget", "Over revised budget"),
          Map.entry("Large lines without quote or contract", "Large, no quote or contract"));

  /** These say on the sheet that the figure is nothing: there is no row to lead to. */
  private static final List<String> NONE = List.of("Licensed trades done by the owner");

  private static XSSFWorkbook result(byte[] owner) {
    var scope = WorkbookReader.read(owner, "x.xlsx").scope().orElseThrow();
    var plan =
        Planner.plan(scope, Facts.supplied(), Optional.empty(), RunOptions.NONE)
            .plan()
            .orElseThrow();
    return OwnersBook.open(ResultWorkbook.write(owner, plan));
  }

  @Test
  void every_figure_leads_to_the_cell_that_shows_that_very_figure_under_its_name() {
    var book = result(Examples.workbook("lender-review.xlsx"));
    var seen = new ArrayList<String>();
    for (var row : book.getSheet("Lender review")) {
      var figure = (XSSFCell) row.getCell(1);
      if (figure == null || Recalculated.shown(figure).equals("")) continue;
      var label = row.getCell(0).getStringCellValue();
      seen.add(label);
      assertThat(figure.getHyperlink()).as(label).isNotNull();
      if (NONE.contains(label)) continue;
      var to = figure.getHyperlink().getAddress().replace("'", "");
      var target = OwnersBook.cell(book, to);
      assertThat(names(target)).as(label + " -> " + to).contains(NAMED.getOrDefault(label, label));
      var there = (Double) Recalculated.shown(target);
      var here = (Double) Recalculated.shown(figure);
      // Cash below nothing is said as an amount to bridge.
      var said = label.startsWith("Cash below") ? -there : there;
      assertThat(said).as(label + " -> " + to).isCloseTo(here, within(1e-9));
    }
    assertThat(seen).doesNotHaveDuplicates().hasSizeGreaterThan(45).containsAll(NAMED.keySet());
  }

  /** What names a figure: what stands left of it, and the name of its column. */
  private static List<String> names(XSSFCell cell) {
    var names = new ArrayList<String>();
    XSSFSheet sheet = cell.getSheet();
    for (int c = cell.getColumnIndex() - 1; c >= 0; c--) {
      var left = sheet.getRow(cell.getRowIndex()).getCell(c);
      if (left == null) continue;
      if (Recalculated.shown(left) instanceof String s && !s.isEmpty()) {
        names.add(s);
        break;
      }
    }
    var heads = sheet.getRow(Addresses.HEADER_ROW - 1);
    var head = heads == null ? null : heads.getCell(cell.getColumnIndex());
    if (head != null) names.add(Recalculated.shown(head).toString());
    return names;
  }

  @Test
  void each_row_of_the_workings_says_what_it_is_made_from() {
    var sheet = result(Examples.workbook("lender-review.xlsx")).getSheet("Cost to complete");
    for (var item : LoanItem.values()) {
      var row = sheet.getRow(item.row() - 1);
      assertThat(row.getCell(6).getStringCellValue()).isEqualTo(item.label());
      boolean heading = Recalculated.shown(row.getCell(7)) instanceof String s && !s.equals("n/a");
      if (!heading) assertThat(row.getCell(8).getStringCellValue()).as(item.name()).isNotBlank();
    }
    assertThat(Arrays.stream(LoanItem.values()).map(LoanItem::label)).doesNotHaveDuplicates();
  }
}

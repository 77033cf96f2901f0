package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.finance.CostReport.Row;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Sign;
import cornerpost.office.LibreOffice;
import cornerpost.plan.Plan;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** The half-built example: by hand, in another program, and after entries were changed. */
class LenderReviewTest {
  private static final byte[] OWNER = Examples.workbook("lender-review.xlsx");

  private static Plan plan(byte[] workbook) {
    return plan(workbook, RunOptions.NONE);
  }

  private static Plan plan(byte[] workbook, RunOptions options) {
    var scope = WorkbookReader.read(workbook, "x.xlsx").scope().orElseThrow();
    return Planner.plan(scope, Facts.supplied(), Optional.empty(), options).plan().orElseThrow();
  }

  private static LoanStatus status(byte[] workbook) {
    return plan(workbook).finance().status().orElseThrow();
  }

  /**
   * The plan kept on the first day is what earned value is measured against: when a task is made
   * longer later, the planned value stays, and the loan knows by which plan.
   */
  @Test
  void planned_value_follows_the_plan_that_was_kept_and_not_what_the_plan_became() {
    var first =
        new RunOptions(
                Optional.of(LocalDate.of(2027, 3, 1)),
                List.of(),
                OptionalLong.empty(),
                OptionalInt.empty(),
                "0123456789ab")
            .keeping("Agreed");
    var kept = ResultWorkbook.write(OWNER, plan(OWNER, first));
    assertThat(status(kept).plannedPeriods().baseline()).contains("Agreed");
    assertThat(status(OWNER).plannedPeriods().baseline()).isEmpty();
    var asPlanned = status(OWNER).value().planned();
    assertThat(status(kept).value().planned()).isEqualByComparingTo(asPlanned);
    var longer = OwnersBook.edited(kept, LenderReviewTest::longerServices);
    assertThat(status(longer).value().planned()).isEqualByComparingTo(asPlanned);
    var unkept = OwnersBook.edited(OWNER, LenderReviewTest::longerServices);
    assertThat(status(unkept).value().planned()).isLessThan(asPlanned);
    assertThat(status(longer).value().timeVariance())
        .isLessThan(status(unkept).value().timeVariance());
  }

  private static void longerServices(XSSFWorkbook book) {
    for (var row : book.getSheet("Own tasks")) {
      var id = row.getCell(0);
      if (id == null || !id.toString().equals("services")) continue;
      for (var cell : row) {
        if (cell.getCellType() == CellType.NUMERIC) cell.setCellValue(90);
      }
    }
  }

  @Test
  void each_draw_to_come_has_its_day_its_inspections_and_its_papers() {
    var draws = plan(OWNER).finance().draws();
    // docs/lender-example.md: 16,857.51 in July, 10,324.62 in August, 44,817.87 when complete
    assertThat(draws)
        .extracting(d -> d.paid().toPlainString())
        .containsExactly("16857.51", "10324.62", "44817.87");
    assertThat(draws)
        .extracting(d -> d.date().toString())
        .containsExactly("2027-07-31", "2027-08-31", "2027-09-10");
    for (var d : draws) {
      assertThat(d.inspections()).contains("the lender's own, of the work in place");
      assertThat(d.papers())
          .anyMatch(p -> p.contains("schedule of values"))
          .anyMatch(p -> p.contains("lien waivers"))
          .anyMatch(p -> p.contains("receipts"))
          .anyMatch(p -> p.contains("photos"));
      assertThat(d.earned().subtract(d.retained())).isEqualByComparingTo(d.paid());
    }
    assertThat(draws.get(2).papers()).contains("certificate of occupancy");
    // The first draw was in the past: nobody is asked for the agreed list again.
    assertThat(draws.get(0).papers()).noneMatch(p -> p.contains("as agreed"));
    assertThat(draws.get(2).cumulativePaid()).isEqualByComparingTo("120000");
  }

  @Test
  void every_amount_of_the_review_links_to_a_cell_that_holds_a_figure() {
    var book = OwnersBook.open(ResultWorkbook.write(OWNER, plan(OWNER)));
    var review = book.getSheet("Lender review");
    int linked = 0;
    for (var row : review) {
      var figure = row.getCell(1);
      if (figure == null || figure.getHyperlink() == null) continue;
      linked++;
      var to = figure.getHyperlink().getAddress();
      var target = OwnersBook.cell(book, to.replace("'", ""));
      assertThat(Recalculated.shown(target)).as(to).isNotEqualTo("");
      // An amount that is a single cell of another sheet is that cell's.
      var formula = figure.getCellType() == CellType.FORMULA ? figure.getCellFormula() : "";
      if (formula.replace("$", "").equals("ROUND(" + to + ",2)")) {
        assertThat(Recalculated.shown(target)).isEqualTo(Recalculated.shown((XSSFCell) figure));
      }
    }
    assertThat(linked).isGreaterThan(35);
  }

  private static BigDecimal amount(String page, String pattern) {
    var found = Pattern.compile(pattern).matcher(page);
    assertThat(found.find()).as(pattern).isTrue();
    return new BigDecimal(found.group(1).replace(",", ""));
  }

  /** docs/lender-example.md derives each of these by hand. */
  @Test
  void page_that_works_it_out_by_hand_has_the_same_amounts() throws IOException {
    var page = Files.readString(Path.of("..", "docs", "lender-example.md"));
    var s = status(OWNER);
    var h = s.holding();
    assertThat(page).contains("> " + s.verdict("USD"));
    assertThat(h.surplus())
        .isEqualByComparingTo(amount(page, "\\*\\*short by\\*\\* \\| \\*\\*(-[0-9,.]+)\\*\\*"));
    assertThat(h.toComplete())
        .isEqualByComparingTo(amount(page, "\\*\\*to complete\\*\\* \\| \\| \\*\\*([0-9,.]+)"));
    assertThat(h.undrawn().add(h.cash()))
        .isEqualByComparingTo(amount(page, "\\*\\*there\\*\\* \\| \\*\\*([0-9,.]+)"));
    assertThat(h.interestToCome())
        .isEqualByComparingTo(amount(page, "Interest to come: .* = ([0-9,]+\\.[0-9]{2})"));
    assertThat(h.retained().add(h.payable()).add(h.notInvoiced()))
        .isEqualByComparingTo(amount(page, "not yet invoiced \\| -([0-9,.]+)"));
    assertThat(s.reserve().left()).isEqualByComparingTo(amount(page, "charged: ([0-9,.]+) left"));
    assertThat(s.reserve().months().orElseThrow())
        .isEqualByComparingTo(amount(page, "In all ([0-9.]+) months"));
    var ahead = s.flags().stream().filter(f -> f.sign() == Sign.AHEAD).findFirst().orElseThrow();
    assertThat(ahead.figure()).isEqualByComparingTo(amount(page, "7,800: ([0-9,]+) in all"));
    var cash = s.flags().stream().filter(f -> f.sign() == Sign.CASH).findFirst().orElseThrow();
    assertThat(cash.figure()).isEqualByComparingTo(amount(page, "at most ([0-9,]+\\.[0-9]{2})"));
  }

  @Test
  void another_program_calculates_every_figure_and_finds_no_error() {
    LibreOffice.needed();
    var result = ResultWorkbook.write(OWNER, plan(OWNER));
    var recalculated = LibreOffice.recalculated(result);
    var compared = Recalculated.compare(result, recalculated);
    assertThat(compared.formulas()).isGreaterThan(1500);
    assertThat(compared.differences()).isEmpty();
    assertThat(Recalculated.errors(recalculated)).isEmpty();
  }

  /**
   * Paid, drawn, invoiced, a share of work as inspected, one as noted on Progress (its days left
   * stay, so no date moves), the loan, its rate: another program then shows what a new run finds.
   */
  @Test
  void changed_payments_and_shares_give_the_verdict_and_totals_of_a_new_run() {
    LibreOffice.needed();
    var edited =
        OwnersBook.edited(
            ResultWorkbook.write(OWNER, plan(OWNER)),
            book -> {
              OwnersBook.cell(book, "Cost ledger!G9").setCellValue(7512.34);
              OwnersBook.cell(book, "Cost ledger!F11").setCellValue(5200);
              OwnersBook.cell(book, "Cost ledger!I11").setCellValue(0.3);
              OwnersBook.cell(book, "Cost ledger!K10").setCellValue(9000);
              OwnersBook.cell(book, "Cost ledger!E12").setCellValue(29333.33);
              OwnersBook.cell(book, "Cost ledger!B13").setCellValue(8500);
              OwnersBook.cell(book, "Progress!E10").setCellValue(0.57);
              OwnersBook.cell(book, "Loan!B5").setCellValue(131000);
              OwnersBook.cell(book, "Loan!B7").setCellValue(0.0915);
            });
    var again = status(edited);
    assertThat(again.holding().surplus())
        .isNotEqualByComparingTo(status(OWNER).holding().surplus());
    var book = OwnersBook.open(LibreOffice.recalculated(edited));
    var verdict = Recalculated.shown(OwnersBook.cell(book, "Lender review!A3"));
    assertThat(verdict).isEqualTo(again.verdict("USD"));
    same(
        book,
        "Lender review",
        "Left over (below nothing: the borrower must bring it)",
        again.holding().surplus());
    same(book, "Lender review", "Cost to complete", again.holding().toComplete());
    same(book, "Lender review", "Interest to completion", again.holding().interestToCome());
    same(book, "Lender review", "Can be drawn now", again.request().due());
    same(book, "Lender review", "Estimate at completion", sum(again, Row::atCompletion));
    same(book, "Lender review", "of it by price", sum(again, Row::byPrice));
    same(book, "Lender review", "Contingency for the work left", again.contingency().required());
    same(book, "Lender review", "Interest reserve left", again.reserve().left());
    var months = again.reserve().months().orElseThrow();
    assertThat(months).isNotEqualByComparingTo(status(OWNER).reserve().months().orElseThrow());
    same(book, "Lender review", "Months the interest reserve still carries", months);
    for (var f : again.flags()) {
      if (f.untold().isEmpty()) same(book, "Lender review", f.sign().label(), f.figure());
    }
    for (int i = 0; i < 3; i++) {
      var whatIf = again.stresses().get(i + 1);
      var row = rowOf(book, "What if") + 1 + i;
      assertThat(book.getSheet("Lender review").getRow(row).getCell(1).getNumericCellValue())
          .isEqualTo(whatIf.surplus().doubleValue());
    }
    same(book, "Earned value", "Earned value (EV)", again.value().earned());
    same(book, "Earned value", "Actual cost (AC)", again.value().actual());
    same(book, "Earned value", "Earned schedule (ES), periods", again.value().schedule());
    for (var s : again.stages()) same(book, "Schedule of values", s.stage().label(), s.original());
    var lines = book.getSheet("Cost report");
    for (int i = 0; i < again.rows().size(); i++) {
      var row = lines.getRow(Addresses.FIRST_ROW - 1 + i);
      assertThat(row.getCell(CostReportColumn.AT_COMPLETION.ordinal()).getNumericCellValue())
          .as(again.rows().get(i).line().id())
          .isEqualTo(again.rows().get(i).atCompletion().doubleValue());
    }
  }

  private static BigDecimal sum(LoanStatus s, Function<Row, BigDecimal> part) {
    return s.rows().stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static int rowOf(XSSFWorkbook book, String label) {
    for (var row : book.getSheet("Lender review")) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals(label)) return row.getRowNum();
    }
    throw new AssertionError(label);
  }

  private static void same(XSSFWorkbook book, String sheet, String label, BigDecimal expected) {
    var shown = (Double) Recalculated.rightOf(book, sheet, label);
    assertThat(shown)
        .as(label)
        .isCloseTo(expected.doubleValue(), org.assertj.core.api.Assertions.within(1e-6));
  }

  @Test
  void money_for_a_line_that_has_gone_is_kept_counted_and_reported() {
    var edited =
        OwnersBook.edited(
            OWNER,
            book -> {
              OwnersBook.cell(book, "Cost ledger!A17").setCellValue("own/crane");
              OwnersBook.cell(book, "Cost ledger!F17").setCellValue(900);
              OwnersBook.cell(book, "Cost ledger!G17").setCellValue(900);
            });
    var plan = plan(edited);
    assertThat(plan.problems())
        .anyMatch(p -> p.sheet().equals("Cost ledger") && p.found().contains("own/crane"));
    var before = status(OWNER).holding();
    var after = plan.finance().status().orElseThrow().holding();
    assertThat(after.cash()).isEqualByComparingTo(before.cash().subtract(new BigDecimal("900")));
    assertThat(after.needed()).isEqualByComparingTo(before.needed());
    var again = ResultWorkbook.write(edited, plan);
    assertThat(OwnersBook.cell(OwnersBook.open(again), "Cost ledger!A17").getStringCellValue())
        .isEqualTo("own/crane");
  }

  // 8,000 more than the 120,000 lent stand as drawn: 48,000 + 80,000.
  @Test
  void more_drawn_than_was_lent_is_said_and_an_id_mistyped_is_matched() {
    var edited =
        OwnersBook.edited(
            OWNER,
            book -> {
              OwnersBook.cell(book, "Cost ledger!A17").setCellValue("own/fnishes");
              OwnersBook.cell(book, "Cost ledger!K17").setCellValue(80000);
            });
    var plan = plan(edited);
    assertThat(plan.problems()).anyMatch(p -> p.found().contains("maybe 'own/finishes'"));
    var sign =
        plan.finance().status().orElseThrow().flags().stream()
            .filter(f -> f.sign() == Sign.ABOVE_LOAN)
            .findFirst()
            .orElseThrow();
    assertThat(sign.raised()).isTrue();
    assertThat(sign.figure()).isEqualByComparingTo("8000");
  }

  // In place and stored 96,606.64, less the borrower's 50,000, less a tenth held back: 41,945.98;
  // 48,000 were drawn.
  @Test
  void what_was_drawn_above_what_is_in_place_is_said() {
    assertThat(status(OWNER).request().due()).isZero();
    assertThat(status(OWNER).request().above()).isEqualByComparingTo("6054.02");
  }

  @Test
  void result_as_input_gives_the_same_figures() {
    var result = ResultWorkbook.write(OWNER, plan(OWNER));
    assertThat(status(result).rows()).isEqualTo(status(OWNER).rows());
    assertThat(List.copyOf(status(result).outlook().months()))
        .isEqualTo(status(OWNER).outlook().months());
    assertThat(ResultWorkbook.write(result, plan(result)))
        .isEqualTo(ResultWorkbook.write(result, plan(result)));
  }
}

package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.finance.LoanStatus;
import cornerpost.office.LibreOffice;
import cornerpost.plan.Plan;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import cornerpost.price.CostLine;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The first payments of a build, typed into the result workbook of a plan for which no money had
 * moved: verdict and totals follow at once, and are those of a new run.
 */
class FirstPaymentTest {
  private static final RunOptions FEW =
      new RunOptions(
          Optional.empty(), List.of(), OptionalLong.of(1), OptionalInt.of(50), "0123456789ab");
  private static final int FIRST_ROW = 5;

  private static Plan plan(byte[] workbook, String book) {
    var scope = WorkbookReader.read(workbook, "x.xlsx").scope().orElseThrow();
    return Planner.plan(scope, Facts.supplied(), Optional.of(Examples.book(book)), FEW)
        .plan()
        .orElseThrow();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "one-bedroom-40hc.xlsx, quarrow-plains-2026",
    "two-bedroom-two-boxes.xlsx, velmark-coast-2026"
  })
  void first_payments_typed_in_give_the_verdict_of_a_new_run(String example, String book) {
    LibreOffice.needed();
    var owner = Examples.workbook(example);
    var before = plan(owner, book);
    var result = ResultWorkbook.write(owner, before);
    var shown = OwnersBook.open(result);
    assertThat(Recalculated.shown(OwnersBook.cell(shown, "Lender review!A4")).toString())
        .endsWith("nothing is entered on Cost ledger yet");
    var edited = OwnersBook.edited(result, b -> pay(b, before));
    var again = plan(edited, book);
    var status = again.finance().status().orElseThrow();
    var was = before.finance().status().orElseThrow();
    assertThat(status.holding().surplus()).isNotEqualByComparingTo(was.holding().surplus());
    assertThat(status.moneyMoved()).isTrue();
    var currency = again.estimate().currency().getCurrencyCode();
    same(OwnersBook.open(LibreOffice.recalculated(edited)), status, status.verdict(currency));
  }

  private static CostLine largest(Plan plan, CostLine.Kind... kinds) {
    return plan.estimate().lines().stream()
        .filter(l -> List.of(kinds).contains(l.kind()))
        .max(Comparator.comparing(CostLine::money))
        .orElseThrow();
  }

  /** A contract above the bill, a delivery paid in full, contingency spent, the first interest. */
  private static void pay(XSSFWorkbook book, Plan plan) {
    var work = largest(plan, CostLine.Kind.SERVICE, CostLine.Kind.LABOUR, CostLine.Kind.PLANT);
    row(book, 0, work.id());
    put(book, 0, "D", 125);
    put(book, 0, "E", work.money().doubleValue() + 250.25);
    put(book, 0, "F", Math.round(work.money().doubleValue() * 0.6));
    put(book, 0, "G", Math.round(work.money().doubleValue() * 0.5));
    put(book, 0, "H", 20);
    put(book, 0, "I", 0.45);
    put(book, 0, "K", 4000);
    var bought = largest(plan, CostLine.Kind.MATERIAL);
    row(book, 1, bought.id());
    put(book, 1, "F", bought.money().doubleValue() + 77.7);
    put(book, 1, "G", bought.money().doubleValue() + 77.7);
    put(book, 1, "I", 1);
    row(book, 2, largest(plan, CostLine.Kind.CONTINGENCY).id());
    put(book, 2, "D", -125);
    row(book, 3, "interest");
    put(book, 3, "F", 31.41);
    put(book, 3, "G", 31.41);
  }

  private static void row(XSSFWorkbook book, int row, String id) {
    OwnersBook.cell(book, "Cost ledger!A" + (FIRST_ROW + row)).setCellValue(id);
  }

  private static void put(XSSFWorkbook book, int row, String column, double amount) {
    OwnersBook.cell(book, "Cost ledger!" + column + (FIRST_ROW + row)).setCellValue(amount);
  }

  private static void same(XSSFWorkbook book, LoanStatus again, String verdict) {
    assertThat(Recalculated.shown(OwnersBook.cell(book, "Lender review!A3"))).isEqualTo(verdict);
    assertThat(Recalculated.shown(OwnersBook.cell(book, "Lender review!A4")).toString())
        .doesNotContain("nothing is entered");
    same(book, ReviewPage.LEFT_OVER, again.holding().surplus());
    same(book, "Cost to complete", again.holding().toComplete());
    same(book, "Interest to completion", again.holding().interestToCome());
    same(book, "In place without an invoice", again.holding().notInvoiced());
    same(book, "Can be drawn now", again.request().due());
    same(book, "Contingency for the work left", again.contingency().required());
    var carried = again.reserve().months();
    if (carried.isPresent()) same(book, "Months the interest reserve still carries", carried.get());
    for (var f : again.flags()) {
      if (f.untold().isEmpty()) same(book, f.sign().label(), f.figure());
    }
    var sheet = book.getSheet("Cost to complete");
    var what = List.of(LoanItem.LATER, LoanItem.DEARER, LoanItem.LATER_AND_DEARER);
    for (int i = 0; i < 3; i++) {
      var cell = sheet.getRow(what.get(i).row() - 1).getCell(7);
      assertThat(cell.getNumericCellValue())
          .isCloseTo(again.stresses().get(i + 1).surplus().doubleValue(), within(1e-6));
    }
    var rows = book.getSheet("Cost report");
    for (int i = 0; i < again.rows().size(); i++) {
      var cell =
          rows.getRow(Addresses.HEADER_ROW + i).getCell(CostReportColumn.AT_COMPLETION.ordinal());
      assertThat(cell.getNumericCellValue())
          .as(again.rows().get(i).line().id())
          .isCloseTo(again.rows().get(i).atCompletion().doubleValue(), within(1e-6));
    }
  }

  private static void same(XSSFWorkbook book, String label, BigDecimal expected) {
    assertThat((Double) Recalculated.rightOf(book, "Lender review", label))
        .as(label)
        .isCloseTo(expected.doubleValue(), within(1e-6));
  }
}

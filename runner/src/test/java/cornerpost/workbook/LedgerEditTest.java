package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.finance.LoanStatus;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.office.LibreOffice;
import cornerpost.plan.Plan;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import cornerpost.price.CostLine;
import cornerpost.price.PriceBook;
import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.LedgerEntry;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.ScopeEdit;
import cornerpost.takeoff.RandomHouses;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Houses drawn by a seed, with a ledger drawn too: payments and shares typed into the result
 * workbook and recalculated by another program give what a new run on the same entries gives.
 */
class LedgerEditTest {
  private static final List<String> COLUMNS =
      List.of(
          "Line",
          "Original budget",
          "Original quantity",
          "Approved changes",
          "Committed",
          "Invoiced",
          "Paid",
          "Retained",
          "Work in place",
          "Stored materials",
          "Drawn");
  private static final int LINES = 24;
  private static final RunOptions FEW =
      new RunOptions(
          Optional.empty(), List.of(), OptionalLong.of(1), OptionalInt.of(50), "0123456789ab");

  @ParameterizedTest(name = "seed {0}, {1}")
  @CsvSource({"3, METRIC", "5, US", "8, METRIC"})
  void payments_and_shares_typed_on_a_house_drawn_give_the_verdict_of_a_new_run(
      long seed, UnitSystem units) {
    LibreOffice.needed();
    var book = Examples.book(units == UnitSystem.US ? "quarrow-plains-2026" : "velmark-coast-2026");
    var random = new SplittableRandom(seed);
    var house = lent(RandomHouses.of(seed, units), random);
    var rows = drawn(plan(house, book), random);
    var scope = with(house, rows);

    var before = plan(scope, book);
    var owner = OwnersBook.edited(OwnersBook.of(scope), b -> write(b, rows));
    var result = ResultWorkbook.write(owner, before);
    var recalculated = LibreOffice.recalculated(result);
    assertThat(Recalculated.compare(result, recalculated).differences()).isEmpty();

    var changed = changed(rows, random);
    var again = plan(with(house, changed), book).finance().status().orElseThrow();
    assertThat(again.holding().surplus())
        .isNotEqualByComparingTo(before.finance().status().orElseThrow().holding().surplus());
    var edited = OwnersBook.edited(result, b -> write(b, changed));
    same(OwnersBook.open(LibreOffice.recalculated(edited)), again, again.verdict(currency(before)));
  }

  private static String currency(Plan plan) {
    return plan.estimate().currency().getCurrencyCode();
  }

  private static Plan plan(Scope scope, PriceBook book) {
    var result = Planner.plan(scope, Facts.supplied(), Optional.of(book), FEW);
    return result.plan().orElseThrow(() -> new AssertionError(result.problems().toString()));
  }

  // ---- what is drawn ------------------------------------------------------------------------

  private static Scope lent(Scope s, SplittableRandom random) {
    var loan = new HashMap<>(s.loan().all());
    var money = Unit.money("");
    loan(loan, s, LoanQuestions.AMOUNT, 20_000 + random.nextInt(150_000), money);
    loan(loan, s, LoanQuestions.CASH, 10_000 + random.nextInt(60_000), money);
    return with(s, new Answers(s.loan().place(), loan), List.of());
  }

  private static void loan(
      Map<Question, Answer> loan, Scope s, Question question, int amount, Unit unit) {
    var cell = s.loan().cell(question);
    var figure = Figure.choice(cell, question.label(), BigDecimal.valueOf(amount), unit);
    loan.put(question, new Answer(cell, figure, false));
  }

  /** Entries for some lines of every kind that money moves for. */
  private static List<LedgerEntry> drawn(Plan plan, SplittableRandom random) {
    var all = new ArrayList<CostLine>();
    for (var l : plan.estimate().lines()) if (l.money().signum() > 0) all.add(l);
    var rows = new ArrayList<LedgerEntry>();
    while (rows.size() < LINES) {
      var l = all.remove(random.nextInt(all.size()));
      var invoiced = part(l.money(), random, 0.9);
      var retained = part(invoiced, random, 0.1);
      boolean bought = l.kind() == CostLine.Kind.MATERIAL;
      rows.add(
          new LedgerEntry(
              l.id(),
              random.nextBoolean() ? Optional.of(part(l.money(), random, 1.2)) : Optional.empty(),
              Optional.empty(),
              random.nextInt(4) == 0 ? part(l.money(), random, 0.2) : BigDecimal.ZERO,
              random.nextInt(3) == 0 ? part(l.money(), random, 1.3) : BigDecimal.ZERO,
              invoiced,
              part(invoiced.subtract(retained), random, 1),
              retained,
              bought || random.nextBoolean() ? Optional.empty() : Optional.of(share(random)),
              bought ? part(l.money(), random, 0.9) : BigDecimal.ZERO,
              part(invoiced, random, 1),
              "Cost ledger!A" + (rows.size() + 2)));
    }
    return rows;
  }

  /** Other payments and orders, and a share of work as inspected, on every third line. */
  private static List<LedgerEntry> changed(List<LedgerEntry> rows, SplittableRandom random) {
    var changed = new ArrayList<LedgerEntry>();
    for (int i = 0; i < rows.size(); i++) {
      var e = rows.get(i);
      if (i % 3 > 0) {
        changed.add(e);
        continue;
      }
      changed.add(
          new LedgerEntry(
              e.line(),
              e.originalBudget(),
              e.originalQuantity(),
              e.changes(),
              e.committed().add(part(e.invoiced(), random, 1)),
              e.invoiced(),
              part(e.invoiced(), random, 0.9),
              e.retained(),
              Optional.of(share(random)),
              e.stored(),
              e.drawn(),
              e.cell()));
    }
    return changed;
  }

  private static BigDecimal part(BigDecimal of, SplittableRandom random, double most) {
    return of.multiply(BigDecimal.valueOf(random.nextDouble() * most))
        .setScale(2, RoundingMode.HALF_UP);
  }

  private static BigDecimal share(SplittableRandom random) {
    return BigDecimal.valueOf(random.nextInt(11), 1);
  }

  private static Scope with(Scope s, List<LedgerEntry> ledger) {
    return with(s, s.loan(), ledger);
  }

  private static Scope with(Scope s, Answers loan, List<LedgerEntry> ledger) {
    return ScopeEdit.of(s).ledger(ledger).loan(loan).scope();
  }

  // ---- the sheet ----------------------------------------------------------------------------

  private static void write(XSSFWorkbook book, List<LedgerEntry> rows) {
    var sheet = book.getSheet("Cost ledger");
    for (int c = 0; c < COLUMNS.size(); c++) {
      OwnersBook.cell(sheet, 0, c).setCellValue(COLUMNS.get(c));
    }
    for (int i = 0; i < rows.size(); i++) {
      var e = rows.get(i);
      OwnersBook.cell(sheet, i + 1, 0).setCellValue(e.line());
      e.originalBudget().ifPresent(b -> put(book, e, 1, b));
      put(book, e, 3, e.changes());
      put(book, e, 4, e.committed());
      put(book, e, 5, e.invoiced());
      put(book, e, 6, e.paid());
      put(book, e, 7, e.retained());
      e.inPlace().ifPresent(p -> put(book, e, 8, p));
      put(book, e, 9, e.stored());
      put(book, e, 10, e.drawn());
    }
  }

  private static void put(XSSFWorkbook book, LedgerEntry e, int column, BigDecimal value) {
    int row = Integer.parseInt(e.cell().substring("Cost ledger!A".length())) - 1;
    OwnersBook.cell(book.getSheet("Cost ledger"), row, column).setCellValue(value.doubleValue());
  }

  private static void same(XSSFWorkbook book, LoanStatus again, String verdict) {
    assertThat(Recalculated.shown(OwnersBook.cell(book, "Lender review!A3"))).isEqualTo(verdict);
    var softly = new SoftAssertions();
    same(softly, book, ReviewPage.LEFT_OVER, again.holding().surplus());
    same(softly, book, "Cost to complete", again.holding().toComplete());
    same(softly, book, "Interest to completion", again.holding().interestToCome());
    same(softly, book, "Can be drawn now", again.request().due());
    same(softly, book, "Contingency for the work left", again.contingency().required());
    same(softly, book, "Contingency the lender may release", again.contingency().release());
    same(softly, book, "To be brought if it is released", again.contingency().toBring());
    var carried = again.reserve().months();
    if (carried.isPresent()) {
      same(softly, book, "Months the interest reserve still carries", carried.get());
    }
    for (var f : again.flags()) {
      if (f.untold().isEmpty()) same(softly, book, f.sign().label(), f.figure());
    }
    var rows = book.getSheet("Cost report");
    for (int i = 0; i < again.rows().size(); i++) {
      var cell =
          rows.getRow(Addresses.HEADER_ROW + i).getCell(CostReportColumn.AT_COMPLETION.ordinal());
      softly
          .assertThat(cell.getNumericCellValue())
          .as(again.rows().get(i).line().id())
          .isCloseTo(again.rows().get(i).atCompletion().doubleValue(), within(1e-6));
    }
    var months = book.getSheet("Money to come");
    for (int i = 0; i < again.outlook().months().size(); i++) {
      softly
          .assertThat(months.getRow(Addresses.FIRST_ROW + i).getCell(14).getNumericCellValue())
          .isCloseTo(again.outlook().months().get(i).surplus().doubleValue(), within(1e-6));
    }
    softly.assertAll();
  }

  private static void same(
      SoftAssertions softly, XSSFWorkbook book, String label, BigDecimal expected) {
    softly
        .assertThat((Double) Recalculated.rightOf(book, "Lender review", label))
        .as(label)
        .isCloseTo(expected.doubleValue(), within(1e-6));
  }
}

package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.office.LibreOffice;
import cornerpost.plan.OrderRow;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import cornerpost.trace.Leaf;
import cornerpost.workbook.parts.StoredBook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The example houses from end to end: read, planned, written, calculated by another program. */
class ExampleResultsTest {
  private static final String MATCH = "Does this run match the choices";

  static List<String> houses() {
    return Examples.HOUSES;
  }

  @ParameterizedTest
  @MethodSource("houses")
  void every_formula_of_an_example_is_what_another_program_calculates(String house) {
    LibreOffice.needed();
    var owner = Examples.workbook(house);
    var result = ResultWorkbook.write(owner, Examples.plan(owner));
    var recalculated = LibreOffice.recalculated(result);
    var compared = Recalculated.compare(result, recalculated);
    assertThat(compared.formulas()).isGreaterThan(2000);
    assertThat(compared.differences()).isEmpty();
    assertThat(Recalculated.errors(recalculated)).isEmpty();
    assertThat(Recalculated.rightOf(OwnersBook.open(recalculated), "Summary", MATCH))
        .isEqualTo("Choices match this run");
  }

  /**
   * A width, a price and two quotes are changed in a result workbook. What another program then
   * shows must be what a new run on that same workbook gives, to the cent.
   */
  @ParameterizedTest
  @MethodSource("houses")
  void edits_in_the_result_of_an_example_give_the_totals_of_a_new_run(String house) {
    LibreOffice.needed();
    var owner = Examples.workbook(house);
    var plan = Examples.plan(owner);
    var width = width(plan);
    var item = dearest(plan);
    var price =
        item.amount().divide(item.buy(), 2, java.math.RoundingMode.UP).add(new BigDecimal("3.21"));
    var quoted = quotable(plan, item.item());
    var edited =
        OwnersBook.edited(
            ResultWorkbook.write(owner, plan),
            book -> {
              OwnersBook.cell(book, width.key())
                  .setCellValue(width.amount().multiply(new BigDecimal("1.0625")).doubleValue());
              price(book, item.item(), price.doubleValue());
              quote(book, 0, quoted.get(0), "each unit", 17.43);
              quote(book, 1, quoted.get(1), "the whole line", 1234.56);
            });
    var again = Examples.plan(edited, Map.of(item.item(), price.toPlainString())).estimate();
    var book = OwnersBook.open(LibreOffice.recalculated(edited));

    assertThat(differences(book, again.lines())).isEmpty();
    assertThat(again.total()).isNotEqualByComparingTo(plan.estimate().total());
    assertThat(money(book, "Total cost")).isEqualByComparingTo(again.total());
    assertThat(money(book, "Direct cost")).isEqualByComparingTo(again.direct());
    assertThat(money(book, "Indirect cost")).isEqualByComparingTo(again.indirect());
    assertThat(money(book, "Contingency")).isEqualByComparingTo(again.contingency());
    assertThat(money(book, "Tax")).isEqualByComparingTo(again.tax());
    again
        .byStage()
        .forEach((s, cost) -> assertThat(money(book, s.label())).isEqualByComparingTo(cost));
    assertThat(Recalculated.rightOf(book, "Summary", MATCH).toString())
        .contains("changed since this run");
    assertThat(Recalculated.errors(LibreOffice.recalculated(edited))).isEmpty();
  }

  /** The width of the first opening that has one. */
  private static Leaf width(Plan plan) {
    return plan.scope().openings().get(0).width().leaves().iterator().next();
  }

  private static OrderRow dearest(Plan plan) {
    return plan.orders().stream()
        .filter(o -> o.buy().signum() > 0)
        .max(Comparator.comparing(OrderRow::amount))
        .orElseThrow();
  }

  /** Two lines that are bought, of other items than the one whose price changes. */
  private static List<String> quotable(Plan plan, String but) {
    return plan.estimate().lines().stream()
        .filter(l -> l.kind() == CostLine.Kind.MATERIAL)
        .filter(l -> !l.id().startsWith("packs:"))
        .filter(l -> l.item().filter(i -> !i.equals(but)).isPresent())
        .sorted(Comparator.comparing(CostLine::money).reversed())
        .map(CostLine::id)
        .limit(2)
        .toList();
  }

  private static void price(XSSFWorkbook book, String code, double price) {
    var sheet = book.getSheet("Prices used");
    for (int r = Addresses.FIRST_ROW - 1; r <= sheet.getLastRowNum(); r++) {
      if (Recalculated.shown(OwnersBook.cell(sheet, r, 0)).equals(code)) {
        OwnersBook.cell(sheet, r, 2).setCellValue(price);
        return;
      }
    }
    throw new AssertionError("No price " + code);
  }

  private static void quote(
      XSSFWorkbook book, int index, String line, String quoteFor, double amount) {
    var at = QuoteColumns.find(StoredBook.read(bytes(book))).orElseThrow();
    var row = at.firstRow() + index;
    OwnersBook.cell(book, "Quotes!" + at.line() + row).setCellValue(line);
    OwnersBook.cell(book, "Quotes!" + at.quoteFor() + row).setCellValue(quoteFor);
    OwnersBook.cell(book, "Quotes!" + at.amount() + row).setCellValue(amount);
  }

  private static byte[] bytes(XSSFWorkbook book) {
    var bytes = new ByteArrayOutputStream();
    try {
      book.write(bytes);
    } catch (IOException e) { // into memory
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static BigDecimal money(XSSFWorkbook book, String label) {
    double found = (Double) Recalculated.rightOf(book, "Summary", label);
    return BigDecimal.valueOf(Math.round(found * 1e6)).movePointLeft(6);
  }

  /** Lines of the Cost plan whose amount is not that of a run. */
  static List<String> differences(XSSFWorkbook book, List<CostLine> lines) {
    var amounts = new java.util.HashMap<Object, Double>();
    var sheet = book.getSheet("Cost plan");
    for (int r = Addresses.FIRST_ROW - 1; r <= sheet.getLastRowNum(); r++) {
      amounts.put(
          Recalculated.shown(OwnersBook.cell(sheet, r, 0)),
          OwnersBook.cell(sheet, r, 6).getNumericCellValue());
    }
    return lines.stream()
        .filter(l -> Math.abs(amounts.getOrDefault(l.id(), -1e9) - l.money().doubleValue()) > 1e-6)
        .map(l -> l.id() + ": " + amounts.get(l.id()) + " but a run gives " + l.money())
        .toList();
  }
}

package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.office.LibreOffice;
import cornerpost.plan.Plan;
import cornerpost.scope.Quote;
import cornerpost.scope.QuoteFor;
import cornerpost.takeoff.HouseScopes;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResultWorkbookTest {
  private static final String MATCH = "Does this run match the choices";
  private static final Plan METRIC = TestPlans.plan(HouseScopes.metric("House & garden"));
  private static final Plan US = TestPlans.plan(HouseScopes.us("Prairie box"));

  private static Plan plan(String units) {
    return units.equals("metric") ? METRIC : US;
  }

  @ParameterizedTest
  @ValueSource(strings = {"metric", "US customary"})
  void every_formula_is_what_another_program_calculates(String units) {
    LibreOffice.needed();
    var plan = plan(units);
    var result = ResultWorkbook.write(OwnersBook.of(plan.scope()), plan);
    var recalculated = LibreOffice.recalculated(result);
    var compared = Recalculated.compare(result, recalculated);
    assertThat(compared.formulas()).isGreaterThan(400);
    assertThat(compared.differences()).isEmpty();
    assertThat(Recalculated.errors(recalculated)).isEmpty();
    assertThat(Recalculated.rightOf(OwnersBook.open(recalculated), "Summary", MATCH))
        .isEqualTo("Choices match this run");
  }

  @Test
  void edits_in_the_result_give_the_totals_of_a_new_run() {
    LibreOffice.needed();
    var result = ResultWorkbook.write(OwnersBook.of(METRIC.scope()), METRIC);
    var width = METRIC.scope().openings().get(0).width().leaves().iterator().next().key();
    var edited =
        OwnersBook.edited(
            result,
            book -> {
              OwnersBook.cell(book, width).setCellValue(1837);
              price(book, "sealant", 9.17);
              price(book, "labour/steelwork", 61.25);
              quote(book, 3, "opening/W1/sealant:sealant", "the whole line", 71.5);
              quote(book, 4, "box/A/buy:box-40hc", "each unit", 3999.99);
              quote(book, 5, "wall/paint:paint", "", 300);
              OwnersBook.cell(book.getSheet("Quotes"), 5, 4).setCellValue("no");
            });
    var book = OwnersBook.open(LibreOffice.recalculated(edited));

    var quotes =
        List.of(
            quote("opening/W1/sealant:sealant", QuoteFor.WHOLE, "71.5"),
            quote("box/A/buy:box-40hc", QuoteFor.UNIT, "3999.99"));
    var scope = TestPlans.quoted(HouseScopes.metric("House & garden", "1837"), quotes);
    var again =
        TestPlans.plan(scope, Map.of("sealant", "9.17", "labour/steelwork", "61.25")).estimate();
    assertThat(differences(book, again.lines())).isEmpty();
    assertThat(again.total()).isNotEqualByComparingTo(METRIC.estimate().total());
    assertThat(money(book, "Total cost")).isEqualByComparingTo(again.total());
    assertThat(money(book, "Direct cost")).isEqualByComparingTo(again.direct());
    assertThat(money(book, "Indirect cost")).isEqualByComparingTo(again.indirect());
    assertThat(money(book, "Contingency")).isEqualByComparingTo(again.contingency());
    assertThat(money(book, "Tax")).isEqualByComparingTo(again.tax());
    again
        .byStage()
        .forEach(
            (stage, cost) -> assertThat(money(book, stage.label())).isEqualByComparingTo(cost));
    assertThat(Recalculated.rightOf(book, "Summary", MATCH).toString())
        .contains("changed since this run");
  }

  /** Lines of the Cost plan whose amount is not that of a run. */
  private static List<String> differences(
      org.apache.poi.xssf.usermodel.XSSFWorkbook book, List<cornerpost.price.CostLine> lines) {
    var found = new java.util.ArrayList<String>();
    for (var line : lines) {
      for (var row : book.getSheet("Cost plan")) {
        if (row.getCell(0) == null || !row.getCell(0).toString().equals(line.id())) continue;
        var amount = row.getCell(6).getNumericCellValue();
        if (Math.abs(amount - line.money().doubleValue()) > 1e-6) {
          found.add(line.id() + ": " + amount + " but a run gives " + line.money());
        }
      }
    }
    return found;
  }

  private static BigDecimal money(org.apache.poi.xssf.usermodel.XSSFWorkbook book, String label) {
    double found = (Double) Recalculated.rightOf(book, "Summary", label);
    return BigDecimal.valueOf(Math.round(found * 1e6)).movePointLeft(6);
  }

  private static void price(
      org.apache.poi.xssf.usermodel.XSSFWorkbook book, String code, double price) {
    for (var row : book.getSheet("Prices used")) {
      if (row.getCell(0) != null
          && Recalculated.shown(OwnersBook.cell(book.getSheet("Prices used"), row.getRowNum(), 0))
              .equals(code)) {
        row.getCell(2).setCellValue(price);
        return;
      }
    }
    throw new AssertionError("No price " + code);
  }

  private static void quote(
      org.apache.poi.xssf.usermodel.XSSFWorkbook book,
      int row,
      String line,
      String quoteFor,
      double amount) {
    var sheet = book.getSheet("Quotes");
    OwnersBook.cell(sheet, row, 0).setCellValue(line);
    if (!quoteFor.isEmpty()) OwnersBook.cell(sheet, row, 2).setCellValue(quoteFor);
    OwnersBook.cell(sheet, row, 3).setCellValue(amount);
  }

  private static Quote quote(String line, QuoteFor quoteFor, String amount) {
    return new Quote(
        line,
        "A supplier",
        quoteFor,
        new BigDecimal(amount),
        Optional.empty(),
        Optional.empty(),
        true,
        "Quotes!D" + (quoteFor == QuoteFor.WHOLE ? 4 : 5));
  }

  @Test
  void two_writes_give_the_same_bytes() {
    var owner = OwnersBook.of(METRIC.scope());
    assertThat(ResultWorkbook.write(owner, METRIC)).isEqualTo(ResultWorkbook.write(owner, METRIC));
  }

  @Test
  void planning_a_result_again_changes_nothing() {
    var once = ResultWorkbook.write(OwnersBook.of(METRIC.scope()), METRIC);
    var twice = ResultWorkbook.write(once, METRIC);
    assertThat(ResultWorkbook.write(twice, METRIC)).isEqualTo(twice);
    assertThat(parts(twice)).isEqualTo(parts(once));
  }

  private static Map<String, Integer> parts(byte[] workbook) {
    var sizes = new java.util.TreeMap<String, Integer>();
    try (var in = new java.util.zip.ZipInputStream(new java.io.ByteArrayInputStream(workbook))) {
      for (var e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        sizes.put(e.getName(), in.readAllBytes().length);
      }
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return sizes;
  }
}

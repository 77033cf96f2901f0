package cornerpost.workbook;

import cornerpost.measure.Money;
import java.math.BigDecimal;
import java.util.List;

/**
 * A block beside a table: a column for each stage, its amount above the column names, and in each
 * row the part of it that has come by then. Their products, each rounded by itself, are a figure of
 * the table.
 */
final class StageParts {
  private static final int AMOUNTS = Addresses.HEADER_ROW - 1;

  private final ResultRun run;
  private final SheetPage page;
  private final int first;
  private final int count;

  /**
   * @param first column of the block
   * @param count of its stages
   */
  StageParts(ResultRun run, SheetPage page, int first, int count) {
    this.run = run;
    this.page = page;
    this.first = first;
    this.count = count;
  }

  /** The column of a stage and its amount. */
  void stage(int number, String name, int width, String formula, BigDecimal amount) {
    int column = first + number;
    page.text(Addresses.HEADER_ROW, column, name, page.heading());
    page.width(column, width);
    page.formula(AMOUNTS, column, formula, amount, page.number(run.moneyFormat()).strong());
  }

  /** The parts of a row. */
  void parts(int row, List<BigDecimal> parts) {
    for (int s = 0; s < count; s++) {
      page.number(row, first + s, parts.get(s), page.number("0.0000%"));
    }
  }

  /** What of the amounts has come by a row. */
  String sum(int row) {
    return "SUMPRODUCT(ROUND(ROUND("
        + across(AMOUNTS, "$")
        + "*"
        + across(row, "")
        + ","
        + Money.GUARD_DECIMALS
        + "),"
        + run.minorDigits()
        + "))";
  }

  private String across(int row, String fixed) {
    var last = SheetPage.letter(first + Math.max(0, count - 1));
    return "$" + SheetPage.letter(first) + fixed + row + ":$" + last + fixed + row;
  }
}

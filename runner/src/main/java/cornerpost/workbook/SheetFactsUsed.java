package cornerpost.workbook;

import cornerpost.fact.Fact;
import cornerpost.trace.Leaf;
import java.math.BigDecimal;

/**
 * Sheet Facts used: a row for each fact and worked-out number, then the choices as they stood at
 * this run, each beside what its cell holds now.
 */
final class SheetFactsUsed {
  /** The sum of column Changed: how many facts and entries are no longer those of the run. */
  static final String CHANGED = "'Facts used'!$H$2";

  private SheetFactsUsed() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.FACTS_USED);
    page.header(
        Addresses.HEADER_ROW,
        "Id",
        "Description",
        "Value",
        "Unit",
        "Source",
        "Kind",
        "Value at this run",
        "Changed");
    page.headIndented(Addresses.HEADER_ROW, 3);
    page.headRight(Addresses.HEADER_ROW, 2, 6, 7);
    page.widths(34, 44, 15, 12, 52, 24, 15, 9);
    int row = Addresses.FIRST_ROW;
    for (var leaf : run.addresses.facts()) {
      fact(run, page, row, leaf);
      row++;
    }
    // Paper has the facts; the entries below them stand on the owner's own sheets.
    SheetPrint.printed(page, 5, Math.max(Addresses.FIRST_ROW, row - 1));
    row = RunMark.write(run, page, row);
    page.text(
        2,
        0,
        "Entries, rows and facts that are no longer those of this run are counted in column Changed.",
        page.plain().strong());
    page.formula(
        2,
        7,
        "SUM($H$" + Addresses.FIRST_ROW + ":$H$" + Math.max(Addresses.FIRST_ROW, row - 1) + ")",
        0,
        page.number("0").strong());
    SheetTables.finish(page, row - 1, 8, 1);
  }

  private static void fact(ResultRun run, SheetPage page, int row, Leaf leaf) {
    boolean worked = leaf.kind() == Leaf.Kind.WORKED;
    var look = page.number(format(leaf.amount()));
    page.text(row, 0, leaf.key());
    page.text(row, 1, leaf.name(), page.wrapped());
    page.number(row, 2, leaf.amount(), look);
    page.text(row, 3, leaf.unit().symbol(), page.plain().indented());
    page.text(row, 4, leaf.source(), page.wrapped());
    var certainty =
        run.plan.facts().find(leaf.key()).map(Fact::certainty).map(c -> ", " + c).orElse("");
    page.text(
        row,
        5,
        worked ? "worked out: needs a new run" : "fact" + certainty,
        worked ? page.wrapped().slanted() : page.wrapped());
    page.number(row, 6, leaf.amount(), look.inInk(SheetStyle.QUIET));
    page.formula(
        row,
        7,
        "IF(ISNUMBER($C" + row + "),IF($C" + row + "=$G" + row + ",0,1),1)",
        0,
        page.number("0").inInk(SheetStyle.QUIET));
  }

  /** As many decimals as the fact was given. */
  static String format(BigDecimal amount) {
    int decimals = Math.max(0, Math.min(9, amount.stripTrailingZeros().scale()));
    return decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
  }
}

package cornerpost.workbook;

import cornerpost.price.PriceBook;
import cornerpost.trace.Leaf;
import java.math.BigDecimal;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;

/** Sheet Prices used: a row for each price, rate or hour the plan rests on. */
final class SheetPricesUsed {
  /** The sum of column Changed: how many prices are no longer those of the run. */
  static final String CHANGED = "'Prices used'!$J$2";

  private SheetPricesUsed() {}

  /** What the book says of a price: low, likely, high. */
  private record Range(BigDecimal low, BigDecimal likely, BigDecimal high) {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.PRICES_USED);
    page.header(
        Addresses.HEADER_ROW,
        "Code",
        "Description",
        "Price",
        "Unit",
        "Low",
        "Likely",
        "High",
        "Source",
        "Price at this run",
        "Changed");
    page.headIndented(Addresses.HEADER_ROW, 3, 7);
    page.headRight(Addresses.HEADER_ROW, 2, 4, 5, 6, 8, 9);
    page.widths(28, 48, 12, 16, 12, 12, 12, 44, 12, 9);
    var entry =
        page.number("#,##0.00##")
            .filled(SheetStyle.ENTRY)
            .ruledBottom(BorderStyle.THIN, SheetStyle.FLOAT);
    int row = Addresses.FIRST_ROW;
    for (var leaf : run.addresses.prices()) {
      boolean share = leaf.key().equals("tax");
      var format = share ? "0.00%" : leaf.key().startsWith("hours/") ? "0.00###" : "#,##0.00##";
      var quiet = page.number(format).inInk(SheetStyle.QUIET);
      page.text(row, 0, leaf.key());
      page.text(row, 1, leaf.name(), page.wrapped());
      page.number(row, 2, leaf.amount(), entry.formatted(format));
      page.text(row, 3, leaf.unit().symbol(), page.plain().indented());
      var range = range(run.plan.book(), leaf);
      if (range.isPresent()) {
        page.number(row, 4, range.get().low(), quiet);
        page.number(row, 5, range.get().likely(), quiet);
        page.number(row, 6, range.get().high(), quiet);
      }
      page.text(row, 7, leaf.source(), page.wrapped().indented());
      page.number(row, 8, leaf.amount(), quiet);
      page.formula(
          row,
          9,
          "IF(ISNUMBER($C" + row + "),IF($C" + row + "=$I" + row + ",0,1),1)",
          0,
          quiet("0", page));
      row++;
    }
    page.formula(
        2,
        9,
        "SUM($J$" + Addresses.FIRST_ROW + ":$J$" + run.addresses.lastPriceRow() + ")",
        0,
        quiet("0", page));
    run.plan
        .book()
        .ifPresent(
            b -> {
              var r = b.region();
              page.text(
                  2,
                  0,
                  r.name()
                      + ", prices of "
                      + Days.shown(r.priceDate())
                      + ", before "
                      + r.taxName()
                      + ". "
                      + r.notice(),
                  page.plain().strong());
            });
    SheetTables.finish(page, row - 1, 10, 1);
  }

  private static SheetStyle quiet(String format, SheetPage page) {
    return page.number(format).inInk(SheetStyle.QUIET);
  }

  private static Optional<Range> range(Optional<PriceBook> book, Leaf leaf) {
    if (book.isEmpty()) return Optional.empty();
    var b = book.get();
    var item = b.findItem(leaf.key()).map(i -> new Range(i.low(), i.likely(), i.high()));
    if (item.isPresent()) return item;
    if (leaf.key().startsWith("hours/")) {
      return b.findHours(leaf.key().substring("hours/".length()))
          .map(h -> new Range(h.low(), h.likely(), h.high()));
    }
    return b.rates().values().stream()
        .filter(r -> PriceBook.rateKey(r.trade()).equals(leaf.key()))
        .findFirst()
        .map(r -> new Range(r.low(), r.likely(), r.high()));
  }
}

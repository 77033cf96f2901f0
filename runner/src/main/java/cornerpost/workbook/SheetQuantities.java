package cornerpost.workbook;

import cornerpost.measure.Dimension;
import cornerpost.takeoff.Line;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.usermodel.BorderStyle;

/** Sheet Quantities: what is measured, how, and from which cells. */
final class SheetQuantities {
  private static final int FIRST = Addresses.FIRST_ROW;

  private SheetQuantities() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.QUANTITIES);
    page.header(
        Addresses.HEADER_ROW,
        "Id",
        "Stage",
        "Description",
        "Quantity",
        "Unit",
        "How it comes about",
        "Rule and source",
        "Follows the choices",
        "At this run");
    page.headIndented(Addresses.HEADER_ROW, 4, 6);
    page.headRight(Addresses.HEADER_ROW, 3, 8);
    page.widths(34, 18, 38, 11, 7, 84, 36, 20, 12);
    int row = FIRST;
    Line before = null;
    for (var line : run.plan.lines()) {
      boolean first = before == null || before.stage() != line.stage();
      var look = first ? ruled(page.plain()) : page.plain();
      var amount = line.quantity().in(line.shownIn());
      var number = look.formatted(format(line.quantity(), amount)).aligned(RIGHT);
      page.text(row, 0, line.id(), look);
      page.text(row, 1, line.stage().label(), first ? look.strong().wrapping() : look.wrapping());
      page.text(row, 2, line.description(), look.wrapping());
      page.formula(row, 3, line.quantity().formula(run.addresses, line.shownIn()), amount, number);
      page.text(row, 4, line.shownIn().symbol(), look.indented());
      page.text(row, 5, line.quantity().inWords(run.plan.scope().units()), look.wrapping());
      page.text(row, 6, line.because(), look.wrapping().indented());
      page.text(row, 7, followsChoices(List.of(line.quantity())), look.wrapping());
      page.number(row, 8, amount, number.inInk(SheetStyle.QUIET));
      costLineOf(run, line)
          .ifPresent(r -> page.link(rowOf(run, line), 0, ResultSheet.COST_PLAN, r));
      if (!first) page.fold(row);
      before = line;
      row++;
    }
    SheetTables.finish(page, row - 1, 9, 1);
  }

  static final org.apache.poi.ss.usermodel.HorizontalAlignment RIGHT =
      org.apache.poi.ss.usermodel.HorizontalAlignment.RIGHT;

  static SheetStyle ruled(SheetStyle look) {
    return look.ruledTop(BorderStyle.THIN, SheetStyle.DONE);
  }

  private static int rowOf(ResultRun run, Line line) {
    return run.addresses.quantityRow(line.id()).orElseThrow();
  }

  private static java.util.Optional<Integer> costLineOf(ResultRun run, Line line) {
    return run.addresses.linesOfQuantity(line.id()).stream()
        .findFirst()
        .flatMap(l -> run.addresses.costRow(l.id()));
  }

  /** Decimals enough to follow, none for whole counts. */
  static String format(Figure figure, BigDecimal shown) {
    boolean whole = shown.stripTrailingZeros().scale() <= 0;
    if (figure.dimension().equals(Dimension.NONE) && whole) return "#,##0";
    var size = shown.abs();
    if (size.signum() == 0 || size.compareTo(new BigDecimal("0.1")) >= 0) return "#,##0.00";
    return size.compareTo(new BigDecimal("0.001")) >= 0 ? "0.0000" : "0.000000";
  }

  /** Whether a figure is live through and through, or rests on a number only a new run changes. */
  static String followsChoices(List<Figure> figures) {
    boolean worked =
        figures.stream()
            .flatMap(f -> f.leaves().stream())
            .anyMatch(l -> l.kind() == Leaf.Kind.WORKED);
    return worked ? "in part: worked out by a run" : "yes";
  }
}

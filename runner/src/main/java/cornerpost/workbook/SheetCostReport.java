package cornerpost.workbook;

import static cornerpost.workbook.CostReportColumn.*;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.finance.Flags;
import cornerpost.finance.LoanStatus;
import cornerpost.scope.ContingencyRule;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Sheet Cost report: the ledger, the cost plan and the progress brought together, line by line. */
final class SheetCostReport {
  private static final List<CostReportColumn> SUMMED =
      List.of(
          ORIGINAL,
          CHANGES,
          REVISED,
          COMMITTED,
          UNCOMMITTED,
          INVOICED,
          PAID,
          RETAINED,
          PAYABLE,
          IN_PLACE,
          STORED,
          TO_DATE,
          TO_COMPLETE,
          AT_COMPLETION,
          VARIANCE,
          BY_PRICE,
          BY_QUANTITY,
          BY_SCOPE,
          BY_TIME,
          OVER,
          EARNED,
          DRAWN,
          NO_FIRM_PRICE);

  private static final int KINDS = Treatment.values().length;

  private final ResultRun run;
  private final SheetPage page;
  private final LoanStatus status;
  private final Optional<EntryColumns> ledger;
  private final Optional<EntryColumns> progress;
  private final Map<Stage, int[]> baseRows = new HashMap<>();
  private final SheetStyle money;
  private final SheetStyle strong;
  private final SheetStyle percent;
  private final SheetStyle quantity;
  private final SheetStyle least;
  private final SheetStyle wrapped;
  private final SheetStyle indented;
  private final int last;
  private int row;

  private SheetCostReport(ResultRun run, LoanStatus status) {
    this.run = run;
    this.page = run.page(ResultSheet.COST_REPORT);
    this.status = status;
    ledger = EntryColumns.find(run.workbook, "Cost ledger", "Line");
    progress = EntryColumns.find(run.workbook, "Progress", "Task");
    money = page.number(run.moneyFormat());
    strong = money.strong();
    percent = page.number("0.0%");
    quantity = page.number("#,##0.##");
    least = page.number("0.0000");
    wrapped = page.wrapped();
    indented = page.plain().indented();
    last = lastRow(status);
  }

  static void write(ResultRun run) {
    run.status(ResultSheet.COST_REPORT).ifPresent(s -> new SheetCostReport(run, s).write());
  }

  static int lastRow(LoanStatus status) {
    return Addresses.HEADER_ROW + status.rows().size();
  }

  private void write() {
    TableColumn.write(page, CostReportColumn.values());
    page.height(Addresses.HEADER_ROW, 42);
    for (var c : CostReportColumn.values()) {
      boolean text = c.ordinal() < 3 || c == KIND || c == QUOTE_ENDED;
      if (!text) page.headRight(Addresses.HEADER_ROW, c.ordinal());
    }
    page.headIndented(Addresses.HEADER_ROW, KIND.ordinal(), QUOTE_ENDED.ordinal());
    row = Addresses.FIRST_ROW;
    for (var r : status.rows()) {
      var kind = r.line().treatment();
      if (kind == Treatment.WORK || kind == Treatment.TIME) {
        baseRows.merge(
            r.line().stage().orElseThrow(), new int[] {row, row}, (a, b) -> new int[] {a[0], b[0]});
      }
      row++;
    }
    row = Addresses.FIRST_ROW;
    for (var r : status.rows()) {
      line(r);
      row++;
    }
    totals();
    SheetTables.finish(page, row - 1, CostReportColumn.values().length, 1);
    // before anything is entered the lines are those of the Cost plan and nothing has moved: paper
    // gets the totals of the budget
    boolean entered = !run.plan.scope().ledger().isEmpty();
    if (entered) SheetPrint.printed(page, OVER.ordinal(), row - 1);
    else SheetPrint.printed(page, INVOICED.ordinal() - 1, Addresses.HEADER_ROW);
  }

  private void totals() {
    int at = Addresses.HEADER_ROW - 1;
    page.text(at, DESCRIPTION.ordinal(), "All lines, in " + run.currency(), page.plain().strong());
    for (var c : SUMMED) {
      page.formula(
          at,
          c.ordinal(),
          "ROUND(SUM(" + c.range(Addresses.FIRST_ROW, row - 1) + ")," + run.minorDigits() + ")",
          status.rows().stream().map(r -> value(c, r)).reduce(BigDecimal.ZERO, BigDecimal::add),
          page.number(run.moneyFormat()).strong());
    }
  }

  private BigDecimal value(CostReportColumn c, Row r) {
    return switch (c) {
      case ORIGINAL -> r.original();
      case CHANGES -> r.entered().changes();
      case REVISED -> r.revised();
      case COMMITTED -> r.entered().committed();
      case UNCOMMITTED -> r.uncommitted();
      case INVOICED -> r.entered().invoiced();
      case PAID -> r.entered().paid();
      case RETAINED -> r.entered().retained();
      case PAYABLE -> r.payable();
      case SHARE -> r.share();
      case IN_PLACE -> r.inPlace();
      case STORED -> r.entered().stored();
      case TO_DATE -> r.toDate();
      case TO_COMPLETE -> r.toComplete();
      case AT_COMPLETION -> r.atCompletion();
      case VARIANCE -> r.variance();
      case BY_PRICE -> r.byPrice();
      case BY_QUANTITY -> r.byQuantity();
      case BY_SCOPE -> r.byScope();
      case BY_TIME -> r.byTime();
      case OVER -> r.over();
      case EARNED -> r.earned();
      case DRAWN -> r.entered().drawn();
      case PROGRESS -> r.line().progress();
      case AMOUNT -> r.line().amount();
      case QUANTITY -> r.line().quantity();
      case LEAST -> r.line().leastToCome();
      case NO_FIRM_PRICE ->
          Flags.noFirmPrice(r, status.facts().total(), status.terms())
              ? r.line().amount()
              : BigDecimal.ZERO;
      case LINE, STAGE, DESCRIPTION, KIND, QUOTE_ENDED ->
          throw new IllegalArgumentException("no number: " + c);
    };
  }

  private void line(Row r) {
    var l = r.line();
    page.text(row, LINE.ordinal(), l.id(), wrapped);
    page.text(row, STAGE.ordinal(), l.stage().map(Stage::label).orElse(""), wrapped);
    page.text(row, DESCRIPTION.ordinal(), l.description(), wrapped);
    page.text(row, KIND.ordinal(), l.treatment().label(), indented);
    page.text(row, QUOTE_ENDED.ordinal(), l.quoteEnded() ? "yes" : "no", indented);
    var costRow = run.addresses.costRow(l.id());
    costRow.ifPresent(c -> page.link(row, 0, ResultSheet.COST_PLAN, c));
    planned(r, AMOUNT, CostPlanColumn.AMOUNT, costRow, money);
    planned(r, QUANTITY, CostPlanColumn.QUANTITY, costRow, quantity);
    page.number(row, LEAST.ordinal(), l.leastToCome(), least);
    entered(r, CHANGES, "Approved changes");
    entered(r, COMMITTED, "Committed");
    entered(r, INVOICED, "Invoiced");
    entered(r, PAID, "Paid");
    entered(r, RETAINED, "Retained");
    entered(r, STORED, "Stored materials");
    entered(r, DRAWN, "Drawn");
    byId(
        r,
        ORIGINAL,
        0,
        () ->
            "IF("
                + holds(r, "Original budget", ">=0")
                + ","
                + run.rounded(sum(r, "Original budget"))
                + ","
                + at(AMOUNT)
                + ")",
        money);
    boolean gone = l.treatment() == Treatment.GONE;
    money(r, REVISED, () -> gone ? "0" : cents(at(ORIGINAL) + "+" + at(CHANGES)));
    money(r, UNCOMMITTED, () -> cents(at(REVISED) + "-" + at(COMMITTED)));
    money(r, PAYABLE, () -> cents(at(INVOICED) + "-" + at(PAID) + "-" + at(RETAINED)));
    shares(r);
    cost(r);
    variance(r);
    noFirmPrice(r, costRow);
  }

  /** A cell of the cost plan's, or a number for a line that is gone. */
  private void planned(
      Row r, CostReportColumn c, CostPlanColumn of, Optional<Integer> costRow, SheetStyle look) {
    if (costRow.isEmpty()) {
      page.number(row, c.ordinal(), value(c, r), look);
      return;
    }
    int there = costRow.get();
    shared(r, c, there - row, () -> plan(of, there), look);
  }

  /** A cell of the cost plan, its row counted from the report's. */
  private static String plan(CostPlanColumn column, int row) {
    return "'Cost plan'!" + column.at(row);
  }

  private void entered(Row r, CostReportColumn c, String column) {
    byId(r, c, 0, () -> run.rounded(sum(r, column)), money);
  }

  private String sum(Row r, String column) {
    return ledger
        .map(
            l ->
                EntryColumns.isPlain(r.line().id())
                    ? l.sumAt(column, at(LINE))
                    : l.sum(column, r.line().id()))
        .orElse("0");
  }

  private String holds(Row r, String column, String condition) {
    return ledger
        .map(
            l ->
                EntryColumns.isPlain(r.line().id())
                    ? l.holdsAt(column, at(LINE), condition)
                    : l.holds(column, r.line().id(), condition))
        .orElse("FALSE");
  }

  // ---- formulas that rows share -------------------------------------------------------------

  private void money(Row r, CostReportColumn c, Supplier<String> formula) {
    shared(r, c, 0, formula, money(r, c));
  }

  private SheetStyle money(Row r, CostReportColumn c) {
    boolean bad = (c == OVER || c == VARIANCE) && value(c, r).signum() > 0;
    return bad ? strong : money;
  }

  /** A formula with what stands on the ledger for the line's id in it. */
  private void byId(
      Row r, CostReportColumn c, int which, Supplier<String> formula, SheetStyle look) {
    if (EntryColumns.isPlain(r.line().id())) shared(r, c, which, formula, look);
    else page.formula(row, c.ordinal(), formula.get(), value(c, r), look);
  }

  /**
   * A formula shared by the lines that are reckoned alike.
   *
   * @param which tells apart those of a column that differ otherwise
   */
  private void shared(
      Row r, CostReportColumn c, int which, Supplier<String> formula, SheetStyle look) {
    long group =
        ((long) c.ordinal() * KINDS + r.line().treatment().ordinal()) * Integer.MAX_VALUE + which;
    page.shared(row, c.ordinal(), group, last, formula, value(c, r), look);
  }

  private String at(CostReportColumn c) {
    return c.at(row);
  }

  /** A sum of cents: binary noise taken off. */
  private String cents(String formula) {
    return "ROUND(" + formula + "," + run.minorDigits() + ")";
  }

  private void shares(Row r) {
    var l = r.line();
    boolean base = l.treatment() == Treatment.WORK || l.treatment() == Treatment.TIME;
    if (base) {
      if (l.noted().isPresent() && progress.isPresent()) {
        var task = l.noted().get();
        page.formula(
            row,
            PROGRESS.ordinal(),
            "IF("
                + progress.get().holds("Complete", task, ">=0")
                + ","
                + progress.get().sum("Complete", task)
                + ","
                + l.progress().toPlainString()
                + ")",
            l.progress(),
            percent);
      } else {
        page.number(row, PROGRESS.ordinal(), l.progress(), percent);
      }
    }
    if (l.treatment() == Treatment.GONE || l.treatment() == Treatment.INTEREST) {
      page.number(row, SHARE.ordinal(), 0, percent);
      return;
    }
    byId(
        r,
        SHARE,
        base ? 0 : 1 + l.stage().orElseThrow().ordinal(),
        () ->
            "IF("
                + holds(r, "Work in place", ">=0")
                + ","
                + sum(r, "Work in place")
                + ","
                + (base ? at(PROGRESS) : ofStage(l.stage().orElseThrow()))
                + ")",
        percent);
  }

  /** In step with the work of the stage, the rows of which stand together. */
  private String ofStage(Stage stage) {
    var rows = baseRows.get(stage);
    if (rows == null) return "0";
    var place = "SUM(" + range(IN_PLACE, rows) + ")";
    var rest = "SUM(" + range(TO_COMPLETE, rows) + ")";
    return "IF(" + place + "+" + rest + "=0,0," + place + "/(" + place + "+" + rest + "))";
  }

  private static String range(CostReportColumn c, int[] rows) {
    return c.range(rows[0], rows[1]);
  }

  private void cost(Row r) {
    var kind = r.line().treatment();
    switch (kind) {
      case WORK, TIME, ON_TOP -> {
        money(r, IN_PLACE, this::part);
        money(r, TO_DATE, () -> toDate(kind));
        money(r, TO_COMPLETE, () -> toComplete(kind));
        money(r, EARNED, () -> run.rounded(at(REVISED) + "*MIN(1," + at(SHARE) + ")"));
      }
      case CONTINGENCY -> {
        money(r, IN_PLACE, () -> "0");
        money(r, TO_DATE, this::spent);
        boolean all = status.terms().contingency() == ContingencyRule.ALL_LEFT;
        money(
            r,
            TO_COMPLETE,
            () -> all ? "MAX(0," + at(REVISED) + ")" : cents(at(AMOUNT) + "-" + part()));
        money(r, EARNED, () -> "0");
      }
      case GONE -> {
        money(r, IN_PLACE, () -> "0");
        money(r, TO_DATE, this::spent);
        money(r, TO_COMPLETE, () -> "0");
        money(r, EARNED, () -> "0");
      }
      case INTEREST -> {
        money(r, IN_PLACE, () -> at(TO_DATE));
        money(r, TO_DATE, this::spent);
        money(r, TO_COMPLETE, () -> SheetMoneyToCome.interest(status));
        money(r, EARNED, () -> "MIN(" + at(TO_DATE) + ",MAX(0," + at(REVISED) + "))");
      }
    }
    money(r, AT_COMPLETION, () -> cents(at(TO_DATE) + "+" + at(TO_COMPLETE)));
  }

  private String spent() {
    return "MAX(" + at(INVOICED) + "," + at(PAID) + ")";
  }

  private String part() {
    return run.rounded(at(AMOUNT) + "*" + at(SHARE));
  }

  /** Months that are used up are not the end of what is paid by the month: the days to come are. */
  private String done(Treatment kind) {
    return kind == Treatment.TIME
        ? "AND(" + at(SHARE) + ">=1," + at(LEAST) + "<=0)"
        : at(SHARE) + ">=1";
  }

  private String toDate(Treatment kind) {
    var received = "MIN(" + at(INVOICED) + "," + at(PAID) + ")";
    return cents(
        "IF("
            + at(AMOUNT)
            + "<0,IF(AND("
            + done(kind)
            + ","
            + received
            + "<0),"
            + received
            + ",MIN("
            + received
            + ","
            + at(IN_PLACE)
            + "+"
            + at(STORED)
            + ")),IF(AND("
            + done(kind)
            + ","
            + spent()
            + ">0),MAX("
            + spent()
            + ","
            + at(COMMITTED)
            + "),MAX("
            + spent()
            + ","
            + at(IN_PLACE)
            + "+"
            + at(STORED)
            + ")))");
  }

  private String toComplete(Treatment kind) {
    var more = at(COMMITTED) + "-" + at(TO_DATE);
    return cents(
        "IF("
            + at(AMOUNT)
            + "<0,IF("
            + done(kind)
            + ",0,MIN(0,"
            + at(AMOUNT)
            + "-"
            + at(IN_PLACE)
            + "-"
            + at(STORED)
            + ")),IF("
            + done(kind)
            + ",MAX(0,"
            + more
            + "),MAX(0,"
            + at(AMOUNT)
            + "-"
            + at(IN_PLACE)
            + "-"
            + at(STORED)
            + ","
            + run.rounded(at(AMOUNT) + "*" + at(LEAST))
            + ","
            + more
            + approved(kind)
            + ")))");
  }

  /** An increase that was approved of unfinished work: the rest of the revised budget at least. */
  private String approved(Treatment kind) {
    return kind == Treatment.WORK
        ? ",IF(" + at(CHANGES) + ">0," + at(REVISED) + "-" + at(IN_PLACE) + "-" + at(STORED) + ",0)"
        : "";
  }

  private void variance(Row r) {
    var kind = r.line().treatment();
    boolean late = kind == Treatment.TIME || kind == Treatment.INTEREST;
    money(r, VARIANCE, () -> cents(at(AT_COMPLETION) + "-" + at(ORIGINAL)));
    money(r, BY_SCOPE, () -> kind == Treatment.GONE ? at(VARIANCE) : at(CHANGES));
    money(r, BY_TIME, () -> late ? cents(at(VARIANCE) + "-" + at(BY_SCOPE)) : "0");
    byId(r, BY_QUANTITY, 0, () -> byQuantity(r), money);
    money(
        r,
        BY_PRICE,
        () -> cents(at(VARIANCE) + "-" + at(BY_SCOPE) + "-" + at(BY_TIME) + "-" + at(BY_QUANTITY)));
    money(
        r,
        OVER,
        () ->
            kind == Treatment.CONTINGENCY
                ? "0"
                : cents("MAX(0," + at(AT_COMPLETION) + "-" + at(REVISED) + ")"));
  }

  private String byQuantity(Row r) {
    if (r.line().treatment() != Treatment.WORK) return "0";
    var then = sum(r, "Original quantity");
    var more = "(" + at(QUANTITY) + "-" + then + ")/MAX(" + then + ",0.000001)";
    return "IF("
        + holds(r, "Original quantity", ">0")
        + ","
        + run.rounded(at(ORIGINAL) + "*" + more)
        + ",0)";
  }

  private void noFirmPrice(Row r, Optional<Integer> costRow) {
    if (r.line().treatment() != Treatment.WORK || costRow.isEmpty()) {
      money(r, NO_FIRM_PRICE, () -> "0");
      return;
    }
    int there = costRow.get();
    shared(r, NO_FIRM_PRICE, there - row, () -> noFirmPrice(there), money);
  }

  private String noFirmPrice(int costRow) {
    var large = run.loan(LoanQuestions.LARGE_LINE);
    return "IF(AND("
        + large
        + ">0,"
        + at(AMOUNT)
        + ">0,"
        + at(AMOUNT)
        + ">="
        + large
        + "*"
        + LoanItem.TOTAL.cell()
        + ","
        + at(COMMITTED)
        + "=0,"
        + at(SHARE)
        + "<1,"
        + plan(CostPlanColumn.BASIS, costRow)
        + "<>\"quote\"),"
        + at(AMOUNT)
        + ",0)";
  }
}

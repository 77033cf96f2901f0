package cornerpost.workbook;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.FirstReview;
import cornerpost.finance.Flag;
import cornerpost.finance.Flags;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Sign;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.Question;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The line that a figure of the lender's review comes from. */
final class ReviewLinks {
  private static final int TOTALS = Addresses.HEADER_ROW - 1;

  private final ResultRun run;

  ReviewLinks(ResultRun run) {
    this.run = run;
  }

  /** Of a sign that can be raised before money has moved. */
  Optional<String> before(Flag flag, FirstReview review) {
    return switch (flag.sign()) {
      case SHORT -> Optional.of(SheetCostToComplete.SURPLUS);
      case CASH -> Optional.of(SheetCashFlow.leastCash(run.plan.finance().months()));
      case NO_QUOTE ->
          review
              .largestUnquoted()
              .flatMap(run.addresses::costRow)
              .map(r -> Addresses.range(CostPlanColumn.AMOUNT, r, r).split(":")[0]);
      case ENDED -> Optional.of("Quotes!A1");
      default -> always(flag.sign());
    };
  }

  /** Of a sign once money has moved. */
  Optional<String> of(Flag flag, LoanStatus status) {
    return switch (flag.sign()) {
      case SHORT -> Optional.of(SheetMoneyToCome.leastCashCell(status));
      case CASH -> Optional.of(SheetMoneyToCome.leastCashCell(status));
      case AHEAD -> Optional.of(SheetScheduleOfValues.mostAhead(status));
      case FRONT -> Optional.of(SheetScheduleOfValues.there());
      case OVER -> worst(status, CostReportColumn.OVER, Row::over);
      case CONTINGENCY -> Optional.of(CostReportColumn.REVISED.total());
      case NO_QUOTE ->
          worst(
              status,
              CostReportColumn.NO_FIRM_PRICE,
              r ->
                  Flags.noFirmPrice(r, status.facts().total(), status.terms())
                      ? r.line().amount()
                      : BigDecimal.ZERO);
      case ENDED ->
          worst(
              status,
              CostReportColumn.QUOTE_ENDED,
              r -> r.line().quoteEnded() ? BigDecimal.ONE : BigDecimal.ZERO);
      case EARLY -> worst(status, CostReportColumn.PAYABLE, r -> r.payable().negate());
      default -> always(flag.sign());
    };
  }

  private Optional<String> always(Sign sign) {
    return switch (sign) {
      case LICENSED -> check();
      case MATURITY -> finish();
      case VALUE -> loan(LoanQuestions.VALUE);
      default -> Optional.empty();
    };
  }

  /** The row of move-in on the Schedule; its top where only own tasks are planned. */
  Optional<String> finish() {
    int row = run.addresses.taskRow(BuildTask.MOVE_IN.id()).orElse(Addresses.HEADER_ROW);
    return Optional.of("Schedule!A" + row);
  }

  /** The owner's cell for an entry of sheet Loan; empty where it was not entered. */
  Optional<String> loan(Question question) {
    return run.plan.scope().loan().find(question).map(a -> a.cell()).filter(c -> c.contains("!"));
  }

  private Optional<String> check() {
    var checks = SheetChecks.sorted(run.plan);
    for (int i = 0; i < checks.size(); i++) {
      if (checks.get(i).id().startsWith("licence/")
          || checks.get(i).id().equals("welding-by-owner")) {
        return Optional.of("Checks!A" + (Addresses.FIRST_ROW + i));
      }
    }
    return Optional.of("Checks!A" + Addresses.HEADER_ROW);
  }

  /**
   * The row of the Cost report where a figure is greatest; its total where none is above nothing.
   */
  private static Optional<String> worst(
      LoanStatus status, CostReportColumn column, Function<Row, BigDecimal> figure) {
    List<Row> rows = status.rows();
    int worst = -1;
    for (int i = 0; i < rows.size(); i++) {
      var now = figure.apply(rows.get(i));
      if (now.signum() > 0 && (worst < 0 || now.compareTo(figure.apply(rows.get(worst))) > 0)) {
        worst = i;
      }
    }
    int none = column == CostReportColumn.QUOTE_ENDED ? Addresses.HEADER_ROW : TOTALS;
    int row = worst < 0 ? none : Addresses.FIRST_ROW + worst;
    return Optional.of("'Cost report'!" + column.at(row));
  }
}

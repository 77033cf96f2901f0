package cornerpost.workbook;

import cornerpost.finance.Flag;
import cornerpost.finance.LoanStatus;
import cornerpost.plan.DatedTask;
import cornerpost.scope.Question;
import cornerpost.takeoff.BuildTask;
import java.util.Comparator;
import java.util.Optional;

/** The line that a figure of the lender's review comes from. */
final class ReviewLinks {
  private final ResultRun run;

  ReviewLinks(ResultRun run) {
    this.run = run;
  }

  /** Of a sign. */
  Optional<String> of(Flag flag, LoanStatus status) {
    return switch (flag.sign()) {
      case SHORT -> Optional.of(LoanItem.SHORT.cell());
      case CASH -> Optional.of(SheetMoneyToCome.leastCashCell(status));
      case ABOVE_LOAN -> Optional.of(LoanItem.ABOVE_LOAN.cell());
      case TOO_MUCH -> Optional.of(SheetScheduleOfValues.above());
      case AHEAD -> Optional.of(SheetScheduleOfValues.ahead());
      case FRONT -> Optional.of(LoanItem.FRONT.cell());
      case OVER -> Optional.of(CostReportColumn.OVER.total());
      case CONTINGENCY -> Optional.of(LoanItem.CONTINGENCY_LACKING.cell());
      case NO_QUOTE -> Optional.of(CostReportColumn.NO_FIRM_PRICE.total());
      case ENDED -> Optional.of(LoanItem.ENDED.cell());
      case EARLY -> Optional.of(LoanItem.EARLY.cell());
      case MATURITY -> Optional.of(LoanItem.LATE.cell());
      case VALUE -> Optional.of(LoanItem.ABOVE_VALUE.cell());
      case LICENSED -> check();
    };
  }

  /** The finish of move-in on the Schedule; where only own tasks are planned, of the last. */
  Optional<String> finish() {
    var last =
        run.plan.programme().tasks().stream()
            .max(Comparator.comparing(DatedTask::finish))
            .map(DatedTask::id);
    int row =
        run.addresses
            .taskRow(BuildTask.MOVE_IN.id())
            .or(() -> last.flatMap(run.addresses::taskRow))
            .orElse(Addresses.HEADER_ROW);
    return Optional.of("Schedule!E" + row);
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
}

package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;

/**
 * Where a loan for building stands: the lender's figures, from the first day on.
 *
 * @param rows of the cost report, the interest last
 * @param plannedPeriods the plan that earned value is measured against, by its periods
 * @param value earned value
 * @param decimals of the currency's minor unit
 */
public record LoanStatus(
    LoanTerms terms,
    List<Row> rows,
    Outlook outlook,
    Holding holding,
    List<StageValue> stages,
    DrawRequest request,
    Contingency contingency,
    InterestReserve reserve,
    List<Stress> stresses,
    PlannedValue plannedPeriods,
    EarnedValue value,
    List<Flag> flags,
    Facts facts,
    int decimals) {

  /**
   * What the money rests on and does not change.
   *
   * @param hireFactor cost of a day over the amount of what is paid by the month, tax with it
   * @param licensed checks on licensed trades that the owner does himself; empty where only own
   *     tasks are planned, of which the trade is not known
   * @param total of the cost plan
   */
  public record Facts(
      LocalDate status,
      LocalDate finish,
      BigDecimal hireFactor,
      OptionalInt licensed,
      BigDecimal total) {}

  public LoanStatus {
    rows = List.copyOf(rows);
    stages = List.copyOf(stages);
    stresses = List.copyOf(stresses);
    flags = List.copyOf(flags);
  }

  /**
   * Puts the figures together.
   *
   * @param work rows of the cost report without the interest
   * @param interest the row of the interest with what is to come
   */
  public static LoanStatus of(
      LoanTerms terms,
      List<Row> work,
      Row interest,
      Outlook outlook,
      PlannedValue.Parts planned,
      Facts facts,
      int decimals) {
    var rows = new ArrayList<>(work);
    rows.add(interest);
    var holding = Holding.of(terms, work, interest, decimals);
    var stages = StageValue.all(rows, decimals);
    var plan = PlannedValue.of(planned, rows, decimals);
    var earned = CostReport.sum(rows, earns(), Row::earned);
    var actual = CostReport.sum(rows, earns(), r -> r.toDate().subtract(r.entered().stored()));
    var value = EarnedValue.of(plan.values(), plan.valueNow(), earned, actual, plan.time());
    var request = DrawRequest.of(terms, stages, holding.drawn(), decimals);
    var contingency = Contingency.of(rows, value.complete(), holding.surplus(), decimals);
    var stresses = Stress.all(terms, rows, outlook, holding, facts, decimals);
    return new LoanStatus(
        terms,
        rows,
        outlook,
        holding,
        stages,
        request,
        contingency,
        InterestReserve.of(terms, interest, outlook, decimals),
        stresses,
        plan,
        value,
        Flags.of(terms, rows, outlook, holding, stages, request, contingency, facts),
        facts,
        decimals);
  }

  /** Whether the cost ledger holds an entry. */
  public boolean moneyMoved() {
    return rows.stream().anyMatch(r -> !r.entered().equals(CostReport.Entered.NONE));
  }

  /** The answer in a sentence, with the currency's code. */
  public String verdict(String currency) {
    return Verdict.of(holding.surplus(), currency, decimals);
  }

  /** The draws to come. */
  public List<Finance.Draw> draws() {
    return outlook.draws(holding.drawn().signum() > 0, request.held());
  }

  /** The day of the next draw; without one the status date. */
  public LocalDate nextDraw() {
    return draws().stream().map(Finance.Draw::date).findFirst().orElse(facts.status());
  }

  /** Before which day the borrower must bring what is missing; empty in balance. */
  public Optional<LocalDate> bringBy() {
    return holding.surplus().signum() < 0 ? Optional.of(nextDraw()) : Optional.empty();
  }

  /** Of the work alone, line by line: contingency and interest left out. */
  public BigDecimal workAtCompletion() {
    return CostReport.sum(rows, earns(), Row::atCompletion);
  }

  /** The stages without the interest: what is in place and what remains, at today's prices. */
  public List<Finance.StageMoney> stageMoney() {
    var money = new ArrayList<Finance.StageMoney>();
    for (var stage : Stage.values()) {
      var of =
          rows.stream()
              .filter(r -> r.line().treatment() != Treatment.INTEREST)
              .filter(r -> r.line().stage().equals(Optional.of(stage)))
              .toList();
      if (of.isEmpty()) continue;
      var inPlace = Outlook.sum(of, Row::inPlace);
      var toComplete = Outlook.sum(of, Row::toComplete);
      money.add(
          new Finance.StageMoney(
              stage,
              Outlook.sum(of, Row::revised).setScale(decimals),
              Shares.over(inPlace, inPlace.add(toComplete))
                  .orElse(BigDecimal.ZERO)
                  .stripTrailingZeros(),
              inPlace.setScale(decimals),
              toComplete.setScale(decimals)));
    }
    return money;
  }

  private static Predicate<Row> earns() {
    return r -> r.line().treatment().earns();
  }
}

package cornerpost.plan;

import cornerpost.check.Check;
import cornerpost.finance.CashFlow;
import cornerpost.finance.CostToComplete;
import cornerpost.finance.Finance;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.LoanTerms;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.measure.Unit;
import cornerpost.plan.Payments.Months;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.PriceBook;
import cornerpost.schedule.Network;
import cornerpost.scope.Scope;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Money against time, from the estimate and the dated programme. */
final class MoneyPlan {
  private final ByTheMonth monthly;
  private final Optional<PriceBook> book;
  private final Estimate estimate;
  private final int decimals;
  private final LoanTerms terms;
  private final CashFlow cash;
  private final List<Finance.StageMoney> stages;
  private final Finance.Balance balance;
  private final Optional<LoanStatus> status;

  MoneyPlan(
      Scope scope,
      Optional<PriceBook> book,
      Estimate estimate,
      LineTasks tasks,
      Network network,
      List<OrderRow> orders,
      ByTheMonth monthly,
      LocalDate status,
      PlannedDates planned,
      List<Check> checks) {
    this.book = book;
    this.estimate = estimate;
    var programme = tasks.programme();
    decimals = Money.minorDigits(estimate.currency());
    terms = LoanTerms.of(scope.loan(), decimals);
    var allowance = sum(CostLine.Kind.INTEREST);
    this.monthly = monthly;
    var payments = Payments.of(estimate, tasks, orders, terms, monthly, Months.BUDGETED);
    var completion =
        payments.stream()
            .map(p -> p.due())
            .reduce(programme.moveIn(), (a, b) -> a.isAfter(b) ? a : b);
    var events = DrawEvents.of(tasks, terms.draws(), completion);
    cash = CashFlow.of(terms, payments, allowance, events, completion, decimals);
    var states = new LineStates(scope, tasks, estimate, network, monthly, status);
    if (!scope.ledger().isEmpty() || terms.loan().signum() > 0) {
      var made =
          new StatusMaker(
                  scope,
                  estimate,
                  tasks,
                  terms,
                  monthly,
                  Payments.of(estimate, tasks, orders, terms, monthly, Months.RUNNING),
                  events,
                  status,
                  completion)
              .make(states.shares(), planned, hireADay(), licensed(scope, checks));
      this.status = Optional.of(made);
      balance = balance(made);
      stages = made.stageMoney();
      return;
    }
    this.status = Optional.empty();
    stages = CostToComplete.stages(states.states(), decimals);
    var paid = cash.interestUpTo(status);
    balance =
        CostToComplete.balance(
            terms,
            cash.drawnBefore(status),
            paid,
            cash.interest().charged().subtract(paid),
            stages,
            estimate.total(),
            decimals);
  }

  /** Checks on licensed trades that the owner does himself; own tasks have no trade. */
  private static OptionalInt licensed(Scope scope, List<Check> checks) {
    if (!scope.generatesTasks()) return OptionalInt.empty();
    return OptionalInt.of(
        (int)
            checks.stream()
                .filter(c -> c.id().startsWith("licence/") || c.id().equals("welding-by-owner"))
                .count());
  }

  /** The balance that the ledger gives; what is in place is paid for only where it says so. */
  private Finance.Balance balance(LoanStatus made) {
    var h = made.holding();
    var total = estimate.total();
    return new Finance.Balance(
        h.loan(),
        h.undrawn(),
        h.cash(),
        h.needed().subtract(h.interestToCome()),
        h.interestToCome(),
        h.surplus(),
        CostToComplete.share(terms, total),
        terms.value().flatMap(v -> CostToComplete.share(terms, v)));
  }

  private BigDecimal sum(CostLine.Kind kind) {
    return estimate.lines().stream()
        .filter(l -> l.kind() == kind)
        .map(CostLine::money)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  Finance with(List<Finance.DelayEffect> delays) {
    return new Finance(
        cash.months(),
        status.map(LoanStatus::draws).orElseGet(cash::draws),
        stages,
        balance,
        delays,
        cash.interest(),
        status);
  }

  /** What is paid by the month, for a day: hire, insurance and rent with their tax. */
  BigDecimal hireADay() {
    var rate = book.map(b -> b.taxRate().in(Unit.ONE)).orElse(BigDecimal.ZERO);
    return estimate.lines().stream()
        .filter(l -> l.kind() == CostLine.Kind.TIME && monthly.days(l).signum() > 0)
        .map(
            l ->
                (l.taxed() ? l.money().multiply(BigDecimal.ONE.add(rate)) : l.money())
                    .divide(monthly.days(l), Ratio.PRECISION))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Interest for a day on all that is drawn at the end. */
  BigDecimal interestADay() {
    return cash.interestADay();
  }

  BigDecimal rounded(BigDecimal amount) {
    return Money.halfUp(amount, decimals);
  }

  String currency() {
    return estimate.currency().getCurrencyCode();
  }
}

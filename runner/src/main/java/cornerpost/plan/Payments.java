package cornerpost.plan;

import cornerpost.finance.LoanTerms;
import cornerpost.finance.Payment;
import cornerpost.finance.Shares;
import cornerpost.measure.Money;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.scope.DrawBasis;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * When each cost line falls due.
 *
 * <ul>
 *   <li>Materials: when they are delivered, the day they are first needed; a deposit, where one is
 *       agreed, on the day to order them by.
 *   <li>Labour, services, hire, fees and own items: when their task is finished.
 *   <li>Where invoices have time, so many days after that.
 *   <li>What is paid by the month: month by month, in advance or when the month is over and
 *       invoiced, see {@link ByTheMonth}.
 *   <li>Price rise, tax and contingency: with the other lines of their stage, in proportion.
 * </ul>
 *
 * A line whose task is not in the plan falls due with the last task of its stage, or at move-in.
 * The lender counts a line as in place when its task is finished; where draws are tied to stages,
 * when its stage is.
 */
final class Payments {
  /** Digits more where only shares are asked for: they are not to depend on cents. */
  private static final int FINER = 10;

  private final Estimate estimate;
  private final LineTasks tasks;
  private final Programme programme;
  private final LoanTerms terms;
  private final ByTheMonth monthly;
  private final Months months;
  private final int decimals;
  private final Map<String, OrderRow> orders = new HashMap<>();
  private final List<Payment> all = new ArrayList<>();

  /** For how long what is paid by the month is looked at. */
  enum Months {
    /** Until its budget is used up: the payments are the bill. */
    BUDGETED,
    /** To move-in, however long: the payments say when money falls due, not how much. */
    RUNNING
  }

  private Payments(
      Estimate estimate,
      LineTasks tasks,
      List<OrderRow> orders,
      LoanTerms terms,
      ByTheMonth monthly,
      Months months) {
    this.monthly = monthly;
    this.months = months;
    this.estimate = estimate;
    this.tasks = tasks;
    programme = tasks.programme();
    this.terms = terms;
    int minor = Money.minorDigits(estimate.currency());
    decimals = months == Months.RUNNING ? minor + FINER : minor;
    orders.forEach(o -> this.orders.put(o.item(), o));
  }

  /** Every line but the interest; budgeted, they are the total less that, to the cent. */
  static List<Payment> of(
      Estimate estimate,
      LineTasks tasks,
      List<OrderRow> orders,
      LoanTerms terms,
      ByTheMonth monthly,
      Months months) {
    var payments = new Payments(estimate, tasks, orders, terms, monthly, months);
    payments.run();
    return payments.all;
  }

  private void run() {
    for (var stage : Stage.values()) {
      var lines =
          estimate.lines().stream()
              .filter(l -> l.stage() == stage && l.money().signum() != 0)
              .toList();
      var before = all.size();
      for (var l : lines) {
        if (l.kind() == CostLine.Kind.TIME) byTheMonth(l);
        else if (!onTop(l.kind()) && l.kind() != CostLine.Kind.INTEREST) atOnce(l);
      }
      var base = List.copyOf(all.subList(before, all.size()));
      for (var l : lines) {
        if (onTop(l.kind())) withTheOthers(l, base);
      }
    }
  }

  private static boolean onTop(CostLine.Kind kind) {
    return kind == CostLine.Kind.ESCALATION
        || kind == CostLine.Kind.TAX
        || kind == CostLine.Kind.CONTINGENCY;
  }

  private void atOnce(CostLine l) {
    var finished = tasks.due(l).map(DatedTask::lastDay).orElseGet(() -> tasks.end(l.stage()));
    var order = l.kind() == CostLine.Kind.MATERIAL ? l.item().map(orders::get) : none();
    var due = order.map(OrderRow::neededOn).orElse(finished);
    var deposit =
        order.isPresent()
            ? Money.halfUp(l.money().multiply(terms.deposit()), decimals)
            : BigDecimal.ZERO;
    if (deposit.signum() > 0) {
      var ordered = later(programme.start(), order.get().orderBy());
      add(l, ordered.isBefore(due) ? ordered : due, finished, deposit);
    }
    add(l, due.plusDays(terms.invoiceDays()), finished, l.money().subtract(deposit));
  }

  private static Optional<OrderRow> none() {
    return Optional.empty();
  }

  private void byTheMonth(CostLine l) {
    var due = months == Months.RUNNING ? monthly.running(l, tasks) : monthly.budgeted(l, tasks);
    var parts =
        Shares.split(l.money(), due.stream().map(ByTheMonth.Month::months).toList(), decimals);
    int wait = monthly.isInAdvance(l) ? 0 : terms.invoiceDays();
    for (int i = 0; i < due.size(); i++) {
      add(l, due.get(i).due().plusDays(wait), due.get(i).gone(), parts.get(i));
    }
  }

  private void withTheOthers(CostLine l, List<Payment> base) {
    var positive = base.stream().filter(p -> p.amount().signum() > 0).toList();
    if (positive.isEmpty()) {
      add(l, tasks.end(l.stage()), tasks.end(l.stage()), l.money());
      return;
    }
    var parts = Shares.split(l.money(), positive.stream().map(Payment::amount).toList(), decimals);
    for (int i = 0; i < parts.size(); i++) {
      var with = positive.get(i);
      if (parts.get(i).signum() != 0) {
        all.add(new Payment(l.id(), l.stage(), with.due(), with.inPlace(), parts.get(i)));
      }
    }
  }

  private void add(CostLine l, LocalDate due, LocalDate finished, BigDecimal amount) {
    if (amount.signum() == 0) return;
    var inPlace =
        terms.draws() == DrawBasis.STAGE && l.kind() != CostLine.Kind.TIME
            ? later(finished, tasks.end(l.stage()))
            : finished;
    all.add(new Payment(l.id(), l.stage(), due, inPlace, amount));
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }
}

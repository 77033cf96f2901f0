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
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
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
 *   <li>What is paid by the month: evenly by the day from start to move-in, at each month's end.
 *   <li>Price rise, tax and contingency: with the other lines of their stage, in proportion.
 * </ul>
 *
 * A line whose task is not in the plan falls due with the last task of its stage, or at move-in.
 * The lender counts a line as in place when its task is finished; where draws are tied to stages,
 * when its stage is.
 */
final class Payments {
  private final Estimate estimate;
  private final LineTasks tasks;
  private final Programme programme;
  private final LoanTerms terms;
  private final int decimals;
  private final Map<String, OrderRow> orders = new HashMap<>();
  private final List<Payment> all = new ArrayList<>();

  private Payments(Estimate estimate, LineTasks tasks, List<OrderRow> orders, LoanTerms terms) {
    this.estimate = estimate;
    this.tasks = tasks;
    programme = tasks.programme();
    this.terms = terms;
    decimals = Money.minorDigits(estimate.currency());
    orders.forEach(o -> this.orders.put(o.item(), o));
  }

  /** Every line but the interest; together they are the total less that, to the cent. */
  static List<Payment> of(
      Estimate estimate, LineTasks tasks, List<OrderRow> orders, LoanTerms terms) {
    var payments = new Payments(estimate, tasks, orders, terms);
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
        if (l.kind() == CostLine.Kind.TIME) evenly(l);
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

  private void evenly(CostLine l) {
    var start = programme.start();
    var end = programme.moveIn().isBefore(start) ? start : programme.moveIn();
    var dues = new ArrayList<LocalDate>();
    var days = new ArrayList<BigDecimal>();
    for (var m = YearMonth.from(start); !m.isAfter(YearMonth.from(end)); m = m.plusMonths(1)) {
      var first = m.atDay(1).isBefore(start) ? start : m.atDay(1);
      var last = m.atEndOfMonth().isAfter(end) ? end : m.atEndOfMonth();
      dues.add(last);
      days.add(BigDecimal.valueOf(ChronoUnit.DAYS.between(first, last) + 1));
    }
    var parts = Shares.split(l.money(), days, decimals);
    for (int i = 0; i < dues.size(); i++) add(l, dues.get(i), dues.get(i), parts.get(i));
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

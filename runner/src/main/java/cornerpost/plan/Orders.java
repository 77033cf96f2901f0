package cornerpost.plan;

import cornerpost.fact.Facts;
import cornerpost.measure.Money;
import cornerpost.plan.OrderRow.Standing;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.Item;
import cornerpost.price.PriceBook;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.takeoff.BuildTask;
import cornerpost.takeoff.Line;
import cornerpost.work.WorkPlanner;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The buying list: what is bought or booked, one row an item, by the day to order it.
 *
 * <p>Fees, and what is paid by the month, are not ordered. Order-by is the first planned day of the
 * tasks that need the item, less its lead time, less the owner's margin, in calendar days.
 */
final class Orders {
  private final Scope scope;
  private final PriceBook book;
  private final Facts facts;
  private final Estimate estimate;
  private final LineTasks tasks;
  private final LocalDate status;
  private final Optional<LocalDate> permit;
  private final Map<String, Line> lines = new HashMap<>();

  private Orders(
      Scope scope,
      PriceBook book,
      Facts facts,
      List<Line> lines,
      Estimate estimate,
      LineTasks tasks,
      LocalDate status) {
    this.scope = scope;
    this.book = book;
    this.facts = facts;
    this.estimate = estimate;
    this.tasks = tasks;
    this.status = status;
    permit = permit(scope, tasks);
    lines.forEach(l -> this.lines.put(l.id(), l));
  }

  /** In order of the day to order, then of supplier group and item. */
  static List<OrderRow> of(
      Scope scope,
      Optional<PriceBook> book,
      Facts facts,
      List<Line> lines,
      Estimate estimate,
      LineTasks tasks,
      LocalDate status) {
    if (book.isEmpty()) return List.of();
    return new Orders(scope, book.get(), facts, lines, estimate, tasks, status).rows();
  }

  private List<OrderRow> rows() {
    var byItem = new LinkedHashMap<String, List<CostLine>>();
    for (var l : estimate.lines()) {
      if (l.item().isPresent() && ordered(l.kind())) {
        byItem.computeIfAbsent(l.item().get(), k -> new ArrayList<>()).add(l);
      }
    }
    var rows = new ArrayList<OrderRow>();
    for (var entry : byItem.entrySet()) {
      book.findItem(entry.getKey())
          .ifPresent(item -> row(item, entry.getValue()).ifPresent(rows::add));
    }
    rows.sort(
        Comparator.comparing(OrderRow::orderBy)
            .thenComparing(OrderRow::group)
            .thenComparing(OrderRow::item));
    return rows;
  }

  private static boolean ordered(CostLine.Kind kind) {
    return kind == CostLine.Kind.MATERIAL
        || kind == CostLine.Kind.PLANT
        || kind == CostLine.Kind.SERVICE;
  }

  private Optional<OrderRow> row(Item item, List<CostLine> of) {
    var buy = sum(of.stream().map(l -> l.quantity().in(item.soldBy())).toList());
    if (buy.signum() == 0) return Optional.empty();
    var net = BigDecimal.ZERO;
    var withWaste = BigDecimal.ZERO;
    for (var l : of) {
      var line = l.quantityId().map(lines::get);
      if (line.isPresent()) {
        var measured = line.get().quantity();
        net = net.add(item.needed(measured, Optional.empty()).in(item.soldBy()));
        withWaste =
            withWaste.add(item.needed(measured, line.get().waste(item.code())).in(item.soldBy()));
      }
    }
    var first = first(of);
    var neededOn = first.map(DatedTask::firstDay).orElse(tasks.programme().start());
    var orderBy = neededOn.minusDays(item.leadDays()).minusDays(margin());
    boolean there = first.map(t -> t.started() || t.done()).orElse(false) || underWay(item);
    return Optional.of(
        new OrderRow(
            item.group(),
            item.code(),
            item.description(),
            item.soldBy(),
            Days.plain(net.setScale(6, RoundingMode.HALF_UP)),
            Days.plain(buy.setScale(6, RoundingMode.HALF_UP)),
            sum(of.stream().map(CostLine::money).toList()),
            roundingCost(item, of, buy.subtract(withWaste)),
            neededOn,
            orderBy,
            item.leadDays(),
            there ? Standing.ORDERED : standing(neededOn, orderBy),
            first.map(DatedTask::id).orElse("")));
  }

  private Standing standing(LocalDate neededOn, LocalDate orderBy) {
    if (orderBy.isBefore(status)) return Standing.LATE;
    boolean before = permit.filter(p -> orderBy.isBefore(p) && !neededOn.isBefore(p)).isPresent();
    return before ? Standing.RESERVE : Standing.TO_COME;
  }

  /** The day of the permit, where it is to come and no money is to be committed before it. */
  private static Optional<LocalDate> permit(Scope scope, LineTasks tasks) {
    if (scope.project().has(ProjectQuestions.ORDER_EARLY)
        && scope.project().yes(ProjectQuestions.ORDER_EARLY)) {
      return Optional.empty();
    }
    return tasks
        .task(BuildTask.PERMIT_GRANTED.id())
        .filter(t -> !t.done())
        .map(DatedTask::firstDay);
  }

  /** At the dearest rate paid for the item: where one line is quoted, it is the others' price. */
  private BigDecimal roundingCost(Item item, List<CostLine> of, BigDecimal more) {
    int decimals = Money.minorDigits(estimate.currency());
    if (!item.wholeOnly()) return BigDecimal.ZERO.setScale(decimals);
    var rate = of.stream().map(l -> l.rate().value()).max(Comparator.naturalOrder()).orElseThrow();
    var perUnit = rate.multiply(item.soldBy().toBase().applyTo(BigDecimal.ONE));
    return Money.halfUp(more.max(BigDecimal.ZERO).multiply(perUnit), decimals);
  }

  private Optional<DatedTask> first(List<CostLine> of) {
    return of.stream()
        .flatMap(l -> tasks.using(l).stream())
        .min(Comparator.comparing(DatedTask::start));
  }

  /** Whether the order that the item goes with is noted as placed. */
  private boolean underWay(Item item) {
    if (!WorkPlanner.isOrdered(item, facts)) return false;
    return tasks
        .task(WorkPlanner.orderId(item.group()))
        .map(t -> t.started() || t.done())
        .orElse(false);
  }

  private long margin() {
    return scope.options().has(OptionsQuestions.ORDER_MARGIN)
        ? scope.options().whole(OptionsQuestions.ORDER_MARGIN)
        : 0;
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}

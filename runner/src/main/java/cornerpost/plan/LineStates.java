package cornerpost.plan;

import cornerpost.finance.CostToComplete.LineState;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.schedule.Network;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What of each cost line is in place at the status date, and what it takes to finish it at the
 * prices of today.
 *
 * <ul>
 *   <li>Labour, services, hire and fees: the share of their task that is done: what the owner notes
 *       as complete, else the share of its duration that is not remaining.
 *   <li>Materials: all once a task that needs the item has begun, for they are on site then.
 *   <li>What is paid by the month: the days gone, and to complete the days from the status date to
 *       move-in at the rate of the budget, if that is more than what is left of the budget.
 *   <li>Price rise, tax and contingency: as much as of the rest of their stage.
 *   <li>Interest is not among them; it is shown by itself.
 * </ul>
 */
final class LineStates {
  private final Scope scope;
  private final Estimate estimate;
  private final LineTasks tasks;
  private final Programme programme;
  private final Network network;
  private final Map<String, ProgressEntry> progress;
  private final LocalDate status;
  private final int decimals;
  private final ByTheMonth monthly;
  private final Set<String> onSite = new HashSet<>();

  LineStates(
      Scope scope,
      LineTasks tasks,
      Estimate estimate,
      Network network,
      ByTheMonth monthly,
      LocalDate status) {
    this.scope = scope;
    this.tasks = tasks;
    progress = ProgressMap.entries(scope, tasks.work(), status);
    this.estimate = estimate;
    this.monthly = monthly;
    programme = tasks.programme();
    this.network = network;
    this.status = status;
    decimals = Money.minorDigits(estimate.currency());
    for (var l : estimate.lines()) {
      boolean begun = tasks.using(l).stream().anyMatch(DatedTask::started);
      if (begun) l.item().ifPresent(onSite::add);
    }
  }

  /** Share of each line that is in place; what is reckoned on top of others left out. */
  Map<String, BigDecimal> shares() {
    var shares = new HashMap<String, BigDecimal>();
    for (var l : estimate.lines()) {
      if (onTop(l.kind()) || l.kind() == CostLine.Kind.INTEREST) continue;
      shares.put(
          l.id(), l.kind() == CostLine.Kind.TIME ? monthly.gone(l, tasks, status) : share(l));
    }
    return shares;
  }

  /** What each line has in place and what it takes to complete. */
  List<LineState> states() {
    var states = new ArrayList<LineState>();
    for (var stage : Stage.values()) {
      var budget = BigDecimal.ZERO;
      var inPlace = BigDecimal.ZERO;
      var lines = estimate.lines().stream().filter(l -> l.stage() == stage).toList();
      for (var l : lines) {
        if (!onTop(l.kind()) && l.kind() != CostLine.Kind.INTEREST) {
          var state = l.kind() == CostLine.Kind.TIME ? byTime(l) : byShare(l, share(l));
          budget = budget.add(state.inPlace()).add(state.toComplete());
          inPlace = inPlace.add(state.inPlace());
          states.add(state);
        }
      }
      var share = budget.signum() == 0 ? BigDecimal.ZERO : inPlace.divide(budget, Ratio.PRECISION);
      for (var l : lines) if (onTop(l.kind())) states.add(byShare(l, share));
    }
    return states;
  }

  private static boolean onTop(CostLine.Kind kind) {
    return kind == CostLine.Kind.ESCALATION
        || kind == CostLine.Kind.TAX
        || kind == CostLine.Kind.CONTINGENCY;
  }

  private LineState byShare(CostLine l, BigDecimal share) {
    var inPlace = Money.halfUp(l.money().multiply(share), decimals);
    return new LineState(l.id(), l.stage(), l.money(), inPlace, l.money().subtract(inPlace));
  }

  private LineState byTime(CostLine l) {
    if (monthly.days(l).signum() == 0) return byShare(l, BigDecimal.ZERO);
    var spent = part(l, monthly.gone(l, tasks, status));
    var ahead = part(l, monthly.toCome(l, tasks, status)).max(l.money().subtract(spent));
    return new LineState(l.id(), l.stage(), l.money(), spent, ahead);
  }

  private BigDecimal part(CostLine l, BigDecimal share) {
    return Money.halfUp(l.money().multiply(share), decimals);
  }

  private BigDecimal share(CostLine l) {
    if (l.kind() == CostLine.Kind.MATERIAL && l.item().filter(onSite::contains).isPresent()) {
      return BigDecimal.ONE;
    }
    if (l.kind() == CostLine.Kind.MATERIAL) return BigDecimal.ZERO;
    var task = tasks.due(l);
    if (task.isEmpty()) return stageDone(l.stage()) ? BigDecimal.ONE : BigDecimal.ZERO;
    return task.get().done() ? BigDecimal.ONE : complete(task.get());
  }

  /** What belongs to no task is in place with the whole of its stage. */
  private boolean stageDone(Stage stage) {
    var of = tasks.of(stage);
    return !of.isEmpty() && of.stream().allMatch(DatedTask::done);
  }

  /** Of a task that has begun. */
  private BigDecimal complete(DatedTask t) {
    if (!t.started() || t.task().minutes() == 0) return BigDecimal.ZERO;
    var noted = Optional.ofNullable(progress.get(t.id())).flatMap(ProgressEntry::complete);
    if (noted.isPresent()) return noted.get();
    var real = network.get(t.id()).progress();
    long left =
        real.remainingMinutes()
            .orElseGet(() -> t.task().minutes() - worked(t, real.start().orElseThrow()));
    var share =
        BigDecimal.ONE.subtract(
            BigDecimal.valueOf(left)
                .divide(BigDecimal.valueOf(t.task().minutes()), Ratio.PRECISION));
    return share.max(BigDecimal.ZERO).min(BigDecimal.ONE);
  }

  private long worked(DatedTask t, LocalDateTime start) {
    var now = status.atStartOfDay();
    long minutes =
        t.task().elapsed()
            ? ChronoUnit.MINUTES.between(start, now)
            : network.calendarOf(t.id()).between(start, now);
    return Math.max(0, Math.min(t.task().minutes(), minutes));
  }
}

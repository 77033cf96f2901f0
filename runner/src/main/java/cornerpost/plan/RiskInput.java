package cornerpost.plan;

import cornerpost.measure.Unit;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.PriceBook;
import cornerpost.risk.CostRange;
import cornerpost.risk.Range;
import cornerpost.risk.RiskResult;
import cornerpost.risk.Simulation;
import cornerpost.schedule.Network;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the simulation draws from: durations with their three points, cost lines with theirs, price
 * rise and tax spread over the lines they are on, contingency left out. Crews keep their order.
 */
final class RiskInput {
  private static final double MINUTES_A_DAY = 24 * 60;

  private final Scope scope;
  private final Optional<PriceBook> book;
  private final Estimate estimate;
  private final WorkPlan work;
  private final ByTheMonth monthly;
  private final Network network;

  private RiskInput(
      Scope scope,
      Optional<PriceBook> book,
      Estimate estimate,
      WorkPlan work,
      ByTheMonth monthly,
      Network network) {
    this.scope = scope;
    this.book = book;
    this.estimate = estimate;
    this.work = work;
    this.monthly = monthly;
    this.network = network;
  }

  static RiskResult simulate(
      Scope scope,
      Optional<PriceBook> book,
      Estimate estimate,
      WorkPlan work,
      ByTheMonth monthly,
      Sequence sequence,
      RunOptions options) {
    var ordered = sequence.ordered();
    var input = new RiskInput(scope, book, estimate, work, monthly, ordered.network());
    int trials = options.trials().orElseGet(() -> whole(scope, OptionsQuestions.TRIALS, 2000));
    long seed = seed(scope, options);
    var target =
        new Simulation.Target(
            estimate.total().doubleValue(),
            minute(ordered.finish()),
            minute(ordered.network().start()));
    return new Simulation(ordered.network(), input.durations(), input.costs(), input.correlation())
        .run(trials, seed, target);
  }

  static long seed(Scope scope, RunOptions options) {
    return options.seed().orElseGet(() -> whole(scope, OptionsQuestions.SEED, 1));
  }

  private static int whole(Scope scope, Question question, int otherwise) {
    return scope.options().has(question) ? scope.options().whole(question) : otherwise;
  }

  private double correlation() {
    return scope
        .options()
        .findFigure(OptionsQuestions.CORRELATION)
        .map(f -> f.in(Unit.ONE).doubleValue())
        .orElse(0.0);
  }

  private static long minute(LocalDateTime moment) {
    return moment.toEpochSecond(ZoneOffset.UTC) / 60; // the engine's moments have no zone
  }

  // ---- time -------------------------------------------------------------------------------

  private Map<String, Range> durations() {
    var ranges = new HashMap<String, Range>();
    for (var t : work.tasks()) {
      if (t.optimisticMinutes() < t.minutes() || t.pessimisticMinutes() > t.minutes()) {
        range(t).ifPresent(r -> ranges.put(t.id(), r));
      }
    }
    return ranges;
  }

  /** What remains of a task that has begun is as uncertain, in proportion, as the whole was. */
  private Optional<Range> range(WorkTask t) {
    var progress = network.get(t.id()).progress();
    if (progress.finish().isPresent() || t.minutes() == 0) return Optional.empty();
    double left = (double) network.minutesLeft(t.id()) / t.minutes();
    return Optional.of(
        new Range(
            left * Math.min(t.optimisticMinutes(), t.minutes()),
            left * t.minutes(),
            left * Math.max(t.pessimisticMinutes(), t.minutes())));
  }

  // ---- money ------------------------------------------------------------------------------

  private List<CostRange> costs() {
    var ranges = new ArrayList<CostRange>();
    for (var stage : Stage.values()) {
      var lines = estimate.lines().stream().filter(l -> l.stage() == stage).toList();
      double rise = share(lines, CostLine.Kind.ESCALATION, RiskInput::rises);
      double tax = book.map(b -> b.region().taxRate().doubleValue()).orElse(0.0);
      for (var l : lines) {
        if (l.kind().base()
            && l.kind() != CostLine.Kind.ESCALATION
            && l.kind() != CostLine.Kind.OWN_LABOUR) {
          ranges.add(range(l, (rises(l) ? 1 + rise : 1) * (l.taxed() ? 1 + tax : 1)));
        }
      }
    }
    return ranges;
  }

  private static boolean rises(CostLine l) {
    return l.basis() == CostLine.Basis.PRICE_BOOK && l.kind().base();
  }

  /** The price rise of a stage as a share of the lines it is on. */
  private static double share(List<CostLine> lines, CostLine.Kind kind, Predicate<CostLine> on) {
    var extra = sum(lines.stream().filter(l -> l.kind() == kind).toList());
    var base = sum(lines.stream().filter(l -> l.kind() != kind && on.test(l)).toList());
    return base.signum() == 0 ? 0 : extra.doubleValue() / base.doubleValue();
  }

  private static BigDecimal sum(List<CostLine> lines) {
    return lines.stream().map(CostLine::money).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private CostRange range(CostLine l, double factor) {
    double likely = l.money().doubleValue();
    boolean hours = l.kind() == CostLine.Kind.LABOUR;
    return new CostRange(
        l.id(),
        l.description(),
        new Range(
            factor * Math.min(l.low().doubleValue(), likely),
            factor * likely,
            factor * Math.max(l.high().doubleValue(), likely)),
        hours ? l.task() : Optional.empty(),
        running(l));
  }

  /** What grows with time; nothing without a time allowed to hold it against. */
  private Optional<CostRange.Running> running(CostLine l) {
    boolean byTime = l.kind() == CostLine.Kind.TIME || l.kind() == CostLine.Kind.INTEREST;
    double paid = monthly.days(l).doubleValue() * MINUTES_A_DAY;
    return byTime && paid > 0
        ? Optional.of(new CostRange.Running(ByTheMonth.opening(l), paid))
        : Optional.empty();
  }
}

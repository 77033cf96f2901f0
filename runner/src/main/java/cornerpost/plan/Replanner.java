package cornerpost.plan;

import cornerpost.measure.Money;
import cornerpost.plan.Replanning.Move;
import cornerpost.price.Estimate;
import cornerpost.price.PriceBook;
import cornerpost.schedule.PathBetween;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Scope;
import cornerpost.work.WorkPlan;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Brings together what steers the work once it goes on. Slip curve, other orders and the price of
 * winning days back are looked for only where there is a delay, or a day is asked for.
 */
final class Replanner {
  private final Scope scope;
  private final Estimate estimate;
  private final Optional<PriceBook> book;
  private final WorkPlan work;
  private final LineTasks tasks;
  private final LocalDate status;

  Replanner(
      Scope scope,
      Estimate estimate,
      Optional<PriceBook> book,
      WorkPlan work,
      LineTasks tasks,
      LocalDate status) {
    this.scope = scope;
    this.estimate = estimate;
    this.book = book;
    this.work = work;
    this.tasks = tasks;
    this.status = status;
  }

  /** What the crane firm asks for another day. */
  static BigDecimal craneAgain(Scope scope) {
    return scope
        .options()
        .findFigure(OptionsQuestions.CRANE_AGAIN)
        .map(f -> f.value())
        .orElse(BigDecimal.ZERO);
  }

  Replanning all(
      RunOptions options,
      Delays planning,
      Sequence plain,
      Sequence plan,
      List<Delay> delays,
      List<OrderRow> orders,
      DelayCosts costs) {
    var baselines = new BaselineBook(scope, estimate, tasks, status);
    var kept = baselines.kept(options);
    var booked = Bookings.of(scope, work, status);
    var moving =
        delays.stream()
            .filter(d -> d.days() > 0 && Delays.canMove(plain.network().get(d.task())))
            .toList();
    boolean late = !moving.isEmpty();
    return new Replanning(
        kept,
        baselines.against(kept),
        late ? moved(plain, plan) : List.of(),
        late ? way(plain) : List.of(),
        costs.day(),
        late ? Optional.of(slip(planning, plain, moving, costs)) : Optional.empty(),
        late
            ? Optional.of(new Resequencer(planning, work, plain, moving, booked, status).all(plan))
            : Optional.empty(),
        recovery(plain, plan, late),
        Optional.of(new LookAheads(work, tasks, orders, booked).of(status)));
  }

  private List<Move> moved(Sequence plain, Sequence plan) {
    var moves = new ArrayList<Move>();
    for (var t : work.tasks()) {
      var from = plain.planned(t.id()).firstDay();
      var to = plan.planned(t.id()).firstDay();
      if (from.equals(to)) continue;
      var was = plain.ordered().timing(t.id());
      var is = plan.ordered().timing(t.id());
      long used = Math.max(0, was.totalFloatMinutes() - Math.max(0, is.totalFloatMinutes()));
      moves.add(Resequencer.move(t, from, to, Days.of(used, was.dayMinutes())));
    }
    moves.sort(Comparator.comparing(Move::from).thenComparing(Move::id));
    return moves;
  }

  private static List<String> way(Sequence plain) {
    var network = plain.network();
    if (network.find(ProgrammeMaker.DELIVERY).isEmpty()) return List.of();
    if (network.find(ProgrammeMaker.MOVE_IN).isEmpty()) return List.of();
    return plain
        .ordered()
        .longestPath(ProgrammeMaker.DELIVERY, ProgrammeMaker.MOVE_IN)
        .map(PathBetween::ids)
        .orElse(List.of());
  }

  /** Of delivery if it is late, else of the first late event. */
  private static Replanning.SlipCurve slip(
      Delays planning, Sequence plain, List<Delay> moving, DelayCosts costs) {
    var event =
        moving.stream()
            .filter(d -> d.task().equals(ProgrammeMaker.DELIVERY))
            .findFirst()
            .orElse(moving.get(0));
    var others = moving.stream().filter(d -> !d.task().equals(event.task())).toList();
    return new SlipCurves(planning, plain, others, event).curve(costs);
  }

  /** Up to the day asked for; else to that of the plan without delays. */
  private Optional<Replanning.Recovery> recovery(Sequence plain, Sequence plan, boolean late) {
    var now = Delays.goal(plan.ordered());
    var wanted =
        scope
            .options()
            .findDate(OptionsQuestions.WANTED)
            .or(() -> late ? Optional.of(Delays.goal(plain.ordered())) : Optional.empty());
    if (wanted.filter(now::isAfter).isEmpty()) return Optional.empty();
    int decimals = Money.minorDigits(estimate.currency());
    var ways =
        new Quickening(scope, estimate, book, work, plan.ordered().network(), tasks, decimals)
            .ways();
    return Optional.of(
        new RecoveryPlanner(plan.ordered().network(), ways, decimals).recover(wanted.get()));
  }
}

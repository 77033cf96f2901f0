package cornerpost.plan;

import cornerpost.check.CheckInput;
import cornerpost.check.Checks;
import cornerpost.fact.Facts;
import cornerpost.finance.CostReport;
import cornerpost.measure.Spelling;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.Estimator;
import cornerpost.price.PriceBook;
import cornerpost.schedule.Network;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Takeoff;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkPlanner;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;

/**
 * Runs the steps in order: measure, price, plan the work, date it, then money, risk and checks.
 *
 * <p>Takes values and gives values: no clock, no files; the same input gives the same plan. Faults
 * of a step stop those that build on it; all that are found are given together.
 */
public final class Planner {
  /** Farther than this a float of delivery is not looked for, in days. */
  private static final int MOST_FLOAT = 3650;

  private final Scope scope;
  private final Facts facts;
  private final Optional<PriceBook> book;
  private final RunOptions options;
  private final Problems problems = new Problems();
  private final Steering steering;

  /** Whether curves of slip, other orders, days won back and trial delays are looked for. */
  private enum Steering {
    WANTED,
    LEFT_OUT
  }

  private Planner(
      Scope scope, Facts facts, Optional<PriceBook> book, RunOptions options, Steering steering) {
    this.scope = scope;
    this.facts = facts;
    this.book = book;
    this.options = options;
    this.steering = steering;
  }

  /**
   * Plans.
   *
   * @param book needed where tasks are generated
   */
  public static PlanResult plan(
      Scope scope, Facts facts, Optional<PriceBook> book, RunOptions options) {
    return plan(new Planner(scope, facts, book, options, Steering.WANTED));
  }

  /**
   * What is wrong with quotes, prices and the cost ledger, for choices that cannot be planned from
   * as they are because of faults elsewhere.
   */
  public static List<Problem> asFarAsPriced(Scope scope, Facts facts, Optional<PriceBook> book) {
    var planner = new Planner(scope, facts, book, nothingAsked(), Steering.LEFT_OUT);
    planner.priced(planner.measured()).ifPresent(planner::strayLedger);
    return planner.problems.all();
  }

  /**
   * The same without {@link Replanning} and deliveries late by way of trial: nothing else of a plan
   * rests on them, and they take longer than the rest.
   */
  static PlanResult unsteered(
      Scope scope, Facts facts, Optional<PriceBook> book, RunOptions options) {
    return plan(new Planner(scope, facts, book, options, Steering.LEFT_OUT));
  }

  private static PlanResult plan(Planner planner) {
    return new PlanResult(planner.run(), planner.problems.all());
  }

  private Optional<Plan> run() {
    var status = status();
    var lines = measured();
    var estimate = priced(lines).or(this::nothing);
    if (estimate.isEmpty()) return Optional.empty();
    var planned = WorkPlanner.plan(scope, estimate.get(), book, facts);
    problems.addAll(planned.problems());
    if (planned.plan().isEmpty()) return Optional.empty();
    var work = planned.plan().get();
    var network = WorkNetwork.of(work, scope, status, problems);
    var delays = Delay.of(scope, options, work, problems);
    var ends = PathChoice.of(scope, options, work, problems);
    if (network.isEmpty() || problems.stop()) return Optional.empty();
    for (var d : delays) {
      if (!Delays.canMove(network.get().get(d.task()))) {
        problems.remark(
            d.sheet(),
            d.cell(),
            d.name() + " has begun already",
            "the delay changes nothing; enter what is left of it as Remaining days on sheet "
                + OwnerSheet.PROGRESS.title());
      }
    }
    return Optional.of(plan(lines, estimate.get(), work, network.get(), delays, ends, status));
  }

  private static RunOptions nothingAsked() {
    return new RunOptions(
        Optional.empty(), List.of(), OptionalLong.empty(), OptionalInt.empty(), "");
  }

  private List<Line> measured() {
    return scope.generatesTasks() ? Takeoff.measure(scope, facts) : List.of();
  }

  private Optional<Estimate> priced(List<Line> lines) {
    var priced = Estimator.estimate(scope, lines, book, facts);
    problems.addAll(priced.problems());
    return priced.estimate();
  }

  private LocalDate status() {
    return options
        .asOf()
        .or(() -> scope.project().findDate(ProjectQuestions.STATUS))
        .orElseGet(() -> scope.project().date(ProjectQuestions.START));
  }

  /** Where only own tasks are planned their faults are worth telling though money has some. */
  private Optional<Estimate> nothing() {
    return scope.generatesTasks()
        ? Optional.empty()
        : Optional.of(new Estimate(Currency.getInstance("USD"), List.of(), List.of()));
  }

  private Plan plan(
      List<Line> lines,
      Estimate estimate,
      WorkPlan uncalled,
      Network network,
      List<Delay> delays,
      PathChoice ends,
      LocalDate status) {
    var planning = new Delays(RiskInput.seed(scope, options));
    var called = CallForward.of(scope, uncalled, network, planning, status);
    var work = called.work();
    var plain = called.plain();
    var sequence = planning.with(delays, plain);
    var monthly = new ByTheMonth(scope, lines, facts);
    // Nothing that follows needs the trials, and they take as long as the rest together.
    var risk =
        CompletableFuture.supplyAsync(
            () -> RiskInput.simulate(scope, book, estimate, work, monthly, sequence, options));
    var words = new WaitWords(sequence, said(delays), status);
    var programme =
        ProgrammeMaker.of(
            scope, work, sequence, words, slip(planning, sequence), Optional.of(ends));
    var tasks = new LineTasks(work, programme);
    Bookings.sayBroken(scope, work, programme, status, problems);
    var orders = Orders.of(scope, book, facts, lines, estimate, tasks, status);
    var cutting = CuttingPlans.of(facts, book, lines, estimate);
    var checks = Checks.of(checkInput(lines, estimate, work, programme, orders, cutting, status));
    var money =
        new MoneyPlan(
            scope,
            book,
            estimate,
            tasks,
            sequence.network(),
            orders,
            monthly,
            status,
            new PlannedDates(
                estimate,
                tasks,
                status,
                new BaselineBook(scope, estimate, tasks, status).kept(options),
                () -> unbegun(called, planning, tasks)),
            checks);
    strayLedger(estimate);
    var costs = new DelayCosts(money, Replanner.craneAgain(scope));
    var late = new DelayEffects(planning, plain, sequence, delays, costs);
    boolean steers = steering == Steering.WANTED;
    var effects = steers ? late.all() : late.ofEntered();
    var replanning =
        steers
            ? new Replanner(scope, estimate, book, work, tasks, status)
                .all(options, planning, plain, sequence, delays, orders, costs)
            : Replanning.NONE;
    return new Plan(
        scope,
        facts,
        book,
        lines,
        estimate,
        work,
        programme,
        orders,
        cutting,
        risk.join(),
        money.with(effects),
        checks,
        problems.all(),
        status,
        options.fingerprint(),
        replanning);
  }

  /**
   * The tasks as planned before anything had happened: what earned value is measured against. Where
   * that plan cannot be made, today's is taken.
   */
  private LineTasks unbegun(CallForward.Called called, Delays planning, LineTasks today) {
    var start = scope.project().date(ProjectQuestions.START);
    var work = called.work();
    return called
        .first()
        .or(() -> WorkNetwork.of(work, scope.unbegun(), start, new Problems()).map(planning::plain))
        .map(
            s ->
                new LineTasks(
                    work,
                    ProgrammeMaker.of(
                        scope.unbegun(),
                        work,
                        s,
                        new WaitWords(s, Map.of(), start),
                        none(),
                        Optional.empty())))
        .orElse(today);
  }

  private static Optional<Integer> none() {
    return Optional.empty();
  }

  /** What was entered for lines that the cost plan no longer has. */
  private void strayLedger(Estimate estimate) {
    var known = new HashSet<String>();
    estimate.lines().forEach(l -> known.add(CostReport.key(l.id())));
    known.add("interest");
    var ids = estimate.lines().stream().map(CostLine::id).toList();
    for (var e : scope.ledger()) {
      if (!known.contains(CostReport.key(e.line()))) {
        problems.remark(
            OwnerSheet.COST_LEDGER,
            e.cell(),
            "no line of the cost plan has the id '"
                + e.line()
                + "'"
                + Spelling.nearest(e.line(), ids).map(n -> "; maybe '" + n + "'").orElse(""),
            "the entry is kept: what was paid counts, and nothing more is to come");
      }
    }
  }

  private Map<String, String> said(List<Delay> delays) {
    var said = new HashMap<String, String>();
    for (var d : delays) if (d.days() > 0) said.merge(d.task(), d.words(), (a, b) -> a + "; " + b);
    return said;
  }

  private static Optional<Integer> slip(Delays planning, Sequence sequence) {
    return sequence
        .network()
        .find(ProgrammeMaker.DELIVERY)
        .filter(Delays::canMove)
        .map(a -> planning.floatDays(a.id(), sequence, MOST_FLOAT));
  }

  private static String shortOf(CuttingPlan p) {
    return p.description()
        + ": the cutting plan takes "
        + p.bars()
        + ", the bill buys "
        + p.bought().setScale(1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }

  private CheckInput checkInput(
      List<Line> lines,
      Estimate estimate,
      WorkPlan work,
      Programme programme,
      List<OrderRow> orders,
      List<CuttingPlan> cutting,
      LocalDate status) {
    var firstDays = new HashMap<String, LocalDate>();
    var lastDays = new HashMap<String, LocalDate>();
    for (var t : programme.tasks()) {
      firstDays.put(t.id(), t.firstDay());
      lastDays.put(t.id(), t.lastDay());
    }
    return new CheckInput(
        scope,
        facts,
        lines,
        estimate,
        book,
        work,
        status,
        programme.start(),
        programme.moveIn(),
        firstDays,
        lastDays,
        orders.stream().filter(OrderRow::late).map(OrderRow::description).toList(),
        cutting.stream().filter(CuttingPlan::billIsShort).map(Planner::shortOf).toList());
  }
}

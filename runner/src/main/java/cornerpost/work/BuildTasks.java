package cornerpost.work;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.price.Estimate;
import cornerpost.price.TaskHours;
import cornerpost.scope.Party;
import cornerpost.scope.PermitClass;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.SuppliedCalendars;
import cornerpost.scope.Trade;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes tasks of the build: how long, who, in which calendar.
 *
 * <p>Work takes its hours over the people who come, rounded up to half days of their calendar; at
 * least half a day. Where a task has hours of hired people and of the owner, it is two tasks with
 * the same links: the owner's has {@code :own} after its id and runs in the owner's calendar.
 */
final class BuildTasks {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  /** Bad weather stops these. */
  private static final Set<BuildTask> OUTDOORS = outdoors();

  private final Scope scope;
  private final Facts facts;
  private final CrewBook crews;
  private final Map<BuildTask, List<TaskHours>> hours = new EnumMap<>(BuildTask.class);

  BuildTasks(Scope scope, Estimate estimate, Facts facts, CrewBook crews) {
    this.scope = scope;
    this.facts = facts;
    this.crews = crews;
    for (var h : estimate.hours()) {
      if (!h.hours().isZero()) hours.computeIfAbsent(h.task(), k -> new ArrayList<>()).add(h);
    }
  }

  private static Set<BuildTask> outdoors() {
    var all = EnumSet.range(BuildTask.CLEAR, BuildTask.CLOSE_TRENCHES);
    all.addAll(EnumSet.range(BuildTask.SET_BOXES, BuildTask.FIX_DOWN));
    all.addAll(EnumSet.of(BuildTask.RUST_REPAIR, BuildTask.JOIN_BOXES, BuildTask.SEAL_JOINTS));
    all.addAll(EnumSet.range(BuildTask.FIT_FRAMES, BuildTask.CARGO_DOORS));
    all.addAll(EnumSet.range(BuildTask.SET_WINDOWS, BuildTask.SEAL_OPENINGS));
    all.addAll(EnumSet.range(BuildTask.ROOF_PREPARE, BuildTask.CLADDING));
    all.addAll(EnumSet.of(BuildTask.SOLAR, BuildTask.UNDERFLOOR_INSULATION));
    all.addAll(EnumSet.range(BuildTask.DECK_FOOTINGS, BuildTask.PLANTING));
    all.removeIf(t -> t.kind() != BuildTask.Kind.WORK);
    return all;
  }

  /** The one task of a part of the build, or the two of mixed work. */
  List<WorkTask> make(BuildTask task) {
    return switch (task.kind()) {
      case MILESTONE -> List.of(milestone(task.id(), task.title(), task.stage(), ""));
      case WAIT -> List.of(waiting(task));
      case INSPECTION -> List.of(inspection(task));
      case WORK -> working(task);
    };
  }

  WorkTask milestone(String id, String name, cornerpost.scope.Stage stage, String why) {
    return new WorkTask(
        id,
        name,
        stage,
        WorkTask.Kind.MILESTONE,
        Optional.empty(),
        Optional.empty(),
        0,
        false,
        crews.project(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        0,
        0,
        0,
        false,
        why,
        List.of());
  }

  private record Spread(BigDecimal low, BigDecimal likely, BigDecimal high) {
    Spread map(java.util.function.UnaryOperator<BigDecimal> by) {
      return new Spread(by.apply(low), by.apply(likely), by.apply(high));
    }
  }

  private Spread fact(String id) {
    return new Spread(
        facts.figure(id + ".low").in(Unit.ONE),
        facts.figure(id).in(Unit.ONE),
        facts.figure(id + ".high").in(Unit.ONE));
  }

  private WorkTask waiting(BuildTask task) {
    var id = "time.wait." + task.id();
    if (task == BuildTask.PERMIT_REVIEW) {
      boolean full =
          scope.project().option(ProjectQuestions.PERMIT, PermitClass.class) == PermitClass.FULL;
      id += full ? ".full" : ".minor";
    }
    var days = fact(id);
    return timed(
        task,
        WorkTask.Kind.WAIT,
        days.map(d -> d.multiply(BigDecimal.valueOf(24 * 60))),
        true,
        SuppliedCalendars.ROUND_THE_CLOCK,
        days.likely.stripTrailingZeros().toPlainString()
            + " elapsed days: "
            + facts.get(id).source());
  }

  /** In weekdays: those who inspect work for somebody else. */
  private WorkTask inspection(BuildTask task) {
    var days = fact("time.inspection");
    var calendar = SuppliedCalendars.WEEKDAYS;
    return timed(
        task,
        WorkTask.Kind.INSPECTION,
        days.map(d -> d.multiply(BigDecimal.valueOf(crews.dayMinutes(calendar)))),
        false,
        calendar,
        days.likely.stripTrailingZeros().toPlainString()
            + " weekdays from request to a passed visit: "
            + facts.get("time.inspection").source());
  }

  private static WorkTask timed(
      BuildTask task,
      WorkTask.Kind kind,
      Spread minutes,
      boolean elapsed,
      String calendar,
      String why) {
    return new WorkTask(
        task.id(),
        task.title(),
        task.stage(),
        kind,
        Optional.empty(),
        Optional.empty(),
        minutes.likely.longValue(),
        elapsed,
        calendar,
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        minutes.low.longValue(),
        minutes.high.longValue(),
        0,
        false,
        why,
        List.of());
  }

  private List<WorkTask> working(BuildTask task) {
    var all = hours.getOrDefault(task, List.of());
    var hired = all.stream().filter(h -> h.party() == Party.HIRED).toList();
    var own = all.stream().filter(h -> h.party() == Party.OWNER).toList();
    if (all.isEmpty()) return List.of(unmeasured(task));
    if (own.isEmpty()) return List.of(measured(task, task.id(), task.title(), hired));
    if (hired.isEmpty()) return List.of(measured(task, task.id(), task.title(), own));
    return List.of(
        measured(task, task.id(), task.title(), hired),
        measured(task, task.id() + ":own", task.title() + ", owner's part", own));
  }

  /** Bought ready, or too small to be measured: a stated number of days. */
  private WorkTask unmeasured(BuildTask task) {
    var trade = task.trade().orElseThrow();
    var who = scope.assignments().get(trade);
    var party = who != null && who.party() == Party.OWNER ? Party.OWNER : Party.HIRED;
    var gang = crews.gang(trade, party);
    var id = "time.work." + task.id();
    if (facts.find(id).isEmpty()) id = "time.work.other";
    long day = crews.dayMinutes(gang.calendar());
    var minutes = fact(id).map(d -> d.multiply(BigDecimal.valueOf(day)));
    return work(
        task,
        task.id(),
        task.title(),
        party,
        minutes,
        gang.calendar(),
        Map.of(gang.crew(), gang.people()),
        0,
        fact(id).likely.stripTrailingZeros().toPlainString()
            + " d, not measured: "
            + facts.get(id).source());
  }

  /** Trades that work at one task work side by side: the longest sets its duration. */
  private WorkTask measured(BuildTask task, String id, String title, List<TaskHours> parts) {
    var party = parts.get(0).party();
    var byTrade = new EnumMap<Trade, List<TaskHours>>(Trade.class);
    for (var p : parts) byTrade.computeIfAbsent(p.trade(), k -> new ArrayList<>()).add(p);
    var demands = new java.util.TreeMap<String, Integer>();
    var spreads = new EnumMap<Trade, Spread>(Trade.class);
    for (var e : byTrade.entrySet()) {
      var gang = crews.gang(e.getKey(), party);
      demands.merge(gang.crew(), gang.people(), Math::max);
      spreads.put(e.getKey(), total(e.getValue()).map(h -> perHead(h, gang.people())));
    }
    var lead =
        spreads.entrySet().stream()
            .max(Comparator.comparing((Map.Entry<Trade, Spread> e) -> e.getValue().likely))
            .orElseThrow();
    // The calendar is that of the task's own trade where it takes part.
    var trade = task.trade().filter(byTrade::containsKey).orElse(lead.getKey());
    var gang = crews.gang(trade, party);
    long day = crews.dayMinutes(gang.calendar());
    var minutes = lead.getValue().map(h -> halfDays(h, day));
    var sum = total(parts).likely;
    return work(
        task,
        id,
        title,
        party,
        minutes,
        gang.calendar(),
        demands,
        sum.doubleValue(),
        words(sum, demands, minutes.likely, day));
  }

  private static String words(
      BigDecimal hours, Map<String, Integer> demands, BigDecimal minutes, long day) {
    int people = demands.values().stream().mapToInt(Integer::intValue).sum();
    return plain(hours, 2)
        + " h, "
        + people
        + (people == 1 ? " person, " : " people, ")
        + plain(BigDecimal.valueOf(day).divide(SIXTY, 2, RoundingMode.HALF_UP), 2)
        + " h a day, rounded up to half days: "
        + plain(minutes.divide(BigDecimal.valueOf(day), 1, RoundingMode.HALF_UP), 1)
        + " d";
  }

  private static String plain(BigDecimal number, int decimals) {
    var rounded = number.setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static Spread total(List<TaskHours> parts) {
    return new Spread(
        sum(parts, TaskHours::low),
        sum(parts, h -> h.hours().value()),
        sum(parts, TaskHours::high));
  }

  private static BigDecimal sum(
      List<TaskHours> parts, java.util.function.Function<TaskHours, BigDecimal> what) {
    return parts.stream().map(what).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static BigDecimal perHead(BigDecimal hours, int people) {
    return hours.divide(BigDecimal.valueOf(people), 9, RoundingMode.HALF_UP);
  }

  /** Minutes of so many hours, rounded up to half days; at least half a day. */
  static BigDecimal halfDays(BigDecimal hours, long dayMinutes) {
    long half = Math.max(1, dayMinutes / 2);
    var halves =
        hours
            .multiply(SIXTY)
            .divide(BigDecimal.valueOf(half), 9, RoundingMode.HALF_UP)
            .setScale(0, RoundingMode.UP)
            .max(BigDecimal.ONE);
    return halves.multiply(BigDecimal.valueOf(half));
  }

  private static WorkTask work(
      BuildTask task,
      String id,
      String title,
      Party party,
      Spread minutes,
      String calendar,
      Map<String, Integer> demands,
      double hours,
      String why) {
    return new WorkTask(
        id,
        title,
        task.stage(),
        WorkTask.Kind.WORK,
        task.trade(),
        Optional.of(party),
        minutes.likely.longValue(),
        false,
        calendar,
        demands,
        Optional.empty(),
        Optional.empty(),
        minutes.low.longValue(),
        minutes.high.longValue(),
        hours,
        OUTDOORS.contains(task),
        why,
        List.of());
  }
}

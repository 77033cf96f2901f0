package cornerpost.plan;

import cornerpost.measure.Unit;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.PriceBook;
import cornerpost.schedule.Activity;
import cornerpost.schedule.LagUnit;
import cornerpost.schedule.Link;
import cornerpost.schedule.Network;
import cornerpost.schedule.Relation;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Party;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be done to make tasks shorter, or to begin one before another is done, and what half a
 * day of it costs. Only for work that has not begun; never for waits, orders and inspections.
 *
 * <p>A crew twice as large does 1 + e times the work in a day: a task of D days then takes D / (1 +
 * e), and its hands are paid for 2 D / (1 + e) days. A sixth day a week saves one day in six and
 * costs the extra pay on it. An overlap lets work be done again: that share of it is paid twice.
 * Work taken off the owner's hands is done in the trade's hours, by the trade's usual crew, at the
 * price book's likely rate. What extra hands and overlaps can do differs from site to site: common
 * practice, no source; both are asked on sheet Options.
 */
final class Quickening {
  private static final int MINUTES_AN_HOUR = 60;
  private static final long HALF_DAY = 4 * 60;

  /** A way to gain time. */
  static final class Way {
    final String task;
    final Optional<Link> link;
    final String what;
    final long stepMinutes; // of the task's calendar; all of it where the work is hired
    final long price; // of a step, in the smallest coin
    final int most; // steps
    final Optional<Activity> instead;
    int taken;

    private Way(
        String task,
        Optional<Link> link,
        String what,
        long stepMinutes,
        long price,
        int most,
        Optional<Activity> instead) {
      this.task = task;
      this.link = link;
      this.what = what;
      this.stepMinutes = stepMinutes;
      this.price = price;
      this.most = most;
      this.instead = instead;
    }

    /** Of work hired as a whole, shared out over the half days of the owner that it saves. */
    long pricePerHalfDay() {
      if (instead.isEmpty()) return price;
      return price / Math.max(1, stepMinutes / HALF_DAY);
    }
  }

  private final Scope scope;
  private final Estimate estimate;
  private final Optional<PriceBook> book;
  private final WorkPlan work;
  private final Network network;
  private final LineTasks tasks;
  private final int decimals;
  private final Map<String, BigDecimal> daily = new HashMap<>();

  Quickening(
      Scope scope,
      Estimate estimate,
      Optional<PriceBook> book,
      WorkPlan work,
      Network network,
      LineTasks tasks,
      int decimals) {
    this.scope = scope;
    this.estimate = estimate;
    this.book = book;
    this.work = work;
    this.network = network;
    this.tasks = tasks;
    this.decimals = decimals;
  }

  List<Way> ways() {
    dailyCosts();
    var ways = new ArrayList<Way>();
    for (var t : work.tasks()) {
      if (!canChange(t)) continue;
      faster(t, ways);
      hired(t, ways);
    }
    var byId = new HashMap<String, WorkTask>();
    work.tasks().forEach(t -> byId.put(t.id(), t));
    for (var l : network.links()) overlap(l, byId, ways);
    return ways;
  }

  private boolean canChange(WorkTask t) {
    boolean works = t.kind() == WorkTask.Kind.WORK || t.kind() == WorkTask.Kind.OWN;
    return works
        && !t.elapsed()
        && t.minutes() > 0
        && network.get(t.id()).progress().start().isEmpty();
  }

  /** What a day of a task costs in wages. */
  private void dailyCosts() {
    var wages = new HashMap<String, BigDecimal>();
    for (var l : estimate.lines()) {
      if (l.kind() != CostLine.Kind.LABOUR) continue;
      tasks.due(l).ifPresent(t -> wages.merge(t.id(), l.money(), BigDecimal::add));
    }
    for (var t : work.tasks()) {
      if (t.minutes() == 0 || t.elapsed()) continue;
      var days = days(t);
      var of = wages.get(t.id());
      if (of != null) {
        daily.put(t.id(), of.divide(days, cornerpost.measure.Ratio.PRECISION));
      } else if (t.kind() == WorkTask.Kind.OWN) {
        daily.put(t.id(), ofCrews(t));
      }
    }
  }

  private BigDecimal ofCrews(WorkTask t) {
    var hours =
        BigDecimal.valueOf(calendar(t).dayMinutes())
            .divide(BigDecimal.valueOf(MINUTES_AN_HOUR), cornerpost.measure.Ratio.PRECISION);
    var sum = BigDecimal.ZERO;
    for (var c : scope.crews()) {
      var number = t.demands().get(c.name());
      if (number == null || c.rate().isEmpty()) continue;
      sum = sum.add(c.rate().get().value().multiply(BigDecimal.valueOf(number)).multiply(hours));
    }
    return sum;
  }

  private WorkCalendar calendar(WorkTask t) {
    return network.calendarOf(t.id());
  }

  private BigDecimal days(WorkTask t) {
    return BigDecimal.valueOf(t.minutes())
        .divide(BigDecimal.valueOf(calendar(t).dayMinutes()), cornerpost.measure.Ratio.PRECISION);
  }

  private BigDecimal option(Question q, String otherwise) {
    return scope.options().findFigure(q).map(f -> f.in(Unit.ONE)).orElse(new BigDecimal(otherwise));
  }

  private long coins(BigDecimal amount) {
    return amount
        .movePointRight(decimals)
        .setScale(0, java.math.RoundingMode.HALF_UP)
        .longValueExact();
  }

  private void faster(WorkTask t, List<Way> ways) {
    var aDay = daily.getOrDefault(t.id(), BigDecimal.ZERO);
    if (aDay.signum() == 0) return;
    var half = new BigDecimal("0.5");
    var calendar = calendar(t);
    long step = calendar.dayMinutes() / 2;
    double days = days(t).doubleValue();
    double e = option(OptionsQuestions.EXTRA_HANDS, "0.6").doubleValue();
    int most = (int) Math.floor(2 * days * e / (1 + e) + 1e-9);
    if (most > 0) {
      var price = aDay.multiply(half).multiply(BigDecimal.valueOf((1 - e) / e));
      ways.add(way(t, "extra hands", step, coins(price), most));
    }
    boolean fiveDays =
        calendar.minutesOn(DayOfWeek.FRIDAY) > 0 && calendar.minutesOn(DayOfWeek.SATURDAY) == 0;
    int saturdays = (int) Math.floor(2 * days / 6 + 1e-9);
    if (fiveDays && saturdays > 0) {
      var price = aDay.multiply(half).multiply(option(OptionsQuestions.OVERTIME, "0.5"));
      ways.add(way(t, "Saturdays worked", step, coins(price), saturdays));
    }
  }

  private static Way way(WorkTask t, String what, long step, long price, int most) {
    return new Way(t.id(), Optional.empty(), what, step, price, most, Optional.empty());
  }

  private void hired(WorkTask t, List<Way> ways) {
    if (t.party().filter(p -> p == Party.OWNER).isEmpty() || t.trade().isEmpty()) return;
    var rate = book.flatMap(b -> b.findRate(t.trade().get()));
    if (rate.isEmpty() || t.hours() <= 0) return;
    double factor = option(OptionsQuestions.OWNER_FACTOR, "1.5").doubleValue();
    double hours = t.hours() / factor;
    var calendar =
        work.tasks().stream()
            .filter(o -> o.party().filter(p -> p == Party.HIRED).isPresent())
            .findFirst()
            .map(this::calendar)
            .orElse(network.defaultCalendar());
    double halves =
        hours * MINUTES_AN_HOUR / rate.get().usualCrew() / (calendar.dayMinutes() / 2.0);
    long minutes = (long) Math.max(1, Math.ceil(halves - 1e-9)) * (calendar.dayMinutes() / 2);
    var a = network.get(t.id());
    var instead =
        new Activity(
            a.id(),
            a.name(),
            minutes,
            LagUnit.WORKING_MINUTES,
            Optional.of(calendar),
            a.notBefore(),
            a.deadline(),
            Map.of(),
            a.progress());
    var price = rate.get().likely().multiply(BigDecimal.valueOf(hours));
    ways.add(
        new Way(
            t.id(),
            Optional.empty(),
            "hired instead of done by the owner",
            t.minutes(),
            coins(price),
            1,
            Optional.of(instead)));
  }

  private void overlap(Link l, Map<String, WorkTask> byId, List<Way> ways) {
    var b = byId.get(l.before());
    var a = byId.get(l.after());
    if (l.relation() != Relation.FINISH_TO_START || l.lagMinutes() != 0) return;
    if (b == null || a == null || !canChange(b) || !canChange(a)) return;
    var aDay = daily.getOrDefault(a.id(), BigDecimal.ZERO);
    if (aDay.signum() == 0) return;
    double share = option(OptionsQuestions.OVERLAP, "0.25").doubleValue();
    double days = Math.min(days(b).doubleValue(), days(a).doubleValue());
    int most = (int) Math.floor(2 * days * share + 1e-9);
    if (most == 0) return;
    var price =
        aDay.multiply(new BigDecimal("0.5")).multiply(option(OptionsQuestions.REWORK, "0.1"));
    ways.add(
        new Way(
            a.id(),
            Optional.of(l),
            "begun before " + b.name() + " is done",
            calendar(a).dayMinutes() / 2,
            coins(price),
            most,
            Optional.empty()));
  }
}

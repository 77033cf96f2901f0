package cornerpost.plan;

import cornerpost.plan.Quickening.Way;
import cornerpost.plan.Replanning.Measure;
import cornerpost.plan.Replanning.Recovery;
import cornerpost.plan.Replanning.Step;
import cornerpost.schedule.Activity;
import cornerpost.schedule.Link;
import cornerpost.schedule.Network;
import cornerpost.schedule.Passes;
import cornerpost.schedule.Relation;
import cornerpost.schedule.Timetable;
import cornerpost.schedule.TradeOff;
import cornerpost.schedule.TradeOff.Job;
import cornerpost.schedule.TradeOff.Tie;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Wins days back, each at the least cost.
 *
 * <p>Every crew keeps its order. Of the tasks and waits that drive move-in the cheapest set is
 * found that shortens every driving path at once ({@link TradeOff}); half a day of each is taken,
 * what was shortened before is given back where that is cheaper, and the plan is dated anew with
 * all its calendars. Where all work in one calendar this is the exact trade-off of time against
 * money (S. Phillips and M. I. Dessouky, "Solving the project time/cost tradeoff problem using the
 * minimal cut concept", Management Science 24, 1977, 393-400); days off and work hired as a whole
 * make it a very good plan, not a proven one. Last, what can be left out without losing the day
 * again is left out.
 */
final class RecoveryPlanner {
  private static final int MOST_ROUNDS = 400;
  private static final long HALF_DAY = 12 * 60;

  private final Network network;
  private final List<Way> ways;
  private final Map<String, Way> byKey = new HashMap<>();
  private final int decimals;

  /**
   * @param network in the order of the crews
   */
  RecoveryPlanner(Network network, List<Way> ways, int decimals) {
    this.network = network;
    this.ways = ways;
    this.decimals = decimals;
  }

  Recovery recover(LocalDate wanted) {
    var times = Passes.of(network);
    var from = Delays.goal(times);
    var at = from;
    var steps = new ArrayList<Step>();
    var last = taken();
    long spent = 0;
    for (int round = 0; round < MOST_ROUNDS && at.isAfter(wanted); round++) {
      if (!step(times)) break;
      times = Passes.of(changed());
      var now = Delays.goal(times);
      if (!now.isBefore(at)) continue;
      leaveOut(now, wanted);
      times = Passes.of(changed());
      now = Delays.goal(times);
      long total = cost();
      steps.add(
          new Step(
              now,
              (int) ChronoUnit.DAYS.between(now, at),
              said(last),
              money(total - spent),
              money(total)));
      last = taken();
      spent = total;
      at = now;
    }
    for (int i = 0; i < ways.size(); i++) ways.get(i).taken = last[i];
    return new Recovery(wanted, from, steps, measures(), !at.isAfter(wanted));
  }

  private int[] taken() {
    return ways.stream().mapToInt(w -> w.taken).toArray();
  }

  private long cost() {
    return ways.stream().mapToLong(w -> w.taken * w.price).sum();
  }

  private BigDecimal money(long coins) {
    return BigDecimal.valueOf(coins, decimals);
  }

  // ---- the network with what is taken -------------------------------------------------------

  private Network changed() {
    var activities = new ArrayList<Activity>(network.activities());
    var links = new ArrayList<Link>(network.links());
    for (var w : ways) {
      if (w.taken == 0 || w.link.isPresent()) continue;
      int i = network.indexOf(w.task);
      var a = activities.get(i);
      activities.set(
          i,
          w.instead.isPresent()
              ? w.instead.get()
              : a.lasting(Math.max(1, a.minutes() - w.taken * w.stepMinutes)));
    }
    for (var w : ways) {
      if (w.taken == 0 || w.link.isEmpty()) continue;
      var l = w.link.get();
      links.set(
          links.indexOf(l), Link.of(l.before(), l.after(), l.relation(), -w.taken * w.stepMinutes));
    }
    return Network.of(
        activities,
        links,
        network.crews(),
        network.start(),
        network.defaultCalendar(),
        network.status());
  }

  private boolean canTake(Way w) {
    if (w.taken >= w.most) return false;
    if (w.link.isPresent()) return true;
    long left = network.get(w.task).minutes();
    for (var o : ways) {
      if (!o.task.equals(w.task) || o.link.isPresent()) continue;
      if (o.taken > 0 && (o.instead.isPresent() || w.instead.isPresent())) return false;
      left -= o.taken * o.stepMinutes;
    }
    return w.instead.isPresent() || left > w.stepMinutes;
  }

  // ---- the cheapest set ---------------------------------------------------------------------

  /** Takes and gives back what the cheapest cut asks for; false if no cut shortens every path. */
  private boolean step(Timetable times) {
    var driving = driving(times);
    LocalDateTime origin =
        driving.stream()
            .map(id -> times.timing(id).early().start())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    var jobs = new ArrayList<Job>();
    var ties = new ArrayList<Tie>();
    byKey.clear();
    for (var id : driving) job(id, times, origin, jobs, ties);
    for (var id : driving) {
      for (var l : times.timing(id).drivers()) tie(l, times, jobs, ties);
    }
    var goal = times.timing(Delays.goalTask(times)).early().finish();
    long end = ChronoUnit.MINUTES.between(origin, goal);
    var t = TradeOff.of(jobs, ties);
    if (t.shortestEnd() >= end) return false;
    var answer = t.at(Math.max(t.shortestEnd(), end - HALF_DAY));
    boolean any = false;
    for (var j : jobs) {
      var w = byKey.get(j.id());
      if (w == null) continue;
      long length = answer.lengths().get(j.id());
      if (j.id().startsWith("give ") && length > 0 && w.taken > 0) {
        w.taken--;
        any = true;
      } else if (j.id().startsWith("take ") && length < j.normal()) {
        w.taken++;
        any = true;
      }
    }
    return any;
  }

  private static LinkedHashSet<String> driving(Timetable times) {
    var found = new LinkedHashSet<String>();
    var next = new ArrayDeque<String>();
    next.add(Delays.goalTask(times));
    while (!next.isEmpty()) {
      var id = next.remove();
      if (!found.add(id)) continue;
      if (times.timing(id).activity().progress().finish().isPresent()) continue;
      times.timing(id).drivers().forEach(l -> next.add(l.before()));
    }
    return found;
  }

  /**
   * A task is a chain: from its start what can be taken, what can be given back, and the rest. All
   * three count in elapsed minutes, so that all driving paths are of one length.
   */
  private void job(
      String id, Timetable times, LocalDateTime origin, List<Job> jobs, List<Tie> ties) {
    var d = times.timing(id).early();
    long length = ChronoUnit.MINUTES.between(d.start(), d.finish());
    var take =
        ways.stream()
            .filter(w -> w.task.equals(id) && w.link.isEmpty() && canTake(w))
            .min(Comparator.comparingLong(Quickening.Way::pricePerHalfDay));
    var give =
        ways.stream()
            .filter(w -> w.task.equals(id) && w.link.isEmpty() && w.taken > 0)
            .max(Comparator.comparingLong(Quickening.Way::pricePerHalfDay));
    long room = take.isPresent() ? Math.min(length, HALF_DAY) : 0;
    chain(id, id, length - room, take, room, give, jobs, ties);
    if (times.timing(id).drivers().isEmpty()) {
      long since = ChronoUnit.MINUTES.between(origin, d.start());
      if (since > 0) {
        jobs.add(Job.fixed("before " + id, since));
        ties.add(Tie.of("before " + id, id));
      }
    }
  }

  private void chain(
      String first,
      String key,
      long fixed,
      Optional<Way> take,
      long room,
      Optional<Way> give,
      List<Job> jobs,
      List<Tie> ties) {
    jobs.add(Job.fixed(first, fixed));
    var last = first;
    if (take.isPresent()) {
      var id = "take " + key;
      jobs.add(new Job(id, room, 0, take.get().pricePerHalfDay()));
      byKey.put(id, take.get());
      ties.add(Tie.of(last, id));
      last = id;
    }
    if (give.isPresent()) {
      var id = "give " + key;
      jobs.add(new Job(id, HALF_DAY, 0, give.get().pricePerHalfDay()));
      byKey.put(id, give.get());
      ties.add(Tie.of(last, id));
      last = id;
    }
    ends.put(key, last);
  }

  private final Map<String, String> ends = new HashMap<>();

  private void tie(Link l, Timetable times, List<Job> jobs, List<Tie> ties) {
    var b = times.timing(l.before()).early();
    var a = times.timing(l.after()).early();
    var from = l.relation().fromStart() ? b.start() : b.finish();
    var to = l.relation().toFinish() ? a.finish() : a.start();
    long lag = ChronoUnit.MINUTES.between(from, to);
    var tail = l.relation().fromStart() ? l.before() : ends.get(l.before());
    var head = l.relation().toFinish() ? ends.get(l.after()) : l.after();
    var relation =
        l.relation().fromStart()
            ? l.relation().toFinish() ? Relation.START_TO_FINISH : Relation.START_TO_START
            : l.relation().toFinish() ? Relation.FINISH_TO_FINISH : Relation.FINISH_TO_START;
    var way =
        ways.stream()
            .filter(
                w ->
                    w.link.isPresent()
                        && w.link.get().before().equals(l.before())
                        && w.link.get().after().equals(l.after())
                        && w.link.get().relation() == l.relation())
            .findFirst();
    if (way.isEmpty()) {
      ties.add(new Tie(tail, head, relation, lag, lag, 0));
      return;
    }
    // An overlap is a chain of its own between the two tasks, with the wait as its fixed part.
    var key = "from " + l.before() + " to " + l.after();
    var take = way.filter(this::canTake);
    chain(
        key,
        key,
        0,
        take,
        take.isPresent() ? HALF_DAY : 0,
        way.filter(w -> w.taken > 0),
        jobs,
        ties);
    ties.add(new Tie(tail, key, relation, lag, lag, 0));
    long back = take.isPresent() ? -HALF_DAY : 0;
    ties.add(new Tie(ends.get(key), head, Relation.FINISH_TO_START, back, back, 0));
  }

  // ---- what can be left out -----------------------------------------------------------------

  /** The dearest first; as long as move-in stays, and no longer than it must be won. */
  private void leaveOut(LocalDate now, LocalDate wanted) {
    var limit = now.isBefore(wanted) ? wanted : now;
    var dear = new ArrayList<>(ways);
    dear.sort(Comparator.comparingLong((Way w) -> -w.price));
    for (var w : dear) {
      while (w.taken > 0) {
        w.taken--;
        if (Delays.goal(Passes.of(changed())).isAfter(limit)) {
          w.taken++;
          break;
        }
      }
    }
  }

  // ---- words --------------------------------------------------------------------------------

  private List<String> said(int[] before) {
    var said = new ArrayList<String>();
    for (int i = 0; i < ways.size(); i++) {
      var w = ways.get(i);
      int more = w.taken - before[i];
      if (more == 0) continue;
      var name = network.get(w.task).name();
      said.add(
          more > 0
              ? name + ": " + w.what + size(w, more)
              : name + ": no longer " + w.what + size(w, -more));
    }
    return said;
  }

  private static String size(Way w, int steps) {
    if (w.instead.isPresent()) return "";
    return ", " + half(steps).toPlainString() + (steps <= 2 ? " day" : " days");
  }

  private static BigDecimal half(int steps) {
    return BigDecimal.valueOf(steps).multiply(new BigDecimal("0.5")).stripTrailingZeros();
  }

  private List<Measure> measures() {
    var all = new LinkedHashMap<String, Measure>();
    var seen = new HashSet<Way>();
    for (var w : ways) {
      if (w.taken == 0 || !seen.add(w)) continue;
      long day = network.calendarOf(w.task).dayMinutes();
      var days =
          w.instead.isPresent()
              ? Days.of(w.stepMinutes - w.instead.get().minutes(), day)
              : half(w.taken);
      all.put(
          w.task + w.what,
          new Measure(w.task, network.get(w.task).name(), w.what, days, money(w.taken * w.price)));
    }
    return List.copyOf(all.values());
  }
}

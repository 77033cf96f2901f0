package cornerpost.plan;

import cornerpost.schedule.Activity;
import cornerpost.schedule.Network;
import cornerpost.schedule.Timetable;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * Plans a network with events that come late.
 *
 * <p>A delay of k days puts the event off to k calendar days after the moment at which it would be
 * planned without this delay: a not-before date on that task. Delays are put in by planned start,
 * the first event first, so that a later one counts from where the earlier ones have put it. What
 * has begun or is done cannot be put off.
 *
 * <p>The crews then keep their order, or take another if that ends sooner. Another order is not
 * taken if with it the delayed plan would end before the plan without delays: that order would
 * serve the other plan too, and a delay shall not look like a gain.
 */
final class Delays {
  /** A hundred tasks are tried in 2000 orders, larger plans in fewer: it takes as long. */
  private static final long TASKS_PLACED = 200_000;

  private static final long LEAST_ORDERS = 50;

  private final long seed;

  Delays(long seed) {
    this.seed = seed;
  }

  Sequence plain(Network network) {
    long orders = TASKS_PLACED / Math.max(1, network.activities().size());
    return Sequence.of(network, Math.max(LEAST_ORDERS, Math.min(2_000, orders)), seed);
  }

  /** A plan with these delays on top of what it has. */
  Sequence with(List<Delay> delays, Sequence base) {
    var changed = putOff(delays, base);
    if (changed.isEmpty()) return base;
    var kept = base.keeping(changed);
    boolean absorbed =
        base.crewLimited()
            && kept.holdsOrder()
            && !goal(kept.ordered()).isAfter(goal(base.ordered()));
    // No other order may end before the plan without delays; and what bounds that, bounds this.
    if (absorbed) return kept.boundedBy(base);
    var anew = plain(kept.network());
    if (!base.crewLimited() || !kept.holdsOrder()) return anew; // no order that could be kept
    boolean sooner = goal(anew.ordered()).isBefore(goal(kept.ordered()));
    boolean tooSoon = goal(anew.ordered()).isBefore(goal(base.ordered()));
    return sooner && !tooSoon ? anew : kept.boundedBy(anew);
  }

  /** The tasks of {@code base} that the delays change. */
  static List<Activity> putOff(List<Delay> delays, Sequence base) {
    var order = new ArrayList<Delay>();
    for (var d : delays) {
      if (d.days() > 0 && canMove(base.network().get(d.task()))) order.add(d);
    }
    order.sort(Comparator.comparing(d -> base.ordered().timing(d.task()).early().start()));
    var changed = new LinkedHashMap<String, Activity>();
    for (var d : order) {
      var times = base.with(new ArrayList<>(changed.values()));
      var start = times.timing(d.task()).early().start();
      var before = changed.getOrDefault(d.task(), base.network().get(d.task()));
      changed.put(d.task(), before.notBefore(start.plusDays(d.days())));
    }
    return new ArrayList<>(changed.values());
  }

  static boolean canMove(Activity activity) {
    return activity.progress().start().isEmpty();
  }

  /** The day of move-in, or the last day where there is no such task. */
  static LocalDate goal(Timetable times) {
    return times.network().find(ProgrammeMaker.MOVE_IN).isPresent()
        ? times.timing(ProgrammeMaker.MOVE_IN).early().lastDay()
        : times.lastDay();
  }

  /** The task whose last day that is. */
  static String goalTask(Timetable times) {
    if (times.network().find(ProgrammeMaker.MOVE_IN).isPresent()) return ProgrammeMaker.MOVE_IN;
    var path = times.longestPath();
    return path.get(path.size() - 1);
  }

  /**
   * By how many calendar days an event may come later before the day of move-in moves; found by
   * planning anew with ever larger slips, halving the step. Crews that limit the plan keep their
   * order.
   *
   * @return 0 to {@code most}
   */
  int floatDays(String task, Sequence sequence, int most) {
    var goal = goal(sequence.ordered());
    var start = sequence.ordered().timing(task).early().start();
    int low = 0;
    int high = 1;
    while (high <= most && holds(task, start, high, sequence, goal)) {
      low = high;
      high *= 2;
    }
    high = Math.min(high, most + 1);
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (holds(task, start, middle, sequence, goal)) low = middle;
      else high = middle;
    }
    return low;
  }

  private boolean holds(
      String task, LocalDateTime start, int days, Sequence sequence, LocalDate goal) {
    var late = sequence.network().get(task).notBefore(start.plusDays(days));
    var times =
        sequence.crewLimited()
            ? sequence.with(List.of(late))
            : plain(sequence.network().with(late)).ordered();
    return !goal(times).isAfter(goal);
  }
}

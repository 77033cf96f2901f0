package cornerpost.plan;

import cornerpost.plan.Replanning.Kink;
import cornerpost.plan.Replanning.SlipCurve;
import cornerpost.plan.Replanning.SlipPoint;
import cornerpost.schedule.PathBetween;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Move-in and cost against days of slip of one event: each point is the plan that a run with that
 * delay gives, other entered delays included.
 */
final class SlipCurves {
  /** Slips that are looked at, in days. */
  static final int MOST = 60;

  private final Delays planning;
  private final Sequence plain;
  private final List<Delay> others;
  private final Delay event;

  /**
   * @param plain without any delay
   * @param others entered delays of other events
   * @param event the one that slips; its own days do not count
   */
  SlipCurves(Delays planning, Sequence plain, List<Delay> others, Delay event) {
    this.planning = planning;
    this.plain = plain;
    this.others = others;
    this.event = event;
  }

  private record Planned(Sequence sequence, LocalDate moveIn, boolean drives) {}

  SlipCurve curve(DelayCosts costs) {
    var plans = IntStream.rangeClosed(0, MOST).parallel().mapToObj(this::planned).toList();
    var base = plans.get(0);
    var points = new ArrayList<SlipPoint>();
    int crane = 0; // the first day of slip that moves the crane's day
    for (int k = 0; k <= MOST; k++) {
      var p = plans.get(k);
      int moved = (int) Math.max(0, ChronoUnit.DAYS.between(base.moveIn, p.moveIn));
      var cost = costs.of(moved, base.sequence, p.sequence);
      points.add(new SlipPoint(k, p.moveIn, moved, cost.total()));
      if (crane == 0 && cost.crane().signum() > 0) crane = k;
    }
    int last = 0;
    while (last <= MOST && points.get(Math.min(last, MOST)).moveInDays() == 0) last++;
    var planned = base.sequence.planned(event.task()).firstDay();
    return new SlipCurve(
        event.task(),
        event.name(),
        planned,
        points,
        kinks(plans, points, last, crane),
        last > MOST ? Optional.empty() : Optional.of(planned.plusDays(last - 1)));
  }

  private Planned planned(int days) {
    var all = new ArrayList<>(others);
    if (days > 0) {
      all.add(new Delay(event.task(), event.name(), days, "", "", event.sheet(), event.cell()));
    }
    var sequence = all.isEmpty() ? plain : planning.with(all, plain);
    return new Planned(sequence, Delays.goal(sequence.ordered()), drives(sequence));
  }

  /** Whether a chain of driving waits leads from the event to the goal. */
  private boolean drives(Sequence sequence) {
    var times = sequence.ordered();
    var seen = new java.util.HashSet<String>();
    var next = new java.util.ArrayDeque<String>();
    next.add(Delays.goalTask(times));
    while (!next.isEmpty()) {
      var id = next.remove();
      if (id.equals(event.task())) return true;
      if (seen.add(id)) times.timing(id).drivers().forEach(l -> next.add(l.before()));
    }
    return false;
  }

  private List<Kink> kinks(List<Planned> plans, List<SlipPoint> points, int last, int crane) {
    var kinks = new ArrayList<Kink>();
    if (crane > 0) kinks.add(new Kink(crane, "the crane is booked again, for another day"));
    IntFunction<Planned> at = plans::get;
    var base = plans.get(0).sequence;
    if (last > MOST) {
      kinks.add(new Kink(MOST, "float lasts: nothing up to here moves move-in"));
      return kinks;
    }
    kinks.add(
        new Kink(
            last,
            last == 1
                ? "there is no float: the first day moves move-in"
                : "float of "
                    + event.name()
                    + " is used up: "
                    + (last - 1)
                    + (last == 2 ? " day moves" : " days move")
                    + " nothing, from here on "
                    + event.name()
                    + " holds up "
                    + follower(at.apply(last).sequence)));
    boolean otherOrder = false;
    for (int k = last + 1; k <= MOST; k++) {
      var was = at.apply(k - 1);
      var is = at.apply(k);
      if (!otherOrder && order(is.sequence) != order(base)) {
        kinks.add(new Kink(k, OTHER_ORDER));
        otherOrder = true;
      }
      if (was.drives && !is.drives) {
        kinks.add(new Kink(k, "other work holds up move-in longer than " + event.name()));
      }
    }
    kinks.addAll(steps(plans, points));
    kinks.sort(Comparator.comparingInt(Kink::days));
    return kinks;
  }

  /** Days of slip that move move-in by several days each, with the cause. */
  private List<Kink> steps(List<Planned> plans, List<SlipPoint> points) {
    var kinks = new ArrayList<Kink>();
    for (int k = 1; k <= MOST; k++) {
      int step = points.get(k).moveInDays() - points.get(k - 1).moveInDays();
      if (step <= 1) continue;
      kinks.add(new Kink(k, "this day moves move-in by " + step + where(plans, k, step)));
    }
    return kinks;
  }

  /** The first task of the chain to move-in that moves by more than the day it is held up. */
  private String where(List<Planned> plans, int k, int step) {
    var was = plans.get(k - 1).sequence;
    var is = plans.get(k).sequence;
    var times = is.ordered();
    var chain = times.longestPath(event.task(), Delays.goalTask(times));
    for (var id : chain.map(PathBetween::ids).orElse(List.of())) {
      var from = was.planned(id).firstDay();
      if (ChronoUnit.DAYS.between(from, is.planned(id).firstDay()) < step) continue;
      boolean byLinks =
          times.timing(id).drivers().stream().anyMatch(is.network().links()::contains);
      return ": "
          + is.network().get(id).name()
          + (byLinks ? " then waits over days without work" : " then waits for its crew");
    }
    return "";
  }

  private static final String OTHER_ORDER =
      "from here on the crews go in another order, which ends sooner";

  /** Orders are the same if the crews go from task to task in the same way. */
  private static int order(Sequence s) {
    return s.handovers().hashCode();
  }

  private String follower(Sequence sequence) {
    var times = sequence.ordered();
    return sequence.network().links().stream()
        .filter(l -> l.before().equals(event.task()))
        .filter(l -> times.timing(l.after()).drivers().contains(l))
        .map(l -> sequence.network().get(l.after()).name())
        .findFirst()
        .orElse("the work behind it");
  }
}

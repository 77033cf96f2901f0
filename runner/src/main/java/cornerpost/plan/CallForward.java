package cornerpost.plan;

import cornerpost.schedule.Link;
import cornerpost.schedule.Network;
import cornerpost.schedule.NetworkHealth;
import cornerpost.schedule.Passes;
import cornerpost.schedule.Timetable;
import cornerpost.schedule.Timing;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.takeoff.BuildTask;
import cornerpost.work.WorkLink;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkPlanner;
import cornerpost.work.WorkTask;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Calls forward what would otherwise lie about for months: generated orders and work that could
 * slip by more than 44 working days wait for an event of the build some weeks before they are
 * needed. So floors are ordered when the frame is passed, not with the permit, and the deck is not
 * begun before its turn; what is called forward still has weeks to spare, and the planned finish
 * stays where it is. A permit or a utility company's work, once asked for, takes its own course.
 *
 * <p>Measured on the order of work as planned before anything has happened, so that later runs call
 * forward by the same events. Source of the measure: DCMA-EA PAM 200.1 (2012), section 4, check 6:
 * float above 44 working days says that a link is missing.
 */
final class CallForward {
  private static final int MOST_DAYS = NetworkHealth.HIGH_FLOAT_DAYS;

  /** Working days that a task called forward keeps to spare: at least, best, and at most. */
  private static final double LEAST_LEFT = 8;

  private static final double BEST_LEFT = 25;
  private static final double MOST_LEFT = 40;

  /** An event people know is taken though a task in between would leave so many days less. */
  private static final double FOR_AN_EVENT = 12;

  /** Days by which an event may have more float itself than the task that waits for it. */
  private static final double NEARLY = 5;

  private static final int MOST_ROUNDS = 60;

  private final WorkPlan work;
  private final Map<String, WorkTask> generated = new HashMap<>();
  private final List<WorkLink> called = new ArrayList<>();
  private final boolean oneByOne;
  private Timetable alone;
  private Timetable ordered;
  private Map<String, List<String>> after;

  private CallForward(WorkPlan work, Sequence plain, boolean oneByOne) {
    this.work = work;
    this.oneByOne = oneByOne;
    alone = plain.alone();
    ordered = plain.ordered();
    for (var t : work.tasks()) {
      boolean own = t.kind() == WorkTask.Kind.OWN;
      boolean end = t.id().equals(WorkPlanner.START) || t.id().equals(BuildTask.MOVE_IN.id());
      boolean runs = t.kind() == WorkTask.Kind.WAIT; // once asked for, nobody holds it back
      if (!own && !end && !runs) generated.put(t.id(), t);
    }
  }

  /**
   * A plan of work with what calls forward among its links.
   *
   * @param plain its order, without delays
   * @param first its order before anything had happened, where that was worked out
   */
  record Called(WorkPlan work, Sequence plain, Optional<Sequence> first) {}

  /**
   * Plans, and calls forward what is generated. What has begun waits for nothing that would call it
   * forward.
   *
   * @param now the network of the work with its progress
   */
  static Called of(Scope scope, WorkPlan work, Network now, Delays planning, LocalDate status) {
    if (!scope.generatesTasks()) return new Called(work, planning.plain(now), Optional.empty());
    var start = scope.project().date(ProjectQuestions.START);
    boolean begun = !status.equals(start) || !scope.progress().isEmpty();
    var unbegun =
        begun ? WorkNetwork.of(work, scope.unbegun(), start, new Problems()).orElse(now) : now;
    var first = of(work, planning.plain(unbegun));
    if (!begun) {
      return new Called(first.work(), first.sequence(), Optional.of(first.sequence()));
    }
    var links = first.links.stream().filter(l -> Delays.canMove(now.get(l.after()))).toList();
    var all = new ArrayList<>(now.links());
    links.forEach(l -> all.add(link(l)));
    return new Called(
        work.withLinks(links), planning.plain(now.withLinks(all)), Optional.of(first.sequence()));
  }

  /**
   * What is called forward in a plan.
   *
   * @param links that call forward, none where nothing has high float
   * @param work the plan of work with them
   * @param sequence its order with them
   */
  record Forward(List<WorkLink> links, WorkPlan work, Sequence sequence) {}

  /**
   * Calls forward.
   *
   * @param plain the plan before anything has happened and without delays
   */
  static Forward of(WorkPlan work, Sequence plain) {
    var each = new CallForward(work, plain, false);
    if (!each.all()) { // two together would move the links' own finish: then one at a time
      each = new CallForward(work, plain, true);
      each.all();
    }
    return new Forward(
        List.copyOf(each.called),
        work.withLinks(each.called),
        each.called.isEmpty() ? plain : plain.timed(each.alone, each.ordered));
  }

  /** False if what was called forward moves the finish. */
  private boolean all() {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      var high = high();
      if (high.isEmpty()) break;
      reachable();
      int before = called.size();
      for (var id : heads(high)) {
        call(id);
        if (oneByOne && called.size() > before) break;
      }
      if (called.size() == before) break;
      var links = links(before);
      var finish = ordered.finish();
      ordered = with(ordered, links);
      if (oneByOne) alone = with(alone, links);
      if (ordered.finish().isAfter(finish)) return false;
    }
    if (oneByOne || called.isEmpty()) return true;
    var finish = alone.finish();
    alone = with(alone, links(0));
    return !alone.finish().isAfter(finish);
  }

  private List<Link> links(int from) {
    return called.subList(from, called.size()).stream().map(CallForward::link).toList();
  }

  static Link link(WorkLink l) {
    return Link.of(l.before(), l.after());
  }

  /** A timetable of the same tasks with more links. */
  static Timetable with(Timetable times, List<Link> more) {
    var network = times.network();
    var links = new ArrayList<>(network.links());
    links.addAll(more);
    return Passes.of(network.withLinks(links));
  }

  private Set<String> high() {
    var high = new HashSet<String>();
    for (var t : ordered.timings()) {
      if (generated.containsKey(t.id()) && NetworkHealth.floatDays(ordered, t) > MOST_DAYS) {
        high.add(t.id());
      }
    }
    return high;
  }

  private void reachable() {
    after = new HashMap<>();
    for (var l : ordered.network().links()) {
      after.computeIfAbsent(l.before(), k -> new ArrayList<>()).add(l.after());
    }
  }

  /** Those before which no other of them comes: what follows them moves with them. */
  private List<String> heads(Set<String> high) {
    var followers = new HashSet<String>();
    for (var l : ordered.network().links()) {
      if (high.contains(l.before())) followers.add(l.after());
    }
    return work.tasks().stream()
        .map(WorkTask::id)
        .filter(id -> high.contains(id) && !followers.contains(id))
        .toList();
  }

  private Set<String> from(String id) {
    var seen = new HashSet<String>();
    var open = new ArrayDeque<String>(List.of(id));
    while (!open.isEmpty()) {
      var next = open.pop();
      if (seen.add(next)) open.addAll(after.getOrDefault(next, List.of()));
    }
    return seen;
  }

  private void call(String id) {
    if (!call(id, LEAST_LEFT, MOST_LEFT, NEARLY)) call(id, 1, MOST_DAYS, MOST_DAYS);
  }

  /** Whether an event was found that leaves so much. */
  private boolean call(String id, double leastLeft, double mostLeft, double nearly) {
    var late = from(id);
    Optional<String> best = Optional.empty();
    double least = Double.MAX_VALUE;
    for (var t : ordered.timings()) {
      if (late.contains(t.id()) || !generated.containsKey(t.id())) continue;
      double left = left(t, id);
      if (left < leastLeft || left > mostLeft) continue;
      if (NetworkHealth.floatDays(ordered, t) > left + nearly || movesTheLinksAlone(t, id))
        continue;
      var kind = generated.get(t.id()).kind();
      boolean event = kind == WorkTask.Kind.MILESTONE || kind == WorkTask.Kind.INSPECTION;
      double off = Math.abs(left - BEST_LEFT) + (event ? 0 : FOR_AN_EVENT);
      if (off < least) {
        least = off;
        best = Optional.of(t.id());
      }
    }
    best.ifPresent(
        gate -> {
          called.add(
              new WorkLink(
                  gate,
                  id,
                  LinkRelation.FINISH_TO_START,
                  0,
                  DurationUnit.DAYS,
                  "soon enough: nothing needs it for weeks yet"));
          after.computeIfAbsent(gate, k -> new ArrayList<>()).add(id);
        });
    return best.isPresent();
  }

  private boolean movesTheLinksAlone(Timing gate, String id) {
    return alone.timing(gate.id()).early().finish().isAfter(alone.timing(id).late().start());
  }

  /** The working days a task would have to spare if it waited for the other. */
  private double left(Timing gate, String id) {
    var calendar = ordered.network().defaultCalendar();
    return (double) calendar.between(gate.early().finish(), ordered.timing(id).late().start())
        / calendar.dayMinutes();
  }
}

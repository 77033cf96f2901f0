package cornerpost.plan;

import cornerpost.schedule.Activity;
import cornerpost.schedule.Budget;
import cornerpost.schedule.CrewSchedule;
import cornerpost.schedule.Dates;
import cornerpost.schedule.Network;
import cornerpost.schedule.Passes;
import cornerpost.schedule.Sequencer;
import cornerpost.schedule.Timetable;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A network with planned dates, and the order in which each crew goes from task to task.
 *
 * <p>That order is written down as links: a crew's next task waits for the one it comes from. The
 * early dates of the network with those links are the planned dates, so that what drives them, and
 * what a delay does while the order stays, can be asked of the two passes.
 */
final class Sequence {
  /**
   * Tasks placed without a better schedule after which none came later in houses of every kind
   * tried: some 430 schedules of a house, thousands of a small network.
   */
  private static final long FRUITLESS_TASKS = 60_000;

  /** A crew's hands go from one task to another. */
  record Handover(String before, String after, String crew) {}

  private final Timetable alone;
  private final List<Handover> handovers;
  private final Timetable ordered;
  private final LocalDateTime lowerBound;

  private Sequence(
      Timetable alone, List<Handover> handovers, Timetable ordered, LocalDateTime lowerBound) {
    this.alone = alone;
    this.handovers = List.copyOf(handovers);
    this.ordered = ordered;
    this.lowerBound = lowerBound;
  }

  private static long patience(Network network) {
    return Math.max(1, FRUITLESS_TASKS / Math.max(1, network.activities().size()));
  }

  /** Finds planned dates; the same seed and schedule count give the same. */
  static Sequence of(Network network, long schedules, long seed) {
    var schedule =
        Sequencer.sequence(
            network, Budget.schedules(schedules).withPatience(patience(network)), seed);
    var handovers =
        schedule.crewLimited() ? Handing.of(network, schedule::planned) : List.<Handover>of();
    return new Sequence(
        schedule.timetable(),
        handovers,
        ordered(network, schedule, handovers),
        schedule.lowerBound());
  }

  /** The same order of the crews with some tasks changed; its bound is that of the links alone. */
  Sequence keeping(List<Activity> changed) {
    var n = network();
    for (var a : changed) n = n.with(a);
    var times = Passes.of(n);
    return new Sequence(times, handovers, with(changed), times.finish());
  }

  /**
   * The same dates with the order of the crews held, where their numbers did not ask for it too.
   */
  Sequence inCrewOrder() {
    if (crewLimited()) return this;
    var order = Handing.of(network(), this::planned);
    var times = Passes.of(network().withLinks(Handing.links(network(), order)));
    return new Sequence(alone, order, times, lowerBound);
  }

  /** The same order of the crews with more links, none of which moves the finish. */
  Sequence timed(Timetable aloneWithThem, Timetable orderedWithThem) {
    return new Sequence(aloneWithThem, handovers, orderedWithThem, lowerBound);
  }

  /** With the bound of another sequence of the same tasks, if that is higher. */
  Sequence boundedBy(Sequence other) {
    return other.lowerBound.isAfter(lowerBound)
        ? new Sequence(alone, handovers, ordered, other.lowerBound)
        : this;
  }

  /** The network alone. */
  Network network() {
    return alone.network();
  }

  /** Early and late dates of the network alone. */
  Timetable alone() {
    return alone;
  }

  boolean crewLimited() {
    return !handovers.isEmpty();
  }

  /** When a task is planned. */
  Dates planned(String id) {
    return ordered.timing(id).early();
  }

  /** No order of these tasks with these crews finishes before. */
  LocalDateTime lowerBound() {
    return lowerBound;
  }

  boolean proved() {
    return !ordered.finish().isAfter(lowerBound);
  }

  List<Handover> handovers() {
    return handovers;
  }

  /** The network in the order of the crews; its early dates are the planned ones. */
  Timetable ordered() {
    return ordered;
  }

  /** The crews that go straight from one task to another. */
  List<String> crewsBetween(String before, String after) {
    return handovers.stream()
        .filter(h -> h.before().equals(before) && h.after().equals(after))
        .map(Handover::crew)
        .toList();
  }

  /**
   * Planned dates of the same order of work with other tasks in it: later not-before dates, say.
   *
   * @param changed tasks of this network, changed
   */
  Timetable with(List<Activity> changed) {
    var n = ordered.network();
    for (var a : changed) n = n.with(a);
    return Passes.of(n);
  }

  private static Timetable ordered(
      Network network, CrewSchedule schedule, List<Handover> handovers) {
    if (handovers.isEmpty()) return schedule.timetable();
    var withOrder = network.withLinks(Handing.links(network, handovers));
    var times = Passes.of(withOrder);
    // The sequencer puts every task where its links and crews first allow. Should one be left
    // later than that, its planned start holds it.
    var held = withOrder;
    for (var t : times.timings()) {
      var planned = schedule.planned(t.id()).start();
      if (t.early().start().isBefore(planned)) {
        held = held.with(held.get(t.id()).notBefore(planned));
      }
    }
    return held == withOrder ? times : Passes.of(held);
  }

  /** Whether the links hold the whole order; not where a link of the network runs against it. */
  boolean holdsOrder() {
    return Handing.links(network(), handovers).size()
        == network().links().size() + Handing.pairs(network(), handovers).size();
  }
}

package cornerpost.plan;

import cornerpost.plan.Replanning.Choice;
import cornerpost.plan.Replanning.Idle;
import cornerpost.plan.Replanning.Move;
import cornerpost.plan.Replanning.Resequencing;
import cornerpost.plan.Replanning.TaskDays;
import cornerpost.schedule.Activity;
import cornerpost.schedule.Dates;
import cornerpost.schedule.FewestChanges;
import cornerpost.schedule.Network;
import cornerpost.schedule.Timetable;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Other orders of the work once something comes late.
 *
 * <p>Three plans are set beside each other: the bookings as they stood without the delays; the same
 * order of every crew with the delays in it; and another order. Nothing is moved that has begun; a
 * firm booking starts on no earlier day than it is booked for and is put off by nothing but its own
 * links; and what stands behind a hold point that is not passed, the inspection itself too, is done
 * no sooner than it was booked, for nobody can promise that the inspection is passed.
 */
final class Resequencer {
  /** Far more than houses of every kind tried needed for the fewest changes. */
  private static final long EFFORT = 4_000;

  private final Delays planning;
  private final WorkPlan work;
  private final Sequence before;
  private final Sequence kept;
  private final Network late;
  private final Map<String, LocalDate> booked;
  private final Set<String> behind;
  private final Set<String> waitsForEvent;
  private final LocalDate status;

  /**
   * @param before the plan without delays
   * @param delays those that can still move something
   * @param plan the plan as it stands, with the delays
   */
  Resequencer(
      Delays planning,
      WorkPlan work,
      Sequence before,
      List<Delay> delays,
      Map<String, LocalDate> booked,
      LocalDate status) {
    this.planning = planning;
    this.work = work;
    this.before = before;
    this.booked = booked;
    this.status = status;
    var changed = Delays.putOff(delays, before);
    var inOrder = before.inCrewOrder().keeping(changed);
    // Where a link of the network runs against the order of a crew, there is none to keep.
    kept = inOrder.holdsOrder() ? inOrder : planning.plain(inOrder.network());
    late = kept.network();
    behind = behindHoldPoints();
    waitsForEvent = new HashSet<>();
    delays.forEach(d -> addFollowers(d.task(), waitsForEvent));
  }

  /**
   * @param plan the plan as it stands, with the delays
   */
  Resequencing all(Sequence plan) {
    var present = Delays.goal(kept.ordered());
    var soonest = soonest(plan, present);
    var fewest = fewest(present, soonest);
    if (fewest.moveIn().isBefore(soonest.moveIn())) soonest = fewest; // a better order, by chance
    soonest = soonest.withAtLeast(fewest.atLeast()); // what ends no later than it ends in time
    return new Resequencing(present, pulledForward(), idle(), soonest, fewest);
  }

  private Set<String> behindHoldPoints() {
    var found = new HashSet<String>();
    for (var t : work.tasks()) {
      boolean passed = late.get(t.id()).progress().finish().isPresent();
      if (t.kind() == WorkTask.Kind.INSPECTION && !passed) addFollowers(t.id(), found);
    }
    return found;
  }

  private void addFollowers(String id, Set<String> found) {
    if (!found.add(id)) return;
    for (var l : late.links()) {
      if (l.before().equals(id)) addFollowers(l.after(), found);
    }
  }

  private boolean open(String id) {
    return late.get(id).progress().start().isEmpty();
  }

  // ---- the soonest --------------------------------------------------------------------------

  /** What stands behind a hold point is done no sooner than it was booked. */
  private Network holding() {
    var holding = late;
    for (var id : behind) {
      if (open(id)) holding = holding.with(notBefore(holding.get(id), before.planned(id).start()));
    }
    return holding;
  }

  private Choice soonest(Sequence plan, LocalDate present) {
    var days = days(kept);
    var goal = present;
    for (var s : List.of(plan, planning.plain(holding()))) {
      if (Delays.goal(s.ordered()).isBefore(goal) && allowed(days(s))) {
        days = days(s);
        goal = Delays.goal(s.ordered());
      }
    }
    return choice(days, goal);
  }

  private boolean allowed(Map<String, Dates> days) {
    return behind.stream()
        .filter(this::open)
        .noneMatch(id -> days.get(id).start().isBefore(before.planned(id).start()));
  }

  private static Activity notBefore(Activity a, LocalDateTime moment) {
    return a.notBefore().filter(moment::isBefore).isPresent() ? a : a.notBefore(moment);
  }

  private static Map<String, Dates> days(Sequence s) {
    var days = new HashMap<String, Dates>();
    for (var a : s.network().activities()) days.put(a.id(), s.planned(a.id()));
    return days;
  }

  // ---- the fewest bookings changed ----------------------------------------------------------

  /**
   * As many tasks as possible keep their day, and move-in is no later than in the present order.
   * Where the search finds nothing better within its effort, one of the other orders is it.
   */
  private Choice fewest(LocalDate present, Choice soonest) {
    var alone = kept.alone();
    var bookings = new ArrayList<FewestChanges.Booking>();
    var firm = new HashSet<String>();
    for (var t : work.tasks()) {
      if (!isBooking(t) || !open(t.id())) continue;
      var day = before.planned(t.id()).firstDay();
      bookings.add(new FewestChanges.Booking(t.id(), day));
      boolean canBeKept = !alone.timing(t.id()).early().firstDay().isAfter(day);
      if (booked.containsKey(t.id()) && canBeKept) firm.add(t.id());
    }
    var goal = Delays.goalTask(kept.ordered());
    var found =
        FewestChanges.search(
            holding(), bookings, firm, Map.of(goal, present), kept.ordered().finish(), EFFORT);
    int atLeast = Math.max(found.atLeast(), changed(days(alone)));
    var best = choice(days(kept), present);
    if (soonest.changed() < best.changed()) best = soonest;
    if (found.dates().isPresent() && found.changed() < best.changed()) {
      var days = new HashMap<String, Dates>();
      var activities = late.activities();
      for (int i = 0; i < activities.size(); i++) {
        days.put(activities.get(i).id(), found.dates().get().get(i));
      }
      best = choice(days, moveIn(days));
    }
    return best.withAtLeast(Math.min(best.changed(), atLeast));
  }

  private LocalDate moveIn(Map<String, Dates> days) {
    return Optional.ofNullable(days.get(ProgrammeMaker.MOVE_IN))
        .map(Dates::lastDay)
        .orElseGet(
            () -> days.values().stream().map(Dates::lastDay).max(LocalDate::compareTo).get());
  }

  private static Map<String, Dates> days(Timetable times) {
    var days = new HashMap<String, Dates>();
    for (var t : times.timings()) days.put(t.id(), t.early());
    return days;
  }

  // ---- moves --------------------------------------------------------------------------------

  private Choice choice(Map<String, Dates> days, LocalDate moveIn) {
    var planned = new ArrayList<TaskDays>();
    for (var t : work.tasks()) {
      var d = days.get(t.id());
      planned.add(new TaskDays(t.id(), d.start(), d.finish()));
    }
    return new Choice(moveIn, changed(days), changed(days), moves(work, before, days), planned);
  }

  private int changed(Map<String, Dates> days) {
    return (int)
        work.tasks().stream()
            .filter(t -> isBooking(t) && open(t.id()))
            .filter(t -> !days.get(t.id()).firstDay().equals(before.planned(t.id()).firstDay()))
            .count();
  }

  /** People come for it: a crew's task or an inspection. */
  private static boolean isBooking(WorkTask t) {
    return t.trade().isPresent() || !t.demands().isEmpty() || t.kind() == WorkTask.Kind.INSPECTION;
  }

  /** What gets another first day, in the order of the new days. */
  static List<Move> moves(WorkPlan work, Sequence before, Map<String, Dates> days) {
    var moves = new ArrayList<Move>();
    for (var t : work.tasks()) {
      var from = before.planned(t.id()).firstDay();
      var to = days.get(t.id()).firstDay();
      if (from.equals(to)) continue;
      moves.add(move(t, from, to, BigDecimal.ZERO));
    }
    moves.sort(Comparator.comparing(Move::to).thenComparing(Move::id));
    return moves;
  }

  static Move move(WorkTask t, LocalDate from, LocalDate to, BigDecimal floatUsed) {
    return new Move(
        t.id(), t.name(), who(t), from, to, (int) ChronoUnit.DAYS.between(from, to), floatUsed);
  }

  static String who(WorkTask t) {
    if (!t.demands().isEmpty()) return String.join(", ", new TreeMap<>(t.demands()).keySet());
    return t.trade().map(x -> x.label()).orElse("");
  }

  /** Each by itself: the first day on which its links allow it and its crew has nothing else. */
  private List<Move> pulledForward() {
    var alone = kept.alone();
    var moves = new ArrayList<Move>();
    for (var t : work.tasks()) {
      var a = late.get(t.id());
      if (!open(t.id()) || a.demands().isEmpty()) continue;
      if (behind.contains(t.id()) || waitsForEvent.contains(t.id()) || booked.containsKey(t.id())) {
        continue;
      }
      var planned = kept.planned(t.id());
      var calendar = late.calendarOf(t.id());
      var at = alone.timing(t.id()).early().start();
      while (at.isBefore(planned.start())) {
        var end = a.isElapsed() ? at.plusMinutes(a.minutes()) : calendar.plus(at, a.minutes());
        var busy = busyUntil(a, at, end);
        if (busy == null) {
          var to = at.toLocalDate();
          if (to.isBefore(planned.firstDay())) {
            moves.add(move(t, planned.firstDay(), to, BigDecimal.ZERO));
          }
          break;
        }
        at = a.isElapsed() ? busy : calendar.nextStart(busy);
      }
    }
    moves.sort(Comparator.comparing(Move::to).thenComparing(Move::id));
    return moves;
  }

  /** When the first of the tasks ends that take its crew in between; null if the crew is free. */
  private LocalDateTime busyUntil(Activity a, LocalDateTime from, LocalDateTime to) {
    LocalDateTime until = null;
    for (var crew : late.crews()) {
      if (!a.demands().containsKey(crew.name())) continue;
      int asked = a.demands().get(crew.name());
      for (var b : late.activities()) {
        if (b.id().equals(a.id()) || !b.demands().containsKey(crew.name())) continue;
        if (b.progress().finish().isPresent()) continue;
        var d = kept.planned(b.id());
        if (!d.start().isBefore(to) || !d.finish().isAfter(from)) continue;
        asked += b.demands().get(crew.name()); // as if all at once: on the safe side
        if (until == null || d.finish().isBefore(until)) until = d.finish();
      }
      if (asked > crew.available()) return until;
      until = null;
    }
    return null;
  }

  /** Days on which a crew was to work and has nothing now, with work still to come. */
  private List<Idle> idle() {
    var idle = new ArrayList<Idle>();
    for (var crew : late.crews()) {
      var tasks =
          late.activities().stream()
              .filter(a -> a.demands().containsKey(crew.name()))
              .filter(a -> a.progress().finish().isEmpty() && a.minutes() > 0)
              .toList();
      if (tasks.isEmpty()) continue;
      var last =
          tasks.stream()
              .map(a -> kept.planned(a.id()).lastDay())
              .max(Comparator.naturalOrder())
              .orElseThrow();
      LocalDate from = null;
      LocalDate to = null;
      int number = 0;
      var was = new java.util.LinkedHashSet<String>();
      for (var day = status; !day.isAfter(last); day = day.plusDays(1)) {
        var old = at(tasks, before, day);
        boolean works = !at(tasks, kept, day).isEmpty();
        if (!old.isEmpty() && !works) {
          if (from == null) from = day;
          to = day;
          number++;
          old.forEach(a -> was.add(a.name()));
        } else if (works && from != null) {
          idle.add(new Idle(crew.name(), from, to, number, String.join(", ", was)));
          from = null;
          number = 0;
          was.clear();
        }
      }
      if (from != null) {
        idle.add(new Idle(crew.name(), from, to, number, String.join(", ", was)));
      }
    }
    idle.sort(Comparator.comparing(Idle::from).thenComparing(Idle::crew));
    return idle;
  }

  private List<Activity> at(List<Activity> tasks, Sequence s, LocalDate day) {
    return tasks.stream()
        .filter(
            a -> {
              var d = s.planned(a.id());
              return !d.firstDay().isAfter(day)
                  && !d.lastDay().isBefore(day)
                  && (a.isElapsed() || late.calendarOf(a.id()).isWorkingDay(day));
            })
        .toList();
  }
}

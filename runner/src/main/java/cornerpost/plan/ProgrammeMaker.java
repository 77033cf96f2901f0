package cornerpost.plan;

import cornerpost.schedule.Finding;
import cornerpost.schedule.Network;
import cornerpost.schedule.NetworkHealth;
import cornerpost.schedule.PathBetween;
import cornerpost.schedule.Timetable;
import cornerpost.schedule.Timing;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.takeoff.BuildTask;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts what the schedule engine found into the words of the plan. */
final class ProgrammeMaker {
  static final String DELIVERY = BuildTask.DELIVERY.id();
  static final String MOVE_IN = BuildTask.MOVE_IN.id();

  private final Scope scope;
  private final WorkPlan work;
  private final Sequence sequence;
  private final WaitWords words;
  private final Network network;
  private final Timetable alone;
  private final Map<String, ProgressEntry> noted;

  private ProgrammeMaker(Scope scope, WorkPlan work, Sequence sequence, WaitWords words) {
    this.scope = scope;
    this.work = work;
    this.sequence = sequence;
    this.words = words;
    network = sequence.network();
    alone = sequence.alone();
    noted =
        ProgressMap.entries(scope, work, network.status().orElse(network.start()).toLocalDate());
  }

  /**
   * The dated programme.
   *
   * @param deliveryFloat calendar days by which delivery may slip before move-in moves
   * @param ends of the path that is asked for; empty where nobody asks
   */
  static Programme of(
      Scope scope,
      WorkPlan work,
      Sequence sequence,
      WaitWords words,
      Optional<Integer> deliveryFloat,
      Optional<PathChoice> ends) {
    return new ProgrammeMaker(scope, work, sequence, words).make(deliveryFloat, ends);
  }

  private Programme make(Optional<Integer> deliveryFloat, Optional<PathChoice> ends) {
    var path = drivingPath();
    var drives = driving(path);
    var order = new ArrayList<DatedTask>();
    for (var t : work.tasks()) order.add(dated(t, drives.contains(t.id())));
    order.sort(Comparator.comparing(DatedTask::start)); // a stable sort: then as in the build
    var startDate = scope.project().date(ProjectQuestions.START);
    var start = order.stream().map(DatedTask::firstDay).min(LocalDate::compareTo).orElse(startDate);
    var finish = order.stream().map(DatedTask::lastDay).max(LocalDate::compareTo).orElse(startDate);
    var calendar = network.defaultCalendar();
    long bound = calendar.between(network.start(), sequence.lowerBound());
    long length = calendar.between(network.start(), sequence.ordered().finish());
    long gap = sequence.proved() ? 0 : Math.max(0, length - bound);
    return new Programme(
        order,
        start,
        finish,
        day(MOVE_IN).orElse(finish),
        day(DELIVERY),
        Days.of(length, calendar.dayMinutes()),
        sequence.crewLimited(),
        Days.of(length - gap, calendar.dayMinutes()),
        Days.of(gap, calendar.dayMinutes()),
        sequence.proved(),
        alone.longestPath(),
        path,
        deliveryToMoveIn(),
        deliveryFloat,
        CrewLoad.of(sequence),
        findings(),
        ends.map(e -> PathMaker.of(e, sequence, words, order, path)).orElse(EventPath.NONE),
        SlippageMaker.of(sequence.ordered()));
  }

  /**
   * Published checks of a network's make-up, as advice on the tasks that the owner drew up. Where
   * the rest is generated the crews' order counts among the links, and of each finding only the
   * owner's tasks and links are told.
   */
  private List<Programme.NetworkFinding> findings() {
    boolean all = !scope.generatesTasks();
    if (!all && scope.ownTasks().isEmpty()) return List.of();
    var own = new HashSet<String>();
    for (var t : scope.ownTasks()) own.add(t.id());
    var told = new ArrayList<Programme.NetworkFinding>();
    for (var f : NetworkHealth.of(all ? alone : sequence.ordered())) {
      var items = all ? f.items() : f.items().stream().filter(i -> ofOwner(i, own)).toList();
      if (items.isEmpty()) continue;
      boolean note = f.severity() == Finding.Severity.NOTE;
      told.add(new Programme.NetworkFinding(f.check(), note, f.message(), items));
    }
    return told;
  }

  /** A task of the owner's, or a link from or to one. */
  private static boolean ofOwner(String item, Set<String> own) {
    return Arrays.stream(item.split(" -> ")).anyMatch(own::contains);
  }

  private Optional<LocalDate> day(String id) {
    return network.find(id).map(a -> sequence.planned(id).lastDay());
  }

  private DatedTask dated(WorkTask t, boolean drivesMoveIn) {
    Timing timing = alone.timing(t.id());
    var dates = sequence.planned(t.id());
    var progress = timing.activity().progress();
    boolean done = progress.finish().isPresent();
    boolean started = progress.start().isPresent();
    var why = words.of(t.id());
    return new DatedTask(
        t,
        dates.start(),
        dates.finish(),
        entered(t.id(), true).orElse(dates.firstDay()),
        entered(t.id(), false)
            .orElse(started && !done ? notPast(dates.lastDay()) : dates.lastDay()),
        Days.of(t.minutes(), timing.dayMinutes()),
        timing.early().start(),
        timing.early().finish(),
        timing.late().start(),
        timing.late().finish(),
        timing.early().firstDay(),
        timing.early().lastDay(),
        timing.late().firstDay(),
        timing.late().lastDay(),
        Days.of(timing.totalFloatMinutes(), timing.dayMinutes()),
        Days.of(timing.freeFloatMinutes(), timing.dayMinutes()),
        drivesMoveIn,
        timing.critical(),
        done,
        started,
        why.text(),
        why.ids());
  }

  /** What is not noted as done ends on the status date at the earliest, its time over or not. */
  private LocalDate notPast(LocalDate day) {
    var status = network.status().orElse(network.start()).toLocalDate();
    return day.isBefore(status) ? status : day;
  }

  /** The day the owner noted as the start, or as the finish. */
  private Optional<LocalDate> entered(String id, boolean start) {
    return Optional.ofNullable(noted.get(id))
        .flatMap(
            p -> {
              boolean moment = network.get(id).isMilestone();
              return moment || !start ? p.actualFinish() : p.actualStart();
            });
  }

  // ---- paths ------------------------------------------------------------------------------

  /** The task the plan is for: move-in, or the last of the longest path. */
  private Optional<String> goal() {
    if (network.find(MOVE_IN).isPresent()) return Optional.of(MOVE_IN);
    var path = sequence.ordered().longestPath();
    return path.isEmpty() ? Optional.empty() : Optional.of(path.get(path.size() - 1));
  }

  /** One chain, each task driven by the one before; ties by the driver with least float. */
  private List<String> drivingPath() {
    var times = sequence.ordered();
    var longest = times.longestPath();
    var goal = goal();
    if (goal.isEmpty() || longest.get(longest.size() - 1).equals(goal.get())) return longest;
    var chain = new ArrayDeque<String>();
    var at = goal;
    while (at.isPresent()) {
      chain.addFirst(at.get());
      at =
          times.timing(at.get()).drivers().stream()
              .map(l -> times.timing(l.before()))
              .min(Comparator.comparingLong(Timing::totalFloatMinutes))
              .map(Timing::id);
    }
    return List.copyOf(chain);
  }

  /** Every task from which a chain of driving waits leads to the goal. */
  private Set<String> driving(List<String> path) {
    var found = new HashSet<String>();
    var next = new ArrayDeque<String>(path);
    while (!next.isEmpty()) {
      var id = next.remove();
      if (found.add(id)) {
        sequence.ordered().timing(id).drivers().forEach(l -> next.add(l.before()));
      }
    }
    return found;
  }

  private List<String> deliveryToMoveIn() {
    if (network.find(DELIVERY).isEmpty() || network.find(MOVE_IN).isEmpty()) return List.of();
    return sequence
        .ordered()
        .longestPath(DELIVERY, MOVE_IN)
        .map(PathBetween::ids)
        .orElse(List.of());
  }
}

package cornerpost.plan;

import cornerpost.schedule.Progress;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.OwnerSheet;
import cornerpost.takeoff.BuildTask;
import cornerpost.work.WorkLink;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkPlanner;
import cornerpost.work.WorkTask;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What goes on without anybody noting it. Concrete poured on Thursday cures since Thursday, and a
 * week later it has cured. A permit asked for is under review, and over only when that is noted or
 * what waits for it has begun. The start is past once anything has begun, and the shell is
 * watertight once all that makes it so is done.
 *
 * <p>What the owner noted counts before any of this. A wait that waits for anything but the finish
 * of done work, or with a lag, is left as it is.
 */
final class PassingTime {
  private final WorkPlan work;
  private final LocalDateTime now;
  private final Problems problems;
  private final Map<String, Progress> known;
  private final Map<String, List<WorkLink>> into = new HashMap<>();
  private final Map<String, List<WorkLink>> from = new HashMap<>();

  private PassingTime(
      WorkPlan work, LocalDateTime now, Map<String, Progress> noted, Problems problems) {
    this.work = work;
    this.now = now;
    this.problems = problems;
    known = noted;
    for (var l : work.links()) {
      into.computeIfAbsent(l.after(), k -> new ArrayList<>()).add(l);
      from.computeIfAbsent(l.before(), k -> new ArrayList<>()).add(l);
    }
  }

  /**
   * Adds to what is noted what follows from it by itself.
   *
   * @param now up to when things can have happened
   */
  static void addTo(
      Map<String, Progress> noted, WorkPlan work, LocalDateTime now, Problems problems) {
    if (!noted.isEmpty()) new PassingTime(work, now, noted, problems).add();
  }

  private void add() {
    begin();
    for (boolean more = true; more; ) {
      more = false;
      for (var t : work.tasks()) {
        if (known.containsKey(t.id())) continue;
        var progress = byItself(t);
        progress.ifPresent(p -> known.put(t.id(), p));
        more |= progress.isPresent();
      }
    }
  }

  private void begin() {
    if (work.task(WorkPlanner.START).isEmpty() || known.containsKey(WorkPlanner.START)) return;
    known.values().stream()
        .flatMap(p -> p.start().stream())
        .min(LocalDateTime::compareTo)
        .ifPresent(first -> known.put(WorkPlanner.START, Progress.finished(first, first)));
  }

  private Optional<Progress> byItself(WorkTask t) {
    boolean watertight = t.id().equals(BuildTask.WATERTIGHT.id());
    if (t.kind() != WorkTask.Kind.WAIT && !watertight) return Optional.empty();
    return since(t).map(then -> watertight ? Progress.finished(then, then) : running(t, then));
  }

  private Progress running(WorkTask t, LocalDateTime then) {
    var over = then.plusMinutes(t.minutes());
    boolean byItself = BuildTask.find(t.id()).filter(BuildTask::endsByItself).isPresent();
    if (byItself && !over.isAfter(now)) return Progress.finished(then, over);
    var next = workedOn(t).filter(n -> !n.isBefore(then));
    if (!byItself && next.isPresent()) return Progress.finished(then, next.get());
    if (over.isAfter(now)) return Progress.started(then);
    problems.remark(
        OwnerSheet.PROGRESS,
        "",
        "task '"
            + t.id()
            + "' has had its "
            + Days.shown(t.minutes(), Duration.ofDays(1).toMinutes())
            + " days since "
            + then.toLocalDate()
            + " and is not noted as finished",
        "planned to end on the status date; note its finish when the answer is there");
    return Progress.started(then);
  }

  /** When the first of what waits for it began. */
  private Optional<LocalDateTime> workedOn(WorkTask t) {
    return from.getOrDefault(t.id(), List.of()).stream()
        .filter(l -> l.relation() == LinkRelation.FINISH_TO_START)
        .flatMap(l -> Optional.ofNullable(known.get(l.after())).stream())
        .flatMap(p -> p.start().stream())
        .min(LocalDateTime::compareTo);
  }

  /** The latest finish of what it waits for, if all of that is done. */
  private Optional<LocalDateTime> since(WorkTask t) {
    var latest = t.notBefore().map(d -> d.atStartOfDay());
    var links = into.getOrDefault(t.id(), List.of());
    if (links.isEmpty()) return Optional.empty();
    for (var l : links) {
      var finish = Optional.ofNullable(known.get(l.before())).flatMap(Progress::finish);
      if (l.relation() != LinkRelation.FINISH_TO_START || l.lagMinutes() != 0 || finish.isEmpty())
        return Optional.empty();
      if (latest.isEmpty() || latest.get().isBefore(finish.get())) latest = finish;
    }
    return latest.filter(then -> !then.isAfter(now));
  }
}

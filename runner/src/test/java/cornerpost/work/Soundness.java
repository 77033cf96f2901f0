package cornerpost.work;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.scope.LinkRelation;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a generated network must satisfy: rules of the checks for schedules of the US Department of
 * Defense (DCMA-EA PAM 200.1, October 2012, section 4: logic, leads, lags, relations, hard
 * constraints, long durations) and of GAO-16-89G (December 2015), best practices 2 and 6.
 */
final class Soundness {
  private static final LocalDateTime START = LocalDateTime.of(2027, 3, 1, 8, 0);

  private Soundness() {}

  static void check(WorkPlan plan) {
    Engine.dates(plan, START); // refuses loops, unknown ids, crews that are asked for too many
    var ids = plan.tasks().stream().map(WorkTask::id).toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(after(plan, "start")).containsAll(ids);
    assertThat(before(plan, "move-in")).containsAll(ids);
    for (var t : plan.tasks()) {
      var in = plan.links().stream().filter(l -> l.after().equals(t.id())).toList();
      var out = plan.links().stream().filter(l -> l.before().equals(t.id())).toList();
      if (t.id().equals("start")) assertThat(in).isEmpty();
      else {
        assertThat(in)
            .as(t.id() + " has what drives its start")
            .anyMatch(
                l ->
                    l.relation() == LinkRelation.FINISH_TO_START
                        || l.relation() == LinkRelation.START_TO_START);
      }
      if (t.id().equals("move-in")) assertThat(out).isEmpty();
      else {
        assertThat(out)
            .as(t.id() + " has what its finish drives")
            .anyMatch(
                l ->
                    l.relation() == LinkRelation.FINISH_TO_START
                        || l.relation() == LinkRelation.FINISH_TO_FINISH);
      }
      if (t.kind() == WorkTask.Kind.MILESTONE) assertThat(t.minutes()).isZero();
      else assertThat(t.minutes()).as(t.id()).isPositive();
      boolean waits = t.kind() == WorkTask.Kind.WAIT || t.kind() == WorkTask.Kind.ORDER;
      if (!waits) assertThat(t.minutes()).as(t.id()).isLessThanOrEqualTo(44 * 8 * 60);
      assertThat(t.optimisticMinutes()).isLessThanOrEqualTo(t.minutes());
      assertThat(t.pessimisticMinutes()).isGreaterThanOrEqualTo(t.minutes());
      assertThat(t.notBefore()).isEmpty();
      if (!t.id().equals("start") && t.kind() != WorkTask.Kind.MILESTONE) {
        assertThat(t.why()).as(t.id()).isNotBlank();
      }
    }
    for (var l : plan.links()) {
      assertThat(l.lagMinutes()).isNotNegative();
      assertThat(l.why()).isNotBlank();
    }
  }

  /** All tasks that chains of links lead to, the first one included. */
  static Set<String> after(WorkPlan plan, String id) {
    return reached(plan, id, WorkLink::before, WorkLink::after);
  }

  /** All tasks from which chains of links lead there, the last one included. */
  static Set<String> before(WorkPlan plan, String id) {
    return reached(plan, id, WorkLink::after, WorkLink::before);
  }

  private static Set<String> reached(
      WorkPlan plan, String from, Function<WorkLink, String> one, Function<WorkLink, String> next) {
    var further = plan.links().stream().collect(Collectors.groupingBy(one));
    var open = new ArrayDeque<>(List.of(from));
    var seen = new HashSet<String>();
    while (!open.isEmpty()) {
      var id = open.pop();
      if (seen.add(id)) further.getOrDefault(id, List.of()).forEach(l -> open.add(next.apply(l)));
    }
    return seen;
  }
}

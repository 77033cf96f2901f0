package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.takeoff.Line;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The ids of all that a house is made of, by what each says and not by its id: lines, cost lines
 * and tasks that say the same before and after a change, once each, are the same work.
 */
public record UnchangedWork(Map<String, String> ids, int all) {

  /** Of one plan: quantities, bill and tasks. */
  public static UnchangedWork of(List<Line> lines, Estimate estimate, WorkPlan work) {
    var ids = new HashMap<String, String>();
    var twice = new HashSet<String>();
    put("line", lines, UnchangedWork::said, Line::id, ids, twice);
    put("cost", estimate.lines(), UnchangedWork::said, CostLine::id, ids, twice);
    put("task", work.tasks(), UnchangedWork::said, WorkTask::id, ids, twice);
    ids.keySet().removeAll(twice);
    return new UnchangedWork(
        Map.copyOf(ids), lines.size() + estimate.lines().size() + work.tasks().size());
  }

  /** Fails where the same work has another id; most of the work must be the same. */
  public static void keepsItsIds(UnchangedWork before, UnchangedWork after, String change) {
    int common = 0;
    for (var e : before.ids.entrySet()) {
      var found = after.ids.get(e.getKey());
      if (found == null) continue;
      common++;
      assertThat(found).as("%s, %s", e.getKey(), change).isEqualTo(e.getValue());
    }
    assertThat(common).as(change).isGreaterThan(before.all / 2);
  }

  private static <T> void put(
      String kind,
      List<T> all,
      Function<T, String> said,
      Function<T, String> id,
      Map<String, String> ids,
      HashSet<String> twice) {
    for (var t : all) {
      var key = kind + "|" + said.apply(t);
      if (ids.put(key, id.apply(t)) != null) twice.add(key);
    }
  }

  private static String said(Line l) {
    return l.stage() + "|" + l.description() + "|" + l.quantity().inWords() + "|" + l.because();
  }

  private static String said(CostLine l) {
    return String.join(
        "|",
        l.stage().label(),
        l.kind().name(),
        l.description(),
        l.quantity().inWords(),
        l.unit().toString(),
        l.party().toString(),
        l.item().orElse(""));
  }

  private static String said(WorkTask t) {
    return t.name() + "|" + t.stage() + "|" + t.kind() + "|" + t.party();
  }
}

package cornerpost.work;

import cornerpost.price.OwnTaskStage;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.OwnTask;
import cornerpost.scope.Scope;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The tasks and links that the owner adds. */
final class OwnNetwork {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
  private static final BigDecimal ELAPSED_DAY = BigDecimal.valueOf(24 * 60);

  private final Scope scope;
  private final CrewBook crews;
  private final Faults faults;

  OwnNetwork(Scope scope, CrewBook crews, Faults faults) {
    this.scope = scope;
    this.crews = crews;
    this.faults = faults;
  }

  /**
   * @param others the generated tasks, whose ids are taken
   */
  List<WorkTask> tasks(List<WorkTask> others) {
    var taken = new HashMap<String, String>();
    for (var t : others) taken.put(t.id(), "a generated task");
    var all = new ArrayList<WorkTask>();
    for (var own : scope.ownTasks()) {
      var before = taken.putIfAbsent(own.id(), own.cell());
      if (before == null) all.add(task(own));
      else {
        faults.fault(
            own.cell(), "the id '" + own.id() + "' again", "each id once; it is in " + before);
      }
    }
    return all;
  }

  private WorkTask task(OwnTask own) {
    var calendar = own.calendar().map(n -> crews.calendar(n, own.cell())).orElseGet(crews::project);
    var optimistic = own.optimistic().orElse(own.duration());
    var pessimistic = own.pessimistic().orElse(own.duration().max(optimistic));
    if (own.duration().signum() < 0) {
      faults.fault(own.cell(), "duration " + own.duration(), "nothing or more");
    }
    if (optimistic.compareTo(own.duration()) > 0 || pessimistic.compareTo(own.duration()) < 0) {
      faults.fault(
          own.cell(),
          "optimistic "
              + optimistic
              + ", duration "
              + own.duration()
              + ", pessimistic "
              + pessimistic,
          "optimistic <= duration <= pessimistic");
    }
    return new WorkTask(
        own.id(),
        own.name(),
        OwnTaskStage.of(scope, own),
        own.duration().signum() == 0 ? WorkTask.Kind.MILESTONE : WorkTask.Kind.OWN,
        Optional.empty(),
        Optional.empty(),
        Math.max(0, minutes(own.duration(), own.unit(), calendar)),
        own.unit() == DurationUnit.ELAPSED_DAYS,
        calendar,
        demands(own),
        own.notBefore(),
        own.deadline(),
        Math.max(0, minutes(optimistic, own.unit(), calendar)),
        Math.max(0, minutes(pessimistic, own.unit(), calendar)),
        0,
        false,
        "entered in " + own.cell(),
        List.of());
  }

  private long minutes(BigDecimal amount, DurationUnit unit, String calendar) {
    var each =
        switch (unit) {
          case HOURS -> SIXTY;
          case DAYS -> BigDecimal.valueOf(crews.dayMinutes(calendar));
          case ELAPSED_DAYS -> ELAPSED_DAY;
        };
    return amount.multiply(each).setScale(0, RoundingMode.HALF_UP).longValue();
  }

  private Map<String, Integer> demands(OwnTask own) {
    var demands = new TreeMap<String, Integer>();
    new TreeMap<>(own.demands())
        .forEach(
            (crew, number) -> {
              if (number == 0) return;
              var limit = crews.find(crew);
              if (limit.isEmpty()) {
                faults.fault(
                    own.cell(), number + " of crew '" + crew + "'", "a crew of sheet Crews");
              } else if (number > limit.get().available()) {
                faults.fault(
                    own.cell(),
                    number + " of crew '" + crew + "'",
                    "at most " + limit.get().available() + ", as in " + crews.cellOf(crew));
              } else {
                demands.put(limit.get().name(), number);
              }
            });
    return demands;
  }

  private static List<String> ids(List<WorkTask> tasks) {
    return tasks.stream().map(WorkTask::id).toList();
  }

  /** The links between these tasks; each end by id or by name. */
  List<WorkLink> links(List<WorkTask> tasks) {
    var index = new Index(tasks);
    var all = new ArrayList<WorkLink>();
    for (var link : scope.ownLinks()) {
      var before = index.find(link.cell(), link.before());
      var after = index.find(link.afterCell(), link.after());
      if (before.isEmpty() || after.isEmpty()) continue;
      if (ids(before).equals(ids(after))) {
        faults.fault(
            link.cell(), "'" + link.before() + "' linked to itself", "two different tasks");
        continue;
      }
      for (var b : before) {
        for (var a : after) {
          all.add(
              new WorkLink(
                  b.id(),
                  a.id(),
                  link.relation(),
                  minutes(link.lag(), link.lagUnit(), a.calendar()),
                  link.lagUnit(),
                  "the owner's link, " + link.cell()));
        }
      }
    }
    return all;
  }

  private final class Index {
    private final Map<String, List<WorkTask>> byId = new LinkedHashMap<>();
    private final Map<String, List<WorkTask>> byName = new LinkedHashMap<>();

    Index(List<WorkTask> tasks) {
      for (var t : tasks) {
        // The owner's part of mixed work goes by the name of the whole.
        var whole = t.id().endsWith(":own") ? t.id().substring(0, t.id().length() - 4) : t.id();
        byId.computeIfAbsent(t.id(), k -> new ArrayList<>()).add(t);
        if (!whole.equals(t.id())) byId.computeIfAbsent(whole, k -> new ArrayList<>()).add(t);
        byName.computeIfAbsent(key(t.name()), k -> new ArrayList<>()).add(t);
      }
    }

    private static String key(String name) {
      return name.strip().toLowerCase(java.util.Locale.ROOT);
    }

    List<WorkTask> find(String cell, String idOrName) {
      var found = byId.get(idOrName.strip());
      if (found != null) return found;
      var named = byName.getOrDefault(key(idOrName), List.of());
      if (named.isEmpty() && byId.containsKey(OrderTasks.idOf(idOrName))) {
        return byId.get(OrderTasks.idOf(idOrName));
      }
      if (named.size() == 1) {
        return byId.get(named.get(0).id());
      }
      if (named.size() > 1) {
        faults.fault(
            cell,
            "'" + idOrName + "' is the name of " + named.size() + " tasks",
            "one of their ids: " + String.join(", ", named.stream().map(WorkTask::id).toList()));
      } else if (scope.generatesTasks() && isOfTheBuild(idOrName)) {
        faults.remark(
            cell,
            "'" + idOrName + "' is not in this plan",
            "the link is kept and not used; it counts again when the task is needed");
      } else {
        faults.fault(
            cell,
            "no task '" + idOrName + "'",
            "expected the id or the name of a task of this plan" + near(idOrName));
      }
      return List.of();
    }

    private String near(String idOrName) {
      var near =
          NearIds.of(idOrName, byId.values().stream().flatMap(List::stream).distinct().toList());
      return near.isEmpty() ? "" : "; near to it: " + String.join(", ", near);
    }

    private static boolean isOfTheBuild(String idOrName) {
      return OrderTasks.idOf(idOrName).startsWith("order/")
          || Arrays.stream(BuildTask.values())
              .anyMatch(b -> b.id().equals(idOrName) || b.title().equalsIgnoreCase(idOrName));
    }
  }
}

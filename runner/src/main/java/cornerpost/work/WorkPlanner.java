package cornerpost.work;

import cornerpost.fact.Facts;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.Item;
import cornerpost.price.PriceBook;
import cornerpost.price.SupplierGroup;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Makes the network: tasks with durations and crews, links with reasons, calendars and holidays.
 * {@code docs/method-work.md} says how.
 */
public final class WorkPlanner {
  /** Id of the milestone from which all generated work starts. */
  public static final String START = "start";

  private final Scope scope;
  private final Estimate estimate;
  private final Optional<PriceBook> book;
  private final Facts facts;
  private final Faults faults = new Faults();
  private final CrewBook crews;
  private final List<WorkTask> tasks = new ArrayList<>();
  private final List<WorkLink> links = new ArrayList<>();

  private WorkPlanner(Scope scope, Estimate estimate, Optional<PriceBook> book, Facts facts) {
    this.scope = scope;
    this.estimate = estimate;
    this.book = book;
    this.facts = facts;
    this.crews = new CrewBook(scope, book, faults);
  }

  /**
   * @param plan empty if there is any fault
   */
  public record Result(Optional<WorkPlan> plan, List<Problem> problems) {
    public Result {
      problems = List.copyOf(problems);
    }
  }

  /**
   * @param book may be empty where only own tasks are planned
   */
  public static Result plan(Scope scope, Estimate estimate, Optional<PriceBook> book, Facts facts) {
    return new WorkPlanner(scope, estimate, book, facts).plan();
  }

  /** Id of the task that orders and waits for the goods of a group of suppliers. */
  public static String orderId(SupplierGroup group) {
    return OrderTasks.id(group);
  }

  /** Whether the goods take so long that the order of their kind of supplier is for them. */
  public static boolean isOrdered(Item item, Facts facts) {
    return OrderTasks.isOrdered(item, facts);
  }

  private Result plan() {
    if (scope.generatesTasks()) generate();
    var own = new OwnNetwork(scope, crews, faults);
    tasks.addAll(own.tasks(List.copyOf(tasks)));
    links.addAll(own.links(tasks));
    if (scope.generatesTasks()) {
      closeEnds();
      crews.sayUnused(tasks);
    }
    if (faults.any()) return new Result(Optional.empty(), faults.all());
    return new Result(
        Optional.of(
            new WorkPlan(
                new CostsOfTasks(tasks).with(estimate.lines()),
                links,
                crews.limits(tasks),
                crews.calendars(),
                holidays(),
                crews.project())),
        faults.all());
  }

  private void generate() {
    var present = Presence.of(scope, estimate);
    var sequence = BuildSequence.of(present, facts);
    var maker = new BuildTasks(scope, estimate, facts, crews);
    tasks.add(maker.milestone(START, "Start", Stage.PREPARATION, "the start date of the project"));
    var parts = new EnumMap<BuildTask, List<WorkTask>>(BuildTask.class);
    for (var t : present) {
      parts.put(t, maker.make(t));
      tasks.addAll(parts.get(t));
    }
    for (var tie : sequence.ties()) {
      for (var before : parts.get(tie.before())) {
        for (var after : parts.get(tie.after())) {
          if (!besideEachOther(tie, parts, before, after)) links.add(link(tie, before, after));
        }
      }
    }
    if (book.isEmpty()) return;
    boolean early =
        scope
            .project()
            .find(ProjectQuestions.ORDER_EARLY)
            .map(a -> (Boolean) a.value())
            .orElse(false);
    for (var order : new OrderTasks(estimate, book.get(), facts, sequence, present, early).make()) {
      tasks.add(order.task());
      for (var b : order.before()) {
        for (var part : parts.get(b)) {
          links.add(plain(part.id(), order.task().id(), OrderTasks.reason(b)));
        }
      }
      for (var f : order.first()) {
        for (var part : parts.get(f)) {
          links.add(plain(order.task().id(), part.id(), "its goods are on the site"));
        }
      }
    }
  }

  /**
   * Of mixed work that overlaps, each party follows its own: the owner primes what the owner cuts.
   */
  private static boolean besideEachOther(
      Tie tie, Map<BuildTask, List<WorkTask>> parts, WorkTask before, WorkTask after) {
    return tie.relation() == LinkRelation.START_TO_START
        && parts.get(tie.before()).size() == 2
        && parts.get(tie.after()).size() == 2
        && !before.party().equals(after.party());
  }

  private WorkLink link(Tie tie, WorkTask before, WorkTask after) {
    var each =
        switch (tie.lagUnit()) {
          case HOURS -> BigDecimal.valueOf(60);
          case DAYS -> BigDecimal.valueOf(crews.dayMinutes(after.calendar()));
          case ELAPSED_DAYS -> BigDecimal.valueOf(24 * 60);
        };
    return new WorkLink(
        before.id(),
        after.id(),
        tie.relation(),
        tie.lag().multiply(each).longValue(),
        tie.lagUnit(),
        tie.why());
  }

  private static WorkLink plain(String before, String after, String why) {
    return new WorkLink(before, after, LinkRelation.FINISH_TO_START, 0, DurationUnit.DAYS, why);
  }

  /** Every task is driven from the start and leads to move-in. */
  private void closeEnds() {
    for (var t : tasks) {
      if (t.id().equals(START)) continue;
      boolean driven =
          links.stream()
              .anyMatch(
                  l ->
                      l.after().equals(t.id())
                          && (l.relation() == LinkRelation.FINISH_TO_START
                              || l.relation() == LinkRelation.START_TO_START));
      if (!driven) {
        links.add(plain(START, t.id(), "it may begin with the project"));
      }
      boolean leads =
          links.stream()
              .anyMatch(
                  l ->
                      l.before().equals(t.id())
                          && (l.relation() == LinkRelation.FINISH_TO_START
                              || l.relation() == LinkRelation.FINISH_TO_FINISH));
      if (!leads && !t.id().equals(BuildTask.MOVE_IN.id())) {
        links.add(plain(t.id(), BuildTask.MOVE_IN.id(), "all is done before move-in"));
      }
    }
  }

  /** The price book's, then the owner's; the owner's name of a day is kept. */
  private List<HolidayEntry> holidays() {
    var all = new TreeMap<LocalDate, HolidayEntry>();
    book.ifPresent(b -> b.holidays().forEach(h -> all.put(h.date(), h)));
    scope.holidays().forEach(h -> all.put(h.date(), h));
    return List.copyOf(all.values());
  }

  /** Ties every cost line to one task: its own, else the last work of its stage, else the last. */
  private record CostsOfTasks(List<WorkTask> tasks) {
    List<WorkTask> with(List<CostLine> lines) {
      var byTask = new LinkedHashMap<String, List<String>>();
      for (var line : lines) {
        taskOf(line)
            .ifPresent(t -> byTask.computeIfAbsent(t, k -> new ArrayList<>()).add(line.id()));
      }
      return tasks.stream().map(t -> with(t, byTask)).toList();
    }

    private Optional<String> taskOf(CostLine line) {
      if (line.task().isPresent()) {
        var id = line.task().get();
        boolean own = line.kind() == CostLine.Kind.OWN_LABOUR && has(id + ":own");
        if (own) return Optional.of(id + ":own");
        if (has(id)) return Optional.of(id);
      }
      return last(t -> t.stage() == line.stage() && t.kind() == WorkTask.Kind.WORK)
          .or(() -> last(t -> t.id().equals(BuildTask.MOVE_IN.id())))
          .or(() -> last(t -> true));
    }

    private boolean has(String id) {
      return tasks.stream().anyMatch(t -> t.id().equals(id));
    }

    private Optional<String> last(java.util.function.Predicate<WorkTask> which) {
      return tasks.stream().filter(which).reduce((a, b) -> b).map(WorkTask::id);
    }

    private static WorkTask with(WorkTask t, Map<String, List<String>> byTask) {
      return new WorkTask(
          t.id(),
          t.name(),
          t.stage(),
          t.kind(),
          t.trade(),
          t.party(),
          t.minutes(),
          t.elapsed(),
          t.calendar(),
          t.demands(),
          t.notBefore(),
          t.deadline(),
          t.optimisticMinutes(),
          t.pessimisticMinutes(),
          t.hours(),
          t.weather(),
          t.why(),
          byTask.getOrDefault(t.id(), List.of()));
    }
  }
}

package cornerpost.plan;

import cornerpost.measure.Spoken;
import cornerpost.plan.Replanning.CrewAhead;
import cornerpost.plan.Replanning.Item;
import cornerpost.plan.Replanning.LookAhead;
import cornerpost.work.WorkLink;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The next three weeks of each crew, with what must be ready for each task. */
final class LookAheads {
  /** Days that are looked at, the status date the first of them. */
  static final int DAYS = 21;

  private static final String OTHERS = "Deliveries, inspections and waits";

  private final WorkPlan work;
  private final LineTasks tasks;
  private final List<OrderRow> orders;
  private final Map<String, LocalDate> booked;
  private final Map<String, List<WorkLink>> into = new HashMap<>();

  LookAheads(WorkPlan work, LineTasks tasks, List<OrderRow> orders, Map<String, LocalDate> booked) {
    this.work = work;
    this.tasks = tasks;
    this.orders = orders;
    this.booked = booked;
    for (var l : work.links()) into.computeIfAbsent(l.after(), k -> new ArrayList<>()).add(l);
  }

  /**
   * @param status the first day; where the work begins later, that day
   */
  LookAhead of(LocalDate status) {
    var from = status.isBefore(tasks.programme().start()) ? tasks.programme().start() : status;
    var to = from.plusDays(DAYS - 1);
    var byCrew = new TreeMap<String, List<Item>>();
    var others = new ArrayList<Item>();
    for (var t : tasks.programme().tasks()) {
      if (t.done() || t.firstDay().isAfter(to) || t.lastDay().isBefore(from)) continue;
      var item = item(t);
      var crews = crews(t.task());
      if (crews.isEmpty()) others.add(item);
      for (var c : crews) byCrew.computeIfAbsent(c, k -> new ArrayList<>()).add(item);
    }
    var all = new ArrayList<CrewAhead>();
    byCrew.forEach((crew, items) -> all.add(new CrewAhead(crew, items)));
    if (!others.isEmpty()) all.add(new CrewAhead(OTHERS, others));
    return new LookAhead(from, to, all);
  }

  private static Set<String> crews(WorkTask t) {
    if (!t.demands().isEmpty()) return new java.util.TreeSet<>(t.demands().keySet());
    return t.trade().isPresent() && t.kind() == WorkTask.Kind.WORK
        ? Set.of(t.trade().get().label())
        : Set.of();
  }

  private Item item(DatedTask t) {
    return new Item(
        t.id(),
        t.task().name(),
        t.firstDay(),
        t.lastDay(),
        t.started() ? "under way" : "to start",
        t.drivesMoveIn(),
        Optional.ofNullable(booked.get(t.id())),
        ready(t));
  }

  private List<String> ready(DatedTask t) {
    var needs = new LinkedHashMap<String, String>();
    needs(t.id(), needs, new LinkedHashSet<>());
    var ready = new ArrayList<>(needs.values());
    if (!t.started()) {
      orders.stream()
          .filter(o -> o.neededOn().equals(t.firstDay()) && o.firstTask().equals(t.id()))
          .map(o -> "on site: " + o.description())
          .distinct()
          .limit(MOST_ITEMS)
          .forEach(ready::add);
    }
    return ready;
  }

  private static String said(DatedTask t) {
    return t.task().name() + ", " + Spoken.day(t.lastDay());
  }

  private static final int MOST_ITEMS = 6;

  /** Open tasks it waits for; of a milestone what that waits for. */
  private void needs(String id, Map<String, String> needs, Set<String> seen) {
    if (!seen.add(id)) return;
    for (var l : into.getOrDefault(id, List.of())) {
      var before = tasks.task(l.before());
      if (before.isEmpty() || before.get().done()) continue;
      var b = before.get();
      switch (b.task().kind()) {
        case MILESTONE -> {
          if (b.id().equals(ProgrammeMaker.DELIVERY)) needs.put(b.id(), "delivered: " + said(b));
          if (into.containsKey(b.id())) needs(b.id(), needs, seen);
          else if (!b.firstDay().equals(tasks.programme().start())) {
            needs.put(b.id(), said(b));
          }
        }
        case ORDER -> needs.put(b.id(), "delivered: " + said(b));
        case INSPECTION -> needs.put(b.id(), "passed: " + said(b));
        case WAIT -> needs.put(b.id(), "over: " + said(b));
        case WORK, OWN -> needs.put(b.id(), "done: " + said(b));
      }
    }
  }
}

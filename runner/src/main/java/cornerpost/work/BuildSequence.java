package cornerpost.work;

import cornerpost.fact.Facts;
import cornerpost.scope.LinkRelation;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The ties between the tasks that are in the plan. A task that is not in it passes on what it waits
 * for; a plain tie that others imply is left out, so that each that stays says something.
 */
final class BuildSequence {
  private static final List<SequenceRule> RULES =
      List.of(
          new PreparationSequence(),
          new FoundationSequence(),
          new ContainerSequence(),
          new ShellSequence(),
          new RoofAndWallSequence(),
          new FramingSequence(),
          new ServicesSequence(),
          new LiningSequence(),
          new FinishesSequence(),
          new OutsideSequence(),
          new CloseOutSequence());

  private final List<Tie> ties;
  private final Map<BuildTask, List<BuildTask>> after = new EnumMap<>(BuildTask.class);

  private BuildSequence(List<Tie> ties) {
    this.ties = List.copyOf(ties);
    for (var t : ties) after.computeIfAbsent(t.before(), k -> new ArrayList<>()).add(t.after());
  }

  static BuildSequence of(Set<BuildTask> present, Facts facts) {
    var all = RULES.stream().flatMap(r -> r.ties(facts).stream()).toList();
    return new BuildSequence(reduced(contracted(all, present)));
  }

  List<Tie> ties() {
    return ties;
  }

  /** Whether {@code to} comes after {@code from}, directly or not. */
  boolean reaches(BuildTask from, BuildTask to) {
    var seen = EnumSet.noneOf(BuildTask.class);
    var open = new ArrayDeque<>(after.getOrDefault(from, List.of()));
    while (!open.isEmpty()) {
      var next = open.pop();
      if (next == to) return true;
      if (seen.add(next)) open.addAll(after.getOrDefault(next, List.of()));
    }
    return false;
  }

  /** Those of some tasks that no other of them comes before. */
  List<BuildTask> first(Set<BuildTask> tasks) {
    return tasks.stream()
        .filter(t -> tasks.stream().noneMatch(o -> o != t && reaches(o, t)))
        .toList();
  }

  private static List<Tie> contracted(List<Tie> all, Set<BuildTask> present) {
    var finishToStart = new EnumMap<BuildTask, List<Tie>>(BuildTask.class);
    var kept = new LinkedHashMap<String, Tie>();
    for (var t : all) {
      if (t.relation() == LinkRelation.FINISH_TO_START) {
        finishToStart.computeIfAbsent(t.before(), k -> new ArrayList<>()).add(t);
      }
      if (present.contains(t.before()) && present.contains(t.after())) {
        kept.putIfAbsent(t.before() + ">" + t.after() + t.relation(), t);
      }
    }
    for (var from : present) {
      var seen = EnumSet.noneOf(BuildTask.class);
      var open = new ArrayDeque<BuildTask>(List.of(from));
      while (!open.isEmpty()) {
        for (var t : finishToStart.getOrDefault(open.pop(), List.of())) {
          if (!present.contains(t.after())) {
            if (seen.add(t.after())) open.add(t.after());
          } else {
            var passedOn =
                new Tie(from, t.after(), t.relation(), BigDecimal.ZERO, t.lagUnit(), t.why());
            kept.putIfAbsent(from + ">" + t.after() + t.relation(), passedOn);
          }
        }
      }
    }
    return List.copyOf(kept.values());
  }

  /** Without ties that a chain of finish-to-start ties implies. */
  private static List<Tie> reduced(List<Tie> ties) {
    var after = new EnumMap<BuildTask, Set<BuildTask>>(BuildTask.class);
    for (var t : ties) {
      if (t.relation() == LinkRelation.FINISH_TO_START) {
        after.computeIfAbsent(t.before(), k -> EnumSet.noneOf(BuildTask.class)).add(t.after());
      }
    }
    return ties.stream()
        .filter(t -> t.isPlain() ? !implied(t, after) : !waitsElsewhere(t, ties, after))
        .toList();
  }

  /** Whether the same wait stands before a task that itself comes before this one. */
  private static boolean waitsElsewhere(
      Tie tie, List<Tie> ties, Map<BuildTask, Set<BuildTask>> after) {
    return tie.relation() == LinkRelation.FINISH_TO_START
        && ties.stream()
            .anyMatch(
                t ->
                    t.before() == tie.before()
                        && t.after() != tie.after()
                        && t.relation() == tie.relation()
                        && t.lagUnit() == tie.lagUnit()
                        && t.lag().compareTo(tie.lag()) >= 0
                        && after.getOrDefault(t.after(), Set.of()).contains(tie.after()));
  }

  private static boolean implied(Tie tie, Map<BuildTask, Set<BuildTask>> after) {
    var seen = EnumSet.noneOf(BuildTask.class);
    var open = new ArrayDeque<BuildTask>();
    for (var next : after.get(tie.before())) {
      if (next != tie.after()) open.add(next);
    }
    while (!open.isEmpty()) {
      var next = open.pop();
      if (!seen.add(next)) continue;
      var further = after.getOrDefault(next, Set.of());
      if (further.contains(tie.after())) return true;
      open.addAll(further);
    }
    return false;
  }
}

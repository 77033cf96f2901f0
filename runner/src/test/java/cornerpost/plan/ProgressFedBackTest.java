package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.scope.ProjectQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans of drawn networks, begun by chance, planned again with what they themselves show. */
class ProgressFedBackTest {
  private static final int TASKS = 14;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 150);
  }

  private static Plan planned(OwnScope scope, RunOptions options) {
    return PublishedNetworksTest.planned(scope, options);
  }

  private static OwnScope fresh(long seed) {
    return RandomOwnScopes.of(seed, TASKS, 2);
  }

  /** A day on which some of the plan lies behind and some before. */
  static LocalDate status(Plan plan, SplittableRandom random) {
    var p = plan.programme();
    long days = ChronoUnit.DAYS.between(p.start(), p.finish());
    return p.start().plusDays(random.nextLong(1, Math.max(2, days)));
  }

  /**
   * What lies behind is done, up to three days sooner or later, or not begun; part is under way.
   */
  static OwnScope begun(long seed, Plan plan, LocalDate status) {
    var random = new SplittableRandom(seed + 1_000);
    var scope = fresh(seed).project(ProjectQuestions.STATUS, status);
    for (var t : plan.programme().tasks()) {
      if (random.nextInt(5) == 0) continue;
      if (t.lastDay().isBefore(status)) {
        var finish = t.lastDay().plusDays(random.nextInt(-3, 4));
        if (finish.isAfter(status)) finish = status;
        var start = t.firstDay().isAfter(finish) ? finish : t.firstDay();
        scope.done(t.id(), start, finish);
      } else if (t.firstDay().isBefore(status)) {
        scope.started(t.id(), t.firstDay(), "" + random.nextInt(1, 6));
      }
    }
    return scope;
  }

  /** Whatever may stand in a cell: work done before it began, or in days to come. */
  static OwnScope noted(long seed, LocalDate status) {
    var random = new SplittableRandom(seed + 2_000);
    var scope = fresh(seed).project(ProjectQuestions.STATUS, status);
    for (int i = 0; i < TASKS; i++) {
      if (random.nextBoolean()) continue;
      scope.progress(
          "T" + i,
          day(random, status),
          day(random, status),
          random.nextInt(3) == 0
              ? Optional.of(BigDecimal.valueOf(random.nextInt(0, 5)))
              : Optional.empty(),
          random.nextInt(3) == 0
              ? Optional.of(BigDecimal.valueOf(random.nextInt(0, 5) * 25L, 2))
              : Optional.empty());
    }
    return scope;
  }

  private static Optional<LocalDate> day(SplittableRandom random, LocalDate status) {
    return random.nextInt(3) == 0
        ? Optional.empty()
        : Optional.of(status.plusDays(random.nextInt(-20, 5)));
  }

  /** The same network with the progress that a plan shows. */
  static OwnScope shown(long seed, OwnScope scope, Plan plan) {
    var again = fresh(seed).project(ProjectQuestions.STATUS, plan.statusDate());
    for (var t : plan.programme().tasks()) {
      if (t.done()) {
        again.done(t.id(), t.firstDay(), t.lastDay());
      } else if (t.started()) {
        var e = scope.scope().progress().stream().filter(p -> p.task().equals(t.id())).findFirst();
        boolean toCome = e.orElseThrow().actualFinish().isPresent(); // noted for a day to come
        again.progress(
            t.id(),
            Optional.of(t.firstDay()),
            Optional.empty(),
            e.orElseThrow().remaining(),
            e.orElseThrow().complete().filter(c -> !toCome || c.compareTo(BigDecimal.ONE) < 0));
      }
    }
    return again;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_a_plan_shows_as_done_and_begun_gives_the_same_plan_again(long seed) {
    var plan = planned(fresh(seed), RunOptions.NONE);
    var status = status(plan, new SplittableRandom(seed));
    for (var scope : List.of(begun(seed, plan, status), noted(seed, status))) {
      var once = planned(scope, RunOptions.NONE);
      var twice = planned(shown(seed, scope, once), RunOptions.NONE);
      assertThat(twice.programme()).isEqualTo(once.programme());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void work_that_goes_as_planned_moves_nothing(long seed) {
    var plan = planned(RandomOwnScopes.worked(seed, TASKS, 2), RunOptions.NONE);
    var status = status(plan, new SplittableRandom(seed));
    var scope = RandomOwnScopes.worked(seed, TASKS, 2).project(ProjectQuestions.STATUS, status);
    for (var t : plan.programme().tasks()) {
      if (t.lastDay().isBefore(status)) {
        scope.done(t.id(), t.firstDay(), t.lastDay());
      } else if (t.firstDay().isBefore(status)) {
        scope.progress(
            t.id(),
            Optional.of(t.firstDay()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
      }
    }
    var later = planned(scope, RunOptions.NONE);
    assertThat(later.programme().moveIn()).isBeforeOrEqualTo(plan.programme().moveIn());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void nothing_done_moves_and_nothing_to_do_lies_in_the_past(long seed) {
    var plan = planned(fresh(seed), RunOptions.NONE);
    var status = status(plan, new SplittableRandom(seed));
    var scope = begun(seed, plan, status);
    var after = planned(scope, RunOptions.NONE);
    PlanChecker.check(after);
    for (var e : scope.scope().progress()) {
      var t = after.programme().task(e.task()).orElseThrow();
      boolean milestone = t.task().minutes() == 0; // happens on the day it is finished
      var start = milestone ? e.actualFinish() : e.actualStart();
      assertThat(t.firstDay()).as(e.task()).isEqualTo(start.orElseThrow());
      e.actualFinish().ifPresent(d -> assertThat(t.lastDay()).as(e.task()).isEqualTo(d));
    }
    for (var t : after.programme().tasks()) {
      if (t.done() || t.started()) continue;
      assertThat(t.firstDay()).as(t.id()).isAfterOrEqualTo(status);
    }
    // A delay of what is still to do never makes the end sooner, and other orders keep every rule.
    var random = new SplittableRandom(seed + 3_000);
    var open = after.programme().tasks().stream().filter(t -> !t.done() && !t.started()).toList();
    if (open.isEmpty()) return;
    var event = open.get(random.nextInt(open.size())).id();
    var late =
        planned(
            scope,
            RunOptions.NONE.delaying(
                List.of(new RunOptions.DelayOption(event, random.nextInt(1, 15)))));
    assertThat(late.programme().moveIn()).isAfterOrEqualTo(after.programme().moveIn());
    PlanChecker.check(late);
    var other = late.replanning().resequencing();
    if (other.isEmpty()) return;
    for (var choice : List.of(other.get().soonest(), other.get().fewest())) {
      assertThat(choice.moveIn()).isBeforeOrEqualTo(other.get().present());
      for (var m : choice.moves()) {
        assertThat(late.programme().task(m.id()).orElseThrow().started()).as(m.id()).isFalse();
      }
      PlanChecker.check(ReplanningTest.with(late, choice));
    }
  }
}

package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.Scope;
import cornerpost.scope.ScopeEdit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The half-built example on Monday 31 May 2027, with rows of sheet Progress left away. */
class PassingTimeTest {
  private static final Scope HOUSE = Houses.withoutDelays(Houses.scope("mid-build-late-delivery"));

  private static Scope without(String... tasks) {
    var away = Set.copyOf(Arrays.asList(tasks));
    return progress(HOUSE.progress().stream().filter(e -> !away.contains(e.task())).toList());
  }

  private static Scope progress(List<ProgressEntry> rows) {
    return ScopeEdit.of(HOUSE).progress(rows).scope();
  }

  private static Plan planned(Scope scope) {
    return Planner.plan(scope, Facts.supplied(), Optional.of(Houses.book(scope)), RunOptions.NONE)
        .plan()
        .orElseThrow();
  }

  private static DatedTask task(Plan plan, String id) {
    return plan.programme().task(id).orElseThrow();
  }

  // Poured on Friday 28 May; at least 7 days at 10 C or more, ACI 318-19 26.5.3 (from memory):
  // until the same hour of Friday 4 June, whatever the day on which the plan is drawn up.
  @Test
  void concrete_cures_from_the_pour_though_nobody_notes_it() {
    var cure = task(planned(without("cure")), "cure");
    assertThat(cure.started()).isTrue();
    assertThat(cure.done()).isFalse();
    assertThat(cure.firstDay()).isEqualTo(LocalDate.of(2027, 5, 28));
    assertThat(cure.lastDay()).isEqualTo(LocalDate.of(2027, 6, 4));
    assertThat(cure.finish()).isEqualTo(cure.start().plusDays(7));
  }

  @Test
  void concrete_whose_time_is_over_has_cured() {
    var cure = task(planned(without("deck-cure")), "deck-cure");
    assertThat(cure.done()).isTrue();
    assertThat(cure.lastDay()).isEqualTo(LocalDate.of(2027, 5, 23)); // 19 May and 4 days
  }

  @Test
  void a_permit_is_over_when_what_waits_for_it_is_noted() {
    var plan = planned(without("permit-review"));
    assertThat(task(plan, "permit-review").done()).isTrue();
    assertThat(plan.problems()).noneMatch(p -> p.found().contains("permit-review"));
  }

  @Test
  void a_company_whose_time_is_over_has_not_come_and_the_plan_says_so() {
    var plan = planned(without("utility-wait"));
    var wait = task(plan, "utility-wait");
    assertThat(wait.started()).isTrue();
    assertThat(wait.done()).isFalse();
    assertThat(wait.lastDay()).isEqualTo(plan.statusDate());
    assertThat(plan.problems())
        .anySatisfy(
            p ->
                assertThat(p.found())
                    .contains("'utility-wait' has had its 56 days since 2027-03-18"));
  }

  @Test
  void the_start_is_past_once_anything_has_begun() {
    var plan = planned(without("start"));
    assertThat(task(plan, "start").done()).isTrue();
    assertThat(task(plan, "start").firstDay()).isEqualTo(LocalDate.of(2027, 3, 1));
    assertThat(plan.problems()).noneMatch(p -> p.found().contains("'start'"));
  }

  @Test
  void what_is_noted_counts_before_what_follows_by_itself() {
    var rows =
        HOUSE.progress().stream()
            .map(e -> e.task().equals("cure") ? remaining(e, "9") : e)
            .toList();
    assertThat(task(planned(progress(rows)), "cure").lastDay())
        .isEqualTo(LocalDate.of(2027, 6, 8)); // nine days from the first minute of 31 May
  }

  private static ProgressEntry remaining(ProgressEntry e, String days) {
    return new ProgressEntry(
        e.task(),
        e.actualStart(),
        Optional.empty(),
        Optional.of(new BigDecimal(days)),
        Optional.empty(),
        e.booked(),
        e.cell());
  }

  @Test
  void nothing_runs_where_nothing_is_noted() {
    var plan = planned(progress(List.of()));
    assertThat(plan.programme().tasks()).noneMatch(DatedTask::started);
  }
}

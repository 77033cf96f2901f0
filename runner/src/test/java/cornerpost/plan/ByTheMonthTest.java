package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerpost.fact.Facts;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.measure.Unit;
import cornerpost.price.CostLine;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * When rent and hire fall due. That rent and premiums are paid in advance, hire and metered use
 * when the month is over, and that hire begins when the site is opened, is common practice, no
 * source.
 */
class ByTheMonthTest {
  private static final Scope HOUSE = Houses.scope("two-bedroom-two-boxes");
  private static final Plan PLAN =
      Planner.plan(HOUSE, Facts.supplied(), Optional.of(Houses.book(HOUSE)), RunOptions.NONE)
          .plan()
          .orElseThrow();
  private static final LineTasks TASKS = new LineTasks(PLAN.work(), PLAN.programme());
  private static final ByTheMonth MONTHLY = new ByTheMonth(HOUSE, PLAN.lines(), Facts.supplied());

  private static CostLine line(String id) {
    return PLAN.estimate().lines().stream().filter(l -> l.id().equals(id)).findFirst().get();
  }

  private static LocalDate first(String task) {
    return PLAN.programme().task(task).orElseThrow().firstDay();
  }

  private static List<LocalDate> due(String line, int months) {
    return MONTHLY.budgeted(line(line), TASKS).stream()
        .limit(months)
        .map(ByTheMonth.Month::due)
        .toList();
  }

  private static List<LocalDate> months(LocalDate from, int daysBefore, int first, int number) {
    return IntStream.range(first, first + number)
        .mapToObj(k -> from.plusMonths(k).minusDays(daysBefore))
        .toList();
  }

  @Test
  void rent_is_due_in_advance_from_the_start_of_the_project() {
    var start = PLAN.programme().start();
    assertThat(due("rent", 6)).isEqualTo(months(start, 0, 0, 6));
  }

  @Test
  void cover_is_due_in_advance_from_the_day_the_site_is_opened() {
    var opened = first("site-set-up");
    assertThat(opened).isAfter(PLAN.programme().start().plusMonths(1));
    assertThat(due("time/insurance:builders-insurance-month", 4))
        .isEqualTo(months(opened, 0, 0, 4));
  }

  @ParameterizedTest
  @CsvSource({
    "time/toilet:site-toilet-month, site-set-up",
    "time/fence:site-fence-month, site-set-up",
    "time/store:site-store-month, site-set-up",
    "time/power:temporary-power-month, temporary-power"
  })
  void hire_is_due_when_its_month_is_over(String line, String task) {
    assertThat(due(line, 4)).isEqualTo(months(first(task), 1, 1, 4));
  }

  // The entry is 12 months; half of them the site is open (fact time.on-site-share).
  @ParameterizedTest
  @CsvSource({"rent, 12", "time/toilet:site-toilet-month, 6", "time/fence:site-fence-month, 6"})
  void the_months_are_those_of_the_budget_and_none_is_due_after_move_in(String line, String all) {
    var months = MONTHLY.budgeted(line(line), TASKS);
    assertThat(months.stream().map(ByTheMonth.Month::months).reduce(BigDecimal::add))
        .hasValueSatisfying(sum -> assertThat(sum).isEqualByComparingTo(all));
    assertThat(months).noneMatch(m -> m.due().isAfter(PLAN.programme().moveIn()));
  }

  // A month's prices over the mean length of a month (365.2425 / 12 days), with tax where the price
  // book asks for it: a week of delay costs a week of every hire, though it is paid for half the
  // months only.
  @Test
  void a_day_costs_a_day_of_rent_and_of_every_hire() {
    double tax = Houses.book(HOUSE).taxRate().in(Unit.ONE).doubleValue();
    // rent and cover; toilet, power, store and fence
    double month = 900 + 60 + (90 + 40 + 45 + 1.10 * 90) * (1 + tax);
    var status = PLAN.finance().status().orElseThrow();
    var byMonth =
        status.rows().stream()
            .filter(r -> r.line().treatment() == Treatment.TIME)
            .map(r -> r.line().amount())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(byMonth.multiply(status.facts().hireFactor()).doubleValue())
        .isCloseTo(month / (365.2425 / 12), within(1e-4));
  }

  private static Plan rented(String allowed) {
    var months =
        Figure.choice("Project!B9", "Time allowed", new BigDecimal(allowed), Unit.count("month"));
    var scope =
        new OwnScope()
            .task("work", "Work", "40", DurationUnit.DAYS)
            .item("work", Stage.SHELL, "5000")
            .project(ProjectQuestions.TIME_ALLOWED, months)
            .options(OptionsQuestions.RENT, new BigDecimal("1000"))
            .scope();
    return Planner.plan(scope, Facts.supplied(), Optional.empty(), RunOptions.NONE)
        .plan()
        .orElseThrow();
  }

  // By hand: forty days every day from Monday 2 November 2026 end on 11 December, when the 5,000
  // are paid. Rent of 1,000 is asked for on 2 November and 2 December. Of a budget of three months
  // the third is left at move-in; one of a month and a half has half of the second.
  @ParameterizedTest
  @CsvSource({
    "2, 1000, 6000",
    "3, 1000, 7000",
    "1.5, 1000, 5500",
    "1, 1000, 5000",
    "0.5, 500, 5000"
  })
  void rent_stands_whole_in_the_months_it_is_asked_for(String allowed, String nov, String dec) {
    var out = rented(allowed).finance().months();
    assertThat(out).hasSize(2);
    assertThat(out.get(0).out()).isEqualByComparingTo(nov);
    assertThat(out.get(1).out()).isEqualByComparingTo(dec);
  }
}

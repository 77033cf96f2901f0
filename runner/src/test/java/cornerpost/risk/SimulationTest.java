package cornerpost.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerpost.schedule.Activity;
import cornerpost.schedule.Link;
import cornerpost.schedule.Network;
import cornerpost.schedule.Progress;
import cornerpost.schedule.WorkCalendar;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SimulationTest {
  private static final LocalDateTime START = LocalDate.of(2026, 11, 2).atStartOfDay();
  private static final long WEEK = 10_000; // fine enough that rounding to minutes does not show

  /** From the network's first minute; the origin of its clock is 1970-01-01. */
  private static double weeks(double finishMinute) {
    return (finishMinute
            - java.time.Duration.between(LocalDate.EPOCH.atStartOfDay(), START).toMinutes())
        / WEEK;
  }

  private static Network network(List<Activity> tasks, List<Link> links) {
    return Network.of(tasks, links, List.of(), START, WorkCalendar.roundTheClock());
  }

  /**
   * Fourteen activities after Hillier and Lieberman, Introduction to Operations Research, ch.
   * "Project Management with PERT/CPM": three points in weeks, predecessors. From memory; the means
   * reproduce the published durations.
   */
  private static final String[][] PLANT = {
    {"A", "1", "2", "3", ""}, {"B", "2", "3.5", "8", "A"}, {"C", "6", "9", "18", "B"},
    {"D", "4", "5.5", "10", "C"}, {"E", "1", "4.5", "5", "C"}, {"F", "4", "4", "10", "E"},
    {"G", "5", "6.5", "11", "D"}, {"H", "5", "8", "17", "EG"}, {"I", "3", "7.5", "9", "C"},
    {"J", "3", "9", "9", "FI"}, {"K", "4", "4", "4", "J"}, {"L", "1", "5.5", "7", "J"},
    {"M", "1", "2", "3", "H"}, {"N", "5", "5.5", "9", "KL"},
  };

  private static RiskResult plant(int trials, long seed) {
    var tasks = new ArrayList<Activity>();
    var links = new ArrayList<Link>();
    var ranges = new LinkedHashMap<String, Range>();
    for (var row : PLANT) {
      double likely = Double.parseDouble(row[2]) * WEEK;
      tasks.add(Activity.elapsed(row[0], row[0], Math.round(likely)));
      ranges.put(
          row[0],
          new Range(Double.parseDouble(row[1]) * WEEK, likely, Double.parseDouble(row[3]) * WEEK));
      for (char before : row[4].toCharArray()) links.add(Link.of("" + before, row[0]));
    }
    return new Simulation(network(tasks, links), ranges, List.of(), 0)
        .run(trials, seed, new Simulation.Target(0, 0, 0));
  }

  /**
   * Reference simulation of the same network with triangular durations by an independent program,
   * two million trials: mean 46.236, sd 3.693, P10 41.563, P50 46.092, P80 49.386, P90 51.131.
   * Tolerance: four standard errors at 40,000 trials.
   */
  @Test
  void a_plant_of_fourteen_activities_finishes_as_an_independent_simulation_says() {
    var finish = plant(40_000, 7).finish();
    assertThat(weeks(finish.mean())).isCloseTo(46.236, within(0.075));
    assertThat(weeks(finish.quantile(0.1))).isCloseTo(41.563, within(0.12));
    assertThat(weeks(finish.quantile(0.5))).isCloseTo(46.092, within(0.1));
    assertThat(weeks(finish.quantile(0.8))).isCloseTo(49.386, within(0.12));
    assertThat(weeks(finish.quantile(0.9))).isCloseTo(51.131, within(0.15));
  }

  /** Criticality indices of the same reference simulation (triangular). */
  @ParameterizedTest(name = "{0} drives the finish in {1} of the trials")
  @CsvSource({"A, 1", "J, 0.6847", "E, 0.6478", "L, 0.4805", "D, 0.3153", "K, 0.2041", "I, 0.0368"})
  void the_share_of_trials_a_task_drives_agrees(String task, double expected) {
    assertThat(plant(40_000, 11).drivesShare().get(task)).isCloseTo(expected, within(0.012));
  }

  /** Max of two independent triangular(10, 14, 24): mean 17.67619, median 17.59648 (computed). */
  @Test
  void two_parallel_tasks_finish_later_than_either_is_expected_to() {
    var tasks =
        List.of(Activity.elapsed("a", "a", 14 * WEEK), Activity.elapsed("b", "b", 14 * WEEK));
    var range = new Range(10 * WEEK, 14 * WEEK, 24 * WEEK);
    var finish =
        new Simulation(network(tasks, List.of()), Map.of("a", range, "b", range), List.of(), 0)
            .run(50_000, 3, new Simulation.Target(0, 0, 0))
            .finish();
    assertThat(weeks(finish.mean())).isCloseTo(17.67619, within(0.05));
    assertThat(weeks(finish.quantile(0.5))).isCloseTo(17.59648, within(0.06));
    assertThat(weeks(finish.quantile(0.8))).isCloseTo(20.15550, within(0.07));
  }

  /** The triangular distribution's closed form for a = 10, m = 14, b = 24 (computed). */
  @ParameterizedTest(name = "P{0} is {1}")
  @CsvSource({
    "0.05, 11.67332",
    "0.1, 12.36643",
    "0.5, 15.63340",
    "0.8, 18.70850",
    "0.9, 20.25834",
    "0.95, 21.35425",
    "0, 10",
    "1, 24"
  })
  void the_quantile_of_a_range_is_the_closed_form(double u, double expected) {
    assertThat(new Range(10, 14, 24).quantile(u)).isCloseTo(expected, within(1e-5));
  }

  /** Standard normal table values. */
  @ParameterizedTest(name = "up to {0}: {1}")
  @CsvSource({
    "0, 0.5",
    "0.84162123, 0.8",
    "1.28155157, 0.9",
    "-1.64485363, 0.05",
    "2.57582930, 0.995",
    "-8, 6.22096057e-16"
  })
  void the_normal_probability_agrees_with_the_table(double x, double expected) {
    assertThat(Normal.probability(x)).isCloseTo(expected, within(2e-9));
  }

  /**
   * Sum of n equal terms with pairwise correlation r: sd = s sqrt(n (1 + (n - 1) r)). Normal
   * correlation 0.312869 gives rank correlation 0.3 (r = 2 sin(pi 0.3 / 6)); the linear correlation
   * of two symmetric triangles lies between the two, so the deviation between 12.17 and 12.36. The
   * estimate from percentiles of 20,000 trials adds some 2 %; independent prices would give 6.32.
   */
  @Test
  void prices_that_move_together_spread_the_total() {
    var costs = new ArrayList<CostRange>();
    double half = 2 * Math.sqrt(6); // a symmetric triangle of that half-width has sd 2
    for (int i = 0; i < 10; i++) {
      costs.add(
          new CostRange(
              "c" + i,
              "c" + i,
              new Range(100 - half, 100, 100 + half),
              Optional.empty(),
              Optional.empty()));
    }
    var together = total(costs, 0.312869);
    var apart = total(costs, 0);
    assertThat(spread(apart)).isCloseTo(6.32456, within(0.15));
    assertThat(spread(together)).isCloseTo(12.27, within(0.4));
    assertThat(together.mean()).isCloseTo(1000, within(0.3));
  }

  private static Spread total(List<CostRange> costs, double correlation) {
    return new Simulation(network(List.of(), List.of()), Map.of(), costs, correlation)
        .run(20_000, 5, new Simulation.Target(0, 0, 0))
        .cost();
  }

  /** Half the distance between the 16th and 84th percentile: the deviation of a near-normal sum. */
  private static double spread(Spread s) {
    return (s.quantile(0.841345) - s.quantile(0.158655)) / 2;
  }

  @Test
  void the_same_seed_gives_the_same_result_and_another_seed_another() {
    assertThat(plant(500, 1).finish().mean()).isEqualTo(plant(500, 1).finish().mean());
    assertThat(plant(500, 1).finish().mean()).isNotEqualTo(plant(500, 2).finish().mean());
  }

  @Test
  void what_is_paid_by_the_month_grows_with_the_time() {
    var task = Activity.elapsed("a", "a", 20 * WEEK);
    long begin = java.time.Duration.between(LocalDate.EPOCH.atStartOfDay(), START).toMinutes();
    var hire =
        new CostRange(
            "hire",
            "hire",
            Range.always(1000),
            Optional.empty(),
            Optional.of(new CostRange.Running(List.of(), 10 * WEEK)));
    var result =
        new Simulation(network(List.of(task), List.of()), Map.of(), List.of(hire), 0)
            .run(10, 1, new Simulation.Target(1500, begin + 20 * WEEK, begin));
    assertThat(result.cost().mean()).isCloseTo(2000, within(1e-9));
    assertThat(result.bothWithinPlan()).isZero();
  }

  // Ten weeks, six of them gone and two noted as left: every trial ends two weeks after the status.
  @Test
  void what_remains_of_work_under_way_is_drawn_and_not_the_whole_of_it() {
    var status = START.plusWeeks(6);
    var task = Activity.elapsed("a", "a", 10 * WEEK).with(Progress.started(START, 2 * WEEK));
    var network =
        Network.of(
            List.of(task),
            List.of(),
            List.of(),
            START,
            WorkCalendar.roundTheClock(),
            Optional.of(status));
    long end =
        java.time.Duration.between(LocalDate.EPOCH.atStartOfDay(), status.plusMinutes(2 * WEEK))
            .toMinutes();
    var result =
        new Simulation(network, Map.of(), List.of(), 0)
            .run(10, 1, new Simulation.Target(1, end, end - 8 * WEEK));
    assertThat(result.finish().mean()).isEqualTo(end);
  }

  @Test
  void three_points_that_do_not_rise_are_refused() {
    assertThatThrownBy(() -> new Range(2, 1, 3)).hasMessageContaining("must rise");
  }
}

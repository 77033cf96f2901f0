package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Laws of the passes on seeded random networks with all relations, lags and calendars, against the
 * plain method.
 */
class PassesLawsTest {
  private static final int EACH = 500;
  private static final Map<WorkCalendar, PlainPlan.Table> TABLES = PlainPlan.tables();

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {1_000, 2_000, 3_000, 4_000})
  void early_dates_are_those_of_the_plain_method(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      Network network = RandomNetworks.of(seed);
      var plain = new PlainPlan(network, TABLES);
      var timetable = Passes.of(network);
      for (int i = 0; i < plain.start.length; i++) {
        var early = timetable.timings().get(i).early();
        assertThat(PlainPlan.minute(early.start()))
            .as("start %d, seed %d", i, seed)
            .isEqualTo(plain.start[i]);
        assertThat(PlainPlan.minute(early.finish()))
            .as("finish %d, seed %d", i, seed)
            .isEqualTo(plain.finish[i]);
      }
    }
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {5_000, 6_000})
  void late_dates_keep_every_link_and_the_finish(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      Network network = RandomNetworks.of(seed);
      var timetable = Passes.of(network);
      var late =
          new PlainPlan(network, TABLES, timetable.timings().stream().map(Timing::late).toList());
      for (Link link : network.links()) {
        assertThat(late.holds(link)).as("%s, seed %d", link, seed).isTrue();
      }
      for (int i = 0; i < late.start.length; i++) {
        Timing t = timetable.timings().get(i);
        assertThat(late.startsAndLastsAsItMust(i)).as("task %d, seed %d", i, seed).isTrue();
        assertThat(t.late().finish()).isBeforeOrEqualTo(timetable.finish());
        assertThat(t.totalFloatMinutes()).isGreaterThanOrEqualTo(0);
        assertThat(t.freeFloatMinutes()).isBetween(0L, t.totalFloatMinutes());
      }
    }
  }

  /** A start held back by its whole float moves no finish; one step more does. */
  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {7_000, 8_000})
  void total_float_is_how_far_a_task_can_slip(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      Network network = RandomNetworks.of(seed);
      var timetable = Passes.of(network);
      for (Timing t : timetable.timings()) {
        assertThat(Passes.of(network.with(held(t.activity(), t.late().start()))).finish())
            .as("task %s, seed %d", t.id(), seed)
            .isEqualTo(timetable.finish());
        LocalDateTime beyond = t.late().start().plusMinutes(1);
        assertThat(Passes.of(network.with(held(t.activity(), beyond))).finish())
            .as("one minute past task %s, seed %d", t.id(), seed)
            .isAfter(timetable.finish());
      }
    }
  }

  /**
   * A milestone that may lie at both ends of a night has no working minute in between, and is left
   * out here.
   */
  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {9_000})
  void free_float_is_how_far_a_task_can_slip_alone(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      Network network = RandomNetworks.of(seed);
      var timetable = Passes.of(network);
      for (Timing t : timetable.timings()) {
        if (t.activity().isMilestone()) {
          continue;
        }
        var calendar = network.calendarOf(t.id());
        LocalDateTime s = t.early().start();
        long free = t.freeFloatMinutes();
        LocalDateTime held =
            t.activity().isElapsed()
                ? s.plusMinutes(free)
                : calendar.nextStart(calendar.plus(s, free));
        assertThat(othersMoved(network, timetable, t, held))
            .as("task %s, seed %d", t.id(), seed)
            .isFalse();
        assertThat(othersMoved(network, timetable, t, held.plusMinutes(1)))
            .as("one step past task %s, seed %d", t.id(), seed)
            .isTrue();
      }
    }
  }

  private static boolean othersMoved(
      Network network, Timetable before, Timing t, LocalDateTime held) {
    var after = Passes.of(network.with(held(t.activity(), held)));
    boolean moved = !after.finish().equals(before.finish());
    for (int i = 0; i < before.timings().size(); i++) {
      var was = before.timings().get(i);
      moved |= !was.id().equals(t.id()) && !was.early().equals(after.timings().get(i).early());
    }
    return moved;
  }

  private static Activity held(Activity a, LocalDateTime moment) {
    return a.notBefore().isPresent() && a.notBefore().get().isAfter(moment)
        ? a
        : a.notBefore(moment);
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {10_000})
  void taking_a_link_away_never_lengthens_and_a_driver_always_holds(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      Network network = RandomNetworks.of(seed);
      var timetable = Passes.of(network);
      for (int k = 0; k < network.links().size(); k++) {
        var fewer = new ArrayList<>(network.links());
        fewer.remove(k);
        assertThat(Passes.of(network.withLinks(fewer)).finish())
            .isBeforeOrEqualTo(timetable.finish());
      }
      for (Timing t : timetable.timings()) {
        var without = network.links().stream().filter(l -> !l.after().equals(t.id())).toList();
        var alone = Passes.of(network.withLinks(without)).timing(t.id());
        assertThat(t.drivers().isEmpty())
            .as("task %s is held by no link although it would start sooner, seed %d", t.id(), seed)
            .isIn(false, alone.early().start().equals(t.early().start()));
        assertThat(t.drivers().isEmpty() && !t.drivenByDate())
            .as("task %s, seed %d", t.id(), seed)
            .isFalse();
      }
    }
  }

  /** The longest path is a chain of links from a task that a date holds to the last finish. */
  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {11_000})
  void longest_path_is_a_chain_of_drivers_to_the_finish(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      var timetable = Passes.of(RandomNetworks.of(seed));
      List<String> path = timetable.longestPath();
      Timing last = timetable.timing(path.get(path.size() - 1));
      assertThat(last.early().finish()).isEqualTo(timetable.finish());
      for (int k = 1; k < path.size(); k++) {
        String before = path.get(k - 1);
        assertThat(timetable.timing(path.get(k)).drivers())
            .anyMatch(l -> l.before().equals(before));
      }
      assertThat(timetable.timing(path.get(0)).drivers()).isEmpty();
      assertThat(timetable.timing(path.get(0)).drivenByDate()).isTrue();
      assertThat(path).allMatch(id -> timetable.timing(id).drivesFinish());
    }
  }
}

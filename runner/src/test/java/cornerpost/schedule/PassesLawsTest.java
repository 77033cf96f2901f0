package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
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
  private static final int EACH = 1_000; // networks a seed; ten seeds a law
  private static final Map<WorkCalendar, PlainPlan.Table> TABLES = PlainPlan.tables();

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(
      longs = {
        100_000, 101_000, 102_000, 103_000, 104_000, 105_000, 106_000, 107_000, 108_000, 109_000
      })
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
  @ValueSource(
      longs = {
        200_000, 201_000, 202_000, 203_000, 204_000, 205_000, 206_000, 207_000, 208_000, 209_000
      })
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
  @ValueSource(
      longs = {
        300_000, 301_000, 302_000, 303_000, 304_000, 305_000, 306_000, 307_000, 308_000, 309_000
      })
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
  @ValueSource(
      longs = {
        400_000, 401_000, 402_000, 403_000, 404_000, 405_000, 406_000, 407_000, 408_000, 409_000
      })
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
        LocalDateTime sooner = s.plusMinutes(Math.floorMod(seed * 7919, 1 + minutes(s, held)));
        assertThat(othersMoved(network, timetable, t, sooner))
            .as("task %s by less than its free float, seed %d", t.id(), seed)
            .isFalse();
        assertThat(othersMoved(network, timetable, t, held.plusMinutes(1)))
            .as("one step past task %s, seed %d", t.id(), seed)
            .isTrue();
      }
    }
  }

  private static long minutes(LocalDateTime from, LocalDateTime to) {
    return Duration.between(from, to).toMinutes();
  }

  private static boolean othersMoved(
      Network network, Timetable before, Timing t, LocalDateTime held) {
    var after = Passes.of(network.with(held(t.activity(), held)));
    boolean moved = !after.finish().equals(before.finish());
    for (int i = 0; i < before.timings().size(); i++) {
      var was = before.timings().get(i);
      var now = after.timings().get(i).early();
      moved |=
          !was.id().equals(t.id())
              && !(was.early().start().equals(now.start())
                  && was.early().finish().equals(now.finish()));
    }
    return moved;
  }

  private static Activity held(Activity a, LocalDateTime moment) {
    return a.notBefore().isPresent() && a.notBefore().get().isAfter(moment)
        ? a
        : a.notBefore(moment);
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(
      longs = {
        500_000, 501_000, 502_000, 503_000, 504_000, 505_000, 506_000, 507_000, 508_000, 509_000
      })
  void adding_a_link_never_shortens_and_a_driver_always_holds(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      Network network = RandomNetworks.of(seed);
      var timetable = Passes.of(network);
      for (int k = 0; k < network.links().size(); k++) {
        var fewer = new ArrayList<>(network.links());
        fewer.remove(k); // the network is the one that adds this link to the rest
        var without = Passes.of(network.withLinks(fewer));
        assertThat(without.finish()).isBeforeOrEqualTo(timetable.finish());
        for (int i = 0; i < network.activities().size(); i++) {
          assertThat(without.timings().get(i).early().start())
              .as("task %d without link %d, seed %d", i, k, seed)
              .isBeforeOrEqualTo(timetable.timings().get(i).early().start());
        }
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
  @ValueSource(
      longs = {
        600_000, 601_000, 602_000, 603_000, 604_000, 605_000, 606_000, 607_000, 608_000, 609_000
      })
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

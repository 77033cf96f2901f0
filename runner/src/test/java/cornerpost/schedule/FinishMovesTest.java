package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FinishMovesTest {
  /** The plain method: put the task off, and plan anew. */
  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {50_000, 51_000, 52_000})
  void one_backward_pass_a_day_agrees_with_planning_anew(long first) {
    int moved = 0;
    for (long seed = first; seed < first + 200; seed++) {
      var times = Passes.of(RandomNetworks.of(seed));
      var moves = times.finishMoves(List.of(0, 1, 5, 10));
      for (var t : times.timings()) {
        if (!moves.containsKey(t.id())) continue;
        assertThat(moves.get(t.id()).get(0)).isZero();
        for (int k = 1; k < 4; k++) {
          int days = List.of(0, 1, 5, 10).get(k);
          var after = DelayEffect.ofLaterStart(times, t.id(), days);
          // at midnight a milestone may show on the day that begins
          if (after.finish().toLocalTime().equals(java.time.LocalTime.MIDNIGHT)) continue;
          long expected = ChronoUnit.DAYS.between(times.lastDay(), after.lastDay());
          assertThat((long) moves.get(t.id()).get(k))
              .as("seed %d, %s late by %d", seed, t.id(), days)
              .isEqualTo(expected);
          moved += expected > 0 ? 1 : 0;
        }
      }
    }
    assertThat(moved).isGreaterThan(100);
  }
}

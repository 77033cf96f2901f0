package cornerpost.schedule;

import static cornerpost.schedule.Networks.DAY;
import static cornerpost.schedule.Networks.EVERY_DAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NetworkTest {
  private static final LocalDateTime START = Networks.MONDAY.atStartOfDay();
  private static final WorkCalendar WEEK = WorkCalendar.weekdays(Set.of());

  private static Network plain(List<Activity> activities, List<Link> links) {
    return Network.of(activities, links, List.of(), START, EVERY_DAY);
  }

  @Test
  void all_faults_come_at_once() {
    var activities =
        List.of(
            Activity.working("A", "dig", DAY).needing(3, "crew").needing(1, "nobody"),
            Activity.working("A", "again", DAY),
            Activity.working("B", "pour", -5),
            Activity.working("C", "cure", DAY).needing(0, "crew"),
            Activity.working("D", "late", DAY).with(Progress.started(START.plusDays(9))),
            Activity.working("E", "weekend work", DAY).needing(1, "weekend crew"),
            Activity.working("F", "done", DAY).with(Progress.finished(START.plusDays(1), START)));
    var links = List.of(Link.of("A", "X"), Link.of("B", "B"), Link.of("B", "C"), Link.of("C", "B"));
    var crews =
        List.of(
            Crew.of("crew", 2),
            Crew.of("crew", 1),
            new Crew("weekend crew", 1, Optional.of(WorkCalendar.weekends(Set.of()))));
    var faults =
        Network.faults(activities, links, crews, START, WEEK, Optional.of(START.plusDays(2)));
    assertThat(faults)
        .extracting(f -> f.getClass().getSimpleName())
        .containsExactlyInAnyOrder(
            "DuplicateCrew",
            "DemandAboveAvailable",
            "UnknownCrew",
            "DuplicateActivity",
            "OutOfRange",
            "OutOfRange",
            "ImpossibleProgress",
            "NoCommonTime",
            "ImpossibleProgress",
            "UnknownActivity",
            "SelfLink",
            "Loop");
    assertThatThrownBy(
            () -> Network.of(activities, links, crews, START, WEEK, Optional.of(START.plusDays(2))))
        .isInstanceOfSatisfying(
            NetworkException.class, e -> assertThat(e.faults()).isEqualTo(faults))
        .hasMessageContaining("'pour' before 'cure' before 'pour'");
  }

  @Test
  void a_loop_is_named_in_order_whatever_its_relations() {
    var a = new ArrayList<Activity>();
    for (String id : List.of("A", "B", "C", "D", "E")) {
      a.add(Activity.working(id, "task " + id, DAY));
    }
    var links =
        List.of(
            Link.of("A", "B"),
            Link.of("B", "C", Relation.START_TO_START, 0),
            Link.of("C", "D", Relation.FINISH_TO_FINISH, 0),
            Link.of("D", "B", Relation.START_TO_FINISH, 0),
            Link.of("D", "E"));
    var faults = Network.faults(a, links, List.of(), START, WEEK, Optional.empty());
    assertThat(faults).hasSize(1);
    var loop = (NetworkFault.Loop) faults.get(0);
    assertThat(loop.ids()).containsExactly("B", "C", "D");
    assertThat(loop.message()).contains("'task B' before 'task C' before 'task D' before 'task B'");
  }

  @Test
  void two_separate_loops_are_both_named() {
    var a = new ArrayList<Activity>();
    for (String id : List.of("A", "B", "C", "D")) {
      a.add(Activity.working(id, id, DAY));
    }
    var links = List.of(Link.of("A", "B"), Link.of("B", "A"), Link.of("C", "D"), Link.of("D", "C"));
    assertThat(Network.faults(a, links, List.of(), START, WEEK, Optional.empty())).hasSize(2);
  }

  @Test
  void an_empty_network_ends_when_it_starts() {
    var network = plain(List.of(), List.of());
    var t = Passes.of(network);
    assertThat(t.finish()).isEqualTo(START);
    assertThat(t.durationDays()).isZero();
    assertThat(t.longestPath()).isEmpty();
    var s = Sequencer.sequence(network, Budget.schedules(10), 1);
    assertThat(s.finish()).isEqualTo(START);
    assertThat(s.proved()).isTrue();
    assertThat(NetworkHealth.of(t)).isEmpty();
  }

  @Test
  void a_single_task_is_its_own_path() {
    var t = Passes.of(plain(List.of(Activity.working("A", "all", 3 * DAY)), List.of()));
    assertThat(t.longestPath()).containsExactly("A");
    assertThat(t.timing("A").critical()).isTrue();
    assertThat(t.timing("A").early().firstDay()).isEqualTo("2026-11-02");
    assertThat(t.timing("A").early().lastDay()).isEqualTo("2026-11-04");
    assertThat(NetworkHealth.of(t)).isEmpty();
  }

  @Test
  @Timeout(20)
  void ten_thousand_parallel_tasks_share_a_crew() {
    var activities = new ArrayList<Activity>();
    for (int i = 0; i < 10_000; i++) {
      activities.add(Activity.working("" + i, "task " + i, DAY).needing(1, "crew"));
    }
    var network =
        Network.of(activities, List.of(), List.of(Crew.of("crew", 100)), START, EVERY_DAY);
    assertThat(Passes.of(network).durationDays()).isEqualTo(1);
    var s = Sequencer.sequence(network, Budget.schedules(2), 1);
    assertThat(s.durationDays()).isEqualTo(100); // 10,000 days of work by 100 people
  }

  @Test
  @Timeout(20)
  void a_chain_of_ten_thousand_tasks_is_as_long_as_all_of_them() {
    var activities = new ArrayList<Activity>();
    var links = new ArrayList<Link>();
    for (int i = 9_999; i >= 0; i--) {
      activities.add(Activity.working("" + i, "task " + i, DAY));
      if (i > 0) {
        links.add(Link.of("" + (i - 1), "" + i));
      }
    }
    var t = Passes.of(Network.of(activities, links, List.of(), START, WEEK));
    assertThat(t.durationDays()).isEqualTo(10_000);
    assertThat(t.longestPath()).hasSize(10_000).startsWith("0", "1");
    assertThat(t.finish()).isEqualTo(START.plusDays(1_999 * 7 + 4).plusHours(16));
  }

  @Test
  void a_lag_longer_than_the_work_and_dates_past_2100_are_fine() {
    var a = Activity.working("A", "a", DAY);
    var b = Activity.working("B", "b", DAY);
    var t =
        Passes.of(
            plain(
                List.of(a, b),
                List.of(Link.of("A", "B", Relation.FINISH_TO_START, 40_000L * DAY))));
    assertThat(t.durationDays()).isEqualTo(40_002);
    // 2026-11-02 and 40,001 days: by LocalDate, an independent calendar
    assertThat(t.timing("B").early().firstDay())
        .isEqualTo(LocalDate.of(2026, 11, 2).plusDays(40_001));
    assertThat(t.lastDay().getYear()).isGreaterThan(2100);
  }

  @Test
  void a_deadline_before_the_start_gives_negative_float_and_moves_nothing() {
    var a = Activity.working("A", "a", 2 * DAY).by(START.minusDays(3));
    var t = Passes.of(plain(List.of(a), List.of()));
    assertThat(t.timing("A").early().start()).isEqualTo("2026-11-02T08:00");
    assertThat(t.timing("A").totalFloatDays())
        .isEqualTo(-5); // two days of work and three days before the start
    assertThat(t.timing("A").freeFloatMinutes())
        .isLessThanOrEqualTo(t.timing("A").totalFloatMinutes());
    assertThat(t.timing("A").critical()).isTrue();
  }

  @ParameterizedTest
  @EnumSource(Relation.class)
  void relations_are_read_as_they_are_printed(Relation relation) {
    assertThat(Relation.parse(" " + relation.label().toUpperCase(java.util.Locale.ROOT) + " "))
        .contains(relation);
    assertThat(Relation.parse("finish")).isEmpty();
  }

  @Test
  void a_milestone_shows_on_the_day_its_moment_belongs_to() {
    var work = Activity.working("A", "work", 5 * DAY);
    var links = List.of(Link.of("A", "M"), Link.of("M", "B"));
    var next = Activity.working("B", "next", DAY);
    var t =
        Passes.of(
            Network.of(
                List.of(work, Activity.milestone("M", "done"), next),
                links,
                List.of(),
                START,
                WEEK));
    assertThat(t.timing("M").early().start()).isEqualTo("2026-11-06T16:00");
    assertThat(t.timing("M").early().firstDay()).isEqualTo("2026-11-06"); // Friday, not Monday
    assertThat(t.timing("B").early().firstDay()).isEqualTo("2026-11-09");
    var dated = Activity.milestone("M", "delivery").notBefore(LocalDateTime.of(2026, 11, 7, 0, 0));
    assertThat(
            Passes.of(Network.of(List.of(dated), List.of(), List.of(), START, WEEK))
                .timing("M")
                .early()
                .lastDay())
        .isEqualTo("2026-11-09"); // a Saturday date is the next working day
    var clock = WorkCalendar.roundTheClock();
    var night = Activity.working("A", "all day", 1440).in(clock);
    var end = Activity.milestone("M", "done").in(clock);
    var midnight = Passes.of(plain(List.of(night, end), List.of(Link.of("A", "M"))));
    assertThat(midnight.timing("M").early().start()).isEqualTo("2026-11-03T00:00");
    assertThat(midnight.timing("M").early().lastDay()).isEqualTo("2026-11-02");
    var atStart = Passes.of(plain(List.of(end), List.of()));
    assertThat(atStart.timing("M").early().lastDay()).isEqualTo("2026-11-02");
  }

  // Poured on Friday, seven elapsed days of curing, next work on the Monday after: by the calendar
  // of November 2026.
  @Test
  void curing_runs_through_the_weekend_and_drives_though_it_has_hours_to_spare() {
    var pour = Activity.working("P", "pour", 5 * DAY);
    var cure = Activity.elapsed("C", "cure", 7 * 1440);
    var strip = Activity.working("S", "strip", DAY);
    var t =
        Passes.of(
            Network.of(
                List.of(pour, cure, strip),
                List.of(Link.of("P", "C"), Link.of("C", "S")),
                List.of(),
                START,
                WEEK));
    assertThat(t.timing("C").early().start()).isEqualTo("2026-11-06T16:00");
    assertThat(t.timing("C").early().finish()).isEqualTo("2026-11-13T16:00");
    assertThat(t.timing("S").early().firstDay()).isEqualTo("2026-11-16");
    assertThat(t.timing("C").totalFloatMinutes())
        .isEqualTo(64 * 60); // Friday 16:00 to Monday 08:00
    assertThat(t.timing("C").drivesFinish()).isTrue();
    assertThat(t.longestPath()).containsExactly("P", "C", "S");
    var lag =
        Network.of(
            List.of(pour, strip),
            List.of(
                new Link("P", "S", Relation.FINISH_TO_START, 7 * 1440, LagUnit.ELAPSED_MINUTES)),
            List.of(),
            START,
            WEEK);
    assertThat(Passes.of(lag).timing("S").early()).isEqualTo(t.timing("S").early());
  }

  @Test
  void only_the_last_of_two_waits_before_a_weekend_end_drives() {
    var early = Activity.working("E", "early", 4 * DAY).in(WEEK);
    var late = Activity.working("L", "late", 5 * DAY).in(WEEK);
    var weekend = Activity.working("W", "weekend work", DAY).in(WorkCalendar.weekends(Set.of()));
    var t =
        Passes.of(
            plain(List.of(early, late, weekend), List.of(Link.of("E", "W"), Link.of("L", "W"))));
    assertThat(t.timing("W").drivers()).containsExactly(Link.of("L", "W"));
    assertThat(t.timing("E").totalFloatDays()).isEqualTo(1);
    assertThat(t.timing("E").critical()).isFalse();
    assertThat(t.timing("L").critical()).isTrue();
  }

  @Test
  void a_crew_of_its_own_days_narrows_the_calendar_of_its_tasks() {
    var crew = new Crew("helpers", 1, Optional.of(WorkCalendar.weekends(Set.of())));
    var task = Activity.working("A", "a", 2 * DAY).needing(1, "helpers");
    var network = Network.of(List.of(task), List.of(), List.of(crew), START, EVERY_DAY);
    assertThat(Passes.of(network).timing("A").early().firstDay()).isEqualTo("2026-11-07");
    assertThat(Passes.of(network).timing("A").early().lastDay()).isEqualTo("2026-11-08");
  }

  @Test
  void progress_keeps_real_dates_and_plans_the_rest_after_the_status_moment() {
    var status = LocalDateTime.of(2026, 11, 10, 8, 0); // Tuesday of the second week
    var done =
        Activity.working("A", "a", 3 * DAY)
            .with(Progress.finished(START.plusHours(8), START.plusDays(6).plusHours(16)));
    var running =
        Activity.working("B", "b", 4 * DAY).with(Progress.started(START.plusDays(7).plusHours(8)));
    var next = Activity.working("C", "c", DAY);
    var other = Activity.working("D", "d", DAY);
    var network =
        Network.of(
            List.of(done, running, next, other),
            List.of(Link.of("A", "B"), Link.of("B", "C")),
            List.of(),
            START,
            WEEK,
            Optional.of(status));
    var t = Passes.of(network);
    assertThat(t.timing("A").early().finish()).isEqualTo("2026-11-08T16:00");
    assertThat(t.timing("B").early().start()).isEqualTo("2026-11-09T08:00");
    assertThat(t.timing("B").early().finish())
        .isEqualTo("2026-11-12T16:00"); // one of four days done, three left
    assertThat(t.timing("C").early().firstDay()).isEqualTo("2026-11-13");
    assertThat(t.timing("D").early().firstDay()).isEqualTo("2026-11-10");
    assertThat(t.timing("D").totalFloatDays()).isEqualTo(3);
    assertThat(t.longestPath()).containsExactly("B", "C");
    var given =
        network.with(running.with(Progress.started(START.plusDays(7).plusHours(8), 2 * DAY)));
    assertThat(Passes.of(given).timing("C").early().firstDay()).isEqualTo("2026-11-12");
  }

  // Remaining work of a task begun out of order waits for its predecessor ("retained logic").
  @Test
  void work_begun_out_of_order_waits_with_its_remainder() {
    var a = Activity.working("A", "a", 3 * DAY);
    var b = Activity.working("B", "b", 2 * DAY).with(Progress.started(START.plusHours(8), DAY));
    var network =
        Network.of(
            List.of(a, b),
            List.of(Link.of("A", "B")),
            List.of(),
            START,
            WEEK,
            Optional.of(START.plusDays(1)));
    var t = Passes.of(network);
    assertThat(t.timing("A").early().lastDay()).isEqualTo("2026-11-05");
    assertThat(t.timing("B").early().start()).isEqualTo("2026-11-02T08:00");
    assertThat(t.timing("B").early().lastDay()).isEqualTo("2026-11-06");
  }

  @Test
  void a_trial_with_the_same_durations_gives_the_same_dates() {
    for (long seed = 50_000; seed < 50_200; seed++) {
      Network network = RandomNetworks.of(seed);
      var t = Passes.of(network);
      var trial = Passes.trial(network);
      long[] minutes = network.activities().stream().mapToLong(Activity::minutes).toArray();
      long[] more = java.util.Arrays.stream(minutes).map(m -> m + 100).toArray();
      trial.run(more);
      trial.run(minutes);
      assertThat(trial.finish()).isEqualTo(t.finish());
      for (int i = 0; i < minutes.length; i++) {
        assertThat(trial.drivesFinish(i)).isEqualTo(t.timings().get(i).drivesFinish());
      }
    }
  }
}

package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.schedule.FewestChanges.Booking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FewestChangesTest {
  private static final WorkCalendar EVERY_DAY = WorkCalendar.everyDay(Set.of());
  private static final long EFFORT = 4_000;
  private static final int TASKS = 7;
  private static final int DAYS = 14;

  /** Tasks of whole days in one calendar, finish to start, two crews. */
  private record Site(int[] days, int[] crew, List<int[]> links, int[] available) {
    static Site of(long seed) {
      var random = new Random(seed);
      int[] days = IntStream.range(0, TASKS).map(i -> 1 + random.nextInt(3)).toArray();
      int[] crew = IntStream.range(0, TASKS).map(i -> random.nextInt(2)).toArray();
      var links = new ArrayList<int[]>();
      for (int i = 1; i < TASKS; i++) {
        if (random.nextInt(3) > 0) links.add(new int[] {random.nextInt(i), i});
      }
      return new Site(days, crew, links, new int[] {1, 1 + random.nextInt(2)});
    }

    Network network(int late, int lateDay) {
      var tasks = new ArrayList<Activity>();
      for (int i = 0; i < TASKS; i++) {
        var a = Activity.working("" + i, "task " + i, days[i] * EVERY_DAY.dayMinutes());
        a = a.in(EVERY_DAY).needing(1, "crew " + crew[i]);
        if (i == late) a = a.notBefore(Networks.MONDAY.plusDays(lateDay).atStartOfDay());
        tasks.add(a);
      }
      return Network.of(
          tasks,
          links.stream().map(l -> Link.of("" + l[0], "" + l[1])).toList(),
          List.of(Crew.of("crew 0", available[0]), Crew.of("crew 1", available[1])),
          Networks.MONDAY.atStartOfDay(),
          EVERY_DAY);
    }

    /** The fewest changes of all timetables in whole days, one after the other; -1 if none ends. */
    int fewest(int[] booked, int late, int lateDay, int end) {
      return extend(0, new int[TASKS], new int[2][DAYS + 1], booked, late, lateDay, end, TASKS + 1);
    }

    private int extend(
        int i, int[] start, int[][] used, int[] booked, int late, int lateDay, int end, int best) {
      if (i == TASKS) {
        int changed = 0;
        for (int k = 0; k < TASKS; k++) changed += start[k] == booked[k] ? 0 : 1;
        return Math.min(best, changed);
      }
      int from = i == late ? lateDay : 0;
      for (int[] l : links) if (l[1] == i) from = Math.max(from, start[l[0]] + days[l[0]]);
      for (int s = from; s + days[i] <= end; s++) {
        boolean fits = true;
        for (int d = s; d < s + days[i]; d++) fits &= used[crew[i]][d] < available[crew[i]];
        if (!fits) continue;
        for (int d = s; d < s + days[i]; d++) used[crew[i]][d]++;
        start[i] = s;
        best = extend(i + 1, start, used, booked, late, lateDay, end, best);
        for (int d = s; d < s + days[i]; d++) used[crew[i]][d]--;
      }
      return best;
    }
  }

  private static int day(Dates d) {
    return (int) (d.firstDay().toEpochDay() - Networks.MONDAY.toEpochDay());
  }

  private static int end(CrewSchedule schedule) {
    return (int) (schedule.finish().toLocalDate().toEpochDay() - Networks.MONDAY.toEpochDay()) + 1;
  }

  private static LongStream seeds() {
    return LongStream.range(0, 120);
  }

  // What is late is booked for a day that cannot be kept; the end allowed is the earliest one, and
  // one or two days more.
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void fewest_changes_are_those_of_all_timetables_one_after_the_other(long seed) {
    var site = Site.of(seed);
    var random = new Random(~seed);
    var before = Sequencer.sequence(site.network(-1, 0), Budget.schedules(200), 1);
    int[] booked = IntStream.range(0, TASKS).map(i -> day(before.planned().get(i))).toArray();
    int late = random.nextInt(TASKS);
    int lateDay = booked[late] + 1 + random.nextInt(4);
    var network = site.network(late, lateDay);
    var after = Sequencer.sequence(network, Budget.schedules(200), 1);
    int end = Math.min(DAYS, end(after) + random.nextInt(3));
    int fewest = site.fewest(booked, late, lateDay, end);
    var bookings = new ArrayList<Booking>();
    for (int i = 0; i < TASKS; i++) {
      bookings.add(new Booking("" + i, Networks.MONDAY.plusDays(booked[i])));
    }
    var found =
        FewestChanges.search(
            network,
            bookings,
            Set.of(),
            Map.of(),
            Networks.MONDAY.plusDays(end).atStartOfDay(),
            EFFORT);
    if (fewest > TASKS) {
      assertThat(found.dates()).isEmpty(); // no timetable ends by then
      return;
    }
    assertThat(found.atLeast()).isEqualTo(fewest);
    assertThat(found.changed()).isEqualTo(fewest);
    var dates = found.dates().orElseThrow();
    int[] use = new int[2 * DAYS];
    for (int i = 0; i < TASKS; i++) {
      assertThat(day(dates.get(i))).isGreaterThanOrEqualTo(i == late ? lateDay : 0);
      for (var d = dates.get(i).firstDay(); !d.isAfter(dates.get(i).lastDay()); d = d.plusDays(1)) {
        int at = (int) (d.toEpochDay() - Networks.MONDAY.toEpochDay());
        assertThat(at).isLessThan(end);
        assertThat(++use[site.crew[i] * DAYS + at])
            .isLessThanOrEqualTo(site.available[site.crew[i]]);
      }
    }
    for (int[] l : site.links) {
      assertThat(dates.get(l[1]).firstDay()).isAfter(dates.get(l[0]).lastDay());
    }
  }

  // By hand: one crew, A 2 days waits for a box four days late, B 1 day and C 1 day do not wait.
  // Booked A on days 0-1, B on 2, C on 3. A goes to days 4-5; B and C stay: one change. With the
  // end
  // after day 5 there is no other; a firm booking of B changes nothing.
  @Test
  void what_does_not_wait_keeps_its_day() {
    var calendar = EVERY_DAY;
    var tasks = new ArrayList<Activity>();
    for (var t : List.of("A", "B", "C")) {
      long minutes = (t.equals("A") ? 2 : 1) * calendar.dayMinutes();
      tasks.add(Activity.working(t, t, minutes).in(calendar).needing(1, "crew"));
    }
    tasks.set(0, tasks.get(0).notBefore(Networks.MONDAY.plusDays(4).atStartOfDay()));
    var network =
        Network.of(
            tasks,
            List.of(),
            List.of(Crew.of("crew", 1)),
            Networks.MONDAY.atStartOfDay(),
            calendar);
    LocalDate m = Networks.MONDAY;
    var bookings =
        List.of(
            new Booking("A", m), new Booking("B", m.plusDays(2)), new Booking("C", m.plusDays(3)));
    for (var firm : List.of(Set.<String>of(), Set.of("B"))) {
      var found =
          FewestChanges.search(
              network,
              bookings,
              firm,
              Map.of("A", m.plusDays(5)),
              m.plusDays(6).atStartOfDay(),
              99);
      assertThat(found.changed()).isEqualTo(1);
      assertThat(found.atLeast()).isEqualTo(1);
      assertThat(found.dates().orElseThrow())
          .extracting(Dates::firstDay)
          .containsExactly(m.plusDays(4), m.plusDays(2), m.plusDays(3));
    }
    var none =
        FewestChanges.search(
            network, bookings, Set.of("A"), Map.of(), m.plusDays(9).atStartOfDay(), 99);
    assertThat(none.dates()).isEmpty(); // it cannot be on a day before the box comes
  }

  // Any mix of calendars, relations and lags: what is found keeps every rule, and spending little
  // effort gives a plan that is no better and a bound that is no higher.
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void more_effort_never_gives_more_changes_or_a_lower_bound(long seed) {
    var network = RandomNetworks.of(seed);
    var planned = Sequencer.sequence(network, Budget.schedules(200), 1);
    var first = network.activities().get(0);
    var moment = planned.planned(first.id()).start().plusDays(3);
    var late = network.with(first.notBefore(moment));
    var after = Sequencer.sequence(late, Budget.schedules(200), 1);
    var bookings =
        network.activities().stream()
            .map(a -> new Booking(a.id(), planned.planned(a.id()).firstDay()))
            .toList();
    int changed = bookings.size() + 1;
    int least = 0;
    for (long effort : List.of(1L, 20L, 60L, 4_000L)) {
      var found = FewestChanges.search(late, bookings, Set.of(), Map.of(), after.finish(), effort);
      assertThat(found.changed()).isLessThanOrEqualTo(changed).isGreaterThanOrEqualTo(least);
      assertThat(found.atLeast())
          .isGreaterThanOrEqualTo(least)
          .isLessThanOrEqualTo(found.changed());
      changed = found.changed();
      least = found.atLeast();
    }
    assertThat(changed).isEqualTo(least); // small enough to be found out
  }
}

package cornerpost.schedule;

import static cornerpost.schedule.Networks.DAY;
import static cornerpost.schedule.Networks.EVERY_DAY;
import static cornerpost.schedule.Networks.day;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Textbook networks with published or independently computed dates; each file names its source. */
class WorkedNetworksTest {
  // Federal holidays of the United States (5 U.S.C. 6103) in the time of the container-home
  // example.
  private static final Set<LocalDate> HOLIDAYS =
      Set.of(
          LocalDate.of(2026, 11, 11),
          LocalDate.of(2026, 11, 26),
          LocalDate.of(2026, 12, 25),
          LocalDate.of(2027, 1, 1),
          LocalDate.of(2027, 1, 18),
          LocalDate.of(2027, 2, 15));

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "nine-activity-site",
        "fourteen-activity-plant",
        "arrow-seven",
        "fictitious-twelve",
        "carriage-house",
        "container-home",
        "foundry",
        "delivery-and-windows"
      })
  void every_date_and_float_agrees_with_the_worked_table(String name) {
    var rows = Networks.worked(name);
    assertThat(rows.size()).isGreaterThan(6);
    var timetable = Passes.of(Networks.of(name, EVERY_DAY));
    assertThat(timetable.durationDays()).isEqualTo(Networks.duration(name));
    for (var r : rows) {
      var t = timetable.timing(r.id());
      assertThat(
              List.of(
                  day(t.early().start()),
                  day(t.early().finish()),
                  day(t.late().start()),
                  day(t.late().finish()),
                  t.totalFloatMinutes() / DAY,
                  t.freeFloatMinutes() / DAY,
                  t.critical(),
                  t.drivesFinish()))
          .as("%s of %s", r.id(), name)
          .isEqualTo(
              List.of(
                  (long) r.earlyStart(),
                  (long) r.earlyFinish(),
                  (long) r.lateStart(),
                  (long) r.lateFinish(),
                  (long) r.totalFloat(),
                  (long) r.freeFloat(),
                  r.critical(),
                  r.critical()));
    }
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "nine-activity-site, A C F I",
    "fourteen-activity-plant, A B C E F J L N",
    "arrow-seven, 1-3 3-4 4-5 5-6",
    "fictitious-twelve, 1 2 5 9 12",
    "foundry, A C E G H",
    "delivery-and-windows, W G K L M N O P",
    "container-home, PERM ORD DEL MOD SET WLD FRM RPL REL INSP INS DRY PNT CAB FLR FIN MOVE"
  })
  void longest_path_is_the_published_one(String name, String path) {
    assertThat(Passes.of(Networks.of(name, EVERY_DAY)).longestPath())
        .containsExactly(path.split(" "));
  }

  // Reference values of the example itself, also solved as a linear programme.
  @ParameterizedTest(name = "{0} lasting {1} days: {2}")
  @CsvSource({
    "ORD, 33, 86",
    "ORD, 35, 88",
    "ORD, 40, 93",
    "FND, 10, 83",
    "FND, 11, 84",
    "FND, 15, 88"
  })
  void slips_of_delivery_and_foundation_move_move_in_as_computed(String id, int days, int finish) {
    var slipped = Passes.of(Networks.of("container-home", EVERY_DAY, Map.of(id, days)));
    assertThat(slipped.durationDays()).isEqualTo(finish);
  }

  @Test
  void ten_days_slip_of_delivery_gives_ten_days_float_to_what_does_not_wait_for_it() {
    var t = Passes.of(Networks.of("container-home", EVERY_DAY, Map.of("ORD", 40)));
    assertThat(List.of("SITE", "FND", "SEP", "ROF", "WIN", "UTL"))
        .extracting(id -> t.timing(id).totalFloatDays())
        .containsExactly(15.0, 15.0, 57.0, 8.0, 9.0, 17.0);
  }

  @Test
  void recovery_from_ten_days_slip_gains_what_was_computed() {
    assertThat(recovered(Map.of("DRY", 4), false)).isEqualTo(92);
    assertThat(recovered(Map.of(), true)).isEqualTo(91);
    assertThat(recovered(Map.of("MOD", 2), false)).isEqualTo(87);
    assertThat(recovered(Map.of("MOD", 2, "DRY", 4), true)).isEqualTo(84);
  }

  private static double recovered(Map<String, Integer> days, boolean framingOverlapsWelding) {
    var all = new java.util.HashMap<>(days);
    all.put("ORD", 40);
    var network = Networks.of("container-home", EVERY_DAY, all);
    var links = new ArrayList<>(network.links());
    if (framingOverlapsWelding) {
      links.remove(Link.of("WLD", "FRM"));
      links.add(Link.of("WLD", "FRM", Relation.START_TO_START, 2 * DAY));
      links.add(Link.of("WLD", "FRM", Relation.FINISH_TO_FINISH, 2 * DAY));
    }
    return Passes.of(network.withLinks(links)).durationDays();
  }

  @ParameterizedTest(name = "{0}, delivery {1} days: {2}")
  @CsvSource({"Weekdays, 30, 2027-03-04", "Six days, 30, 2027-02-11", "Weekdays, 40, 2027-03-18"})
  void last_day_before_move_in_agrees_with_the_calendar(String week, int delivery, LocalDate day) {
    var calendar =
        week.equals("Weekdays") ? WorkCalendar.weekdays(HOLIDAYS) : WorkCalendar.sixDays(HOLIDAYS);
    var t = Passes.of(Networks.of("container-home", calendar, Map.of("ORD", delivery)));
    assertThat(t.timing("FIN").early().lastDay()).isEqualTo(day);
    assertThat(t.timing("MOVE").early().lastDay()).isEqualTo(day);
    assertThat(t.lastDay()).isEqualTo(day);
  }

  // Slips of the delivery-and-windows example, worked by hand.
  @Test
  void a_late_container_and_late_windows_move_the_path() {
    var late = Passes.of(Networks.of("delivery-and-windows", EVERY_DAY, Map.of("X", 27)));
    assertThat(late.durationDays()).isEqualTo(66);
    assertThat(late.longestPath()).containsExactly("X D E F H I K L M N O P".split(" "));
    assertThat(late.timing("W").totalFloatDays()).isEqualTo(6);
    var windows = Passes.of(Networks.of("delivery-and-windows", EVERY_DAY, Map.of("W", 42)));
    assertThat(windows.durationDays()).isEqualTo(67);
    assertThat(List.of("X", "D", "E", "F"))
        .extracting(id -> windows.timing(id).totalFloatDays())
        .containsOnly(8.0);
  }

  @Test
  void two_equal_delays_on_parallel_critical_paths_count_once() {
    var parallel =
        Network.of(
            List.of(
                Activity.milestone("S", "start"),
                Activity.working("A", "one way", 20 * DAY),
                Activity.working("B", "other way", 20 * DAY),
                Activity.milestone("E", "end")),
            List.of(Link.of("S", "A"), Link.of("S", "B"), Link.of("A", "E"), Link.of("B", "E")),
            List.of(),
            Networks.MONDAY.atStartOfDay(),
            EVERY_DAY);
    var both =
        parallel
            .with(parallel.get("A").lasting(30 * DAY))
            .with(parallel.get("B").lasting(30 * DAY));
    assertThat(Passes.of(parallel).durationDays()).isEqualTo(20);
    assertThat(Passes.of(both).durationDays())
        .isEqualTo(30); // SCL protocol: concurrent delay, +10 not +20
  }

  @Test
  void path_between_delivery_and_move_in_starts_and_ends_there() {
    var t = Passes.of(Networks.of("container-home", EVERY_DAY));
    var path = t.longestPath("DEL", "MOVE").orElseThrow();
    assertThat(path.ids())
        .containsExactly(
            "DEL MOD SET WLD FRM RPL REL INSP INS DRY PNT CAB FLR FIN MOVE".split(" "));
    assertThat(path.slackMinutes()).isZero();
    assertThat(t.longestPath("SITE", "MOVE").orElseThrow().slackMinutes()).isEqualTo(5 * DAY);
    assertThat(t.longestPath("MOVE", "DEL")).isEmpty();
    assertThat(t.longestPath("DEL", "DEL").orElseThrow().ids()).containsExactly("DEL");
  }

  // Chain Begin(1) -> A -> B -> End(1). Values of a published test suite for relation types where
  // it does not start a
  // task before the start of the project; the other three by hand, with starts clamped there.
  @ParameterizedTest(name = "{0} {1},{2} lag {3}: {4}, B at {5}")
  @CsvSource({
    "FINISH_TO_START, 3, 3, 0, 8, 4",
    "FINISH_TO_START, 3, 3, 2, 10, 6",
    "FINISH_TO_START, 3, 3, -2, 6, 2",
    "FINISH_TO_START, 3, 5, 0, 10, 4",
    "FINISH_TO_START, 3, 5, 2, 12, 6",
    "FINISH_TO_START, 3, 5, -2, 8, 2",
    "FINISH_TO_START, 5, 3, 0, 10, 6",
    "FINISH_TO_START, 5, 3, 2, 12, 8",
    "FINISH_TO_START, 5, 3, -2, 8, 4",
    "START_TO_START, 3, 3, 0, 5, 1",
    "START_TO_START, 3, 3, 2, 7, 3",
    "START_TO_START, 3, 5, 0, 7, 1",
    "START_TO_START, 3, 5, 2, 9, 3",
    "START_TO_START, 5, 3, 0, 6, 1",
    "START_TO_START, 5, 3, 2, 7, 3",
    "FINISH_TO_FINISH, 3, 3, 0, 5, 1",
    "FINISH_TO_FINISH, 3, 3, 2, 7, 3",
    "FINISH_TO_FINISH, 3, 5, 2, 7, 1",
    "FINISH_TO_FINISH, 5, 3, 0, 7, 3",
    "FINISH_TO_FINISH, 5, 3, 2, 9, 5",
    "FINISH_TO_FINISH, 5, 3, -2, 6, 1",
    "START_TO_FINISH, 3, 3, 2, 4, 0",
    "FINISH_TO_FINISH, 3, 5, 0, 6, 0",
    "START_TO_START, 3, 3, -2, 4, 0",
    "START_TO_FINISH, 3, 3, 0, 4, 0"
  })
  void each_relation_and_lag_gives_the_expected_dates(
      Relation relation, int a, int b, int lag, int duration, int startOfB) {
    for (WorkCalendar calendar : List.of(EVERY_DAY, WorkCalendar.weekdays(HOLIDAYS))) {
      var network =
          Network.of(
              List.of(
                  Activity.working("Begin", "begin", DAY),
                  Activity.working("A", "a", (long) a * DAY),
                  Activity.working("B", "b", (long) b * DAY),
                  Activity.working("End", "end", DAY)),
              List.of(
                  Link.of("Begin", "A"),
                  Link.of("A", "B", relation, (long) lag * DAY),
                  Link.of("B", "End")),
              List.of(),
              Networks.MONDAY.atStartOfDay(),
              calendar);
      var t = Passes.of(network);
      assertThat(t.durationDays()).isEqualTo(duration);
      assertThat(calendar.between(network.start(), t.timing("B").early().start()) / DAY)
          .isEqualTo(startOfB);
    }
  }
}

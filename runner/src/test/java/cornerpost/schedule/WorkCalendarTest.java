package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorkCalendarTest {
  private static final LocalDateTime FRIDAY_EIGHT = LocalDateTime.of(2026, 11, 6, 8, 0);

  @Test
  void a_day_from_friday_morning_ends_on_friday_and_two_on_monday() {
    var week = WorkCalendar.weekdays(Set.of());
    assertThat(week.plus(FRIDAY_EIGHT, 480)).isEqualTo("2026-11-06T16:00");
    assertThat(week.plus(FRIDAY_EIGHT, 481)).isEqualTo("2026-11-09T08:01");
    assertThat(week.plus(FRIDAY_EIGHT, 960)).isEqualTo("2026-11-09T16:00");
    assertThat(week.plus(FRIDAY_EIGHT, -480)).isEqualTo("2026-11-05T08:00");
    assertThat(week.plus(FRIDAY_EIGHT, 0)).isEqualTo(FRIDAY_EIGHT);
    assertThat(week.nextStart(LocalDateTime.of(2026, 11, 7, 3, 0))).isEqualTo("2026-11-09T08:00");
    assertThat(week.lastEnd(LocalDateTime.of(2026, 11, 7, 3, 0))).isEqualTo("2026-11-06T16:00");
  }

  @Test
  void holidays_in_a_row_over_a_weekend_are_skipped_both_ways() {
    var christmas =
        Set.of(LocalDate.of(2026, 12, 24), LocalDate.of(2026, 12, 25), LocalDate.of(2026, 12, 28));
    var week = WorkCalendar.weekdays(christmas);
    assertThat(week.plus(LocalDateTime.of(2026, 12, 23, 8, 0), 481)).isEqualTo("2026-12-29T08:01");
    assertThat(week.plus(LocalDateTime.of(2026, 12, 29, 8, 0), -1)).isEqualTo("2026-12-23T15:59");
    assertThat(week.firstWorkingDayFrom(LocalDate.of(2026, 12, 24))).isEqualTo("2026-12-29");
    assertThat(week.lastWorkingDayTo(LocalDate.of(2026, 12, 28))).isEqualTo("2026-12-23");
    assertThat(week.isWorkingDay(LocalDate.of(2026, 12, 25))).isFalse();
  }

  // Date arithmetic by hand: 2026 has 261 weekdays (it begins on a Thursday and has 365 days).
  @ParameterizedTest(name = "{0} to {1}: {2} weekdays")
  @CsvSource({
    "2026-01-01, 2026-12-31, 261", "2026-11-02, 2026-11-02, 1", "2026-11-07, 2026-11-08, 0",
    "2026-11-03, 2026-11-02, 0", "2026-11-02, 2026-11-15, 10", "2196-01-01, 2196-12-31, 261"
  })
  void working_days_of_an_interval_are_counted(LocalDate first, LocalDate last, long days) {
    assertThat(WorkCalendar.weekdays(Set.of()).workingDays(first, last)).isEqualTo(days);
  }

  @Test
  void a_holiday_on_a_day_off_takes_nothing_away() {
    var week = WorkCalendar.weekdays(Set.of(LocalDate.of(2026, 11, 7), LocalDate.of(2026, 11, 9)));
    assertThat(week.workingDays(LocalDate.of(2026, 11, 2), LocalDate.of(2026, 11, 15)))
        .isEqualTo(9);
    assertThat(week.minutesOn(LocalDate.of(2026, 11, 9))).isZero();
    assertThat(week.minutesOn(DayOfWeek.MONDAY)).isEqualTo(480);
  }

  @Test
  void supplied_calendars_have_their_hours() {
    assertThat(WorkCalendar.weekdays(Set.of()).dayMinutes()).isEqualTo(480);
    assertThat(WorkCalendar.roundTheClock().dayMinutes()).isEqualTo(1440);
    assertThat(WorkCalendar.sixDays(Set.of()).isWorkingDay(LocalDate.of(2026, 11, 7))).isTrue();
    assertThat(WorkCalendar.sixDays(Set.of()).isWorkingDay(LocalDate.of(2026, 11, 8))).isFalse();
    assertThat(WorkCalendar.weekends(Set.of()).isWorkingDay(LocalDate.of(2026, 11, 8))).isTrue();
    assertThat(WorkCalendar.weekends(Set.of()).isWorkingDay(LocalDate.of(2026, 11, 9))).isFalse();
    assertThat(WorkCalendar.everyDay(Set.of()).isWorkingDay(LocalDate.of(2026, 11, 8))).isTrue();
    assertThat(
            WorkCalendar.of("Long Friday", List.of(480, 480, 480, 480, 600, 0, 0), Set.of())
                .dayMinutes())
        .isEqualTo(600);
  }

  @Test
  void a_day_longer_than_sixteen_hours_ends_at_midnight() {
    var long_ = WorkCalendar.of("Long", List.of(1200, 0, 0, 0, 0, 0, 0), Set.of());
    assertThat(long_.nextStart(LocalDateTime.of(2026, 11, 3, 0, 0))).isEqualTo("2026-11-09T04:00");
    assertThat(long_.plus(LocalDateTime.of(2026, 11, 9, 0, 0), 1200)).isEqualTo("2026-11-10T00:00");
  }

  @Test
  void a_calendar_without_working_time_says_so() {
    assertThatThrownBy(() -> WorkCalendar.of("Never", List.of(0, 0, 0, 0, 0, 0, 0), Set.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'Never'")
        .hasMessageContaining("no working time");
    assertThatThrownBy(() -> WorkCalendar.weekdays(Set.of()).and(WorkCalendar.weekends(Set.of())))
        .hasMessageContaining("Weekdays and Weekends");
    assertThatThrownBy(() -> WorkCalendar.of("Six", List.of(1, 1, 1, 1, 1, 1), Set.of()))
        .hasMessageContaining("seven");
    assertThatThrownBy(() -> WorkCalendar.of("Much", List.of(1441, 1, 1, 1, 1, 1, 1), Set.of()))
        .hasMessageContaining("1441");
  }

  @Test
  void two_calendars_have_in_common_what_both_work() {
    var both =
        WorkCalendar.sixDays(Set.of(LocalDate.of(2026, 11, 9)))
            .and(
                WorkCalendar.of(
                    "Late",
                    List.of(480, 480, 480, 480, 300, 300, 300),
                    Set.of(LocalDate.of(2026, 11, 6))));
    assertThat(both.minutesOn(LocalDate.of(2026, 11, 7))).isEqualTo(300);
    assertThat(both.minutesOn(LocalDate.of(2026, 11, 8))).isZero();
    assertThat(both.isWorkingDay(LocalDate.of(2026, 11, 6))).isFalse();
    assertThat(both.isWorkingDay(LocalDate.of(2026, 11, 9))).isFalse();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13})
  void numbers_and_moments_are_those_of_a_table_of_all_minutes(long seed) {
    var random = new Random(seed);
    for (WorkCalendar c : RandomNetworks.CALENDARS) {
      var table = new PlainPlan.Table(c);
      LocalDateTime origin = Networks.MONDAY.minusDays(28).atStartOfDay();
      long offset = c.worked(Minutes.of(origin));
      for (int k = 0; k < 2_000; k++) {
        int m = 1440 * 20 + random.nextInt(1440 * 60);
        long moment = Minutes.of(origin) + m;
        assertThat(c.worked(moment) - offset).isEqualTo(table.workedBefore[m]);
        assertThat(c.endOf(c.worked(moment)) - Minutes.of(origin))
            .isEqualTo(table.endOfLastWorkingMinute(m));
        assertThat(c.startOf(c.worked(moment)) - Minutes.of(origin))
            .isEqualTo(table.beginning[table.workedBefore[m]]);
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 34})
  void every_number_comes_back_from_its_moments_in_any_century(long seed) {
    var random = new Random(seed);
    for (WorkCalendar c : RandomNetworks.CALENDARS) {
      for (int k = 0; k < 20_000; k++) {
        long number = random.nextLong() >> 24; // some two million years either way
        assertThat(c.worked(c.startOf(number))).isEqualTo(number);
        assertThat(c.worked(c.endOf(number))).isEqualTo(number);
        assertThat(c.endOf(number)).isLessThanOrEqualTo(c.startOf(number));
      }
    }
  }

  @Test
  void a_century_from_now_is_as_near_as_tomorrow() {
    var week = WorkCalendar.weekdays(Set.of());
    // From 2026-11-02, a Monday, a century is 36,524 days (24 leap days: 2100 has none); 5,218
    // weeks are 36,526.
    assertThat(week.plus(LocalDateTime.of(2026, 11, 2, 8, 0), 5218L * 5 * 480 + 1))
        .isEqualTo("2126-11-04T08:01");
  }
}

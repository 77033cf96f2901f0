package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.ProjectQuestions;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Published networks entered as own tasks come out of the whole planner as published. */
class PublishedNetworksTest {
  private static final Facts FACTS = Facts.supplied();

  static Plan planned(OwnScope scope, RunOptions options) {
    var result = Planner.plan(scope.scope(), FACTS, Optional.empty(), options);
    assertThat(result.faults()).isEmpty();
    return result.plan().orElseThrow();
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "nine-activity-site, Every day",
    "fourteen-activity-plant, Every day",
    "arrow-seven, Every day",
    "fictitious-twelve, Every day",
    "carriage-house, Every day",
    "container-home, Every day",
    "foundry, Every day",
    "delivery-and-windows, Every day",
    "nine-activity-site, Weekdays",
    "fourteen-activity-plant, Six days",
    "container-home, Weekdays"
  })
  void every_date_and_float_is_the_published_one(String name, String week) {
    var scope = PublishedNetworks.worked(name).project(ProjectQuestions.CALENDAR, week);
    var plan = planned(scope, RunOptions.NONE);
    var programme = plan.programme();
    assertThat(programme.durationDays())
        .isEqualByComparingTo(days(PublishedNetworks.duration(name)));
    assertThat(programme.crewLimited()).isFalse();
    assertThat(programme.proved()).isTrue();
    var calendar = calendar(week);
    var rows = PublishedNetworks.rows(name);
    assertThat(programme.tasks()).hasSameSizeAs(rows);
    for (var row : rows) {
      var t = programme.task(row.id()).orElseThrow();
      assertThat(
              List.of(
                  day(calendar, t.earlyStart()),
                  day(calendar, t.earlyFinish()),
                  day(calendar, t.lateStart()),
                  day(calendar, t.lateFinish())))
          .as(row.id())
          .isEqualTo(row.dates());
      assertThat(t.totalFloatDays()).as(row.id()).isEqualByComparingTo(days(row.totalFloat()));
      assertThat(t.freeFloatDays()).as(row.id()).isEqualByComparingTo(days(row.freeFloat()));
      assertThat(t.critical()).as(row.id()).isEqualTo(row.critical());
      assertThat(t.drivesMoveIn()).as(row.id()).isEqualTo(row.critical());
      assertThat(t.start()).isEqualTo(t.earlyStart());
    }
    PlanChecker.check(plan);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "nine-activity-site, A C F I",
    "fourteen-activity-plant, A B C E F J L N",
    "arrow-seven, 1-3 3-4 4-5 5-6",
    "fictitious-twelve, 1 2 5 9 12",
    "foundry, A C E G H",
    "container-home, PERM ORD DEL MOD SET WLD FRM RPL REL INSP INS DRY PNT CAB FLR FIN MOVE"
  })
  void critical_and_driving_path_are_the_published_one(String name, String path) {
    var programme = planned(PublishedNetworks.worked(name), RunOptions.NONE).programme();
    assertThat(programme.criticalPath()).containsExactly(path.split(" "));
    assertThat(programme.drivingPath()).containsExactly(path.split(" "));
  }

  // Own example, worked with the federal holidays of the United States (5 U.S.C. 6103).
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"Weekdays, 2027-03-04", "Six days, 2027-02-11"})
  void last_day_agrees_with_the_calendar_and_its_holidays(String week, LocalDate last) {
    var scope = PublishedNetworks.worked("container-home").project(ProjectQuestions.CALENDAR, week);
    for (var day :
        List.of("2026-11-11", "2026-11-26", "2026-12-25", "2027-01-01", "2027-01-18", "2027-02-15"))
      scope.holiday(LocalDate.parse(day));
    var programme = planned(scope, RunOptions.NONE).programme();
    assertThat(programme.task("FIN").orElseThrow().lastDay()).isEqualTo(last);
    assertThat(programme.task("MOVE").orElseThrow().lastDay()).isEqualTo(last);
    assertThat(programme.finish()).isEqualTo(last);
    assertThat(programme.start()).isEqualTo(OwnScope.MONDAY);
  }

  static Stream<String> instances() {
    return Stream.of("j30", "j60", "j120").flatMap(s -> PublishedNetworks.names(s).stream());
  }

  // MPM-Time of the instance's own file: R. Kolisch, A. Sprecher, PSPLIB, EJOR 96 (1996) 205-216.
  @ParameterizedTest(name = "{0}")
  @MethodSource("instances")
  void critical_path_of_every_library_instance_is_the_published_one(String name) {
    var instance = PublishedNetworks.psplib(name);
    var plan = planned(instance.scope(), RunOptions.NONE);
    var programme = plan.programme();
    var calendar = calendar("Every day");
    var latest =
        programme.tasks().stream().map(DatedTask::earlyFinish).max(LocalDateTime::compareTo);
    assertThat(day(calendar, latest.orElseThrow())).isEqualTo(instance.criticalPath());
    assertThat(programme.durationDays()).isGreaterThanOrEqualTo(days(instance.criticalPath()));
    assertThat(programme.durationDays().subtract(programme.gapDays()))
        .isEqualByComparingTo(programme.lowerBoundDays());
    PlanChecker.check(plan);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"j30/j301_1.sm", "j60/j605_1.sm"})
  void the_driving_path_leads_back_to_the_start_without_a_gap(String name) {
    var programme = planned(PublishedNetworks.psplib(name).scope(), RunOptions.NONE).programme();
    assertThat(programme.crewLimited()).isTrue();
    var first = programme.task(programme.drivingPath().get(0)).orElseThrow();
    assertThat(first.firstDay()).isEqualTo(programme.start());
    for (int i = 1; i < programme.drivingPath().size(); i++) {
      var before = programme.task(programme.drivingPath().get(i - 1)).orElseThrow();
      var after = programme.task(programme.drivingPath().get(i)).orElseThrow();
      var calendar = calendar("Every day");
      assertThat(day(calendar, after.start())).isEqualTo(day(calendar, before.finish()));
      assertThat(after.waitsForIds()).contains(before.id());
    }
  }

  private static WorkCalendar calendar(String week) {
    return switch (week) {
      case "Weekdays" -> WorkCalendar.weekdays(List.of());
      case "Six days" -> WorkCalendar.sixDays(List.of());
      default -> WorkCalendar.everyDay(List.of());
    };
  }

  private static int day(WorkCalendar calendar, LocalDateTime moment) {
    long minutes = calendar.between(OwnScope.MONDAY.atStartOfDay(), moment);
    assertThat(minutes % 480).isZero();
    return (int) (minutes / 480);
  }

  private static BigDecimal days(int number) {
    return BigDecimal.valueOf(number);
  }
}

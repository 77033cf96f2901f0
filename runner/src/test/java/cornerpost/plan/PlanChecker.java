package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.HolidayEntry;
import cornerpost.work.WorkLink;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks at a programme from outside: every link, every date, every crew number. It uses nothing of
 * the planner's but calendars' counting of minutes.
 */
final class PlanChecker {
  private final Plan plan;
  private final Map<String, WorkCalendar> calendars = new HashMap<>();

  private PlanChecker(Plan plan) {
    this.plan = plan;
    for (var c : plan.work().calendars()) {
      var days =
          c.keepsHolidays()
              ? plan.work().holidays().stream().map(HolidayEntry::date).toList()
              : List.<LocalDate>of();
      var minutes =
          c.hours().stream().map(h -> h.multiply(BigDecimal.valueOf(60)).intValue()).toList();
      calendars.put(c.name(), WorkCalendar.of(c.name(), minutes, days));
    }
  }

  static void check(Plan plan) {
    var checker = new PlanChecker(plan);
    plan.work().links().forEach(checker::link);
    plan.programme().tasks().forEach(checker::task);
    plan.work().crews().forEach(c -> checker.crew(c.name(), c.available()));
  }

  private DatedTask task(String id) {
    return plan.programme().task(id).orElseThrow();
  }

  private void link(WorkLink l) {
    var before = task(l.before());
    var after = task(l.after());
    if (after.done() || after.started()) return;
    var from =
        switch (l.relation()) {
          case FINISH_TO_START, FINISH_TO_FINISH -> before.finish();
          case START_TO_START, START_TO_FINISH -> before.start();
        };
    var held =
        switch (l.relation()) {
          case FINISH_TO_START, START_TO_START -> after.start();
          case FINISH_TO_FINISH, START_TO_FINISH -> after.finish();
        };
    var name = l.before() + " " + l.relation().label() + " " + l.after();
    boolean elapsed = l.lagUnit() == DurationUnit.ELAPSED_DAYS;
    var calendar = calendars.get(after.task().calendar());
    boolean holdsFinish =
        l.relation().label().endsWith("finish"); // a night between the two is the same moment
    if (holdsFinish && !before.task().elapsed()) {
      // To one who works weekends, Saturday 08:00 and the Sunday before at 16:00 are one moment.
      from = calendars.get(before.task().calendar()).lastEnd(from);
    }
    if (l.lagMinutes() == 0 && !holdsFinish) {
      assertThat(held).as(name).isAfterOrEqualTo(from);
    } else if (elapsed && !holdsFinish) {
      assertThat(held).as(name).isAfterOrEqualTo(from.plusMinutes(l.lagMinutes()));
    } else if (!elapsed) {
      assertThat(calendar.between(from, held)).as(name).isGreaterThanOrEqualTo(l.lagMinutes());
    }
  }

  private void task(DatedTask t) {
    assertThat(t.finish()).as(t.id()).isAfterOrEqualTo(t.start());
    if (t.done()) return;
    assertThat(t.finish()).as(t.id()).isAfterOrEqualTo(plan.statusDate().atStartOfDay());
    if (t.started()) return;
    assertThat(t.start()).as(t.id()).isAfterOrEqualTo(plan.statusDate().atStartOfDay());
    t.task()
        .notBefore()
        .ifPresent(d -> assertThat(t.start()).as(t.id()).isAfterOrEqualTo(d.atStartOfDay()));
    if (t.task().demands().isEmpty()) {
      var calendar = calendars.get(t.task().calendar());
      long minutes =
          t.task().elapsed()
              ? ChronoUnit.MINUTES.between(t.start(), t.finish())
              : calendar.between(t.start(), t.finish());
      assertThat(minutes).as(t.id()).isEqualTo(t.task().minutes());
    }
  }

  private void crew(String crew, int available) {
    var users =
        plan.programme().tasks().stream()
            .filter(t -> t.task().demands().containsKey(crew) && !t.done())
            .filter(t -> t.start().isBefore(t.finish()))
            .toList();
    for (var moment : users.stream().map(this::heldFrom).toList()) {
      assertThat(atWork(users, crew, moment))
          .as(crew + " at " + moment)
          .isLessThanOrEqualTo(available);
    }
  }

  private int atWork(List<DatedTask> users, String crew, LocalDateTime moment) {
    return users.stream()
        .filter(t -> !heldFrom(t).isAfter(moment) && t.finish().isAfter(moment))
        .mapToInt(t -> t.task().demands().get(crew))
        .sum();
  }

  /** A task under way has its crew from when it goes on, as late as what is left of it allows. */
  private LocalDateTime heldFrom(DatedTask t) {
    if (!t.started()) return t.start();
    var entry = plan.scope().progress().stream().filter(e -> e.task().equals(t.id())).findFirst();
    if (entry.isEmpty()) return t.start();
    var e = entry.get();
    var calendar = calendars.get(t.task().calendar());
    long day = t.task().elapsed() ? 24 * 60 : calendar.dayMinutes();
    if (e.remaining().isEmpty() && e.complete().isEmpty()) return t.start();
    long left =
        e.remaining()
            .map(d -> d.multiply(BigDecimal.valueOf(day)))
            .orElseGet(
                () ->
                    BigDecimal.ONE
                        .subtract(e.complete().orElseThrow())
                        .multiply(BigDecimal.valueOf(t.task().minutes())))
            .setScale(0, java.math.RoundingMode.UP)
            .longValueExact();
    if (t.task().elapsed()) return t.finish().minusMinutes(left);
    long low = 0;
    long high = ChronoUnit.MINUTES.between(t.start(), t.finish());
    while (low < high) {
      long middle = (low + high + 1) / 2;
      boolean enough = calendar.between(t.start().plusMinutes(middle), t.finish()) >= left;
      if (enough) low = middle;
      else high = middle - 1;
    }
    return t.start().plusMinutes(low);
  }
}

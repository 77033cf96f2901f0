package cornerpost.report;

import cornerpost.plan.DatedTask;
import cornerpost.plan.EventPath;
import cornerpost.plan.Plan;
import cornerpost.plan.Programme;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.HolidayEntry;
import cornerpost.work.WorkLink;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The part of the JSON that tells when what is done. */
final class ScheduleJson {
  private static final BigDecimal ELAPSED_DAY = BigDecimal.valueOf(24 * 60);
  private static final BigDecimal HOUR = BigDecimal.valueOf(60);

  private final Plan plan;
  private final Programme programme;
  private final JsonOut out;
  private final Map<String, WorkCalendar> calendars = new HashMap<>();

  ScheduleJson(Plan plan, JsonOut out) {
    this.plan = plan;
    this.programme = plan.programme();
    this.out = out;
    var days = plan.work().holidays().stream().map(HolidayEntry::date).toList();
    for (var c : plan.work().calendars()) {
      calendars.put(c.name(), calendar(c, c.keepsHolidays() ? days : List.of()));
    }
  }

  private static WorkCalendar calendar(CalendarEntry entry, List<java.time.LocalDate> holidays) {
    var minutes = entry.hours().stream().map(h -> h.multiply(HOUR).intValue()).toList();
    return WorkCalendar.of(entry.name(), minutes, Set.copyOf(holidays));
  }

  void write() {
    out.object("schedule", this::schedule);
  }

  private void schedule() {
    out.date("start", programme.start());
    out.date("finish", programme.finish());
    out.date("moveIn", programme.moveIn());
    number("durationDays", programme.durationDays());
    out.yes("crewLimited", programme.crewLimited());
    number("lowerBoundDays", programme.lowerBoundDays());
    number("gapDays", programme.gapDays());
    out.yes("provedShortest", programme.proved());
    out.text("delivery", programme.delivery());
    out.number("deliveryFloatDays", programme.deliveryFloatDays());
    out.texts("criticalPath", programme.criticalPath());
    out.texts("drivingPath", programme.drivingPath());
    out.texts("deliveryToMoveIn", programme.deliveryToMoveIn());
    out.object("longestPath", () -> path(programme.path()));
    out.objects("tasks", programme.tasks(), this::task);
    out.objects("links", plan.work().links(), this::link);
    out.objects(
        "crews",
        plan.work().crews(),
        c -> {
          out.text("name", c.name());
          out.number("available", c.available());
          out.text("calendar", c.calendar());
        });
    out.objects(
        "crewLoad",
        programme.crewLoad(),
        d -> {
          out.text("crew", d.crew());
          out.date("week", d.week());
          number("personDays", d.personDays());
          number("available", d.available());
        });
    out.objects(
        "calendars",
        plan.work().calendars(),
        c -> {
          out.text("name", c.name());
          var days = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
          var hours = new java.util.LinkedHashMap<String, BigDecimal>();
          for (int d = 0; d < 7; d++) hours.put(days.get(d), c.hours().get(d));
          out.numbers("hours", hours);
          out.yes("keepsHolidays", c.keepsHolidays());
        });
    out.objects(
        "holidays",
        plan.work().holidays(),
        h -> {
          out.date("date", h.date());
          out.text("name", h.name());
        });
    out.objects(
        "nearPaths",
        programme.slippage().nearPaths(),
        n -> {
          out.texts("ids", n.ids());
          out.text("through", n.through());
          number("floatDays", n.floatDays());
        });
    out.objects(
        "slips",
        programme.tasks().stream()
            .filter(t -> programme.slippage().tasks().containsKey(t.id()))
            .toList(),
        t -> {
          var slip = programme.slippage().tasks().get(t.id());
          out.text("id", t.id());
          number("floatDays", slip.floatDays());
          out.number("oneDayLate", slip.finishMoves().get(0));
          out.number("fiveDaysLate", slip.finishMoves().get(1));
          out.number("tenDaysLate", slip.finishMoves().get(2));
        });
    out.objects(
        "findings",
        programme.findings(),
        f -> {
          out.text("check", f.check());
          out.yes("passed", f.passed());
          out.text("message", f.message());
          out.texts("ids", f.ids());
        });
  }

  private void path(EventPath p) {
    out.text("from", p.from());
    out.text("to", p.to());
    out.text("words", p.words());
    out.text("calendar", p.calendar());
    number("workingDays", p.workingDays());
    number("aloneDays", p.aloneDays());
    out.number("elapsedDays", p.elapsedDays());
    number("slackDays", p.slackDays());
    out.objects(
        "steps",
        p.steps(),
        s -> {
          out.text("id", s.id());
          out.text("name", s.name());
          out.text("driver", s.driver());
          out.date("start", s.firstDay());
          out.date("finish", s.lastDay());
          number("durationDays", s.lastsDays());
          out.text("calendar", s.calendar());
          number("workingDays", s.workingDays());
          out.number("elapsedDays", s.elapsedDays());
          out.text("heldBy", s.heldBy());
        });
  }

  private void task(DatedTask t) {
    var task = t.task();
    out.text("id", t.id());
    out.text("name", task.name());
    out.text("stage", task.stage().label());
    out.date("start", t.firstDay());
    out.date("finish", t.lastDay());
    number("durationDays", t.durationDays());
    out.date("earlyStart", t.earlyFirstDay());
    out.date("earlyFinish", t.earlyLastDay());
    out.date("lateStart", t.lateFirstDay());
    out.date("lateFinish", t.lateLastDay());
    number("totalFloatDays", t.totalFloatDays());
    number("freeFloatDays", t.freeFloatDays());
    out.yes("critical", t.critical());
    out.numbers("crews", new TreeMap<>(task.demands()));
    out.yes("drivesMoveIn", t.drivesMoveIn());
    out.text("startAt", Words.iso(t.start()));
    out.text("finishAt", Words.iso(t.finish()));
    out.text("earlyStartAt", Words.iso(t.earlyStart()));
    out.text("earlyFinishAt", Words.iso(t.earlyFinish()));
    out.text("lateStartAt", Words.iso(t.lateStart()));
    out.text("lateFinishAt", Words.iso(t.lateFinish()));
    out.number("earlyStartOffsetDays", offset(t.earlyStart()));
    out.number("earlyFinishOffsetDays", offset(t.earlyFinish()));
    out.number("lateStartOffsetDays", offset(t.lateStart()));
    out.number("lateFinishOffsetDays", offset(t.lateFinish()));
    out.text("kind", task.kind().name().toLowerCase(Locale.ROOT));
    out.text("calendar", task.calendar());
    out.yes("elapsed", task.elapsed());
    out.number("minutes", task.minutes());
    out.number("optimisticMinutes", task.optimisticMinutes());
    out.number("pessimisticMinutes", task.pessimisticMinutes());
    out.number("hours", task.hours());
    out.text("trade", task.trade().map(x -> x.label()));
    out.text("party", task.party().map(x -> x.label()));
    out.yes("stoppedByWeather", task.weather());
    out.text("notBefore", task.notBefore());
    out.text("deadline", task.deadline());
    out.yes("started", t.started());
    out.yes("done", t.done());
    out.text("why", task.why());
    out.text("waitsFor", t.waitsFor());
    out.texts("waitsForIds", t.waitsForIds());
    out.texts("costLines", task.costLines());
  }

  /** Working days of the plan's calendar from the start of the plan; before it below nothing. */
  private java.util.Optional<BigDecimal> offset(LocalDateTime moment) {
    var calendar = calendars.get(plan.work().defaultCalendar());
    if (calendar == null) return java.util.Optional.empty();
    return java.util.Optional.of(
        BigDecimal.valueOf(calendar.between(programme.start().atStartOfDay(), moment))
            .divide(BigDecimal.valueOf(calendar.dayMinutes()), MathContext.DECIMAL64)
            .stripTrailingZeros());
  }

  private void link(WorkLink l) {
    out.text("before", l.before());
    out.text("after", l.after());
    out.text("relation", l.relation().label());
    number("lag", lag(l));
    out.text("lagUnit", l.lagUnit().label());
    out.number("lagMinutes", l.lagMinutes());
    out.text("why", l.why());
  }

  private BigDecimal lag(WorkLink l) {
    var unit =
        switch (l.lagUnit()) {
          case HOURS -> HOUR;
          case ELAPSED_DAYS -> ELAPSED_DAY;
          case DAYS -> dayOf(l.after());
        };
    return BigDecimal.valueOf(l.lagMinutes()).divide(unit, MathContext.DECIMAL64);
  }

  /** Minutes of a day of the task's own calendar; of its elapsed day where it runs on. */
  private BigDecimal dayOf(String taskId) {
    var name = plan.work().task(taskId).map(t -> t.calendar());
    var calendar = calendars.get(name.orElse(plan.work().defaultCalendar()));
    return calendar == null ? HOUR.multiply(BigDecimal.valueOf(8)) : minutes(calendar);
  }

  private static BigDecimal minutes(WorkCalendar calendar) {
    return BigDecimal.valueOf(calendar.dayMinutes());
  }

  private void number(String name, BigDecimal value) {
    out.number(name, value.stripTrailingZeros());
  }
}

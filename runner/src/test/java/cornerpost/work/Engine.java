package cornerpost.work;

import cornerpost.schedule.Activity;
import cornerpost.schedule.Crew;
import cornerpost.schedule.LagUnit;
import cornerpost.schedule.Link;
import cornerpost.schedule.Network;
import cornerpost.schedule.Passes;
import cornerpost.schedule.Progress;
import cornerpost.schedule.Relation;
import cornerpost.schedule.Timetable;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.HolidayEntry;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a work plan through the scheduling engine, which refuses a network that is not sound. */
final class Engine {
  private Engine() {}

  static Timetable dates(WorkPlan plan, LocalDateTime start) {
    var calendars = new HashMap<String, WorkCalendar>();
    for (var c : plan.calendars()) {
      var minutes =
          c.hours().stream().map(h -> h.multiply(BigDecimal.valueOf(60)).intValue()).toList();
      var days =
          c.keepsHolidays()
              ? plan.holidays().stream().map(HolidayEntry::date).toList()
              : List.<java.time.LocalDate>of();
      calendars.put(c.name(), WorkCalendar.of(c.name(), minutes, days));
    }
    var activities =
        plan.tasks().stream()
            .map(
                t ->
                    new Activity(
                        t.id(),
                        t.name(),
                        t.minutes(),
                        t.elapsed() ? LagUnit.ELAPSED_MINUTES : LagUnit.WORKING_MINUTES,
                        Optional.of(calendars.get(t.calendar())),
                        t.notBefore().map(d -> d.atStartOfDay()),
                        Optional.empty(),
                        t.demands(),
                        Progress.NONE))
            .toList();
    var links = plan.links().stream().map(l -> link(l)).toList();
    var crews =
        plan.crews().stream()
            .map(
                c ->
                    new Crew(
                        c.name(), c.available(), Optional.ofNullable(calendars.get(c.calendar()))))
            .toList();
    return Passes.of(
        Network.of(activities, links, crews, start, calendars.get(plan.defaultCalendar())));
  }

  private static Link link(WorkLink l) {
    return new Link(
        l.before(),
        l.after(),
        Map.of(
                "FINISH_TO_START", Relation.FINISH_TO_START,
                "START_TO_START", Relation.START_TO_START,
                "FINISH_TO_FINISH", Relation.FINISH_TO_FINISH,
                "START_TO_FINISH", Relation.START_TO_FINISH)
            .get(l.relation().name()),
        l.lagMinutes(),
        l.lagUnit() == DurationUnit.ELAPSED_DAYS
            ? LagUnit.ELAPSED_MINUTES
            : LagUnit.WORKING_MINUTES);
  }
}

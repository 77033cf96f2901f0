package cornerpost.plan;

import cornerpost.schedule.Activity;
import cornerpost.schedule.Crew;
import cornerpost.schedule.LagUnit;
import cornerpost.schedule.Link;
import cornerpost.schedule.Network;
import cornerpost.schedule.NetworkFault;
import cornerpost.schedule.Progress;
import cornerpost.schedule.Relation;
import cornerpost.schedule.WorkCalendar;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.OwnLink;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.work.WorkLink;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A work plan in the terms of the schedule engine: working minutes, calendars with their holidays,
 * moments instead of days.
 *
 * <p>The start date counts from its first minute, a deadline to its last. Nothing that has not
 * begun is planned before the first minute of the status date.
 */
final class WorkNetwork {
  private final WorkPlan work;
  private final Scope scope;
  private final LocalDate status;
  private final Problems problems;
  private final Map<String, WorkCalendar> calendars = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

  private WorkNetwork(WorkPlan work, Scope scope, LocalDate status, Problems problems) {
    this.status = status;
    this.work = work;
    this.scope = scope;
    this.problems = problems;
  }

  /** The network before any delay; empty, with the faults noted, if there can be none. */
  static Optional<Network> of(WorkPlan work, Scope scope, LocalDate status, Problems problems) {
    return new WorkNetwork(work, scope, status, problems).build();
  }

  private Optional<Network> build() {
    calendars();
    var standard = calendar(work.defaultCalendar(), OwnerSheet.PROJECT, standardCell());
    var crews = new ArrayList<Crew>();
    for (var c : work.crews()) {
      var calendar =
          c.calendar().isBlank()
              ? Optional.<WorkCalendar>empty()
              : calendar(c.calendar(), OwnerSheet.CREWS, crewCell(c.name()));
      crews.add(new Crew(c.name(), c.available(), calendar));
    }
    var progress = new ProgressMap(work, scope, calendars, status, problems).read();
    var booked = Bookings.of(scope, work, status);
    var activities = new ArrayList<Activity>();
    for (var t : work.tasks()) {
      activities.add(
          activity(
              t,
              progress.getOrDefault(t.id(), Progress.NONE),
              Optional.ofNullable(booked.get(t.id()))));
    }
    var links = work.links().stream().map(WorkNetwork::link).toList();
    if (standard.isEmpty() || problems.stop()) return Optional.empty();
    var start = scope.project().date(ProjectQuestions.START).atStartOfDay();
    var moment = Optional.of(status.atStartOfDay());
    var faults = Network.faults(activities, links, crews, start, standard.get(), moment);
    faults.forEach(this::note);
    if (!faults.isEmpty()) return Optional.empty();
    return Optional.of(Network.of(activities, links, crews, start, standard.get(), moment));
  }

  // ---- calendars --------------------------------------------------------------------------

  private void calendars() {
    var holidays = work.holidays().stream().map(HolidayEntry::date).toList();
    for (var c : work.calendars()) {
      var minutes =
          c.hours().stream()
              .map(
                  h ->
                      h.multiply(BigDecimal.valueOf(60))
                          .setScale(0, RoundingMode.HALF_UP)
                          .intValueExact())
              .toList();
      try {
        calendars.put(
            c.name(), WorkCalendar.of(c.name(), minutes, c.keepsHolidays() ? holidays : List.of()));
      } catch (IllegalArgumentException noTime) {
        problems.fault(
            OwnerSheet.CALENDARS,
            c.cell(),
            noTime.getMessage(),
            "expected working hours from 0 to 24 on each day, on one day more than nothing");
      }
    }
  }

  private Optional<WorkCalendar> calendar(String name, OwnerSheet sheet, String cell) {
    var found = Optional.ofNullable(calendars.get(name));
    if (found.isEmpty()) {
      problems.fault(
          sheet,
          cell,
          "calendar '" + name + "' is not known",
          "expected one of " + String.join(", ", calendars.keySet()));
    }
    return found;
  }

  private String standardCell() {
    return scope.project().find(ProjectQuestions.CALENDAR).map(a -> a.cell()).orElse("");
  }

  // ---- tasks and links --------------------------------------------------------------------

  private Activity activity(WorkTask t, Progress progress, Optional<LocalDate> booked) {
    var notBefore =
        booked.isEmpty() || t.notBefore().filter(booked.get()::isBefore).isPresent()
            ? t.notBefore()
            : booked;
    return new Activity(
        t.id(),
        t.name(),
        t.minutes(),
        t.elapsed() ? LagUnit.ELAPSED_MINUTES : LagUnit.WORKING_MINUTES,
        calendar(t.calendar(), OwnerSheet.OWN_TASKS, taskCell(t.id())),
        notBefore.map(LocalDate::atStartOfDay),
        t.deadline().map(d -> d.plusDays(1).atStartOfDay()),
        t.demands(),
        progress);
  }

  private static Link link(WorkLink l) {
    return new Link(
        l.before(),
        l.after(),
        relation(l.relation()),
        l.lagMinutes(),
        l.lagUnit() == DurationUnit.ELAPSED_DAYS
            ? LagUnit.ELAPSED_MINUTES
            : LagUnit.WORKING_MINUTES);
  }

  static Relation relation(LinkRelation r) {
    return switch (r) {
      case FINISH_TO_START -> Relation.FINISH_TO_START;
      case START_TO_START -> Relation.START_TO_START;
      case FINISH_TO_FINISH -> Relation.FINISH_TO_FINISH;
      case START_TO_FINISH -> Relation.START_TO_FINISH;
    };
  }

  // ---- faults of the engine, with the cells they come from ----------------------------------

  private String taskCell(String id) {
    return scope.ownTasks().stream()
        .filter(t -> t.id().equals(id))
        .map(t -> t.cell())
        .findFirst()
        .orElse("");
  }

  private String crewCell(String name) {
    return scope.crews().stream()
        .filter(c -> c.name().equals(name))
        .map(c -> c.cell())
        .findFirst()
        .orElse("");
  }

  private List<String> linkCells(String before, String after) {
    return scope.ownLinks().stream()
        .filter(l -> names(l.before(), before) && names(l.after(), after))
        .map(OwnLink::cell)
        .toList();
  }

  /** A link may name a task by its id or by its name. */
  private boolean names(String entered, String id) {
    return entered.equals(id)
        || id.equals(entered + ":own") // the owner's part of mixed work
        || work.task(id).filter(t -> t.name().equalsIgnoreCase(entered)).isPresent();
  }

  private void note(NetworkFault fault) {
    if (fault instanceof NetworkFault.Loop loop) {
      loop(loop);
    } else if (fault instanceof NetworkFault.DuplicateActivity twice) {
      var cells =
          scope.ownTasks().stream()
              .filter(t -> t.id().equals(twice.id()))
              .map(t -> t.cell())
              .toList();
      problems.fault(
          OwnerSheet.OWN_TASKS,
          cells.isEmpty() ? "" : cells.get(cells.size() - 1),
          "a second task with the id '" + twice.id() + "'",
          "expected an id that no other task has");
    } else if (fault instanceof NetworkFault.DuplicateCrew twice) {
      problems.fault(
          OwnerSheet.CREWS,
          crewCell(twice.crew()),
          "two crews are called '" + twice.crew() + "'",
          "expected a name that no other crew has");
    } else if (fault instanceof NetworkFault.UnknownActivity unknown) {
      var cells = linkCells(unknown.link().before(), unknown.link().after());
      problems.fault(
          OwnerSheet.OWN_LINKS,
          cells.isEmpty() ? "" : cells.get(0),
          "no task has the id '" + unknown.id() + "'",
          "expected the id of a task of the plan");
    } else if (fault instanceof NetworkFault.SelfLink self) {
      var cells = linkCells(self.link().before(), self.link().after());
      problems.fault(
          OwnerSheet.OWN_LINKS,
          cells.isEmpty() ? "" : cells.get(0),
          "task '" + self.link().before() + "' is linked to itself",
          "expected two different tasks");
    } else if (fault instanceof NetworkFault.UnknownCrew unknown) {
      problems.fault(
          OwnerSheet.OWN_TASKS,
          taskCell(unknown.activityId()),
          "task '" + unknown.activityId() + "' needs crew '" + unknown.crew() + "'",
          "expected a crew of sheet Crews");
    } else if (fault instanceof NetworkFault.DemandAboveAvailable above) {
      var own = taskCell(above.activityId());
      problems.fault(
          own.isEmpty() ? OwnerSheet.CREWS : OwnerSheet.OWN_TASKS,
          own.isEmpty() ? crewCell(above.crew()) : own,
          "task '"
              + above.activityId()
              + "' needs "
              + above.needed()
              + " of crew '"
              + above.crew()
              + "'",
          "expected at most the " + above.available() + " there are");
    } else if (fault instanceof NetworkFault.NoCommonTime none) {
      problems.fault(
          OwnerSheet.OWN_TASKS,
          taskCell(none.activityId()),
          none.message(),
          "expected calendars with hours in common");
    } else if (fault instanceof NetworkFault.ImpossibleProgress impossible) {
      problems.fault(
          OwnerSheet.PROGRESS,
          progressCell(impossible.activityId()),
          impossible.message(),
          "expected dates that can be");
    } else {
      problems.fault("", fault.message(), "expected a network that can be planned");
    }
  }

  private String progressCell(String id) {
    var entry = ProgressMap.entries(scope, work, status).get(id);
    return entry == null ? "" : entry.cell();
  }

  /** Names the tasks of a loop in order, with the cells of those of its links that are entered. */
  private void loop(NetworkFault.Loop loop) {
    var cells = new ArrayList<String>();
    for (int i = 0; i < loop.ids().size(); i++) {
      cells.addAll(linkCells(loop.ids().get(i), loop.ids().get((i + 1) % loop.ids().size())));
    }
    var ring =
        loop.names().stream().map(n -> "'" + n + "'").collect(Collectors.joining(" before "));
    var at =
        cells.size() < 2
            ? ""
            : " (links " + String.join(", ", cells.subList(1, cells.size())) + ")";
    problems.fault(
        OwnerSheet.OWN_LINKS,
        cells.isEmpty() ? "" : cells.get(0),
        "these tasks wait for each other in a loop: "
            + ring
            + " before '"
            + loop.names().get(0)
            + "'"
            + at,
        "expected no loop: remove one of these links");
  }
}

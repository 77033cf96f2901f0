package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Checks a finished schedule by its published dates alone; it uses nothing of the scheduler. */
final class Feasible {
  private Feasible() {}

  /** Every broken rule, in words; empty for a sound schedule. */
  static List<String> faults(CrewSchedule schedule, Map<WorkCalendar, PlainPlan.Table> tables) {
    var faults = crewFaults(schedule);
    Network network = schedule.network();
    var plan = new PlainPlan(network, tables, schedule.planned());
    for (int i = 0; i < network.activities().size(); i++) {
      Activity a = network.activities().get(i);
      Dates d = schedule.planned().get(i);
      if (!plan.startsAndLastsAsItMust(i)) {
        faults.add("task " + a.id() + " does not last as it must: " + d);
      }
      if (d.start().isBefore(network.start())
          || a.notBefore().isPresent() && d.start().isBefore(a.notBefore().get())) {
        faults.add("task " + a.id() + " starts too early: " + d);
      }
    }
    for (Link link : network.links()) {
      if (!plan.holds(link)) {
        faults.add("link broken: " + link);
      }
    }
    return faults;
  }

  /** Crew numbers at every start, which is where use can only rise. */
  static List<String> crewFaults(CrewSchedule schedule) {
    var faults = new ArrayList<String>();
    Network network = schedule.network();
    for (Crew crew : network.crews()) {
      for (Dates at : schedule.planned()) {
        int used = 0;
        for (int i = 0; i < network.activities().size(); i++) {
          Dates d = schedule.planned().get(i);
          if (!d.start().isAfter(at.start()) && d.finish().isAfter(at.start())) {
            used += network.activities().get(i).demands().getOrDefault(crew.name(), 0);
          }
        }
        if (used > crew.available()) {
          faults.add(
              "crew "
                  + crew.name()
                  + " has "
                  + crew.available()
                  + ", used "
                  + used
                  + " at "
                  + at.start());
        }
      }
    }
    return faults;
  }

  /** Finish-to-start links and durations of a problem in whole days, from the planned dates. */
  static List<String> dayFaults(Networks.Problem problem, CrewSchedule schedule) {
    var faults = crewFaults(schedule);
    for (int i = 0; i < problem.duration().length; i++) {
      Dates d = schedule.planned("" + (i + 1));
      long start = Networks.day(d.start());
      if (problem.duration()[i] > 0 && Networks.day(d.finish()) - start != problem.duration()[i]) {
        faults.add("task " + (i + 1) + " lasts " + d);
      }
      for (int s : problem.successors()[i]) {
        if (Networks.day(schedule.planned("" + (s + 1)).start()) < Networks.day(d.finish())) {
          faults.add("task " + (s + 1) + " starts before task " + (i + 1) + " ends");
        }
      }
    }
    return faults;
  }
}

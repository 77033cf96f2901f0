package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * Small networks with everything in them: calendars, relations, lags, dates, waits, milestones and
 * crews.
 */
final class RandomNetworks {
  static final Set<java.time.LocalDate> HOLIDAYS =
      Set.of(
          Networks.MONDAY.plusDays(2),
          Networks.MONDAY.plusDays(11),
          Networks.MONDAY.plusDays(14),
          Networks.MONDAY.plusDays(15),
          Networks.MONDAY.plusDays(19));
  static final List<WorkCalendar> CALENDARS =
      List.of(
          WorkCalendar.weekdays(HOLIDAYS),
          WorkCalendar.sixDays(Set.of()),
          WorkCalendar.everyDay(HOLIDAYS),
          WorkCalendar.weekends(Set.of()),
          WorkCalendar.roundTheClock(),
          WorkCalendar.of("Odd hours", List.of(600, 0, 480, 300, 1200, 0, 45), HOLIDAYS));

  private RandomNetworks() {}

  static Network of(long seed) {
    return of(seed, CALENDARS);
  }

  static Network of(long seed, List<WorkCalendar> calendars) {
    var random = new Random(seed);
    int n = 2 + random.nextInt(9);
    int crews = random.nextInt(4);
    var crewList = new ArrayList<Crew>();
    for (int c = 0; c < crews; c++) {
      crewList.add(Crew.of("crew " + c, 1 + random.nextInt(4)));
    }
    var activities = new ArrayList<Activity>();
    for (int i = 0; i < n; i++) {
      long minutes = random.nextInt(5) == 0 ? 0 : (1 + random.nextInt(8)) * 120L;
      if (random.nextInt(6) == 0) {
        minutes = random.nextInt(1500);
      }
      var a =
          random.nextInt(5) == 0 && calendars.size() > 1
              ? Activity.elapsed("" + i, "task " + i, minutes)
              : Activity.working("" + i, "task " + i, minutes);
      a = a.in(calendars.get(random.nextInt(calendars.size())));
      if (random.nextInt(6) == 0) {
        a = a.notBefore(Networks.MONDAY.atStartOfDay().plusMinutes(random.nextInt(6 * 1440)));
      }
      for (Crew c : crewList) {
        if (random.nextInt(2) == 0) {
          a = a.needing(1 + random.nextInt(c.available()), c.name());
        }
      }
      activities.add(a);
    }
    var names = new ArrayList<Integer>();
    for (int i = 0; i < n; i++) {
      names.add(i);
    }
    java.util.Collections.shuffle(names, random); // the order of waiting is not that of the list
    var links = new ArrayList<Link>();
    int count = random.nextInt(2 * n);
    for (int k = 0; k < count; k++) {
      int x = random.nextInt(n);
      int y = random.nextInt(n);
      if (x != y) {
        links.add(
            new Link(
                "" + names.get(Math.min(x, y)),
                "" + names.get(Math.max(x, y)),
                Relation.values()[random.nextInt(4)],
                random.nextInt(2) == 0 ? 0 : random.nextInt(1400) - 500,
                LagUnit.values()[random.nextInt(2)]));
      }
    }
    return Network.of(
        activities, links, crewList, Networks.MONDAY.atStartOfDay(), calendars.get(0));
  }
}

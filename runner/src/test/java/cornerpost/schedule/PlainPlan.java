package cornerpost.schedule;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The plain method to hold the engine against: a table of every minute, and links that are looked
 * at again and again, each task stepping a minute later until all of them hold. It shares no
 * arithmetic with the engine.
 */
final class PlainPlan {
  private static final int DAYS = 400;
  private static final int MINUTES = DAYS * 1440;
  private static final LocalDate ORIGIN = Networks.MONDAY.minusDays(28);

  /** A calendar minute by minute: a minute is worked or not. */
  static final class Table {
    final int[] workedBefore = new int[MINUTES + 1];
    final int[] beginning; // of each working minute
    final int[] ending; // of the last of that many working minutes

    Table(WorkCalendar calendar) {
      boolean[] works = new boolean[MINUTES];
      for (int d = 0; d < DAYS; d++) {
        LocalDate date = ORIGIN.plusDays(d);
        if (calendar.holidays().contains(date)) {
          continue;
        }
        int long_ = calendar.minutesOn(date.getDayOfWeek());
        int from = 480 + long_ > 1440 ? 1440 - long_ : 480;
        for (int m = from; m < from + long_; m++) {
          works[d * 1440 + m] = true;
        }
      }
      beginning = new int[MINUTES];
      ending = new int[MINUTES + 1];
      for (int m = 0; m < MINUTES; m++) {
        if (works[m]) {
          beginning[workedBefore[m]] = m;
          ending[workedBefore[m] + 1] = m + 1;
        }
        workedBefore[m + 1] = workedBefore[m] + (works[m] ? 1 : 0);
      }
    }

    boolean works(int minute) {
      return workedBefore[minute + 1] > workedBefore[minute];
    }

    int endOfLastWorkingMinute(int moment) {
      int m = moment;
      while (m > 0 && !works(m - 1)) {
        m--;
      }
      return m;
    }
  }

  private final Network network;
  private final Map<WorkCalendar, Table> tables;
  final int[] start;
  final int[] finish;

  PlainPlan(Network network, Map<WorkCalendar, Table> tables) {
    this.network = network;
    this.tables = tables;
    int n = network.activities().size();
    start = new int[n];
    finish = new int[n];
    for (int i = 0; i < n; i++) {
      Activity a = network.activities().get(i);
      int from = minute(network.start());
      if (a.notBefore().isPresent()) {
        from = Math.max(from, minute(a.notBefore().get()));
      }
      place(i, from);
    }
    boolean moved = true;
    while (moved) {
      moved = false;
      for (Link link : network.links()) {
        int j = network.indexOf(link.after());
        while (!holds(link)) {
          place(j, start[j] + 1);
          moved = true;
        }
      }
    }
  }

  static int minute(java.time.LocalDateTime moment) {
    return (int) java.time.Duration.between(ORIGIN.atStartOfDay(), moment).toMinutes();
  }

  private Table table(int i) {
    return tables.computeIfAbsent(network.calendarOf(network.activities().get(i).id()), Table::new);
  }

  /**
   * Puts the start at the first moment from there on at which the task may start, and works out its
   * finish.
   */
  private void place(int i, int from) {
    Activity a = network.activities().get(i);
    Table t = table(i);
    int m = from;
    if (a.isElapsed()) {
      start[i] = m;
      finish[i] = m + (int) a.minutes();
      return;
    }
    if (a.isMilestone()) {
      while (!t.works(m) && !t.works(m - 1)) {
        m++;
      }
      start[i] = m;
      finish[i] = m;
      return;
    }
    while (!t.works(m)) {
      m++;
    }
    start[i] = m;
    finish[i] = t.ending[t.workedBefore[m] + (int) a.minutes()];
  }

  /** The relation in words, as a condition. */
  boolean holds(Link link) {
    int i = network.indexOf(link.before());
    int j = network.indexOf(link.after());
    boolean elapsedBefore = network.activities().get(i).isElapsed();
    int lag = (int) link.lagMinutes();
    boolean plain = lag == 0 || link.lagUnit() == LagUnit.ELAPSED_MINUTES;
    Table t = table(j);
    int[] w = t.workedBefore;
    return switch (link.relation()) {
      case FINISH_TO_START ->
          plain ? start[j] >= finish[i] + lag : w[start[j]] - w[finish[i]] >= lag;
      case START_TO_START ->
          plain ? start[j] >= start[i] + lag : start[j] >= t.beginning[w[start[i]] + lag];
      case FINISH_TO_FINISH, START_TO_FINISH -> {
        int from = link.relation() == Relation.FINISH_TO_FINISH ? finish[i] : start[i];
        if (!elapsedBefore) {
          from = table(i).endOfLastWorkingMinute(from);
        }
        yield plain ? finish[j] >= from + lag : w[finish[j]] - w[from] >= lag;
      }
    };
  }

  /** A plan given from outside, to see whether its links hold. */
  PlainPlan(Network network, Map<WorkCalendar, Table> tables, List<Dates> given) {
    this.network = network;
    this.tables = tables;
    start = given.stream().mapToInt(d -> minute(d.start())).toArray();
    finish = given.stream().mapToInt(d -> minute(d.finish())).toArray();
  }

  boolean startsAndLastsAsItMust(int i) {
    int s = start[i];
    int f = finish[i];
    place(i, s);
    boolean same = start[i] == s && finish[i] == f;
    start[i] = s;
    finish[i] = f;
    return same;
  }

  static Map<WorkCalendar, Table> tables() {
    return new HashMap<>();
  }
}

package cornerpost.schedule;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Early and late dates, float and the driving path of a network, crews left aside. Made by {@link
 * Passes}.
 */
public final class Timetable {
  private final Network network;
  private final Graph graph;
  private final Sweep early;
  private final long[] late;
  private final Floats floats;
  private final long[] minutes;
  private final List<Timing> timings;

  Timetable(Network network, Sweep early, long[] minutes) {
    this.network = network;
    this.graph = network.graph();
    this.early = early;
    this.minutes = minutes;
    floats = Floats.of(early, minutes);
    late = floats.latePlace();
    boolean[] drivesFinish = early.drivingFinish(minutes);
    var all = new ArrayList<Timing>();
    for (int i = 0; i < graph.size; i++) {
      all.add(timing(i, drivesFinish[i]));
    }
    timings = List.copyOf(all);
  }

  private Timing timing(int i, boolean drivesFinish) {
    Activity a = network.activities().get(i);
    boolean followsFinish = early.followsFinish(i);
    var dates = ShownDays.dates(early.start[i], early.finish[i], followsFinish);
    long day = a.isElapsed() ? Minutes.A_DAY : graph.calendar[i].dayMinutes();
    if (graph.state[i] == Graph.DONE) {
      return new Timing(a, dates, dates, 0, 0, day, drivesFinish, drivesFinish, List.of(), false);
    }
    long lateStart =
        graph.state[i] == Graph.RUNNING ? graph.realStart[i] : graph.startAt(i, late[i]);
    long lateFinish = graph.finishAt(i, late[i], minutes[i]);
    long total = floats.total()[i];
    var drivers = new ArrayList<Link>();
    for (int k = graph.inFirst[i]; k < graph.inFirst[i + 1]; k++) {
      if (early.drives(graph.in[k], minutes)) {
        drivers.add(network.links().get(graph.in[k]));
      }
    }
    return new Timing(
        a,
        dates,
        ShownDays.dates(lateStart, lateFinish, followsFinish),
        total,
        floats.free()[i],
        day,
        drivesFinish,
        drivesFinish || total <= 0,
        drivers,
        early.drivenByDate(i, minutes));
  }

  public Network network() {
    return network;
  }

  /** The earliest start of a task; the network's start moment if it has none. */
  public LocalDateTime start() {
    return Minutes.moment(Arrays.stream(early.start).min().orElse(graph.start));
  }

  /** The latest finish of a task; the network's start moment if it has none. */
  public LocalDateTime finish() {
    return Minutes.moment(early.end);
  }

  /** The day on which the last task is done, as shown to people. */
  public LocalDate lastDay() {
    return timings.stream()
        .map(t -> t.early().lastDay())
        .max(LocalDate::compareTo)
        .orElse(network.start().toLocalDate());
  }

  /** From the network's start moment to the finish, in days of its default calendar. */
  public double durationDays() {
    WorkCalendar c = network.defaultCalendar();
    return (double) c.between(network.start(), finish()) / c.dayMinutes();
  }

  /**
   * By how many calendar days the last day moves if a task starts late, all else as planned; by
   * task id, one number for each delay. Tasks that have begun are left out.
   *
   * @param delays in days of the task's own calendar, elapsed days of a wait; 0 or more
   */
  public Map<String, List<Integer>> finishMoves(List<Integer> delays) {
    return FinishMoves.of(this, early, minutes, delays);
  }

  /** In the order of the network's tasks. */
  public List<Timing> timings() {
    return timings;
  }

  public Timing timing(String id) {
    return timings.get(network.indexOf(id));
  }

  /**
   * The longest path: a chain of tasks, each driven by the one before, that ends with the last.
   * Empty without tasks.
   */
  public List<String> longestPath() {
    int last = -1;
    for (int i : graph.order()) {
      if (early.finish[i] == early.end) {
        last =
            i; // the furthest down the order: the closing milestone rather than the task it follows
      }
    }
    return last < 0 ? List.of() : chainTo(last, early);
  }

  private List<String> chainTo(int last, Sweep sweep) {
    var chain = new ArrayDeque<String>();
    chain.add(network.activities().get(last).id());
    int driver = sweep.chiefDriver(last, minutes);
    while (driver >= 0) {
      int b = graph.before[driver];
      chain.addFirst(network.activities().get(b).id());
      driver = sweep.chiefDriver(b, minutes);
    }
    return List.copyOf(chain);
  }

  /**
   * The chain of links that decides how soon the second event can follow the first, as if nothing
   * else held the tasks in between. Empty if no chain leads from one to the other; the event alone
   * if both are the same.
   */
  public Optional<PathBetween> longestPath(String fromId, String toId) {
    int from = network.indexOf(fromId);
    int to = network.indexOf(toId);
    var only = new Sweep(graph);
    boolean[] reached = new boolean[graph.size];
    int[] driver = new int[graph.size];
    reached[from] = true;
    driver[from] = -1;
    only.put(from, early.place[from], minutes[from]);
    for (int i : graph.order()) {
      if (i != from && holdBack(i, only, reached, driver)) {
        reached[i] = true;
      }
    }
    if (!reached[to]) {
      return Optional.empty();
    }
    var chain = new ArrayDeque<String>();
    var links = new ArrayDeque<Link>();
    int at = to;
    while (driver[at] >= 0) {
      chain.addFirst(network.activities().get(at).id());
      links.addFirst(network.links().get(driver[at]));
      at = graph.before[driver[at]];
    }
    chain.addFirst(fromId);
    long slack =
        graph.state[to] == Graph.DONE ? 0 : graph.floatMinutes(to, only.place[to], early.place[to]);
    var end = Minutes.moment(only.finish[to]);
    return Optional.of(new PathBetween(List.copyOf(chain), List.copyOf(links), end, slack));
  }

  private boolean holdBack(int i, Sweep only, boolean[] reached, int[] driver) {
    long latest = 0;
    long latestMoment = 0;
    driver[i] = -1;
    for (int k = graph.inFirst[i]; k < graph.inFirst[i + 1]; k++) {
      int l = graph.in[k];
      int b = graph.before[l];
      if (reached[b]) {
        long moment = graph.moment(l, only.start[b], only.finish[b]);
        long at = graph.placeOf(l, moment, minutes[i]);
        if (driver[i] < 0 || at > latest || at == latest && moment > latestMoment) {
          driver[i] = l;
          latest = at;
          latestMoment = moment;
        }
      }
    }
    if (driver[i] >= 0) {
      only.put(i, latest, minutes[i]);
    }
    return driver[i] >= 0;
  }
}

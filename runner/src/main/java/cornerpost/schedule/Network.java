package cornerpost.schedule;

import static java.util.Objects.requireNonNull;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tasks, their links and crews, and the moment the work may begin: a network that can be planned.
 *
 * <p>Only a network without faults exists; {@link #faults} lists them all beforehand. An empty
 * network is allowed.
 */
public final class Network {
  /** About 1,900 years; more is a slip of the pen. */
  static final long MOST_MINUTES = 1_000_000_000L;

  private final List<Activity> activities;
  private final List<Link> links;
  private final List<Crew> crews;
  private final LocalDateTime start;
  private final WorkCalendar defaultCalendar;
  private final Optional<LocalDateTime> status;
  private final Map<String, Integer> indexById;
  private final WorkCalendar[] calendars;
  private final int[] before; // of each link, the position of a task
  private final int[] after;
  private final Graph graph;

  /**
   * A network, checked.
   *
   * @param start no task starts before it, whatever its links ask
   * @param defaultCalendar of tasks without one; the plan's length in days is counted in it
   * @param status up to when progress is known; work not yet done is planned after it. Empty:
   *     nothing has begun
   * @throws NetworkException with every fault
   */
  public static Network of(
      List<Activity> activities,
      List<Link> links,
      List<Crew> crews,
      LocalDateTime start,
      WorkCalendar defaultCalendar,
      Optional<LocalDateTime> status) {
    var faults = faults(activities, links, crews, start, defaultCalendar, status);
    if (!faults.isEmpty()) {
      throw new NetworkException(faults);
    }
    return new Network(activities, links, crews, start, defaultCalendar, status);
  }

  /** Nothing has begun yet. */
  public static Network of(
      List<Activity> activities,
      List<Link> links,
      List<Crew> crews,
      LocalDateTime start,
      WorkCalendar defaultCalendar) {
    return of(activities, links, crews, start, defaultCalendar, Optional.empty());
  }

  /**
   * Everything that stands in the way of a plan, in the order of the input; empty when it can be
   * planned.
   */
  public static List<NetworkFault> faults(
      List<Activity> activities,
      List<Link> links,
      List<Crew> crews,
      LocalDateTime start,
      WorkCalendar defaultCalendar,
      Optional<LocalDateTime> status) {
    requireNonNull(start, "start");
    requireNonNull(status, "status");
    requireNonNull(defaultCalendar, "defaultCalendar");
    return NetworkCheck.faults(activities, links, crews, defaultCalendar, status);
  }

  private Network(
      List<Activity> activities,
      List<Link> links,
      List<Crew> crews,
      LocalDateTime start,
      WorkCalendar defaultCalendar,
      Optional<LocalDateTime> status) {
    this.activities = List.copyOf(activities);
    this.links = List.copyOf(links);
    this.crews = List.copyOf(crews);
    this.start = start;
    this.defaultCalendar = defaultCalendar;
    this.status = status;
    indexById = new HashMap<>();
    for (Activity a : this.activities) {
      indexById.put(a.id(), indexById.size());
    }
    var crewByName = new HashMap<String, Crew>();
    this.crews.forEach(c -> crewByName.put(c.name(), c));
    var met =
        new HashMap<WorkCalendar, WorkCalendar>(); // one object for each, so that equality is quick
    calendars = new WorkCalendar[this.activities.size()];
    for (int i = 0; i < calendars.length; i++) {
      WorkCalendar own = workedIn(this.activities.get(i), crewByName, defaultCalendar);
      calendars[i] = met.computeIfAbsent(own, c -> c);
    }
    before = new int[this.links.size()];
    after = new int[before.length];
    for (int l = 0; l < before.length; l++) {
      before[l] = indexOf(this.links.get(l).before());
      after[l] = indexOf(this.links.get(l).after());
    }
    graph = new Graph(this);
  }

  /**
   * The task's calendar, narrowed to that of the crews it needs; a wait in elapsed time needs no
   * one at work.
   */
  static WorkCalendar workedIn(
      Activity a, Map<String, Crew> crewByName, WorkCalendar defaultCalendar) {
    WorkCalendar own = a.calendar().orElse(defaultCalendar);
    if (a.isElapsed()) {
      return own;
    }
    for (String crew : a.demands().keySet()) {
      var theirs = crewByName.get(crew).calendar();
      if (theirs.isPresent() && !theirs.get().sameTimes(own)) {
        own = own.and(theirs.get());
      }
    }
    return own;
  }

  public List<Activity> activities() {
    return activities;
  }

  public List<Link> links() {
    return links;
  }

  public List<Crew> crews() {
    return crews;
  }

  public LocalDateTime start() {
    return start;
  }

  public WorkCalendar defaultCalendar() {
    return defaultCalendar;
  }

  public Optional<LocalDateTime> status() {
    return status;
  }

  public Optional<Activity> find(String id) {
    return Optional.ofNullable(indexById.get(id)).map(activities::get);
  }

  /**
   * The task of that id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Activity get(String id) {
    return activities.get(indexOf(id));
  }

  /** The calendar a task is really worked in: its own, narrowed to that of the crews it needs. */
  public WorkCalendar calendarOf(String id) {
    return calendars[indexOf(id)];
  }

  /**
   * Minutes still to do, working ones unless the task is elapsed: nothing of one that is done;
   * where no remainder is noted for one under way, its duration less what was worked since its real
   * start.
   */
  public long minutesLeft(String id) {
    int i = indexOf(id);
    return graph.state[i] == Graph.DONE ? 0 : graph.minutes[i];
  }

  /** Position of the task in {@link #activities}. */
  public int indexOf(String id) {
    Integer index = indexById.get(id);
    if (index == null) {
      throw new IllegalArgumentException(
          "No task has the id '" + id + "'; the network has " + activities.size() + " tasks");
    }
    return index;
  }

  /** The same network with one task replaced by another of the same id. */
  public Network with(Activity changed) {
    var all = new ArrayList<>(activities);
    all.set(indexOf(changed.id()), changed);
    // The links stay as they are, so only the task itself can be at fault.
    var faults = NetworkCheck.faults(List.of(changed), List.of(), crews, defaultCalendar, status);
    if (!faults.isEmpty()) {
      throw new NetworkException(faults);
    }
    return new Network(all, links, crews, start, defaultCalendar, status);
  }

  /** The same tasks with other links. */
  public Network withLinks(List<Link> others) {
    return of(activities, others, crews, start, defaultCalendar, status);
  }

  /** For each link the position of the task that it leads from; not to be written to. */
  int[] before() {
    return before;
  }

  int[] after() {
    return after;
  }

  /** For each task the calendar it is worked in; not to be written to. */
  WorkCalendar[] calendars() {
    return calendars;
  }

  Graph graph() {
    return graph;
  }
}

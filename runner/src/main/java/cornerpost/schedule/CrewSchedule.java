package cornerpost.schedule;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Planned dates of all tasks, with no crew ever asked for more than it has. Made by {@link
 * Sequencer}.
 */
public final class CrewSchedule {
  private final Timetable timetable;
  private final List<Dates> planned;
  private final long finish;
  private final long lowerBound;
  private final boolean crewLimited;
  private final long schedules;
  private final List<List<Wait>> waits;

  CrewSchedule(
      Timetable timetable, Sweep plan, long lowerBound, boolean crewLimited, long schedules) {
    this.timetable = timetable;
    this.finish = plan.end;
    this.lowerBound = lowerBound;
    this.crewLimited = crewLimited;
    this.schedules = schedules;
    Network network = timetable.network();
    var dates = new ArrayList<Dates>();
    for (int i = 0; i < plan.graph.size; i++) {
      dates.add(ShownDays.dates(plan.start[i], plan.finish[i], plan.followsFinish(i)));
    }
    planned = List.copyOf(dates);
    waits =
        crewLimited
            ? Waits.of(network, plan, planned)
            : planned.stream().map(d -> List.<Wait>of()).toList();
  }

  public Network network() {
    return timetable.network();
  }

  /** The dates of the network alone. */
  public Timetable timetable() {
    return timetable;
  }

  /**
   * Whether the early dates would ask a crew for more than it has, so that the planned dates differ
   * from them.
   */
  public boolean crewLimited() {
    return crewLimited;
  }

  /** Planned dates, in the order of the network's tasks. */
  public List<Dates> planned() {
    return planned;
  }

  public Dates planned(String id) {
    return planned.get(network().indexOf(id));
  }

  /** When the last task ends. */
  public LocalDateTime finish() {
    return Minutes.moment(finish);
  }

  /** No schedule of these tasks with these crews can finish before this moment. */
  public LocalDateTime lowerBound() {
    return Minutes.moment(lowerBound);
  }

  /** Whether no schedule can finish earlier than this one. */
  public boolean proved() {
    return finish <= lowerBound;
  }

  /**
   * How much earlier a better schedule might finish at most, in days of the default calendar; 0
   * when proved.
   */
  public double gapDays() {
    WorkCalendar c = network().defaultCalendar();
    return proved() ? 0 : (double) c.between(lowerBound(), finish()) / c.dayMinutes();
  }

  /** The gap as a share of the planned length from the network's start moment; 0 when proved. */
  public double gapShare() {
    return proved() ? 0 : gapDays() / durationDays();
  }

  /** From the network's start moment to the planned finish, in days of its default calendar. */
  public double durationDays() {
    WorkCalendar c = network().defaultCalendar();
    return (double) c.between(network().start(), finish()) / c.dayMinutes();
  }

  /** How many schedules were built to find this one. */
  public long schedulesBuilt() {
    return schedules;
  }

  /**
   * The crews a task waited for, in the order of their names; empty if it starts as soon as links
   * and dates let it.
   */
  public List<Wait> waits(String id) {
    return waits.get(network().indexOf(id));
  }
}

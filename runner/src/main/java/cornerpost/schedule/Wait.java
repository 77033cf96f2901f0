package cornerpost.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Why a task starts later than its links and dates ask: a crew was busy.
 *
 * @param crew the crew that was short
 * @param needed how many of it the task needs
 * @param free how many were free just before it starts
 * @param busyOn the tasks that held the crew then
 * @param ready the day it could have started but for the crews
 * @param starts the day it starts
 */
public record Wait(
    Activity task,
    String crew,
    int needed,
    int free,
    List<Activity> busyOn,
    LocalDate ready,
    LocalDate starts) {
  public Wait {
    busyOn = List.copyOf(busyOn);
  }

  /** A sentence for people, without the task's own name. */
  public String inWords() {
    return "could start on "
        + ready
        + ", waits until "
        + starts
        + " for crew '"
        + crew
        + "' ("
        + needed
        + " needed, "
        + free
        + " free), busy on "
        + busyOn.stream().map(a -> "'" + a.name() + "'").collect(Collectors.joining(", "));
  }
}

package cornerpost.schedule;

import java.time.LocalDateTime;

/**
 * The early dates of a network for one set of durations after another, without making objects; one
 * per thread.
 *
 * <p>Tasks are known by their position in {@link Network#activities}.
 */
public final class Trial {
  private final Graph graph;
  private final Sweep sweep;
  private final long[] minutes;
  private boolean[] driving;

  Trial(Network network) {
    graph = network.graph();
    sweep = new Sweep(graph);
    minutes = graph.minutes.clone();
  }

  /**
   * Plans with these durations.
   *
   * @param durations minutes of each task, counted as its own duration is; what remains, for one
   *     that has started. Milestones and finished tasks keep theirs; a task with a duration takes
   *     at least one minute
   */
  public void run(long[] durations) {
    for (int i = 0; i < minutes.length; i++) {
      if (graph.kind[i] != Graph.MOMENT) {
        minutes[i] = Math.max(graph.minutes[i] == 0 ? 0 : 1, durations[i]);
      }
    }
    sweep.forward(minutes);
    driving = null;
  }

  public LocalDateTime finish() {
    return Minutes.moment(sweep.end);
  }

  /** Minutes of the clock from 1970-01-01 00:00 to the finish. */
  public long finishMinute() {
    return sweep.end;
  }

  /** Minutes of the clock from 1970-01-01 00:00 to the start of the task. */
  public long startMinute(int task) {
    return sweep.start[task];
  }

  /** Minutes of the clock from 1970-01-01 00:00 to the finish of the task. */
  public long finishMinute(int task) {
    return sweep.finish[task];
  }

  /** Whether the task drives the finish in this run, as in {@link Timing#drivesFinish}. */
  public boolean drivesFinish(int task) {
    if (driving == null) {
      driving = sweep.drivingFinish(minutes);
    }
    return driving[task];
  }
}

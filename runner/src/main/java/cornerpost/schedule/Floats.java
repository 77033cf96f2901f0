package cornerpost.schedule;

import java.util.Arrays;

/**
 * Early and late places of all tasks, and their total and free float, on arrays by position in the
 * network; O(tasks + links). A task that is done has no late place and no float.
 *
 * @param early places of the forward pass
 * @param latePlace places of the backward pass, deadlines met
 * @param total from early to late place, as the task's duration is counted; negative where a
 *     deadline is missed
 * @param free how far the task can move without moving another or the end; never more than total
 */
@SuppressWarnings("ArrayRecordComponent")
record Floats(Sweep early, long[] latePlace, long[] total, long[] free) {
  static Floats of(Graph g) {
    var sweep = new Sweep(g);
    sweep.forward(g.minutes);
    return of(sweep, g.minutes);
  }

  /** The rest, given the forward pass. */
  static Floats of(Sweep early, long[] minutes) {
    Graph g = early.graph;
    long[] free = new long[g.size];
    Arrays.fill(free, Graph.NEVER);
    long[] late = early.backward(minutes, early.end, true, free);
    long[] place = early.place;
    long[] total = new long[g.size];
    var end = new MomentByCalendar(early.end);
    for (int i = 0; i < g.size; i++) {
      if (g.state[i] == Graph.DONE) {
        free[i] = 0;
        continue;
      }
      if (g.kind[i] == Graph.WORK) {
        total[i] = late[i] - place[i];
        free[i] =
            Math.min(free[i], Math.min(total[i], end.in(g.calendar[i]) - minutes[i] - place[i]));
      } else {
        total[i] = g.floatMinutes(i, place[i], late[i]);
        long last = g.placeFinishingBy(i, early.end, minutes[i]);
        free[i] = Math.min(free[i], Math.min(total[i], g.floatMinutes(i, place[i], last)));
      }
    }
    return new Floats(early, late, total, free);
  }
}

package cornerpost.schedule;

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
    long[] late = early.backward(minutes, early.end);
    long[] place = early.place;
    long[] inLink = g.inLink;
    long[] total = new long[g.size];
    long[] free = new long[g.size];
    int like = -1; // a task of work with the same calendar: the end is the same number to both
    long number = 0;
    for (int i = 0; i < g.size; i++) {
      if (g.state[i] == Graph.DONE) {
        continue;
      }
      if (g.kind[i] == Graph.WORK) {
        if (like < 0 || g.calendar[i] != g.calendar[like]) {
          like = i;
          number = g.calendar[i].worked(early.end);
        }
        total[i] = late[i] - place[i];
        free[i] = Math.min(total[i], number - minutes[i] - place[i]);
      } else {
        total[i] = g.floatMinutes(i, place[i], late[i]);
        long last = g.placeFinishingBy(i, early.end, minutes[i]);
        free[i] = Math.min(total[i], g.floatMinutes(i, place[i], last));
      }
    }
    for (int i = 0; i < g.size; i++) {
      int last = g.inFirst[i + 1];
      for (int k = g.inFirst[i]; k < last; k++) {
        long link = inLink[k];
        int b = Graph.task(link);
        long slack =
            Graph.slow(link)
                ? early.slack(g.in[k], minutes)
                : place[i] - Graph.step(link, minutes[b], minutes[i]) - place[b];
        free[b] = Graph.sooner(free[b], slack);
      }
    }
    return new Floats(early, late, total, free);
  }
}

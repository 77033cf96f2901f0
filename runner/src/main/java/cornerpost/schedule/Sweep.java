package cornerpost.schedule;

/**
 * Early dates of one set of durations: places, starts and finishes of all tasks on arrays used
 * again and again.
 */
final class Sweep {
  final Graph graph;
  final long[] place;
  final long[] start;
  final long[] finish;
  long end;

  Sweep(Graph graph) {
    this.graph = graph;
    place = new long[graph.size];
    start = new long[graph.size];
    finish = new long[graph.size];
  }

  /** One pass in order; O(tasks + links). A plan without tasks ends when it starts. */
  void forward(long[] minutes) {
    Graph g = graph;
    long[] place = this.place; // as locals, so that the loop need not look whether they changed
    long[] inLink = g.inLink;
    long last = g.size == 0 ? g.start : Long.MIN_VALUE;
    for (int i : g.passOrder()) {
      if (g.quick[i]) {
        long at = g.firstPlace[i];
        long duration = minutes[i];
        int until = g.inFirst[i + 1];
        for (int k = g.inFirst[i]; k < until; k++) {
          long link = inLink[k];
          int b = Graph.task(link);
          at = Graph.later(at, place[b] + Graph.step(link, minutes[b], duration));
        }
        place[i] = at;
        start[i] = g.calendar[i].startOf(at);
        finish[i] = g.calendar[i].endOf(at + duration);
      } else {
        put(i, earliest(i, minutes), minutes[i]);
      }
      last = Math.max(last, finish[i]);
    }
    end = last;
  }

  /** The earliest place that dates and links allow, given where the tasks before are. */
  long earliest(int i, long[] minutes) {
    Graph g = graph;
    if (g.state[i] == Graph.DONE) {
      return 0;
    }
    long at = g.firstPlace[i];
    long duration = minutes[i];
    int last = g.inFirst[i + 1];
    for (int k = g.inFirst[i]; k < last; k++) {
      long link = g.inLink[k];
      int b = Graph.task(link);
      long least =
          Graph.slow(link)
              ? g.placeAfter(g.in[k], start[b], finish[b], duration)
              : place[b] + Graph.step(link, minutes[b], duration);
      at = Math.max(at, least);
    }
    return at;
  }

  /**
   * The latest place from which the end is met and the tasks after, where they are now, stay put;
   * deadlines aside.
   */
  long latest(int i, long[] minutes, long until) {
    long at = graph.placeFinishingBy(i, until, minutes[i]);
    Incidence out = graph.outgoing();
    for (int o = out.first()[i]; o < out.first()[i + 1]; o++) {
      int l = out.link()[o];
      int a = graph.after[l];
      if (graph.movable(l) && graph.state[a] != Graph.DONE) {
        at = Math.min(at, graph.placeBefore(l, place[a], minutes[a], minutes[i]));
      }
    }
    return at;
  }

  void put(int i, long at, long minutes) {
    Graph g = graph;
    if (g.state[i] == Graph.DONE) {
      start[i] = g.realStart[i];
      finish[i] = g.realFinish[i];
      return;
    }
    place[i] = at;
    start[i] = g.state[i] == Graph.RUNNING ? g.realStart[i] : g.startAt(i, at);
    finish[i] = g.finishAt(i, at, minutes);
  }

  /** How far the task before can move, in its own time, until this link moves the task after. */
  long slack(int link, long[] minutes) {
    int b = graph.before[link];
    int a = graph.after[link];
    if (!graph.movable(link) || graph.state[a] == Graph.DONE) {
      return Graph.NEVER;
    }
    long latest = graph.placeBefore(link, place[a], minutes[a], minutes[b]);
    return graph.floatMinutes(b, place[b], latest);
  }

  /** Latest places with which deadlines are met; a task that is done has none and is left out. */
  long[] backward(long[] minutes, long until) {
    return backward(minutes, until, true);
  }

  /** Latest places; deadlines are met only if asked for. */
  long[] backward(long[] minutes, long until, boolean meetDeadlines) {
    return backward(minutes, until, meetDeadlines, new long[0]);
  }

  /**
   * Latest places, and on the way how far each task can move until a link moves another.
   *
   * @param slack lowered to that; empty if it is not wanted
   */
  long[] backward(long[] minutes, long until, boolean meetDeadlines, long[] slack) {
    Graph g = graph;
    long[] place = this.place;
    boolean slacks = slack.length > 0;
    long[] late = new long[g.size];
    var end = new MomentByCalendar(until);
    for (int i = 0; i < g.size; i++) {
      long duration = minutes[i];
      if (g.kind[i] != Graph.WORK || meetDeadlines && g.deadline[i] < until) {
        late[i] =
            g.placeFinishingBy(i, Math.min(until, meetDeadlines ? g.deadline[i] : until), duration);
      } else {
        late[i] = end.in(g.calendar[i]) - duration;
      }
    }
    long[] inLink = g.inLink;
    int[] order = g.passOrder();
    for (int n = g.size - 1; n >= 0; n--) {
      int i = order[n];
      if (g.state[i] == Graph.DONE) {
        late[i] = 0;
        continue;
      }
      int last = g.inFirst[i + 1];
      long duration = minutes[i];
      long at = late[i];
      for (int k = g.inFirst[i]; k < last; k++) {
        long link = inLink[k];
        int b = Graph.task(link);
        if (!Graph.slow(link)) {
          long step = Graph.step(link, minutes[b], duration);
          late[b] = Graph.sooner(late[b], at - step);
          if (slacks) {
            slack[b] = Graph.sooner(slack[b], place[i] - step - place[b]);
          }
        } else if (g.movable(g.in[k])) {
          late[b] = Math.min(late[b], g.placeBefore(g.in[k], at, duration, minutes[b]));
          if (slacks) {
            slack[b] = Math.min(slack[b], slack(g.in[k], minutes));
          }
        }
      }
    }
    return late;
  }

  /**
   * The latest moment from which a link, not a date, holds the start of the task; Long.MIN_VALUE if
   * none does.
   */
  private long lastArrival(int i, long[] minutes) {
    long last = Long.MIN_VALUE;
    for (int k = graph.inFirst[i]; k < graph.inFirst[i + 1]; k++) {
      int l = graph.in[k];
      if (!graph.toFinish(l)) {
        long moment = moment(l);
        if (graph.placeOf(l, moment, minutes[i]) == place[i]) {
          last = Math.max(last, moment);
        }
      }
    }
    return last;
  }

  private long moment(int link) {
    int b = graph.before[link];
    return graph.moment(link, start[b], finish[b]);
  }

  /**
   * Whether a link holds the task after where it is. Among links that ask for the same place those
   * do that arrive last, and those whose task before cannot move at all without moving it: of two
   * waits that end on Saturday and Sunday before a Monday start, only the second drives.
   */
  boolean drives(int link, long[] minutes) {
    int i = graph.after[link];
    if (graph.state[i] == Graph.DONE) {
      return false;
    }
    long moment = moment(link);
    if (graph.placeOf(link, moment, minutes[i]) != place[i]) {
      return false;
    }
    return graph.toFinish(link)
        || moment == lastArrival(i, minutes) && !dateIsLater(i, moment)
        || slack(link, minutes) == 0;
  }

  private boolean dateIsLater(int i, long moment) {
    return graph.release[i] > moment && graph.placeStartingFrom(i, graph.release[i]) == place[i];
  }

  boolean drivenByDate(int i, long[] minutes) {
    return graph.state[i] != Graph.DONE
        && graph.placeStartingFrom(i, graph.release[i]) == place[i]
        && graph.release[i] >= lastArrival(i, minutes);
  }

  /** Whether a milestone is where it is because something finishes then. */
  boolean followsFinish(int i) {
    for (int k = graph.inFirst[i]; k < graph.inFirst[i + 1]; k++) {
      int l = graph.in[k];
      if (!graph.fromStart(l) && moment(l) == finish[i]) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether the task ends the plan: it finishes last, or cannot slip at all without moving the end.
   */
  boolean atEnd(int i, long[] minutes) {
    return finish[i] == end
        || graph.state[i] != Graph.DONE
            && graph.floatMinutes(i, place[i], graph.placeFinishingBy(i, end, minutes[i])) == 0;
  }

  /** Tasks from which a chain of driving links leads to the end. */
  boolean[] drivingFinish(long[] minutes) {
    boolean[] drives = new boolean[graph.size];
    Incidence out = graph.outgoing();
    for (int k = graph.size - 1; k >= 0; k--) {
      int i = graph.order()[k];
      drives[i] = atEnd(i, minutes);
      for (int o = out.first()[i]; !drives[i] && o < out.first()[i + 1]; o++) {
        int l = out.link()[o];
        drives[i] = drives[graph.after[l]] && drives(l, minutes);
      }
    }
    return drives;
  }

  /**
   * The driving link into the task to follow back: least slack, then latest arrival, then first in
   * the network.
   */
  int chiefDriver(int i, long[] minutes) {
    int best = -1;
    long bestSlack = 0;
    for (int k = graph.inFirst[i]; k < graph.inFirst[i + 1]; k++) {
      int l = graph.in[k];
      if (drives(l, minutes)) {
        long slack = slack(l, minutes);
        if (best < 0 || slack < bestSlack) {
          best = l;
          bestSlack = slack;
        }
      }
    }
    return best;
  }
}

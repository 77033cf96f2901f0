package cornerpost.schedule;

import java.util.Arrays;
import java.util.List;

/**
 * What is known of the orders and windows of tasks, with the row of events by which it became
 * known, each with its cause, so that events can be traced and taken back.
 *
 * <p>An event is that an order of two tasks becomes known or impossible, or that a task gets a
 * later first place or an earlier last one. Levels count the orders that were supposed, not
 * concluded; the events of a level go when it is given up. Facts without a supposition are no
 * events and need no reason.
 *
 * <p>The name is that of the field: N. Eén and N. Sörensson, "An extensible SAT-solver", SAT 2003,
 * 502-518.
 */
final class Trail {
  // causes of events, and what else is put down with each
  static final byte SUPPOSED = 0;
  static final byte LINK = 1; // the link
  static final byte ORDER = 2; // the other task
  static final byte NO_ROOM = 3;
  static final byte BETWEEN = 4; // the task between the two
  static final byte NOGOOD = 5; // the nogood
  static final byte EDGE = 6; // position in the sets
  static final byte KNOWN = 7; // position in the sets

  private static final int FIRST_PLACE = 0;
  private static final int LAST_PLACE = 1;

  final Graph g;
  final OrderLiterals orders;
  final int words; // of a row of the tables of orders
  final CrewSets sets = new CrewSets(); // what edge finding rests on
  final boolean[] unsettled; // crews of whose tasks something has changed
  final boolean[] unsearched; // since their edges were looked for
  private final int[][] groupsOf; // of a task, its crews

  final byte[] value; // by literal: 1 true, -1 false, 0 open
  final int[] eventOf; // by variable; -1 if open or a fact
  final long[] after; // bit j of row i: j starts after i has finished
  final long[] before; // the same seen from j

  final long[] low; // of each task the first place
  final long[] high; // and the last
  private final long[][] bound; // both
  private final int[] lastEvent; // by 2 * task, plus 1 for the last place; -1 if none
  final long[] earlyStart; // of holding the crews; likewise the other three
  final long[] earlyFinish;
  final long[] lateStart;
  final long[] lateFinish;

  int events;
  int[] what = new int[1024]; // literal, or ~(2 * task + 1 if the last place)
  int[] level = new int[1024];
  byte[] cause = new byte[1024];
  int[] by = new int[1024]; // what is put down with the cause
  int[] previous = new int[1024]; // event of the same bound
  long[] was = new long[1024]; // place before the event
  long[] now = new long[1024];
  private long[] wasStart = new long[1024];
  private long[] wasFinish = new long[1024];
  private int[] setsBefore = new int[1024];
  private int next; // event to be followed up

  int depth; // level of the last supposition; 0 without any
  private int[] levelStart = new int[64];

  Trail(TimeWindows windows, OrderLiterals orders) {
    g = windows.g;
    this.orders = orders;
    int n = g.size;
    words = (n + 63) / 64;
    List<CrewTasks> groups = windows.groups();
    unsettled = new boolean[groups.size()];
    unsearched = new boolean[groups.size()];
    groupsOf = new int[n][];
    for (int i = 0; i < n; i++) {
      groupsOf[i] = windows.groupsOf(i);
    }
    value = new byte[orders.count];
    eventOf = new int[orders.count / 2];
    Arrays.fill(eventOf, -1);
    after = new long[n * words];
    before = new long[n * words];
    low = new long[n];
    high = new long[n];
    bound = new long[][] {low, high};
    Arrays.fill(low, Long.MIN_VALUE);
    Arrays.fill(high, Long.MAX_VALUE);
    lastEvent = new int[2 * n];
    Arrays.fill(lastEvent, -1);
    earlyStart = new long[n];
    earlyFinish = new long[n];
    lateStart = new long[n];
    lateFinish = new long[n];
  }

  /** Narrows a window as a fact; false if nothing of it is left. */
  boolean narrow(int i, long first, long last) {
    low[i] = Math.max(low[i], first);
    high[i] = Math.min(high[i], last);
    if (low[i] > high[i]) return false;
    earlyStart[i] = g.startAt(i, low[i]);
    earlyFinish[i] = g.finishAt(i, low[i], g.minutes[i]);
    lateStart[i] = g.startAt(i, high[i]);
    lateFinish[i] = g.finishAt(i, high[i], g.minutes[i]);
    return true;
  }

  /** Puts an order into the tables of who goes before whom. */
  void precede(int i, int j) {
    after[i * words + (j >> 6)] |= 1L << j;
    before[j * words + (i >> 6)] |= 1L << i;
  }

  private void forget(int i, int j) {
    after[i * words + (j >> 6)] &= ~(1L << j);
    before[j * words + (i >> 6)] &= ~(1L << i);
  }

  /** The crews of the task have something new to look at. */
  void changed(int i) {
    for (int k : groupsOf[i]) {
      unsettled[k] = true;
    }
  }

  /** Begins a level. */
  void deepen() {
    depth++;
    if (depth == levelStart.length) levelStart = Arrays.copyOf(levelStart, 2 * depth);
    levelStart[depth] = events;
  }

  private int event(int subject, byte why, int from) {
    if (events == what.length) grow();
    int e = events++;
    what[e] = subject;
    level[e] = depth;
    cause[e] = why;
    by[e] = from;
    setsBefore[e] = why == EDGE || why == KNOWN ? from : sets.used();
    return e;
  }

  private void grow() {
    int more = 2 * events;
    what = Arrays.copyOf(what, more);
    level = Arrays.copyOf(level, more);
    cause = Arrays.copyOf(cause, more);
    by = Arrays.copyOf(by, more);
    previous = Arrays.copyOf(previous, more);
    was = Arrays.copyOf(was, more);
    now = Arrays.copyOf(now, more);
    wasStart = Arrays.copyOf(wasStart, more);
    wasFinish = Arrays.copyOf(wasFinish, more);
    setsBefore = Arrays.copyOf(setsBefore, more);
  }

  /** Makes an open literal true. */
  void put(int l, byte why, int from) {
    int e = event(l, why, from);
    value[l] = 1;
    value[l ^ 1] = -1;
    eventOf[l >> 1] = e;
  }

  /**
   * Puts down an event that cannot be, the literal being false, and takes it off again at once, so
   * that what speaks for it can be told.
   *
   * @return the event, as of now the next one
   */
  int failed(int l, byte why, int from) {
    int e = event(l, why, from);
    events--;
    return e;
  }

  /** Gives a task a later first place. */
  void raise(int i, long at, byte why, int from) {
    int e = move(i, FIRST_PLACE, at, why, from);
    wasStart[e] = earlyStart[i];
    wasFinish[e] = earlyFinish[i];
    earlyStart[i] = g.startAt(i, at);
    earlyFinish[i] = g.finishAt(i, at, g.minutes[i]);
    changed(i);
  }

  /** Gives a task an earlier last place. */
  void lower(int i, long at, byte why, int from) {
    int e = move(i, LAST_PLACE, at, why, from);
    wasStart[e] = lateStart[i];
    wasFinish[e] = lateFinish[i];
    lateStart[i] = g.startAt(i, at);
    lateFinish[i] = g.finishAt(i, at, g.minutes[i]);
    changed(i);
  }

  private int move(int i, int side, long at, byte why, int from) {
    int e = event(~(2 * i + side), why, from);
    was[e] = bound[side][i];
    now[e] = at;
    previous[e] = lastEvent[2 * i + side];
    lastEvent[2 * i + side] = e;
    bound[side][i] = at;
    return e;
  }

  /** The next event of which the consequences are to be drawn; -1 if there is none. */
  int following() {
    return next < events ? next++ : -1;
  }

  /** The last event of a task's first place; -1 if none. */
  int lastOfLow(int i) {
    return lastEvent[2 * i + FIRST_PLACE];
  }

  /** The last event of a task's last place; -1 if none. */
  int lastOfHigh(int i) {
    return lastEvent[2 * i + LAST_PLACE];
  }

  /** Whether an event of a window, not of an order, is of a first place. */
  boolean ofLow(int e) {
    return (~what[e] & 1) == FIRST_PLACE;
  }

  /** Whether the event is of an order, not of a window. */
  boolean ofOrder(int e) {
    return what[e] >= 0;
  }

  /** The task of which an event narrows the window. */
  int task(int e) {
    return ~what[e] >> 1;
  }

  /** Whether no later event narrows the same side of the same window. */
  boolean isLast(int e) {
    return lastEvent[~what[e]] == e;
  }

  /** The last place of the task before the event. */
  long highBefore(int i, int until) {
    int e = lastOfHigh(i);
    if (e < 0 || e < until) return high[i];
    while (previous[e] >= until) {
      e = previous[e];
    }
    return was[e];
  }

  /** Takes back all events of the levels above. */
  void backTo(int kept) {
    if (kept >= depth) return;
    int start = levelStart[kept + 1];
    for (int e = events - 1; e >= start; e--) {
      if (ofOrder(e)) {
        takeBackOrder(e);
      } else {
        takeBackPlace(e);
      }
    }
    events = start;
    next = start;
    if (start < setsBefore.length) sets.backTo(start == 0 ? 0 : setsBefore[start]);
    depth = kept;
    Arrays.fill(unsettled, false);
    Arrays.fill(unsearched, false);
  }

  private void takeBackOrder(int e) {
    int l = what[e];
    value[l] = 0;
    value[l ^ 1] = 0;
    eventOf[l >> 1] = -1;
    if (orders.first[l] >= 0 && e < next) { // it was followed up
      forget(orders.first[l], orders.second[l]);
    }
  }

  private void takeBackPlace(int e) {
    int side = ~what[e] & 1;
    int i = task(e);
    bound[side][i] = was[e];
    lastEvent[2 * i + side] = previous[e];
    if (side == FIRST_PLACE) {
      earlyStart[i] = wasStart[e];
      earlyFinish[i] = wasFinish[e];
    } else {
      lateStart[i] = wasStart[e];
      lateFinish[i] = wasFinish[e];
    }
  }

  /** Makes facts of all events; only without a supposition. */
  void facts() {
    for (int e = 0; e < events; e++) {
      if (ofOrder(e)) eventOf[what[e] >> 1] = -1;
      else lastEvent[~what[e]] = -1;
    }
    events = 0;
    next = 0;
    sets.backTo(0);
  }
}

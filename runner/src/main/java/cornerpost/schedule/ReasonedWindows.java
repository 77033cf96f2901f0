package cornerpost.schedule;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The windows of {@link TimeWindows} once more, narrowed by the same rules, with the reason of
 * every change kept, so that a dead end can be traced back to the orders that made it.
 *
 * <p>What happens is a row of events: an order of two tasks becomes known or impossible, a task
 * gets a later first place or an earlier last one. Levels count the orders that were supposed, not
 * concluded; the events of a level go when it is given up. Facts without a supposition are no
 * events and need no reason.
 *
 * <p>An order is a literal: 2v and 2v + 1 are each the opposite of the other. Of two tasks that
 * cannot run at once, one says that the first goes first, its opposite that the second does. Of two
 * that can, the opposite only says that it is not so.
 *
 * <p>A reason is worked out when it is asked for, and for no more than is asked: that a task cannot
 * start before Thursday, say, though Friday was found. Method: A. Schutt, T. Feydt, P. J. Stuckey
 * and M. G. Wallace, "Explaining the cumulative propagator", Constraints 16 (2011) 250-282; M.
 * Siala, C. Artigues and E. Hebrard, "Two clause learning approaches for disjunctive scheduling",
 * CP 2015, 393-402 (what is learned speaks of orders alone).
 */
final class ReasonedWindows {
  private static final int MOST_ORDERS = 1_000_000; // that could be asked about

  private static final byte SUPPOSED = 0;
  private static final byte LINK = 1;
  private static final byte ORDER = 2;
  private static final byte NO_ROOM = 3;
  private static final byte BETWEEN = 4;
  private static final byte NOGOOD = 5;
  private static final byte EDGE = 6;
  private static final byte KNOWN = 7;

  final Graph g;
  private final long[] minutes;
  private final int n;
  private final int words;
  private final List<CrewTasks> groups;
  private final int[][] groupsOf;
  private final boolean[] unsettled; // groups of which something has changed
  private final boolean[] unsearched; // since their edges were looked for

  final int literals;
  final int[] first; // task that goes first by the literal; -1 where it only says what is not so
  final int[] second;
  private final int[] literal; // of task i before task j, at i * n + j; -1 if there is none
  private final int[][] rivals;
  private final long[] sharing;
  final byte[] value; // by literal: 1 true, -1 false, 0 open
  final int[] eventOf; // by variable; -1 if open or a fact
  private final long[] after; // bit j of row i: j starts after i has finished
  private final long[] before; // the same seen from j

  private final long[][] bound; // of each task the first place, then the last
  private final int[] lastEvent; // by 2 * task, plus 1 for the last place; -1 if none
  final long[] low;
  final long[] high;
  final long[] earlyStart;
  final long[] earlyFinish;
  final long[] lateStart;
  final long[] lateFinish;

  int events;
  int[] what = new int[1024]; // literal, or ~(2 * task + 1 if the last place)
  int[] level = new int[1024];
  private byte[] kind = new byte[1024];
  private int[] by = new int[1024]; // link, task, nogood or position in sets
  private int[] previous = new int[1024];
  private long[] was = new long[1024];
  private long[] now = new long[1024];
  private long[] wasStart = new long[1024];
  private long[] wasFinish = new long[1024];
  private int[] setsBefore = new int[1024];

  private long[] sets = new long[4096]; // what edge finding rests on
  private int setsUsed;
  private int next; // event to be followed up

  int depth;
  private int[] levelStart = new int[64];

  // what a dead end rests on; marks on events, with the place that is asked for
  boolean[] asked = new boolean[1024];
  private long[] needed = new long[1024];
  int askedOfLast;

  private final Nogoods nogoods;

  ReasonedWindows(TimeWindows windows, Nogoods nogoods) {
    g = windows.g;
    this.nogoods = nogoods;
    minutes = g.minutes;
    n = g.size;
    words = (n + 63) / 64;
    groups = windows.groups();
    unsettled = new boolean[groups.size()];
    unsearched = new boolean[groups.size()];
    groupsOf = new int[n][];
    rivals = new int[n][];
    sharing = new long[n * words];
    literal = new int[n * n];
    Arrays.fill(literal, -1);
    int count = 0;
    for (int i = 0; i < n; i++) {
      groupsOf[i] = windows.groupsOf(i);
      rivals[i] = windows.rivals(i);
      for (int j : windows.sharing(i)) {
        sharing[i * words + (j >> 6)] |= 1L << j;
        if (literal[i * n + j] >= 0) continue;
        literal[i * n + j] = count;
        if (Arrays.stream(rivals[i]).anyMatch(r -> r == j)) {
          literal[j * n + i] = count + 1;
        }
        count += 2;
      }
    }
    literals = count;
    first = new int[count];
    second = new int[count];
    Arrays.fill(first, -1);
    Arrays.fill(second, -1);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (literal[i * n + j] >= 0) {
          first[literal[i * n + j]] = i;
          second[literal[i * n + j]] = j;
        }
      }
    }
    value = new byte[count];
    eventOf = new int[count / 2];
    Arrays.fill(eventOf, -1);
    after = new long[n * words];
    before = new long[n * words];
    low = new long[n];
    high = new long[n];
    bound = new long[][] {low, high};
    earlyStart = new long[n];
    earlyFinish = new long[n];
    lateStart = new long[n];
    lateFinish = new long[n];
    Arrays.fill(low, Long.MIN_VALUE);
    Arrays.fill(high, Long.MAX_VALUE);
    lastEvent = new int[2 * n];
    Arrays.fill(lastEvent, -1);
    nogoods.literals(count);
  }

  /** Whether the tables of all orders stay small enough. */
  static boolean suits(TimeWindows windows) {
    return windows.g.size <= TimeWindows.MOST_TASKS
        && windows.groups().stream().mapToLong(k -> (long) k.all.length * k.all.length).sum()
            <= MOST_ORDERS
        && windows.wholeCrews();
  }

  /** Of every two tasks that cannot run at once the literal that the first goes first. */
  int[] pairs() {
    return IntStream.iterate(0, l -> l < literals, l -> l + 2)
        .filter(l -> first[l + 1] >= 0)
        .toArray();
  }

  /** Takes over what the windows know without any order supposed; false if it cannot be. */
  boolean open(TimeWindows windows) {
    backTo(0);
    for (int i = 0; i < n; i++) {
      if (g.state[i] == Graph.DONE) continue;
      low[i] = Math.max(low[i], windows.low[i]);
      high[i] = Math.min(high[i], windows.high[i]);
      if (low[i] > high[i]) return false;
      moments(i);
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (!windows.before(i, j)) continue;
        int l = literal[i * n + j];
        int opposite = literal[j * n + i];
        if (l < 0) precede(i, j);
        else if (!become(l, SUPPOSED, 0)) return false;
        if (opposite >= 0 && !become(opposite ^ 1, SUPPOSED, 0)) return false;
      }
    }
    Arrays.fill(unsettled, true);
    for (int i = 0; i < n; i++) {
      if (g.state[i] != Graph.DONE && (!followLow(i) || !followHigh(i))) return false;
    }
    return settle();
  }

  private void moments(int i) {
    earlyStart[i] = g.startAt(i, low[i]);
    earlyFinish[i] = g.finishAt(i, low[i], minutes[i]);
    lateStart[i] = g.startAt(i, high[i]);
    lateFinish[i] = g.finishAt(i, high[i], minutes[i]);
  }

  int literalOf(int i, int j) {
    return literal[i * n + j];
  }

  private void precede(int i, int j) {
    after[i * words + (j >> 6)] |= 1L << j;
    before[j * words + (i >> 6)] |= 1L << i;
  }

  // ---- events -------------------------------------------------------------------------------

  /** Supposes an order, on a new level; not settled yet. */
  void suppose(int l) {
    depth++;
    if (depth == levelStart.length) levelStart = Arrays.copyOf(levelStart, 2 * depth);
    levelStart[depth] = events;
    become(l, SUPPOSED, 0);
  }

  /** An order follows from a nogood of which all else is false. */
  boolean follow(int l, int nogood) {
    return become(l, NOGOOD, nogood);
  }

  private int event(int subject, byte why, int from) {
    if (events == what.length) {
      int more = 2 * events;
      what = Arrays.copyOf(what, more);
      level = Arrays.copyOf(level, more);
      kind = Arrays.copyOf(kind, more);
      by = Arrays.copyOf(by, more);
      previous = Arrays.copyOf(previous, more);
      was = Arrays.copyOf(was, more);
      now = Arrays.copyOf(now, more);
      wasStart = Arrays.copyOf(wasStart, more);
      wasFinish = Arrays.copyOf(wasFinish, more);
      setsBefore = Arrays.copyOf(setsBefore, more);
      asked = Arrays.copyOf(asked, more);
      needed = Arrays.copyOf(needed, more);
    }
    int e = events++;
    what[e] = subject;
    level[e] = depth;
    kind[e] = why;
    by[e] = from;
    setsBefore[e] = why == EDGE || why == KNOWN ? from : setsUsed;
    return e;
  }

  private boolean become(int l, byte why, int from) {
    if (value[l] > 0) return true;
    int e = event(l, why, from);
    if (value[l] < 0) { // a dead end: what speaks for it, and what speaks against
      events--;
      explain(e, e);
      askFor(l ^ 1, e);
      return false;
    }
    value[l] = 1;
    value[l ^ 1] = -1;
    eventOf[l >> 1] = e;
    return true;
  }

  private boolean raise(int i, long at, byte why, int from) {
    if (at <= low[i]) return true;
    push(i, 0, at, why, from);
    if (at <= high[i]) return true;
    needLow(i, high[i] + 1, events);
    needHigh(i, high[i], events);
    return false;
  }

  private boolean lower(int i, long at, byte why, int from) {
    if (at >= high[i]) return true;
    push(i, 1, at, why, from);
    if (at >= low[i]) return true;
    needHigh(i, low[i] - 1, events);
    needLow(i, low[i], events);
    return false;
  }

  private void push(int i, int side, long at, byte why, int from) {
    int e = event(~(2 * i + side), why, from);
    was[e] = bound[side][i];
    now[e] = at;
    previous[e] = lastEvent[2 * i + side];
    lastEvent[2 * i + side] = e;
    bound[side][i] = at;
    if (side == 0) {
      wasStart[e] = earlyStart[i];
      wasFinish[e] = earlyFinish[i];
      earlyStart[i] = g.startAt(i, at);
      earlyFinish[i] = g.finishAt(i, at, minutes[i]);
    } else {
      wasStart[e] = lateStart[i];
      wasFinish[e] = lateFinish[i];
      lateStart[i] = g.startAt(i, at);
      lateFinish[i] = g.finishAt(i, at, minutes[i]);
    }
    changed(i);
  }

  private void changed(int i) {
    for (int k : groupsOf[i]) {
      unsettled[k] = true;
    }
  }

  /** Takes back all events of the levels above. */
  void backTo(int kept) {
    if (kept >= depth) return;
    int start = levelStart[kept + 1];
    for (int e = events - 1; e >= start; e--) {
      int subject = what[e];
      if (subject >= 0) {
        value[subject] = 0;
        value[subject ^ 1] = 0;
        eventOf[subject >> 1] = -1;
        if (first[subject] >= 0 && e < next) {
          int i = first[subject];
          int j = second[subject];
          after[i * words + (j >> 6)] &= ~(1L << j);
          before[j * words + (i >> 6)] &= ~(1L << i);
        }
      } else {
        int side = ~subject & 1;
        int i = ~subject >> 1;
        bound[side][i] = was[e];
        lastEvent[2 * i + side] = previous[e];
        if (side == 0) {
          earlyStart[i] = wasStart[e];
          earlyFinish[i] = wasFinish[e];
        } else {
          lateStart[i] = wasStart[e];
          lateFinish[i] = wasFinish[e];
        }
      }
    }
    events = start;
    next = start;
    if (start < setsBefore.length) setsUsed = start == 0 ? 0 : setsBefore[start];
    depth = kept;
    Arrays.fill(unsettled, false);
    Arrays.fill(unsearched, false);
  }

  /** Makes facts of all events; only without a supposition. */
  private void facts() {
    for (int e = 0; e < events; e++) {
      if (what[e] >= 0) eventOf[what[e] >> 1] = -1;
      else lastEvent[~what[e]] = -1;
    }
    events = 0;
    next = 0;
    setsUsed = 0;
  }

  // ---- rules --------------------------------------------------------------------------------

  /** Applies all rules until nothing changes; false at a dead end, whose causes are then asked. */
  boolean settle() {
    while (true) {
      while (next < events) {
        int e = next++;
        int subject = what[e];
        boolean possible;
        if (subject >= 0) {
          possible = followOrder(subject);
        } else if (lastEvent[~subject] != e) {
          possible = true; // a later one says more
        } else if ((~subject & 1) == 0) {
          possible = followLow(~subject >> 1);
        } else {
          possible = followHigh(~subject >> 1);
        }
        if (!possible) return false;
      }
      int k = flagged(unsettled);
      if (k >= 0) {
        unsettled[k] = false;
        unsearched[k] = true;
        if (!energy(k) || !sequence(k, false) || !sequence(k, true)) return false;
        continue;
      }
      k = flagged(unsearched); // takes longest, so last
      if (k < 0) break;
      unsearched[k] = false;
      if (!edges(k, false) || !edges(k, true)) return false;
    }
    if (depth == 0) facts();
    return true;
  }

  private static int flagged(boolean[] groups) {
    for (int k = 0; k < groups.length; k++) {
      if (groups[k]) return k;
    }
    return -1;
  }

  private boolean followOrder(int l) {
    int i = first[l];
    int j = second[l];
    if (i >= 0) {
      precede(i, j);
      changed(i);
      changed(j);
      if (!inOrder(i, j)) return false;
      for (int w = 0; w < words; w++) { // what is after j is after i
        long new_ = after[j * words + w] & sharing[i * words + w] & ~after[i * words + w];
        for (; new_ != 0; new_ &= new_ - 1) {
          int k = (w << 6) + Long.numberOfTrailingZeros(new_);
          if (!become(literal[i * n + k], BETWEEN, j)) return false;
        }
        long old = before[i * words + w] & sharing[j * words + w] & ~before[j * words + w];
        for (; old != 0; old &= old - 1) {
          int k = (w << 6) + Long.numberOfTrailingZeros(old);
          if (!become(literal[k * n + j], BETWEEN, i)) return false;
        }
      }
    }
    return nogoods.follow(this, l);
  }

  private boolean inOrder(int i, int j) {
    return raise(j, g.placeStartingFrom(j, earlyFinish[i]), ORDER, i)
        && lower(i, g.placeFinishingBy(i, lateStart[j], minutes[i]), ORDER, j);
  }

  private boolean followLow(int i) {
    long start = g.state[i] == Graph.RUNNING ? g.realStart[i] : earlyStart[i];
    long finish = earlyFinish[i];
    for (int o = g.outFirst[i]; o < g.outFirst[i + 1]; o++) {
      int l = g.out[o];
      int a = g.after[l];
      if (g.state[a] != Graph.DONE
          && !raise(a, g.placeAfter(l, start, finish, minutes[a]), LINK, l)) {
        return false;
      }
    }
    for (int w = 0; w < words; w++) {
      long bits = after[i * words + w] & sharing[i * words + w];
      for (; bits != 0; bits &= bits - 1) {
        int j = (w << 6) + Long.numberOfTrailingZeros(bits);
        if (finish > earlyStart[j] && !raise(j, g.placeStartingFrom(j, finish), ORDER, i)) {
          return false;
        }
      }
    }
    for (int j : rivals[i]) {
      if (finish > lateStart[j]) {
        int l = literal[j * n + i];
        if (value[l] <= 0 && !become(l, NO_ROOM, 0)) return false;
      }
    }
    return true;
  }

  private boolean followHigh(int j) {
    long start = lateStart[j];
    for (int q = g.inFirst[j]; q < g.inFirst[j + 1]; q++) {
      int l = g.in[q];
      int b = g.before[l];
      boolean movable =
          g.state[b] == Graph.NOT_STARTED || g.state[b] == Graph.RUNNING && !g.fromStart[l];
      if (movable && !lower(b, g.placeBefore(l, high[j], minutes[j], minutes[b]), LINK, l)) {
        return false;
      }
    }
    for (int w = 0; w < words; w++) {
      long bits = before[j * words + w] & sharing[j * words + w];
      for (; bits != 0; bits &= bits - 1) {
        int i = (w << 6) + Long.numberOfTrailingZeros(bits);
        if (lateFinish[i] > start
            && !lower(i, g.placeFinishingBy(i, start, minutes[i]), ORDER, j)) {
          return false;
        }
      }
    }
    for (int i : rivals[j]) {
      if (earlyFinish[i] > start) {
        int l = literal[j * n + i];
        if (value[l] <= 0 && !become(l, NO_ROOM, 0)) return false;
      }
    }
    return true;
  }

  /** Whether an order cannot be; that its tasks leave no room for it becomes an event. */
  boolean ruledOut(int l) {
    if (value[l] == 0 && room(l) < 0) become(l ^ 1, NO_ROOM, 0);
    return value[l] < 0;
  }

  /** Minutes of the clock by which the first of an order can slip. */
  long room(int l) {
    return lateStart[second[l]] - earlyFinish[first[l]];
  }

  /** Whether the crew has working time enough between any two moments. */
  private boolean energy(int index) {
    CrewTasks group = groups.get(index);
    int m = group.all.length;
    if (group.one.length == m) {
      return true; // edge finding says it too
    }
    for (int k = 0; k < m; k++) {
      group.from[k] = group.union.worked(earlyStart[group.all[k]]);
      group.until[k] = group.union.worked(lateFinish[group.all[k]]);
      group.key[k] = group.from[k];
    }
    int[] order = group.sort(m);
    for (int last = 0; last < m; last++) {
      long sum = 0;
      long limit = group.until[last];
      for (int s = 0; s < m; s++) {
        int q = order[s];
        if (group.until[q] <= limit) {
          sum += group.energy[q];
          if (sum > group.available * (limit - group.from[q])) {
            long earliest = limit - (sum - 1) / group.available;
            for (int p = 0; p <= s; p++) {
              if (group.until[order[p]] <= limit) {
                needWithin(group, false, group.all[order[p]], earliest, limit, events);
              }
            }
            return false;
          }
        }
      }
    }
    return true;
  }

  /** What the crew's tasks that are known to go before or after others leave them. */
  private boolean sequence(int index, boolean back) {
    CrewTasks group = groups.get(index);
    arrange(group, back);
    return known(index, group, back);
  }

  /** Edge finding; false if a set of tasks needs more time than there is. */
  private boolean edges(int index, boolean back) {
    CrewTasks group = groups.get(index);
    arrange(group, back);
    int m = group.one.length;
    if (!edges(group, m, back)) return false;
    for (int s = 0; s < m; s++) {
      if (group.found[s] > group.from[s]) {
        int set = edgeSet(index, group, back, s);
        if (!narrow(group, back, group.latestFirst[s], group.found[s], EDGE, set)) return false;
      }
    }
    return true;
  }

  /** Puts down the tasks of which no two can run at once, the latest first. */
  private void arrange(CrewTasks group, boolean back) {
    int m = group.one.length;
    for (int k = 0; k < m; k++) {
      int i = group.one[k];
      group.key[k] = back ? -group.union.worked(lateFinish[i]) : group.union.worked(earlyStart[i]);
    }
    int[] order = group.sort(m);
    for (int s = 0; s < m; s++) {
      int i = group.one[order[s]];
      group.from[s] = group.key[order[s]];
      group.until[s] =
          back ? -group.union.worked(earlyStart[i]) : group.union.worked(lateFinish[i]);
      group.work[s] = minutes[i];
      group.latestFirst[s] = i;
    }
  }

  private boolean narrow(CrewTasks group, boolean back, int j, long number, byte why, int set) {
    int known = events;
    boolean possible =
        back
            ? lower(j, g.placeFinishingBy(j, group.union.startOf(-number), minutes[j]), why, set)
            : raise(j, g.placeStartingFrom(j, group.union.endOf(number)), why, set);
    if (events == known) setsUsed = set;
    return possible;
  }

  /** A task comes after the working time of all that are known to go before it. */
  private boolean known(int index, CrewTasks group, boolean back) {
    long[] rows = back ? after : before;
    int[] task = group.latestFirst;
    int m = group.one.length;
    for (int k = 0; k < m; k++) {
      int row = task[k] * words;
      long sum = 0;
      long best = Long.MIN_VALUE;
      int until = -1;
      for (int s = 0; s < m; s++) {
        int i = task[s];
        if ((rows[row + (i >> 6)] >>> i & 1) != 0) {
          sum += group.work[s];
          if (group.from[s] + sum > best) {
            best = group.from[s] + sum;
            until = s;
          }
        }
      }
      if (best > group.from[k]) {
        int at = set(index, back, 0);
        long members = 0;
        for (int s = 0; s <= until; s++) {
          int i = task[s];
          if ((rows[row + (i >> 6)] >>> i & 1) != 0) {
            member(i);
            members++;
          }
        }
        sets[at + 3] = members;
        sets[at + 4] = members;
        if (!narrow(group, back, task[k], best, KNOWN, at)) return false;
      }
    }
    return true;
  }

  private boolean edges(CrewTasks group, int m, boolean back) {
    long[] from = group.from;
    long[] until = group.until;
    long[] work = group.work;
    long[] sums = group.sums;
    long[] ends = group.ends;
    long most = 0;
    for (int s = 0; s < m; s++) {
      most = Math.max(most, work[s]);
      group.found[s] = Long.MIN_VALUE;
    }
    for (int last = 0; last < m; last++) {
      long limit = until[last];
      int begin = 0;
      while (from[begin] >= limit) {
        begin++;
      }
      long sum = 0;
      long end = Long.MIN_VALUE;
      for (int s = begin; s < m; s++) {
        if (until[s] <= limit) {
          sum += work[s];
          end = Math.max(end, from[s] + sum);
        }
        sums[s] = sum;
        ends[s] = end;
      }
      if (end > limit) {
        overload(group, back, limit);
        return false;
      }
      if (end + most <= limit) continue; // no task is too long to lie between
      long longest = Long.MIN_VALUE;
      int at = -1;
      for (int s = m - 1; s >= begin; s--) {
        if (until[s] <= limit) {
          if (from[s] + sums[s] > longest) {
            longest = from[s] + sums[s];
            at = s;
          }
        } else {
          if (sums[s] > 0 && from[s] + sums[s] + work[s] > limit) {
            edge(group, s, ends[s], limit, s);
          }
          if (at >= 0 && longest + work[s] > limit) {
            edge(group, s, ends[at], limit, at);
          }
        }
      }
    }
    return true;
  }

  private static void edge(CrewTasks group, int s, long end, long limit, int upTo) {
    if (end > group.found[s]) {
      group.found[s] = end;
      group.edgeLimit[s] = limit;
      group.edgeUpTo[s] = upTo;
    }
  }

  private void overload(CrewTasks group, boolean back, long limit) {
    long best = Long.MIN_VALUE;
    long sum = 0;
    long needs = 0;
    int until = 0;
    for (int s = 0; s < group.one.length; s++) {
      if (group.until[s] <= limit) {
        sum += group.work[s];
        if (group.from[s] + sum > best) {
          best = group.from[s] + sum;
          until = s;
          needs = sum;
        }
      }
    }
    long earliest = limit - needs + 1;
    for (int s = 0; s <= until; s++) {
      if (group.until[s] <= limit) {
        needWithin(group, back, group.latestFirst[s], earliest, limit, events);
      }
    }
  }

  private int set(int index, boolean back, long limit) {
    makeRoom(5);
    int at = setsUsed;
    sets[at] = index;
    sets[at + 1] = back ? 1 : 0;
    sets[at + 2] = limit;
    setsUsed += 5;
    return at;
  }

  private void member(int i) {
    makeRoom(1);
    sets[setsUsed++] = i;
  }

  private void makeRoom(int more) {
    if (setsUsed + more > sets.length) sets = Arrays.copyOf(sets, 2 * sets.length);
  }

  /**
   * Writes down what an edge rests on: the tasks, latest first; of them those that make the end.
   */
  private int edgeSet(int index, CrewTasks group, boolean back, int k) {
    long limit = group.edgeLimit[k];
    int at = set(index, back, limit);
    long members = 0;
    long making = 0;
    long sum = 0;
    long best = Long.MIN_VALUE;
    for (int s = 0; s <= group.edgeUpTo[k]; s++) {
      if (group.until[s] <= limit) {
        member(group.latestFirst[s]);
        members++;
        sum += group.work[s];
        if (group.from[s] + sum > best) {
          best = group.from[s] + sum;
          making = members;
        }
      }
    }
    sets[at + 3] = members;
    sets[at + 4] = making;
    return at;
  }

  // ---- reasons ------------------------------------------------------------------------------

  /** Asks for what made an event; {@code before} is the first event that cannot be a cause. */
  void explain(int e) {
    explain(e, e);
  }

  private void explain(int e, int until) {
    int subject = what[e];
    switch (kind[e]) {
      case NOGOOD -> nogoods.askOthers(this, by[e], subject, until);
      case BETWEEN -> {
        askFor(literal[first[subject] * n + by[e]], until);
        askFor(literal[by[e] * n + second[subject]], until);
      }
      case NO_ROOM -> {
        int i = first[subject ^ 1];
        int j = second[subject ^ 1];
        long latest = valueBefore(j, 1, until);
        needHigh(j, latest, until);
        needLow(i, g.placeFinishingBy(i, g.startAt(j, latest), minutes[i]) + 1, until);
      }
      case LINK -> explainLink(e, until);
      case ORDER -> explainOrder(e, until);
      case EDGE, KNOWN -> explainSet(e, until);
      default -> {}
    }
  }

  private void explainLink(int e, int until) {
    int l = by[e];
    int i = g.before[l];
    int a = g.after[l];
    if ((~what[e] & 1) == 0) {
      needLow(i, g.placeBefore(l, needed[e] - 1, minutes[a], minutes[i]) + 1, until);
    } else {
      long start = g.startAt(i, needed[e] + 1);
      long finish = g.finishAt(i, needed[e] + 1, minutes[i]);
      needHigh(a, g.placeAfter(l, start, finish, minutes[a]) - 1, until);
    }
  }

  private void explainOrder(int e, int until) {
    int other = by[e];
    int task = ~what[e] >> 1;
    if ((~what[e] & 1) == 0) {
      askFor(literal[other * n + task], until);
      long start = g.startAt(task, needed[e] - 1);
      needLow(other, g.placeFinishingBy(other, start, minutes[other]) + 1, until);
    } else {
      askFor(literal[task * n + other], until);
      long finish = g.finishAt(task, needed[e] + 1, minutes[task]);
      needHigh(other, g.placeStartingFrom(other, finish) - 1, until);
    }
  }

  private void explainSet(int e, int until) {
    int at = by[e];
    CrewTasks group = groups.get((int) sets[at]);
    boolean back = sets[at + 1] != 0;
    long limit = sets[at + 2];
    int members = (int) sets[at + 3];
    int making = (int) sets[at + 4];
    int j = ~what[e] >> 1;
    long number =
        back
            ? 1 - group.union.worked(g.finishAt(j, needed[e] + 1, minutes[j]))
            : group.union.worked(g.startAt(j, needed[e] - 1)) + 1;
    long sum = 0;
    for (int k = 0; k < making; k++) {
      sum += minutes[(int) sets[at + 5 + k]];
    }
    long start = number - sum; // no task that makes the end may start before
    if (kind[e] == KNOWN) {
      for (int k = 0; k < making; k++) {
        int i = (int) sets[at + 5 + k];
        askFor(back ? literal[j * n + i] : literal[i * n + j], until);
        needFrom(group, back, i, start, until);
      }
      return;
    }
    for (int k = making; k < members; k++) {
      sum += minutes[(int) sets[at + 5 + k]];
    }
    long earliest = limit - sum - minutes[j] + 1;
    needFrom(group, back, j, earliest, until);
    for (int k = 0; k < members; k++) {
      int i = (int) sets[at + 5 + k];
      needWithin(group, back, i, k < making ? Math.max(start, earliest) : earliest, limit, until);
    }
  }

  /** Asks why the task lies between two numbers of the crew's time, which count back if so told. */
  private void needWithin(CrewTasks group, boolean back, int i, long from, long limit, int until) {
    needFrom(group, back, i, from, until);
    needFrom(group, !back, i, -limit, until);
  }

  private void needFrom(CrewTasks group, boolean back, int i, long from, int until) {
    if (back) {
      needHigh(i, g.placeFinishingBy(i, group.union.startOf(-from), minutes[i]), until);
    } else {
      needLow(i, g.placeStartingFrom(i, group.union.endOf(from)), until);
    }
  }

  private long valueBefore(int i, int side, int until) {
    int e = lastEvent[2 * i + side];
    if (e < 0 || e < until) return bound[side][i];
    while (previous[e] >= until) {
      e = previous[e];
    }
    return was[e];
  }

  private void needLow(int i, long at, int until) {
    int e = lastEvent[2 * i];
    while (e >= until) {
      e = previous[e];
    }
    if (e < 0) return;
    assert now[e] >= at : "asked for more than was found";
    while (e >= 0 && was[e] >= at) {
      e = previous[e];
    }
    if (e < 0) return;
    if (!asked[e]) {
      ask(e);
      needed[e] = at;
    } else {
      needed[e] = Math.max(needed[e], at);
    }
  }

  private void needHigh(int i, long at, int until) {
    int e = lastEvent[2 * i + 1];
    while (e >= until) {
      e = previous[e];
    }
    if (e < 0) return;
    assert now[e] <= at : "asked for more than was found";
    while (e >= 0 && was[e] <= at) {
      e = previous[e];
    }
    if (e < 0) return;
    if (!asked[e]) {
      ask(e);
      needed[e] = at;
    } else {
      needed[e] = Math.min(needed[e], at);
    }
  }

  /** Asks why the literal is true; nothing to ask if it is a fact, or follows from links. */
  void askFor(int l) {
    askFor(l, events);
  }

  void askFor(int l, int until) {
    if (l < 0) return;
    int e = eventOf[l >> 1];
    assert value[l] > 0 && e < until : "asked for what was not known";
    if (e >= 0 && !asked[e]) ask(e);
  }

  private void ask(int e) {
    asked[e] = true;
    if (level[e] == depth) askedOfLast++;
  }
}

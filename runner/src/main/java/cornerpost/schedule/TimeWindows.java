package cornerpost.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * For each task the earliest and the latest place it can have if the whole is to end by a given
 * moment, for any mix of calendars, relations and lags.
 *
 * <p>Four rules narrow the windows until nothing changes: links, forward and backward; of two tasks
 * that cannot share a crew, if one cannot go first the other does; a task comes after all that must
 * go before it with the same crew, which need their working time; and edge finding, which tells
 * from the working time between two moments that a task must come before or after a set of others.
 * A crew with more work between two moments than working time refutes the end. The rules that add
 * up working time count it in the union of the calendars of the crew's tasks, so that what they
 * conclude holds for any mix.
 *
 * <p>Sources: J. Carlier and E. Pinson, "An algorithm for solving the job-shop problem", Management
 * Science 35 (1989) 164-176 (pairs; edge finding); W. Nuijten, "Time and resource constrained
 * scheduling", thesis, Eindhoven 1994 (edge finding in O(tasks squared)); P. Baptiste, C. Le Pape
 * and W. Nuijten, "Constraint-Based Scheduling", 2001, ch. 2. Counting in working minutes of a
 * union of calendars is our own.
 */
final class TimeWindows {
  private static final int MOST_TASKS_OF_A_CREW = 400; // the rules look at all pairs

  /** Above, the table of who goes before whom gets too large, and only working time is added up. */
  static final int MOST_TASKS = 2_000;

  final Graph g;
  private final Incidence out;
  private final UnderWay underWay;
  private final long[] minutes;
  private final int words;
  private final long[] linked; // by links alone: bit j of row i, j starts after i has finished
  private final List<CrewTasks> groups = new ArrayList<>();
  private final int[][] groupsOf; // of a task, by position in groups
  private final boolean[] unsettled; // groups of which something has changed
  private final CrewTime crewTime;
  private final int[][] rivals; // tasks that cannot run beside it for want of a crew
  private final int[][] sharing; // tasks with a crew in common
  private final int[] queue;
  private final boolean[] queued;
  private boolean wholeCrews = true;
  private int head;
  private int waiting;

  long[] low;
  long[] high;
  long[] earlyStart; // of holding the crews; likewise the other three
  long[] earlyFinish;
  long[] lateStart;
  long[] lateFinish;
  long[] ordered; // as linked, with what has been found and decided
  final double[] blame; // how often a task had no place left

  TimeWindows(Network network, CrewUse use) {
    g = network.graph();
    out = g.outgoing();
    underWay = UnderWay.of(network);
    minutes = g.minutes;
    int n = g.size;
    words = n > MOST_TASKS ? 0 : (n + 63) / 64;
    linked = new long[n * words];
    if (words > 0) {
      links();
    }
    rivals = new int[n][];
    List<List<Integer>> found = new ArrayList<>();
    List<List<Integer>> common = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      found.add(new ArrayList<>());
      common.add(new ArrayList<>());
    }
    for (int crew = 0; crew < use.crews(); crew++) {
      int wanted = crew;
      int[] tasks =
          java.util.stream.IntStream.range(0, n).filter(i -> use.need(i, wanted) > 0).toArray();
      if (tasks.length < 2 || tasks.length > MOST_TASKS_OF_A_CREW) {
        wholeCrews &= tasks.length < 2;
        continue;
      }
      groups.add(new CrewTasks(g, use, crew, tasks));
      if (words == 0) {
        continue;
      }
      for (int i : tasks) {
        for (int j : tasks) {
          if (i != j && !common.get(i).contains(j)) {
            common.get(i).add(j);
          }
          if (i != j
              && use.need(i, crew) + use.need(j, crew) > use.available(crew)
              && !has(linked, i, j)
              && !has(linked, j, i)
              && !found.get(i).contains(j)) {
            found.get(i).add(j);
          }
        }
      }
    }
    unsettled = new boolean[groups.size()];
    crewTime = new CrewTime(this);
    groupsOf = new int[n][];
    for (int i = 0; i < n; i++) {
      int task = i;
      groupsOf[i] =
          java.util.stream.IntStream.range(0, groups.size())
              .filter(k -> Arrays.binarySearch(groups.get(k).all, task) >= 0)
              .toArray();
    }
    for (int i = 0; i < n; i++) {
      rivals[i] = found.get(i).stream().mapToInt(Integer::intValue).toArray();
    }
    sharing = new int[n][];
    for (int i = 0; i < n; i++) {
      sharing[i] = common.get(i).stream().mapToInt(Integer::intValue).toArray();
    }
    queue = new int[n];
    queued = new boolean[n];
    low = new long[n];
    high = new long[n];
    earlyStart = new long[n];
    earlyFinish = new long[n];
    lateStart = new long[n];
    lateFinish = new long[n];
    ordered = new long[n * words];
    blame = new double[n];
    Arrays.fill(blame, 1);
  }

  /** Who surely starts after whom has finished: along finish-to-start links without a lead. */
  private void links() {
    for (int k = g.size - 1; k >= 0; k--) {
      int i = g.order()[k];
      for (int o = out.first()[i]; o < out.first()[i + 1]; o++) {
        int l = out.link()[o];
        int a = g.after[l];
        if (!g.fromStart(l) && !g.toFinish(l) && g.lag(l) >= 0 && g.state[a] == Graph.NOT_STARTED) {
          linked[i * words + (a >> 6)] |= 1L << a;
          for (int w = 0; w < words; w++) {
            linked[i * words + w] |= linked[a * words + w];
          }
        }
      }
    }
  }

  private boolean has(long[] rows, int i, int j) {
    return words > 0 && (rows[i * words + (j >> 6)] >>> j & 1) != 0;
  }

  /** Whether it is known that the second starts after the first has finished. */
  boolean before(int i, int j) {
    return has(ordered, i, j);
  }

  /** Tasks that cannot run beside it for want of a crew; not those that links keep apart. */
  int[] rivals(int i) {
    return rivals[i];
  }

  /** Tasks with a crew in common. */
  int[] sharing(int i) {
    return sharing[i];
  }

  /** Whether no crew has so many tasks that they are not looked at. */
  boolean wholeCrews() {
    return wholeCrews;
  }

  List<CrewTasks> groups() {
    return groups;
  }

  /** Of a task, by position in {@link #groups}. */
  int[] groupsOf(int i) {
    return groupsOf[i];
  }

  /** What a state of the windows consists of, to go back to. */
  long[][] state() {
    return new long[][] {
      low.clone(),
      high.clone(),
      earlyStart.clone(),
      earlyFinish.clone(),
      lateStart.clone(),
      lateFinish.clone(),
      ordered.clone()
    };
  }

  void restore(long[][] s) {
    long[][] now = {low, high, earlyStart, earlyFinish, lateStart, lateFinish, ordered};
    for (int k = 0; k < now.length; k++) {
      System.arraycopy(s[k], 0, now[k], 0, s[k].length);
    }
  }

  /** The windows for an end by the given moment; false if there can be no such end. */
  boolean open(Sweep early, long end) {
    long[] late = early.backward(minutes, end, false);
    for (int i : underWay.tasks) {
      late[i] = Math.min(late[i], underWay.place[i]); // its crews are at it
    }
    System.arraycopy(linked, 0, ordered, 0, linked.length);
    for (int i = 0; i < g.size; i++) {
      if (g.state[i] == Graph.DONE) {
        continue;
      }
      low[i] = early.place[i];
      high[i] = late[i];
      if (low[i] > high[i]) {
        return false;
      }
      earlyStart[i] = g.startAt(i, low[i]);
      earlyFinish[i] = g.finishAt(i, low[i], minutes[i]);
      lateStart[i] = g.startAt(i, high[i]);
      lateFinish[i] = g.finishAt(i, high[i], minutes[i]);
    }
    Arrays.fill(unsettled, true);
    return settle();
  }

  /** Decides that one task goes first; false if that refutes the end. */
  boolean decide(int first, int second) {
    Arrays.fill(unsettled, false); // the windows were settled before
    return order(first, second) && settle();
  }

  /** Lets the task start at a moment from the first on and before the second; not settled yet. */
  boolean startWithin(int i, long from, long before) {
    return startFrom(i, from) && lower(i, g.placeStartingBy(i, before - 1));
  }

  boolean startFrom(int i, long from) {
    return raise(i, g.placeStartingFrom(i, from));
  }

  /** Lets the task finish by the moment; not settled yet. */
  boolean finishBy(int i, long moment) {
    return lower(i, g.placeFinishingBy(i, moment, minutes[i]));
  }

  /** Settles what was narrowed, if that could be; false if there can be no such schedule. */
  boolean settled(boolean possible) {
    if (possible) {
      return settle();
    }
    drop();
    return false;
  }

  private boolean order(int i, int j) {
    if (has(ordered, i, j)) {
      return true;
    }
    ordered[i * words + (j >> 6)] |= 1L << j;
    changed(i);
    changed(j);
    return raise(j, g.placeStartingFrom(j, earlyFinish[i]))
        && lower(i, g.placeFinishingBy(i, lateStart[j], minutes[i]));
  }

  boolean raise(int i, long at) {
    if (at <= low[i]) {
      return true;
    }
    if (at > high[i]) {
      blame[i]++;
      return false;
    }
    changed(i);
    low[i] = at;
    earlyStart[i] = g.startAt(i, at);
    earlyFinish[i] = g.finishAt(i, at, minutes[i]);
    enqueue(i);
    return true;
  }

  boolean lower(int i, long at) {
    if (at >= high[i]) {
      return true;
    }
    if (at < low[i]) {
      blame[i]++;
      return false;
    }
    changed(i);
    high[i] = at;
    lateStart[i] = g.startAt(i, at);
    lateFinish[i] = g.finishAt(i, at, minutes[i]);
    enqueue(i);
    return true;
  }

  private void changed(int i) {
    for (int k : groupsOf[i]) {
      unsettled[k] = true;
    }
  }

  private void enqueue(int i) {
    if (!queued[i]) {
      queued[i] = true;
      queue[(head + waiting++) % queue.length] = i;
    }
  }

  /** Applies all rules until nothing changes; false if the end is refuted. */
  private boolean settle() {
    boolean possible = followLinks();
    boolean again = true;
    while (possible && again) {
      again = false;
      for (int k = 0; possible && k < groups.size(); k++) {
        if (unsettled[k]) {
          CrewTasks group = groups.get(k);
          unsettled[k] = false;
          again = true;
          possible =
              pairs(group)
                  && followLinks()
                  && crewTime.energy(group)
                  && crewTime.sequence(group)
                  && followLinks();
        }
      }
    }
    drop();
    return possible;
  }

  private void drop() {
    while (waiting > 0) {
      queued[queue[head]] = false;
      head = (head + 1) % queue.length;
      waiting--;
    }
  }

  private boolean followLinks() {
    while (waiting > 0) {
      int i = queue[head];
      head = (head + 1) % queue.length;
      waiting--;
      queued[i] = false;
      boolean running = g.state[i] == Graph.RUNNING;
      long start = running ? g.realStart[i] : earlyStart[i];
      for (int o = out.first()[i]; o < out.first()[i + 1]; o++) {
        int l = out.link()[o];
        int a = g.after[l];
        if (g.state[a] != Graph.DONE
            && !raise(a, g.placeAfter(l, start, earlyFinish[i], minutes[a]))) {
          return false;
        }
      }
      for (int q = g.inFirst[i]; q < g.inFirst[i + 1]; q++) {
        int l = g.in[q];
        int b = g.before[l];
        if (g.movable(l) && !lower(b, g.placeBefore(l, high[i], minutes[i], minutes[b]))) {
          return false;
        }
      }
      for (int j : sharing[i]) {
        if (has(ordered, i, j) && !raise(j, g.placeStartingFrom(j, earlyFinish[i]))) {
          return false;
        }
        if (has(ordered, j, i) && !lower(j, g.placeFinishingBy(j, lateStart[i], minutes[j]))) {
          return false;
        }
      }
    }
    return true;
  }

  /** Of two tasks that cannot run at once, the one that cannot go first goes second. */
  private boolean pairs(CrewTasks group) {
    for (int i : group.all) {
      for (int j : rivals[i]) {
        if (j > i && !has(ordered, i, j) && !has(ordered, j, i)) {
          boolean first = earlyFinish[i] <= lateStart[j];
          boolean second = earlyFinish[j] <= lateStart[i];
          if (!first && !second) {
            blame[i]++;
            blame[j]++;
            return false;
          }
          if (!first && !order(j, i) || !second && !order(i, j)) {
            return false;
          }
        }
      }
    }
    return true;
  }
}

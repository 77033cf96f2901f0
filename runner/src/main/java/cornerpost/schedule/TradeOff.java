package cornerpost.schedule;

import static java.util.Objects.requireNonNull;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Time against money: the least that it costs to end by any moment, when tasks (and the waits
 * between them) can be shortened at a price for each unit of time.
 *
 * <p>Exact for costs that grow evenly with the time gained. Every task is an arc of a flow network
 * twice over: with its usual length, where its price limits the flow, and with its least length,
 * without limit. The flow is sent along longest paths; how much flows is the price of the next unit
 * of time gained, and the lengths of the paths are the ends at which that price changes. Whole
 * numbers in give whole numbers out. A task that was shortened for one gain is lengthened again
 * where a later gain makes that cheaper.
 *
 * <p>Cost: one longest path for each change of price, each O(arcs x nodes) at worst. Method: J. E.
 * Kelley, "Critical-path planning and scheduling: mathematical basis", Operations Research 9 (1961)
 * 296-320; D. R. Fulkerson, "A network flow computation for project cost curves", Management
 * Science 7 (1961) 167-178. Departure: waits may have any of the four relations and may themselves
 * be shortened, as an overlap does.
 */
public final class TradeOff {
  private static final long NO_LIMIT = Long.MAX_VALUE / 4;
  private static final int SOURCE = 0;
  private static final int SINK = 1;

  /**
   * A task.
   *
   * @param normal its usual length, 0 or more, in any whole unit of time
   * @param least the shortest it can be made, 0 to {@code normal}
   * @param price of one unit of time, 0 or more, in any whole unit of money
   */
  public record Job(String id, long normal, long least, long price) {
    public Job {
      requireNonNull(id, "id");
      if (least < 0 || least > normal || price < 0) {
        throw new IllegalArgumentException(
            id + " takes " + least + " to " + normal + " at " + price + " a unit");
      }
    }

    /** A task that nothing shortens. */
    public static Job fixed(String id, long length) {
      return new Job(id, length, length, 0);
    }
  }

  /**
   * One task waits for another.
   *
   * @param lag usual wait; below nothing overlaps
   * @param least the shortest it can be made; equal to {@code lag} where nothing can be done
   * @param price of one unit of time, 0 or more
   */
  public record Tie(
      String before, String after, Relation relation, long lag, long least, long price) {
    public Tie {
      if (least > lag || price < 0) {
        throw new IllegalArgumentException(before + " to " + after + ": " + least + " to " + lag);
      }
    }

    /** Starts when the other is finished. */
    public static Tie of(String before, String after) {
      return new Tie(before, after, Relation.FINISH_TO_START, 0, 0, 0);
    }
  }

  /**
   * A stretch over which a unit of time gained costs the same.
   *
   * @param from the later end, {@code to} the earlier one
   * @param price of one unit of time
   */
  public record Stretch(long from, long to, long price) {}

  /**
   * What to do to end by some moment.
   *
   * @param end the moment, counted from the start
   * @param cost of all that is shortened
   * @param lengths of each task, by its id
   * @param lags of each tie, in the order given
   */
  public record Answer(long end, long cost, Map<String, Long> lengths, List<Long> lags) {}

  private final List<Job> jobs;
  private final List<Tie> ties;
  private final int nodes;
  private final int arcs; // two for each job and tie, then the fixed ones
  private final int[] from;
  private final int[] to;
  private final long[] length;
  private final long[] room;
  private final long[] flow;
  private final List<Stretch> stretches = new ArrayList<>();
  private final List<long[]> flows = new ArrayList<>();
  private final long usual;
  private long shortest;

  private TradeOff(List<Job> jobs, List<Tie> ties) {
    this.jobs = List.copyOf(jobs);
    this.ties = List.copyOf(ties);
    nodes = 2 + 2 * jobs.size();
    arcs = 2 * (jobs.size() + ties.size()) + 2 * jobs.size();
    from = new int[arcs];
    to = new int[arcs];
    length = new long[arcs];
    room = new long[arcs];
    flow = new long[arcs];
    var index = new HashMap<String, Integer>();
    int a = 0;
    for (int i = 0; i < jobs.size(); i++) {
      var j = jobs.get(i);
      if (index.put(j.id(), i) != null) {
        throw new IllegalArgumentException("two tasks are called " + j.id());
      }
      a = put(a, start(i), finish(i), j.normal(), j.least(), j.price());
    }
    for (var t : ties) {
      int b = index.get(t.before());
      int c = index.get(t.after());
      int tail =
          t.relation() == Relation.FINISH_TO_START || t.relation() == Relation.FINISH_TO_FINISH
              ? finish(b)
              : start(b);
      int head =
          t.relation() == Relation.FINISH_TO_START || t.relation() == Relation.START_TO_START
              ? start(c)
              : finish(c);
      a = put(a, tail, head, t.lag(), t.least(), t.price());
    }
    for (int i = 0; i < jobs.size(); i++) {
      a = fixed(a, SOURCE, start(i));
      a = fixed(a, finish(i), SINK);
    }
    usual = run();
  }

  /**
   * Solves for every end at once.
   *
   * @throws IllegalArgumentException if tasks wait for each other in a loop, or two have one id
   */
  public static TradeOff of(List<Job> jobs, List<Tie> ties) {
    return new TradeOff(jobs, ties);
  }

  /** The end if nothing is shortened. */
  public long usualEnd() {
    return usual;
  }

  /** No price makes it end before. */
  public long shortestEnd() {
    return shortest;
  }

  /** From the usual end to the shortest; the price never falls. */
  public List<Stretch> stretches() {
    return List.copyOf(stretches);
  }

  /** The least cost of ending by then; nothing at the usual end and after. */
  public long cost(long end) {
    checked(end);
    long cost = 0;
    for (var s : stretches) {
      if (end < s.from()) cost += s.price() * (s.from() - Math.max(end, s.to()));
    }
    return cost;
  }

  /** What to shorten, and by how much, to end by then at the least cost. */
  public Answer at(long end) {
    checked(end);
    long goal = Math.min(end, usual);
    var in = new long[arcs];
    for (int k = 0; k < stretches.size(); k++) {
      if (goal < stretches.get(k).from() && goal >= stretches.get(k).to()) in = flows.get(k);
    }
    System.arraycopy(in, 0, flow, 0, arcs);
    var when = longest(goal, new int[nodes]);
    var lengths = new LinkedHashMap<String, Long>();
    var lags = new ArrayList<Long>();
    for (int k = 0; k < jobs.size() + ties.size(); k++) {
      long taken = Math.min(length[2 * k], when[to[2 * k]] - when[from[2 * k]]);
      if (k < jobs.size()) lengths.put(jobs.get(k).id(), taken);
      else lags.add(taken);
    }
    return new Answer(goal, cost(goal), lengths, lags);
  }

  private void checked(long end) {
    if (end < shortest) {
      throw new IllegalArgumentException("it cannot end at " + end + ", only from " + shortest);
    }
  }

  // ---- the flow -----------------------------------------------------------------------------

  private static int start(int job) {
    return 2 + 2 * job;
  }

  private static int finish(int job) {
    return 3 + 2 * job;
  }

  private int put(int a, int tail, int head, long normal, long least, long price) {
    arc(a, tail, head, normal, normal == least ? 0 : price);
    arc(a + 1, tail, head, least, NO_LIMIT);
    return a + 2;
  }

  private int fixed(int a, int tail, int head) {
    arc(a, tail, head, 0, NO_LIMIT);
    return a + 1;
  }

  private void arc(int a, int tail, int head, long takes, long most) {
    from[a] = tail;
    to[a] = head;
    length[a] = takes;
    room[a] = most;
  }

  private long run() {
    int[] by = new int[nodes];
    // A price of nothing lets nothing flow, so the first end has those tasks at their least.
    long end = longest(NO_LIMIT, by)[SINK];
    long first = usualLength();
    if (end < first) note(first, end, 0);
    long price = 0;
    while (true) {
      long more = NO_LIMIT;
      for (int v = SINK; v != SOURCE; v = tail(by[v])) more = Math.min(more, room(by[v]));
      if (more >= NO_LIMIT / 2) break;
      for (int v = SINK; v != SOURCE; v = tail(by[v])) {
        if (by[v] < arcs) flow[by[v]] += more;
        else flow[by[v] - arcs] -= more;
      }
      price += more;
      long next = longest(NO_LIMIT, by)[SINK];
      if (next < end) note(end, next, price);
      end = next;
    }
    shortest = end;
    return first;
  }

  private void note(long later, long earlier, long price) {
    stretches.add(new Stretch(later, earlier, price));
    flows.add(Arrays.copyOf(flow, arcs));
  }

  /** The longest path if nothing is shortened, what costs nothing included. */
  private long usualLength() {
    long[] saved = Arrays.copyOf(room, arcs);
    for (int a = 0; a < arcs; a++) {
      if (room[a] == 0) room[a] = 1;
    }
    long end = longest(NO_LIMIT, new int[nodes])[SINK];
    System.arraycopy(saved, 0, room, 0, arcs);
    return end;
  }

  private int tail(int step) {
    return step < arcs ? from[step] : to[step - arcs];
  }

  private long room(int step) {
    if (step >= arcs) return flow[step - arcs];
    return room[step] >= NO_LIMIT ? NO_LIMIT : room[step] - flow[step];
  }

  /**
   * Longest ways from the start through arcs with room left, forwards or back.
   *
   * @param end the moment at which all ends, if it is asked for
   * @param by takes the step by which each node is reached
   */
  private long[] longest(long end, int[] by) {
    long[] way = new long[nodes];
    Arrays.fill(way, Long.MIN_VALUE);
    way[SOURCE] = 0;
    int[][] steps = steps();
    int[] times = new int[nodes];
    var next = new ArrayDeque<Integer>();
    boolean[] waits = new boolean[nodes];
    next.add(SOURCE);
    if (end < NO_LIMIT) {
      way[SINK] = end;
      next.add(SINK);
    }
    while (!next.isEmpty()) {
      int v = next.remove();
      waits[v] = false;
      for (int step : steps[v]) {
        if (room(step) <= 0) continue;
        int w = step < arcs ? to[step] : from[step - arcs];
        long there = way[v] + (step < arcs ? length[step] : -length[step - arcs]);
        if (there <= way[w]) continue;
        way[w] = there;
        by[w] = step;
        if (++times[w] > nodes) throw new IllegalArgumentException("tasks wait in a loop");
        if (!waits[w]) next.add(w);
        waits[w] = true;
      }
    }
    return way;
  }

  private int[][] around; // steps that leave each node

  private int[][] steps() {
    if (around == null) {
      var lists = new ArrayList<List<Integer>>();
      for (int v = 0; v < nodes; v++) lists.add(new ArrayList<>());
      for (int a = 0; a < arcs; a++) {
        lists.get(from[a]).add(a);
        lists.get(to[a]).add(arcs + a);
      }
      around =
          lists.stream()
              .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
              .toArray(int[][]::new);
    }
    return around;
  }
}

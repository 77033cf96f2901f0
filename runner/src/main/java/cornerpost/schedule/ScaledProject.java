package cornerpost.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A network whose tasks all share one calendar, in whole numbers of the largest common step (a day,
 * an hour).
 *
 * <p>Tasks are renumbered in an order of waiting. All links become "start after >= start before +
 * lag", where the lag may be negative. The crews are packed into one long: a field for each, with a
 * guard bit on top that stays set as long as the field is not overdrawn, so that one subtraction
 * tests all crews at once.
 */
final class ScaledProject {
  /** Longest timetable in steps; a longer one is planned with calendars instead. */
  private static final int LONGEST = 60_000;

  final int size;
  final int[] task; // index in the network
  final int[] duration;
  final long[] demand;
  final long available; // all fields full, guards set
  final long guards;
  final int[] crewShift; // where a crew's field begins
  final int[] crewAvailable;
  final int[][] need; // [crew][task]
  final int[] release;
  final int[][] before;
  final int[][] lagBefore;
  final int[][] after;
  final int[][] lagAfter; // the same lags, seen in reversed time
  final int horizon;
  final long base;
  final long step;

  /**
   * Empty if calendars differ, elapsed time is involved, crews are at work already, or the numbers
   * are too large.
   */
  static Optional<ScaledProject> of(Network network, Sweep early) {
    Graph g = network.graph();
    WorkCalendar shared = null;
    for (int i = 0; i < g.size; i++) {
      if (g.state[i] != Graph.DONE) {
        if (shared == null) {
          shared = g.calendar[i];
        }
        if (!g.calendar[i].sameTimes(shared)) {
          return Optional.empty();
        }
      }
    }
    if (shared == null || UnderWay.of(network).tasks.length > 0) {
      return Optional.empty();
    }
    boolean always = shared.sameTimes(WorkCalendar.roundTheClock());
    for (int i = 0; i < g.size && !always; i++) {
      if (g.kind[i] == Graph.ELAPSED && g.state[i] != Graph.DONE) {
        return Optional.empty();
      }
    }
    for (int l = 0; l < g.links && !always; l++) {
      if (g.plainLag(l) && g.lag(l) != 0) {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(new ScaledProject(network, early, shared));
    } catch (ArithmeticException tooLarge) {
      return Optional.empty();
    }
  }

  private ScaledProject(Network network, Sweep early, WorkCalendar calendar) {
    Graph g = network.graph();
    task = Arrays.stream(g.order()).filter(i -> g.state[i] != Graph.DONE).toArray();
    size = task.length;
    int[] number = new int[g.size];
    Arrays.fill(number, -1);
    for (int k = 0; k < size; k++) {
      number[task[k]] = k;
    }
    long[] from = new long[size]; // working minutes before which nothing of the task can go on
    long earliest = Long.MAX_VALUE;
    long[][] lags = new long[size][];
    before = new int[size][];
    for (int k = 0; k < size; k++) {
      int j = task[k];
      from[k] = calendar.worked(g.startAt(j, g.placeStartingFrom(j, g.release[j])));
      List<int[]> arcs = new ArrayList<>();
      var lag = new ArrayList<Long>();
      for (int q = g.inFirst[j]; q < g.inFirst[j + 1]; q++) {
        int l = g.in[q];
        int i = g.before[l];
        if (number[i] < 0 || g.state[i] == Graph.RUNNING && g.fromStart(l)) {
          long at = g.placeAfter(l, early.start[i], early.finish[i], g.minutes[j]);
          from[k] = Math.max(from[k], calendar.worked(g.startAt(j, at)));
          continue;
        }
        long w = g.lag(l);
        w += g.fromStart(l) ? 0 : g.minutes[i];
        w -= g.toFinish(l) ? g.minutes[j] : 0;
        int same = -1;
        for (int a = 0; a < arcs.size(); a++) {
          same = arcs.get(a)[0] == number[i] ? a : same;
        }
        if (same >= 0) {
          lag.set(same, Math.max(lag.get(same), w));
        } else {
          arcs.add(new int[] {number[i]});
          lag.add(w);
        }
      }
      before[k] = arcs.stream().mapToInt(a -> a[0]).toArray();
      lags[k] = lag.stream().mapToLong(Long::longValue).toArray();
      earliest = Math.min(earliest, from[k]);
    }
    base = earliest;
    long common = 0;
    long total = 0;
    for (int k = 0; k < size; k++) {
      common = gcd(common, g.minutes[task[k]]);
      common = gcd(common, from[k] - base);
      total += g.minutes[task[k]];
      long longest = 0;
      for (long w : lags[k]) {
        common = gcd(common, Math.abs(w));
        longest = Math.max(longest, w);
      }
      total = Math.addExact(total, longest);
      total = Math.max(total, from[k] - base + total);
    }
    step = Math.max(1, common);
    if (total / step > LONGEST) {
      throw new ArithmeticException("too long");
    }
    horizon = (int) (total / step) + 1;
    duration = new int[size];
    release = new int[size];
    lagBefore = new int[size][];
    for (int k = 0; k < size; k++) {
      duration[k] = (int) (g.minutes[task[k]] / step);
      release[k] = (int) ((from[k] - base) / step);
      lagBefore[k] = Arrays.stream(lags[k]).mapToInt(w -> (int) (w / step)).toArray();
    }
    after = new int[size][];
    lagAfter = new int[size][];
    reverse();

    int crews = network.crews().size();
    need = new int[crews][size];
    for (int c = 0; c < crews; c++) {
      String name = network.crews().get(c).name();
      for (int k = 0; k < size; k++) {
        need[c][k] =
            duration[k] == 0
                ? 0
                : network.activities().get(task[k]).demands().getOrDefault(name, 0);
      }
    }
    crewAvailable = network.crews().stream().mapToInt(Crew::available).toArray();
    crewShift = new int[crews];
    demand = new long[size];
    int bit = 0;
    long all = 0;
    long top = 0;
    for (int c = 0; c < crews; c++) {
      crewShift[c] = -1;
      if (Arrays.stream(need[c]).asLongStream().sum() <= crewAvailable[c]) {
        continue; // never short
      }
      int width = 33 - Integer.numberOfLeadingZeros(crewAvailable[c]);
      if (bit + width > 64) {
        throw new ArithmeticException("too many crews");
      }
      crewShift[c] = bit;
      all |= (long) crewAvailable[c] << bit;
      top |= 1L << bit + width - 1;
      for (int k = 0; k < size; k++) {
        demand[k] |= (long) need[c][k] << bit;
      }
      bit += width;
    }
    guards = top;
    available = all | top;
  }

  /**
   * The same tasks with more links, renumbered.
   *
   * @param from the project
   * @param order task to be number 0, 1, ...; an order of waiting for the old and the new links
   * @param extra for each task of the project those it waits for besides, finish to start; may be
   *     repeated
   */
  ScaledProject(ScaledProject from, int[] order, List<List<Integer>> extra) {
    size = from.size;
    task = new int[size];
    duration = new int[size];
    demand = new long[size];
    release = new int[size];
    before = new int[size][];
    lagBefore = new int[size][];
    need = new int[from.need.length][size];
    int[] number = new int[size];
    for (int k = 0; k < size; k++) {
      number[order[k]] = k;
    }
    for (int k = 0; k < size; k++) {
      int old = order[k];
      task[k] = from.task[old];
      duration[k] = from.duration[old];
      demand[k] = from.demand[old];
      release[k] = from.release[old];
      for (int c = 0; c < need.length; c++) {
        need[c][k] = from.need[c][old];
      }
      int links = from.before[old].length;
      before[k] = Arrays.copyOf(from.before[old], links + extra.get(old).size());
      lagBefore[k] = Arrays.copyOf(from.lagBefore[old], before[k].length);
      for (int a = 0; a < before[k].length; a++) {
        int i = a < links ? before[k][a] : extra.get(old).get(a - links);
        lagBefore[k][a] = a < links ? lagBefore[k][a] : from.duration[i];
        before[k][a] = number[i];
      }
    }
    available = from.available;
    guards = from.guards;
    crewShift = from.crewShift;
    crewAvailable = from.crewAvailable;
    horizon = from.horizon;
    base = from.base;
    step = from.step;
    after = new int[size][];
    lagAfter = new int[size][];
    reverse();
  }

  /**
   * The same project in reversed time: task k is number size - 1 - k. Null where a task must not
   * start before some time.
   */
  ScaledProject mirrored() {
    if (Arrays.stream(release).anyMatch(r -> r > 0)) {
      return null;
    }
    int[] order = new int[size];
    List<List<Integer>> none = new ArrayList<>();
    for (int k = 0; k < size; k++) {
      order[k] = size - 1 - k;
      none.add(List.of());
    }
    var mirror = new ScaledProject(this, order, none);
    for (int k = 0; k < size; k++) {
      int old = order[k];
      mirror.release[k] = 0;
      mirror.before[k] = Arrays.stream(after[old]).map(j -> size - 1 - j).toArray();
      mirror.lagBefore[k] = lagAfter[old].clone();
    }
    mirror.reverse();
    return mirror;
  }

  /**
   * Places in the mirrored project of a schedule of this one.
   *
   * @param end of the schedule
   */
  void mirror(int[] start, int end, int[] mirrored) {
    for (int k = 0; k < size; k++) {
      mirrored[size - 1 - k] = end - start[k] - duration[k];
    }
  }

  private void reverse() {
    int[] count = new int[size];
    for (int[] b : before) {
      for (int i : b) {
        count[i]++;
      }
    }
    for (int k = 0; k < size; k++) {
      after[k] = new int[count[k]];
      lagAfter[k] = new int[count[k]];
    }
    for (int j = 0; j < size; j++) {
      for (int a = 0; a < before[j].length; a++) {
        int i = before[j][a];
        int at = after[i].length - count[i]--;
        after[i][at] = j;
        lagAfter[i][at] = lagBefore[j][a] + duration[j] - duration[i];
      }
    }
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}

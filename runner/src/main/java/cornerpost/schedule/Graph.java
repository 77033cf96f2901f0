package cornerpost.schedule;

import java.util.IdentityHashMap;
import java.util.stream.IntStream;

/**
 * A network on flat arrays, and the arithmetic of one link, forward and backward.
 *
 * <p>Every task has one number, its place, from which start and finish follow, and which later is
 * larger. For work it is the working minute of its calendar at which it begins; for elapsed tasks
 * and milestones it is the moment itself. A link turns into "place of the task after at least ..."
 * and, seen from behind, "place of the task before at most ..."; the two are exact inverses, so
 * late dates and float are as exact as early dates.
 */
final class Graph {
  static final byte WORK = 0;
  static final byte ELAPSED = 1;
  static final byte MOMENT = 2;

  static final byte NOT_STARTED = 0;
  static final byte RUNNING = 1;
  static final byte DONE = 2;

  // Of a link in one number, see inLink.
  private static final int TO_FINISH = 1;
  private static final int FROM_FINISH = 2;
  private static final int ELAPSED_LAG = 4;
  private static final int TASK_FROM = 3; // bits to the left
  private static final int LAG_FROM = 32;
  private static final int SLOW = 1 << 31;
  private static final int ELAPSED_TO_SIGN = Integer.numberOfLeadingZeros(ELAPSED_LAG);

  private static final int[] OF_RELATION = new int[Relation.values().length];
  private static final int[] OF_UNIT = new int[LagUnit.values().length];

  static {
    for (Relation r : Relation.values()) {
      OF_RELATION[r.ordinal()] = (r.fromStart() ? 0 : FROM_FINISH) | (r.toFinish() ? TO_FINISH : 0);
    }
    OF_UNIT[LagUnit.ELAPSED_MINUTES.ordinal()] = ELAPSED_LAG;
  }

  static final long NEVER = Long.MAX_VALUE / 4;

  final int size;
  final byte[] kind;
  final byte[] state;
  final WorkCalendar[] calendar; // shared with the network, not to be written to
  final long[] minutes;
  final long[] release; // moment before which it cannot start, or go on
  final long[] deadline; // NEVER if none
  final long[] realStart;
  final long[] realFinish;

  final int links;
  final int[] before; // shared with the network, not to be written to
  final int[] after;
  final int[] inFirst; // links into task i are in[inFirst[i]] .. in[inFirst[i + 1] - 1]
  final int[] in;

  /**
   * For each of {@link #in} what the passes need, in one number: the lag in the upper half; in the
   * lower the task before, whether its finish counts, whether the finish of the task after counts,
   * and in the sign whether calendars are needed to add it up.
   */
  final long[] inLink;

  final boolean[] quick; // whether the task and all links into it are differences of places
  final long[] firstPlace; // by its release alone
  private final long[] rule; // of each link, as inLink, without task and sign
  private final boolean listed; // whether every task stands after those it waits for
  private volatile Incidence outgoing;
  private volatile int[] order;
  private volatile int[] passOrder;
  final long start;

  Graph(Network network) {
    size = network.activities().size();
    kind = new byte[size];
    state = new byte[size];
    calendar = network.calendars();
    minutes = new long[size];
    release = new long[size];
    deadline = new long[size];
    realStart = new long[size];
    realFinish = new long[size];
    start = Minutes.of(network.start());
    long status = network.status().map(Minutes::of).orElse(Long.MIN_VALUE);
    for (int i = 0; i < size; i++) {
      Activity a = network.activities().get(i);
      minutes[i] = a.minutes();
      deadline[i] = a.deadline().map(Minutes::of).orElse(NEVER);
      release[i] = Math.max(start, status);
      if (a.notBefore().isPresent()) {
        release[i] = Math.max(release[i], Minutes.of(a.notBefore().get()));
      }
      progress(i, a.progress(), status, a.isElapsed());
      kind[i] = a.isElapsed() ? ELAPSED : minutes[i] == 0 ? MOMENT : WORK;
    }

    links = network.links().size();
    before = network.before();
    after = network.after();
    rule = rules(network);
    Incidence into = Incidence.of(after, size);
    inFirst = into.first();
    in = into.link();
    inLink = new long[links];
    quick = new boolean[size];
    firstPlace = new long[size];
    listed = packLinks(sorts());
    for (int i = 0; i < size; i++) {
      boolean same =
          i > 0
              && kind[i] == kind[i - 1]
              && calendar[i] == calendar[i - 1]
              && release[i] == release[i - 1];
      firstPlace[i] = same ? firstPlace[i - 1] : placeStartingFrom(i, release[i]);
    }
  }

  /**
   * The lag, within {@link Network#MOST_MINUTES}, fits the upper half. Without a branch, so that
   * the processor fetches the next links while it waits for one.
   */
  private static long[] rules(Network network) {
    long[] rule = new long[network.links().size()];
    int l = 0;
    for (Link link : network.links()) {
      rule[l++] =
          link.lagMinutes() << LAG_FROM
              | OF_RELATION[link.relation().ordinal()]
              | OF_UNIT[link.lagUnit().ordinal()];
    }
    return rule;
  }

  /**
   * Fills {@link #inLink} and {@link #quick}.
   *
   * @return whether every task is listed after those it waits for
   */
  private boolean packLinks(int[] sort) {
    int least = 1;
    for (int j = 0; j < size; j++) {
      int slow = sort[j];
      for (int k = inFirst[j]; k < inFirst[j + 1]; k++) {
        int l = in[k];
        int i = before[l];
        long link = rule[l];
        int lag = (int) (link >> LAG_FROM);
        int elapsed = (int) link << ELAPSED_TO_SIGN & (lag | -lag); // in the sign: both are so
        int other = sort[i] ^ sort[j];
        int sign = (other | -other | sort[j] | elapsed) & SLOW;
        inLink[k] = link | (sign | i << TASK_FROM) & 0xFFFFFFFFL;
        slow |= sign;
        least = Math.min(least, j - i);
      }
      quick[j] = slow >= 0;
    }
    return least > 0;
  }

  /** Every task after those it waits for; first those that wait for none, in the order listed. */
  int[] order() {
    int[] known = order;
    if (known == null) {
      known = inOrder();
      order = known;
    }
    return known;
  }

  /**
   * Another such order: as listed where that is one. The passes then go through memory from one end
   * to the other, and no order need be found.
   */
  int[] passOrder() {
    int[] known = passOrder;
    if (known == null) {
      known = listed ? IntStream.range(0, size).toArray() : order();
      passOrder = known;
    }
    return known;
  }

  /** The links that lead from each task. */
  Incidence outgoing() {
    Incidence known = outgoing;
    if (known == null) {
      known = Incidence.of(before, size);
      outgoing = known;
    }
    return known;
  }

  /** Whether the link waits for the start of the task before, not for its finish. */
  boolean fromStart(int link) {
    return (rule[link] & FROM_FINISH) == 0;
  }

  /** Whether the finish of the task after waits, not its start. */
  boolean toFinish(int link) {
    return (rule[link] & TO_FINISH) != 0;
  }

  /**
   * Whether what the link waits for is still to come: the task before can move, and the link with
   * it.
   */
  boolean movable(int link) {
    byte known = state[before[link]];
    return known == NOT_STARTED || known == RUNNING && !fromStart(link);
  }

  long lag(int link) {
    return rule[link] >> LAG_FROM;
  }

  /** Whether no calendar is needed to add the lag: it is elapsed, or nought. */
  boolean plainLag(int link) {
    return (rule[link] & ELAPSED_LAG) != 0 || lag(link) == 0;
  }

  /**
   * A number for each task: equal for tasks of work in one calendar that have not begun, negative
   * for all others. Between two with the same number a link is a difference of two places: the
   * moments it goes through come back to the same number.
   */
  private int[] sorts() {
    int[] sort = new int[size];
    var met = new IdentityHashMap<WorkCalendar, Integer>();
    int number = 0;
    for (int i = 0; i < size; i++) {
      if (i == 0 || calendar[i] != calendar[i - 1]) {
        number = met.computeIfAbsent(calendar[i], c -> met.size());
      }
      sort[i] = kind[i] == WORK && state[i] == NOT_STARTED ? number : -1;
    }
    return sort;
  }

  /** The task before of a link in {@link #inLink}. */
  static int task(long link) {
    return ((int) link & ~SLOW) >>> TASK_FROM;
  }

  /** Whether a link in {@link #inLink} needs calendars to add up. */
  static boolean slow(long link) {
    return (int) link < 0;
  }

  /**
   * How much later than the task before the task after is at least, in places, for a link that is
   * not slow. Without a branch: which relation comes next cannot be foreseen.
   */
  static long step(long link, long durationBefore, long durationAfter) {
    long finishBefore = -((link & FROM_FINISH) >> 1);
    long finishAfter = -(link & TO_FINISH);
    return (link >> LAG_FROM) + (durationBefore & finishBefore) - (durationAfter & finishAfter);
  }

  /** The larger of two numbers, without a branch; for numbers as far apart as NEVER at the most. */
  static long later(long a, long b) {
    long more = b - a;
    return a + (more & ~(more >> 63));
  }

  static long sooner(long a, long b) {
    long less = b - a;
    return a + (less & less >> 63);
  }

  private void progress(int i, Progress p, long status, boolean elapsed) {
    if (p.start().isEmpty()) {
      return;
    }
    realStart[i] = Minutes.of(p.start().get());
    if (p.finish().isPresent()) {
      state[i] = DONE;
      realFinish[i] = Minutes.of(p.finish().get());
      return;
    }
    state[i] = RUNNING;
    release[i] = Math.max(status, realStart[i]);
    if (p.remainingMinutes().isPresent()) {
      minutes[i] = p.remainingMinutes().getAsLong();
    } else if (minutes[i] > 0) {
      long done =
          elapsed
              ? status - realStart[i]
              : calendar[i].worked(status) - calendar[i].worked(realStart[i]);
      minutes[i] = Math.max(0, minutes[i] - done);
    }
  }

  /** Kahn's method; cost O(tasks + links). The network has no loop, so every task is reached. */
  private int[] inOrder() {
    Incidence out = outgoing();
    int[] waiting = new int[size];
    int[] found = new int[size];
    int count = 0;
    for (int i = 0; i < size; i++) {
      waiting[i] = inFirst[i + 1] - inFirst[i];
      if (waiting[i] == 0) {
        found[count++] = i;
      }
    }
    for (int k = 0; k < count; k++) {
      int i = found[k];
      for (int o = out.first()[i]; o < out.first()[i + 1]; o++) {
        int j = after[out.link()[o]];
        if (--waiting[j] == 0) {
          found[count++] = j;
        }
      }
    }
    return found;
  }

  /** When work begins at that place, or goes on again if it has begun already. */
  long startAt(int i, long place) {
    return kind[i] == WORK ? calendar[i].startOf(place) : place;
  }

  long finishAt(int i, long place, long duration) {
    return switch (kind[i]) {
      case WORK -> calendar[i].endOf(place + duration);
      case ELAPSED -> place + duration;
      default -> place;
    };
  }

  long placeStartingFrom(int i, long moment) {
    return switch (kind[i]) {
      case WORK -> calendar[i].worked(moment);
      case ELAPSED -> moment;
      default -> calendar[i].closedAtOrAfter(moment);
    };
  }

  private long placeFinishingFrom(int i, long moment, long duration) {
    return switch (kind[i]) {
      case WORK -> calendar[i].numberEndingAtOrAfter(moment) - duration;
      case ELAPSED -> moment - duration;
      default -> calendar[i].closedAtOrAfter(moment);
    };
  }

  long placeFinishingBy(int i, long moment, long duration) {
    return switch (kind[i]) {
      case WORK -> calendar[i].worked(moment) - duration;
      case ELAPSED -> moment - duration;
      default -> calendar[i].closedAtOrBefore(moment);
    };
  }

  long placeStartingBy(int i, long moment) {
    return switch (kind[i]) {
      case WORK -> calendar[i].numberStartingAtOrBefore(moment);
      case ELAPSED -> moment;
      default -> calendar[i].closedAtOrBefore(moment);
    };
  }

  /**
   * The moment a link lets the task after start, or finish, given when the task before starts and
   * finishes.
   */
  long moment(int link, long startBefore, long finishBefore) {
    int i = before[link];
    int j = after[link];
    long from = fromStart(link) ? startBefore : finishBefore;
    if (toFinish(link) && kind[i] != ELAPSED) {
      from =
          calendar[i].endOf(
              calendar[i].worked(from)); // Monday 08:00 is Friday 16:00, seen from a finish
    }
    if (plainLag(link)) {
      return from + lag(link);
    }
    long number = calendar[j].worked(from) + lag(link);
    return fromStart(link) && !toFinish(link)
        ? calendar[j].startOf(number)
        : calendar[j].endOf(number);
  }

  /** The earliest place of the task after that the link allows. */
  long placeAfter(int link, long startBefore, long finishBefore, long durationAfter) {
    return placeOf(link, moment(link, startBefore, finishBefore), durationAfter);
  }

  /** The earliest place of the task after, given the moment the link lets it start or finish. */
  long placeOf(int link, long moment, long durationAfter) {
    int j = after[link];
    return toFinish(link)
        ? placeFinishingFrom(j, moment, durationAfter)
        : placeStartingFrom(j, moment);
  }

  /**
   * The latest place of the task before for which the link lets the task after stay where it is.
   */
  long placeBefore(int link, long placeAfter, long durationAfter, long durationBefore) {
    int i = before[link];
    int j = after[link];
    long limit =
        toFinish(link)
            ? finishAt(j, placeAfter, durationAfter)
            : startAt(j, placeAfter); // the moment of the link may be this late
    if (plainLag(link)) {
      limit -= lag(link);
    } else if (fromStart(link) && !toFinish(link)) {
      limit = calendar[j].startOf(calendar[j].numberStartingAtOrBefore(limit) - lag(link));
    } else {
      limit = calendar[j].startOf(calendar[j].worked(limit) - lag(link));
    }
    if (kind[i] == ELAPSED) {
      return fromStart(link) ? limit : limit - durationBefore;
    }
    if (toFinish(link)) { // only the working minutes up to the limit count
      long number = calendar[i].worked(limit);
      if (kind[i] == MOMENT) {
        return calendar[i].startOf(number);
      }
      return fromStart(link) ? number : number - durationBefore;
    }
    return fromStart(link) ? placeStartingBy(i, limit) : placeFinishingBy(i, limit, durationBefore);
  }

  /** Float of a move from one place to another, as the task's duration is counted. */
  long floatMinutes(int i, long fromPlace, long toPlace) {
    return kind[i] == MOMENT
        ? calendar[i].worked(toPlace) - calendar[i].worked(fromPlace)
        : toPlace - fromPlace;
  }
}

package cornerpost.schedule;

import java.util.Arrays;

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

  /** Ways in which a link adds up, as bits: from the start, to the finish. */
  static final byte FROM_START = 1;

  static final byte TO_FINISH = 2;
  static final byte SLOW = 4;

  static final long NEVER = Long.MAX_VALUE / 4;

  final int size;
  final byte[] kind;
  final byte[] state;
  final WorkCalendar[] calendar;
  final long[] minutes;
  final long[] release; // moment before which it cannot start, or go on
  final long[] deadline; // NEVER if none
  final long[] realStart;
  final long[] realFinish;

  final int links;
  final int[] before;
  final int[] after;
  final boolean[] fromStart;
  final boolean[] toFinish;
  final long[] lag;
  final boolean[] plainLag; // elapsed, or nought: no calendar is needed to add it

  final int[] inFirst; // links into task i are in[inFirst[i] .. inFirst[i + 1]]
  final int[] in;
  final int[] outFirst;
  final int[] out;
  final int[] inTask; // the task before of in[k], side by side for the passes; likewise outTask
  final int[] outTask;
  final byte[] inSum; // how a link adds up without its calendar; SLOW if it cannot
  final byte[] outSum;
  final long[] inLag;
  final long[] outLag;
  final long[] firstPlace; // by its release alone
  final int[] order; // every task after those it waits for; ties by position in the network
  final long start;

  Graph(Network network) {
    size = network.activities().size();
    kind = new byte[size];
    state = new byte[size];
    calendar = new WorkCalendar[size];
    minutes = new long[size];
    release = new long[size];
    deadline = new long[size];
    realStart = new long[size];
    realFinish = new long[size];
    start = Minutes.of(network.start());
    long status = network.status().map(Minutes::of).orElse(Long.MIN_VALUE);
    for (int i = 0; i < size; i++) {
      Activity a = network.activities().get(i);
      calendar[i] = network.calendar(i);
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
    before = new int[links];
    after = new int[links];
    fromStart = new boolean[links];
    toFinish = new boolean[links];
    lag = new long[links];
    plainLag = new boolean[links];
    inFirst = new int[size + 1];
    outFirst = new int[size + 1];
    in = new int[links];
    out = new int[links];
    for (int l = 0; l < links; l++) {
      Link link = network.links().get(l);
      before[l] = network.before(l);
      after[l] = network.after(l);
      fromStart[l] = link.relation().fromStart();
      toFinish[l] = link.relation().toFinish();
      lag[l] = link.lagMinutes();
      plainLag[l] = lag[l] == 0 || link.lagUnit() == LagUnit.ELAPSED_MINUTES;
      inFirst[after[l] + 1]++;
      outFirst[before[l] + 1]++;
    }
    for (int i = 0; i < size; i++) {
      inFirst[i + 1] += inFirst[i];
      outFirst[i + 1] += outFirst[i];
    }
    int[] nextIn = Arrays.copyOf(inFirst, size);
    int[] nextOut = Arrays.copyOf(outFirst, size);
    inTask = new int[links];
    outTask = new int[links];
    inSum = new byte[links];
    outSum = new byte[links];
    inLag = new long[links];
    outLag = new long[links];
    for (int l = 0; l < links; l++) {
      int k = nextIn[after[l]]++;
      int o = nextOut[before[l]]++;
      in[k] = l;
      out[o] = l;
      inTask[k] = before[l];
      outTask[o] = after[l];
      inLag[k] = lag[l];
      outLag[o] = lag[l];
      inSum[k] = sum(l);
      outSum[o] = inSum[k];
    }
    firstPlace = new long[size];
    for (int i = 0; i < size; i++) {
      boolean same =
          i > 0
              && kind[i] == kind[i - 1]
              && calendar[i] == calendar[i - 1]
              && release[i] == release[i - 1];
      firstPlace[i] = same ? firstPlace[i - 1] : placeStartingFrom(i, release[i]);
    }
    order = inOrder();
  }

  /**
   * Between two tasks of work in one calendar, neither begun, a link is a difference of two places:
   * the moments it goes through come back to the same number.
   */
  private byte sum(int l) {
    int i = before[l];
    int j = after[l];
    boolean plain =
        kind[i] == WORK
            && kind[j] == WORK
            && calendar[i] == calendar[j]
            && state[i] == NOT_STARTED
            && state[j] == NOT_STARTED
            && (lag[l] == 0 || !plainLag[l]);
    return plain ? (byte) ((fromStart[l] ? FROM_START : 0) | (toFinish[l] ? TO_FINISH : 0)) : SLOW;
  }

  /** How much later than the task before the task after is at least, in places. */
  static long step(byte sum, long lag, long durationBefore, long durationAfter) {
    long from = (sum & FROM_START) != 0 ? lag : lag + durationBefore;
    return (sum & TO_FINISH) != 0 ? from - durationAfter : from;
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
      minutes[i] = Math.max(1, minutes[i] - done);
    }
  }

  /** Kahn's method; cost O(tasks + links). The network has no loop, so every task is reached. */
  private int[] inOrder() {
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
      for (int o = outFirst[i]; o < outFirst[i + 1]; o++) {
        if (--waiting[after[out[o]]] == 0) {
          found[count++] = after[out[o]];
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
    long from = fromStart[link] ? startBefore : finishBefore;
    if (toFinish[link] && kind[i] != ELAPSED) {
      from =
          calendar[i].endOf(
              calendar[i].worked(from)); // Monday 08:00 is Friday 16:00, seen from a finish
    }
    if (plainLag[link]) {
      return from + lag[link];
    }
    long number = calendar[j].worked(from) + lag[link];
    return fromStart[link] && !toFinish[link]
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
    return toFinish[link]
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
        toFinish[link]
            ? finishAt(j, placeAfter, durationAfter)
            : startAt(j, placeAfter); // the moment of the link may be this late
    if (plainLag[link]) {
      limit -= lag[link];
    } else if (fromStart[link] && !toFinish[link]) {
      limit = calendar[j].startOf(calendar[j].numberStartingAtOrBefore(limit) - lag[link]);
    } else {
      limit = calendar[j].startOf(calendar[j].worked(limit) - lag[link]);
    }
    if (kind[i] == ELAPSED) {
      return fromStart[link] ? limit : limit - durationBefore;
    }
    if (toFinish[link]) { // only the working minutes up to the limit count
      long number = calendar[i].worked(limit);
      if (kind[i] == MOMENT) {
        return calendar[i].startOf(number);
      }
      return fromStart[link] ? number : number - durationBefore;
    }
    return fromStart[link] ? placeStartingBy(i, limit) : placeFinishingBy(i, limit, durationBefore);
  }

  /** Float of a move from one place to another, as the task's duration is counted. */
  long floatMinutes(int i, long fromPlace, long toPlace) {
    return kind[i] == MOMENT
        ? calendar[i].worked(toPlace) - calendar[i].worked(fromPlace)
        : toPlace - fromPlace;
  }
}

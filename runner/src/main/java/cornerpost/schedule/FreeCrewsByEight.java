package cornerpost.schedule;

import java.util.Arrays;

/**
 * A word for each crew and eight steps, a byte a step, so that one subtraction tests a crew in
 * eight steps at once and 32 steps are looked through without a branch that depends on what is
 * found: a processor guesses such branches wrong about once a step. For up to four crews of up to
 * 127 that can be short, and tasks of up to 16 steps.
 *
 * <p>The top bit of a byte is a guard that stays set as long as the crew is not overdrawn. The
 * guards of a word are gathered to eight neighbouring bits by one multiplication.
 */
final class FreeCrewsByEight extends FreeCrews {
  private static final int CREWS = 4;
  private static final int MOST_OF_A_CREW = 127;
  private static final int LONGEST = 16; // steps
  private static final int LOOKED_AT = 32; // steps
  private static final long GUARDS = 0x8080_8080_8080_8080L;
  private static final long EACH = 0x0101_0101_0101_0101L;
  private static final long GATHER = 0x0002_0408_1020_4081L;

  /** The bytes of so many steps. */
  private static final long[] STEPS = new long[9];

  /**
   * For each duration four shifts of five bits: a row of free steps, shifted by each in turn and
   * laid over itself, leaves the first steps of the stretches that are long enough.
   */
  private static final int[] SHIFTS = new int[LONGEST + 1];

  static {
    for (int steps = 1; steps <= 8; steps++) {
      STEPS[steps] = -1L >>> 64 - 8 * steps;
    }
    for (int duration = 2; duration <= LONGEST; duration++) {
      int place = 0;
      for (int covered = 1; covered < duration; ) {
        int shift = Math.min(covered, duration - covered);
        SHIFTS[duration] |= shift << place;
        place += 5;
        covered += shift;
      }
    }
  }

  private final int[] duration;
  private final long[] need; // four words a task, in each byte what it needs of the crew
  private final long[] empty;
  private final long[] free; // four words for each eight steps, one a crew

  FreeCrewsByEight(ScaledProject p) {
    duration = p.duration;
    need = new long[CREWS * p.size];
    empty = new long[CREWS * ((p.horizon + 2 * LOOKED_AT) / 8 + 1)];
    Arrays.fill(empty, GUARDS);
    int row = 0;
    for (int c = 0; c < p.crewShift.length; c++) {
      if (p.crewShift[c] >= 0) {
        for (int w = row; w < empty.length; w += CREWS) {
          empty[w] += p.crewAvailable[c] * EACH;
        }
        for (int j = 0; j < p.size; j++) {
          need[CREWS * j + row] = p.need[c][j] * EACH;
        }
        row++;
      }
    }
    free = empty.clone();
  }

  static boolean suits(ScaledProject p) {
    int crews = 0;
    for (int c = 0; c < p.crewShift.length; c++) {
      if (p.crewShift[c] >= 0) {
        crews++;
        if (p.crewAvailable[c] > MOST_OF_A_CREW) {
          return false;
        }
      }
    }
    return crews <= CREWS && Arrays.stream(p.duration).allMatch(d -> d <= LONGEST);
  }

  @Override
  int take(int task, int from) {
    long[] need = this.need;
    long[] free = this.free;
    int first = CREWS * task;
    long a = need[first];
    long b = need[first + 1];
    long c = need[first + 2];
    long d = need[first + 3];
    int duration = this.duration[task];
    int shifts = SHIFTS[duration];
    int t = from;
    while (true) {
      int w = t >>> 3 << 2;
      int enough =
          steps(free[w] - a & free[w + 1] - b & free[w + 2] - c & free[w + 3] - d)
              | steps(free[w + 4] - a & free[w + 5] - b & free[w + 6] - c & free[w + 7] - d) << 8
              | steps(free[w + 8] - a & free[w + 9] - b & free[w + 10] - c & free[w + 11] - d) << 16
              | steps(free[w + 12] - a & free[w + 13] - b & free[w + 14] - c & free[w + 15] - d)
                  << 24;
      enough >>>= t & 7;
      enough &= enough >>> (shifts & 31);
      enough &= enough >>> (shifts >>> 5 & 31);
      enough &= enough >>> (shifts >>> 10 & 31);
      enough &= enough >>> (shifts >>> 15);
      if (enough != 0) {
        t += Integer.numberOfTrailingZeros(enough);
        take(t, duration, a, b, c, d);
        return t;
      }
      t += LOOKED_AT - (t & 7) - duration + 1;
    }
  }

  @Override
  void put(int task, int start) {
    int first = CREWS * task;
    take(start, duration[task], need[first], need[first + 1], need[first + 2], need[first + 3]);
  }

  /** A bit for each of eight steps, set where the guard is. */
  private static int steps(long word) {
    return (int) ((word & GUARDS) * GATHER >>> 56);
  }

  private void take(int t, int duration, long a, long b, long c, long d) {
    long[] free = this.free;
    int w = t >>> 3 << 2;
    int bits = t << 3; // a shift looks at the last six bits alone
    if (duration <= 8) {
      long steps = STEPS[duration];
      take(free, w, steps << bits, a, b, c, d);
      take(free, w + 4, steps >>> 1 >>> ~bits, a, b, c, d);
    } else {
      long more = STEPS[duration - 8];
      take(free, w, -1L << bits, a, b, c, d);
      take(free, w + 4, -1L >>> 1 >>> ~bits | more << bits, a, b, c, d);
      take(free, w + 8, more >>> 1 >>> ~bits, a, b, c, d);
    }
  }

  private static void take(long[] free, int w, long steps, long a, long b, long c, long d) {
    free[w] -= a & steps;
    free[w + 1] -= b & steps;
    free[w + 2] -= c & steps;
    free[w + 3] -= d & steps;
  }

  @Override
  void clear(int until) {
    System.arraycopy(empty, 0, free, 0, CREWS * (until / 8 + 1));
  }
}

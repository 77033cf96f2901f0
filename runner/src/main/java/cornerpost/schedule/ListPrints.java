package cornerpost.schedule;

/**
 * How unlike the lists of a population are, quickly: of each place of a list the last two bits of
 * the number of its task are kept, so that 32 places are compared at once. Of places with different
 * tasks about three in four are seen, which is enough to find out who is unlike whom.
 */
final class ListPrints {
  private static final int PLACES = 32; // in a word
  private static final long LOWER_BITS = 0x5555_5555_5555_5555L;

  private final int words;
  private final long[] print;

  ListPrints(int members, int tasks) {
    words = (tasks + PLACES - 1) / PLACES;
    print = new long[words * members];
  }

  /** Keeps what the list of a member looks like now. */
  void note(int member, int[] list) {
    for (int w = 0; w < words; w++) {
      int last = Math.min(list.length, PLACES * (w + 1));
      long bits = 0;
      for (int k = PLACES * w; k < last; k++) {
        bits = bits << 2 | list[k] & 3;
      }
      print[words * member + w] = bits;
    }
  }

  /** Places at which two members are seen to differ. */
  int different(int one, int other) {
    int count = 0;
    for (int w = 0; w < words; w++) {
      long bits = print[words * one + w] ^ print[words * other + w];
      count += Long.bitCount((bits | bits >>> 1) & LOWER_BITS);
    }
    return count;
  }
}

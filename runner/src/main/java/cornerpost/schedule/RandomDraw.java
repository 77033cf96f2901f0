package cornerpost.schedule;

/**
 * Random numbers that are the same for a seed on every machine.
 *
 * <p>Source: G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (2003) 14.
 */
final class RandomDraw {
  private long state;

  RandomDraw(long seed) {
    state = seed * 0x9E3779B97F4A7C15L + 0x1234567L;
    state = state == 0 ? 1 : state;
  }

  private long bits() {
    state ^= state << 13;
    state ^= state >>> 7;
    state ^= state << 17;
    return state;
  }

  /** From 0 to one below the bound. */
  int below(int bound) {
    return (int) ((bits() >>> 32) * bound >>> 32);
  }

  /** From 0 to less than 1. */
  double unit() {
    return (bits() >>> 11) * 0x1.0p-53;
  }
}

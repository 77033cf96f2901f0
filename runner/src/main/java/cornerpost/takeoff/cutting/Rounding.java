package cornerpost.takeoff.cutting;

/**
 * Whole bars out of fractional patterns: what is used at least once whole is cut so often; where
 * none is, the pattern nearest to a whole bar is cut once; then the patterns are found anew for
 * what is left.
 */
final class Rounding {
  private Rounding() {}

  static Layout of(Demand demand, Patterns first) {
    var layout = new Layout();
    var left = demand.counts().clone();
    var patterns = first;
    while (true) {
      int before = layout.size();
      for (int p = 0; p < patterns.size(); p++) {
        int times = (int) Math.floor(patterns.times(p) + 1e-7);
        for (int k = 0; k < times && cut(patterns.pattern(p), left, layout); k++) {}
      }
      if (layout.size() == before) cutLargest(patterns, left, layout);
      var rest = demand.left(left.clone());
      if (rest.isEmpty()) return layout;
      var plain = Layout.bestFit(rest);
      if (plain.size() <= LowerBound.of(rest)) {
        layout.addAll(plain);
        return layout;
      }
      patterns = Patterns.of(rest);
    }
  }

  private static void cutLargest(Patterns patterns, int[] left, Layout layout) {
    int best = 0;
    for (int p = 1; p < patterns.size(); p++) {
      if (patterns.times(p) > patterns.times(best) + 1e-9) best = p;
    }
    cut(patterns.pattern(best), left, layout);
  }

  /** One bar of the pattern, no more of a length than is still wanted; false if that is none. */
  private static boolean cut(int[] pattern, int[] left, Layout layout) {
    var bar = new int[left.length];
    boolean any = false;
    for (int i = 0; i < left.length; i++) {
      bar[i] = Math.min(pattern[i], left[i]);
      left[i] -= bar[i];
      any |= bar[i] > 0;
    }
    if (any) layout.bars.add(bar);
    return any;
  }
}

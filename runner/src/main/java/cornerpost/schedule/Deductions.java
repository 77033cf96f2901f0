package cornerpost.schedule;

/**
 * Puts what the rules conclude on the {@link Trail}, unless it is known already. Where it cannot be
 * that is a dead end: it is asked what speaks for it and what speaks against.
 */
final class Deductions {
  private final Trail trail;
  private final Reasons reasons;

  Deductions(Trail trail, Reasons reasons) {
    this.trail = trail;
    this.reasons = reasons;
  }

  /** A literal is true; false at a dead end. */
  boolean become(int l, byte why, int from) {
    if (trail.value[l] > 0) return true;
    if (trail.value[l] < 0) {
      int e = trail.failed(l, why, from);
      reasons.explain(e);
      reasons.askFor(l ^ 1, e);
      return false;
    }
    trail.put(l, why, from);
    return true;
  }

  /** An order follows from a nogood of which all else is false; false at a dead end. */
  boolean follow(int l, int nogood) {
    return become(l, Trail.NOGOOD, nogood);
  }

  /** A task has no place before this one; false at a dead end. */
  boolean raise(int i, long at, byte why, int from) {
    if (at <= trail.low[i]) return true;
    trail.raise(i, at, why, from);
    long high = trail.high[i];
    if (at <= high) return true;
    reasons.needLow(i, high + 1, trail.events);
    reasons.needHigh(i, high, trail.events);
    return false;
  }

  /** A task has no place after this one; false at a dead end. */
  boolean lower(int i, long at, byte why, int from) {
    if (at >= trail.high[i]) return true;
    trail.lower(i, at, why, from);
    long low = trail.low[i];
    if (at >= low) return true;
    reasons.needHigh(i, low - 1, trail.events);
    reasons.needLow(i, low, trail.events);
    return false;
  }
}

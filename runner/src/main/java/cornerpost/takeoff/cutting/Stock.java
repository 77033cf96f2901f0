package cornerpost.takeoff.cutting;

/**
 * What is sawn: bars of one length, and the width of the saw's cut.
 *
 * <p>Pieces p1 to pn fit a bar if p1 + ... + pn + (n - 1) kerfs are no longer than it: n - 1 cuts
 * part n pieces, and the last cut, that parts the rest, may run out at the end of the bar.
 *
 * @param length of a bar, at least 1, in any whole unit
 * @param kerf width of a cut in the same unit, at least 0
 */
public record Stock(int length, int kerf) {
  /** Longest bar: 2 km in tenths of a millimetre, far below where sums overflow. */
  private static final int LONGEST = 20_000_000;

  public Stock {
    if (length < 1 || length > LONGEST) {
      throw new IllegalArgumentException("A bar of length " + length + "; 1 to " + LONGEST);
    }
    if (kerf < 0 || kerf > length) {
      throw new IllegalArgumentException("A kerf of " + kerf + " in a bar of " + length);
    }
  }

  /** Room in a bar when each piece is counted with one kerf. */
  int room() {
    return length + kerf;
  }
}

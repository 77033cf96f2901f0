package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.trace.Figure;

/**
 * Pieces of one length that a measured length is made of, for the cutting plan. A piece longer than
 * a bar is a run: it is joined from bars.
 *
 * @param length of one; measured at the outer edge of its mitres where it has them
 * @param count how many; nothing is cut where it is zero
 * @param what it is, in a few words
 */
public record Piece(Figure length, Figure count, String what) {
  public Piece {
    length.in(Unit.M); // fails at once if it is not a length
    count.in(Unit.EACH);
  }

  public static Piece of(Figure length, long count, String what) {
    return new Piece(length, Figure.count(count), what);
  }
}

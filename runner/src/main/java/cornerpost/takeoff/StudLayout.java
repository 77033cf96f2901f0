package cornerpost.takeoff;

import cornerpost.trace.Figure;

/**
 * Counts of studs at a spacing, as live figures. The grid starts at the door end of the frame, with
 * a stud at each multiple of the spacing and one at the far end.
 *
 * <p>Along a run L at spacing s stand ceil(L / s) + 1 studs. An opening from a to b displaces the
 * floor(b / s) - floor(a / s) studs that the grid has in (a, b]: no more, wherever it stands.
 */
final class StudLayout {
  private StudLayout() {}

  /** Bays along a run; the last may be narrower. */
  static Figure bays(Figure run, Figure spacing) {
    return run.over(spacing).roundedUp();
  }

  static Figure studs(Figure run, Figure spacing) {
    return bays(run, spacing).plus(Figure.count(1));
  }

  /** Studs of the grid that an opening takes away; they come back as cripples above and below. */
  static Figure displaced(Figure from, Figure width, Figure spacing) {
    var before = from.over(spacing).roundedDown();
    return from.plus(width).over(spacing).roundedDown().minus(before);
  }
}

package cornerpost.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies in a plan already, so that the next thing is put where nothing is; in mm of its box.
 */
final class Crowd {
  /**
   * Width of a letter and height of a line, of the size of the text; bold sans serif, on average.
   */
  static final double LETTER = 0.66;

  static final double ABOVE_LINE = 0.8;

  /** Between two texts side by side, of the size of the text. */
  private static final double APART = 0.6;

  private final List<Placed.Patch> taken = new ArrayList<>();
  private final List<Placed.Patch> floor = new ArrayList<>();

  /** Something drawn. */
  void take(Placed.Patch patch) {
    taken.add(patch);
  }

  /** Floor on which somebody stands or walks: a name may lie there, a thing may not. */
  void walk(Placed.Patch patch) {
    floor.add(patch);
  }

  /** Whether a thing may stand there. */
  boolean free(Placed.Patch patch) {
    return clear(patch) && overlap(patch, floor) == 0;
  }

  /** Whether a name may lie there. */
  boolean clear(Placed.Patch patch) {
    return overlap(patch, taken) == 0;
  }

  /** The area that is covered already, counted for each thing that covers it. */
  private static double overlap(Placed.Patch p, List<Placed.Patch> things) {
    double sum = 0;
    for (var t : things) {
      double du = Math.min(p.u() + p.du(), t.u() + t.du()) - Math.max(p.u(), t.u());
      double dv = Math.min(p.v() + p.dv(), t.v() + t.dv()) - Math.max(p.v(), t.v());
      if (du > 0 && dv > 0) sum += du * dv;
    }
    return sum;
  }

  /** How wide a line of text is, with what keeps it apart from the next. */
  static double wide(String text, double size) {
    return (LETTER * text.length() + APART) * size;
  }

  /** What a line of text covers whose middle stands at u and whose foot at v. */
  static Placed.Patch text(String text, double u, double v, double size) {
    double wide = wide(text, size);
    return new Placed.Patch(u - wide / 2, v - ABOVE_LINE * size, wide, size);
  }

  /** The first of the places that lies on nothing. */
  Optional<Placed.Patch> firstClear(List<Placed.Patch> places) {
    return places.stream().filter(this::clear).findFirst();
  }

  /**
   * For a name: the first that lies on nothing; where there is none, the one that lies on the
   * least.
   */
  Placed.Patch best(List<Placed.Patch> places) {
    var best = places.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (var p : places) {
      double covered = overlap(p, taken);
      if (covered < least) {
        least = covered;
        best = p;
      }
      if (covered == 0) break;
    }
    take(best);
    return best;
  }
}

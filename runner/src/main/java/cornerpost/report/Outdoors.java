package cornerpost.report;

import java.util.ArrayList;
import java.util.List;

/** What lies outside the boxes of a floor plan, in mm of the plot. */
final class Outdoors {
  private final List<Extent> taken = new ArrayList<>();
  private final List<Extent> decks = new ArrayList<>();
  private final Extent reach = new Extent();

  Outdoors(List<Placed> boxes) {
    for (var b : boxes) take(b, new Placed.Patch(0, 0, b.length(), b.width()));
  }

  /** Whether nothing lies there, but perhaps a deck. */
  boolean free(Placed box, Placed.Patch patch) {
    var there = extent(box, patch);
    return taken.stream().noneMatch(there::meets);
  }

  /** Whether nothing at all lies there. */
  boolean open(Placed box, Placed.Patch patch) {
    var there = extent(box, patch);
    return free(box, patch) && decks.stream().noneMatch(there::meets);
  }

  void deck(Placed box, Placed.Patch patch) {
    var there = extent(box, patch);
    decks.add(there);
    reach(there);
  }

  void take(Placed box, Placed.Patch patch) {
    take(extent(box, patch));
  }

  private void take(Extent there) {
    taken.add(there);
    reach(there);
  }

  private void reach(Extent there) {
    reach.add(there.left, there.top);
    reach.add(there.right, there.bottom);
  }

  /** The rectangle round everything that lies there. */
  Extent reach() {
    return reach;
  }

  private static Extent extent(Placed box, Placed.Patch p) {
    var there = new Extent();
    there.add(box, p);
    return there;
  }
}

package cornerpost.takeoff.cutting;

import java.util.Optional;

/**
 * Looks for a plan of one bar less, by trying every bar that takes the longest piece left: for few
 * pieces, within a limit of steps. Complete within it: a bar's filling that leaves room for a piece
 * still wanted is skipped, since putting the piece in never does harm.
 */
final class FewPieces {
  private static final int MOST_STEPS = 150_000;

  private final Demand demand;
  private final int most;
  private final int[] left;
  private final Layout layout = new Layout();
  private int steps;

  private FewPieces(Demand demand, int most) {
    this.demand = demand;
    this.most = most;
    this.left = demand.counts().clone();
  }

  /** A plan of at most so many bars, if one was found. */
  static Optional<Layout> within(Demand demand, int bars) {
    var search = new FewPieces(demand, bars);
    return search.fill() ? Optional.of(search.layout) : Optional.empty();
  }

  private boolean fill() {
    var rest = demand.left(left);
    if (rest.isEmpty()) return true;
    if (++steps > MOST_STEPS) return false;
    if (layout.size() + LowerBound.of(rest) > most) return false;
    int longest = 0;
    while (left[longest] == 0) longest++;
    var bar = new int[left.length];
    left[longest]--;
    bar[longest]++;
    boolean done = choose(longest, bar, demand.room() - demand.sizes()[longest]);
    left[longest]++;
    return done;
  }

  private boolean choose(int from, int[] bar, int room) {
    if (++steps > MOST_STEPS) return false;
    if (from == left.length) {
      if (hasRoomForMore(room)) return false;
      layout.bars.add(bar.clone());
      if (fill()) return true;
      layout.bars.remove(layout.bars.size() - 1);
      return false;
    }
    int size = demand.sizes()[from];
    for (int k = Math.min(left[from], room / size); k >= 0; k--) {
      left[from] -= k;
      bar[from] += k;
      boolean done = choose(from + 1, bar, room - k * size);
      left[from] += k;
      bar[from] -= k;
      if (done) return true;
    }
    return false;
  }

  private boolean hasRoomForMore(int room) {
    for (int i = 0; i < left.length; i++) {
      if (left[i] > 0 && demand.sizes()[i] <= room) return true;
    }
    return false;
  }
}

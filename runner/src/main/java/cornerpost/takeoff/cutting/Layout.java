package cornerpost.takeoff.cutting;

import java.util.ArrayList;
import java.util.List;

/** Bars under way: each holds how many of each length. */
final class Layout {
  final List<int[]> bars = new ArrayList<>();

  int size() {
    return bars.size();
  }

  void addAll(Layout other) {
    bars.addAll(other.bars);
  }

  /**
   * Best fit, longest first: each piece goes to the bar where the least is left over; of equal ones
   * to the first. A new bar where it fits none. O(pieces x bars).
   */
  static Layout bestFit(Demand demand) {
    var layout = new Layout();
    var left = new ArrayList<Integer>();
    for (int type = 0; type < demand.types(); type++) {
      int size = demand.sizes()[type];
      for (int k = 0; k < demand.counts()[type]; k++) {
        int best = -1;
        for (int b = 0; b < left.size(); b++) {
          if (left.get(b) >= size && (best < 0 || left.get(b) < left.get(best))) best = b;
        }
        if (best < 0) {
          best = left.size();
          left.add(demand.room());
          layout.bars.add(new int[demand.types()]);
        }
        left.set(best, left.get(best) - size);
        layout.bars.get(best)[type]++;
      }
    }
    return layout;
  }
}

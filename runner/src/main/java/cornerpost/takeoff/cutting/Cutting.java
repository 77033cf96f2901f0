package cornerpost.takeoff.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Bars and what is sawn from each.
 *
 * @param bars in order of use, fullest first; each lists its pieces as places in the list of wanted
 *     lengths, longest first
 * @param lowerBound bars below which no plan can go
 */
public record Cutting(Stock stock, List<Bar> bars, int lowerBound) {
  /**
   * One bar.
   *
   * @param pieces places in the list of wanted lengths
   * @param sawn what the kerfs take
   * @param left over, in the stock's unit: bar less pieces less kerfs
   */
  public record Bar(List<Integer> pieces, int sawn, int left) {
    public Bar {
      pieces = List.copyOf(pieces);
    }
  }

  public Cutting {
    bars = List.copyOf(bars);
  }

  /** Bar ends left over, all bars. */
  public long left() {
    return bars.stream().mapToLong(Bar::left).sum();
  }

  /** What the saw turns to dust, all bars. */
  public long sawn() {
    return bars.stream().mapToLong(Bar::sawn).sum();
  }

  /**
   * Plans the cuts. First best fit, longest first; if that meets the lower bound it is the best
   * there is. If not, by patterns; and where few pieces are left to argue about, by search. The
   * same lengths in the same order give the same plan.
   *
   * @param lengths of the pieces, each at least 1 and no longer than the bar; any order
   * @throws IllegalArgumentException if a piece is longer than the bar, naming it
   */
  public static Cutting of(Stock stock, List<Integer> lengths) {
    for (var l : lengths) {
      if (l < 1 || l > stock.length()) {
        throw new IllegalArgumentException(
            "A piece of " + l + " cannot be cut from a bar of " + stock.length());
      }
    }
    var sizes =
        lengths.stream()
            .distinct()
            .sorted(Comparator.reverseOrder())
            .mapToInt(l -> l + stock.kerf())
            .toArray();
    var counts = new int[sizes.length];
    for (var l : lengths) counts[place(sizes, l + stock.kerf())]++;
    var demand = new Demand(sizes, counts, stock.room());
    return solve(stock, demand, lengths);
  }

  private static Cutting solve(Stock stock, Demand demand, List<Integer> lengths) {
    int bound = LowerBound.of(demand);
    var best = Layout.bestFit(demand);
    if (best.size() > bound) {
      var patterns = Patterns.of(demand);
      bound = Math.max(bound, patterns.bound());
      if (best.size() > bound) {
        var rounded = Rounding.of(demand, patterns);
        if (rounded.size() < best.size()) best = rounded;
      }
      while (best.size() > bound) {
        var fewer = FewPieces.within(demand, best.size() - 1);
        if (fewer.isEmpty()) break;
        best = fewer.get();
      }
    }
    return new Cutting(stock, bars(stock, demand, best, lengths), bound);
  }

  private static List<Bar> bars(Stock stock, Demand demand, Layout layout, List<Integer> lengths) {
    var places = new ArrayList<ArrayList<Integer>>();
    for (int t = 0; t < demand.types(); t++) places.add(new ArrayList<>());
    for (int i = lengths.size() - 1; i >= 0; i--) {
      places.get(place(demand.sizes(), lengths.get(i) + stock.kerf())).add(i);
    }
    var order = new ArrayList<>(layout.bars);
    order.sort(Cutting::fullestFirst);
    var bars = new ArrayList<Bar>();
    for (var bar : order) {
      var pieces = new ArrayList<Integer>();
      for (int t = 0; t < bar.length; t++) {
        for (int k = 0; k < bar[t]; k++) {
          pieces.add(places.get(t).remove(places.get(t).size() - 1));
        }
      }
      int used = pieces.stream().mapToInt(lengths::get).sum();
      int sawn = Math.min(pieces.size() * stock.kerf(), stock.length() - used);
      bars.add(new Bar(pieces, sawn, stock.length() - used - sawn));
    }
    return bars;
  }

  /** The longest pieces first, so that like bars stand together. */
  private static int fullestFirst(int[] a, int[] b) {
    return Arrays.compare(b, a);
  }

  private static int place(int[] sizes, int size) {
    for (int i = 0; i < sizes.length; i++) if (sizes[i] == size) return i;
    throw new IllegalStateException("No length " + size);
  }
}

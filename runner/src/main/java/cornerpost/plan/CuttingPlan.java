package cornerpost.plan;

import java.math.BigDecimal;
import java.util.List;

/**
 * How the bars of one item are sawn. Lengths in metres, to a tenth of a millimetre.
 *
 * @param item code in the price book
 * @param stock length of a bar
 * @param kerf width of a cut
 * @param cuts the lengths wanted, longest first
 * @param patterns bars cut alike, longest pieces first
 * @param bars needed, all patterns
 * @param leastBars no plan can do with fewer
 * @param cutLength of all pieces together
 * @param sawn what the kerfs take, all bars
 * @param left bar ends left over, all bars
 * @param unplanned length of the item that no piece accounts for: it is bought by length alone
 * @param bought bars that the bill buys, or what it buys by length in such bars
 */
public record CuttingPlan(
    String item,
    String description,
    BigDecimal stock,
    BigDecimal kerf,
    List<Cut> cuts,
    List<Pattern> patterns,
    int bars,
    int leastBars,
    BigDecimal cutLength,
    BigDecimal sawn,
    BigDecimal left,
    BigDecimal unplanned,
    BigDecimal bought) {
  public CuttingPlan {
    cuts = List.copyOf(cuts);
    patterns = List.copyOf(patterns);
  }

  /**
   * A length wanted.
   *
   * @param mark letter of the piece: A is the longest
   * @param what it is for
   */
  public record Cut(String mark, BigDecimal length, int count, String what) {}

  /** So many pieces of a mark in one bar. */
  public record Part(String mark, BigDecimal length, int count) {}

  /**
   * Bars cut alike.
   *
   * @param sawn what the kerfs take of one bar
   * @param left over of one bar: bar less pieces less kerfs
   */
  public record Pattern(int bars, List<Part> parts, BigDecimal sawn, BigDecimal left) {
    public Pattern {
      parts = List.copyOf(parts);
    }

    /** Length of the pieces of one bar. */
    public BigDecimal cutLength() {
      return parts.stream()
          .map(p -> p.length().multiply(BigDecimal.valueOf(p.count())))
          .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
  }

  /** Share of the bars that ends up as dust and ends, 0 to 1. */
  public double loss() {
    return sawn.add(left).doubleValue() / (stock.doubleValue() * bars);
  }

  /** Whether the bill buys fewer bars than the plan, and what is bought by length, take. */
  public boolean billIsShort() {
    var needed = stock.multiply(BigDecimal.valueOf(bars)).add(unplanned);
    return bought.multiply(stock).add(new BigDecimal("1e-6")).compareTo(needed) < 0;
  }
}

package cornerpost.price;

import static java.util.Objects.requireNonNull;

import cornerpost.measure.Unit;
import cornerpost.scope.Labelled;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Something a price book sells, hires or charges.
 *
 * @param group the kind of supplier it is bought from
 * @param soldBy what one of it is: sheet, bag, m3, month
 * @param content how much of the measured quantity one of it gives, in {@code contentUnit}: a sheet
 *     of 2.88 m2
 * @param wholeOnly whether only whole ones are sold
 * @param low price of one, before tax; {@code likely} and {@code high} likewise; low &lt;= likely
 *     &lt;= high
 * @param taxed whether sales tax or value-added tax is charged on it
 * @param leadDays calendar days from order to site
 */
public record Item(
    String code,
    SupplierGroup group,
    String description,
    Kind kind,
    Unit soldBy,
    BigDecimal content,
    Unit contentUnit,
    boolean wholeOnly,
    BigDecimal low,
    BigDecimal likely,
    BigDecimal high,
    boolean taxed,
    int leadDays,
    String source) {

  /** What is paid for. */
  public enum Kind implements Labelled {
    MATERIAL("material"),
    PLANT("plant"),
    /** Subcontract, delivery or other service at a price for the piece. */
    SERVICE("service"),
    /** Design, permits, insurance and the like: indirect cost. */
    FEE("fee"),
    /** Hire and running costs by the month: indirect cost. */
    TIME("time");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    @Override
    public String label() {
      return label;
    }

    /** Whether it is an indirect cost: not part of the finished house. */
    public boolean indirect() {
      return this == FEE || this == TIME;
    }
  }

  public Item {
    requireNonNull(code, "code");
    if (low.compareTo(likely) > 0 || likely.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "prices must rise from low to high, found " + low + ", " + likely + ", " + high);
    }
    if (low.signum() < 0) throw new IllegalArgumentException("a price below nothing: " + low);
    if (content.signum() <= 0) throw new IllegalArgumentException("content must be positive");
    if (source.isBlank()) throw new IllegalArgumentException("a price without a source");
  }

  /**
   * What a measured quantity asks for, in units sold by and before it is rounded up to whole ones.
   *
   * @param waste share on top, where there is any
   */
  public Figure needed(Figure net, Optional<Figure> waste) {
    var gross = waste.map(w -> net.times(Figure.count(1).plus(w))).orElse(net);
    return gross
        .over(Figure.constant(content.toPlainString(), contentUnit))
        .times(Figure.constant("1", soldBy));
  }
}

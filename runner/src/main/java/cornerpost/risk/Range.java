package cornerpost.risk;

/**
 * Three points of something uncertain, as bounds and mode of a triangular distribution.
 *
 * <p>Quantile function: with F(m) = (m - a) / (b - a), for u up to F(m) x = a + sqrt(u (b - a)(m -
 * a)), else x = b - sqrt((1 - u)(b - a)(b - m)). Equal points are a constant.
 */
public record Range(double low, double likely, double high) {
  public Range {
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(
          "Three points must rise, found " + low + ", " + likely + ", " + high);
    }
  }

  static Range always(double value) {
    return new Range(value, value, value);
  }

  boolean certain() {
    return low == high;
  }

  /**
   * The value that a share of outcomes does not pass.
   *
   * @param u 0 to 1
   */
  double quantile(double u) {
    double width = high - low;
    if (width == 0) return low;
    double below = likely - low;
    return u * width <= below
        ? low + Math.sqrt(u * width * below)
        : high - Math.sqrt((1 - u) * width * (high - likely));
  }
}

package cornerpost.risk;

/**
 * The standard normal distribution.
 *
 * <p>Method: W. J. Cody's and J. F. Hart's rational approximation as given by G. West, "Better
 * approximations to cumulative normal functions", Wilmott Magazine, 2005; about 15 digits.
 */
final class Normal {
  private Normal() {}

  /** The probability of at most {@code x}. */
  static double probability(double x) {
    double a = Math.abs(x);
    double tail;
    if (a > 37) {
      tail = 0;
    } else {
      double density = Math.exp(-a * a / 2);
      if (a < 7.07106781186547) {
        double over = 3.52624965998911e-02 * a + 0.700383064443688;
        over = over * a + 6.37396220353165;
        over = over * a + 33.912866078383;
        over = over * a + 112.079291497871;
        over = over * a + 221.213596169931;
        over = over * a + 220.206867912376;
        double under = 8.83883476483184e-02 * a + 1.75566716318264;
        under = under * a + 16.064177579207;
        under = under * a + 86.7807322029461;
        under = under * a + 296.564248779674;
        under = under * a + 637.333633378831;
        under = under * a + 793.826512519948;
        under = under * a + 440.413735824752;
        tail = density * over / under;
      } else {
        double under = a + 0.65;
        under = a + 4 / under;
        under = a + 3 / under;
        under = a + 2 / under;
        under = a + 1 / under;
        tail = density / under / 2.506628274631;
      }
    }
    return x > 0 ? 1 - tail : tail;
  }
}

package cornerpost.trace;

import cornerpost.measure.Dimension;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes a figure as a spreadsheet formula. Conversion factors are gathered and cancelled before
 * they are written, so feet times feet shown in square feet is just {@code D5*E5}. Plain numbers of
 * a rule, two sides or three bedrooms, stand by themselves, so that a reader finds them again.
 *
 * <p>A factor that stays is written as {@code *n}, {@code /d} or both. Rounding goes through guard
 * digits exactly as in {@link Figure}, so that both sides agree on halves and wholes.
 */
final class FormulaWriter {
  private static final int ATOM = 3;
  private static final int PRODUCT = 2;
  private static final int SUM = 1;

  private final Places places;

  private FormulaWriter(Places places) {
    this.places = places;
  }

  static String write(Figure figure, Ratio scale, Places places) {
    return new FormulaWriter(places).render(figure, scale).text;
  }

  private record Text(String text, int strength) {
    String asFactor() {
      return strength >= PRODUCT ? text : "(" + text + ")";
    }

    String asDivisor() {
      return strength >= ATOM ? text : "(" + text + ")";
    }
  }

  /** The formula of {@code figure} in base units times {@code scale}. */
  private Text render(Figure figure, Ratio scale) {
    if (figure instanceof Node.Source s) {
      return scaled(new Text(cellOf(s.leaf), ATOM), s.leaf.unit().toBase().times(scale));
    }
    if (figure instanceof Node.Named n) {
      var shown = places.named(n.id);
      return scaled(new Text(shown.cell(), ATOM), shown.unit().toBase().times(scale));
    }
    if (figure instanceof Node.Constant c) return literal(c, scale);
    if (figure instanceof Node.Sum s) return sum(s, scale);
    if (figure instanceof Node.Total t) return total(t, scale);
    if (figure instanceof Node.Product p) return product(p, scale);
    if (figure instanceof Node.Extreme e) {
      var name = e.largest ? "MAX(" : "MIN(";
      return new Text(name + render(e.a, scale).text + "," + render(e.b, scale).text + ")", ATOM);
    }
    if (figure instanceof Node.Whole w) {
      var inner = render(w.inner, w.unit.toBase().inverse()).text;
      var name = w.up ? "ROUNDUP(" : "ROUNDDOWN(";
      return scaled(
          new Text(name + "ROUND(" + inner + "," + Figure.GUARD_DECIMALS + "),0)", ATOM),
          w.unit.toBase().times(scale));
    }
    if (figure instanceof Node.Rounded r) {
      var inner = render(r.inner, Ratio.ONE).text;
      return scaled(
          new Text(
              "ROUND(ROUND(" + inner + "," + Money.GUARD_DECIMALS + ")," + r.decimals + ")", ATOM),
          scale);
    }
    if (figure instanceof Node.Root r) {
      return scaled(new Text("SQRT(" + render(r.inner, Ratio.ONE).text + ")", ATOM), scale);
    }
    if (figure instanceof Node.Power p) {
      return scaled(
          new Text(
              "POWER("
                  + render(p.base, Ratio.ONE).text
                  + ","
                  + render(p.exponent, Ratio.ONE).text
                  + ")",
              ATOM),
          scale);
    }
    if (figure instanceof Node.Select s) {
      var difference = render(s.tested.minus(s.limit), Ratio.ONE).text;
      return new Text(
          "IF(ROUND("
              + difference
              + ","
              + Figure.GUARD_DECIMALS
              + ")>=0,"
              + render(s.yes, scale).text
              + ","
              + render(s.no, scale).text
              + ")",
          ATOM);
    }
    throw new IllegalStateException("No formula for " + figure.getClass());
  }

  private String cellOf(Leaf leaf) {
    var cell = places.cell(leaf);
    return leaf.kind() == Leaf.Kind.ASSUMED
        ? "IF(ISNUMBER(" + cell + ")," + cell + "," + number(leaf.amount()) + ")"
        : cell;
  }

  private Text literal(Node.Constant c, Ratio scale) {
    var ratio = c.unit.toBase().times(scale);
    if (c.amount.signum() == 0) return new Text("0", ATOM);
    var over = c.amount.multiply(ratio.numerator());
    var text = number(over);
    int strength = over.signum() < 0 ? SUM : ATOM;
    if (ratio.denominator().compareTo(BigDecimal.ONE) == 0) return new Text(text, strength);
    return exactQuotient(over, ratio.denominator())
        .map(exact -> new Text(exact, strength))
        .orElseGet(
            () -> new Text(text + "/" + number(ratio.denominator()), Math.min(PRODUCT, strength)));
  }

  private Text sum(Node.Sum s, Ratio scale) {
    var text = new StringBuilder();
    for (var t : s.terms) {
      var part = render(t.figure(), scale);
      if (t.sign() < 0) text.append('-').append(part.asFactor());
      else text.append(text.length() > 0 ? "+" : "").append(part.text);
    }
    return new Text(text.toString(), SUM);
  }

  private Text total(Node.Total t, Ratio scale) {
    var short_ = places.total(t.key);
    if (short_.isPresent()) return scaled(new Text(short_.get(), ATOM), scale);
    if (t.rows.isEmpty()) return new Text("0", ATOM);
    var list = t.rows.stream().map(r -> render(r, Ratio.ONE).text).collect(Collectors.joining(","));
    return scaled(new Text("SUM(" + list + ")", ATOM), scale);
  }

  private Text product(Node.Product p, Ratio scale) {
    var factor = scale;
    var counts = Ratio.ONE;
    var over = new ArrayList<Text>();
    var under = new ArrayList<Text>();
    int sign = 1;
    for (var f : p.factors) {
      if (f.figure() instanceof Node.Constant c && c.amount.signum() != 0) {
        if (c.amount.signum() < 0) sign = -sign;
        var ratio = c.unit.toBase().times(Ratio.of(c.amount.abs()));
        if (c.unit.symbol().isEmpty() && c.dimension().equals(Dimension.NONE)) {
          counts = f.inverse() ? counts.over(ratio) : counts.times(ratio);
          continue;
        }
        factor = f.inverse() ? factor.over(ratio) : factor.times(ratio);
        continue;
      }
      var natural = naturalScale(f.figure());
      factor = f.inverse() ? factor.over(natural) : factor.times(natural);
      (f.inverse() ? under : over).add(render(f.figure(), natural.inverse()));
    }
    if (over.isEmpty()) {
      factor = factor.times(counts);
      counts = Ratio.ONE;
    }
    boolean alone = over.size() == 1 && under.isEmpty();
    var text =
        new StringBuilder(
            alone
                ? over.get(0).text
                : over.stream().map(Text::asFactor).collect(Collectors.joining("*")));
    if (text.length() == 0) {
      text.append(number(factor.numerator()));
      factor = Ratio.ONE.over(Ratio.of(factor.denominator()));
    }
    for (var u : under) text.append('/').append(u.asDivisor());
    int strength = alone ? over.get(0).strength : PRODUCT;
    var counted = scaled(new Text(text.toString(), strength), counts);
    var whole = scaled(counted, factor);
    return sign > 0 ? whole : new Text("-" + whole.asFactor(), SUM);
  }

  /** The unit in which a factor reads best: that of its first leaf. */
  private Ratio naturalScale(Figure figure) {
    if (figure instanceof Node.Source s) return s.leaf.unit().toBase();
    if (figure instanceof Node.Named n) return places.named(n.id).unit().toBase();
    if (figure instanceof Node.Constant c) return c.unit.toBase();
    if (figure instanceof Node.Whole w) return w.unit.toBase();
    if (figure instanceof Node.Sum s) return naturalScale(s.terms.get(0).figure());
    if (figure instanceof Node.Extreme e) return naturalScale(e.a);
    if (figure instanceof Node.Select s) return naturalScale(s.yes);
    return Ratio.ONE;
  }

  /**
   * Times a factor, written the shortest exact way: not at all, {@code *12}, {@code /12} or both.
   */
  private static Text scaled(Text text, Ratio factor) {
    if (factor.isOne()) return text;
    var times = exactQuotient(factor.numerator(), factor.denominator());
    if (times.isPresent()) return new Text(text.asFactor() + "*" + times.get(), PRODUCT);
    var over = exactQuotient(factor.denominator(), factor.numerator());
    if (over.isPresent()) return new Text(text.asFactor() + "/" + over.get(), PRODUCT);
    return new Text(
        text.asFactor() + "*" + number(factor.numerator()) + "/" + number(factor.denominator()),
        PRODUCT);
  }

  /** A quotient that ends within the 15 digits of a spreadsheet number. */
  private static Optional<String> exactQuotient(BigDecimal over, BigDecimal under) {
    try {
      var quotient = over.divide(under).stripTrailingZeros();
      return quotient.precision() <= 15 ? Optional.of(number(quotient)) : Optional.empty();
    } catch (ArithmeticException endless) {
      return Optional.empty();
    }
  }

  private static String number(BigDecimal amount) {
    return amount.stripTrailingZeros().toPlainString();
  }
}

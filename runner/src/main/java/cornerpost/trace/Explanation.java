package cornerpost.trace;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Writes how a figure came about, for people. What stands behind a number is named once; where the
 * same one comes again, its number and its place are enough.
 */
final class Explanation {
  private final Set<String> named = new HashSet<>();

  private final UnaryOperator<Unit> shown;

  private Explanation(UnaryOperator<Unit> shown) {
    this.shown = shown;
  }

  /** With every number in the unit it was given in. */
  static String of(Figure figure) {
    return new Explanation(u -> u).say(figure);
  }

  /** With published facts and plain numbers in the reader's units. */
  static String of(Figure figure, UnitSystem units) {
    return new Explanation(units::shown).say(figure);
  }

  private String say(Figure figure) {
    if (figure instanceof Node.Source s) {
      var l = s.leaf;
      return placed(amount(l.amount(), l.unit()), l.name(), l.key());
    }
    if (figure instanceof Node.Named n) {
      return placed(Shown.number(n.in(n.shownIn)) + unit(n.shownIn), n.name, n.id);
    }
    if (figure instanceof Node.Constant c) {
      return amount(c.amount.stripTrailingZeros(), c.unit);
    }
    if (figure instanceof Node.Sum s) return sum(s);
    if (figure instanceof Node.Total t) {
      return Shown.number(t.value()) + " " + t.name + ", the sum of " + t.rows.size() + " lines";
    }
    if (figure instanceof Node.Product p) return product(p);
    if (figure instanceof Node.Extreme e) return extreme(e);
    if (figure instanceof Node.Whole w) {
      return "("
          + say(w.inner)
          + (w.up ? ") rounded up to whole " : ") rounded down to whole ")
          + (w.unit.symbol().isEmpty() ? "numbers" : w.unit.symbol());
    }
    if (figure instanceof Node.Rounded r) return say(r.inner);
    if (figure instanceof Node.Root r) return "the square root of (" + say(r.inner) + ")";
    if (figure instanceof Node.Power p) {
      return "(" + say(p.base) + ") to the power of (" + say(p.exponent) + ")";
    }
    var s = (Node.Select) figure;
    return "if "
        + say(s.tested)
        + " is at least "
        + say(s.limit)
        + ": "
        + say(s.yes)
        + ", else "
        + say(s.no);
  }

  private String amount(BigDecimal amount, Unit unit) {
    var to = shown.apply(unit);
    if (to.symbol().equals(unit.symbol())) return amount.toPlainString() + unit(unit);
    var base = unit.toBase().applyTo(amount);
    return Shown.converted(to.toBase().inverse().applyTo(base)) + unit(to);
  }

  private String placed(String amount, String name, String place) {
    return amount + (named.add(place) ? " " + name : "") + " [" + place + "]";
  }

  private static String unit(Unit unit) {
    return unit.symbol().isEmpty() ? "" : " " + unit;
  }

  private String sum(Node.Sum sum) {
    var text = new StringBuilder();
    for (var t : sum.terms) {
      if (text.length() > 0) text.append(t.sign() < 0 ? " - " : " + ");
      else if (t.sign() < 0) text.append("-");
      text.append(t.sign() < 0 ? inProduct(t.figure()) : say(t.figure()));
    }
    return text.toString();
  }

  private String product(Node.Product product) {
    var text = new StringBuilder();
    for (var f : product.factors) {
      if (isOne(f.figure()) && product.factors.size() > 1) continue;
      if (text.length() == 0 && f.inverse()) text.append("1");
      if (text.length() > 0) text.append(f.inverse() ? " / " : " x ");
      text.append(inProduct(f.figure()));
    }
    return text.length() == 0 ? "1" : text.toString();
  }

  /** A one without a unit says nothing in a product. */
  private static boolean isOne(Figure figure) {
    return figure instanceof Node.Constant c
        && c.unit.symbol().isEmpty()
        && c.amount.compareTo(BigDecimal.ONE) == 0;
  }

  private String extreme(Node.Extreme e) {
    if (e.a instanceof Node.Constant a && e.b instanceof Node.Constant b) {
      return say(e.value().compareTo(a.value()) == 0 ? a : b);
    }
    var verb = e.largest ? "the larger of (" : "the smaller of (";
    return verb + say(e.a) + ") and (" + say(e.b) + ")";
  }

  private String inProduct(Figure figure) {
    var text = say(figure);
    return isSum(figure) ? "(" + text + ")" : text;
  }

  private static boolean isSum(Figure figure) {
    return figure instanceof Node.Rounded r ? isSum(r.inner) : figure instanceof Node.Sum;
  }
}

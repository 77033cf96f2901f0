package cornerpost.trace;

import static java.util.Objects.requireNonNull;

import cornerpost.measure.Dimension;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitMismatchException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/** The kinds of expression a {@link Figure} is made of; each works out its own value. */
final class Node {
  private Node() {}

  record Term(Figure figure, int sign) {}

  record Factor(Figure figure, boolean inverse) {}

  static final class Source extends Figure {
    final Leaf leaf;

    Source(Leaf leaf) {
      super(leaf.unit().toBase().applyTo(leaf.amount()), leaf.unit().dimension());
      this.leaf = leaf;
    }

    @Override
    List<Figure> parts() {
      return List.of();
    }
  }

  static final class Constant extends Figure {
    final BigDecimal amount;
    final Unit unit;

    Constant(BigDecimal amount, Unit unit) {
      super(unit.toBase().applyTo(amount), unit.dimension());
      this.amount = amount;
      this.unit = unit;
    }

    @Override
    List<Figure> parts() {
      return List.of();
    }
  }

  static final class Named extends Figure {
    final String id;
    final String name;
    final Unit shownIn;
    final Figure inner;

    Named(String id, String name, Unit shownIn, Figure inner) {
      super(inner.value(), inner.dimension());
      this.id = requireNonNull(id, "id");
      this.name = name;
      this.shownIn = shownIn;
      this.inner = inner;
    }

    @Override
    List<Figure> parts() {
      return List.of();
    }
  }

  static final class Sum extends Figure {
    final List<Term> terms;

    Sum(List<Term> terms, Dimension dimension) {
      super(
          terms.stream()
              .map(t -> t.sign < 0 ? t.figure.value().negate() : t.figure.value())
              .reduce(BigDecimal.ZERO, BigDecimal::add),
          dimension);
      this.terms = terms;
    }

    @Override
    List<Term> terms(int sign) {
      return terms.stream().map(t -> new Term(t.figure, t.sign * sign)).toList();
    }

    @Override
    List<Figure> parts() {
      return terms.stream().map(Term::figure).toList();
    }
  }

  static final class Total extends Figure {
    final String key;
    final String name;
    final List<Figure> rows;

    Total(String key, String name, List<Figure> rows, Dimension dimension) {
      super(rows.stream().map(Figure::value).reduce(BigDecimal.ZERO, BigDecimal::add), dimension);
      this.key = key;
      this.name = name;
      this.rows = rows;
    }

    @Override
    List<Figure> parts() {
      return rows;
    }
  }

  static final class Product extends Figure {
    final List<Factor> factors;

    Product(List<Factor> factors) {
      super(valueOf(factors), dimensionOf(factors));
      this.factors = factors;
    }

    private static BigDecimal valueOf(List<Factor> factors) {
      var over = BigDecimal.ONE;
      var under = BigDecimal.ONE;
      for (var f : factors) {
        if (f.inverse) under = under.multiply(f.figure.value(), Ratio.PRECISION);
        else over = over.multiply(f.figure.value(), Ratio.PRECISION);
      }
      return under.compareTo(BigDecimal.ONE) == 0 ? over : over.divide(under, Ratio.PRECISION);
    }

    private static Dimension dimensionOf(List<Factor> factors) {
      var d = Dimension.NONE;
      for (var f : factors) {
        d = f.inverse ? d.per(f.figure.dimension()) : d.times(f.figure.dimension());
      }
      return d;
    }

    @Override
    List<Factor> factors(boolean inverse) {
      return inverse
          ? factors.stream().map(f -> new Factor(f.figure, !f.inverse)).toList()
          : factors;
    }

    @Override
    List<Figure> parts() {
      return factors.stream().map(Factor::figure).toList();
    }
  }

  static final class Extreme extends Figure {
    final boolean largest;
    final Figure a;
    final Figure b;

    Extreme(boolean largest, Figure a, Figure b) {
      super(largest ? a.value().max(b.value()) : a.value().min(b.value()), a.dimension());
      this.largest = largest;
      this.a = a;
      this.b = b;
    }

    @Override
    List<Figure> parts() {
      return List.of(a, b);
    }
  }

  static final class Whole extends Figure {
    final boolean up;
    final Figure inner;
    final Unit unit;

    Whole(boolean up, Figure inner, Unit unit) {
      super(
          unit.toBase()
              .applyTo(
                  guarded(inner.in(unit)).setScale(0, up ? RoundingMode.UP : RoundingMode.DOWN)),
          inner.dimension());
      this.up = up;
      this.inner = inner;
      this.unit = unit;
    }

    @Override
    List<Figure> parts() {
      return List.of(inner);
    }
  }

  static final class Rounded extends Figure {
    final Figure inner;
    final int decimals;

    Rounded(Figure inner, int decimals) {
      super(Money.halfUp(inner.value(), decimals), inner.dimension());
      this.inner = inner;
      this.decimals = decimals;
    }

    @Override
    List<Figure> parts() {
      return List.of(inner);
    }
  }

  static final class Root extends Figure {
    final Figure inner;

    Root(Figure inner) {
      super(inner.value().sqrt(Ratio.PRECISION), half(inner.dimension()));
      this.inner = inner;
    }

    private static Dimension half(Dimension d) {
      if (Arrays.stream(new int[] {d.length(), d.mass(), d.time(), d.money()})
          .anyMatch(p -> p % 2 != 0)) {
        throw new UnitMismatchException("take the root of", d, d);
      }
      return new Dimension(d.length() / 2, d.mass() / 2, d.time() / 2, d.money() / 2);
    }

    @Override
    List<Figure> parts() {
      return List.of(inner);
    }
  }

  static final class Power extends Figure {
    final Figure base;
    final Figure exponent;

    /** In double precision, as the spreadsheet does: 15 digits are beyond any cent. */
    Power(Figure base, Figure exponent) {
      super(
          BigDecimal.valueOf(Math.pow(base.value().doubleValue(), exponent.value().doubleValue())),
          Dimension.NONE);
      this.base = base;
      this.exponent = exponent;
    }

    @Override
    List<Figure> parts() {
      return List.of(base, exponent);
    }
  }

  static final class Select extends Figure {
    final Figure tested;
    final Figure limit;
    final Figure yes;
    final Figure no;

    Select(Figure tested, Figure limit, Figure yes, Figure no) {
      super(
          guarded(tested.value().subtract(limit.value())).signum() >= 0 ? yes.value() : no.value(),
          yes.dimension());
      this.tested = tested;
      this.limit = limit;
      this.yes = yes;
      this.no = no;
    }

    @Override
    List<Figure> parts() {
      return List.of(tested, limit, yes, no);
    }
  }
}

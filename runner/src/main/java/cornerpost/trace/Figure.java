package cornerpost.trace;

import static java.util.Objects.requireNonNull;

import cornerpost.measure.Dimension;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitMismatchException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A number that can be traced: an expression over choices, prices, facts and worked-out numbers.
 * Its value, its explanation and its live formula all come from the one expression.
 *
 * <p>Values are held in base units (metre, kilogram, working hour, one of the currency, one) to 34
 * digits. Dimensions are checked as the expression is built: adding a length to a mass throws
 * {@link UnitMismatchException} there and then. Immutable.
 */
public abstract sealed class Figure {
  /**
   * Decimals to which a number is brought before it is rounded up or compared. Twelve sheets of
   * exactly one board each reach a spreadsheet as 12.000000000000002; they are twelve, not
   * thirteen.
   */
  static final int GUARD_DECIMALS = 9;

  private final BigDecimal value;
  private final Dimension dimension;

  private Figure(BigDecimal value, Dimension dimension) {
    this.value = value;
    this.dimension = dimension;
  }

  // ---- making one -------------------------------------------------------------------------

  public static Figure of(Leaf leaf) {
    return new Source(leaf);
  }

  /** The owner's entry in a cell, such as {@code Openings!D5}. */
  public static Figure choice(String cell, String name, BigDecimal amount, Unit unit) {
    return of(new Leaf(Leaf.Kind.CHOICE, cell, name, amount, unit, ""));
  }

  /** What the plan takes for a cell that was left empty. */
  public static Figure assumed(String cell, String name, BigDecimal amount, Unit unit) {
    return of(new Leaf(Leaf.Kind.ASSUMED, cell, name, amount, unit, "default, the cell is empty"));
  }

  /** A number that only an algorithm gives; {@code how} says which. */
  public static Figure workedOut(String id, String name, BigDecimal amount, Unit unit, String how) {
    return of(new Leaf(Leaf.Kind.WORKED, id, name, amount, unit, how));
  }

  /** A plain number of the calculation itself: two sides, half of it. Never a price or a fact. */
  public static Figure constant(String amount, Unit unit) {
    return new Constant(new BigDecimal(amount), unit);
  }

  public static Figure count(long n) {
    return new Constant(BigDecimal.valueOf(n), Unit.ONE);
  }

  /** Nothing of a dimension. */
  public static Figure zero(Dimension dimension) {
    return new Constant(BigDecimal.ZERO, Unit.base(dimension));
  }

  /** The sum; an empty list is nothing of {@code dimension}. */
  public static Figure sum(Dimension dimension, List<Figure> terms) {
    if (terms.isEmpty()) return zero(dimension);
    var signed = new ArrayList<Term>();
    for (var t : terms) {
      t.require("add", dimension);
      signed.add(new Term(t, 1));
    }
    return terms.size() == 1 ? terms.get(0) : new Sum(List.copyOf(signed), dimension);
  }

  /**
   * A sum that the workbook writes as one total over rows, found by {@code key}; see {@link
   * Places#total}.
   */
  public static Figure total(String key, String name, Dimension dimension, List<Figure> rows) {
    for (var r : rows) r.require("add", dimension);
    return new Total(key, name, List.copyOf(rows), dimension);
  }

  // ---- reckoning with it ------------------------------------------------------------------

  public Figure plus(Figure other) {
    other.require("add", dimension);
    return new Sum(join(terms(1), other.terms(1)), dimension);
  }

  public Figure minus(Figure other) {
    other.require("subtract", dimension);
    return new Sum(join(terms(1), other.terms(-1)), dimension);
  }

  public Figure times(Figure other) {
    return new Product(join(factors(false), other.factors(false)));
  }

  public Figure times(long n) {
    return times(count(n));
  }

  /**
   * @throws ArithmeticException if {@code other} is zero
   */
  public Figure over(Figure other) {
    return new Product(join(factors(false), other.factors(true)));
  }

  public Figure over(long n) {
    return over(count(n));
  }

  public Figure max(Figure other) {
    other.require("compare", dimension);
    return new Extreme(true, this, other);
  }

  public Figure min(Figure other) {
    other.require("compare", dimension);
    return new Extreme(false, this, other);
  }

  /** Not below nothing. */
  public Figure atLeastZero() {
    return max(zero(dimension));
  }

  /** Up to the next whole {@code unit}: whole sheets, whole metres. */
  public Figure roundedUpTo(Unit unit) {
    require("round up to " + unit + " a", unit.dimension());
    return new Whole(true, this, unit);
  }

  /** Up to the next whole number. */
  public Figure roundedUp() {
    return roundedUpTo(Unit.ONE);
  }

  /** Down to the whole number below. */
  public Figure roundedDown() {
    require("round down", Dimension.NONE);
    return new Whole(false, this, Unit.ONE);
  }

  /** Half up to the currency's minor unit by {@link Money#halfUp}; for amounts of money. */
  public Figure roundedToMinor(int decimals) {
    require("round as money", Dimension.MONEY);
    return new Rounded(this, decimals);
  }

  /** The square root of a plain number or of an area. */
  public Figure squareRoot() {
    return new Root(this);
  }

  /** A plain number to the power of another: (1 + rate) ^ years. */
  public Figure power(Figure exponent) {
    require("raise", Dimension.NONE);
    exponent.require("raise by", Dimension.NONE);
    return new Power(this, exponent);
  }

  /** {@code yes} if this is at least {@code limit}, else {@code no}; checked to nine decimals. */
  public Figure ifAtLeast(Figure limit, Figure yes, Figure no) {
    limit.require("compare", dimension);
    no.require("choose between", yes.dimension());
    return new Select(this, limit, yes, no);
  }

  /** This figure as a row of its own: users of it point at the row instead of repeating it. */
  public Figure named(String id, String name, Unit shownIn) {
    require("show in " + shownIn + " a", shownIn.dimension());
    return new Named(id, name, shownIn, this);
  }

  // ---- reading it -------------------------------------------------------------------------

  /** In base units, 34 digits. */
  public BigDecimal value() {
    return value;
  }

  public BigDecimal in(Unit unit) {
    require("show in " + unit + " a", unit.dimension());
    return unit.toBase().inverse().applyTo(value);
  }

  public double asDouble(Unit unit) {
    return in(unit).doubleValue();
  }

  public Dimension dimension() {
    return dimension;
  }

  public boolean isZero() {
    return value.signum() == 0;
  }

  /** How it came about: {@code 36 in width [Openings!D5] x 48 in height [Openings!E5]}. */
  public String inWords() {
    return words().text();
  }

  /** The formula without its equals sign; the cell then holds this figure's amount in a unit. */
  public String formula(Places places, Unit shownIn) {
    require("show in " + shownIn + " a", shownIn.dimension());
    return FormulaWriter.write(this, shownIn.toBase().inverse(), places);
  }

  /** The leaves it rests on, each once, in reading order; not those behind named figures. */
  public Set<Leaf> leaves() {
    var found = new LinkedHashSet<Leaf>();
    visit(
        f -> {
          if (f instanceof Source s) found.add(s.leaf);
        });
    return found;
  }

  /** The named figures it points at directly, by id. */
  public Set<String> names() {
    var found = new LinkedHashSet<String>();
    visit(
        f -> {
          if (f instanceof Named n) found.add(n.id);
        });
    return found;
  }

  /** The leaves it rests on, those behind named figures and totals too. */
  public Set<Leaf> allLeaves() {
    var found = new LinkedHashSet<Leaf>();
    visitAll(
        f -> {
          if (f instanceof Source s) found.add(s.leaf);
        });
    return found;
  }

  @Override
  public String toString() {
    return value.stripTrailingZeros().toPlainString() + " = " + inWords();
  }

  // ---- inside -----------------------------------------------------------------------------

  void require(String operation, Dimension wanted) {
    if (!dimension.equals(wanted)) throw new UnitMismatchException(operation, wanted, dimension);
  }

  /** Parts that stand in this expression itself, not behind a name. */
  abstract List<Figure> parts();

  abstract Words words();

  private void visit(Consumer<Figure> visitor) {
    visitor.accept(this);
    for (var p : parts()) p.visit(visitor);
  }

  private void visitAll(Consumer<Figure> visitor) {
    visitor.accept(this);
    for (var p : parts()) p.visitAll(visitor);
    if (this instanceof Named n) n.inner.visitAll(visitor);
  }

  List<Term> terms(int sign) {
    return List.of(new Term(this, sign));
  }

  List<Factor> factors(boolean inverse) {
    return List.of(new Factor(this, inverse));
  }

  private static <T> List<T> join(List<T> a, List<T> b) {
    var all = new ArrayList<T>(a);
    all.addAll(b);
    return List.copyOf(all);
  }

  static BigDecimal guarded(BigDecimal exact) {
    return exact.setScale(GUARD_DECIMALS, RoundingMode.HALF_UP);
  }

  record Term(Figure figure, int sign) {}

  record Factor(Figure figure, boolean inverse) {}

  /** An explanation and whether it needs brackets inside a product or a sum. */
  record Words(String text, boolean isSum) {
    static Words plain(String text) {
      return new Words(text, false);
    }

    String inProduct() {
      return isSum ? "(" + text + ")" : text;
    }
  }

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

    @Override
    Words words() {
      var amount = leaf.amount().toPlainString();
      var unit = leaf.unit().symbol().isEmpty() ? "" : " " + leaf.unit();
      return Words.plain(amount + unit + " " + leaf.name() + " [" + leaf.key() + "]");
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

    @Override
    Words words() {
      return Words.plain(
          amount.stripTrailingZeros().toPlainString()
              + (unit.symbol().isEmpty() ? "" : " " + unit.symbol()));
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

    @Override
    Words words() {
      var unit = shownIn.symbol().isEmpty() ? "" : " " + shownIn;
      return Words.plain(Shown.number(in(shownIn)) + unit + " " + name + " [" + id + "]");
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

    @Override
    Words words() {
      var text = new StringBuilder();
      for (var t : terms) {
        if (text.length() > 0) text.append(t.sign < 0 ? " - " : " + ");
        else if (t.sign < 0) text.append("-");
        text.append(t.sign < 0 ? t.figure.words().inProduct() : t.figure.words().text());
      }
      return new Words(text.toString(), true);
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

    @Override
    Words words() {
      return Words.plain(
          Shown.number(value()) + " " + name + ", the sum of " + rows.size() + " lines");
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

    @Override
    Words words() {
      var text = new StringBuilder();
      for (var f : factors) {
        if (text.length() == 0 && f.inverse) text.append("1");
        if (text.length() > 0) text.append(f.inverse ? " / " : " x ");
        text.append(f.figure.words().inProduct());
      }
      return Words.plain(text.toString());
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

    @Override
    Words words() {
      var verb = largest ? "the larger of (" : "the smaller of (";
      return Words.plain(verb + a.inWords() + ") and (" + b.inWords() + ")");
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

    @Override
    Words words() {
      return Words.plain(
          "("
              + inner.inWords()
              + (up ? ") rounded up to whole " : ") rounded down to whole ")
              + (unit.symbol().isEmpty() ? "numbers" : unit.symbol()));
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

    @Override
    Words words() {
      return inner.words();
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

    @Override
    Words words() {
      return Words.plain("the square root of (" + inner.inWords() + ")");
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

    @Override
    Words words() {
      return Words.plain("(" + base.inWords() + ") to the power of (" + exponent.inWords() + ")");
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

    @Override
    Words words() {
      return Words.plain(
          "if "
              + tested.inWords()
              + " is at least "
              + limit.inWords()
              + ": "
              + yes.inWords()
              + ", else "
              + no.inWords());
    }
  }
}

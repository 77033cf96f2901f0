package cornerpost.trace;

import cornerpost.measure.Dimension;
import cornerpost.measure.Money;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitMismatchException;
import cornerpost.measure.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
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
public abstract sealed class Figure
    permits Node.Source,
        Node.Constant,
        Node.Named,
        Node.Sum,
        Node.Total,
        Node.Product,
        Node.Extreme,
        Node.Whole,
        Node.Rounded,
        Node.Root,
        Node.Power,
        Node.Select {
  /**
   * Decimals to which a number is brought before it is rounded up or compared. Twelve sheets of
   * exactly one board each reach a spreadsheet as 12.000000000000002; they are twelve, not
   * thirteen.
   */
  static final int GUARD_DECIMALS = 9;

  private final BigDecimal value;
  private final Dimension dimension;

  Figure(BigDecimal value, Dimension dimension) {
    this.value = value;
    this.dimension = dimension;
  }

  // ---- making one -------------------------------------------------------------------------

  public static Figure of(Leaf leaf) {
    return new Node.Source(leaf);
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
    return new Node.Constant(new BigDecimal(amount), unit);
  }

  public static Figure count(long n) {
    return new Node.Constant(BigDecimal.valueOf(n), Unit.ONE);
  }

  /** Nothing of a dimension. */
  public static Figure zero(Dimension dimension) {
    return new Node.Constant(BigDecimal.ZERO, Unit.base(dimension));
  }

  /** The sum; an empty list is nothing of {@code dimension}. */
  public static Figure sum(Dimension dimension, List<Figure> terms) {
    if (terms.isEmpty()) return zero(dimension);
    var signed = new ArrayList<Node.Term>();
    for (var t : terms) {
      t.require("add", dimension);
      signed.add(new Node.Term(t, 1));
    }
    return terms.size() == 1 ? terms.get(0) : new Node.Sum(List.copyOf(signed), dimension);
  }

  /**
   * A sum that the workbook writes as one total over rows, found by {@code key}; see {@link
   * Places#total}.
   */
  public static Figure total(String key, String name, Dimension dimension, List<Figure> rows) {
    for (var r : rows) r.require("add", dimension);
    return new Node.Total(key, name, List.copyOf(rows), dimension);
  }

  // ---- reckoning with it ------------------------------------------------------------------

  public Figure plus(Figure other) {
    other.require("add", dimension);
    return new Node.Sum(join(terms(1), other.terms(1)), dimension);
  }

  public Figure minus(Figure other) {
    other.require("subtract", dimension);
    return new Node.Sum(join(terms(1), other.terms(-1)), dimension);
  }

  public Figure times(Figure other) {
    return new Node.Product(join(factors(false), other.factors(false)));
  }

  public Figure times(long n) {
    return times(count(n));
  }

  /**
   * @throws ArithmeticException if {@code other} is zero
   */
  public Figure over(Figure other) {
    return new Node.Product(join(factors(false), other.factors(true)));
  }

  public Figure over(long n) {
    return over(count(n));
  }

  public Figure max(Figure other) {
    other.require("compare", dimension);
    return new Node.Extreme(true, this, other);
  }

  public Figure min(Figure other) {
    other.require("compare", dimension);
    return new Node.Extreme(false, this, other);
  }

  /** Not below nothing. */
  public Figure atLeastZero() {
    return max(zero(dimension));
  }

  /** Up to the next whole {@code unit}: whole sheets, whole metres. */
  public Figure roundedUpTo(Unit unit) {
    require("round up to " + unit + " a", unit.dimension());
    return new Node.Whole(true, this, unit);
  }

  /** Up to the next whole number. */
  public Figure roundedUp() {
    return roundedUpTo(Unit.ONE);
  }

  /** Down to the whole number below. */
  public Figure roundedDown() {
    require("round down", Dimension.NONE);
    return new Node.Whole(false, this, Unit.ONE);
  }

  /** Half up to the currency's minor unit by {@link Money#halfUp}; for amounts of money. */
  public Figure roundedToMinor(int decimals) {
    require("round as money", Dimension.MONEY);
    return new Node.Rounded(this, decimals);
  }

  /** The square root of a plain number or of an area. */
  public Figure squareRoot() {
    return new Node.Root(this);
  }

  /** A plain number to the power of another: (1 + rate) ^ years. */
  public Figure power(Figure exponent) {
    require("raise", Dimension.NONE);
    exponent.require("raise by", Dimension.NONE);
    return new Node.Power(this, exponent);
  }

  /** {@code yes} if this is at least {@code limit}, else {@code no}; checked to nine decimals. */
  public Figure ifAtLeast(Figure limit, Figure yes, Figure no) {
    limit.require("compare", dimension);
    no.require("choose between", yes.dimension());
    return new Node.Select(this, limit, yes, no);
  }

  /** This figure as a row of its own: users of it point at the row instead of repeating it. */
  public Figure named(String id, String name, Unit shownIn) {
    require("show in " + shownIn + " a", shownIn.dimension());
    return new Node.Named(id, name, shownIn, this);
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
    return Explanation.of(this);
  }

  /** The same in the units of a reader's workbook; the formula keeps the published ones. */
  public String inWords(UnitSystem units) {
    return Explanation.of(this, units);
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
          if (f instanceof Node.Source s) found.add(s.leaf);
        });
    return found;
  }

  /** The named figures it points at directly, by id. */
  public Set<String> names() {
    var found = new LinkedHashSet<String>();
    visit(
        f -> {
          if (f instanceof Node.Named n) found.add(n.id);
        });
    return found;
  }

  /** The leaves it rests on, those behind named figures and totals too. */
  public Set<Leaf> allLeaves() {
    var found = new LinkedHashSet<Leaf>();
    visitAll(
        f -> {
          if (f instanceof Node.Source s) found.add(s.leaf);
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

  private void visit(Consumer<Figure> visitor) {
    visitor.accept(this);
    for (var p : parts()) p.visit(visitor);
  }

  private void visitAll(Consumer<Figure> visitor) {
    visitor.accept(this);
    for (var p : parts()) p.visitAll(visitor);
    if (this instanceof Node.Named n) n.inner.visitAll(visitor);
  }

  List<Node.Term> terms(int sign) {
    return List.of(new Node.Term(this, sign));
  }

  List<Node.Factor> factors(boolean inverse) {
    return List.of(new Node.Factor(this, inverse));
  }

  private static <T> List<T> join(List<T> a, List<T> b) {
    var all = new ArrayList<T>(a);
    all.addAll(b);
    return List.copyOf(all);
  }

  static BigDecimal guarded(BigDecimal exact) {
    return exact.setScale(GUARD_DECIMALS, RoundingMode.HALF_UP);
  }
}

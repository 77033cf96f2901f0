package cornerpost.price;

import cornerpost.fact.Facts;
import cornerpost.measure.Dimension;
import cornerpost.measure.Money;
import cornerpost.measure.Unit;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Party;
import cornerpost.scope.PricePoint;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Quote;
import cornerpost.scope.QuoteFor;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.scope.Trade;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** What the parts of an estimate share: the input, the quotes, the lines and hours so far. */
final class Costing {
  /** Below this many of a unit a line's quantity counts as this many when its rate is shown. */
  private static final String LEAST_QUANTITY = "0.000001";

  final Scope scope;
  final Optional<PriceBook> book;
  final Facts facts;
  final PricePoint point;
  final Currency currency;
  final List<Problem> problems = new ArrayList<>();
  final List<CostLine> lines = new ArrayList<>();
  final List<TaskHours> hours = new ArrayList<>();
  final QuoteBook quotes;

  Costing(Scope scope, Optional<PriceBook> book, Facts facts) {
    this.scope = scope;
    this.book = book;
    this.facts = facts;
    this.point =
        scope.options().has(OptionsQuestions.PRICE_POINT)
            ? scope.options().option(OptionsQuestions.PRICE_POINT, PricePoint.class)
            : PricePoint.LIKELY;
    this.currency = book.map(b -> b.region().currency()).orElse(Currency.getInstance("USD"));
    var start = scope.project().date(ProjectQuestions.START);
    this.quotes =
        new QuoteBook(
            scope.quotes(),
            scope.project().findDate(ProjectQuestions.STATUS).orElse(start),
            problems);
  }

  /**
   * A line before quotes.
   *
   * @param rate what one {@code unit} costs: the book's price or the owner's own
   * @param basis where {@code rate} comes from
   * @param lowRate rate and quantity at the book's low prices make {@code low}
   */
  record Draft(
      String id,
      Optional<String> quantityId,
      Stage stage,
      CostLine.Kind kind,
      String description,
      Figure quantity,
      Unit unit,
      Figure bookRate,
      Figure rate,
      CostLine.Basis basis,
      Party party,
      Optional<String> task,
      Optional<String> item,
      boolean taxed,
      BigDecimal low,
      BigDecimal high) {}

  Unit money() {
    return Unit.money(currency.getCurrencyCode());
  }

  /** The amount that is paid: rounded once, here. */
  Figure rounded(Figure amount) {
    return amount.roundedToMinor(Money.minorDigits(currency));
  }

  /** An entry of money may come without its currency; it is in that of the price book. */
  Figure asMoney(Figure entered) {
    return entered.dimension().equals(Dimension.NONE)
        ? entered.times(Figure.constant("1", money()))
        : entered;
  }

  Figure asMoneyPerHour(Figure entered) {
    var hourly =
        entered.dimension().time() == 0 ? entered.over(Figure.constant("1", Unit.HOUR)) : entered;
    return hourly.dimension().money() == 0 ? hourly.times(Figure.constant("1", money())) : hourly;
  }

  void add(Draft d) {
    var quote = quotes.find(d.id);
    if (quote.isEmpty()) {
      add(d, d.rate, rounded(d.quantity.times(d.rate)), d.basis, quote, d.low, d.high);
      return;
    }
    var q = quote.get();
    boolean each = q.quoteFor() == QuoteFor.UNIT;
    var quoted =
        Figure.choice(
            q.cell(), "quote of " + q.supplier(), q.amount(), each ? money().per(d.unit) : money());
    var least = Figure.constant(LEAST_QUANTITY, d.unit);
    var rate = each ? quoted : quoted.over(d.quantity.max(least));
    var amount = rounded(each ? d.quantity.times(quoted) : quoted);
    add(d, rate, amount, CostLine.Basis.QUOTE, quote, amount.value(), amount.value());
  }

  private void add(
      Draft d,
      Figure rate,
      Figure amount,
      CostLine.Basis basis,
      Optional<Quote> quote,
      BigDecimal low,
      BigDecimal high) {
    lines.add(
        new CostLine(
            d.id,
            d.quantityId,
            d.stage,
            d.kind,
            d.description,
            d.quantity,
            d.unit,
            d.bookRate,
            rate,
            amount,
            basis,
            d.party,
            d.task,
            d.item,
            d.taxed,
            quote,
            low,
            high));
  }

  /** Whether a quote in use covers a line as a whole, its waste and packs included. */
  boolean quotedWhole(String lineId) {
    return quotes.find(lineId).map(q -> q.quoteFor() == QuoteFor.WHOLE).orElse(false);
  }

  /** Who pays for what is bought for a trade's work. */
  Party partyOf(Optional<Trade> trade) {
    return trade.map(t -> scope.assignments().get(t)).map(a -> a.party()).orElse(Party.OWNER);
  }

  static Problem fault(String cell, String found, String expected) {
    return at(Problem.Severity.FAULT, cell, found, expected);
  }

  static Problem remark(String cell, String found, String expected) {
    return at(Problem.Severity.REMARK, cell, found, expected);
  }

  private static Problem at(Problem.Severity severity, String label, String found, String right) {
    int mark = label.lastIndexOf('!');
    return mark < 0
        ? new Problem(severity, label, "", found, right)
        : new Problem(severity, label.substring(0, mark), label.substring(mark + 1), found, right);
  }
}

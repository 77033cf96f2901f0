package cornerpost.price;

import cornerpost.measure.Dimension;
import cornerpost.measure.Spoken;
import cornerpost.measure.Unit;
import cornerpost.scope.Answer;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What is reckoned on the lines of a stage: price rise, tax, contingency, in this order.
 *
 * <ul>
 *   <li>Price rise: amounts at book prices x ((1 + rise a year) ^ (months / 12) - 1); quotes and
 *       the owner's own amounts are what they are. Months run from the date of the prices to the
 *       time at which the stage is usually paid for.
 *   <li>Tax: the taxed lines with their price rise x the rate of tax, once for the stage.
 *   <li>Contingency: everything of the stage, price rise and tax included, x the owner's share.
 * </ul>
 */
final class StageSums {
  private static final BigDecimal DAYS_A_YEAR = new BigDecimal("365.25");

  private final Costing costing;

  StageSums(Costing costing) {
    this.costing = costing;
  }

  /** The lines of one stage, those on its sums included; empty if nothing is in the stage. */
  List<CostLine> with(Stage stage, List<CostLine> base) {
    if (base.isEmpty()) return List.of();
    var lines = new Sums(stage, base);
    lines.priceRise();
    lines.tax();
    lines.contingency();
    return lines.all;
  }

  private Optional<Figure> entered(Question question) {
    return costing
        .scope
        .options()
        .find(question)
        .filter(a -> costing.scope.generatesTasks() || !a.assumed())
        .map(Answer::value)
        .map(v -> (Figure) v);
  }

  private final class Sums {
    private final Stage stage;
    private final List<CostLine> base;
    private final List<CostLine> all;
    private final String key;
    private Optional<Figure> rise = Optional.empty();

    Sums(Stage stage, List<CostLine> base) {
      this.stage = stage;
      this.base = base;
      this.all = new ArrayList<>(base);
      this.key = "stage/" + stage.name() + "/";
    }

    private String id(String what) {
      return what + "/" + stage.name().toLowerCase(Locale.ROOT);
    }

    private Figure total(String what, String name, List<CostLine> of) {
      return Figure.total(
          key + what, name, Dimension.MONEY, of.stream().map(CostLine::amount).toList());
    }

    /** The sum of some lines at book prices: the total less what is quoted or the owner's own. */
    private Figure atBookPrices(Figure total, String what, List<CostLine> of) {
      // Taken off even where nothing is firm yet: a quote entered later then counts at once.
      var firm = of.stream().filter(l -> l.basis() != CostLine.Basis.PRICE_BOOK).toList();
      return total.minus(total(what, "quoted or own", firm));
    }

    private List<CostLine> taxed() {
      return base.stream().filter(CostLine::taxed).toList();
    }

    private BigDecimal sum(
        List<CostLine> of, Predicate<CostLine> which, Function<CostLine, BigDecimal> what) {
      return of.stream().filter(which).map(what).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private void priceRise() {
      var rate = entered(OptionsQuestions.ESCALATION);
      if (rate.isEmpty() || costing.book.isEmpty()) return;
      var factor = Figure.count(1).plus(rate.get()).power(months().over(12));
      rise = Optional.of(factor.minus(Figure.count(1)));
      Predicate<CostLine> rising = l -> l.basis() == CostLine.Basis.PRICE_BOOK;
      if (base.stream().noneMatch(rising)) return;
      add(
          id("price-rise"),
          CostLine.Kind.ESCALATION,
          "Price rise to the time of buying",
          atBookPrices(total("base", "cost of the stage", base), "firm", base),
          rise.get(),
          sum(base, rising, CostLine::low).multiply(rise.get().value()),
          sum(base, rising, CostLine::high).multiply(rise.get().value()));
    }

    /** From the date of the prices to the start, and on to the middle of the stage. */
    private Figure months() {
      var priced = costing.book.orElseThrow().region().priceDate();
      var start = costing.scope.project().date(ProjectQuestions.START);
      var days = Math.max(0, ChronoUnit.DAYS.between(priced, start));
      var month = Unit.count("month");
      var toStart =
          Figure.workedOut(
              "months-to-start",
              "months from price date to start",
              BigDecimal.valueOf(days * 12).divide(DAYS_A_YEAR, 2, RoundingMode.HALF_UP),
              month,
              "days from "
                  + Spoken.day(priced)
                  + " to "
                  + Spoken.day(start)
                  + ", x 12 / 365.25, not below nothing");
      var share = costing.facts.figure("time.share." + stage.name().toLowerCase(Locale.ROOT));
      var allowed = costing.scope.project().figure(ProjectQuestions.TIME_ALLOWED);
      return toStart.plus(share.times(allowed));
    }

    private void tax() {
      if (costing.book.isEmpty() || taxed().isEmpty()) return;
      var taxed = total("taxed", "taxed cost of the stage", taxed());
      var risen =
          rise.map(r -> taxed.plus(atBookPrices(taxed, "firm-taxed", taxed()).times(r)))
              .orElse(taxed);
      var factor = Figure.count(1).plus(rise.orElse(Figure.count(0))).value();
      var rate = costing.book.get().taxRate();
      add(
          id("tax"),
          CostLine.Kind.TAX,
          costing.book.get().region().taxName(),
          risen,
          rate,
          sum(taxed(), l -> true, l -> risen(l, l.low(), factor)).multiply(rate.value()),
          sum(taxed(), l -> true, l -> risen(l, l.high(), factor)).multiply(rate.value()));
    }

    private static BigDecimal risen(CostLine line, BigDecimal amount, BigDecimal factor) {
      return line.basis() == CostLine.Basis.PRICE_BOOK ? amount.multiply(factor) : amount;
    }

    private void contingency() {
      var question =
          switch (stage) {
            case FOUNDATION, CONTAINERS, SHELL -> OptionsQuestions.CONTINGENCY_SHELL;
            default -> OptionsQuestions.CONTINGENCY_REST;
          };
      var share = entered(question);
      if (share.isEmpty()) return;
      var before = total("before-contingency", "stage with tax", List.copyOf(all));
      var amount = before.times(share.get()).value();
      add(
          id("contingency"),
          CostLine.Kind.CONTINGENCY,
          "Contingency",
          before,
          share.get(),
          amount,
          amount);
    }

    private void add(
        String id,
        CostLine.Kind kind,
        String description,
        Figure quantity,
        Figure rate,
        BigDecimal low,
        BigDecimal high) {
      all.add(
          new CostLine(
              id,
              Optional.empty(),
              stage,
              kind,
              description + ", stage " + stage.label(),
              quantity,
              costing.money(),
              rate,
              rate,
              costing.rounded(quantity.times(rate)),
              kind == CostLine.Kind.CONTINGENCY ? CostLine.Basis.OWN : CostLine.Basis.PRICE_BOOK,
              Party.OWNER,
              Optional.empty(),
              Optional.empty(),
              false,
              Optional.empty(),
              low,
              high));
    }
  }
}

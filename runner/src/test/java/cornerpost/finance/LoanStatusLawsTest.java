package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.finance.CostReport.Line;
import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.scope.ContingencyRule;
import cornerpost.scope.DayCount;
import cornerpost.scope.DrawBasis;
import cornerpost.scope.InterestPayment;
import cornerpost.scope.LedgerEntry;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of the lender's figures on random ledgers; half of the loans add their interest. */
class LoanStatusLawsTest {
  private static final LocalDate STATUS = LocalDate.of(2027, 5, 12);
  private static final List<Stage> STAGES = List.of(Stage.FOUNDATION, Stage.SHELL, Stage.FINISHES);

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 200);
  }

  /** A random half-built house. */
  private static final class Case {
    final SplittableRandom random;
    final LoanTerms terms;
    final List<Row> rows;
    final Row interest;
    final Outlook outlook;
    final LoanStatus status;

    Case(long seed) {
      random = new SplittableRandom(seed);
      terms =
          new LoanTerms(
              cents(20_000_000),
              cents(6_000_000),
              new BigDecimal(random.nextInt(1, 15)).movePointLeft(2),
              DayCount.values()[random.nextInt(3)],
              DrawBasis.MONTH,
              new Retainage(new BigDecimal(random.nextInt(0, 11)).movePointLeft(2), false),
              Optional.empty(),
              Optional.empty(),
              seed % 2 == 0 ? InterestPayment.PAID : InterestPayment.ADDED,
              BigDecimal.ZERO,
              0,
              seed % 3 == 0 ? ContingencyRule.ALL_LEFT : ContingencyRule.IN_STEP,
              4,
              new BigDecimal("0.1"),
              new BigDecimal("0.02"));
      var lines = new ArrayList<Line>();
      var entries = new ArrayList<LedgerEntry>();
      for (var stage : STAGES) {
        for (int i = 0; i < 4; i++) line(lines, entries, stage, Treatment.WORK, i);
        line(lines, entries, stage, Treatment.TIME, 4);
        line(lines, entries, stage, Treatment.ON_TOP, 5);
        line(lines, entries, stage, Treatment.CONTINGENCY, 6);
      }
      entries.add(entry("gone/line", false));
      lines.add(
          new Line(
              "gone/line",
              Optional.empty(),
              "gone",
              Treatment.GONE,
              new BigDecimal("0.00"),
              BigDecimal.ZERO,
              BigDecimal.ZERO,
              BigDecimal.ZERO,
              false,
              false,
              Optional.empty()));
      var ledger = CostReport.entered(entries, 2);
      rows = CostReport.rows(lines, ledger, terms.contingency(), 2);
      var interestLine =
          new Line(
              "interest",
              Optional.of(Stage.FINISHES),
              "Interest",
              Treatment.INTEREST,
              cents(500_000),
              BigDecimal.ONE,
              BigDecimal.ZERO,
              BigDecimal.ZERO,
              true,
              false,
              Optional.empty());
      var charged = CostReport.interest(interestLine, ledger, new BigDecimal("0.00"), 2);
      outlook = Outlook.of(terms, STAGES, spans(), rows, Optional.of(charged), 2);
      interest = CostReport.interest(interestLine, ledger, outlook.interest(), 2);
      var parts = List.of(new BigDecimal("0.5"), new BigDecimal("0.25"), BigDecimal.ZERO);
      var one = List.of(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE);
      status =
          LoanStatus.of(
              terms,
              rows,
              interest,
              outlook,
              new PlannedValue.Parts(
                  Optional.empty(),
                  STAGES,
                  List.of(STATUS, STATUS.plusMonths(4)),
                  List.of(parts, one),
                  parts,
                  BigDecimal.ONE),
              new LoanStatus.Facts(
                  STATUS,
                  STATUS.plusMonths(4),
                  BigDecimal.ZERO,
                  OptionalInt.of(0),
                  new BigDecimal("1000")),
              2);
    }

    private BigDecimal cents(int most) {
      return BigDecimal.valueOf(random.nextInt(most), 2);
    }

    private void line(
        List<Line> lines, List<LedgerEntry> entries, Stage stage, Treatment treatment, int i) {
      var id = stage.name() + "/" + i;
      lines.add(
          new Line(
              id,
              Optional.of(stage),
              id,
              treatment,
              cents(2_000_000),
              BigDecimal.valueOf(random.nextInt(1, 90)),
              share(),
              treatment == Treatment.TIME ? share() : BigDecimal.ZERO,
              random.nextBoolean(),
              false,
              Optional.empty()));
      if (random.nextInt(3) > 0) entries.add(entry(id, treatment == Treatment.WORK));
      if (random.nextInt(4) == 0) entries.add(entry(id, false));
    }

    private BigDecimal share() {
      return BigDecimal.valueOf(random.nextInt(0, 11), 1);
    }

    private LedgerEntry entry(String id, boolean work) {
      var paid = cents(500_000);
      var retained = cents(50_000);
      var budget = Optional.of(cents(2_000_000)).filter(b -> random.nextBoolean());
      return new LedgerEntry(
          id,
          budget,
          budget.map(b -> BigDecimal.valueOf(random.nextInt(1, 90))).filter(q -> work),
          cents(100_000).subtract(new BigDecimal("300")),
          random.nextBoolean() ? cents(2_000_000) : BigDecimal.ZERO,
          paid.add(retained).add(cents(50_000)),
          paid,
          retained,
          work && random.nextBoolean() ? Optional.of(share()) : Optional.empty(),
          random.nextInt(5) == 0 ? cents(100_000) : BigDecimal.ZERO,
          cents(100_000),
          "Cost ledger!A5");
    }

    private List<Outlook.Span> spans() {
      var spans = new ArrayList<Outlook.Span>();
      var day = new Interest(terms.rate(), terms.dayCount(), 2);
      for (int m = 0; m < 5; m++) {
        boolean last = m == 4;
        var month = YearMonth.from(STATUS).plusMonths(m);
        var from = m == 0 ? STATUS : month.atDay(1);
        var to = last ? month.atDay(20) : month.plusMonths(1).atDay(1);
        var part = last ? BigDecimal.ONE : BigDecimal.valueOf((m + 1) * 2L, 1).setScale(1);
        var parts = List.of(part, last ? BigDecimal.ONE : new BigDecimal("0.3333333333"), part);
        spans.add(
            new Outlook.Span(
                month,
                from,
                to,
                day.days(from, to),
                Optional.of(new DrawEvent(to, "draw", List.of(), last)),
                parts,
                List.of(part, parts.get(1), part, part)));
      }
      return spans;
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void budget_is_committed_and_uncommitted_and_invoices_are_paid_retained_or_payable(long seed) {
    for (var r : new Case(seed).status.rows()) {
      assertThat(r.entered().committed().add(r.uncommitted())).isEqualByComparingTo(r.revised());
      assertThat(r.entered().paid().add(r.entered().retained()).add(r.payable()))
          .isEqualByComparingTo(r.entered().invoiced());
    }
  }

  // Whatever event a draw is named after, what it is made of adds up to what it earns, and all of
  // them together to what comes in place from the status date to completion.
  @ParameterizedTest
  @MethodSource("seeds")
  void what_a_draw_is_made_of_adds_up_to_what_it_earns(long seed) {
    var status = new Case(seed).status;
    var there = status.outlook().inPlace();
    var charged = BigDecimal.ZERO;
    for (var d : status.draws()) {
      var made = d.made().orElseThrow();
      var since = made.work().add(made.byTheMonth()).add(made.interest());
      assertThat(since.subtract(made.notLent())).isEqualByComparingTo(d.earned());
      there = there.add(since);
      charged = charged.add(made.interest());
    }
    var months = status.outlook().months();
    var end = months.get(months.size() - 1);
    if (end.isDrawn()) {
      assertThat(there).isEqualByComparingTo(end.inPlace());
      assertThat(charged).isEqualByComparingTo(status.outlook().interest());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void earned_never_passes_the_revised_budget_and_causes_add_up_to_the_variance(long seed) {
    var status = new Case(seed).status;
    for (var r : status.rows()) {
      if (r.revised().signum() >= 0) {
        assertThat(r.earned()).isLessThanOrEqualTo(r.revised());
      }
      assertThat(r.byPrice().add(r.byQuantity()).add(r.byScope()).add(r.byTime()))
          .isEqualByComparingTo(r.variance());
      assertThat(r.original().add(r.variance())).isEqualByComparingTo(r.atCompletion());
      assertThat(r.toComplete()).isNotNegative();
      assertThat(r.toDate()).isGreaterThanOrEqualTo(r.entered().paid());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void what_is_needed_is_all_costs_at_completion_less_what_was_paid(long seed) {
    var status = new Case(seed).status;
    var cost =
        status.rows().stream().map(Row::atCompletion).reduce(BigDecimal.ZERO, BigDecimal::add);
    var h = status.holding();
    assertThat(h.needed()).isEqualByComparingTo(cost.subtract(h.paid()));
    assertThat(h.surplus()).isEqualByComparingTo(h.undrawn().add(h.cash()).subtract(h.needed()));
    assertThat(h.surplus()).isEqualByComparingTo(h.loan().add(h.ownCash()).subtract(cost));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void draws_never_pass_the_loan_unless_too_much_was_drawn_before(long seed) {
    var c = new Case(seed);
    var most = c.terms.loan().max(c.status.holding().drawn());
    for (var m : c.outlook.months()) {
      assertThat(m.owed()).isLessThanOrEqualTo(most);
      assertThat(m.draw()).isNotNegative();
      assertThat(m.held()).isLessThanOrEqualTo(m.earned());
    }
    assertThat(c.status.request().due().add(c.status.holding().drawn())).isLessThanOrEqualTo(most);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void money_left_over_is_the_same_in_every_month_and_cash_ends_where_the_sums_say(long seed) {
    var c = new Case(seed);
    var surplus = c.status.holding().surplus();
    BigDecimal due = BigDecimal.ZERO;
    for (var m : c.outlook.months()) {
      assertThat(m.surplus()).isEqualByComparingTo(surplus);
      due = due.add(m.due());
    }
    var h = c.status.holding();
    assertThat(due).isEqualByComparingTo(h.needed().subtract(h.interestToCome()));
    var last = c.outlook.months().get(c.outlook.months().size() - 1);
    assertThat(last.undrawn().add(last.cash())).isEqualByComparingTo(surplus);
    assertThat(last.toPay()).isZero();
    // Where the loan can pay for it all and no more was drawn than it costs, it does.
    if (surplus.signum() >= 0 && h.drawn().signum() == 0) {
      assertThat(last.cash()).isNotNegative();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void stages_and_lines_add_up_to_the_same_totals(long seed) {
    var c = new Case(seed);
    var placed = c.status.rows().stream().filter(r -> r.line().stage().isPresent()).toList();
    assertThat(
            c.status.stages().stream()
                .map(StageValue::revised)
                .reduce(BigDecimal.ZERO, BigDecimal::add))
        .isEqualByComparingTo(Outlook.sum(placed, Row::revised));
    for (var s : c.status.stages()) {
      assertThat(s.toFinish().add(s.earned()).add(s.stored())).isEqualByComparingTo(s.revised());
    }
    assertThat(c.outlook.toCome().stream().reduce(BigDecimal.ZERO, BigDecimal::add))
        .isEqualByComparingTo(c.status.holding().toComplete());
  }
}

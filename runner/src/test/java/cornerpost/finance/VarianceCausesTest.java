package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.finance.CostReport.Line;
import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.scope.ContingencyRule;
import cornerpost.scope.LedgerEntry;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Why a line costs more than budgeted: each cause by hand, and all of them the whole variance. */
class VarianceCausesTest {
  private static BigDecimal n(String number) {
    return new BigDecimal(number);
  }

  private static Row row(Treatment kind, String amount, String quantity, LedgerEntry entry) {
    return row(kind, amount, quantity, "0", "0", entry);
  }

  private static Row row(
      Treatment kind,
      String amount,
      String quantity,
      String progress,
      String least,
      LedgerEntry e) {
    var line =
        new Line(
            "line",
            Optional.of(Stage.SHELL),
            "line",
            kind,
            n(amount),
            n(quantity),
            n(progress),
            n(least),
            false,
            false,
            Optional.empty());
    return CostReport.rows(
            List.of(line), CostReport.entered(List.of(e), 2), ContingencyRule.IN_STEP, 2)
        .get(0);
  }

  private static LedgerEntry entry(
      String budget, String quantity, String changes, String committed) {
    var none = BigDecimal.ZERO;
    return new LedgerEntry(
        "line",
        Optional.of(n(budget)),
        Optional.of(n(quantity)).filter(q -> q.signum() > 0),
        n(changes),
        n(committed),
        none,
        none,
        none,
        Optional.empty(),
        none,
        none,
        "Cost ledger!A4");
  }

  private static void causes(
      Row r, String variance, String price, String quantity, String scope, String time) {
    assertThat(r.variance()).isEqualByComparingTo(variance);
    assertThat(r.byPrice()).isEqualByComparingTo(price);
    assertThat(r.byQuantity()).isEqualByComparingTo(quantity);
    assertThat(r.byScope()).isEqualByComparingTo(scope);
    assertThat(r.byTime()).isEqualByComparingTo(time);
    assertThat(r.byPrice().add(r.byQuantity()).add(r.byScope()).add(r.byTime()))
        .isEqualByComparingTo(r.variance());
  }

  // 40 m2 at 25.00 = 1,000 budgeted. Today 50 m2 at 27.00 = 1,350: 10 m2 more at the old price is
  // 250 by quantity; 2.00 more on all 50 m2 is 100 by price.
  @Test
  void more_square_metres_at_a_higher_rate_split_into_quantity_and_price() {
    causes(
        row(Treatment.WORK, "1350", "50", entry("1000", "40", "0", "0")),
        "350",
        "100",
        "250",
        "0",
        "0");
  }

  // The same with 60 of the rise ordered by an approved change: scope 60, what is left of the price
  // 40.
  @Test
  void an_approved_change_is_by_scope() {
    causes(
        row(Treatment.WORK, "1350", "50", entry("1000", "40", "60", "0")),
        "350",
        "40",
        "250",
        "60",
        "0");
  }

  // A contract of 1,500 above today's 1,350: at completion 1,500; 250 by quantity, 250 by price.
  @Test
  void a_dearer_contract_is_by_price() {
    causes(
        row(Treatment.WORK, "1350", "50", entry("1000", "40", "0", "1500")),
        "500",
        "250",
        "250",
        "0",
        "0");
  }

  // Fewer metres at a lower rate: 32 m2 at 24.00 = 768; -8 m2 x 25.00 = -200, -1.00 x 32 = -32.
  @Test
  void less_of_it_and_cheaper_is_below_nothing_by_both() {
    causes(
        row(Treatment.WORK, "768", "32", entry("1000", "40", "0", "0")),
        "-232",
        "-32",
        "-200",
        "0",
        "0");
  }

  // Without the quantity of the budget the rise cannot be told apart: all of it is by price.
  @Test
  void without_the_quantity_budgeted_all_is_by_price() {
    causes(
        row(Treatment.WORK, "1350", "50", entry("1000", "0", "0", "0")),
        "350",
        "350",
        "0",
        "0",
        "0");
  }

  // Rent of 6,000 for 180 days, 30 gone (1,000 in place), 200 days to come: 6,000 x 200 / 180 =
  // 6,666.67, so 7,666.67 at completion; of the 1,666.67 more 100 were approved, the rest is by
  // time.
  @Test
  void what_is_paid_by_the_month_is_dearer_by_time() {
    causes(
        row(
            Treatment.TIME,
            "6000",
            "6",
            "0.1666666667",
            "1.1111111111",
            entry("6000", "0", "100", "0")),
        "1666.67",
        "0",
        "0",
        "100",
        "1566.67");
  }

  // The same rent, 200 days gone of 180 paid for, so 6,666.67 in place, and 72 to come: 2,400. Used
  // up months do not end it: 9,066.67 at completion, 3,066.67 more, all by time.
  @Test
  void what_is_paid_by_the_month_goes_on_after_its_months_are_used_up() {
    causes(
        row(Treatment.TIME, "6000", "6", "1.1111111111", "0.4", entry("6000", "0", "0", "0")),
        "3066.67",
        "0",
        "0",
        "0",
        "3066.67");
  }

  @Test
  void a_line_that_has_gone_is_by_scope() {
    var r = row(Treatment.GONE, "0", "0", entry("700", "0", "0", "0"));
    causes(r, "-700", "0", "0", "-700", "0");
  }

  @Test
  void interest_beyond_its_budget_is_by_time() {
    var line =
        new Line(
            "interest",
            Optional.of(Stage.CLOSE_OUT),
            "Interest",
            Treatment.INTEREST,
            n("500"),
            n("1"),
            BigDecimal.ZERO,
            BigDecimal.ZERO,
            true,
            false,
            Optional.empty());
    causes(
        CostReport.interest(line, java.util.Map.of(), n("620.00"), 2), "120", "0", "0", "0", "120");
  }

  // By hand. 1,000 budgeted, 200 of changes approved, the price still 1,000: it will cost 1,200,
  // all
  // of the variance by scope. 40 % in place, at today's price 400: 800 to come. Once the price says
  // 1,150 it is still 1,200; a price of 1,300 counts as it is. A decrease waits for the price.
  @ParameterizedTest(name = "{0} at a price of {1}, {2} in place: {3} to come, {4} at completion")
  @CsvSource({
    "200, 1000, 0, 1200, 1200",
    "200, 1000, 0.4, 800, 1200",
    "200, 1150, 0, 1200, 1200",
    "200, 1300, 0, 1300, 1300",
    "200, 1000, 1, 0, 1000",
    "-200, 1000, 0, 1000, 1000"
  })
  void approved_increase_of_unfinished_work_counts_before_its_price_tells_of_it(
      String changes, String price, String share, BigDecimal toCome, BigDecimal atCompletion) {
    var r = row(Treatment.WORK, price, "1", share, "0", entry("1000", "0", changes, "0"));
    assertThat(r.toComplete()).isEqualByComparingTo(toCome);
    assertThat(r.atCompletion()).isEqualByComparingTo(atCompletion);
    assertThat(r.byScope()).isEqualByComparingTo(changes);
    if (atCompletion.compareTo(r.revised()) == 0) assertThat(r.byPrice()).isZero();
  }
}

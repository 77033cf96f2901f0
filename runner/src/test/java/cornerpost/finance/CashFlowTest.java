package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.scope.ContingencyRule;
import cornerpost.scope.DayCount;
import cornerpost.scope.DrawBasis;
import cornerpost.scope.InterestPayment;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CashFlowTest {
  private static BigDecimal n(String number) {
    return new BigDecimal(number);
  }

  private static LoanTerms terms(String loan, String cash, String rate, String retainage) {
    return new LoanTerms(
        n(loan),
        n(cash),
        n(rate),
        DayCount.THIRTY_360,
        DrawBasis.MONTH,
        new Retainage(n(retainage), false),
        Optional.empty(),
        Optional.empty());
  }

  private static Payment paid(String day, String amount) {
    var date = LocalDate.parse(day);
    return new Payment("line", Stage.SHELL, date, date, n(amount));
  }

  private static DrawEvent monthEnd(String day) {
    return new DrawEvent(LocalDate.parse(day), "month ended", List.of(), false);
  }

  private static DrawEvent complete(String day) {
    return new DrawEvent(LocalDate.parse(day), "House complete", List.of(), true);
  }

  // By hand: cash 10,000, loan 30,000, 12 % a year 30/360, 10 % held. In place 8,000 in January:
  // all the borrower's. 20,000 more in February: 28,000 less 10,000 is the lender's, 18,000; held
  // 1,800; paid 16,200 on the 28th, in arrears: 3 days at 30/360 = 16.20. 12,000 more in March:
  // the lender's 30,000, held 3,000, due 27,000 - 16,200 = 10,800 on the 31st; interest 162.00 for
  // March plus 1 day x 10,800 x 12 % / 360 = 3.60 (30/360 counts from the 30th to the 1st). House
  // complete on 15 April: 3,000 released; interest 14 days x 27,000 x 12 % / 360 = 126.00. Cash:
  // 10,000 - 8,000 = 2,000; + 16,200 - 20,000 - 16.20; + 10,800 - 12,000 - 165.60; + 3,000 - 126.
  @Test
  void a_small_house_flows_as_worked_by_hand() {
    var flow =
        CashFlow.of(
            terms("30000", "10000", "0.12", "0.10"),
            List.of(
                paid("2027-01-20", "8000"),
                paid("2027-02-10", "20000"),
                paid("2027-03-10", "12000")),
            BigDecimal.ZERO,
            List.of(
                monthEnd("2027-01-31"),
                monthEnd("2027-02-28"),
                monthEnd("2027-03-31"),
                complete("2027-04-15")),
            LocalDate.of(2027, 4, 15),
            2);
    assertThat(flow.draws())
        .extracting(d -> d.paid().toPlainString())
        .containsExactly("16200.00", "10800.00", "3000.00");
    assertThat(flow.draws())
        .extracting(d -> d.retained().toPlainString())
        .containsExactly("1800.00", "1200.00", "-3000.00");
    assertThat(flow.months())
        .extracting(m -> m.interest().toPlainString())
        .containsExactly("0.00", "16.20", "165.60", "126.00");
    assertThat(flow.months())
        .extracting(m -> m.cash().toPlainString())
        .containsExactly("2000.00", "-1816.20", "-3181.80", "-307.80");
    assertThat(flow.months())
        .extracting(m -> m.borrowed().toPlainString())
        .containsExactly("0.00", "16200.00", "27000.00", "30000.00");
    assertThat(flow.interest().beyond()).isEqualByComparingTo("307.80");
  }

  @Test
  void without_a_loan_cash_pays_and_may_run_short_openly() {
    var flow =
        CashFlow.of(
            terms("0", "100", "0.08", "0.1"),
            List.of(paid("2027-01-20", "80"), paid("2027-03-02", "80")),
            BigDecimal.ZERO,
            List.of(complete("2027-03-02")),
            LocalDate.of(2027, 3, 2),
            2);
    assertThat(flow.draws()).isEmpty();
    assertThat(flow.months())
        .extracting(m -> m.cash().toPlainString())
        .containsExactly("20.00", "20.00", "-60.00");
  }

  @Test
  void what_is_left_of_the_allowance_for_interest_stands_in_the_last_month() {
    var flow =
        CashFlow.of(
            terms("1000", "0", "0.12", "0"),
            List.of(paid("2027-01-01", "1000")),
            n("50.00"),
            List.of(
                new DrawEvent(LocalDate.of(2027, 1, 1), "start", List.of(), false),
                complete("2027-03-01")),
            LocalDate.of(2027, 3, 1),
            2);
    // 10.00 a month for January and February, 30.00 left of 50.00
    assertThat(flow.months())
        .extracting(m -> m.out().toPlainString())
        .containsExactly("1010.00", "10.00", "30.00");
    assertThat(flow.interest().charged()).isEqualByComparingTo("20.00");
    assertThat(flow.interest().ifAdded()).isEqualByComparingTo("20.10");
    assertThat(flow.interestUpTo(LocalDate.of(2027, 2, 1))).isEqualByComparingTo("10.00");
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void sums_meet_and_the_loan_is_never_overdrawn(long seed) {
    var random = new SplittableRandom(seed);
    var payments = new ArrayList<Payment>();
    var start = LocalDate.of(2027, 1, 5);
    var total = BigDecimal.ZERO;
    for (int i = random.nextInt(5, 60); i > 0; i--) {
      var due = start.plusDays(random.nextInt(0, 300));
      var inPlace = due.plusDays(random.nextInt(0, 40));
      var amount = BigDecimal.valueOf(random.nextLong(1, 900_000), 2);
      total = total.add(amount);
      payments.add(new Payment("line/" + i, Stage.SHELL, due, inPlace, amount));
    }
    var allowance = BigDecimal.valueOf(random.nextLong(0, 300_000), 2);
    var loan =
        total
            .multiply(BigDecimal.valueOf(random.nextInt(0, 130), 2))
            .setScale(2, RoundingMode.DOWN);
    var cash =
        total.multiply(BigDecimal.valueOf(random.nextInt(0, 60), 2)).setScale(2, RoundingMode.DOWN);
    var end = start.plusDays(345);
    var events = new ArrayList<DrawEvent>();
    for (int i = 0; i < random.nextInt(1, 12); i++) {
      events.add(new DrawEvent(start.plusDays(random.nextInt(0, 344)), "event", List.of(), false));
    }
    events.add(new DrawEvent(end, "complete", List.of(), true));
    var terms =
        new LoanTerms(
            loan,
            cash,
            n("0.09"),
            DayCount.values()[random.nextInt(3)],
            DrawBasis.MONTH,
            new Retainage(n("0.1"), random.nextBoolean()),
            Optional.empty(),
            Optional.empty());
    var flow = CashFlow.of(terms, payments, allowance, events, end, 2);

    var out = flow.months().stream().map(m -> m.out()).reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(out).isEqualByComparingTo(total.add(allowance));
    var last = flow.months().get(flow.months().size() - 1);
    assertThat(last.cumulativeOut()).isEqualByComparingTo(total.add(allowance));

    var paidIn = flow.draws().stream().map(d -> d.paid()).reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(last.borrowed()).isEqualByComparingTo(paidIn);
    assertThat(paidIn)
        .isEqualByComparingTo(total.add(allowance).subtract(cash).max(BigDecimal.ZERO).min(loan));
    var running = BigDecimal.ZERO;
    for (var d : flow.draws()) {
      running = running.add(d.paid());
      assertThat(running).isLessThanOrEqualTo(loan).isEqualByComparingTo(d.cumulativePaid());
      assertThat(d.paid()).isEqualByComparingTo(d.earned().subtract(d.retained()));
    }
    var charged =
        flow.months().stream().map(m -> m.interest()).reduce(BigDecimal.ZERO, BigDecimal::add);
    var beyond = charged.subtract(allowance).max(BigDecimal.ZERO);
    assertThat(last.cash())
        .isEqualByComparingTo(
            cash.add(paidIn).subtract(total).subtract(allowance).subtract(beyond));
  }

  /**
   * Interest added to the loan is drawn too: with it the loan is never passed, and cash ends so.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void interest_added_to_the_loan_never_takes_it_past_its_amount(long seed) {
    var random = new SplittableRandom(seed);
    var start = LocalDate.of(2027, 1, 5);
    var payments = new ArrayList<Payment>();
    var total = BigDecimal.ZERO;
    for (int i = random.nextInt(5, 40); i > 0; i--) {
      var due = start.plusDays(random.nextInt(0, 300));
      var amount = BigDecimal.valueOf(random.nextLong(1, 900_000), 2);
      total = total.add(amount);
      payments.add(new Payment("line/" + i, Stage.SHELL, due, due, amount));
    }
    var loan =
        total
            .multiply(BigDecimal.valueOf(random.nextInt(20, 101), 2))
            .setScale(2, RoundingMode.DOWN);
    var cash =
        total.multiply(BigDecimal.valueOf(random.nextInt(0, 40), 2)).setScale(2, RoundingMode.DOWN);
    var end = start.plusDays(330);
    var events = new ArrayList<DrawEvent>();
    for (int m = 1; m < 11; m++) events.add(monthEnd(start.plusMonths(m).toString()));
    events.add(complete(end.toString()));
    var terms =
        new LoanTerms(
            loan,
            cash,
            n("0.11"),
            DayCount.values()[random.nextInt(3)],
            DrawBasis.MONTH,
            new Retainage(n("0.1"), false),
            Optional.empty(),
            Optional.empty(),
            InterestPayment.ADDED,
            BigDecimal.ZERO,
            0,
            ContingencyRule.IN_STEP,
            0,
            BigDecimal.ZERO,
            BigDecimal.ZERO);
    var flow = CashFlow.of(terms, payments, BigDecimal.ZERO, events, end, 2);
    var drawn = BigDecimal.ZERO;
    var charged = BigDecimal.ZERO;
    for (var m : flow.months()) {
      drawn = drawn.add(m.drawn());
      charged = charged.add(m.interest());
      assertThat(m.borrowed()).isEqualByComparingTo(drawn).isLessThanOrEqualTo(loan);
    }
    var last = flow.months().get(flow.months().size() - 1);
    assertThat(last.cash()).isEqualByComparingTo(cash.add(drawn).subtract(total).subtract(charged));
  }
}

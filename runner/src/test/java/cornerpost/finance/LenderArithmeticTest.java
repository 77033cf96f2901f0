package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerpost.finance.CostToComplete.LineState;
import cornerpost.scope.Answers;
import cornerpost.scope.DayCount;
import cornerpost.scope.DrawBasis;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of a lender's sums, with invented amounts; the arithmetic is written beside. */
class LenderArithmeticTest {
  private static BigDecimal n(String number) {
    return new BigDecimal(number);
  }

  // Lines of Form RD 1924-18 (rev. 6-97): contract 210,000 + changes 6,300 = 216,300; completed
  // 112,450 + stored 7,550 = 120,000; less 10 % = 12,000; less previous 84,600; due 23,400.
  @Test
  void amount_due_is_in_place_less_retainage_less_previous_payments() {
    var value = n("112450.00").add(n("7550.00"));
    var held = new Retainage(n("0.10"), false).held(value, n("216300"), 2);
    assertThat(held).isEqualByComparingTo("12000.00");
    var request = new PaymentRequest(n("210000").add(n("6300")), value, held, n("84600.00"));
    assertThat(request.due()).isEqualByComparingTo("23400.00");
    assertThat(request.toFinish()).isEqualByComparingTo("108300.00");
    assertThat(n("84600").add(request.due()).add(request.toFinish()))
        .isEqualByComparingTo("216300");
  }

  // A contract of 200,000 with 10 % held; half of it paid at half way, 5 % of what follows
  // (Arizona Administrative Code R7-2-1104).
  @ParameterizedTest(name = "{0} in place: {1} held, {2} without the step")
  @CsvSource({
    "50000, 5000, 5000",
    "99999.99, 10000, 10000",
    "100000, 5000, 10000",
    "150000, 7500, 15000",
    "200000, 10000, 20000"
  })
  void retainage_halves_half_way_where_that_is_agreed(String value, String stepped, String flat) {
    assertThat(new Retainage(n("0.10"), true).held(n(value), n("200000"), 2))
        .isEqualByComparingTo(stepped);
    assertThat(new Retainage(n("0.10"), false).held(n(value), n("200000"), 2))
        .isEqualByComparingTo(flat);
  }

  @Test
  void retainage_beyond_the_whole_is_refused() {
    assertThatThrownBy(() -> new Retainage(n("1.01"), false))
        .isInstanceOf(IllegalArgumentException.class);
  }

  // Loan 242,400 on a total of 303,000 and a value of 315,000: 80.00 % and 76.95 %. Drawn 120,000,
  // so 122,400 undrawn; to complete 104,900 + 4,000 + 14,000 and interest 5,200 = 128,100: short
  // by 5,700. The borrower's 60,600 and the 120,000 drawn are spent on what is in place.
  @Test
  void loan_not_in_balance_is_short_by_what_the_worked_example_says() {
    var stages =
        CostToComplete.stages(
            List.of(
                line(Stage.FOUNDATION, "180600", "104900"),
                line(Stage.PREPARATION, "0", "4000"),
                line(Stage.FOUNDATION, "0", "14000")),
            2);
    var terms =
        new LoanTerms(
            n("242400"),
            n("60600"),
            n("0.08"),
            DayCount.THIRTY_360,
            DrawBasis.MONTH,
            new Retainage(BigDecimal.ZERO, false),
            Optional.of(n("315000")),
            Optional.empty());
    var balance =
        CostToComplete.balance(
            terms, n("120000"), BigDecimal.ZERO, n("5200"), stages, n("303000"), 2);
    assertThat(balance.undrawn()).isEqualByComparingTo("122400");
    assertThat(balance.cash()).isEqualByComparingTo("0");
    assertThat(balance.costToComplete()).isEqualByComparingTo("122900");
    assertThat(balance.surplus()).isEqualByComparingTo("-5700");
    assertThat(balance.loanToCost().orElseThrow()).isEqualByComparingTo("0.8");
    assertThat(balance.loanToValue().orElseThrow().doubleValue()).isBetween(0.76945, 0.76955);
  }

  // The same loan: of 21,000 contingency on 210,000 of building cost 14,000 is left for 104,900 of
  // it
  // still to do. Its share of the budget is 10 %: 10,490. The lender may let 14,000 - 10,490 =
  // 3,510
  // go, and then 5,700 - 3,510 = 2,190 is still to be brought.
  @Test
  void contingency_above_its_share_of_the_work_left_may_be_released_against_the_shortfall() {
    var reserve =
        Contingency.of(
            n("21000"),
            n("14000"),
            n("210000"),
            n("104900"),
            n("14000"),
            Optional.of(n("0.5")),
            n("-5700"),
            2);
    assertThat(reserve.required()).isEqualByComparingTo("10490.00");
    assertThat(reserve.release()).isEqualByComparingTo("3510.00");
    assertThat(reserve.toBring()).isEqualByComparingTo("2190.00");
    // 14,000 / 104,900 = 13.3 %, above the 10 % of the budget
    assertThat(reserve.left().divide(reserve.workLeft(), 3, java.math.RoundingMode.HALF_UP))
        .isEqualByComparingTo("0.133");
    // A third of the reserve is used at half of the work: it burns at two thirds of its pace.
    assertThat(reserve.pace().orElseThrow().doubleValue())
        .isCloseTo(2.0 / 3, org.assertj.core.api.Assertions.within(1e-12));
  }

  @Test
  void nothing_is_released_where_the_reserve_is_short_or_the_loan_in_balance() {
    var thin = reserve("9000", "-5700");
    assertThat(thin.release()).isZero();
    assertThat(thin.toBring()).isEqualByComparingTo("5700.00");
    assertThat(reserve("14000", "100").toBring()).isZero();
  }

  private static Contingency reserve(String left, String surplus) {
    return Contingency.of(
        n("21000"), n(left), n("210000"), n("104900"), n(left), Optional.empty(), n(surplus), 2);
  }

  private static LineState line(Stage stage, String inPlace, String toComplete) {
    return new LineState("line", stage, n(inPlace).add(n(toComplete)), n(inPlace), n(toComplete));
  }

  @Test
  void stages_without_money_are_left_out_and_shares_are_of_what_it_will_cost() {
    var stages =
        CostToComplete.stages(
            List.of(line(Stage.SHELL, "30.00", "10.00"), line(Stage.SHELL, "0.00", "20.00")), 2);
    assertThat(stages).hasSize(1);
    assertThat(stages.get(0).done()).isEqualByComparingTo("0.5");
    assertThat(stages.get(0).budget()).isEqualByComparingTo("60.00");
  }

  @Test
  void no_loan_has_no_ratios() {
    var terms = LoanTerms.of(Answers.none("Loan"), 2);
    var balance =
        CostToComplete.balance(
            terms, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, List.of(), n("100"), 2);
    assertThat(balance.loanToCost()).isEmpty();
    assertThat(balance.loanToValue()).isEmpty();
  }
}

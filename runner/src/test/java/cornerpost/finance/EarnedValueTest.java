package cornerpost.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The worked example of the vignette evm.Rmd of the R package PRA (after Damnjanovic and
 * Reinschmidt, Data Analytics for Engineering and Construction Project Risk Management, Springer
 * 2020): budget 100,000; planned 10, 20, 40, 70, 100 %; at period 3 35 % is in place and 9,000,
 * 18,000 and 36,000 were spent. The results follow from the formulas printed there; earned schedule
 * after W. Lipke.
 */
class EarnedValueTest {
  private static BigDecimal n(String number) {
    return new BigDecimal(number);
  }

  private static final List<BigDecimal> PLANNED =
      Stream.of("10000", "20000", "40000", "70000", "100000").map(BigDecimal::new).toList();

  private static EarnedValue published() {
    var actual = n("9000").add(n("18000")).add(n("36000"));
    var earned = n("100000").multiply(n("0.35"));
    return EarnedValue.of(PLANNED, n("40000"), earned, actual, n("3"));
  }

  @Test
  void published_example_comes_out_to_the_last_number() {
    var v = published();
    assertThat(v.budget()).isEqualByComparingTo("100000");
    assertThat(v.actual()).isEqualByComparingTo("63000");
    assertThat(v.scheduleVariance()).isEqualByComparingTo("-5000");
    assertThat(v.costVariance()).isEqualByComparingTo("-28000");
    assertThat(v.scheduleIndex().orElseThrow()).isEqualByComparingTo("0.875");
    assertThat(v.costIndex().orElseThrow().doubleValue()).isCloseTo(0.5556, within(0.00005));
    assertThat(v.atCompletionAsSoFar().orElseThrow().doubleValue())
        .isCloseTo(180000.00, within(0.005));
    assertThat(v.atCompletionAsBudgeted()).isEqualByComparingTo("128000");
    assertThat(v.atCompletionByBoth().orElseThrow().doubleValue())
        .isCloseTo(196714.29, within(0.005));
    // Estimate to complete 180,000 - 63,000; variance at completion 100,000 - 180,000.
    assertThat(v.toGoAsSoFar().orElseThrow().doubleValue()).isCloseTo(117000.00, within(0.005));
    assertThat(v.varianceAsSoFar().orElseThrow().doubleValue()).isCloseTo(-80000.00, within(0.005));
    assertThat(v.planned()).isEqualByComparingTo("40000");
    assertThat(v.earned()).isEqualByComparingTo("35000");
    assertThat(v.complete().orElseThrow()).isEqualByComparingTo("0.35");
    assertThat(v.toCompleteIndex().orElseThrow().doubleValue()).isCloseTo(1.7568, within(0.00005));
    // To complete at the pace so far is the index so far, always.
    assertThat(v.toCompleteIndex(n("180000")).orElseThrow().doubleValue())
        .isCloseTo(v.costIndex().orElseThrow().doubleValue(), within(1e-12));
  }

  @Test
  void earned_schedule_is_interpolated_between_periods() {
    var v = published();
    assertThat(v.schedule()).isEqualByComparingTo("2.75");
    assertThat(v.timeVariance()).isEqualByComparingTo("-0.25");
    assertThat(v.timeIndex().orElseThrow().doubleValue()).isCloseTo(0.9167, within(0.00005));
    assertThat(v.durationAtCompletion().orElseThrow().doubleValue())
        .isCloseTo(5.4545, within(0.00005));
    assertThat(v.toCompleteTimeIndex().orElseThrow()).isEqualByComparingTo("1.125");
  }

  @Test
  void nothing_done_or_spent_has_no_indices() {
    var v = EarnedValue.of(PLANNED, n("0"), n("0"), n("0"), n("0"));
    assertThat(v.costIndex()).isEmpty();
    assertThat(v.scheduleIndex()).isEmpty();
    assertThat(v.atCompletionAsSoFar()).isEmpty();
    assertThat(v.timeIndex()).isEmpty();
    assertThat(v.schedule()).isEqualByComparingTo("0");
  }

  @Test
  void all_done_is_the_whole_duration_and_a_spent_budget_cannot_be_met() {
    var done = EarnedValue.of(PLANNED, n("100000"), n("100000"), n("100000"), n("6"));
    assertThat(done.schedule()).isEqualByComparingTo("5");
    assertThat(done.toCompleteIndex()).isEmpty();
    // A late job ends at a schedule index of one; earned schedule still says that it is late.
    assertThat(done.scheduleIndex().orElseThrow()).isEqualByComparingTo("1");
    assertThat(done.timeIndex().orElseThrow()).isLessThan(BigDecimal.ONE);
    var overspent = EarnedValue.of(PLANNED, n("70000"), n("60000"), n("110000"), n("4"));
    assertThat(overspent.toCompleteIndex().orElseThrow()).isNegative();
  }
}

package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.Unit;
import cornerpost.plan.OrderRow.Standing;
import cornerpost.price.SupplierGroup;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderRowTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 5, 31);

  private static OrderRow needed(int inDays, int leadDays, Standing standing) {
    var day = MONDAY.plusDays(inDays);
    return new OrderRow(
        SupplierGroup.BOARDS,
        "board",
        "Board",
        Unit.EACH,
        BigDecimal.ONE,
        BigDecimal.ONE,
        BigDecimal.ONE,
        BigDecimal.ZERO,
        day,
        day.minusDays(leadDays + 3),
        leadDays,
        standing,
        "wall-board");
  }

  // Ordered on Monday 31 May with ten days' lead, goods are on site on Thursday 10 June.
  @ParameterizedTest(name = "needed in {0} days: {1}")
  @CsvSource({"9, late: on site Thu 10 Jun 2027 at best", "10, late", "12, late"})
  void a_late_order_says_when_it_can_come_if_that_is_too_late(int inDays, String said) {
    assertThat(needed(inDays, 10, Standing.LATE).said(MONDAY)).isEqualTo(said);
  }

  @Test
  void what_is_ordered_or_reserved_only_says_so() {
    assertThat(needed(2, 10, Standing.ORDERED).said(MONDAY)).isEqualTo("ordered");
    assertThat(needed(2, 10, Standing.RESERVE).said(MONDAY))
        .isEqualTo("reserve: before the permit");
    assertThat(needed(30, 10, Standing.TO_COME).said(MONDAY)).isEmpty();
  }
}

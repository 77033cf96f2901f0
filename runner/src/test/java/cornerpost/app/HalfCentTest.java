package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.Unit;
import cornerpost.office.LibreOffice;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import cornerpost.trace.Places;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.dhatim.fastexcel.Workbook;
import org.junit.jupiter.api.Test;

/** Amounts that fall on half a cent round up in LibreOffice as they do here. */
class HalfCentTest {
  private static final Unit USD = Unit.money("USD");
  private static final Places PLACES =
      new Places() {
        @Override
        public String cell(Leaf leaf) {
          return leaf.key();
        }

        @Override
        public Shown named(String id) {
          throw new IllegalArgumentException(id);
        }
      };

  private record Case(BigDecimal quantity, BigDecimal rate, Figure amount) {}

  private static Case amount(int row, BigDecimal quantity, BigDecimal rate) {
    var q = Figure.choice("A" + row, "quantity", quantity, Unit.SQ_FT);
    var r = Figure.choice("B" + row, "rate", rate, USD.per(Unit.SQ_FT));
    return new Case(quantity, rate, q.times(r).roundedToMinor(2));
  }

  @Test
  void half_a_cent_goes_up_on_both_sides() throws IOException {
    LibreOffice.needed();
    var random = new SplittableRandom(20260301);
    var cases = new ArrayList<Case>();
    // 1.005, 2.675 and 0.285 lie below their half in binary; exact products, so the half is exact
    for (var known : List.of("1.005", "2.675", "0.285", "1.115", "8.345", "1234.565")) {
      cases.add(amount(cases.size() + 1, new BigDecimal(known), BigDecimal.ONE));
    }
    while (cases.size() < 1500) {
      long halfCents = random.nextLong(1, 20_000_000) * 2 + 1; // an odd number of half cents
      var quantity = BigDecimal.valueOf(random.nextInt(1, 8) * 125L, 3); // 0.125 to 0.875
      var rate = BigDecimal.valueOf(halfCents * 5, 3).divide(quantity, 12, RoundingMode.DOWN);
      if (quantity.multiply(rate).compareTo(BigDecimal.valueOf(halfCents * 5, 3)) != 0) continue;
      cases.add(amount(cases.size() + 1, quantity, rate));
    }

    var out = new ByteArrayOutputStream();
    try (var book = new Workbook(out, "Test", "1.0")) {
      var sheet = book.newWorksheet("S");
      for (int i = 0; i < cases.size(); i++) {
        var c = cases.get(i);
        sheet.value(i, 0, c.quantity());
        sheet.value(i, 1, c.rate());
        sheet.formula(i, 2, c.amount().formula(PLACES, USD));
      }
    }
    var recalculated = new Recalculated(LibreOffice.recalculated(out.toByteArray()));
    var rows = recalculated.rows("S");
    for (int i = 0; i < cases.size(); i++) {
      var c = cases.get(i);
      var exact = c.quantity().multiply(c.rate());
      assertThat(c.amount().value())
          .as("%s x %s, rounded here", c.quantity(), c.rate())
          .isEqualByComparingTo(exact.setScale(2, RoundingMode.HALF_UP));
      assertThat(new BigDecimal(rows.get(i).getCell(2).getRawValue()))
          .as("%s x %s, rounded there", c.quantity(), c.rate())
          .isEqualByComparingTo(c.amount().value());
    }
  }
}

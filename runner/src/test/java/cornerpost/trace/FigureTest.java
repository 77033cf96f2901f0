package cornerpost.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitMismatchException;
import cornerpost.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FigureTest {
  private static final Places PLACES =
      new Places() {
        @Override
        public String cell(Leaf leaf) {
          return leaf.key();
        }

        @Override
        public Shown named(String id) {
          return new Shown("N_" + id, Unit.SQ_FT);
        }
      };

  private static Figure entry(String cell, String amount, Unit unit) {
    return Figure.choice(cell, "entry", new BigDecimal(amount), unit);
  }

  @Test
  void a_length_and_a_mass_do_not_add() {
    var length = entry("A1", "1", Unit.M);
    var mass = entry("A2", "1", Unit.KG);
    assertThatThrownBy(() -> length.plus(mass))
        .isInstanceOf(UnitMismatchException.class)
        .hasMessageContaining("length")
        .hasMessageContaining("mass");
    assertThatThrownBy(() -> length.max(mass)).isInstanceOf(UnitMismatchException.class);
    assertThatThrownBy(() -> length.formula(PLACES, Unit.KG))
        .isInstanceOf(UnitMismatchException.class);
  }

  @Test
  void what_stands_behind_a_number_is_named_once() {
    var length = entry("D5", "4", Unit.FT);
    var walls =
        length.times(entry("E5", "3", Unit.FT)).plus(length.times(entry("F5", "2", Unit.FT)));
    assertThat(walls.inWords())
        .isEqualTo("4 ft entry [D5] x 3 ft entry [E5] + 4 ft [D5] x 2 ft entry [F5]");
  }

  @Test
  void a_bare_one_in_a_product_and_a_choice_between_plain_numbers_are_not_spelt_out() {
    var thousands = entry("B5", "40000", Unit.ONE).over(Figure.count(1)).over(Figure.count(1000));
    assertThat(thousands.inWords()).isEqualTo("40000 entry [B5] / 1000");
    assertThat(Figure.count(4).max(Figure.count(0)).inWords()).isEqualTo("4");
    assertThat(Figure.count(1).over(entry("B5", "8", Unit.ONE)).inWords())
        .isEqualTo("1 / 8 entry [B5]");
  }

  @Test
  void feet_times_feet_in_square_feet_needs_no_factor() {
    var area = entry("D5", "4", Unit.FT).times(entry("E5", "3", Unit.FT));
    assertThat(area.in(Unit.SQ_FT)).isEqualByComparingTo("12");
    assertThat(area.formula(PLACES, Unit.SQ_FT)).isEqualTo("D5*E5");
  }

  @Test
  void inches_times_feet_in_square_feet_is_divided_by_twelve() {
    var area = entry("D5", "36", Unit.IN).times(entry("E5", "3", Unit.FT));
    assertThat(area.in(Unit.SQ_FT)).isEqualByComparingTo("9");
    assertThat(area.formula(PLACES, Unit.SQ_FT)).isEqualTo("D5*E5/12");
  }

  @Test
  void a_sum_is_written_in_the_unit_it_is_shown_in() {
    var run =
        entry("B1", "2", Unit.FT).plus(entry("B2", "6", Unit.IN)).minus(entry("B3", "1", Unit.FT));
    assertThat(run.in(Unit.FT)).isEqualByComparingTo("1.5");
    assertThat(run.formula(PLACES, Unit.FT)).isEqualTo("B1+B2/12-B3");
    assertThat(run.times(2).formula(PLACES, Unit.FT)).isEqualTo("(B1+B2/12-B3)*2");
  }

  @Test
  void twelve_sheets_of_exactly_one_board_each_are_twelve() {
    var area = entry("B1", "34.56", Unit.M2);
    var sheets = area.over(entry("B2", "2.88", Unit.M2)).roundedUp();
    assertThat(sheets.value()).isEqualByComparingTo("12");
    assertThat(sheets.formula(PLACES, Unit.ONE)).isEqualTo("ROUNDUP(ROUND(B1/B2,9),0)");
  }

  @Test
  void an_explanation_names_amount_unit_and_cell() {
    var area = entry("Openings!D5", "36", Unit.IN).times(entry("Openings!E5", "48", Unit.IN));
    assertThat(area.inWords()).isEqualTo("36 in entry [Openings!D5] x 48 in entry [Openings!E5]");
  }

  @Test
  void a_named_figure_is_pointed_at_and_not_repeated() {
    var wall = entry("B1", "10", Unit.SQ_FT).named("wall", "wall area", Unit.SQ_FT);
    var paint = wall.times(2);
    assertThat(paint.formula(PLACES, Unit.M2)).isEqualTo("N_wall*2*0.09290304");
    assertThat(paint.inWords()).isEqualTo("10 sq ft wall area [wall] x 2");
    assertThat(paint.names()).containsExactly("wall");
    assertThat(paint.leaves()).isEmpty();
    assertThat(paint.allLeaves()).hasSize(1);
  }

  // By hand: a square foot is 0.09290304 m2, so 30 m2 are 322.917 sq ft; the two bedrooms stay.
  @Test
  void a_count_of_a_rule_stands_in_the_formula_beside_the_change_of_units() {
    var field =
        Figure.of(
                new Leaf(Leaf.Kind.FACT, "C34", "field", new BigDecimal("30"), Unit.M2, "somebody"))
            .times(2);
    assertThat(field.formula(PLACES, Unit.SQ_FT)).isEqualTo("C34*2/0.09290304");
    assertThat(field.formula(PLACES, Unit.M2)).isEqualTo("C34*2");
    assertThat(field.inWords(UnitSystem.US)).isEqualTo("322.92 sq ft field [C34] x 2");
    assertThat(field.inWords(UnitSystem.METRIC)).isEqualTo("30 m2 field [C34] x 2");
  }

  @Test
  void an_empty_cell_with_a_standard_value_counts_once_it_is_filled() {
    var depth = Figure.assumed("B9", "frost depth", new BigDecimal("24"), Unit.IN);
    assertThat(depth.formula(PLACES, Unit.IN)).isEqualTo("IF(ISNUMBER(B9),B9,24)");
  }

  @Test
  void money_rounds_half_up_and_says_so_in_the_formula() {
    var usd = Unit.money("USD");
    var amount = entry("B1", "0.5", Unit.ONE).times(entry("B2", "0.01", usd)).roundedToMinor(2);
    assertThat(amount.value()).isEqualByComparingTo("0.01");
    assertThat(amount.formula(PLACES, usd)).isEqualTo("ROUND(ROUND(B1*B2,8),2)");
  }

  /** 1.04 ^ 0.5 = 1.0198 (escalation of 4 % a year over six months; computed). */
  @Test
  void a_power_gives_the_price_rise_of_half_a_year() {
    var factor = entry("B1", "1.04", Unit.ONE).power(entry("B2", "0.5", Unit.ONE));
    assertThat(factor.value().doubleValue()).isCloseTo(1.0198, within(5e-5));
  }

  /**
   * The law the whole product rests on: for any expression, the formula gives the value. The
   * spreadsheet here is POI's evaluator; the build also asks LibreOffice for whole plans.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void any_expression_evaluates_in_a_spreadsheet_to_its_value(long seed) throws Exception {
    var random = new SplittableRandom(seed);
    try (var book = new XSSFWorkbook()) {
      var sheet = book.createSheet("S");
      var cells = new HashMap<String, Figure>();
      var entries = new ArrayList<Figure>();
      var units = List.of(Unit.FT, Unit.IN, Unit.M, Unit.MM);
      for (int i = 0; i < 12; i++) {
        var amount = BigDecimal.valueOf(random.nextInt(1, 9999), 2);
        var label = "A" + (i + 1);
        sheet.createRow(i).createCell(0).setCellValue(amount.doubleValue());
        var f = entry(label, amount.toPlainString(), units.get(random.nextInt(4)));
        cells.put(label, f);
        entries.add(f);
      }
      for (int i = 0; i < 60; i++) {
        var f = expression(random, entries, 4);
        var shownIn = units.get(random.nextInt(4));
        var cell = sheet.createRow(20 + i).createCell(1);
        cell.setCellFormula(f.formula(PLACES, shownIn));
        var result = book.getCreationHelper().createFormulaEvaluator().evaluate(cell);
        assertThat(result.getCellType()).as(f.inWords()).isEqualTo(CellType.NUMERIC);
        double expected = f.in(shownIn).doubleValue();
        assertThat(result.getNumberValue())
            .as("%s as %s", cell.getCellFormula(), f.inWords())
            .isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
      }
    }
  }

  /** A random expression that is a length. */
  private static Figure expression(SplittableRandom random, List<Figure> entries, int depth) {
    if (depth == 0) return entries.get(random.nextInt(entries.size()));
    var a = expression(random, entries, depth - 1);
    var b = expression(random, entries, depth - 1);
    return switch (random.nextInt(9)) {
      case 0 -> a.plus(b);
      case 1 -> a.minus(b);
      case 2 -> a.max(b);
      case 3 -> a.min(b);
      case 4 -> a.times(b).over(entries.get(random.nextInt(entries.size())));
      case 5 -> a.ifAtLeast(b, a.plus(b), b);
      case 6 -> a.times(a).squareRoot();
      case 7 -> a.over(Figure.constant("1200", Unit.MM)).atLeastZero().roundedUp().times(b);
      default -> a.times(Figure.constant("-0.75", Unit.ONE)).plus(b);
    };
  }

  @Test
  void an_empty_sum_is_nothing() {
    assertThat(Figure.sum(Dimension.AREA, List.of()).isZero()).isTrue();
    assertThat(Map.of("x", Figure.zero(Dimension.MASS)).get("x").dimension())
        .isEqualTo(Dimension.MASS);
  }
}

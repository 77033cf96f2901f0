package cornerpost.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CuttingTest {
  private static final Stock SIX_METRES = new Stock(6000, 3);

  /** The laws of any plan: every piece once, no bar overfull, loss = bar - pieces - kerfs. */
  private static void lawful(Cutting plan, List<Integer> lengths) {
    var cut = plan.bars().stream().flatMap(b -> b.pieces().stream()).sorted().toList();
    assertThat(cut).isEqualTo(IntStream.range(0, lengths.size()).boxed().toList());
    for (var bar : plan.bars()) {
      int pieces = bar.pieces().stream().mapToInt(lengths::get).sum();
      int stock = plan.stock().length();
      assertThat(pieces + (bar.pieces().size() - 1) * plan.stock().kerf())
          .isLessThanOrEqualTo(stock);
      assertThat(bar.left()).isNotNegative().isEqualTo(stock - pieces - bar.sawn());
      assertThat(bar.sawn()).isLessThanOrEqualTo(bar.pieces().size() * plan.stock().kerf());
      if (bar.left() > 0) {
        assertThat(bar.sawn()).isEqualTo(bar.pieces().size() * plan.stock().kerf());
      }
    }
    assertThat(plan.bars().size()).isGreaterThanOrEqualTo(plan.lowerBound());
  }

  @Test
  void no_pieces_need_no_bar() {
    var plan = Cutting.of(SIX_METRES, List.of());
    assertThat(plan.bars()).isEmpty();
    assertThat(plan.lowerBound()).isZero();
  }

  @Test
  void a_piece_as_long_as_the_bar_is_not_sawn() {
    var plan = Cutting.of(SIX_METRES, List.of(6000));
    assertThat(plan.bars()).containsExactly(new Cutting.Bar(List.of(0), 0, 0));
  }

  @Test
  void a_piece_longer_than_the_bar_is_refused() {
    assertThatThrownBy(() -> Cutting.of(SIX_METRES, List.of(100, 6001)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("6001");
    assertThatThrownBy(() -> Cutting.of(SIX_METRES, List.of(0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** By hand: two halves less half a kerf share a bar, two halves do not; 2 x 2998 + 3 = 5999. */
  @ParameterizedTest(name = "two pieces of {0} mm need {1} bars of 6 m with a 3 mm saw")
  @CsvSource({"2998, 1", "2999, 2", "3000, 2"})
  void the_kerf_counts(int length, int bars) {
    assertThat(Cutting.of(SIX_METRES, List.of(length, length)).bars()).hasSize(bars);
  }

  /**
   * Three windows 1 200 x 1 000 framed in 50 mm tube, mitred: 6 of 1 300 and 6 of 1 100 from 6 m
   * bars, 3 mm saw. By hand: (1300 + 3) x 2 + (1100 + 3) x 3 = 5 915 fits 6 003, so two of three
   * bars take 2 + 3 and what is left, 2 of 1 300, a third; all is 14.4 m, so two bars (12 m) never
   * do.
   */
  @Test
  void three_window_frames_come_from_three_bars() {
    var lengths = new ArrayList<>(Collections.nCopies(6, 1300));
    lengths.addAll(Collections.nCopies(6, 1100));
    var plan = Cutting.of(SIX_METRES, lengths);
    lawful(plan, lengths);
    assertThat(plan.bars()).hasSize(3);
    assertThat(plan.lowerBound()).isEqualTo(3);
    assertThat(plan.left()).isEqualTo(3 * 6000 - 14_400 - 12 * 3);
  }

  /**
   * Worked example widely printed with the method of Gilmore and Gomory (from memory; sums checked
   * by hand): rolls of 5 600 mm, thirteen widths, best plan 73 rolls.
   */
  @Test
  void the_paper_mill_of_thirteen_widths_needs_73_rolls() {
    int[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
    int[] wanted = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
    var lengths = new ArrayList<Integer>();
    for (int i = 0; i < widths.length; i++) {
      lengths.addAll(Collections.nCopies(wanted[i], widths[i]));
    }
    var plan = Cutting.of(new Stock(5600, 0), lengths);
    lawful(plan, lengths);
    assertThat(plan.lowerBound()).isEqualTo(73);
    assertThat(plan.bars()).hasSize(73);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
  void a_hundred_random_cases_are_within_one_bar_of_the_bound(long seed) {
    var random = new Random(seed);
    for (int n = 0; n < 100; n++) {
      var lengths = randomPieces(random, 1 + random.nextInt(30), 1 + random.nextInt(12));
      var plan = Cutting.of(new Stock(6000, random.nextInt(6)), lengths);
      lawful(plan, lengths);
      assertThat(plan.bars().size())
          .as("seed %d case %d: %s", seed, n, lengths)
          .isLessThanOrEqualTo(plan.lowerBound() + 1);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8})
  void small_cases_equal_the_optimum_of_an_exact_solver(long seed) {
    var random = new Random(seed);
    for (int n = 0; n < 12; n++) {
      var lengths = randomPieces(random, 1 + random.nextInt(6), 2);
      var stock = new Stock(6000, 3);
      var plan = Cutting.of(stock, lengths);
      lawful(plan, lengths);
      assertThat(plan.bars().size())
          .as("seed %d case %d: %s", seed, n, lengths)
          .isEqualTo(optimum(stock, lengths));
      assertThat(plan.lowerBound()).isLessThanOrEqualTo(plan.bars().size());
    }
  }

  @Test
  void the_same_pieces_give_the_same_plan() {
    var lengths = randomPieces(new Random(7), 25, 9);
    assertThat(Cutting.of(SIX_METRES, lengths)).isEqualTo(Cutting.of(SIX_METRES, lengths));
  }

  private static List<Integer> randomPieces(Random random, int kinds, int most) {
    var lengths = new ArrayList<Integer>();
    int longest = 1500 + random.nextInt(4300);
    for (int k = 0; k < kinds; k++) {
      int length = 200 + random.nextInt(longest);
      lengths.addAll(Collections.nCopies(1 + random.nextInt(most), length));
    }
    Collections.shuffle(lengths, random);
    return lengths;
  }

  /** Fewest bars by constraint programming: the fewest for which a packing exists. */
  private static int optimum(Stock stock, List<Integer> lengths) {
    for (int bars = 1; ; bars++) {
      var model = new Model();
      var bin = model.intVarArray("bar", lengths.size(), 0, bars - 1);
      var sizes = lengths.stream().mapToInt(l -> l + stock.kerf()).toArray();
      var load = model.intVarArray("load", bars, 0, stock.length() + stock.kerf());
      model.binPacking(bin, sizes, load, 0).post();
      if (model.getSolver().solve()) return bars;
    }
  }
}

package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.price.CostLine;
import cornerpost.price.Estimator;
import cornerpost.price.PriceBookReader;
import cornerpost.scope.ProjectQuestions;
import cornerpost.takeoff.Takeoff;
import cornerpost.trace.Leaf;
import cornerpost.workbook.WorkbookReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** At least nine tenths of the money is reached by live formulas from choices and prices. */
class LiveShareTest {
  static List<String> examples() {
    return Runs.EXAMPLE_NAMES;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void only_the_price_rise_rests_on_a_worked_out_number(String example) throws Exception {
    var facts = Facts.supplied();
    var file = Runs.example(example);
    var scope =
        WorkbookReader.read(Files.readAllBytes(file), "x.xlsx", facts).scope().orElseThrow();
    var name = Optional.of(scope.project().text(ProjectQuestions.PRICE_BOOK));
    var book =
        PriceBookFolder.find(Optional.empty(), name, Optional.empty(), file, Runs.HOME)
            .orElseThrow();
    var prices = PriceBookReader.read(book.name(), book.files()).book();
    var estimate =
        Estimator.estimate(scope, Takeoff.measure(scope, facts), prices, facts)
            .estimate()
            .orElseThrow();

    var notLive = BigDecimal.ZERO;
    for (var line : estimate.lines()) {
      boolean rests =
          line.amount().allLeaves().stream().anyMatch(l -> l.kind() == Leaf.Kind.WORKED);
      boolean onTop = line.kind() == CostLine.Kind.TAX || line.kind() == CostLine.Kind.CONTINGENCY;
      if (onTop) continue; // shares of the lines above, price rise among them: counted there
      assertThat(rests).as(line.id()).isEqualTo(line.kind() == CostLine.Kind.ESCALATION);
      if (rests) notLive = notLive.add(line.money().abs());
    }
    var share = notLive.divide(estimate.total(), 4, RoundingMode.HALF_UP);
    assertThat(share).isLessThan(new BigDecimal("0.1"));
  }
}

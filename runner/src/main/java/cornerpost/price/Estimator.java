package cornerpost.price;

import cornerpost.fact.Facts;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Resource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Prices the quantities: the costed bill. {@code docs/method-estimate.md} says how each amount
 * comes about.
 */
public final class Estimator {
  private Estimator() {}

  /**
   * @param estimate empty if there is any fault
   * @param problems faults: all that the price book lacks, quotes that contradict each other;
   *     remarks: quotes that ended or are for no line
   */
  public record Result(Optional<Estimate> estimate, List<Problem> problems) {
    public Result {
      problems = List.copyOf(problems);
    }
  }

  /**
   * @param book may be empty where nothing is measured: the currency is then USD
   * @param facts names the times at which stages are usually paid for
   */
  public static Result estimate(
      Scope scope, List<Line> lines, Optional<PriceBook> book, Facts facts) {
    var costing = new Costing(scope, book, facts);
    var lacking = book.map(b -> Needs.missing(scope, lines, b)).orElse(List.of());
    costing.problems.addAll(lacking);
    if (faulty(lacking)) return new Result(Optional.empty(), costing.problems);
    if (book.isEmpty() && lines.stream().anyMatch(l -> !l.resources().isEmpty())) {
      costing.problems.add(
          Costing.fault(
              scope.project().cell(ProjectQuestions.PRICE_BOOK),
              "no price book",
              "the folder of a price book: nothing can be priced without one"));
      return new Result(Optional.empty(), costing.problems);
    }

    book.ifPresent(b -> measured(costing, b, lines));
    new OwnLines(costing).add();
    QuoteBook.reportStray(
        scope.quotes(),
        costing.lines.stream()
            .filter(l -> l.kind() != CostLine.Kind.OWN_LABOUR && l.kind() != CostLine.Kind.INTEREST)
            .map(CostLine::id)
            .collect(Collectors.toSet()),
        costing.problems);
    if (faulty(costing.problems)) return new Result(Optional.empty(), costing.problems);
    requireOneEach(costing.lines);

    var all = new ArrayList<CostLine>();
    var sums = new StageSums(costing);
    for (var stage : Stage.values()) {
      all.addAll(sums.with(stage, costing.lines.stream().filter(l -> l.stage() == stage).toList()));
    }
    var unpriced = lines.stream().filter(l -> l.resources().isEmpty()).map(Line::id).toList();
    return new Result(
        Optional.of(new Estimate(costing.currency, all, unpriced, costing.hours)),
        costing.problems);
  }

  private static boolean faulty(List<Problem> problems) {
    return problems.stream().anyMatch(p -> p.severity() == Problem.Severity.FAULT);
  }

  private static void measured(Costing costing, PriceBook book, List<Line> lines) {
    var bought = new BoughtLines(costing, book, lines);
    var labour = new LabourLines(costing, book);
    for (var line : lines) {
      for (var r : line.resources()) {
        if (r instanceof Resource.Buy b) bought.add(line, b);
        else if (r instanceof Resource.Labour l) labour.add(line, l);
      }
    }
  }

  /** Quotes and progress are tied to ids: two lines of one id would share them. */
  private static void requireOneEach(List<CostLine> lines) {
    var seen = new HashSet<String>();
    for (var l : lines) {
      if (!seen.add(l.id())) throw new IllegalStateException("Two cost lines '" + l.id() + "'");
    }
  }
}

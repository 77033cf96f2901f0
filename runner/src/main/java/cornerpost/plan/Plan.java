package cornerpost.plan;

import cornerpost.check.Check;
import cornerpost.fact.Facts;
import cornerpost.finance.Finance;
import cornerpost.measure.NumberStyle;
import cornerpost.price.Estimate;
import cornerpost.price.PriceBook;
import cornerpost.risk.RiskResult;
import cornerpost.scope.Problem;
import cornerpost.scope.Scope;
import cornerpost.takeoff.Line;
import cornerpost.work.WorkPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Everything a run found out. What writes it down calculates nothing.
 *
 * @param book the price book; empty where only own tasks are planned and none was named
 * @param lines measured quantities, in the order of the build
 * @param cutting how bars are sawn, by item
 * @param statusDate the day the plan speaks from
 * @param problems remarks that go with the plan; faults stop the run before this
 * @param fingerprint first twelve hexadecimal digits of the SHA-256 of workbook, price book and
 *     options: two plans with the same one come from the same input
 * @param replanning against the kept plan, under delays, and in the weeks to come
 */
public record Plan(
    Scope scope,
    Facts facts,
    Optional<PriceBook> book,
    List<Line> lines,
    Estimate estimate,
    WorkPlan work,
    Programme programme,
    List<OrderRow> orders,
    List<CuttingPlan> cutting,
    RiskResult risk,
    Finance finance,
    List<Check> checks,
    List<Problem> problems,
    LocalDate statusDate,
    String fingerprint,
    Replanning replanning) {

  /** Where nothing is late, kept or ahead. */
  public Plan(
      Scope scope,
      Facts facts,
      Optional<PriceBook> book,
      List<Line> lines,
      Estimate estimate,
      WorkPlan work,
      Programme programme,
      List<OrderRow> orders,
      List<CuttingPlan> cutting,
      RiskResult risk,
      Finance finance,
      List<Check> checks,
      List<Problem> problems,
      LocalDate statusDate,
      String fingerprint) {
    this(
        scope,
        facts,
        book,
        lines,
        estimate,
        work,
        programme,
        orders,
        cutting,
        risk,
        finance,
        checks,
        problems,
        statusDate,
        fingerprint,
        Replanning.NONE);
  }

  /** How the region writes numbers. */
  public NumberStyle numbers() {
    return book.map(b -> b.region().numbers()).orElse(NumberStyle.PLAIN);
  }

  public Plan {
    lines = List.copyOf(lines);
    orders = List.copyOf(orders);
    cutting = List.copyOf(cutting);
    checks = List.copyOf(checks);
    problems = List.copyOf(problems);
  }

  /** The floor, the cost of each unit of it, and shares of the total. */
  public KeyFigures keyFigures() {
    return KeyFigures.of(this);
  }

  /** The same plan with every remark of the run: those of reading and of the price book too. */
  public Plan withProblems(List<Problem> all) {
    return new Plan(
        scope,
        facts,
        book,
        lines,
        estimate,
        work,
        programme,
        orders,
        cutting,
        risk,
        finance,
        checks,
        all,
        statusDate,
        fingerprint,
        replanning);
  }
}

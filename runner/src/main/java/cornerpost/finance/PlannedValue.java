package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.measure.Money;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The plan that earned value is measured against: one that was kept, or the one before any
 * progress.
 *
 * @param baseline name of the kept plan; empty where none was kept
 * @param ends last day of each period, calendar months from the planned start
 * @param parts by period, by stage of {@code stages}: share of the stage planned by its end
 * @param now the same on the status date
 * @param time gone on the status date, in periods
 */
public record PlannedValue(
    Optional<String> baseline,
    List<Stage> stages,
    List<LocalDate> ends,
    List<List<BigDecimal>> parts,
    List<BigDecimal> now,
    BigDecimal time,
    List<BigDecimal> budgets,
    List<BigDecimal> values,
    BigDecimal valueNow) {

  /** With the budgets of its stages, the amounts. */
  static PlannedValue of(Parts p, List<Row> rows, int decimals) {
    var budgets =
        p.stages().stream()
            .map(
                s ->
                    Outlook.sum(
                        rows.stream()
                            .filter(r -> r.line().treatment().earns())
                            .filter(r -> r.line().stage().equals(Optional.of(s)))
                            .toList(),
                        Row::revised))
            .toList();
    var values = p.parts().stream().map(x -> value(budgets, x, decimals)).toList();
    return new PlannedValue(
        p.baseline(),
        p.stages(),
        p.ends(),
        p.parts(),
        p.now(),
        p.time(),
        budgets,
        values,
        value(budgets, p.now(), decimals));
  }

  private static BigDecimal value(List<BigDecimal> budgets, List<BigDecimal> parts, int decimals) {
    var sum = BigDecimal.ZERO.setScale(decimals);
    for (int i = 0; i < budgets.size(); i++) {
      sum = sum.add(Money.halfUp(budgets.get(i).multiply(parts.get(i)), decimals));
    }
    return sum;
  }

  /** The dated part of a planned value. */
  public record Parts(
      Optional<String> baseline,
      List<Stage> stages,
      List<LocalDate> ends,
      List<List<BigDecimal>> parts,
      List<BigDecimal> now,
      BigDecimal time) {}
}

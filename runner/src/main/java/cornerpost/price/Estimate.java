package cornerpost.price;

import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The costed bill.
 *
 * @param lines in stage order; within a stage measured lines first, then price rise, tax and
 *     contingency
 * @param unpriced ids of quantities that ask for nothing: measurements that others build on
 * @param hours the labour in it, by cost line: what durations are made of
 */
public record Estimate(
    Currency currency, List<CostLine> lines, List<String> unpriced, List<TaskHours> hours) {
  public Estimate {
    lines = List.copyOf(lines);
    unpriced = List.copyOf(unpriced);
    hours = List.copyOf(hours);
  }

  /** One without labour. */
  public Estimate(Currency currency, List<CostLine> lines, List<String> unpriced) {
    this(currency, lines, unpriced, List.of());
  }

  private BigDecimal sum(java.util.function.Predicate<CostLine> which) {
    return lines.stream()
        .filter(which)
        .map(CostLine::money)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Materials, plant, services and labour that stay in the house. */
  public BigDecimal direct() {
    return sum(l -> l.kind().direct());
  }

  /** Design, permits, hire by the month, interest, rent, price rise. */
  public BigDecimal indirect() {
    return sum(l -> !l.kind().direct() && l.kind().base());
  }

  public BigDecimal contingency() {
    return sum(l -> l.kind() == CostLine.Kind.CONTINGENCY);
  }

  public BigDecimal tax() {
    return sum(l -> l.kind() == CostLine.Kind.TAX);
  }

  /** Everything; the sum of the rounded lines. */
  public BigDecimal total() {
    return sum(l -> true);
  }

  public Map<Stage, BigDecimal> byStage() {
    var map = new EnumMap<Stage, BigDecimal>(Stage.class);
    for (var s : Stage.values()) map.put(s, sum(l -> l.stage() == s));
    return map;
  }

  /** By whose work it is for; what has no line is left out. */
  public Map<PaidFor, BigDecimal> byWork() {
    var map = new EnumMap<PaidFor, BigDecimal>(PaidFor.class);
    for (var l : lines) map.merge(l.paidFor(), l.money(), BigDecimal::add);
    return map;
  }

  /** By what is paid for; kinds without a line are left out. */
  public Map<CostLine.Kind, BigDecimal> byKind() {
    var map = new EnumMap<CostLine.Kind, BigDecimal>(CostLine.Kind.class);
    for (var l : lines) map.merge(l.kind(), l.money(), BigDecimal::add);
    return map;
  }
}

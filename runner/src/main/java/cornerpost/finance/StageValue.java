package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A stage on the schedule of values.
 *
 * @param original scheduled value; {@code revised} with approved changes
 * @param earned work in place at scheduled value
 * @param ahead drawn above what is in place and stored
 * @param toFinish revised less in place and stored
 */
public record StageValue(
    Stage stage,
    BigDecimal original,
    BigDecimal changes,
    BigDecimal revised,
    BigDecimal earned,
    BigDecimal stored,
    BigDecimal drawn,
    BigDecimal ahead,
    BigDecimal toFinish) {
  /** By stage; stages without money are left out. */
  static List<StageValue> all(List<Row> rows, int decimals) {
    var stages = new ArrayList<StageValue>();
    for (var stage : Arrays.asList(Stage.values())) {
      var of = rows.stream().filter(r -> r.line().stage().equals(Optional.of(stage))).toList();
      if (of.isEmpty()) continue;
      var revised = Outlook.sum(of, Row::revised);
      var earned = Outlook.sum(of, Row::earned);
      var stored = Outlook.sum(of, r -> r.entered().stored());
      var drawn = Outlook.sum(of, r -> r.entered().drawn());
      stages.add(
          new StageValue(
              stage,
              Outlook.sum(of, Row::original).setScale(decimals),
              Outlook.sum(of, r -> r.entered().changes()).setScale(decimals),
              revised.setScale(decimals),
              earned.setScale(decimals),
              stored.setScale(decimals),
              drawn.setScale(decimals),
              drawn.subtract(earned).subtract(stored).max(BigDecimal.ZERO).setScale(decimals),
              revised.subtract(earned).subtract(stored).setScale(decimals)));
    }
    return stages;
  }

  /** In place and stored. */
  public BigDecimal there() {
    return earned.add(stored);
  }

  /** In place and stored over the revised value; nothing of nothing. */
  public BigDecimal share() {
    return share(there(), revised);
  }

  /** The same of all stages. */
  public static BigDecimal share(List<StageValue> stages) {
    return share(sum(stages, StageValue::there), sum(stages, StageValue::revised));
  }

  /** A part of all stages, added up. */
  public static BigDecimal sum(List<StageValue> stages, Function<StageValue, BigDecimal> part) {
    return stages.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static BigDecimal share(BigDecimal part, BigDecimal whole) {
    return Shares.over(part, whole).orElse(BigDecimal.ZERO);
  }
}

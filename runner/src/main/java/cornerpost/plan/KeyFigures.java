package cornerpost.plan;

import cornerpost.finance.Shares;
import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What people compare houses by: the floor, what each unit of it costs, and each part's share of
 * the total.
 *
 * @param floor inside the steel of all boxes; empty without boxes
 * @param areaUnit square metre or square foot, as the workbook has it
 * @param costPerArea the total over the floor
 * @param total of the cost plan
 */
public record KeyFigures(
    Optional<Figure> floor, Unit areaUnit, Optional<BigDecimal> costPerArea, BigDecimal total) {

  static KeyFigures of(Plan plan) {
    var unit = plan.scope().units().choose(Unit.M2, Unit.SQ_FT);
    var total = plan.estimate().total();
    var boxes = plan.scope().boxes();
    Optional<Figure> floor =
        boxes.isEmpty()
            ? Optional.empty()
            : Optional.of(
                Figure.sum(
                    Dimension.AREA,
                    boxes.stream()
                        .map(
                            b ->
                                b.fact(plan.facts(), "inside-length")
                                    .times(b.fact(plan.facts(), "inside-width")))
                        .toList()));
    return new KeyFigures(floor, unit, floor.flatMap(f -> Shares.over(total, f.in(unit))), total);
  }

  /** An amount over the total; nothing of nothing. */
  public BigDecimal share(BigDecimal amount) {
    return Shares.over(amount, total).orElse(BigDecimal.ZERO);
  }
}

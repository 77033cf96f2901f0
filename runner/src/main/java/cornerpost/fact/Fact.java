package cornerpost.fact;

import static java.util.Objects.requireNonNull;

import cornerpost.measure.Unit;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.math.BigDecimal;

/**
 * One constant with its source.
 *
 * @param id dotted, from the general to the special: {@code box.40hc.length}
 * @param certainty how sure the value is: {@code confirmed}, {@code computed}, {@code from memory},
 *     {@code common practice}
 */
public record Fact(
    String id, String name, BigDecimal value, Unit unit, String source, String certainty) {
  public Fact {
    requireNonNull(id, "id");
    requireNonNull(unit, "unit");
    if (source.isBlank()) throw new IllegalArgumentException("Fact '" + id + "' has no source");
  }

  public Figure figure() {
    return Figure.of(new Leaf(Leaf.Kind.FACT, id, name, value, unit, source));
  }
}

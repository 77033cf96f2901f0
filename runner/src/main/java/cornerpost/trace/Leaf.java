package cornerpost.trace;

import static java.util.Objects.requireNonNull;

import cornerpost.measure.Unit;
import java.math.BigDecimal;

/**
 * A number that was not calculated from others.
 *
 * @param kind where it comes from
 * @param key what finds its cell: the cell label of a choice ({@code Openings!D5}), the code of a
 *     price, the id of a fact, the id of a worked-out number
 * @param name what it is, in plain words
 * @param amount the amount in {@code unit}
 * @param source who says so: empty for a choice, which is the owner's
 */
public record Leaf(
    Kind kind, String key, String name, BigDecimal amount, Unit unit, String source) {

  // Spelled out, as a run of a second or two pays for linking what a record is given.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Leaf l
            && kind == l.kind
            && key.equals(l.key)
            && name.equals(l.name)
            && amount.equals(l.amount)
            && unit.equals(l.unit)
            && source.equals(l.source);
  }

  @Override
  public int hashCode() {
    return (kind.ordinal() * 31 + key.hashCode()) * 31 + name.hashCode();
  }

  /** The four kinds of leaf. */
  public enum Kind {
    /** An entry in a cell of the owner's workbook. */
    CHOICE("choice"),
    /** What stands in for a cell that the owner left empty; typing there replaces it. */
    ASSUMED("assumed"),
    /** A row of the price book. */
    PRICE("price book"),
    /** A published fact or a stated default, with its source. */
    FACT("fact"),
    /** A number that only an algorithm can give; it changes with a new run, not in the sheet. */
    WORKED("worked out");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }

  public Leaf {
    requireNonNull(kind, "kind");
    requireNonNull(key, "key");
    requireNonNull(name, "name");
    requireNonNull(unit, "unit");
    requireNonNull(source, "source");
    amount = amount.stripTrailingZeros(); // a record compares BigDecimal by scale
  }
}

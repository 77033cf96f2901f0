package cornerpost.trace;

import cornerpost.measure.Unit;
import java.util.Optional;

/** Where the leaves of a figure stand in the workbook that is being written. */
public interface Places {
  /**
   * The reference of the cell that holds a leaf, ready to stand in a formula: {@code
   * 'Openings'!$D$5}. The cell holds the leaf's amount in the leaf's own unit.
   */
  String cell(Leaf leaf);

  /** The cell of a named figure and the unit it is shown in there. */
  Shown named(String id);

  /** A formula for a total over many rows, where the sheet has a shorter way than adding them. */
  default Optional<String> total(String key) {
    return Optional.empty();
  }

  /** A cell reference and the unit of the amount in it. */
  record Shown(String cell, Unit unit) {}
}

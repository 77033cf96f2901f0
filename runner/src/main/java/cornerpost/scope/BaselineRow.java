package cornerpost.scope;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A row of a plan that was kept to compare later ones with.
 *
 * @param baseline its name, the same in all rows of one plan
 * @param keptOn status date of the run that kept it
 * @param id of a task; {@code stage/} and the stage's label; or {@code total}
 * @param name as people call it
 * @param start first day, {@code finish} the last one; a stage has those of its tasks
 * @param amount in the plan's currency: what falls due with the task; all of a stage; all of all
 */
public record BaselineRow(
    String baseline,
    LocalDate keptOn,
    String id,
    String name,
    Optional<LocalDate> start,
    Optional<LocalDate> finish,
    BigDecimal amount) {
  /** Id of the row of the whole. */
  public static final String TOTAL = "total";

  /** A stage's id is this and its label. */
  public static final String STAGE = "stage/";

  public BaselineRow {
    requireNonNull(baseline, "baseline");
    requireNonNull(keptOn, "keptOn");
    requireNonNull(id, "id");
    // One form for what was worked out and what was read back from a cell.
    amount = amount.stripTrailingZeros();
    if (amount.scale() < 0) amount = amount.setScale(0);
  }
}

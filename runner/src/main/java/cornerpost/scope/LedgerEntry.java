package cornerpost.scope;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A row of sheet Cost ledger: money that moved for a line of the cost plan, or what was agreed for
 * it. Rows of the same line add up, so that each invoice may have its own.
 *
 * @param line id of the cost line
 * @param originalBudget what the line was budgeted at when the loan was made
 * @param originalQuantity of that budget, in the unit of the line
 * @param changes approved since, up or down
 * @param committed by order or contract
 * @param invoiced so far, {@code paid} of it and {@code retained} of it
 * @param inPlace share of the work in place, 0 to 1
 * @param stored materials on site, not built in yet
 * @param drawn of the loan for this line
 * @param cell the cell of the line's id
 */
public record LedgerEntry(
    String line,
    Optional<BigDecimal> originalBudget,
    Optional<BigDecimal> originalQuantity,
    BigDecimal changes,
    BigDecimal committed,
    BigDecimal invoiced,
    BigDecimal paid,
    BigDecimal retained,
    Optional<BigDecimal> inPlace,
    BigDecimal stored,
    BigDecimal drawn,
    String cell) {}

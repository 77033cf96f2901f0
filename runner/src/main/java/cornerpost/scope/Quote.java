package cornerpost.scope;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A supplier's price for a line of the cost plan; it replaces the price book's where it is used.
 *
 * @param line id of the cost line
 * @param amount in the currency of the price book, before tax
 * @param cell the cell of the amount
 */
public record Quote(
    String line,
    String supplier,
    QuoteFor quoteFor,
    BigDecimal amount,
    Optional<LocalDate> date,
    Optional<LocalDate> validUntil,
    boolean used,
    String cell) {}

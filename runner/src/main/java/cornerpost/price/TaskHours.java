package cornerpost.price;

import cornerpost.scope.Party;
import cornerpost.scope.Trade;
import cornerpost.takeoff.BuildTask;
import cornerpost.trace.Figure;
import java.math.BigDecimal;

/**
 * Hours of one trade at one task, of one cost line.
 *
 * @param party {@code HIRED} or {@code OWNER}; mixed work is two of these
 * @param hours working hours of all hands together, the owner's time factor included
 * @param low the same by the low hours of the price book, {@code high} by the high ones
 */
public record TaskHours(
    String costLine,
    BuildTask task,
    Trade trade,
    Party party,
    Figure hours,
    BigDecimal low,
    BigDecimal high) {}

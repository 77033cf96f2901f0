package cornerpost.price;

import cornerpost.scope.Trade;
import java.math.BigDecimal;

/**
 * What an hour of a hired person of a trade costs, before tax.
 *
 * @param usualCrew people who usually come
 */
public record LabourRate(
    Trade trade,
    BigDecimal low,
    BigDecimal likely,
    BigDecimal high,
    int usualCrew,
    boolean taxed,
    String source) {}

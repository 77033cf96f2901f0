package cornerpost.price;

import cornerpost.measure.Unit;
import java.math.BigDecimal;

/**
 * Hours of a practised hand for one unit of an activity.
 *
 * @param per the unit the hours are for
 */
public record HoursPerUnit(
    String activity,
    String description,
    Unit per,
    BigDecimal low,
    BigDecimal likely,
    BigDecimal high,
    String source) {}

package cornerpost.plan;

import cornerpost.measure.Unit;
import cornerpost.price.SupplierGroup;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A row of the buying list: one item, for all the lines that use it.
 *
 * @param net what the work holds, in the unit it is sold by
 * @param buy what is bought: with waste, in whole ones where only those are sold
 * @param roundingCost what buying whole ones costs over the bare need with waste, before tax
 * @param neededOn the first planned day of the tasks that need it
 * @param orderBy the day to order: needed-on less lead time and margin
 * @param firstTask id of the first task that needs it; empty where none does
 * @param late whether that day is before the status date and nothing is recorded as ordered
 */
public record OrderRow(
    SupplierGroup group,
    String item,
    String description,
    Unit unit,
    BigDecimal net,
    BigDecimal buy,
    BigDecimal amount,
    BigDecimal roundingCost,
    LocalDate neededOn,
    LocalDate orderBy,
    int leadDays,
    boolean late,
    String firstTask) {}

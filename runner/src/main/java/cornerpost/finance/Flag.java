package cornerpost.finance;

import java.math.BigDecimal;

/**
 * A sign, raised or not.
 *
 * @param figure the amount or the number it is raised by
 * @param money whether the figure is an amount
 */
public record Flag(Sign sign, boolean raised, BigDecimal figure, boolean money) {}

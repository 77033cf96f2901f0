package cornerpost.scope;

import java.math.BigDecimal;

/**
 * A link the owner adds, between own tasks or generated ones; {@code lag} may be negative.
 *
 * @param cell where {@code before} is entered; {@code afterCell} likewise
 */
public record OwnLink(
    String before,
    String after,
    LinkRelation relation,
    BigDecimal lag,
    DurationUnit lagUnit,
    String cell,
    String afterCell) {}

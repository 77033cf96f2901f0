package cornerpost.scope;

import java.math.BigDecimal;

/** A link the owner adds, between own tasks or generated ones; {@code lag} may be negative. */
public record OwnLink(
    String before,
    String after,
    LinkRelation relation,
    BigDecimal lag,
    DurationUnit lagUnit,
    String cell) {}

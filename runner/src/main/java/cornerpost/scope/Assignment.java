package cornerpost.scope;

import cornerpost.trace.Figure;
import java.util.Optional;

/**
 * Who does a trade's work.
 *
 * @param ownerShare the owner's share of the hours, 0 to 1, as a figure: one where the owner does
 *     it all, nothing where it is hired
 * @param people in the crew, where the owner says so
 * @param cell where it is entered
 */
public record Assignment(
    Trade trade, Party party, Figure ownerShare, Optional<Figure> people, String cell) {}

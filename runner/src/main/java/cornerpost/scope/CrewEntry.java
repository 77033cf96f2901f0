package cornerpost.scope;

import cornerpost.trace.Figure;
import java.util.Optional;

/**
 * A crew, with how many of it there are.
 *
 * @param rate money for an hour of one of them
 */
public record CrewEntry(
    String name, int available, Optional<String> calendar, Optional<Figure> rate, String cell) {}

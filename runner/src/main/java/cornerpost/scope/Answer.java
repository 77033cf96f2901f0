package cornerpost.scope;

import static java.util.Objects.requireNonNull;

/**
 * What a cell holds, or what is assumed for it.
 *
 * @param cell the cell's label, such as {@code Openings!D5}
 * @param value a {@link cornerpost.trace.Figure}, {@link Labelled}, {@link Boolean}, {@link
 *     java.time.LocalDate} or {@link String}, by the kind of the question
 * @param assumed whether the cell is empty and the standard value stands in
 */
public record Answer(String cell, Object value, boolean assumed) {
  public Answer {
    requireNonNull(cell, "cell");
    requireNonNull(value, "value");
  }
}

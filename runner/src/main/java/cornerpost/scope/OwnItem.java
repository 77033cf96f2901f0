package cornerpost.scope;

import cornerpost.trace.Figure;

/**
 * A line the owner adds to the bill.
 *
 * @param quantity a plain number; {@code unit} names what is counted
 * @param rate money for each unit, before tax
 */
public record OwnItem(
    String id,
    Stage stage,
    String description,
    Figure quantity,
    String unit,
    Figure rate,
    Party party,
    boolean taxed,
    String cell) {}

package cornerpost.scope;

/**
 * A delay of a task or a milestone.
 *
 * @param event id or name of the task
 * @param days calendar days by which it comes later
 */
public record DelayEntry(String event, int days, String cause, String borneBy, String cell) {}

package cornerpost.schedule;

import java.util.List;

/**
 * Something about a network that a careful planner would look at: what, which items, and the
 * published measure.
 *
 * @param check short name of the check, one of {@link NetworkHealth}
 * @param severity how serious
 * @param message what was found, in words
 * @param items ids of the tasks, or {@code before -> after} of the links, that it concerns
 * @param found share of items (0 to 1), or the figure the check measures
 * @param source where the check is published
 */
public record Finding(
    String check,
    Severity severity,
    String message,
    List<String> items,
    double found,
    String source) {
  /** How serious a finding is. */
  public enum Severity {
    /** The dates cannot be relied on. */
    ERROR,
    /** Above the published measure, or against common practice: look at the items. */
    WARNING,
    /** Worth knowing. */
    NOTE
  }

  public Finding {
    items = List.copyOf(items);
  }
}

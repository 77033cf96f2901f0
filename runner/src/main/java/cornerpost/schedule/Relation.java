package cornerpost.schedule;

import java.util.Optional;

/**
 * What of the task after waits for what of the task before; the four relations of the precedence
 * diagram.
 *
 * <p>A lag is added to the moment waited for; a negative one lets the task after begin or end that
 * much sooner. A task is never split: a relation that holds its finish holds its start with it.
 *
 * <p>Relations that hold a start are met in real time. Relations that hold a finish look at the
 * last working time before the moment waited for, so that "Monday 08:00" and "Friday 16:00" are one
 * moment to a weekday calendar.
 *
 * <p>Source: C. Hendrickson and T. Au, "Project Management for Construction", chapter 10, tables
 * 10-7 and 10-9.
 */
public enum Relation {
  /** The task after starts when the task before has finished. */
  FINISH_TO_START("finish-to-start", false, false),
  /** The task after starts when the task before has started. */
  START_TO_START("start-to-start", true, false),
  /** The task after finishes when the task before has finished. */
  FINISH_TO_FINISH("finish-to-finish", false, true),
  /** The task after finishes when the task before has started. */
  START_TO_FINISH("start-to-finish", true, true);

  private final String label;
  private final boolean fromStart;
  private final boolean toFinish;

  Relation(String label, boolean fromStart, boolean toFinish) {
    this.label = label;
    this.fromStart = fromStart;
    this.toFinish = toFinish;
  }

  /** The plain words, such as {@code finish-to-start}; {@link #parse} reads them. */
  public String label() {
    return label;
  }

  /**
   * Reads the plain words, in any case and with spaces around; empty if they are none of the four.
   */
  public static Optional<Relation> parse(String words) {
    String wanted = words.strip();
    for (Relation r : values()) {
      if (r.label.equalsIgnoreCase(wanted)) {
        return Optional.of(r);
      }
    }
    return Optional.empty();
  }

  /** Whether the start of the task before is waited for, rather than its finish. */
  public boolean fromStart() {
    return fromStart;
  }

  /** Whether the finish of the task after waits, rather than its start. */
  public boolean toFinish() {
    return toFinish;
  }

  @Override
  public String toString() {
    return label;
  }
}

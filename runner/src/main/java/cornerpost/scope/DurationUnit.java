package cornerpost.scope;

/**
 * The unit of a duration: hours or working days of the task's calendar, or days round the clock.
 */
public enum DurationUnit implements Labelled {
  HOURS("h"),
  DAYS("d"),
  ELAPSED_DAYS("elapsed d");

  private final String label;

  DurationUnit(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

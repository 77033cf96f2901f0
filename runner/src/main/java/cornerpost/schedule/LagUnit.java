package cornerpost.schedule;

/** How the minutes of a lag, or of a task's duration, are counted. */
public enum LagUnit {
  /**
   * Minutes in which work goes on. A duration counts those of the task's own calendar, a lag those
   * of the calendar of the task <em>after</em>: it is that task which waits. A wait that belongs to
   * the material (curing, drying) is elapsed.
   */
  WORKING_MINUTES("working minutes"),
  /** Minutes of the clock, through nights, weekends and holidays. */
  ELAPSED_MINUTES("elapsed minutes");

  private final String label;

  LagUnit(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }

  @Override
  public String toString() {
    return label;
  }
}

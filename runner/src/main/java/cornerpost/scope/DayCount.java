package cornerpost.scope;

/** How days of interest are counted. */
public enum DayCount implements Labelled {
  ACTUAL_365("actual/365"),
  ACTUAL_360("actual/360"),
  THIRTY_360("30/360");

  private final String label;

  DayCount(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

package cornerpost.scope;

/** How a box meets the box it is joined to. */
public enum Joint implements Labelled {
  NONE("stands alone"),
  SIDE_BY_SIDE("side by side"),
  END_TO_END("end to end"),
  STACKED("stacked on top");

  private final String label;

  Joint(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

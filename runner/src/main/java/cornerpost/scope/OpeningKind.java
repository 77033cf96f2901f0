package cornerpost.scope;

/** What goes into a hole in the shell. */
public enum OpeningKind implements Labelled {
  WINDOW("window"),
  DOOR("door"),
  GLAZED_DOOR("glazed door"),
  SLIDING_DOOR("sliding door"),
  PASS_THROUGH("pass-through to next box"),
  VENT("vent"),
  SLEEVE("service sleeve");

  private final String label;

  OpeningKind(String label) {
    this.label = label;
  }

  /** Whether people walk out through it. */
  public boolean isDoor() {
    return this == DOOR || this == GLAZED_DOOR || this == SLIDING_DOOR;
  }

  @Override
  public String label() {
    return label;
  }
}

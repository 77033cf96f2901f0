package cornerpost.scope;

/** A face of a box, seen from the cargo-door end looking in. */
public enum Wall implements Labelled {
  LEFT("left side"),
  RIGHT("right side"),
  DOOR_END("door end"),
  BLIND_END("blind end"),
  ROOF("roof");

  private final String label;

  Wall(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

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

  /** The wall of the next box that it stands against; boxes that are joined face the same way. */
  public Wall facing() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      case DOOR_END -> BLIND_END;
      case BLIND_END -> DOOR_END;
      case ROOF -> ROOF;
    };
  }
}

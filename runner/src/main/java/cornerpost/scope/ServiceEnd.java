package cornerpost.scope;

/** The end of the boxes at which panel, water main and drain stand. */
public enum ServiceEnd implements Labelled {
  DOOR_END("door end"),
  BLIND_END("blind end");

  private final String label;

  ServiceEnd(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

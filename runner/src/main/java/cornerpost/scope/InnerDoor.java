package cornerpost.scope;

/** The doors between rooms. */
public enum InnerDoor implements Labelled {
  HOLLOW("hollow-core"),
  SOLID("solid-core"),
  GLAZED("glazed");

  private final String label;

  InnerDoor(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

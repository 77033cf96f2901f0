package cornerpost.scope;

/** How trenches and pits are dug. */
public enum Digging implements Labelled {
  MACHINE("machine"),
  HAND("by hand");

  private final String label;

  Digging(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

package cornerpost.scope;

/** A level of fittings. */
public enum Standard implements Labelled {
  BASIC("basic"),
  MIDDLE("middle"),
  HIGH("high");

  private final String label;

  Standard(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

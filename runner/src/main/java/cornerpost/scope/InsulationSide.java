package cornerpost.scope;

/** Which side of the steel is insulated. */
public enum InsulationSide implements Labelled {
  INSIDE("inside"),
  OUTSIDE("outside"),
  BOTH("inside and outside");

  private final String label;

  InsulationSide(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}

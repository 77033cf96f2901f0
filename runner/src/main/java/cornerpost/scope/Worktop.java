package cornerpost.scope;

/** The kitchen worktop. */
public enum Worktop implements Labelled {
  LAMINATE("laminate"),
  TIMBER("timber"),
  STONE("stone");

  private final String label;

  Worktop(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
